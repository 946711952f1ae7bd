// Reasons as pupils write them, each with the rule meant and with a twin: words much like them that must not name that rule.
// Sources: keys are those of the published table (tests/rules/reasons.tsv); the rest is common practice, from memory.
#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

#include "prover/marking/reason.hpp"
#include "prover/marking/reason_index.hpp"

using namespace prover;

namespace {

struct Said {
  const char* text;
  const char* rule;    // the first rule read; with ~ before it, one of them
  const char* twin;    // does not name it
  const char* source;  // of the text
};

const Said said[] = {
    // lines and points
    {"angles on a straight line add up to 180°", "angles-on-a-straight-line", "angles on parallel lines", "sec"},
    {"∠s on a str line", "angles-on-a-straight-line", "∠s on parallel lines", "ZA4"},
    {"<s on str. line", "angles-on-a-straight-line", "<s in str triangle", "common practice"},
    {"angles on a line", "angles-on-a-straight-line", "angle between line and chord", "common practice"},
    {"straight line angles = 180", "angles-on-a-straight-line", "triangle angles = 180", "common practice"},
    {"angles on straigth line", "angles-on-a-straight-line", "angles in a triangle", "common practice"},
    {"linear pair", "angles-on-a-straight-line", "vertical pair of angles", "US1"},
    {"Linear Pair Postulate", "angles-on-a-straight-line", "Parallel Postulate", "US1"},
    {"adj ∠s on a str line", "angles-on-a-straight-line", "adj ∠s of ∥m", "common practice"},
    {"straight line", "~angles-on-a-straight-line", "parallel line", "common practice"},
    {"angles on the straight line PKQ", "angles-on-a-straight-line", "chord PK of the circle", "common practice"},
    {"angles at a point add up to 360°", "angles-at-a-point", "angles at the centre", "sec"},
    {"∠s round a pt", "angles-at-a-point", "∠s at the centre", "ZA list, from memory"},
    {"∠s in a rev", "angles-at-a-point", "∠s in a semi-circle", "ZA list, from memory"},
    {"full turn is 360", "angles-at-a-point", "quadrilateral is 360", "common practice"},
    {"angles around a point", "angles-at-a-point", "tangents from a point", "US2"},
    {"vertically opposite angles are equal", "vertical-angles", "opposite angles of a parallelogram are equal", "sec"},
    {"vert opp ∠s =", "vertical-angles", "opp ∠s of ∥m", "ZA6"},
    {"verticaly oposite angels", "vertical-angles", "opposite angles of a cyclic quad", "common practice"},
    {"vertical angles are congruent", "vertical-angles", "alternate angles are congruent", "US1"},
    {"vert. opp. angles", "vertical-angles", "opp. sides equal", "common practice"},
    {"vertically opposite", "vertical-angles", "sides opposite equal angles", "common practice"},
    {"adj ∠s supp", "adjacent-supplementary-converse", "co-int ∠s supp", "ZA2"},
    {"angles add up to 180° so it is a straight line", "adjacent-supplementary-converse", "angles add up to 180° so the lines are parallel", "from memory"},
    {"angles in a right angle add up to 90°", "angles-in-a-right-angle", "angle in a semicircle is 90°", "from memory"},

    // parallels
    {"alternate angles are equal", "alternate-interior-angles", "alternate segment theorem", "UK4"},
    {"alt ∠s; KL ∥ MN", "alternate-interior-angles", "alt seg; KL ∥ MN", "ZA4"},
    {"alt <s, KL//MN", "alternate-interior-angles", "corr <s, KL//MN", "common practice"},
    {"alt angles (KL || MN)", "alternate-interior-angles", "co-int angles (KL || MN)", "common practice"},
    {"alternet angels", "alternate-interior-angles", "alternate exterior angles are congruent", "common practice"},
    {"alternative angles", "alternate-interior-angles", "alternate segments", "common practice"},
    {"Alternate Interior Angles Theorem", "alternate-interior-angles", "Alternate Exterior Angles Theorem", "US5"},
    {"angles alternate", "alternate-interior-angles", "angles opposite", "common practice"},
    {"altangles", "alternate-interior-angles", "baseangles", "common practice"},
    {"alternate angles because KL is parallel to MN", "alternate-interior-angles", "corresponding angles because KL is parallel to MN", "UK5"},
    {"since KL ∥ MN, alternate angles are equal", "alternate-interior-angles", "since alternate angles are equal, KL ∥ MN", "common practice"},
    {"corresponding angles are equal", "corresponding-angles", "corresponding sides of congruent triangles", "sec"},
    {"corresp ∠s; KL ∥ MN", "corresponding-angles", "corresp ∠s of ≡ Δs", "ZA7"},
    {"corrosponding angles", "corresponding-angles", "corresponding sides", "common practice"},
    {"corr. ∠s", "corresponding-angles", "corr. sides in prop", "common practice"},
    {"corresponding angles as KL is parallel to MN", "corresponding-angles", "alternate angles as KL is parallel to MN", "UK5"},
    {"Corresponding Angles Postulate", "corresponding-angles", "Converse of Corresponding Angles Postulate", "US3"},
    {"co-interior angles add up to 180°", "co-interior-angles", "angles in a triangle add up to 180°", "sec"},
    {"co-int ∠s; KL ∥ MN", "co-interior-angles", "int ∠s Δ", "ZA7"},
    {"allied angles sum to 180", "co-interior-angles", "angles in a triangle sum to 180", "sec"},
    {"cointerior angles", "co-interior-angles", "interior angles", "common practice"},
    {"same-side interior angles are supplementary", "co-interior-angles", "same-side exterior angles are supplementary", "US6"},
    {"Consecutive Interior Angles Theorem", "co-interior-angles", "Consecutive Exterior Angles Theorem", "US5"},
    {"alternate angles are equal so the lines are parallel", "alternate-interior-angles-converse", "lines are parallel so alternate angles are equal", "sec"},
    {"if alternate angles are equal then the lines are parallel", "alternate-interior-angles-converse", "if lines are parallel then the alternate angles are equal", "common practice"},
    {"corresponding angles are equal, so parallel", "corresponding-angles-converse", "alternate angles are equal, so parallel", "common practice"},
    {"Converse of Corresponding Angles Theorem", "corresponding-angles-converse", "Converse of Alternate Interior Angles Theorem", "US6"},
    {"co-interior angles add up to 180° so the lines are parallel", "co-interior-angles-converse", "lines are parallel so co-interior angles add up to 180°", "sec"},
    {"KL ∥ MN because co-int angles add up to 180", "co-interior-angles-converse", "co-int angles add up to 180 because KL ∥ MN", "common practice"},
    {"converse of alternate angles", "alternate-interior-angles-converse", "converse of corresponding angles", "common practice"},
    {"alternate exterior angles are equal", "~alternate-exterior-angles", "alternate interior angles are equal", "US5"},
    {"both parallel to the same line", "parallel-transitive", "both perpendicular to the same line", "US3"},

    // triangles
    {"angles in a triangle add up to 180°", "triangle-angle-sum", "angles in a quadrilateral add up to 360°", "sec"},
    {"∠ sum in Δ", "triangle-angle-sum", "∠ sum in quad", "ZA2"},
    {"sum of ∠s in ΔKLM", "triangle-angle-sum", "ext ∠ of ΔKLM", "ZA2"},
    {"int ∠s Δ", "triangle-angle-sum", "ext ∠s Δ", "ZA2"},
    {"angle sum of triangle KLM", "triangle-angle-sum", "angle bisector of triangle KLM", "common practice"},
    {"angels in a trinagle", "triangle-angle-sum", "angels of a similar trinagle", "common practice"},
    {"triangle sum", "triangle-angle-sum", "triangle inequality", "common practice"},
    {"sum of angles in a triangle is 180", "triangle-angle-sum", "sum of angles on a straight line is 180", "common practice"},
    {"Triangle Angle-Sum Theorem", "triangle-angle-sum", "Exterior Angle Theorem", "US3"},
    {"180 in a triangle", "triangle-angle-sum", "180 on a straight line", "common practice"},
    {"the three angles of a triangle make 180 degrees", "triangle-angle-sum", "the three sides of a triangle are equal", "common practice"},
    {"exterior angle of a triangle equals the sum of the two opposite interior angles", "exterior-angle-of-triangle", "exterior angle of a cyclic quadrilateral equals the opposite interior angle", "sec"},
    {"ext ∠ of Δ", "exterior-angle-of-triangle", "ext ∠ of cyclic quad", "ZA2"},
    {"ext ∠ = sum of int opp ∠s", "exterior-angle-of-triangle", "interior and exterior angle make 180°", "common practice"},
    {"Exterior Angle Theorem", "exterior-angle-of-triangle", "Polygon Exterior Angle-Sum Theorem", "US3"},
    {"exteriour angle of triangle", "exterior-angle-of-triangle", "interiour angles of triangle", "common practice"},
    {"exterior angle equals sum of remote interior angles", "exterior-angle-of-triangle", "interior angles of a polygon", "common practice"},
    {"base angles of an isosceles triangle are equal", "isosceles-base-angles", "angles in an equilateral triangle are equal", "sec"},
    {"∠s opp equal sides", "isosceles-base-angles", "sides opp equal ∠s", "ZA2"},
    {"∠s opp = sides; KL = KM", "isosceles-base-angles", "sides opp = ∠s", "ZA2"},
    {"base angles", "isosceles-base-angles", "base of the triangle", "US18"},
    {"isoceles triangle, base angels equal", "isosceles-base-angles", "equilateral triangle", "common practice"},
    {"isos Δ", "~isosceles-base-angles", "equilat Δ", "common practice"},
    {"Isosceles Triangle Theorem", "isosceles-base-angles", "Triangle Angle-Sum Theorem", "US18"},
    {"base ∠s isos Δ", "isosceles-base-angles", "sum of ∠s in Δ", "common practice"},
    {"KL = KM so base angles are equal", "isosceles-base-angles", "opposite sides of a parallelogram are equal", "common practice"},
    {"angles opposite equal sides are equal", "isosceles-base-angles", "sides opposite equal angles are equal", "common practice"},
    {"sides opp equal ∠s", "isosceles-base-angles-converse", "∠s opp equal sides", "ZA2"},
    {"two equal angles so the triangle is isosceles", "isosceles-base-angles-converse", "the triangle is isosceles so two equal angles", "UK1"},
    {"2 angles equal therefore isosceles", "isosceles-base-angles-converse", "2 angles equal therefore parallel", "common practice"},
    {"Converse of Isosceles Triangle Theorem", "isosceles-base-angles-converse", "Isosceles Triangle base angles equal as given; angle sum", "from memory"},
    {"angles in an equilateral triangle are 60°", "equilateral-angles", "angles in an isosceles triangle", "UK3"},
    {"equilateral Δ", "equilateral-angles", "isosceles Δ", "common practice"},
    {"Equilateral triangle is equiangular", "~equilateral-angles", "similar triangles are equiangular and congruent", "from memory"},
    {"third angle of triangle", "third-angles", "third side of triangle", "from memory"},
    {"acute angles of a right triangle are complementary", "right-triangle-acute-angles", "angles of a right triangle are congruent", "from memory"},
    {"midpoint theorem", "midsegment", "definition of midpoint", "from memory"},
    {"Midpt Thm", "midsegment", "tan chord thm", "ZA2"},

    // congruence and similarity
    {"SSS", "congruent-sss", "SAS", "ZA2"},
    {"side side side", "congruent-sss", "side angle side", "common practice"},
    {"SAS congruency", "congruent-sas", "SSS congruency", "common practice"},
    {"S∠S", "congruent-sas", "∠∠S", "ZA2"},
    {"ASA", "congruent-asa", "SSA", "US3"},
    {"∠∠S", "~congruent-aas", "S∠S", "ZA1"},
    {"AAS", "~congruent-aas", "SSA", "US14"},
    {"RHS", "congruent-rhs", "SSS", "ZA1"},
    {"HL", "congruent-rhs", "SAS", "US3"},
    {"hypotenuse leg", "congruent-rhs", "hypotenuse of the circle", "US3"},
    {"90°HS", "congruent-rhs", "90°", "ZA1"},
    {"CPCTC", "congruent-parts", "SSS", "from memory"},
    {"corresponding parts of congruent triangles", "congruent-parts", "corresponding angles of similar triangles", "from memory"},
    {"≡ Δs", "congruent-parts", "⦀ Δs", "from memory"},
    {"corresponding angles of similar triangles are equal", "similar-parts", "corresponding angles of congruent triangles are equal", "from memory"},
    {"AA Similarity", "similar-aa", "SAS Similarity", "US9"},
    {"equiangular Δs", "~similar-aa", "isosceles Δs", "from memory"},
    {"common side", "common-side", "equal sides of the kite", "ZA6"},
    {"common ∠", "common-angle", "right ∠", "from memory"},
    {"Reflexive Property", "~common-side", "Transitive Property", "US17"},

    // circles
    {"radii", "radii-equal", "chords", "ZA6"},
    {"radii of the same circle are equal", "radii-equal", "chords of the same circle are equal", "sec"},
    {"OK = OL (radii)", "radii-equal", "OK = OL (given)", "ZA6"},
    {"angle at the centre is twice the angle at the circumference", "inscribed-angle-centre", "angles at the circumference in the same segment are equal", "sec"},
    {"∠ at centre = 2 × ∠ at circumference", "inscribed-angle-centre", "∠ in semi-circle = 90°", "ZA3"},
    {"angle at center double angle at circumfrence", "inscribed-angle-centre", "angle between radius and tangent", "common practice"},
    {"Inscribed Angle Theorem", "~inscribed-angle-centre", "Inscribed Quadrilateral Theorem", "N5"},
    {"angles in the same segment are equal", "same-segment-angles", "angles in alternate segment are equal", "UK2"},
    {"∠s in the same seg", "same-segment-angles", "converse ∠s in the same seg", "ZA3"},
    {"same arc", "same-segment-angles", "equal chords", "common practice"},
    {"angles subtended by the same chord", "same-segment-angles", "angles at the centre", "common practice"},
    {"line subtends equal ∠s", "same-segment-angles-converse", "diameter subtends right ∠", "ZA3"},
    {"angle in a semicircle is 90°", "semicircle-angle", "angle between tangent and radius is 90°", "sec"},
    {"∠ in semi-circle", "semicircle-angle", "∠ in same seg", "ZA1"},
    {"angle in semi circle", "semicircle-angle", "angle in circle", "common practice"},
    {"Thales' theorem", "semicircle-angle", "Converse of Thales' theorem", "US7"},
    {"diameter subtends right angle", "semicircle-angle", "chord subtends equal angles", "from memory"},
    {"opposite angles of a cyclic quadrilateral add up to 180°", "cyclic-opposite-angles", "opposite angles of a parallelogram are equal", "UK1"},
    {"opp ∠s of cyclic quad", "cyclic-opposite-angles", "opp ∠s quad supp", "ZA3"},
    {"opp angles of cycilc quad", "cyclic-opposite-angles", "ext angle of cycilc quad", "common practice"},
    {"opposite angles of a quadrilateral in a circle", "cyclic-opposite-angles", "opposite angles of a kite", "UK1"},
    {"Inscribed Quadrilateral Theorem", "cyclic-opposite-angles", "Converse of Inscribed Quadrilateral Theorem", "N5"},
    {"opp ∠s quad supp", "cyclic-opposite-angles-converse", "opp ∠s of cyclic quad", "ZA3"},
    {"opposite angles add up to 180 so cyclic quadrilateral", "cyclic-opposite-angles-converse", "cyclic quadrilateral so opposite angles add up to 180", "common practice"},
    {"converse opp ∠s of cyclic quad", "cyclic-opposite-angles-converse", "converse ext ∠ of cyclic quad", "ZA3"},
    {"ext ∠ of cyclic quad", "cyclic-exterior-angle", "opp ∠s of cyclic quad", "ZA3"},
    {"tan ⊥ radius", "tangent-radius", "line ⊥ radius", "ZA3"},
    {"tangent perpendicular to radius", "tangent-radius", "chord perpendicular to radius", "US8"},
    {"angle between tangent and radius is 90°", "tangent-radius", "angle between tangent and chord", "sec"},
    {"radius and tangent meet at 90", "tangent-radius", "radii meet at the centre", "common practice"},
    {"tangant meets radius at right angles", "tangent-radius", "tangents from a point", "common practice"},
    {"tan chord theorem", "tangent-chord-angle", "converse tan chord theorem", "ZA3"},
    {"alternate segment theorem", "tangent-chord-angle", "alternate angles theorem", "UK1"},
    {"alt seg", "tangent-chord-angle", "same seg", "common practice"},
    {"angle between tangent and chord", "tangent-chord-angle", "angle between tangent and radius", "US7"},
    {"Tans from common pt", "equal-tangents", "Lines through a common pt", "ZA3"},
    {"tangents from an external point are equal in length", "equal-tangents", "the tangent is perpendicular to the radius", "UK1"},
    {"two tangent theorem", "equal-tangents", "tangent chord theorem", "US8"},
    {"line from centre ⊥ to chord", "centre-perpendicular-chord", "line from centre to midpt of chord", "ZA3"},
    {"line from centre to midpt of chord", "centre-midpoint-chord", "line from centre ⊥ to chord", "ZA3"},
    {"perp bisector of chord", "chord-bisector-through-centre", "perp bisector of an angle", "ZA3"},
    {"equal chords; equal ∠s", "~equal-chords-equal-inscribed-angles", "∠s in the same seg", "ZA3"},

    // quadrilaterals and polygons
    {"angles in a quadrilateral add up to 360°", "quadrilateral-angle-sum", "angles at a point add up to 360°", "sec"},
    {"sum of ∠s in quad", "quadrilateral-angle-sum", "sum of ∠s in Δ", "from memory"},
    {"opposite angles of a parallelogram are equal", "parallelogram-opposite-angles", "opposite sides of a parallelogram are equal", "sec"},
    {"opp ∠s of ∥m", "parallelogram-opposite-angles", "opp sides of ∥m", "ZA9"},
    {"opp sides of //gm", "parallelogram-opposite-sides", "opp angles of //gm", "ZA9"},
    {"opposite sides of a parallelogram are parallel", "parallelogram-sides-parallel", "opposite angles of a parallelogram are equal", "from memory"},
    {"diagonals of a parallelogram bisect each other", "parallelogram-diagonals", "diagonals of a rhombus bisect the angles", "US12"},
    {"diags of rhombus", "~rhombus-diagonals-perpendicular", "sides of rhombus", "ZA4"},
    {"sides of a rhombus are equal", "rhombus-sides", "sides of a square are equal", "US12"},
    {"angles in a rectangle are 90°", "rectangle-angles", "angles in a semicircle are 90°", "US12"},
    {"diagonals of a rectangle are equal", "rectangle-diagonals", "diagonals of a kite are perpendicular", "N1"},
    {"opposite angles of a kite are equal", "kite-angles", "diagonal of a square", "sec"},
    {"interior angles of a polygon add up to (n − 2) × 180°", "polygon-interior-sum", "exterior angles of a polygon add up to 360°", "UK2"},
    {"exterior angles of a polygon add up to 360°", "polygon-exterior-sum", "interior angles of a polygon", "sec"},
    {"interior and exterior angles add up to 180°", "interior-exterior-pair", "co-interior angles add up to 180°", "sec"},
    {"sides of a regular pentagon", "~regular-polygon-sides", "sides of a kite", "common practice"},
};

Names knots() {
  Names names;
  for (const char* name : {"K", "L", "M", "N", "P", "Q", "O"}) names.points.emplace_back(name);
  return names;
}
std::vector<ReadReason> read(const std::string& text, Register wording = Register::uk) {
  return read_reason(text, knots(), standard_catalogue(), wording);
}
bool anywhere(const std::vector<ReadReason>& read, const std::string& id) {
  for (const ReadReason& reason : read)
    if (reason.kind == ReasonKind::rule)
      for (const RuleId rule : reason.rules)
        if (standard_catalogue()[rule].id == id) return true;
  return false;
}
std::string listed(const std::vector<ReadReason>& read) {
  std::string out;
  for (const ReadReason& reason : read) {
    out += out.empty() ? "" : " + ";
    for (const RuleId rule : reason.rules) out += standard_catalogue()[rule].id + " ";
  }
  return out;
}

}  // namespace

TEST_CASE("reasons as pupils write them name the rule meant, and their twins do not", "[reason]") {
  CHECK(std::size(said) >= 150);
  for (const Said& row : said) {
    const std::vector<ReadReason> found = read(row.text), twin = read(row.twin);
    const bool first = row.rule[0] != '~';
    const std::string id = first ? row.rule : row.rule + 1;
    INFO(row.text << " (" << row.source << "): " << listed(found));
    REQUIRE(standard_catalogue().find(id));
    CHECK(found[0].kind == ReasonKind::rule);
    CHECK(anywhere(found, id));
    if (first && !found[0].rules.empty()) CHECK(standard_catalogue()[found[0].rules[0]].id == id);
    INFO("twin " << row.twin << ": " << listed(twin));
    CHECK_FALSE(anywhere(twin, id));
  }
}

TEST_CASE("several reasons in one text are several, each with its places", "[reason]") {
  const Names names = knots();
  const auto two = read("alt ∠s, KL ∥ MN and ∠s on a str line");
  REQUIRE(two.size() == 2);
  CHECK(anywhere({two[0]}, "alternate-interior-angles"));
  CHECK(two[0].lines_named);
  REQUIRE(two[0].places.size() == 1);
  CHECK(describe(two[0].places[0], names) == "KL ∥ MN");
  CHECK(anywhere({two[1]}, "angles-on-a-straight-line"));
  CHECK_FALSE(two[1].lines_named);
  CHECK(two[1].places.empty());

  const auto sides = read("∠s opp equal sides, KL = KM; sum of ∠s in ΔKLM");
  REQUIRE(sides.size() == 2);
  CHECK(describe(sides[0].places.at(0), names) == "KL = KM");
  CHECK(sides[1].figures.at(0).size() == 3);
  CHECK(read("isosceles triangle and angles in a triangle add up to 180").size() == 2);
  CHECK(read("isosceles triangle, so base angles are equal").size() == 1);
  CHECK(read("radius and tangent meet at 90").size() == 1);
}

TEST_CASE("parallels count as named only where they are named", "[reason]") {
  for (const char* text : {"alt ∠s; KL ∥ MN", "alternate angles, KL and MN are parallel", "since KL//MN, alternate angles", "alternate angles KL||MN", "alternate angles, l ∥ m"})
    CHECK(read(text)[0].lines_named);
  // AB and CD are letters of the printed list of reasons, and no points of this figure.
  for (const char* text : {"alt ∠s", "alternate angles, parallel lines", "alt ∠s; AB ∥ CD", "alternate angles on KM"}) CHECK_FALSE(read(text)[0].lines_named);
  CHECK(read("alt ∠s; AB ∥ CD")[0].places.empty());
}

TEST_CASE("a bare name says nothing of the angles", "[reason]") {
  for (const char* text : {"alternate", "isosceles", "alternate angles", "angles in a triangle", "cyclic quadrilateral", "radii"}) CHECK_FALSE(read(text)[0].names_relation);
  for (const char* text : {"alternate angles are equal", "angles in a triangle add up to 180", "alternate segment theorem", "Alternate Interior Angles Theorem", "SSS", "tan ⊥ radius"})
    CHECK(read(text)[0].names_relation);
  // The South African list prints its short forms, so that they are enough there (ZA1).
  CHECK(read("alt ∠s; KL ∥ MN", Register::sa)[0].names_relation);
  CHECK(read("radii", Register::sa)[0].names_relation);
  // The word "opposite" is needed (an Australian school sheet in the published conventions).
  CHECK_FALSE(read("exterior angle equals the sum of the two interior angles")[0].names_relation);
  CHECK(read("exterior angle equals the sum of the two opposite interior angles")[0].names_relation);
}

TEST_CASE("the South African short form of a converse comes before the theorem there", "[reason]") {
  CHECK(standard_catalogue()[read("alt ∠s =", Register::sa)[0].rules[0]].id == "alternate-interior-angles-converse");
  CHECK(standard_catalogue()[read("alt ∠s; KL ∥ MN", Register::sa)[0].rules[0]].id == "alternate-interior-angles");
}

TEST_CASE("a misspelt word is corrected, and an accepted word never becomes another", "[reason]") {
  const ReasonVocabulary& vocabulary = reason_index(standard_catalogue())->vocabulary();
  for (const char* word : {"isoceles", "paralell", "corrosponding", "verticaly", "oposite", "trinagle", "cycilc", "perpindicular", "quadrilatral", "angels"}) {
    INFO(word);
    CHECK(vocabulary.find(word) == nullptr);
    CHECK(vocabulary.corrected(word) != nullptr);
  }
  for (const char* word : {"alternate", "exterior", "interior", "supplementary", "complementary", "opposite", "similar", "single", "chord", "radius", "median"})
    CHECK(vocabulary.find(word) != nullptr);  // so no correction is asked for
  for (const char* word : {"banana", "teacher2", "xyzzy", "qqqqqq", "wednesday"}) CHECK(vocabulary.corrected(word) == nullptr);
  CHECK(read("alternet angles are equal")[0].misspelt);
  CHECK_FALSE(read("alternate angles are equal")[0].misspelt);
}

TEST_CASE("one slip in a long word names the same rule or none", "[reason]") {
  // Letters left out, doubled, swapped or hit beside: what remains is the rule meant, or is not understood; never another rule.
  const std::pair<const char*, const char*> reasons[] = {{"alternate angles are equal", "alternate-interior-angles"},
                                                         {"corresponding angles are equal", "corresponding-angles"},
                                                         {"vertically opposite angles are equal", "vertical-angles"},
                                                         {"alternate segment theorem", "tangent-chord-angle"},
                                                         {"angles in a semicircle are right angles", "semicircle-angle"},
                                                         {"opposite angles of a cyclic quadrilateral are supplementary", "cyclic-opposite-angles"},
                                                         {"exterior angle of a triangle equals the sum of the opposite interior angles", "exterior-angle-of-triangle"}};
  std::mt19937 random(3);
  int right = 0, all = 0;
  for (const auto& [text, id] : reasons)
    for (int i = 0; i < 60; ++i) {
      std::string slip = text;
      std::size_t at = 0;
      do at = 1 + random() % (slip.size() - 2);
      while (slip[at - 1] == ' ' || slip[at] == ' ' || slip[at + 1] == ' ');
      switch (random() % 4) {
        case 0: slip.erase(at, 1); break;
        case 1: slip.insert(at, 1, slip[at]); break;
        case 2: std::swap(slip[at], slip[at + 1]); break;
        default: slip[at] = static_cast<char>('a' + random() % 26); break;
      }
      const auto found = read(slip);
      INFO(slip << ": " << listed(found));
      ++all;
      if (anywhere(found, id)) ++right;
      else CHECK(std::none_of(found.begin(), found.end(), [](const ReadReason& r) { return r.kind == ReasonKind::rule && r.names_relation; }));
    }
  CHECK(right * 10 >= all * 9);
}

TEST_CASE("a teacher's own rule is known by its own words", "[reason]") {
  std::vector<RuleFile> files = builtin_rule_files();
  files.push_back({"own/trellis-lemma.rule",
                   "rule trellis-lemma\n  title    \"the trellis lemma\"\n  kind     theorem\n  cost     1\n  says     \"Opposite crossing laths.\"\n"
                   "  given    equal lengths: AB = AC; triangle: ABC\n  then     angle ABC = angle ACB\n  plain    \"trellis lemma, {AB} = {AC}\"\n"
                   "  also     \"lath fact\"\n  why      Reflect it.\n  source   \"our own\"\n"
                   "  example  fires   triangle: PQR; equal lengths: PQ = PR   gives  angle PQR = angle PRQ\n"
                   "  example  silent  triangle: PQR; equal lengths: PQ = QR   gives  angle PQR = angle PRQ\n"});
  const LoadedCatalogue loaded = load_catalogue(files, Examples::kept);
  for (const auto& [file, mistakes] : loaded.mistakes)
    for (const Diagnostic& mistake : mistakes) FAIL_CHECK(file.name << ": " << mistake.message);
  const auto own = loaded.catalogue.find("trellis-lemma");
  REQUIRE(own);
  for (const char* text : {"trellis lemma, KL = KM", "by the trellis lemma", "treliss lemma", "lath fact", "trellis-lemma"}) {
    const auto found = read_reason(text, knots(), loaded.catalogue, Register::uk);
    INFO(text);
    REQUIRE(found.size() == 1);
    CHECK(std::find(found[0].rules.begin(), found[0].rules.end(), *own) != found[0].rules.end());
  }
  CHECK_FALSE(anywhere(read("trellis lemma"), "isosceles-base-angles"));
  const auto base = read_reason("base angles", knots(), loaded.catalogue, Register::uk);
  CHECK(std::find(base[0].rules.begin(), base[0].rules.end(), *own) == base[0].rules.end());
}
