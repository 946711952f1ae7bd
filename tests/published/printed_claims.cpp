// Whatever our own pages print as a line of a proof can be read back as a pupil's line, and says then what was printed:
// told hints are given back as work. Equations are compared by their value for sizes drawn at random, worked out here from
// the printed text alone; facts by their words. The problems are the published ones, with their sources in the files.
#include <tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>

#include "prover/language/work.hpp"
#include "prover/prove.hpp"

using namespace prover;

namespace {

struct Item {
  std::string id, text;
};

std::vector<Item> published() {
  std::vector<Item> items;
  for (const std::string name : {"classroom", "euclid", "theorems"}) {
    std::ifstream file(std::string(TESTS_DIR) + "/published/" + name + ".json");
    const nlohmann::json data = nlohmann::json::parse(file);
    for (const nlohmann::json& item : data.is_array() ? data : data.contains("items") ? data["items"] : data["problems"]) {
      std::string text;
      for (const nlohmann::json& fact : item["facts"]) text += fact.get<std::string>() + "\n";
      if (item.contains("add") && item["add"].is_string()) text += "add: " + item["add"].get<std::string>() + "\n";
      text += (item["answer"].is_boolean() ? "prove: " : "find: ") + item["ask"].get<std::string>() + "\n";
      items.push_back({item["id"], text});
    }
  }
  return items;
}

// A size for each name, the same for "∠KLM" and "∠MLK", "KL" and "LK".
double size_of(std::string name) {
  const std::size_t angle = name.find("∠");
  const std::size_t first = angle == std::string::npos ? 0 : angle + std::string("∠").size();
  if (name.size() > first + 1 && name.back() < name[first]) std::swap(name.back(), name[first]);
  std::uint64_t hash = 1469598103934665603U;
  for (const char c : name) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
  return 1.0 + static_cast<double>(hash % 100003) / 1000.0;
}

// The value of a printed sum: "(180° − ∠KLM) ÷ 2", "25 5/7°", "½∠KLM", "3x − 180°".
class Sum {
 public:
  Sum(std::string text, const std::map<std::string, std::string>& letters) : text_(std::move(text)), letters_(letters) {}
  double value() {
    const double sum = expression();
    REQUIRE(at_ == text_.size());
    return sum;
  }

 private:
  bool take(std::string_view sign) {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    if (std::string_view(text_).substr(at_, sign.size()) != sign) return false;
    at_ += sign.size();
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    return true;
  }
  bool digit() const { return at_ < text_.size() && text_[at_] >= '0' && text_[at_] <= '9'; }
  double number() {
    std::size_t used = 0;
    const double value = std::stod(text_.substr(at_), &used);
    at_ += used;
    return value;
  }
  double expression() {
    double total = take("−") ? -product() : product();
    for (;;) {
      if (take("+")) {
        total += product();
      } else if (take("−")) {
        total -= product();
      } else {
        return total;
      }
    }
  }
  double product() {
    double total = factor();
    for (;;) {
      if (at_ + 1 < text_.size() && text_[at_] == ' ') take(" ");
      take("°");
      const std::string_view rest = std::string_view(text_).substr(std::min(at_, text_.size()));
      if (rest.empty() || rest.starts_with("+") || rest.starts_with(")") || rest.starts_with("−") || rest.starts_with(" "))
        return total;
      if (take("÷") || take("/")) {
        total /= factor();
      } else {
        take("×");
        total *= factor();
      }
    }
  }
  double factor() {
    if (take("(")) {
      const double inside = expression();
      REQUIRE(take(")"));
      return inside;
    }
    for (const auto& [glyph, value] : {std::pair{"½", 0.5}, {"⅓", 1 / 3.0}, {"⅔", 2 / 3.0}, {"¼", 0.25}, {"¾", 0.75}})
      if (take(glyph)) return value;
    if (digit()) {
      double value = number();
      const bool mixed = at_ + 1 < text_.size() && text_[at_] == ' ' && text_[at_ + 1] >= '0' && text_[at_ + 1] <= '9';
      for (const auto& [glyph, part] : {std::pair{"⅓", 1 / 3.0}, {"⅔", 2 / 3.0}})
        if (!mixed && take(glyph)) value += part;
      if (mixed) {
        ++at_;  // 25 5/7
        const double above = number();
        REQUIRE(take("/"));
        value += above / number();
      }
      return value;
    }
    std::string name;
    if (take("reflex")) name = "reflex ";
    if (take("∠")) name += "∠";
    while (at_ < text_.size() && ((text_[at_] >= 'A' && text_[at_] <= 'Z') || (name.empty() && text_[at_] >= 'a' && text_[at_] <= 'z'))) {
      name += text_[at_++];
      if (name.size() == 1 && name[0] >= 'a') break;
    }
    REQUIRE_FALSE(name.empty());
    const auto letter = letters_.find(name);
    return size_of(letter == letters_.end() ? name : letter->second);
  }

  std::string text_;
  std::size_t at_ = 0;
  const std::map<std::string, std::string>& letters_;
};

double value_of(const Expression& expression, const Names& names) {
  double total = 0;
  for (const Term& term : expression.terms) {
    double size = 1;
    if (const Angle* angle = std::get_if<Angle>(&term.quantity)) size = size_of(describe(*angle, names));
    if (const Segment* segment = std::get_if<Segment>(&term.quantity))
      size = size_of(names.of(segment->a) + names.of(segment->b));
    if (const Number* number = std::get_if<Number>(&term.quantity)) size = size_of(number->name);
    total += term.coefficient.to_double() * size;
  }
  return total;
}

std::vector<std::string> split(const std::string& text, const std::vector<std::string>& signs) {
  std::vector<std::string> parts = {""};
  for (std::size_t i = 0; i < text.size();) {
    std::size_t taken = 0;
    for (const std::string& sign : signs)
      if (taken == 0 && text.compare(i, sign.size(), sign) == 0) taken = sign.size();
    if (taken > 0) {
      parts.emplace_back();
    } else {
      parts.back() += text[i];
    }
    i += std::max<std::size_t>(taken, 1);
  }
  return parts;
}

// What is wrong with the way in which this line was read; empty: nothing.
std::string misread(const WorkLine& line, const AnswerStep& step, const PupilWork& work,
                    std::map<std::string, std::string>& letters) {
  if (step.claim.starts_with("The givens cannot all hold")) return line.kind == WorkKind::remark ? "" : "not a remark";
  if (line.kind == WorkKind::construction) return step.rule == "join" || step.reason == "construction" ? "" : "taken for a drawing";
  if (line.kind == WorkKind::naming) {  // "Let ∠KLM = x"
    const std::vector<std::string> sides = split(step.claim.substr(4), {" = "});
    if (!step.claim.starts_with("Let ") || sides.size() != 2) return "taken for a naming";
    letters[sides[1]] = sides[0];
    return "";
  }
  if (line.kind != WorkKind::claim) return "not read: " + line.trouble;
  if (line.reasons.size() != 1 || line.reasons[0].text != step.reason) return "another reason";
  const std::vector<std::string> parts = split(step.claim, {", so ", "; but ", "; "});
  if (parts.size() != line.claims.size()) return "another number of claims";
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const Phrase& phrase = line.claims[i];
    if (phrase.predicate != Predicate::relation) {
      if (describe(phrase, work.problem.names) != parts[i]) return "says " + describe(phrase, work.problem.names);
      continue;
    }
    const std::vector<std::string> sides = split(parts[i], {" = "});
    if (sides.size() != phrase.relation.expressions.size()) return "another number of sides";
    for (std::size_t k = 0; k < sides.size(); ++k) {
      const double printed = Sum(sides[k], letters).value();
      if (std::abs(printed - value_of(phrase.relation.expressions[k], work.problem.names)) > 1e-6)
        return "another size for " + sides[k];
    }
  }
  return "";
}

}  // namespace

TEST_CASE("every printed line of a proof can be read back, and says what was printed", "[work][published]") {
  const std::vector<Item> items = published();
  REQUIRE(items.size() > 150);
  std::vector<Answer> answers(items.size());
  tbb::parallel_for(std::size_t{0}, items.size(), [&](std::size_t i) {
    ProveOptions options;
    options.wording = std::array{Register::plain, Register::us, Register::uk, Register::sa}[i % 4];
    options.budget = Budget::seconds(2);
    answers[i] = prove(items[i].text, standard_catalogue(), options);
  });
  std::size_t lines = 0;
  for (std::size_t i = 0; i < items.size(); ++i)
    for (const AnswerProof& proof : answers[i].proofs) {
      std::string told;
      for (const AnswerStep& step : proof.steps) told += step.claim + " (" + step.reason + ")\n";
      const PupilWork work = read_work(items[i].text, told);
      REQUIRE(work.lines.size() == proof.steps.size());
      std::map<std::string, std::string> letters;
      for (std::size_t k = 0; k < work.lines.size(); ++k, ++lines) {
        INFO(items[i].id << ": " << work.lines[k].text);
        CHECK(misread(work.lines[k], proof.steps[k], work, letters) == "");
      }
    }
  CHECK(lines > 600);
}
