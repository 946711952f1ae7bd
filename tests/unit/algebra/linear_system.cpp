#include "prover/algebra/linear_system.hpp"

#include <boost/multiprecision/cpp_int.hpp>
#include <catch2/catch.hpp>
#include <random>

using namespace prover;

namespace {

constexpr UnknownId x(0), y(1), z(2), w(3);

Form form(const std::vector<std::pair<UnknownId, Rational>>& terms, const Rational& constant = 0) {
  Form sum = Form::number(constant);
  for (const auto& [u, c] : terms) sum.add(Form::of(u, c));
  return sum;
}

// Σ multiplier · form, written out: what a certificate claims.
Form multiplied_out(const LinearSystem::Certificate& certificate, const std::vector<Form>& added) {
  Form sum;
  for (const auto& [tag, m] : certificate.parts) {
    Form part = added[static_cast<std::size_t>(tag)];
    sum.add(part.scale(m));
  }
  return sum;
}

}  // namespace

TEST_CASE("what follows is entailed, what does not is not") {
  LinearSystem system;
  CHECK(system.add(form({{x, 1}, {y, 1}, {z, 1}}, -180)) == LinearSystem::Added::new_row);
  CHECK(system.add(form({{x, 1}, {y, -1}})) == LinearSystem::Added::new_row);
  CHECK(system.add(form({{x, 2}, {z, 1}}, -180)) == LinearSystem::Added::follows);
  CHECK(system.rank() == 2);
  CHECK(system.entails(form({{y, 4}, {z, 2}}, -360)));
  CHECK(system.entails(Form()));
  CHECK_FALSE(system.entails(form({{y, 4}, {z, 2}}, -361)));
  CHECK_FALSE(system.entails(form({{x, 1}, {z, -1}})));
  CHECK_FALSE(system.entails(form({{w, 1}})));
  CHECK_FALSE(system.entails(Form::number(1)));
}

TEST_CASE("a value is given when it is forced and not before") {
  LinearSystem system;
  system.add(form({{x, 1}, {y, 1}}, -180));
  CHECK_FALSE(system.value(x));
  system.add(form({{x, 3}, {y, -4}}));
  REQUIRE(system.value(x));
  CHECK(*system.value(x) == Rational(720, 7));
  CHECK(*system.value(y) == Rational(540, 7));
  CHECK_FALSE(system.value(z));
}

TEST_CASE("equal things have equal normal forms, others do not") {
  LinearSystem system;
  system.add(form({{x, 1}, {y, -1}}));
  system.add(form({{z, 1}, {w, -2}}, 10));
  CHECK(system.reduce(Form::of(x)) == system.reduce(Form::of(y)));
  CHECK(system.reduce(form({{x, 1}, {z, 1}})) == system.reduce(form({{y, 1}, {w, 2}}, -10)));
  CHECK_FALSE(system.reduce(Form::of(x)) == system.reduce(Form::of(z)));
  CHECK_FALSE(system.reduce(Form::of(z)) == system.reduce(Form::of(w)));
}

TEST_CASE("a contradiction is noticed, explained, and leaves the rest as it was") {
  const std::vector<Form> added{form({{x, 1}}, -40), form({{y, 1}}, -50), form({{z, 1}, {x, -1}}),
                                form({{x, 1}, {y, 2}}, -130)};
  LinearSystem system(true);
  for (int i = 0; i < 3; ++i) system.add(added[static_cast<std::size_t>(i)], i);
  CHECK_FALSE(system.contradictory());
  CHECK(system.add(added[3], 3) == LinearSystem::Added::contradiction);
  CHECK(system.contradictory());
  CHECK(multiplied_out(system.contradiction(), added) == Form::number(1));
  CHECK(system.rank() == 3);
  CHECK(*system.value(z) == Rational(40));
  CHECK(system.add(form({{w, 1}}), 4) == LinearSystem::Added::new_row);
  CHECK(system.contradictory());
}

TEST_CASE("a certificate is given only for what follows") {
  const std::vector<Form> added{form({{x, 2}, {y, 3}}, -7), form({{y, 1}, {z, 5}}, 1),
                                form({{x, 1}, {z, -1}})};
  LinearSystem system(true);
  for (std::size_t i = 0; i < added.size(); ++i) system.add(added[i], static_cast<int>(i));
  const Form asked = form({{x, 1}, {y, 1}, {z, 1}}, -*system.value(x) - *system.value(y) - *system.value(z));
  const auto certificate = system.certificate(asked);
  REQUIRE(certificate);
  CHECK(multiplied_out(*certificate, added) == asked);
  CHECK_FALSE(system.certificate(form({{x, 1}}, 17)));
  CHECK_FALSE(system.certificate(form({{w, 1}})));
}

TEST_CASE("coefficients beyond 64 bits are as exact as small ones") {
  // Rows of a Hilbert matrix of order 12 with powers of ten before them: a notoriously bad system in floating
  // point.
  const int n = 12;
  Rational power = 1;
  std::vector<Form> added;
  for (int i = 0; i < n; ++i) {
    Form row;
    Rational sum = 0;
    for (int j = 0; j < n; ++j) {
      const Rational c = power * Rational(1, i + j + 1);
      row.add(Form::of(UnknownId(j), c));
      sum += c * Rational(j + 1);
    }
    added.push_back(row.add(Form::number(-sum)));  // so that unknown j is j + 1
    power *= Rational(1'000'000'007);
  }
  CHECK_FALSE(power.to_int64());
  LinearSystem system(true);
  for (int i = 0; i < n; ++i)
    CHECK(system.add(added[static_cast<std::size_t>(i)], i) == LinearSystem::Added::new_row);
  for (int j = 0; j < n; ++j) {
    REQUIRE(system.value(UnknownId(j)));
    CHECK(*system.value(UnknownId(j)) == Rational(j + 1));
    const Form claim = form({{UnknownId(j), 1}}, -(j + 1));
    CHECK(multiplied_out(*system.certificate(claim), added) == claim);
  }
}

namespace {

// The reference: dense Gaussian elimination over Boost's rationals; knows nothing of forms.
using Number = boost::multiprecision::cpp_rational;
using Dense = std::vector<Number>;  // coefficients, then the constant

Dense dense(const Form& f, std::size_t unknowns) {
  Dense row(unknowns + 1);
  for (const auto& [u, c] : f.terms) row[u.index()] = Number(c.to_string());
  row[unknowns] = Number(f.constant.to_string());
  return row;
}
std::size_t rank(std::vector<Dense> rows, std::size_t columns) {
  std::size_t done = 0;
  for (std::size_t column = 0; column < columns && done < rows.size(); ++column) {
    std::size_t pivot = done;
    while (pivot < rows.size() && rows[pivot][column] == 0) ++pivot;
    if (pivot == rows.size()) continue;
    std::swap(rows[done], rows[pivot]);
    for (std::size_t r = done + 1; r < rows.size(); ++r) {
      const Number factor = rows[r][column] / rows[done][column];
      if (factor == 0) continue;
      for (std::size_t k = column; k < rows[r].size(); ++k) rows[r][k] -= factor * rows[done][k];
    }
    ++done;
  }
  return done;
}

}  // namespace

TEST_CASE("random systems agree with plain dense elimination") {
  const unsigned seed = 20240611;
  CAPTURE(seed);
  std::mt19937 random(seed);
  auto below = [&](unsigned bound) { return static_cast<unsigned>(random() % bound); };
  int contradictions = 0, entailed_count = 0;
  for (int round = 0; round < 300; ++round) {
    CAPTURE(round);
    const unsigned unknowns = 3 + below(6);
    auto random_form = [&] {
      Form f = Form::number(Rational(static_cast<int>(below(41)) - 20, 1 + static_cast<int>(below(3))));
      for (unsigned k = 1 + below(4); k > 0; --k)
        f.add(Form::of(UnknownId(below(unknowns)),
                       Rational(static_cast<int>(below(9)) - 4, 1 + static_cast<int>(below(3)))));
      return f;
    };
    std::vector<Form> added;
    std::vector<Dense> rows;  // those that the system took
    LinearSystem system(true);
    bool contradictory = false;
    for (unsigned k = 2 + below(7); k > 0; --k) {
      Form f = random_form();
      if (!added.empty() &&
          below(4) == 0) {  // a combination, so that much follows; the constant at times spoilt
        f = added[below(static_cast<unsigned>(added.size()))];
        f.add(added[below(static_cast<unsigned>(added.size()))], Rational(-3, 2));
        if (below(4) == 0) f.add(Form::number(1));
      }
      added.push_back(f);
      std::vector<Dense> with = rows;
      with.push_back(dense(f, unknowns));
      const std::size_t before = rank(rows, unknowns), left = rank(with, unknowns),
                        whole = rank(with, unknowns + 1);
      const auto expected = left > before  ? LinearSystem::Added::new_row
                            : whole > left ? LinearSystem::Added::contradiction
                                           : LinearSystem::Added::follows;
      CHECK(system.add(f, static_cast<int>(added.size()) - 1) == expected);
      if (expected == LinearSystem::Added::new_row) rows = with;
      contradictory |= expected == LinearSystem::Added::contradiction;
    }
    CHECK(system.contradictory() == contradictory);
    CHECK(system.rank() == rows.size());
    if (contradictory) {
      ++contradictions;
      CHECK(multiplied_out(system.contradiction(), added) == Form::number(1));
    }
    for (int question = 0; question < 8; ++question) {
      Form f = random_form();
      if (question % 2 == 0) {
        f = Form();
        for (const Form& one : added) f.add(one, Rational(static_cast<int>(below(5)) - 2, 3));
      }
      std::vector<Dense> with = rows;
      with.push_back(dense(f, unknowns));
      const bool follows = rank(with, unknowns + 1) == rows.size();
      CHECK(system.entails(f) == follows);
      const auto certificate = system.certificate(f);
      CHECK(certificate.has_value() == follows);
      if (certificate) {
        ++entailed_count;
        CHECK(multiplied_out(*certificate, added) == f);
      }
      CHECK(system.entails(Form(f).add(system.reduce(f), -1)));
    }
    for (unsigned u = 0; u < unknowns; ++u) {
      const UnknownId id(u);
      std::vector<Dense> with = rows;
      with.push_back(dense(Form::of(id), unknowns));
      const bool forced = rank(with, unknowns) == rows.size();
      CHECK(system.value(id).has_value() == forced);
      if (system.value(id)) CHECK(system.entails(Form::of(id).add(Form::number(-*system.value(id)))));
    }
  }
  // The generator must not have made only easy cases.
  CHECK(contradictions > 20);
  CHECK(entailed_count > 300);
}
