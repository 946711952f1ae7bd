// Mark schemes: their files, and the scheme of a way. The way through the laths and its scheme are the ruling of our
// classroom notes; codes and what they stand for: ZA5 (S, R, S/R), UK2 (communication marks apart from method and accuracy),
// N1 (an algebraic step needs no reason). The rest is common practice.
#include <catch2/catch.hpp>

#include "prover/base/source.hpp"
#include "prover/marking/scheme.hpp"
#include "prover/rule/schemes.hpp"

#include "tests/unit/marking/ways.hpp"

using namespace prover;

namespace {

std::vector<std::string> texts(const Scheme& scheme) {
  std::vector<std::string> out;
  for (const SchemeRow& row : scheme.rows) out.push_back(text_of(row, scheme));
  return out;
}
Scheme scheme(const AnswerProof& way, const char* policy, SchemeRequest request = {}) {
  return scheme_of(way, standard_catalogue(), *find_scheme(policy), request);
}
using Texts = std::vector<std::string>;

std::string complaint(std::string text) {
  std::string out;
  for (const Diagnostic& mistake : parse_scheme({"lath.scheme", text}).diagnostics) out += render(mistake, "lath.scheme", text);
  return out;
}
// The text of a scheme of the program with a line exchanged.
std::string changed(const std::string& field, const std::string& instead) {
  for (const RuleFile& file : builtin_scheme_files()) {
    if (!file.name.ends_with("plain.scheme")) continue;
    std::string text = file.text;
    const std::size_t at = text.find("\n  " + field + " ") + 1, end = text.find('\n', at);
    return text.replace(at, end - at, instead);
  }
  return {};
}

}  // namespace

TEST_CASE("every scheme of the program is read, names all its policies, and says from where each is", "[marking][scheme]") {
  REQUIRE(standard_schemes().size() >= 5);
  for (const RuleFile& file : builtin_scheme_files()) {
    INFO(file.name);
    const ParsedScheme parsed = parse_scheme(file);
    for (const Diagnostic& mistake : parsed.diagnostics) UNSCOPED_INFO(render(mistake, file.name, file.text));
    CHECK(parsed.diagnostics.empty());
    CHECK(file.name == "schemes/" + parsed.policy.id + ".scheme");
    CHECK(parsed.policy.rows.size() >= 23);
    for (const SchemePolicy::Row& row : parsed.policy.rows) CHECK(row.source != "");
  }
  CHECK(default_scheme(Register::plain).id == "plain");
  CHECK(default_scheme(Register::uk).id == "uk");
  CHECK(default_scheme(Register::us).id == "us");
  CHECK(default_scheme(Register::sa).id == "sa");
}

TEST_CASE("a mistake in a scheme file is shown in its place, with a way out", "[marking][scheme]") {
  CHECK(complaint(changed("nickname", "  nickname refused from \"ZA1\"")).empty());
  CHECK(complaint(changed("nickname", "  nickname perhaps from \"ZA1\"")).find("`nickname` is not \"perhaps\"") != std::string::npos);
  CHECK(complaint(changed("nickname", "  nickname perhaps from \"ZA1\"")).find("try: write accepted or refused") != std::string::npos);
  CHECK(complaint(changed("nickname", "  nickname refused")).find("does not say from where it is") != std::string::npos);
  CHECK(complaint(changed("nickname", "  nicknam refused from \"ZA1\"")).find("did you mean `nickname`?") != std::string::npos);
  CHECK(complaint(changed("nickname", "  # nothing")).find("no `nickname`") != std::string::npos);
  CHECK(complaint(changed("nickname", "  nickname refused from \"ZA1\"\n  nickname refused from \"ZA1\"")).find("is here twice") != std::string::npos);
  CHECK(complaint(changed("statement", "  statement s 1 from \"ZA5\"")).find("a code of capital letters") != std::string::npos);
  CHECK(complaint(changed("statement", "  statement S 0 from \"ZA5\"")).find("1 to 9 marks") != std::string::npos);
  CHECK(complaint(changed("both", "")).find("no `both`") != std::string::npos);
  CHECK(complaint(changed("largest-gap", "  largest-gap wide from \"ZA5\"")).find("a number from 0 to 9") != std::string::npos);
  CHECK(complaint("").find("begins with `scheme`") != std::string::npos);
  CHECK(complaint("rule lath").find("begins with `scheme`") != std::string::npos);
}

TEST_CASE("the scheme of the laths: S/R, S/R, S", "[marking][scheme]") {
  CHECK(texts(scheme(laths(), "sa")) == Texts{"S/R ∠LKQ = 52° (alternate angles, KL ∥ PQ)",
                                              "S/R ∠KLQ = ∠KQL (angles opposite equal sides, KL = KQ)", "S ∠KLQ = 64°"});
  CHECK(scheme(laths(), "sa").total == 3);
  CHECK(scheme(laths(), "plain").total == 3);
}

TEST_CASE("where reasons are asked for every line, the sum that gives the answer has one, too", "[marking][scheme]") {
  CHECK(texts(scheme(laths(), "us")) == Texts{"S R ∠LKQ = 52° (alternate angles, KL ∥ PQ)",
                                              "S R ∠KLQ = ∠KQL (angles opposite equal sides, KL = KQ)",
                                              "S R ∠KLQ = 64° (angle sum of triangle KLQ)"});
}

TEST_CASE("method, accuracy and communication: reasons stand apart", "[marking][scheme]") {
  const Scheme uk = scheme(laths(), "uk");
  CHECK(texts(uk) == Texts{"B1 ∠LKQ = 52° (alternate angles, KL ∥ PQ)", "B1 ∠KLQ = ∠KQL (angles opposite equal sides, KL = KQ)",
                           "A1 ∠KLQ = 64° (angle sum of triangle KLQ)", "C1 a reason given", "C1 all reasons given"});
  CHECK(uk.total == 5);
}

TEST_CASE("a problem of one step keeps its reason", "[marking][scheme]") {
  // Else nothing would be asked for but the number.
  CHECK(texts(scheme(one_sum(), "sa")) == Texts{"S/R ∠LKM = 70° (angle sum of triangle KLM)"});
  CHECK(codes_of(scheme(one_sum(), "uk").rows[0], scheme(one_sum(), "uk")) == "M1 A1");
}

TEST_CASE("a reason is needed once; algebra needs none", "[marking][scheme]") {
  const SchemeRequest prove{std::nullopt, false, false};
  CHECK(texts(scheme(angle_sum(), "sa", prove)) ==
        Texts{"S/R ∠PKL + ∠LKM + ∠MKQ = 180° (angles on the straight line PKQ)", "S/R ∠PKL = ∠KLM (alternate angles, PQ ∥ LM)",
              "S ∠MKQ = ∠KML", "S ∠KLM + ∠LKM + ∠KML = 180°"});
  // Not where every line has its reason; the last line is algebra there as well.
  CHECK(codes_of(scheme(angle_sum(), "us", prove).rows[2], scheme(angle_sum(), "us", prove)) == "S R");
  CHECK(codes_of(scheme(angle_sum(), "us", prove).rows[3], scheme(angle_sum(), "us", prove)) == "S");
}

TEST_CASE("a scheme fits the marks that the question gives, or says that it cannot", "[marking][scheme]") {
  for (const char* policy : {"sa", "plain", "us", "uk", "strict", "friendly"})
    for (int total = 1; total <= 6; ++total) {
      INFO(policy << " " << total);
      const Scheme fitted = scheme(laths(), policy, {total, true, false});
      int sum = 0;
      for (const SchemeMark& mark : fitted.marks) sum += mark.marks;
      CHECK(sum == fitted.total);
      CHECK((fitted.total == total) == fitted.note.empty());
      if (total >= 2 && total <= 5) CHECK(fitted.total == total);
    }
  CHECK(texts(scheme(laths(), "sa", {4, true, false}))[0] == "S R ∠LKQ = 52° (alternate angles, KL ∥ PQ)");
  CHECK(texts(scheme(laths(), "sa", {2, true, false})).size() == 2);
  CHECK(scheme(laths(), "sa", {20, true, false}).note.find("gives 20 marks") != std::string::npos);
}

TEST_CASE("what the question says about marks", "[marking][scheme]") {
  const auto total = [](const char* text) { return scheme_request(text).total.value_or(0); };
  CHECK(total("triangle: KLM\nfind: angle KLM [4]\n") == 4);
  CHECK(total("triangle: KLM\nfind: angle KLM (3 marks)\n") == 3);
  CHECK(total("triangle: KLM\nfind: angle KLM. (1 mark)\n") == 1);
  CHECK(total("triangle: KLM\n(a) find: angle KLM [2]\n(b) hence prove: KL = KM [3]\n") == 5);
  CHECK(total("triangle: KLM\nfind: angle KLM\n") == 0);
  CHECK(total("circle: centre O through K, L, M (in this order)\nfind: angle KLM\n") == 0);
  CHECK(total("triangle: KLM\nangle KLM = 2(40)\nfind: angle KLM\n") == 0);
  CHECK(total("triangle: KLM\nfind: angle KLM\nwork: KL = KM [2]\n") == 0);  // a pupil's number of a line
  CHECK(scheme_request("triangle: KLM\nfind: angle KLM\n").finds);
  CHECK_FALSE(scheme_request("triangle: KLM\nprove: KL = KM\n").finds);
  CHECK(scheme_request("triangle: KLM\nfind: angle KLM. Give reasons.\n").reasons_asked);
  CHECK_FALSE(scheme_request("triangle: KLM\nfind: angle KLM\n").reasons_asked);
}

TEST_CASE("other words and other routes to the same fact are accepted", "[marking][scheme]") {
  const SchemeRow row = scheme(laths(), "sa").rows[0];
  const auto accepts = [&](const char* words) { return std::count(row.other_words.begin(), row.other_words.end(), words) == 1; };
  CHECK(accepts("alt ∠s"));
  CHECK(accepts("Alternate Interior Angles Theorem"));
  CHECK_FALSE(accepts("Z angles"));
  CHECK(row.other_routes == "or by corresponding angles or co-interior angles, in two lines");
}
