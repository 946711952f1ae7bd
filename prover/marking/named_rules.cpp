#include "prover/marking/named_rules.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

bool names(const ReadReason& reason, RuleId rule) {
  return std::find(reason.rules.begin(), reason.rules.end(), rule) != reason.rules.end();
}

bool among(const Form& form, const std::vector<Form>& forms) {
  return std::any_of(forms.begin(), forms.end(), [&](const Form& f) { return f.normalised() == form.normalised(); });
}

bool stands_at(const Phrase& place, const Instance& instance, const Ground& ground) {
  const Meaning meaning = meaning_of(place, ground.arrangement(), ground.unknowns());
  return std::any_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& form) {
    return among(form, instance.premises) || among(form, instance.conclusions);
  });
}

// No word but those that say a fact about named points.
bool says_places_only(const std::string& text) {
  static const std::array<std::string_view, 17> words = {"because", "bisect", "both", "bisects", "bisector", "is", "are", "and", "to", "of", "the", "parallel",
                                                         "perpendicular", "midpoint", "as", "since", "angle"};
  std::string word;
  for (const char c : text + " ") {
    if (c >= 'a' && c <= 'z') {
      word += c;
      continue;
    }
    if (word.size() > 1 && std::find(words.begin(), words.end(), word) == words.end()) return false;
    word.clear();
  }
  return true;
}

bool is_a_theorem_of_parallels(const Rule& rule) {
  return std::any_of(rule.given.begin(), rule.given.end(), [](const Phrase& p) { return p.predicate == Predicate::parallel; }) &&
         rule.topic == "parallel" && rule.kind != RuleKind::converse;
}

}  // namespace

NamedRules named_rules(const std::vector<WorkReason>& reasons, const Names& names, const Catalogue& catalogue, Register wording) {
  NamedRules result;
  result.named.assign(catalogue.rules.size(), false);
  for (const WorkReason& written : reasons)
    for (ReadReason& reason : read_reason(written.text, names, catalogue, wording)) {
      switch (reason.kind) {
        case ReasonKind::rule:
        case ReasonKind::nickname:
          for (const RuleId rule : reason.rules) result.named[rule.index()] = true;
          for (const RuleId rule : reason.rules) result.any = result.any || is_cited(catalogue[rule]);
          result.nickname = result.nickname || reason.kind == ReasonKind::nickname;
          break;
        case ReasonKind::vague: result.vague = true; break;
        case ReasonKind::given: result.given = true; break;
        case ReasonKind::working: result.working = true; break;
        case ReasonKind::sight: result.sight = true; break;
        case ReasonKind::measured: result.measured = true; break;
        case ReasonKind::unknown: result.unknown = true; break;
      }
      result.reasons.push_back(std::move(reason));
      result.texts.push_back(written.text);
    }
  return result;
}

bool is_honest(const NamedRules& named, const Ground& ground) {
  const Catalogue& catalogue = ground.options().catalogue;
  for (std::size_t r = 0; r < named.reasons.size(); ++r) {
    const ReadReason& reason = named.reasons[r];
    if (reason.kind == ReasonKind::given || reason.kind == ReasonKind::working) return true;
    const bool defines = reason.kind == ReasonKind::rule && !reason.rules.empty() &&
                         (!is_cited(catalogue[reason.rules[0]]) || catalogue[reason.rules[0]].kind == RuleKind::definition);
    if (defines) return true;
    const bool holds = !reason.places.empty() && std::all_of(reason.places.begin(), reason.places.end(), [&](const Phrase& place) {
      const Meaning meaning = meaning_of(place, ground.arrangement(), ground.unknowns());
      return !meaning.degenerate && !meaning.forms.empty() && std::all_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& form) {
        return ground.saturation().closure.entails(form);
      });
    });
    if (holds && says_places_only(named.texts[r])) return true;
  }
  return false;
}

bool places_fit(const NamedRules& named, const Support& support, const Ground& ground) {
  for (const ReadReason& reason : named.reasons)
    for (const Phrase& place : reason.places) {
      const bool is_parallel = place.predicate == Predicate::parallel;
      bool cited = false, fits = false;
      for (const int i : support.named)
        if (names(reason, ground.instance(i).rule)) {
          cited = true;
          fits = fits || stands_at(place, ground.instance(i), ground);
        }
      // Sides may be named by what is equal to them; parallels are named as they are.
      if (cited && !fits && (is_parallel || !ground.claim(place).follows)) return false;
    }
  return true;
}

bool parallels_named(const NamedRules& named, const Support& support, const Ground& ground) {
  for (const int i : support.named) {
    if (!is_a_theorem_of_parallels(ground.rule_of(i))) continue;
    const RuleId rule = ground.instance(i).rule;
    if (std::none_of(named.reasons.begin(), named.reasons.end(),
                     [&](const ReadReason& reason) { return names(reason, rule) && reason.lines_named; }))
      return false;
  }
  return true;
}

bool are_converses(RuleId a, RuleId b, const Catalogue& catalogue) {
  const auto root = [&](RuleId r) { return catalogue[r].family.empty() ? catalogue[r].id : catalogue[r].family; };
  return root(a) == root(b) + "-converse" || root(b) == root(a) + "-converse";
}

}  // namespace prover
