// The figures found so far, and which of them to show.
//
// Who reads sketches believes a position fact when all sketches agree on it, and a claim when none breaks it. So the
// few that are shown must between them cover every side, order and equality that any figure showed, and then acute
// and obtuse of every angle; that is a set cover, chosen greedily.
#pragma once
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "prover/sketch/arrangement.hpp"

namespace prover::sketching {

struct Candidate {
  std::vector<double> x;  // in normal place, variables of the layout
  Arrangement arrangement;
};

class Album {
 public:
  explicit Album(std::size_t points) : points_(points) {}

  enum class News {
    nothing,      // a figure that we have, or one more of a kind of which we have many
    shape,        // another shape
    arrangement,  // a new combination of positions, each of which was seen before
    position,     // a side, an order or an equality that no figure showed before
  };
  News add(Candidate candidate);
  const std::vector<Candidate>& found() const { return found_; }
  std::size_t arrangements() const { return families_.size(); }

  // A triple that turned the same way in every figure and was challenged least often, with the way it turned; each
  // call counts as a challenge. None when every such triple was challenged `times` times.
  struct Turn {
    int a, b, c;
    double sign;
  };
  std::optional<Turn> challenge(int times);
  bool has_challenge(int times) const;

  // The clearest figure, then those that add most to what has been shown, then other arrangements, then the figure
  // that differs most from all before it. Needles are left out when there is better; figures in which points
  // happen to be collinear come after the others of their rank.
  std::vector<std::size_t> chosen(std::size_t wanted) const;

 private:
  struct Shown {
    std::vector<std::string> signs, obtuse;  // by triple: the letters seen
    std::set<std::string> equals;
  };
  static int adds(const Arrangement& arrangement, const Shown& shown);
  static int adds_angles(const Arrangement& arrangement, const Shown& shown);
  static void show(const Arrangement& arrangement, Shown& shown);

  std::size_t points_;
  std::vector<Candidate> found_;
  std::map<std::string, std::vector<std::size_t>> families_;
  Shown shown_;
  std::vector<int> challenged_;  // by triple
};

}  // namespace prover::sketching
