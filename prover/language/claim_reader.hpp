// A pupil's claims and drawings, read with what the problem's own sentences have settled: a bare corner, "the circle", a
// line with a small letter mean here what they mean there. A claim never makes a point; a drawing may.
#pragma once
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/problem_parser.hpp"
#include "prover/language/rewritten.hpp"

namespace prover {

struct ReadClaim {
  bool read = false;
  std::vector<Phrase> phrases;
  bool names_letter = false;   // gives a letter its meaning, and says nothing else
  std::map<std::string, std::vector<Term>> letters;  // the meanings that it gives; in force once it is accepted
  bool asks = false;           // "show that KL = KM" claims nothing
  // Where it could not be read:
  bool grammatical = false;    // a sentence, but one that says nothing of this figure
  std::string trouble;         // a sentence
  std::string suggestion;      // the word that was perhaps meant
  Span place;                  // in the text given
  bool unknown_point = false;
  bool ambiguous = false;
};

class ClaimReader {
 public:
  explicit ClaimReader(ProblemText& problem, const Draft& draft);

  ReadClaim claim(const Rewritten& text);
  void accept(const ReadClaim& claim) { letters_.insert(claim.letters.begin(), claim.letters.end()); }
  // Appends to `added` of the problem when it can be read. `facts`: what stands in brackets behind the drawing, and says
  // what its new points are.
  ReadClaim drawing(const Rewritten& text, Span span, const std::vector<Rewritten>& facts = {});

  // A corner alone means the angle of this figure while a line speaks of it ("In △KLM: ∠L = 40°").
  void speak_of(std::vector<std::vector<PointId>> figures) { place_ = std::move(figures); }
  std::optional<PointId> find_point(const std::string& name) const { return draft_->find_point(name); }
  std::string points() const;  // "K, L and M"
  const std::vector<std::pair<std::string, Angle>>& called() const { return draft_->called; }
  std::string only_triangle() const;  // "KLM", where the text names no other polygon; else empty
  // What the only question asks for: a single quantity.
  std::optional<Expression> asked() const;

 private:
  std::vector<Phrase> parsed(Draft& draft, const Rewritten& text, ReadClaim& result);
  void settle_with(Draft& draft, std::vector<Phrase>& phrases, UnitKind kind);
  void name_letters(ReadClaim& result);
  void put_in(Phrase& phrase, const ReadClaim& result) const;
  const std::vector<Term>* meaning(const std::string& letter, const ReadClaim& result) const;
  void forget(std::size_t points, std::size_t mistakes);
  bool take_mistakes(ReadClaim& result, std::size_t mistakes);
  std::set<std::string> unknown_letters(const Phrase& phrase, const ReadClaim& result) const;

  ProblemText& problem_;
  std::unique_ptr<Draft> draft_;                      // what is settled so far
  std::map<std::string, std::vector<Term>> letters_;  // what the pupil's letters stand for
  std::vector<std::vector<PointId>> place_;
};

}  // namespace prover
