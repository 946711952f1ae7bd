// The same obligations as text for any solver that reads SMT-LIB 2. Everything is written in the order of the
// proof, so the same proof gives the same bytes.
#include <set>

#include "prover/smt/obligations.hpp"
#include "prover/smt/second_opinion.hpp"

namespace prover {
namespace {

std::string word(FactKind kind) {
  switch (kind) {
    case FactKind::parallel:
      return "parallel";
    case FactKind::perpendicular:
      return "perpendicular";
    case FactKind::collinear:
      return "collinear";
    case FactKind::congruent:
      return "congruent";
    case FactKind::similar:
      return "similar";
    case FactKind::regular_polygon:
      return "regular_polygon";
    case FactKind::parallelogram:
      return "parallelogram";
    case FactKind::rectangle:
      return "rectangle";
    case FactKind::rhombus:
      return "rhombus";
    case FactKind::square:
      return "square";
    case FactKind::kite:
      return "kite";
    case FactKind::trapezium:
      return "trapezium";
    case FactKind::circle:
      return "circle";
    case FactKind::concyclic:
      return "concyclic";
    case FactKind::joined:
      return "joined";
    case FactKind::tangent:
      return "tangent";
    case FactKind::tangent_through:
      return "tangent_through";
  }
  return "fact";
}

bool simple_symbol(const std::string& name) {
  for (const char c : name)
    if (!((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_'))
      return false;
  return true;
}

class Writer {
 public:
  Writer(const UnknownTable& unknowns, const Names& names) : unknowns_(unknowns), names_(names) {}

  std::string symbol(UnknownId id) const {
    const Unknown& unknown = unknowns_[id];
    std::string name;
    switch (unknown.kind) {
      case UnknownKind::angle:  // read as on the board: arm, vertex, arm
        if (unknown.points.size() == 3)
          name = "angle_" + point(unknown.points[1]) + "_" + point(unknown.points[0]) + "_" +
                 point(unknown.points[2]);
        break;
      case UnknownKind::length:
        name = "length" + listed(unknown.points);
        break;
      case UnknownKind::excess:
        break;  // by its index
      case UnknownKind::number:
        name = "number_" + unknown.name;
        break;
      case UnknownKind::fact:
        name = "not_" + word(unknown.fact) + listed(unknown.points);
        break;
    }
    if (name.empty()) name = "unknown_" + std::to_string(id.value);
    return simple_symbol(name) ? name : "|" + name + "|";
  }

  std::string value(const Form& form) const {
    std::vector<std::string> parts;
    for (const auto& [unknown, coefficient] : form.terms)
      parts.push_back(coefficient.is_one() ? symbol(unknown)
                                           : "(* " + number(coefficient) + " " + symbol(unknown) + ")");
    if (parts.empty()) return number(form.constant);
    if (!form.constant.is_zero()) parts.push_back(number(form.constant));
    if (parts.size() == 1) return parts[0];
    std::string sum = "(+";
    for (const std::string& part : parts) sum += " " + part;
    return sum + ")";
  }

  static std::string number(const Rational& value) {
    const std::string text = (value.sign() < 0 ? -value : value).to_string();
    const std::size_t slash = text.find('/');
    const std::string size = slash == std::string::npos
                                 ? text + ".0"
                                 : "(/ " + text.substr(0, slash) + ".0 " + text.substr(slash + 1) + ".0)";
    return value.sign() < 0 ? "(- " + size + ")" : size;
  }

 private:
  std::string point(PointId p) const {
    return p.valid() && p.index() < names_.points.size() ? names_.of(p)
                                                         : std::string("P").append(std::to_string(p.value));
  }
  std::string listed(const std::vector<PointId>& points) const {
    std::string text;
    for (const PointId p : points) text.append("_").append(point(p));
    return text;
  }

  const UnknownTable& unknowns_;
  const Names& names_;
};

std::string assertion(const std::string& body) {
  return "(assert " + body + ")\n";
}

std::string question(const Obligation& obligation, const Writer& writer, const UnknownTable& unknowns) {
  std::string text = "\n; " + obligation.name + "\n(push 1)\n";
  std::set<UnknownId> used;
  for (const Form* form : obligation.from) {
    text += assertion("(= " + writer.value(*form) + " 0.0)");
    for (const auto& term : form->terms) used.insert(term.first);
  }
  std::string denial;
  for (const Form* claim : obligation.claims) {
    denial += " (not (= " + writer.value(*claim) + " 0.0))";
    for (const auto& term : claim->terms) used.insert(term.first);
  }
  for (const Form* claim : obligation.positive) {
    denial += " (<= " + writer.value(*claim) + " 0.0)";
    for (const auto& term : claim->terms) used.insert(term.first);
  }
  if (obligation.whole) {
    for (const UnknownId unknown : used) {
      if (unknowns[unknown].kind == UnknownKind::angle)
        text += assertion("(< 0.0 " + writer.symbol(unknown) + " 180.0)");
      if (unknowns[unknown].kind == UnknownKind::length || unknowns[unknown].kind == UnknownKind::excess)
        text += assertion("(< 0.0 " + writer.symbol(unknown) + ")");
    }
  }
  if (obligation.denies)
    text += assertion(obligation.claims.size() + obligation.positive.size() == 1 ? denial.substr(1) : "(or" + denial + ")");
  return text + "(check-sat)\n(pop 1)\n";
}

}  // namespace

std::string smt_lib(const Proof& proof, const UnknownTable& unknowns, const Names& names) {
  const Obligations obligations = obligations_of(proof, unknowns);
  if (!obligations.malformed.empty()) return "; not a proof: " + obligations.malformed + "\n";
  const Writer writer(unknowns, names);
  std::string text =
      "; Every (check-sat) must answer unsat. Angles in degrees; not_... = 0 says that the fact holds.\n"
      "(set-logic QF_LRA)\n(set-info :status unsat)\n";
  std::set<UnknownId> used;
  for (const Obligation& obligation : obligations.list) {
    for (const auto* forms : {&obligation.from, &obligation.claims, &obligation.positive})
      for (const Form* form : *forms)
        for (const auto& term : form->terms) used.insert(term.first);
  }
  for (const UnknownId unknown : used) text += "(declare-const " + writer.symbol(unknown) + " Real)\n";
  for (const Obligation& obligation : obligations.list) text += question(obligation, writer, unknowns);
  return text + "(exit)\n";
}

std::string smt_lib(const Proof& proof, const UnknownTable& unknowns) {
  return smt_lib(proof, unknowns, Names{});
}

}  // namespace prover
