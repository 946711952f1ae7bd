#include <catch2/catch.hpp>

#include "tests/unit/check/board.hpp"

using namespace board;

namespace {

RuleId base_angles(Board& b) {
  const Board r("ABC");
  return b.rule("isosceles-base-angles", "ABC",
                {r.phrase(Predicate::triangle, "ABC"), r.relation({{1, "AB"}}, {{1, "AC"}})}, {},
                {r.relation({{1, "ABC"}}, {{1, "ACB"}})});
}
RuleId angle_sum(Board& b) {
  const Board r("ABC");
  return b.rule("triangle-angle-sum", "ABC", {r.phrase(Predicate::triangle, "ABC")}, {},
                {r.relation({{1, "BAC"}, {1, "ABC"}, {1, "BCA"}}, {{180, ""}})});
}
RuleId alternate_angles(Board& b, bool converse) {
  const Board r("APQD");
  const Phrase parallel = r.phrase(Predicate::parallel, "PAQD"),
               equal = r.relation({{1, "APQ"}}, {{1, "DQP"}});
  return b.rule(converse ? "alternate-converse" : "alternate", "APQD", {converse ? equal : parallel},
                {r.phrase(Predicate::opposite_sides, "ADPQ")}, {converse ? parallel : equal});
}

// Triangle KLM with KL = KM and the angle at K 40°. Find the angle at L.
Board base_angle_board() {
  Board b("KLM");
  b.given(b.phrase(Predicate::triangle, "KLM"));
  b.given(b.relation({{1, "KL"}}, {{1, "KM"}}));
  b.given(b.relation({{1, "LKM"}}, {{40, ""}}));
  b.find({{1, "KLM"}});
  b.say_given(1, {b.form({{1, "KL"}, {-1, "KM"}})});
  b.say_given(2, {b.form({{1, "LKM"}, {-40, ""}})});
  b.say(base_angles(b), "KLM", {{0, 0}}, {b.form({{1, "KLM"}, {-1, "KML"}})});
  b.say(angle_sum(b), "KLM", {}, {b.form({{1, "LKM"}, {1, "KLM"}, {1, "KML"}, {-180, ""}})});
  b.proof.goal = {b.form({{1, "KLM"}, {-70, ""}})};
  const Rational half(1, 2);
  b.proof.conclusion = {{{{1, 0, -half}, {2, 0, half}, {3, 0, half}}}};
  return b;
}

// K and N on opposite sides of LM; the angles KLM and NML are equal, so KL and MN are parallel. No sentence
// says the sides: they are seen.
Board parallel_board() {
  Board b("KLMN");
  b.given(b.phrase(Predicate::triangle, "KLM"));
  b.given(b.relation({{1, "KLM"}}, {{1, "LMN"}}));
  b.prove(b.phrase(Predicate::parallel, "KLMN"));
  b.draw({{1, 1}, {0, 0}, {4, 0}, {3, -1}});
  b.draw({{1, 2}, {0, 0}, {4, 0}, {2.5, -3}});
  b.proof.positions = {{b.position(PositionKind::opposite_sides, "KNLM"), PositionSource::seen}};
  b.say_given(1, {b.form({{1, "KLM"}, {-1, "LMN"}})});
  b.say(alternate_angles(b, true), "KLMN", {{0, 0}}, {b.fact(FactKind::parallel, "KLMN")});
  b.proof.goal = {b.fact(FactKind::parallel, "KLMN")};
  b.proof.conclusion = {{{{1, 0, 1}}}};
  return b;
}

}  // namespace

TEST_CASE("base angles and angle sum are accepted as they stand") {
  const CheckReport report = base_angle_board().report();
  CHECK(report.objection.empty());
  CHECK(report.accepted);
  CHECK(report.step == -1);
}

TEST_CASE("whatever is changed in the proof, it is refused") {
  Board b = base_angle_board();
  auto& steps = b.proof.steps;
  SECTION("another value") {
    b.proof.goal = {b.form({{1, "KLM"}, {-71, ""}})};
  }
  SECTION("another angle than the one asked for") {
    b.find({{1, "LKM"}});
  }
  SECTION("a multiplier") {
    b.proof.conclusion[0].parts[1].multiplier = 1;
  }
  SECTION("a part of the sum left out") {
    b.proof.conclusion[0].parts.pop_back();
  }
  SECTION("a premise that is not there") {
    steps[2].instance.premises.clear();
    steps[2].premises.clear();
  }
  SECTION("a premise without support") {
    steps[2].premises.clear();
  }
  SECTION("a premise supported by something else") {
    steps[2].premises[0] = {{{1, 0, 1}}};
  }
  SECTION("a premise supported by its own step") {
    steps[2].premises[0] = {{{2, 0, 1}}};
  }
  SECTION("a premise supported by a later step") {
    steps[2].premises[0] = {{{3, 0, 1}}};
  }
  SECTION("indices out of range") {
    SECTION("step") {
      steps[2].premises[0] = {{{-1, 0, 1}}};
    }
    SECTION("conclusion") {
      steps[2].premises[0] = {{{0, 5, 1}}};
    }
    SECTION("rule") {
      steps[2].instance.rule = RuleId(77);
    }
    SECTION("no rule") {
      steps[2].instance.rule = RuleId();
    }
    SECTION("place") {
      steps[2].instance.places[0] = PointId(12);
    }
    SECTION("no place") {
      steps[2].instance.places[0] = PointId();
    }
    SECTION("given") {
      steps[0].instance.hypothesis = 3;
    }
    SECTION("no given") {
      steps[0].instance.hypothesis = -1;
    }
    SECTION("unknown") {
      steps[2].instance.conclusions = {Form::of(UnknownId(99))};
    }
    SECTION("unknown in the goal") {
      b.proof.goal = {Form::of(UnknownId(99))};
    }
  }
  SECTION("too few places") {
    steps[2].instance.places.pop_back();
  }
  SECTION("other places") {
    std::swap(steps[2].instance.places[0], steps[2].instance.places[1]);
  }
  SECTION("another rule") {
    steps[2].instance.rule = steps[3].instance.rule;
  }
  SECTION("a rule that only names a given") {
    steps[2].instance.rule = RuleId(0);
  }
  SECTION("a step says more than its rule") {
    steps[2].instance.conclusions.push_back(b.form({{1, "KLM"}, {-70, ""}}));
  }
  SECTION("a given says something else") {
    steps[1].instance.conclusions = {b.form({{1, "LKM"}, {-50, ""}})};
  }
  SECTION("another given") {
    steps[1].instance.hypothesis = 1;
  }
  SECTION("a position that nothing says") {
    b.proof.positions = {{b.position(PositionKind::between, "KLM"), PositionSource::text}};
  }
  SECTION("a position from nowhere") {
    b.proof.positions = {{b.position(PositionKind::not_collinear, "KLM"), PositionSource::unknown}};
  }
  SECTION("a position of a point that does not exist") {
    Position p = b.position(PositionKind::not_collinear, "KLM");
    p.b = PointId(40);
    b.proof.positions = {{p, PositionSource::text}};
  }
  SECTION("a step that rests on an unknown position") {
    steps[2].instance.positions = {b.position(PositionKind::between, "KLM")};
  }
  SECTION("the order of the steps") {
    std::swap(steps[0], steps[2]);
  }
  SECTION("no goal") {
    b.proof.goal.clear();
    b.proof.conclusion.clear();
  }
  SECTION("a goal without support") {
    b.proof.conclusion.clear();
  }
  SECTION("called a contradiction") {
    b.proof.contradiction = true;
  }
  SECTION("not a triangle by any sentence") {
    b.statement.givens[0].phrase = b.phrase(Predicate::collinear, "KLM");
    b.statement.givens[2].phrase = b.relation({{1, "x"}}, {{40, ""}});
  }
  CHECK_FALSE(b.accepted());
  CHECK_FALSE(b.report().objection.empty());
}

TEST_CASE("the objection names the step") {
  Board b = base_angle_board();
  b.proof.steps[2].premises[0] = {{{1, 0, 1}}};
  CHECK(b.report().step == 2);
  CHECK(b.report().objection == "step 3: premise 1 is not the stated sum of earlier conclusions");
}

TEST_CASE("a side that every figure shows may be cited, and only then") {
  Board b = parallel_board();
  CHECK(b.report().objection.empty());
  SECTION("no figure") {
    b.sketches.clear();
  }
  SECTION("one figure shows otherwise") {
    b.draw({{1, 2}, {0, 0}, {4, 0}, {2.5, 3}});
  }
  SECTION("a figure with the point nearly on the line") {
    b.draw({{1, 2}, {0, 0}, {4, 0}, {2.5, -1e-9}});
  }
  SECTION("a figure without the point") {
    b.draw({{1, 2}, {0, 0}, {4, 0}});
  }
  SECTION("a coordinate that is no number") {
    b.draw({{1, 2}, {0, 0}, {4, 0}, {std::nan(""), -3}});
  }
  SECTION("not listed") {
    b.proof.positions.clear();
  }
  SECTION("listed as text") {
    b.proof.positions[0].source = PositionSource::text;
  }
  SECTION("the other side listed") {
    b.proof.positions[0].position.kind = PositionKind::same_side;
  }
  SECTION("another claim") {
    b.prove(b.phrase(Predicate::parallel, "KMLN"));
  }
  SECTION("a stronger claim") {
    b.prove(b.phrase(Predicate::parallelogram, "KLMN"));
  }
  SECTION("a claim of size") {
    b.prove(b.relation({{1, "KL"}}, {{1, "MN"}}, Comparison::greater));
  }
  SECTION("a claim that compares nothing") {
    Phrase alone;
    alone.relation.expressions = {b.expression({{1, "KLM"}})};
    b.prove(alone);
  }
  SECTION("no claim") {
    b.goal.claims.clear();
  }
  CHECK_FALSE(b.accepted());
}

TEST_CASE("an angle has one name along a line, and the name waits until the line is shown") {
  // P on segment KL: the angle at K in triangle KPM is that in triangle KLM.
  Board b("KLMP");
  b.given(b.phrase(Predicate::triangle, "KLM"));
  const int on = b.given(b.phrase(Predicate::on_segment, "PKL"));
  b.given(b.relation({{1, "LKM"}}, {{40, ""}}));
  b.find({{1, "PKM"}});
  b.say_given(2, {b.form({{1, "PKM"}, {-40, ""}})});
  b.proof.goal = {b.form({{1, "LKM"}, {-40, ""}})};
  b.proof.conclusion = {{{{0, 0, 1}}}};
  CHECK(b.report().objection.empty());
  // On the line only, P may be beyond K.
  b.statement.givens[static_cast<std::size_t>(on)].phrase = b.phrase(Predicate::on_line, "PKL");
  CHECK_FALSE(b.accepted());
  b.draw({{0, 0}, {4, 0}, {3, 3}, {2, 0}});
  b.proof.positions = {{b.position(PositionKind::between, "KPL"), PositionSource::seen}};
  CHECK(b.report().objection.empty());
  // That P is on the line at all is not for a figure to show.
  b.statement.givens[static_cast<std::size_t>(on)].phrase = b.phrase(Predicate::triangle, "KLM");
  CHECK_FALSE(b.accepted());
}

TEST_CASE("a shown collinearity makes one line of two, from that step on") {
  Board b("KLMPN");
  b.given(b.phrase(Predicate::parallel, "KLMN"));
  b.given(b.phrase(Predicate::parallel, "KPMN"));
  b.given(b.relation({{1, "LKM"}}, {{50, ""}}));
  b.find({{1, "PKM"}});
  const Board r("PABCD");
  const RuleId rule = b.rule("parallel-postulate", "PABCD",
                             {r.phrase(Predicate::parallel, "PACD"), r.phrase(Predicate::parallel, "PBCD")},
                             {}, {r.phrase(Predicate::collinear, "PAB")});
  const Form first = b.fact(FactKind::parallel, "KLMN"), second = b.fact(FactKind::parallel, "KPMN");
  b.say_given(0, {first});
  b.say_given(1, {second});
  b.say(rule, "KLPMN", {{0, 0}, {1, 0}}, {b.fact(FactKind::collinear, "KLP")});
  b.say_given(2, {b.form({{1, "LKM"}, {-50, ""}})});
  b.proof.goal = {b.form({{1, "PKM"}, {-50, ""}})};
  b.proof.conclusion = {{{{3, 0, 1}}}};
  b.draw({{0, 2}, {2, 2}, {0, 0}, {3, 2}, {4, 0}});
  b.proof.positions = {{b.position(PositionKind::between, "KLP"), PositionSource::seen}};
  CHECK(b.report().objection.empty());
  SECTION("without the step") {
    b.proof.steps.erase(b.proof.steps.begin() + 2);
    b.proof.conclusion = {{{{2, 0, 1}}}};
  }
  SECTION("used before the step") {
    std::swap(b.proof.steps[2], b.proof.steps[3]);
    b.proof.steps[2].instance.conclusions = {b.form({{1, "PKM"}, {-50, ""}})};
    b.proof.conclusion = {{{{2, 0, 1}}}};
  }
  SECTION("without the order") {
    b.proof.positions.clear();
  }
  CHECK_FALSE(b.accepted());
}

TEST_CASE("givens that cannot all hold: a false number, or a size that cannot be") {
  Board b = base_angle_board();
  const int fifth = b.given(b.relation({{1, "KLM"}}, {{60, ""}}));
  b.say_given(fifth, {b.form({{1, "KLM"}, {-60, ""}})});
  b.proof.contradiction = true;
  b.proof.goal = {Form::number(10)};
  const Rational half(1, 2);
  b.proof.conclusion = {{{{4, 0, 1}, {1, 0, half}, {2, 0, -half}, {3, 0, -half}}}};
  CHECK(b.report().objection.empty());
  SECTION("a number that is none") {
    b.proof.goal = {Form::number(0)};
    b.proof.conclusion = {{}};
  }
  SECTION("a value that may be") {
    b.proof.goal = {b.form({{1, "KLM"}, {-60, ""}})};
    b.proof.conclusion = {{{{4, 0, 1}}}};
  }
  SECTION("another sum") {
    b.proof.conclusion[0].parts.pop_back();
  }
  CHECK_FALSE(b.accepted());
}

TEST_CASE("an angle of a triangle that would have to be negative, or 0, is a contradiction") {
  for (const int size : {181, 180}) {
    Board b("KLM");
    b.given(b.phrase(Predicate::triangle, "KLM"));
    b.given(b.relation({{1, "KLM"}, {1, "KML"}}, {{size, ""}}));
    b.say_given(1, {b.form({{1, "KLM"}, {1, "KML"}, {-size, ""}})});
    b.say(angle_sum(b), "KLM", {}, {b.form({{1, "LKM"}, {1, "KLM"}, {1, "KML"}, {-180, ""}})});
    b.proof.contradiction = true;
    b.proof.goal = {b.form({{1, "LKM"}, {size - 180, ""}})};
    b.proof.conclusion = {{{{1, 0, 1}, {0, 0, -1}}}};
    CHECK(b.report().objection.empty());
  }
}

TEST_CASE("a bigger side must be given to be used") {
  Board b("KLMN");
  const Board r("AB");
  b.given(b.relation({{1, "KL"}}, {{1, "MN"}}, Comparison::greater));
  Board rr("ABCD");
  const RuleId rule = b.rule("bigger", "ABCD", {rr.relation({{1, "CD"}}, {{1, "AB"}}, Comparison::less)}, {},
                             {rr.relation({{1, "ABC"}}, {{1, "DCB"}})});
  b.find({{1, "KLM"}, {-1, "NML"}});
  b.say(rule, "KLMN", {}, {b.form({{1, "KLM"}, {-1, "NML"}})});
  b.proof.goal = {b.form({{1, "KLM"}, {-1, "NML"}})};
  b.proof.conclusion = {{{{0, 0, 1}}}};
  CHECK(b.report().objection.empty());
  b.statement.givens[0].phrase = b.relation({{1, "KL"}}, {{1, "MN"}}, Comparison::less);
  CHECK_FALSE(b.accepted());
}
