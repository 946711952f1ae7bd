#include "prover/reading/claim_rows.hpp"

#include <algorithm>
#include <optional>

#include "prover/reading/number_text.hpp"

namespace prover {

namespace {

void append(std::string& text, bool positive, const std::string& what) {
  if (text.empty())
    text = positive ? what : "−" + what;
  else
    text += (positive ? " + " : " − ") + what;
}

Rational magnitude(const Rational& c) { return c.sign() < 0 ? -c : c; }

bool is_equality(const Form& claim) {
  return claim.terms.size() == 2 && claim.constant.is_zero() && (claim.terms[0].second + claim.terms[1].second).is_zero();
}

// One claim, written by the first of several ways that fits.
class Writer {
 public:
  Writer(const Form& claim, const Known& known, const NameBook& names, const RowOptions& options)
      : claim_(claim), known_(known), names_(names), options_(options), degrees_(names.has_angle(claim)), after_(known.system()) {
    for (const auto& [u, c] : claim.terms) {
      if (const auto size = known.size(u)) {
        out_.values_used.push_back(u);
        out_.in_letter |= !size->is_number();
      } else {
        open_.push_back(u);
      }
    }
    after_.add(claim);
  }

  ClaimRows write() {
    if (names_.compares(claim_)) {
      compare();
    } else if (open_.empty()) {
      if (!solve_for_letter()) exclude();
    } else if (open_.size() == 1) {
      solve_for_the_open_one();
    } else if (!solve_beside_a_known_group() && !solve_in_terms_of_one() && !solve_with_a_group_like_it()) {
      put_in_what_is_known();
    }
    return std::move(out_);
  }

 private:
  std::string amount(const Rational& v) const { return degrees_ ? degrees_text(v) : number_text(v); }
  std::string size_text(UnknownId u, const Size& size) const { return known_.text(size, names_.is_angle(u)); }
  // A known size as a term of a sum, `count` times.
  void append_size(std::string& text, bool positive, const Rational& count, UnknownId u) const {
    const Size size = *known_.size(u);
    if (size.is_number()) {
      const std::string value = size_text(u, size);
      append(text, positive, count.is_one() ? value : multiple_text(count, "") + " × " + value);
    } else if (size.rest.is_zero()) {
      append(text, positive == (size.multiple.sign() > 0), multiple_text(magnitude(count * size.multiple), known_.letter()));
    } else if (count.is_one() && positive) {
      append(text, true, size_text(u, size));
    } else {
      append(text, positive, (count.is_one() ? "" : multiple_text(count, "")) + "(" + size_text(u, size) + ")");
    }
  }
  // What stands on the other side when `t` is moved out: "180° − 52° − 64°". Terms in `left_out` are passed over.
  std::string other_side(const Rational& ct, const std::vector<UnknownId>& left_out) const {
    const Rational sign = ct.sign() > 0 ? Rational(-1) : Rational(1);
    const Rational constant = claim_.constant * sign;
    std::string text;
    if (constant.sign() > 0) append(text, true, amount(constant));
    for (const bool positive : {true, false})
      for (const auto& [u, c] : claim_.terms) {
        if (std::find(left_out.begin(), left_out.end(), u) != left_out.end()) continue;
        const Rational moved = c * sign;
        if ((moved.sign() > 0) == positive) append_size(text, positive, magnitude(moved), u);
      }
    if (constant.sign() < 0) append(text, false, amount(-constant));
    return text;
  }
  static std::string divided(std::string side, const Rational& size) {
    if (size.is_one()) return side;
    const Rational inverse = Rational(1) / size;
    const bool times = size < Rational(1) && inverse.is_integer();
    if (side.find(' ') != side.npos) side = "(" + side + ")";
    return times ? inverse.to_string() + " × " + side : side + " ÷ " + number_text(size);
  }

  void solve_for_the_open_one() {
    const UnknownId t = open_[0];
    const Rational ct = claim_.coefficient(t);
    Size size{0, claim_.constant};
    for (const auto& [u, c] : claim_.terms)
      if (u != t) size = size + c * *known_.size(u);
    size = (Rational(-1) / ct) * size;
    const std::string answer = size_text(t, size);
    if (size.is_number()) {
      out_.settled = t;
      out_.value = size.rest;
    }
    if (!size.is_number()) {
      out_.in_letter = true;
      out_.told.push_back(Form::of(t).add(Form::of(known_.called()), -size.multiple).add(Form::number(-size.rest)));
    }
    if (claim_.terms.size() == 1) {
      out_.rows = {names_.of(t) + " = " + answer};
      return;
    }
    if (is_equality(claim_)) {
      const UnknownId other = claim_.terms[0].first == t ? claim_.terms[1].first : claim_.terms[0].first;
      const std::string named = names_.of(other);
      out_.rows = {names_.of(t) + " = " + named + (named == answer ? "" : " = " + answer)};
      return;
    }
    const std::string side = divided(other_side(ct, {t}), magnitude(ct));
    // A whole made of parts keeps its parts' names.
    if (claim_.constant.is_zero() && magnitude(ct).is_one() && claim_.terms.size() == 3) {
      Form rest;
      for (const auto& [u, c] : claim_.terms)
        if (u != t) rest.terms.emplace_back(u, ct.sign() > 0 ? -c : c);
      out_.rows = {names_.of(t) + " = " + names_.sum(rest)};
      const bool obvious = !size.is_number() && std::all_of(rest.terms.begin(), rest.terms.end(), [&](const auto& r) {
        return known_.size(r.first)->rest.is_zero();
      });
      if (!obvious) out_.rows.push_back("= " + side);
    } else {
      out_.rows = {names_.of(t) + " = " + side};
    }
    if (side != answer && side != turned(size, names_.is_angle(t))) out_.rows.push_back("= " + answer);
  }
  // "36° + x" for "x + 36°".
  std::string turned(const Size& size, bool degrees) const {
    if (size.is_number() || size.rest.sign() <= 0 || size.multiple.sign() <= 0) return {};
    return (degrees ? degrees_text(size.rest) : number_text(size.rest)) + " + " + multiple_text(size.multiple, known_.letter());
  }

  // Everything is known in terms of the letter: "so x + 2x + 2x = 180°", "x = 36°".
  bool solve_for_letter() {
    const UnknownId t = known_.called();
    if (!t.valid() || known_.value(t) || !after_.value(t)) return false;
    out_.rows = {names_.equation(claim_)};
    std::string left, right;
    for (const auto& [u, c] : claim_.terms) append_size(c.sign() > 0 ? left : right, true, magnitude(c), u);
    if (claim_.constant.sign() < 0) append(right, true, amount(-claim_.constant));
    if (claim_.constant.sign() > 0) append(left, true, amount(claim_.constant));
    if (right.empty()) right = "0";
    if (left.empty()) left = "0";
    if (out_.rows[0] != left + " = " + right) out_.rows.push_back("so " + left + " = " + right);
    out_.settled = t;
    out_.value = *after_.value(t);
    const std::string asked = options_.wanted.contains(t) ? names_.of(t) + " = " : "";
    out_.rows.push_back("so " + asked + known_.letter() + " = " + (names_.is_angle(t) ? degrees_text(out_.value) : number_text(out_.value)));
    return true;
  }

  // "∠KML > ∠KLM = 100°": one of the two is known.
  void compare_two(int sign) {
    UnknownId side[2];
    for (const auto& [u, c] : claim_.terms)
      if (!names_.is_excess(u)) side[c.sign() == sign ? 0 : 1] = u;
    for (const int known : {1, 0})
      if (const auto size = known_.size(side[known]); size && !known_.size(side[1 - known]))
        out_.rows = {names_.of(side[1 - known]) + (known == 1 ? " > " : " < ") + names_.of(side[known]) + " = " + size_text(side[known], *size)};
  }

  // "KL + LM > KM", and when all numbers are known and do not fit: "but 1 + 2 = 3 is not more than 5".
  void compare() {
    out_.rows = {names_.inequality(claim_)};
    std::string side[2];
    Rational total[2];
    int terms[2] = {0, 0}, sign = 0;
    for (const auto& [u, c] : claim_.terms)
      if (names_.is_excess(u)) sign = -c.sign();
    for (const auto& [u, c] : claim_.terms) {
      if (names_.is_excess(u)) continue;
      const auto value = known_.value(u);
      if (!value) {
        const bool two = claim_.terms.size() == 3 && claim_.constant.is_zero();
        if (two)
          compare_two(sign);
        else
          out_.values_used.clear();
        return;
      }
      const int s = c.sign() == sign ? 0 : 1;
      append_size(side[s], true, magnitude(c), u);
      total[s] += magnitude(c) * *value;
      ++terms[s];
    }
    if (!claim_.constant.is_zero()) {
      const int s = claim_.constant.sign() == sign ? 0 : 1;
      append(side[s], true, amount(magnitude(claim_.constant)));
      total[s] += magnitude(claim_.constant);
      ++terms[s];
    }
    for (const int s : {0, 1})
      if (side[s].empty()) side[s] = amount(0);
    const auto full = [&](int s) { return terms[s] > 1 ? side[s] + " = " + amount(total[s]) : side[s]; };
    const bool fits = total[0] > total[1];
    if (fits) return;
    if (terms[0] == 1 && terms[1] == 1) {
      std::string both;
      for (const auto& [u, c] : claim_.terms)
        if (!names_.is_excess(u)) both += (both.empty() ? "but " : " and ") + names_.of(u) + " = " + size_text(u, *known_.size(u));
      out_.rows.push_back(both);
      return;
    }
    out_.rows.push_back("but " + full(0) + " is not more than " + full(1));
  }

  // All numbers are known. When they do not fit: "but 50° + 55° + 80° = 185°", "but 110° is not 45° + 75° = 120°".
  void exclude() {
    out_.rows = {names_.equation(claim_)};
    if (known_.reduce(claim_).is_zero()) return;
    if (claim_.terms.size() == 1) {
      out_.rows.push_back("but " + names_.of(claim_.terms[0].first) + " = " + size_text(claim_.terms[0].first, *known_.size(claim_.terms[0].first)));
      return;
    }
    if (is_equality(claim_)) {
      std::string both;
      for (const auto& [u, c] : claim_.terms) both += (both.empty() ? "but " : " and ") + names_.of(u) + " = " + size_text(u, *known_.size(u));
      out_.rows.push_back(both);
      return;
    }
    std::string side[2];
    Rational total[2];
    int terms[2] = {0, 0};
    for (const auto& [u, c] : claim_.terms) {
      const int s = c.sign() > 0 ? 0 : 1;
      append_size(side[s], true, magnitude(c), u);
      total[s] += magnitude(c) * *known_.value(u);
      ++terms[s];
    }
    const int s = claim_.constant.sign() > 0 ? 0 : 1;
    if (!claim_.constant.is_zero()) {
      if (side[s].empty()) {  // a sum with a fixed value
        const int o = 1 - s;
        out_.rows.push_back("but " + side[o] + " = " + amount(total[o]));
        return;
      }
      append(side[s], true, amount(magnitude(claim_.constant)));
      total[s] += magnitude(claim_.constant);
      ++terms[s];
    }
    const auto full = [&](int k) { return terms[k] > 1 ? side[k] + " = " + amount(total[k]) : side[k]; };
    const int first = terms[0] <= terms[1] ? 0 : 1;
    out_.rows.push_back("but " + side[first] + " is not " + full(1 - first));
  }

  // "∠AED = 180° − (∠DAE + ∠ADE)", "= 180° − 90°", "= 90°": the others are known together though not one by one.
  bool solve_beside_a_known_group() {
    std::vector<UnknownId> targets;
    for (const UnknownId u : open_)
      if (options_.wanted.contains(u)) targets.insert(targets.begin(), u);
      else targets.push_back(u);
    for (const UnknownId t : targets) {
      const Rational ct = claim_.coefficient(t);
      if (!after_.value(t) || !magnitude(ct).is_one()) continue;
      Form group;
      int positive = 0;
      for (const auto& [u, c] : claim_.terms) {
        if (u == t || known_.size(u)) continue;
        const Rational moved = ct.sign() > 0 ? -c : c;
        group.terms.emplace_back(u, moved);
        positive += moved.sign() > 0;
      }
      const int all = static_cast<int>(group.terms.size());
      if (all < 2 || (positive != 0 && positive != all)) continue;
      const Form together = known_.reduce(group);
      if (!together.terms.empty() || together.constant.is_zero()) continue;
      const Rational total = together.constant;
      group.constant = -total;
      out_.relations_used = {group};
      Form shown = positive == all ? group : -group;
      shown.constant = 0;
      std::vector<UnknownId> left_out{t};
      for (const auto& [u, c] : group.terms) left_out.push_back(u);
      const std::string rest = other_side(ct, left_out);
      std::string named = rest, counted = rest;
      append(named, positive == all, positive == all || rest.empty() ? names_.sum(shown) : "(" + names_.sum(shown) + ")");
      append(counted, positive == all, amount(magnitude(total)));
      out_.settled = t;
      out_.value = *after_.value(t);
      out_.rows = {names_.of(t) + " = " + named, "= " + counted};
      if (const std::string answer = amount(out_.value); counted != answer) out_.rows.push_back("= " + answer);
      return true;
    }
    return false;
  }

  // The claim with every open unknown written as a multiple of t: Σ multiples = total, numbers moved to the right.
  struct InTermsOf {
    std::vector<Rational> multiples;
    Rational coefficient;         // their sum
    Rational total;
    bool plain = true, whole = true;  // nothing added to a multiple; all multiples whole
    int rests = 0;                    // how many have something added
    std::vector<Form> relations;  // by which the unknowns are tied to t
  };
  std::optional<InTermsOf> in_terms_of(UnknownId t) const {
    InTermsOf out;
    out.total = -claim_.constant;
    const Form ft = known_.reduce(Form::of(t));
    for (const auto& [u, c] : claim_.terms) {
      if (const auto v = known_.value(u)) {
        out.total -= c * *v;
        continue;
      }
      const Form fu = known_.reduce(Form::of(u));
      Rational ratio = 1, rest = 0;
      if (u != t) {
        if (ft.terms.size() != 1 || fu.terms.size() != 1 || fu.terms[0].first != ft.terms[0].first) return std::nullopt;
        ratio = fu.terms[0].second / ft.terms[0].second;
        rest = fu.constant - ratio * ft.constant;
        out.relations.push_back(Form::of(u).add(Form::of(t), -ratio).add(Form::number(-rest)));
      }
      out.multiples.push_back(c * ratio);
      out.coefficient += out.multiples.back();
      out.total -= c * rest;
      out.plain &= rest.is_zero();
      out.rests += !rest.is_zero();
      out.whole &= out.multiples.back().is_integer();
    }
    if (out.coefficient.is_zero()) return std::nullopt;
    return out;
  }

  // Several unknowns that are tied to one: write all in terms of it and solve.
  bool solve_in_terms_of_one() {
    std::vector<UnknownId> targets = open_;
    for (const UnknownId u : options_.wanted)
      if (!known_.value(u)) targets.insert(targets.begin(), u);
    // An unknown number (x) carries the others where there is one.
    for (const UnknownId u : names_.numbers()) targets.insert(targets.begin(), u);
    std::optional<InTermsOf> best;
    UnknownId t;
    for (const UnknownId candidate : targets) {
      if (known_.value(candidate) || !after_.value(candidate)) continue;
      auto solved = in_terms_of(candidate);
      if (!solved) continue;
      const auto worse = [](const InTermsOf& s) { return std::pair(!s.whole, s.rests); };
      if (best && worse(*best) <= worse(*solved)) continue;
      best = std::move(solved);
      t = candidate;
      if (names_.is_number(t)) break;
    }
    if (!best) return false;
    out_.settled = out_.solved_for = t;
    out_.value = *after_.value(t);
    out_.relations_used = best->relations;
    const std::string answer = names_.is_angle(t) ? degrees_text(out_.value) : number_text(out_.value);
    const std::string side = best->plain && !names_.is_number(t) ? quotient(*best) : "";
    if (!side.empty()) {
      out_.rows = {names_.of(t) + " = " + side};
      if (side != answer) out_.rows.push_back("= " + answer);
      return true;
    }
    out_.rows = {names_.equation(claim_)};
    if (const std::string row = collected(*best, t); !row.empty()) out_.rows.push_back(row);
    out_.rows.push_back("so " + names_.of(t) + " = " + answer);
    return true;
  }

  // "(180° − 52°) ÷ 2": the constant less what is known, divided among the equal parts.
  std::string quotient(const InTermsOf& solved) const {
    const bool turn = solved.coefficient.sign() < 0;  // so that the unknown is counted positively
    std::string side;
    const Rational right = -claim_.constant;
    if (!right.is_zero()) append(side, (right.sign() > 0) != turn, amount(magnitude(right)));
    for (const auto& [u, c] : claim_.terms)
      if (known_.value(u)) append_size(side, (c.sign() < 0) != turn, magnitude(c), u);
    return side.empty() ? side : divided(side, magnitude(solved.coefficient));
  }

  // "so 5∠KNL = 360°", or with an unknown number, whose terms keep their places, "so 2x + 3x = 90".
  std::string collected(const InTermsOf& solved, UnknownId t) const {
    if (names_.is_number(t)) {
      std::string left;
      const bool turn = solved.coefficient.sign() < 0;  // so that the unknown is counted positively
      for (const bool positive : {true, false})
        for (const Rational& m : solved.multiples)
          if (((m.sign() > 0) != turn) == positive) append(left, positive, multiple_text(magnitude(m), names_.of(t)));
      return "so " + left + " = " + number_text(turn ? -solved.total : solved.total);
    }
    Rational factor = solved.coefficient.sign() > 0 ? Rational(1) : Rational(-1);
    for (std::int64_t k = 2; k <= 12 && !(solved.coefficient * factor).is_integer(); ++k)
      if ((solved.coefficient * Rational(k)).is_integer()) factor *= Rational(k);
    const Rational count = solved.coefficient * factor, total = solved.total * factor;
    if (count.is_one()) return {};
    return "so " + multiple_text(count, names_.of(t)) + " = " + amount(total);
  }

  // "∠RUS + ∠SRU + ∠RSU = 180°", "so 2∠RUS = 180°": the others together are as much as the one, or a multiple of it.
  bool solve_with_a_group_like_it() {
    for (const UnknownId t : open_) {
      if (!after_.value(t)) continue;
      Form group;
      Rational total = -claim_.constant;
      for (const auto& [u, c] : claim_.terms) {
        if (u == t) continue;
        if (const auto v = known_.value(u)) total -= c * *v;
        else group.terms.emplace_back(u, c);
      }
      const Form of_t = known_.reduce(Form::of(t)), together = known_.reduce(group);
      if (of_t.terms.empty() || group.terms.size() < 2) continue;
      const Rational ratio = together.coefficient(of_t.terms[0].first) / of_t.terms[0].second;
      Form rest = together;
      rest.add(of_t, -ratio);
      const Rational count = claim_.coefficient(t) + ratio;
      if (!rest.terms.empty() || !count.is_integer() || count.is_zero()) continue;
      total -= rest.constant;
      group.add(Form::of(t), -ratio).add(Form::number(-rest.constant));
      out_.relations_used = {group};
      out_.settled = t;
      out_.value = *after_.value(t);
      const Rational sign = count.sign() > 0 ? Rational(1) : Rational(-1);
      out_.rows = {names_.equation(claim_)};
      if (!magnitude(count).is_one())
        out_.rows.push_back("so " + multiple_text(magnitude(count), names_.of(t)) + " = " + amount(total * sign));
      out_.rows.push_back("so " + names_.of(t) + " = " + size_text(t, {0, out_.value}));
      return true;
    }
    return false;
  }

  // Not solved: the equation as it stands, and with known numbers put in and parts that the givens make equal written
  // as one: "so ∠DEF + ∠DFE = 118°", "∠GHF = 2∠GHJ".
  void put_in_what_is_known() {
    out_.in_letter = false;
    Form put_in = Form::number(claim_.constant);
    std::vector<UnknownId> values;
    std::vector<std::pair<UnknownId, Form>> kept;  // with what the givens make of them
    bool merged = false;
    for (const auto& [u, c] : claim_.terms) {
      if (const auto v = known_.value(u)) {
        put_in.add(Form::number(c * *v));
        values.push_back(u);
        continue;
      }
      const Form form = options_.given->reduce(Form::of(u));
      const auto same = std::find_if(kept.begin(), kept.end(), [&](const auto& k) { return k.second == form; });
      UnknownId name = u;
      if (same != kept.end() && !form.terms.empty()) {
        merged = true;
        name = same->first;
      } else {
        const auto better = options_.preferred->find(u);
        const bool twice = std::count_if(claim_.terms.begin(), claim_.terms.end(), [&](const auto& t) {
          return options_.given->reduce(Form::of(t.first)) == form;
        }) > 1;
        if (twice && better != options_.preferred->end()) name = better->second;
        kept.emplace_back(name, form);
      }
      if (name != u) out_.relations_used.push_back(Form::of(u).add(Form::of(name), -1));
      put_in.add(Form::of(name), c);
    }
    out_.rows = {names_.equation(claim_)};
    out_.values_used = values;
    if ((!merged && values.empty()) || put_in.terms.empty()) {
      out_.relations_used.clear();
      out_.values_used.clear();
      return;
    }
    out_.told.push_back(put_in);
    // An open whole keeps its place: "∠BAV = ∠BAC + ∠CAV", "= ∠BAC + 60°".
    for (const auto& [whole, c] : put_in.terms) {
      const bool others_opposite = std::all_of(claim_.terms.begin(), claim_.terms.end(), [&](const auto& t) {
        return t.first == whole || t.second.sign() != c.sign();
      });
      if (merged || !others_opposite || !magnitude(c).is_one() || claim_.terms.size() < 3 || !claim_.constant.is_zero()) continue;
      Form rest = c.sign() > 0 ? -put_in : put_in, named = c.sign() > 0 ? -claim_ : claim_;
      rest.add(Form::of(whole));
      named.add(Form::of(whole));
      out_.rows = {names_.of(whole) + " = " + names_.sum(named), "= " + names_.sum(rest)};
      return;
    }
    const std::string row = names_.equation(put_in);
    if (options_.merged_only && values.empty())
      out_.rows = {row};
    else
      out_.rows.push_back("so " + row);
  }

  const Form& claim_;
  const Known& known_;
  const NameBook& names_;
  const RowOptions& options_;
  const bool degrees_;
  LinearSystem after_;
  std::vector<UnknownId> open_;
  ClaimRows out_;
};

}  // namespace

ClaimRows claim_rows(const Form& claim, const Known& known, const NameBook& names, const RowOptions& options) {
  return Writer(claim, known, names, options).write();
}

}  // namespace prover
