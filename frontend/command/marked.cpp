#include "frontend/command/marked.hpp"

#include <fmt/format.h>

#include <cstdio>

#include "frontend/command/input.hpp"
#include "frontend/command/output.hpp"
#include "prover/mark.hpp"

namespace frontend {

Marked mark_work(const std::string& problem, const std::string& work, const Setting& setting,
                 const prover::SchemePolicy& policy, std::stop_token stop) {
  prover::ProveOptions options = setting.options;
  options.budget = prover::Budget::seconds(setting.limit, std::move(stop));
  Marked marked;
  marked.judgement = prover::mark(problem, work, *setting.catalogue, options);
  marked.scheme.policy = policy;
  if (marked.judgement.way)
    marked.scheme = prover::scheme_of(*marked.judgement.way, *setting.catalogue, policy, prover::scheme_request(problem));
  marked.marks = prover::marks_of(marked.judgement, marked.scheme);
  return marked;
}

std::optional<prover::SchemePolicy> scheme_named(const std::string& name, prover::Register wording) {
  if (name.empty()) return prover::default_scheme(wording);
  if (const prover::SchemePolicy* known = prover::find_scheme(name)) return *known;
  if (name.find('/') == std::string::npos && !name.ends_with(".scheme")) {
    std::vector<std::string> ids;
    std::string all;
    for (const prover::SchemePolicy& scheme : prover::standard_schemes()) {
      ids.push_back(scheme.id);
      all += (all.empty() ? "" : ", ") + scheme.id;
    }
    const auto nearest = prover::nearest_word(name, ids);
    write_message(fmt::format("--scheme: there is no scheme \"{}\"\n  try: {}, or the name of a file *.scheme", name, nearest ? *nearest : all));
    return std::nullopt;
  }
  const Input input = read_text(name, {});
  if (!input.text) {
    write_message(input.mistake);
    return std::nullopt;
  }
  const prover::ParsedScheme parsed = prover::parse_scheme({name, *input.text});
  for (const prover::Diagnostic& mistake : parsed.diagnostics) fmt::print(stderr, "{}", prover::render(mistake, name, *input.text));
  if (prover::has_error(parsed.diagnostics)) return std::nullopt;
  return parsed.policy;
}

}  // namespace frontend
