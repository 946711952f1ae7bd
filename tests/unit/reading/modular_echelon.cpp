// The fast system answers as the exact one does, fractions and negative numbers included.
#include "prover/reading/modular_echelon.hpp"

#include <catch2/catch.hpp>

#include <random>

#include "prover/algebra/linear_system.hpp"

using namespace prover;

namespace {

constexpr int kUnknowns = 6;

ModularEchelon::Row row(const Form& form) {
  ModularEchelon::Row out(kUnknowns + 1);
  for (const auto& [u, c] : form.terms) out[u.index()] = ModularEchelon::modulo(c);
  out.back() = ModularEchelon::modulo(form.constant);
  return out;
}
Form equation(std::vector<std::pair<int, Rational>> terms, Rational constant) {
  Form form = Form::number(-constant);
  for (const auto& [u, c] : terms) form.add(Form::of(UnknownId(u), c));
  return form;
}

}  // namespace

TEST_CASE("what follows exactly follows modulo the prime, and nothing else of what is tried") {
  std::mt19937 random(11);
  const auto number = [&] { return Rational(static_cast<int>(random() % 9) - 4, static_cast<int>(random() % 3) + 1); };
  const auto form = [&] {
    return equation({{static_cast<int>(random() % kUnknowns), number()}, {static_cast<int>(random() % kUnknowns), number()}}, number());
  };
  int follows = 0;
  for (int round = 0; round < 200; ++round) {
    LinearSystem exact;
    ModularEchelon fast;
    std::vector<Form> said;
    for (int i = 0; i < 5 && !exact.contradictory(); ++i) {
      said.push_back(form());
      exact.add(said.back());
      fast.add(row(said.back()));
    }
    if (exact.contradictory()) continue;
    Form sum = said[0];
    sum.add(said[1], number()).add(said[2], Rational(-1, 2));
    for (const Form& asked : {form(), sum}) {
      CHECK(fast.entails(row(asked)) == exact.entails(asked));
      follows += exact.entails(asked);
    }
  }
  CHECK(follows > 50);
}

TEST_CASE("what a line leaves open") {
  ModularEchelon known;
  CHECK(known.left_open(row(equation({{0, 1}}, 40))) == 0);                       // settles a value
  CHECK(known.left_open(row(equation({{0, 1}, {1, -1}}, 0))) == 1);               // two things are equal
  CHECK(known.left_open(row(equation({{0, 1}, {1, 1}}, 180))) == 2);              // together 180°
  CHECK(known.left_open(row(equation({{0, 1}, {1, 1}, {2, 1}}, 180))) == 3);
  known.add(row(equation({{0, 1}, {1, -1}}, 0)));
  known.add(row(equation({{2, 1}}, 40)));
  CHECK(known.left_open(row(equation({{0, 1}, {1, 1}, {2, 1}}, 180))) == 0);      // now it is 2∠ = 140°
}
