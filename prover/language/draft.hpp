// What is known of a text while it is being read: names so far, and what can only be settled at the end –
// which angle a bare corner means, which points give a lettered line its direction, which circle "the circle"
// is, which sides of "a trapezium" are parallel. Such places hold stand-ins until the last pass (`settle`).
#pragma once
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "prover/language/problem_text.hpp"

namespace prover {

// A point where it is written.
struct Placed {
  PointId id;
  Span span;
};

// Stand-ins, far above any real point. A line that has a letter is written with two of them.
namespace stand_in {
inline constexpr PointId the_circle{2'000'000'000};
inline PointId lettered(std::size_t line, int end) {
  return PointId(1'000'000'000 + static_cast<std::int64_t>(2 * line) + end);
}
inline bool is_lettered(PointId p) {
  return p.value >= 1'000'000'000 && p != the_circle;
}
inline std::size_t lettered_line(PointId p) {
  return static_cast<std::size_t>(p.value - 1'000'000'000) / 2;
}
}  // namespace stand_in

struct LetteredLine {
  std::string name;
  Span span;
  std::vector<PointId> points;  // named points on it
};

struct NamedCircle {
  PointId centre;  // not valid when only points on it are named
  std::vector<PointId> points;
};

// "trapezium", "kite", "right-angled", "isosceles", where the sentence alone does not say which sides are
// meant.
enum class VagueKind { trapezium, kite, right_angled, isosceles };
struct VagueShape {
  VagueKind kind;
  std::vector<Placed> corners;
  Span span;
  bool equal_legs = false;  // an isosceles trapezium
  std::size_t unit = 0;     // where its phrase belongs
};

// A list of phrases: those of a sentence, of an added line, or the claims of a goal.
enum class UnitKind { given, added, goal };
struct UnitPlace {
  UnitKind kind;
  std::size_t index;  // in the sentences, added lines or goals of the text
};
struct Unit {
  UnitKind kind;
  std::vector<Phrase>* phrases;
};
using Units = std::vector<Unit>;  // in the order of the text

class Draft {
 public:
  Draft(Names& names, std::vector<Diagnostic>& diagnostics);

  Names& names;
  std::vector<Diagnostic>& diagnostics;
  std::set<PointId> hidden;
  std::vector<LetteredLine> lettered;
  std::vector<NamedCircle> circles;
  std::vector<VagueShape> vague;
  std::vector<std::vector<PointId>> polygons;      // named in the text, corners in order
  std::set<std::pair<PointId, PointId>> segments;  // both ways round
  std::vector<std::pair<std::string, Angle>> called;
  std::map<std::string, Span> number_letters;  // small letters used as numbers
  std::vector<std::string> assumptions;
  std::vector<UnitPlace> units;
  std::set<std::string> written;  // capital letters of the text: no fresh point may take one of them
  std::vector<PointId> unnamed;   // points drawn in addition that have no name in the text

  void begin_unit(UnitKind kind, std::size_t index) { units.push_back({kind, index}); }
  std::size_t unit() const { return units.size() - 1; }
  PointId point(const std::string& name);
  PointId fresh_point();  // P, Q, …: a letter that stands nowhere in the text
  PointId hidden_point(const std::string& stem);  // "l1", "l2", … whichever is free
  std::optional<PointId> find_point(const std::string& name) const;
  std::size_t lettered_line(const std::string& name, Span span);
  const Angle* find_called(const std::string& name) const;
  void call(const std::string& name, const Angle& angle);
  void name_polygon(const std::vector<Placed>& corners);
  void name_segment(PointId a, PointId b);
  void name_circle(PointId centre, const std::vector<Placed>& points);
  std::string letters(const std::vector<Placed>& points) const;  // "KLM"
  void error(Span span, std::string message, std::string way_out = {});
  void warn(Span span, std::string message, std::string way_out = {});

 private:
  std::unordered_map<std::string, PointId> index_;
  std::unordered_map<std::string, std::size_t> lettered_index_;
  std::unordered_map<std::string, std::size_t> called_index_;
  std::set<std::vector<PointId>> polygon_keys_;
};

// The last pass, in this order. Each settles one kind of stand-in.
void settle_vague_shapes(Draft& draft, const Units& units);
void settle_circles(Draft& draft, const Units& units);
void settle_lettered_lines(Draft& draft, const Units& units);
void settle_angles(Draft& draft, const Units& units,
                   std::vector<Goal>& goals);         // bare corners and names for angles
void check_orders(Draft& draft, const Units& units);  // B between A and C, and A between B and C
void check_sizes(Draft& draft, const Units& units);   // angle ABC = 400
void settle(Draft& draft, const Units& units, std::vector<Goal>& goals);  // all of them

}  // namespace prover
