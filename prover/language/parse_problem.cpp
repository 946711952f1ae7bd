// The whole way from a text to a problem: check that it is text, cut it into sentences, read each on its own,
// and settle what only the whole can tell.
#include <algorithm>
#include <map>
#include <set>

#include "prover/language/diagnose.hpp"
#include "prover/language/problem_parser.hpp"
#include "prover/language/steering.hpp"
#include "prover/language/text_limits.hpp"

namespace prover {

namespace {

constexpr std::size_t max_points = 2'000;
constexpr std::size_t max_diagnostics = 50;
constexpr std::size_t give_up_after = 500;  // mistakes; beyond them the rest of the text is not read

template <class Act>
void each_point(const Phrase& phrase, Act act) {
  for (std::size_t i = 0; i < phrase.points.size(); ++i) act(phrase.points[i], phrase.point_spans[i]);
  for (const Expression& expression : phrase.relation.expressions) {
    for (const Term& term : expression.terms) {
      if (const Angle* angle = std::get_if<Angle>(&term.quantity)) {
        for (const PointId p : {angle->arm1, angle->vertex, angle->arm2}) act(p, term.span);
      }
      if (const Segment* segment = std::get_if<Segment>(&term.quantity)) {
        act(segment->a, term.span);
        act(segment->b, term.span);
      }
    }
  }
}

std::string listed(const std::vector<std::string>& names) {
  std::string list;
  for (std::size_t i = 0; i < names.size() && i < 12; ++i) list += (i == 0 ? "" : ", ") + names[i];
  return names.size() > 12 ? list + ", …" : list;
}

}  // namespace

ProblemParser::ProblemParser(std::string_view text)
    : text_(text), draft_(problem_.names, problem_.diagnostics), reader_(text, draft_) {
  draft_.written = capitals_of(text);
}

void ProblemParser::parse() {
  if (auto bad = not_a_text(text_)) {
    problem_.diagnostics.push_back(std::move(*bad));
    return;
  }
  const std::vector<Piece> pieces = cut_into_pieces(text_);
  for (const Piece& piece : pieces) {
    read(piece);
    gave_up_ = problem_.diagnostics.size() >= give_up_after || too_many_points();
    if (gave_up_) break;
  }
  if (pieces.empty()) {
    draft_.error({0, 0}, "there is nothing in this text",
                 "write what is given, one sentence a line, and \"find: angle ABC\"");
  }
  finish();
}

std::string_view ProblemParser::of(Span span) const {
  return text_.substr(span.begin, span.end - span.begin);
}

bool ProblemParser::too_many_points() {
  if (problem_.names.points.size() <= max_points) return false;
  draft_.error({0, 0}, "the text names more than " + std::to_string(max_points) + " points",
               "split it into several problems");
  return true;
}

void ProblemParser::read(const Piece& piece) {
  switch (piece.kind) {
    case LineKind::sentence:
      sentence(piece, Start::sentence, problem_.sentences, UnitKind::given);
      break;
    case LineKind::find:
      sentence(piece, Start::find, problem_.sentences, UnitKind::given);
      break;
    case LineKind::prove:
      sentence(piece, Start::prove, problem_.sentences, UnitKind::given);
      break;
    case LineKind::add:
      sentence(piece, Start::sentence, problem_.added, UnitKind::added);
      break;
    case LineKind::taught:
      if (const auto tree = parsed(piece, Start::taught))
        problem_.taught.push_back(read_taught(*tree, text_));
      break;
    case LineKind::figure:
      if (const auto tree = parsed(piece, Start::figure)) read_figure(*tree, text_, draft_, problem_);
      break;
    case LineKind::story:
      break;
    case LineKind::other:
      problem_.other_lines.push_back({std::string(piece.keyword), std::string(of(piece.span)), piece.span});
      break;
  }
}

std::optional<Node> ProblemParser::parsed(const Piece& piece, Start start) {
  if (auto mistake = too_much(of(piece.span), piece.span)) {
    problem_.diagnostics.push_back(std::move(*mistake));
    return std::nullopt;
  }
  Parsed result = parse_tree(start, of(piece.span), piece.span.begin);
  if (!result.tree) {
    problem_.diagnostics.push_back(diagnose(of(piece.span), piece.span.begin, result.trail));
    not_understood_ += of(piece.span);
  }
  return std::move(result.tree);
}

void ProblemParser::sentence(const Piece& piece, Start start, std::vector<Sentence>& list, UnitKind kind) {
  const bool joins = piece.joined && last_was_goal_ && (start == Start::prove || start == Start::sentence);
  const std::size_t goals = problem_.goals.size();
  if (start == Start::find || start == Start::prove) asked_ = true;
  if (kind == UnitKind::added) {
    if (auto mistake = draws_nothing(of(piece.span), piece.span.begin)) {
      problem_.diagnostics.push_back(std::move(*mistake));
      not_understood_ += of(piece.span);
      return;
    }
  }
  const std::optional<Node> tree = parsed(piece, start);
  last_was_goal_ = last_was_goal_ && piece.joined;
  if (!tree) return;
  list.push_back({piece.span, std::string(of(piece.span)), {}, {}});
  const std::size_t drawn = draft_.unnamed.size();
  draft_.begin_unit(kind, list.size() - 1);
  std::vector<Phrase> phrases;
  const std::size_t mistakes = problem_.diagnostics.size();
  reader_.sentence(*tree, phrases, problem_.goals);
  if (problem_.diagnostics.size() > mistakes) not_understood_ += of(piece.span);
  list.back().phrases = std::move(phrases);
  list.back().fresh.assign(draft_.unnamed.begin() + static_cast<std::ptrdiff_t>(drawn), draft_.unnamed.end());
  if (problem_.goals.size() > goals) {
    asked_ = last_was_goal_ = true;
    if (joins && start == Start::prove) join_goals(goals);
  } else if (joins) {
    // "Prove that KL = KM; KP = KQ": what follows the semicolon is claimed too.
    claim(list.back());
  }
}

// The goals of this sentence become claims of the one before it.
void ProblemParser::join_goals(std::size_t first) {
  if (first == 0 || first + 1 != problem_.goals.size()) return;
  Goal& before = problem_.goals[first - 1];
  Goal& joined = problem_.goals[first];
  if (before.kind != GoalKind::prove || joined.kind != GoalKind::prove) return;
  draft_.units.back().index = first - 1;
  before.text += "; " + joined.text;
  before.span.end = joined.span.end;
  for (Phrase& phrase : joined.claims) before.claims.push_back(std::move(phrase));
  problem_.goals.pop_back();
}

void ProblemParser::claim(Sentence& sentence) {
  if (problem_.goals.empty() || problem_.goals.back().kind != GoalKind::prove) return;
  Goal& goal = problem_.goals.back();
  goal.text += "; " + sentence.text;
  goal.span.end = sentence.span.end;
  for (Phrase& phrase : sentence.phrases) goal.claims.push_back(std::move(phrase));
  sentence.phrases.clear();
  draft_.units.back() = {UnitKind::goal, problem_.goals.size() - 1};
}

// Claims joined to an earlier goal share its list, so that several places may be one unit.
Units ProblemParser::units() {
  Units result;
  std::map<std::vector<Phrase>*, std::size_t> known;
  std::vector<std::size_t> unit_of;
  for (const UnitPlace& place : draft_.units) {
    std::vector<Phrase>* phrases = nullptr;
    switch (place.kind) {
      case UnitKind::given:
        phrases = &problem_.sentences[place.index].phrases;
        break;
      case UnitKind::added:
        phrases = &problem_.added[place.index].phrases;
        break;
      case UnitKind::goal:
        phrases = &problem_.goals[place.index].claims;
        break;
    }
    const auto [unit, fresh] = known.emplace(phrases, result.size());
    if (fresh) result.push_back({place.kind, phrases});
    unit_of.push_back(unit->second);
  }
  for (VagueShape& shape : draft_.vague) shape.unit = unit_of[shape.unit];
  return result;
}

void ProblemParser::finish() {
  settle(draft_, units(), problem_.goals);
  std::erase_if(problem_.sentences, [](const Sentence& s) { return s.phrases.empty(); });
  std::erase_if(problem_.added, [](const Sentence& s) { return s.phrases.empty(); });
  problem_.hidden.assign(problem_.names.points.size(), false);
  for (const PointId p : draft_.hidden) problem_.hidden[p.index()] = true;
  problem_.called = draft_.called;
  problem_.assumptions = draft_.assumptions;
  if (!asked_ && !gave_up_ && !problem_.sentences.empty()) {
    draft_.error(problem_.sentences.back().span, "nothing is asked",
                 "add a line such as \"find: angle ABC\" or \"prove: AB = AC\"");
  }
  check_goal_points();
  check_circles();
  in_order();
}

// "U lies outside circle P" says something only where the circle's size is known.
void ProblemParser::check_circles() {
  std::set<PointId> sized;
  const auto each = [&](auto act) {
    for (const auto* list : {&problem_.sentences, &problem_.added})
      for (const Sentence& sentence : *list)
        for (const Phrase& phrase : sentence.phrases) act(phrase);
  };
  each([&](const Phrase& phrase) {
    const Predicate kind = phrase.predicate;
    if (kind == Predicate::circle || kind == Predicate::circle_cyclic) sized.insert(phrase.points[0]);
    if (kind == Predicate::diameter || kind == Predicate::tangent) sized.insert(phrase.points[2]);
  });
  each([&](const Phrase& phrase) {
    if (phrase.predicate != Predicate::inside_circle && phrase.predicate != Predicate::outside_circle) return;
    const PointId centre = phrase.points[1];
    if (sized.contains(centre) || gave_up_) return;
    if (not_understood_.find(problem_.names.of(centre)) != std::string::npos) return;  // it may be said there
    draft_.error(phrase.span, "nothing says how large the circle with centre " + problem_.names.of(centre) + " is",
                 "name a point of it, for example \"circle: centre " + problem_.names.of(centre) + " through " +
                     (problem_.names.of(centre) == "K" ? "L" : "K") + "\"");
  });
}

void ProblemParser::check_goal_points() {
  std::set<PointId> known;
  const auto mark = [&](const std::vector<Sentence>& list) {
    for (const Sentence& sentence : list) {
      for (const Phrase& phrase : sentence.phrases)
        each_point(phrase, [&](PointId p, Span) { known.insert(p); });
    }
  };
  mark(problem_.sentences);
  mark(problem_.added);
  for (const auto& [name, angle] : problem_.called) known.insert({angle.arm1, angle.vertex, angle.arm2});
  for (const DrawnPoint& drawn : problem_.drawn) known.insert(drawn.point);
  if (known.empty() || gave_up_) return;
  std::vector<std::string> names;
  for (const PointId p : known) {
    if (p.valid()) names.push_back(problem_.names.of(p));
  }
  std::set<PointId> told;
  for (const Goal& goal : problem_.goals) {
    for (const Phrase& phrase : goal.claims) {
      each_point(phrase, [&](PointId p, Span span) {
        if (!p.valid() || known.contains(p) || !told.insert(p).second) return;
        if (not_understood_.find(problem_.names.of(p)) != std::string::npos)
          return;  // it may be said there
        draft_.error(span, problem_.names.of(p) + " is not on the figure yet",
                     "say where " + problem_.names.of(p) + " is, for example \"" + problem_.names.of(p) +
                         " is on " + names.front() + (names.size() > 1 ? names[1] : "") +
                         "\"; the points so far are " + listed(names));
      });
    }
  }
}

void ProblemParser::in_order() {
  std::vector<Diagnostic>& all = problem_.diagnostics;
  std::stable_sort(all.begin(), all.end(),
                   [](const Diagnostic& a, const Diagnostic& b) { return a.span.begin < b.span.begin; });
  if (all.size() <= max_diagnostics) return;
  const std::size_t more = all.size() - max_diagnostics;
  all.resize(max_diagnostics);
  all.push_back({Severity::error, all.back().span,
                 "and " + std::to_string(more) + (gave_up_ ? " or more" : " more"),
                 "put the first ones right and look again"});
}

ProblemText parse_problem(std::string_view text) {
  ProblemParser parser(text);
  parser.parse();
  return parser.take();
}

std::vector<Phrase> parse_phrases(std::string_view text, Names& names, std::vector<Diagnostic>& diagnostics,
                                  std::size_t offset) {
  std::vector<Phrase> phrases;
  std::vector<Goal> goals;
  std::vector<Diagnostic> own;
  if (auto bad = not_a_text(text)) {
    own.push_back(std::move(*bad));
  } else {
    Draft draft(names, own);
    draft.written = capitals_of(text);
    Reader reader(text, draft);
    draft.begin_unit(UnitKind::given, 0);
    for (const Piece& piece : cut_into_pieces(text)) {
      const std::string_view sentence = text.substr(piece.span.begin, piece.span.end - piece.span.begin);
      if (auto mistake = too_much(sentence, piece.span)) {
        own.push_back(std::move(*mistake));
        continue;
      }
      const Parsed parsed = parse_tree(Start::sentence, sentence, piece.span.begin);
      if (!parsed.tree) own.push_back(diagnose(sentence, piece.span.begin, parsed.trail));
      if (parsed.tree) reader.sentence(*parsed.tree, phrases, goals);
    }
    settle(draft, {{UnitKind::given, &phrases}}, goals);
    if (!goals.empty())
      own.push_back(
          {Severity::error, goals.front().span, "a question cannot stand here", "write a statement"});
  }
  for (Diagnostic& diagnostic : own) {
    diagnostic.span.begin += offset;
    diagnostic.span.end += offset;
    diagnostics.push_back(std::move(diagnostic));
  }
  for (Phrase& phrase : phrases) {
    phrase.span = {phrase.span.begin + offset, phrase.span.end + offset};
    for (Span& span : phrase.point_spans) span = {span.begin + offset, span.end + offset};
  }
  return phrases;
}

}  // namespace prover
