// A pupil's lines, read: what they claim, what reasons they name, what they draw, and what becomes of lines that cannot be
// read. The figure is a trellis: KLM with laths KP, PQ.
#include "prover/language/work.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {

const std::string trellis =
    "In triangle KLM, KL = KM\nP is on LM\nQ is on KM\nKL ∥ QP\n∠KLM = 70°\nfind: angle LKM\n";

// "∠KLM = 70°; KL = KM [given] [base angles]", or the kind in capitals where nothing is claimed.
std::string read(const std::string& lines, const std::string& problem = trellis) {
  const PupilWork work = read_work(problem, lines);
  std::string all;
  for (const WorkLine& line : work.lines) {
    if (!all.empty()) all += "\n";
    switch (line.kind) {
      case WorkKind::claim:
        break;
      case WorkKind::construction:
        all += "DRAWN ";
        for (const std::size_t i : line.drawn)
          for (const Phrase& phrase : work.problem.added[i].phrases) all += "{" + describe(phrase, work.problem.names) + "}";
        break;
      case WorkKind::naming:
        all += "NAMING";
        break;
      case WorkKind::remark:
        all += "REMARK";
        break;
      case WorkKind::crossed_out:
        all += "CROSSED OUT";
        break;
      case WorkKind::unread:
        all += line.unknown_point ? "UNKNOWN POINT" : line.ambiguous ? "AMBIGUOUS" : "UNREAD";
        break;
    }
    if (line.concludes) all += "so ";
    if (line.similarly) all += "similarly ";
    for (std::size_t i = 0; i < line.claims.size(); ++i)
      all += (i == 0 ? "" : "; ") + describe(line.claims[i], work.problem.names);
    for (const WorkReason& reason : line.reasons) all += " [" + reason.text + "]";
  }
  return all;
}

}  // namespace

TEST_CASE("equations as pupils write them", "[work]") {
  CHECK(read("∠KLP = 70° (alt ∠s)") == "∠KLP = 70° [alt ∠s]");
  CHECK(read("<KLP = 70") == "∠KLP = 70°");
  CHECK(read("KLP = 70°") == "∠KLP = 70°");
  CHECK(read("∠KLP=∠QPM") == "∠KLP = ∠QPM");
  CHECK(read("x = 180 - 70 - 70 = 40") == "∠LKM = 180° − 70° − 70° = 40°");  // x: what is asked
  CHECK(read("angle x = 180 - 2(70) = 40, isosceles") == "∠LKM = 180° − 140° = 40° [isosceles]");
  CHECK(read("180 - 70 = 110") == "180 − 70 = 110");
  CHECK(read("2∠KLP = 2∠QPM") == "2∠KLP = 2∠QPM");
  CHECK(read("½∠KLM = 35") == "½∠KLM = 35°");
  CHECK(read("∠KLM = 23⅓°") == "∠KLM = 23⅓°");
  CHECK(read("∠KLM = 23,5°") == "∠KLM = 23.5°");
  CHECK(read("KL=KM=LM") == "KL = KM = LM");
  CHECK(read("∠LKM + ∠KLM = 180") == "∠LKM + ∠KLM = 180°");
}

TEST_CASE("a corner alone is an angle where only one can be meant", "[work]") {
  CHECK(read("L = 70°") == "∠KLM = 70°");
  CHECK(read("∠L + ∠M = 140") == "∠KLM + ∠LMK = 140°");
  CHECK(read("P = 70") == "AMBIGUOUS");
  CHECK(read("∠L₁ = 40°", "triangle KLM\nP is on KM\nangles at L: 1 = KLP, 2 = PLM\nfind: angle KLM\n") == "∠KLP = 40°");
}

TEST_CASE("facts that are not equations", "[work]") {
  for (const std::string sign : {"∥", "||", "//"}) CHECK(read("KL " + sign + " QP") == "KL ∥ QP");
  CHECK(read("KP ⊥ LM") == "KP ⊥ LM");
  CHECK(read("△KLP ≅ △KMP (SAS)") == "△KLP ≅ △KMP [SAS]");
  CHECK(read("ΔKLP ≡ ΔKMP") == "△KLP ≅ △KMP");
  CHECK(read("△KLM ||| △QPM (AA)") == "△KLM ∼ △QPM [AA]");
  CHECK(read("△KLM ~ △QPM") == "△KLM ∼ △QPM");
  CHECK(read("KLM is isosceles") == "△KLM is isosceles");
  CHECK(read("KLM is isoceles") == "△KLM is isosceles");
  CHECK(read("K, L, P, Q concyclic") == "K, L, P, Q lie on a circle");
  CHECK(read("P is the midpoint of LM") == "P is the midpoint of LM");
  CHECK(read("KP is the bisector of ∠LKM") == "KP bisects ∠LKM");
}

TEST_CASE("reasons stand in brackets, in columns, before and after", "[work]") {
  CHECK(read("∠KLP = ∠QPM        alternate angles, KL ∥ QP, cut by LM") == "∠KLP = ∠QPM [alternate angles, KL ∥ QP, cut by LM]");
  CHECK(read("3. KL = KM | given") == "KL = KM [given]");
  CHECK(read("Since KL ∥ QP, ∠KLP = ∠QPM") == "∠KLP = ∠QPM [KL ∥ QP]");
  CHECK(read("alternate angles so ∠KLP = 70") == "∠KLP = 70° [alternate angles]");
  CHECK(read("Angles in a triangle add up to 180 so x = 40") == "∠LKM = 40° [Angles in a triangle add up to 180]");
  CHECK(read("∠KLP = 70 because the angles are alternate, KL ∥ QP") == "∠KLP = 70° [the angles are alternate, KL ∥ QP]");
  CHECK(read("∠KLP = 70 alternate angles") == "∠KLP = 70° [alternate angles]");
  CHECK(read("By SAS △KLP ≅ △KMP") == "△KLP ≅ △KMP [SAS]");
  CHECK(read("KL = KM [given] and ∠KLM = 70° {given}") == "KL = KM; ∠KLM = 70° [given] [given]");
  CHECK(read("In △KLM, ∠L = 70 (base ∠s)") == "∠KLM = 70° [base ∠s] [in △KLM]");
}

TEST_CASE("what stands around a line", "[work]") {
  CHECK(read("∴ ∠KLP = 70") == "so ∠KLP = 70°");
  CHECK(read("(a) Hence KL = KM.") == "so KL = KM");
  CHECK(read("similarly ∠KML = 70") == "similarly ∠KML = 70°");
  CHECK(read("Proof:\nQED") == "REMARK\nREMARK");
  CHECK(read("it is isosceles") == "REMARK [it is isosceles]");
  CHECK(read("to prove: KL = KM") == "REMARK");
  CHECK(read("~~∠KLP = 60~~\ncrossed out: KL = 5") == "CROSSED OUT\nCROSSED OUT");
  CHECK(read("∠LKM = (180° − 52°) ÷ 2\n   = 64°") == "∠LKM = 90° − 26°\n∠LKM = 90° − 26° = 64°");
}

TEST_CASE("as pupils write it", "[work]") {
  CHECK(read("m∠KLM = ½ m∠LKM = 70") == "∠KLM = ½∠LKM = 70°");
  CHECK(read("∠LKM = 180 - 2 x 70") == "∠LKM = 180° − 140°");
  CHECK(read("∠KLM = 70^o, ∠KML = 70o") == "∠KLM = 70°; ∠KML = 70°");
  CHECK(read("ΔKLM III ΔQPM (∠∠∠)") == "△KLM ∼ △QPM [∠∠∠]");
  CHECK(read("ΔKLP ≡ ΔKMP (S∠S)") == "△KLP ≅ △KMP [S∠S]");
  CHECK(read("ANGLE KLM = 70 BASE ANGLES ARE EQUAL") == "∠KLM = 70° [BASE ANGLES ARE EQUAL]");
  CHECK(read("△KLM isos") == "△KLM is isosceles");
  CHECK(read("KP is a common side") == "KP = KP [common side]");
  CHECK(read("∠K is common") == "∠MKL = ∠MKL [common]");
  CHECK(read("alternate angles, KL ∥ QP: ∠LKQ = 48°") == "∠LKQ = 48° [alternate angles, KL ∥ QP]");
  CHECK(read("angle sum of triangle KLM gives 2∠KLM + 40° = 180°") == "2∠KLM + 40° = 180° [angle sum of triangle KLM]");
  CHECK(read("P and Q lie on the circle with diameter KM") == "P, Q, K, M lie on a circle");
  CHECK(read("If ∠KLM = 60°") == "∠KLM = 60°");
}

TEST_CASE("two equations with a blank between them are no product", "[work]") {
  CHECK(read("∠L = 70 ∠M = 70") == "∠KLM = 70°; ∠LMK = 70°");
  CHECK(read("∠L = 70°   ∠M = 70°") == "∠KLM = 70°; ∠LMK = 70°");
  CHECK(read("180-70=110 110/2=55") == "180 − 70 = 110; 55 = 55");
  CHECK(read("∠LKM = 180 - 2 ∠L = 40") == "∠LKM = 180° − 2∠KLM = 40°");  // but this is one
  CHECK(read("∠K = 2 1/2 ∠L") == "∠MKL = (5/2)∠KLM");
}

TEST_CASE("words that tell why are reasons, whatever angles they name", "[work]") {
  CHECK(read("∠MQP and ∠MKL are corresponding angles so ∠MQP = 40") == "∠MQP = 40° [∠MQP and ∠MKL are corresponding angles]");
  CHECK(read("△KLP and △KMP are congruent, SAS") == "△KLP ≅ △KMP [SAS]");
  CHECK(read("∠KLM = ∠KML, isosceles triangle KLM") == "∠KLM = ∠KML [isosceles triangle KLM]");
  CHECK(read("∠KLP = ∠QPM, KL ∥ QP") == "∠KLP = ∠QPM [KL ∥ QP]");
  CHECK(read("Given KL ∥ QP") == "KL ∥ QP [given]");
}

TEST_CASE("what is denied, asked or only wished is not claimed", "[work]") {
  for (const std::string line : {"KL is not parallel to QP", "KL ≠ QP", "It is not true that KL = KM"})
    CHECK(read(line).find("KL") == std::string::npos);
  for (const std::string line : {"We want to show that KL = KM", "Prove that KL = KM", "find ∠KLM"}) CHECK(read(line) == "REMARK");
  CHECK(read("Draw KP so that it bisects angle LKM") == "DRAWN {KP is drawn}KP bisects ∠LKM");  // claimed, not drawn
  CHECK(read("Draw the bisector of angle LKM and perpendicular to LM") == "UNREAD");
}

TEST_CASE("a number alone is what is asked", "[work]") {
  for (const std::string line : {"40", "= 40", "40°", "Answer: 40", "so 40"})
    CHECK(read(line).ends_with("∠LKM = 40°"));
  CHECK(read("I measured it with a protractor: 41").starts_with("∠LKM = 41° [I measured it"));
  CHECK(read("40", "triangle KLM\nKL = KM\nprove: ∠L = ∠M\n") == "UNREAD");
}

TEST_CASE("what is drawn goes the way of added lines", "[work]") {
  CHECK(read("Draw KR ∥ LM\n∠RKM = ∠KML (alt ∠s)") == "DRAWN {KR ∥ LM}\n∠RKM = ∠KML [alt ∠s]");
  CHECK(read("Join KP") == "DRAWN {KP is drawn}");
  CHECK(read("Produce LM to R") == "DRAWN {L, M, R lie on a line in this order}");
  CHECK(read("Let R be the midpoint of KL") == "DRAWN {R is the midpoint of KL}");
  CHECK(read("Construct the bisector of ∠LKM, meeting LM at R") == "DRAWN {KR bisects ∠LKM}{R lies on line LM}");
  CHECK(read("Draw a line through K") == "UNREAD");
  // as our own pages print it: the bracket says what the new points are
  CHECK(read("Through M draw the line parallel to KL, meeting KP (MR ∥ KL; R lies on line KP)\nMR ∥ KL") ==
        "DRAWN {MR ∥ KL}{R lies on line KP}\nMR ∥ KL");
}

TEST_CASE("a letter stands for the angle that the pupil gives it", "[work]") {
  CHECK(read("Let y = ∠KLM\ny + y + ∠K = 180") == "NAMING\n∠KLM + ∠KLM + ∠MKL = 180°");
  CHECK(read("∠KLM = ∠KML = z\n∠LKM = 180 − 2z") == "∠KLM = ∠KML\n∠LKM = 180° − 2∠KML");
  // a number of the problem stays what it is
  CHECK(read("let x = ∠KML", "triangle KLM\n∠KLM = x\n∠KML = 2x\n∠LKM = 30\nfind: x\n") == "x° = ∠KML");
}

TEST_CASE("a claim makes no points", "[work]") {
  const PupilWork work = read_work(trellis, "∠KLZ = 70\nZ is on KL\nKL ∥ ZP\n");
  for (const WorkLine& line : work.lines) {
    CHECK(line.kind == WorkKind::unread);
    CHECK(line.unknown_point);
    CHECK(line.trouble.find("no point Z") != std::string::npos);
  }
  CHECK(work.problem.names.points.size() == 5);
  CHECK(work.problem.diagnostics.empty());
}

TEST_CASE("hostile lines are kept and not read", "[work]") {
  const auto kind = [](const std::string& line) { return read_work(trellis, line).lines.at(0).kind; };
  CHECK(kind(std::string("∠KLM \0 = 70", 12)) == WorkKind::unread);
  CHECK(kind("\xFF\xFE") == WorkKind::unread);
  CHECK(kind("∠KLM = " + std::string(1'000'000, '(')) == WorkKind::unread);
  CHECK(kind("x = " + std::string(500, '(') + "1" + std::string(500, ')')) == WorkKind::unread);
  std::string many;
  for (int i = 0; i < 200; ++i) many += "∠KLM = " + std::to_string(i) + "\n";
  CHECK(read_work(trellis, many).lines.size() == 200);
  const PupilWork inside = read_work(trellis + "work: KL = \xFF KM\nwork: KL = KM\n");
  CHECK(inside.problem.diagnostics.empty());
  CHECK(inside.lines.at(0).kind == WorkKind::unread);
  CHECK(inside.lines.at(1).kind == WorkKind::claim);
}

TEST_CASE("work stands in the problem, line by line or below its keyword", "[work]") {
  const PupilWork lines = read_work(trellis + "work: KL = KM\nwork: ∠L = 70\n");
  REQUIRE(lines.lines.size() == 2);
  CHECK(lines.lines[1].number == 2);
  const PupilWork block = read_work(trellis + "work:\nGiven: KL = KM\nTo prove: nothing\n∠L = 70\nAnswer: 40\ntaught: triangles\n");
  REQUIRE(block.lines.size() == 4);
  CHECK(block.lines[0].reasons.at(0).text == "given");
  CHECK(block.lines[1].kind == WorkKind::remark);
  CHECK(describe(block.lines[3].claims.at(0), block.problem.names) == "∠LKM = 40°");
  CHECK(block.problem.goals.size() == 1);
  CHECK(block.problem.taught.size() == 1);
}
