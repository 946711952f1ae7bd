#include "prover/algebra/linear_system.hpp"

#include <algorithm>

namespace prover {

namespace {

void add_parts(LinearSystem::Certificate& to, const LinearSystem::Certificate& from, const Rational& factor) {
  if (factor.is_zero()) return;
  std::vector<std::pair<int, Rational>> sum;
  sum.reserve(to.parts.size() + from.parts.size());
  auto a = to.parts.begin();
  auto b = from.parts.begin();
  while (a != to.parts.end() || b != from.parts.end()) {
    if (b == from.parts.end() || (a != to.parts.end() && a->first < b->first)) {
      sum.push_back(std::move(*a++));
    } else if (a == to.parts.end() || b->first < a->first) {
      sum.emplace_back(b->first, b->second * factor);
      ++b;
    } else {
      Rational c = a->second + b->second * factor;
      if (!c.is_zero()) sum.emplace_back(a->first, std::move(c));
      ++a;
      ++b;
    }
  }
  to.parts = std::move(sum);
}

}  // namespace

void LinearSystem::note(const Form& form, std::size_t row) {
  for (const auto& [unknown, c] : form.terms) {
    if (unknown.index() >= occurs_in_.size()) {
      occurs_in_.resize(unknown.index() + 1);
      row_of_.resize(unknown.index() + 1, -1);
    }
    auto& list = occurs_in_[unknown.index()];
    if (list.empty() || list.back() != static_cast<std::int32_t>(row)) list.push_back(static_cast<std::int32_t>(row));
  }
}

Form LinearSystem::reduce(const Form& form) const {
  bool any = false;
  for (const auto& [unknown, c] : form.terms) any |= is_pivot(unknown);
  if (!any) return form;
  Form rest = form;
  for (const auto& [unknown, c] : form.terms)
    if (is_pivot(unknown)) rest.add(rows_[static_cast<std::size_t>(row_of_[unknown.index()])].form, -c);
  return rest;
}

std::pair<Form, LinearSystem::Certificate> LinearSystem::reduce_with_source(const Form& form) const {
  Form rest = form;
  Certificate used;
  for (const auto& [unknown, c] : form.terms)
    if (is_pivot(unknown)) {
      const Row& row = rows_[static_cast<std::size_t>(row_of_[unknown.index()])];
      rest.add(row.form, -c);
      add_parts(used, row.source, c);
    }
  return {std::move(rest), std::move(used)};
}

LinearSystem::Added LinearSystem::add(const Form& form, int tag) {
  Row row;
  if (with_certificates_) {
    auto [rest, used] = reduce_with_source(form);
    row.form = std::move(rest);
    // rest = form − used, so rest comes from this tag minus what was used.
    add_parts(row.source, used, -1);
    Certificate own;
    own.parts.emplace_back(tag, 1);
    add_parts(row.source, own, 1);
  } else {
    row.form = reduce(form);
  }
  if (row.form.terms.empty()) {
    if (row.form.constant.is_zero()) return Added::follows;
    if (!contradiction_) {
      Certificate one = row.source;
      for (auto& [t, m] : one.parts) m /= row.form.constant;
      contradiction_ = std::move(one);
    }
    return Added::contradiction;
  }
  // The rarest unknown becomes the pivot: it disturbs the fewest rows. Ties: the latest, so that unknowns met
  // early (those of the problem's own sentences) stay.
  std::size_t best = 0, fewest = static_cast<std::size_t>(-1);
  for (std::size_t i = 0; i < row.form.terms.size(); ++i) {
    const std::size_t u = row.form.terms[i].first.index();
    const std::size_t count = u < occurs_in_.size() ? occurs_in_[u].size() : 0;
    if (count <= fewest) {
      fewest = count;
      best = i;
    }
  }
  row.pivot = row.form.terms[best].first;
  const Rational factor = Rational(1) / row.form.terms[best].second;
  if (!factor.is_one()) {
    row.form.scale(factor);
    for (auto& [t, m] : row.source.parts) m *= factor;
  }
  const std::size_t index = rows_.size();
  note(row.form, index);
  // Keep every other row free of the new pivot.
  std::vector<std::int32_t> affected = occurs_in_[row.pivot.index()];
  for (const std::int32_t r : affected) {
    if (static_cast<std::size_t>(r) == index) continue;
    Row& other = rows_[static_cast<std::size_t>(r)];
    const Rational c = other.form.coefficient(row.pivot);
    if (c.is_zero()) continue;
    other.form.add(row.form, -c);
    if (with_certificates_) add_parts(other.source, row.source, -c);
    note(other.form, static_cast<std::size_t>(r));
  }
  occurs_in_[row.pivot.index()].assign(1, static_cast<std::int32_t>(index));
  row_of_[row.pivot.index()] = static_cast<std::int32_t>(index);
  rows_.push_back(std::move(row));
  return Added::new_row;
}

bool LinearSystem::is_zero(UnknownId unknown) const {
  if (!is_pivot(unknown)) return false;
  const Form& form = rows_[static_cast<std::size_t>(row_of_[unknown.index()])].form;
  return form.terms.size() == 1 && form.constant.is_zero();
}

bool LinearSystem::entails(const Form& form) const {
  if (form.terms.size() == 1 && form.constant.is_zero()) return is_zero(form.terms[0].first);
  return reduce(form).is_zero();
}

std::optional<Rational> LinearSystem::value(UnknownId unknown) const {
  if (!is_pivot(unknown)) return std::nullopt;
  const Form& form = rows_[static_cast<std::size_t>(row_of_[unknown.index()])].form;
  if (form.terms.size() != 1) return std::nullopt;
  return -form.constant;
}

std::optional<LinearSystem::Certificate> LinearSystem::certificate(const Form& form) const {
  auto [rest, used] = reduce_with_source(form);
  if (!rest.is_zero()) return std::nullopt;
  return std::move(used);
}

}  // namespace prover
