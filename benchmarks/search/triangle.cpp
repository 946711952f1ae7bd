#include <array>

#include "benchmarks/search/families.hpp"

namespace prover {

namespace {

// The rays from one vertex, counter-clockwise from the right; opposite ones half the list apart.
class Star {
 public:
  struct Ray {
    double degrees;  // 0 ≤ degrees < 360
    Form direction;
  };

  // Enters all angles below a straight one.
  Star(EquationBook& book, std::vector<Ray> rays) : rays_(std::move(rays)), book_(book) {
    for (int span = 1; span < half(); ++span)
      for (int from = 0; from < count(); ++from) {
        const Ray &a = ray(from), &b = ray(from + span);
        const int turn = b.degrees < a.degrees ? 360 : 0;
        angles_.push_back(book.angle(b.degrees - a.degrees + turn,
                                     Form::number(turn).add(b.direction).add(a.direction, -1)));
      }
  }

  int count() const { return static_cast<int>(rays_.size()); }
  int half() const { return count() / 2; }
  UnknownId angle(int from, int to) const {
    const int span = (to - from + count()) % count();
    return angles_[static_cast<std::size_t>((span - 1) * count() + from % count())];
  }

  void write() {
    for (int span = 1; span < half(); ++span) {
      for (int i = 0; i < half(); ++i)
        book_.equation(Reason::vertical, {{1, angle(i, i + span)}, {-1, angle(i + half(), i + half() + span)}}, 0);
      for (int i = 0; i < count(); ++i)
        book_.equation(Reason::linear_pair, {{1, angle(i, i + span)}, {1, angle(i + span, i + half())}}, 180);
    }
    if (half() < 3) return;
    for (int i = 0; i < count(); ++i) {
      const UnknownId first = angle(i, i + 1), second = angle(i + 1, i + 2), third = angle(i + 2, i + 3);
      book_.equation(Reason::addition, {{1, angle(i, i + 2)}, {-1, first}, {-1, second}}, 0);
      book_.equation(Reason::straight_angle, {{1, first}, {1, second}, {1, third}}, 180);
    }
  }

 private:
  const Ray& ray(int i) const { return rays_[static_cast<std::size_t>(i % count())]; }

  std::vector<Ray> rays_;
  EquationBook& book_;
  std::vector<UnknownId> angles_;  // by span, then by first ray
};

}  // namespace

// Triangle KLM with the parallel to KL through M, all lines drawn past the vertices. M has six rays.
void draw_triangle(EquationBook& book) {
  constexpr double at_k = 50, at_l = 60;
  const Form base = Form::of(book.line(0)), through_apex = Form::of(book.line(0));
  const Form left_side = Form::of(book.line(at_k)), right_side = Form::of(book.line(180 - at_l));
  book.parallel(UnknownId(0), UnknownId(1));
  const auto back = [](const Form& direction) { return Form::number(180).add(direction); };
  Star k(book, {{0, base}, {at_k, left_side}, {180, back(base)}, {180 + at_k, back(left_side)}});
  Star l(book, {{0, base}, {180 - at_l, right_side}, {180, back(base)}, {360 - at_l, back(right_side)}});
  Star m(book, {{0, through_apex}, {at_k, left_side}, {180 - at_l, right_side},
                {180, back(through_apex)}, {180 + at_k, back(left_side)}, {360 - at_l, back(right_side)}});
  k.write();
  l.write();
  m.write();
  // A side as transversal: the rays at its foot, in turn, and the rays at M that run the same way.
  const auto along_side = [&](const Star& foot, const std::array<int, 4>& at_apex) {
    const auto lower = [&](int q) { return foot.angle(q % 4, (q + 1) % 4); };
    const auto upper = [&](int q) {
      return m.angle(at_apex[static_cast<std::size_t>(q % 4)], at_apex[static_cast<std::size_t>((q + 1) % 4)]);
    };
    for (int q = 0; q < 4; ++q) book.equation(Reason::corresponding, {{1, lower(q)}, {-1, upper(q)}}, 0);
    for (int q = 0; q < 2; ++q) book.equation(Reason::alternate, {{1, lower(q)}, {-1, upper(q + 2)}}, 0);
    for (int q = 0; q < 2; ++q) book.equation(Reason::cointerior, {{1, lower(q)}, {1, upper(3 - q)}}, 180);
  };
  along_side(k, {0, 1, 3, 4});
  along_side(l, {0, 2, 3, 5});
  book.goal({{1, k.angle(0, 1)}, {1, l.angle(1, 2)}, {1, m.angle(4, 5)}}, 180);
}

}  // namespace prover
