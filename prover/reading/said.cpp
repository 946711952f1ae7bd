#include "prover/reading/said.hpp"

#include <algorithm>
#include <set>

namespace prover {

namespace {

bool is_plain(const Form& form) {
  return form.terms.size() <= 1 || (form.terms.size() == 2 && form.constant.is_zero() &&
                                    (form.terms[0].second + form.terms[1].second).is_zero());
}

}  // namespace

void Said::by_given(const Form& form, int hypothesis) {
  const int tag = static_cast<int>(entries_.size());
  entries_.push_back({form, 0, hypothesis});
  given_.add(form);
  in_order_.add(form, tag);
  derived_first_.add(form, tag);
}

void Said::by_line(const Form& form, int line) {
  const int tag = static_cast<int>(entries_.size());
  entries_.push_back({form, line, -1});
  in_order_.add(form, tag);
  derived_first_.add(form, tag);
}

void Said::derived_by_line(const Form& form, int line) {
  derived_.push_back(static_cast<int>(entries_.size()));
  by_line(form, line);
  derived_first_ = LinearSystem(true);
  auto add = [&](std::size_t i) { derived_first_.add(entries_[i].form, static_cast<int>(i)); };
  for (std::size_t i = 0; i < entries_.size(); ++i)
    if (entries_[i].line == 0) add(i);
  for (auto i = derived_.rbegin(); i != derived_.rend(); ++i) add(static_cast<std::size_t>(*i));
  for (std::size_t i = 0; i < entries_.size(); ++i)
    if (entries_[i].line != 0) add(i);
}

std::optional<std::vector<Said::Part>> Said::parts_in(const LinearSystem& system, const Form& form) const {
  const auto certificate = system.certificate(form);
  if (!certificate) return std::nullopt;
  std::vector<Part> parts;
  for (const auto& [tag, m] : certificate->parts) {
    const Entry& entry = entries_[static_cast<std::size_t>(tag)];
    Form scaled = entry.form;
    scaled.scale(m);
    parts.push_back({std::move(scaled), entry.line, entry.hypothesis, is_plain(entry.form)});
  }
  return parts;
}

std::optional<std::vector<Said::Part>> Said::parts(const Form& form) const {
  auto first = parts_in(in_order_, form);
  if (!first || derived_.empty()) return first;
  auto second = parts_in(derived_first_, form);
  return lines_of(*second).size() < lines_of(*first).size() ? second : first;
}

std::vector<int> lines_of(const std::vector<Said::Part>& parts) {
  std::set<int> lines;
  for (const Said::Part& p : parts)
    if (p.line > 0) lines.insert(p.line);
  return {lines.begin(), lines.end()};
}

}  // namespace prover
