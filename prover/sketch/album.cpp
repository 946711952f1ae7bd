#include "prover/sketch/album.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

namespace prover::sketching {
namespace {

constexpr std::size_t family_limit = 24;  // figures of one arrangement
constexpr double needle = 0.01;           // clearance
constexpr double same_figure = 1e-6;      // difference of two figures that are one

int new_letters(const std::string& letters, const std::vector<std::string>& seen) {
  int count = 0;
  for (std::size_t i = 0; i < letters.size(); ++i)
    if (seen.size() <= i || seen[i].find(letters[i]) == std::string::npos) ++count;
  return count;
}

void keep_letters(const std::string& letters, std::vector<std::string>& seen) {
  seen.resize(letters.size());
  for (std::size_t i = 0; i < letters.size(); ++i)
    if (seen[i].find(letters[i]) == std::string::npos) seen[i] += letters[i];
}

}  // namespace

int Album::adds(const Arrangement& arrangement, const Shown& shown) {
  return new_letters(arrangement.signs, shown.signs) + (shown.equals.contains(arrangement.equals) ? 0 : 1);
}

int Album::adds_angles(const Arrangement& arrangement, const Shown& shown) {
  return new_letters(arrangement.obtuse, shown.obtuse);
}

void Album::show(const Arrangement& arrangement, Shown& shown) {
  shown.equals.insert(arrangement.equals);
  keep_letters(arrangement.signs, shown.signs);
  keep_letters(arrangement.obtuse, shown.obtuse);
}

Album::News Album::add(Candidate candidate) {
  const Arrangement& arrangement = candidate.arrangement;
  const bool new_arrangement = !families_.contains(arrangement.signs);
  std::vector<std::size_t>& family = families_[arrangement.signs];
  const bool new_position = adds(arrangement, shown_) > 0;
  if (!new_position && family.size() >= family_limit) return News::nothing;
  for (const std::size_t i : family)
    if (difference(found_[i].x, candidate.x, points_) < same_figure) return News::nothing;
  show(arrangement, shown_);
  family.push_back(found_.size());
  found_.push_back(std::move(candidate));
  return new_position ? News::position : new_arrangement ? News::arrangement : News::shape;
}

std::optional<Album::Turn> Album::challenge(int times) {
  challenged_.resize(shown_.signs.size(), 0);
  std::size_t triple = 0, least = shown_.signs.size();
  Turn turn{};
  for (std::size_t a = 0; a < points_; ++a)
    for (std::size_t b = a + 1; b < points_; ++b)
      for (std::size_t c = b + 1; c < points_; ++c, ++triple) {
        if (triple >= shown_.signs.size() || challenged_[triple] >= times) continue;
        if (shown_.signs[triple] != "l" && shown_.signs[triple] != "r") continue;
        if (least < shown_.signs.size() && challenged_[triple] >= challenged_[least]) continue;
        least = triple;
        const double sign = shown_.signs[triple] == "l" ? 1.0 : -1.0;
        turn = {static_cast<int>(a), static_cast<int>(b), static_cast<int>(c), sign};
      }
  if (least == shown_.signs.size()) return std::nullopt;
  ++challenged_[least];
  return turn;
}

bool Album::has_challenge(int times) const {
  for (std::size_t triple = 0; triple < shown_.signs.size(); ++triple) {
    const std::string& signs = shown_.signs[triple];
    if ((signs == "l" || signs == "r") && (triple >= challenged_.size() || challenged_[triple] < times)) return true;
  }
  return false;
}

std::vector<std::size_t> Album::chosen(std::size_t wanted) const {
  double clearest = 0;
  for (const Candidate& c : found_) clearest = std::max(clearest, c.arrangement.clear);
  std::vector<std::size_t> pool, result;
  for (std::size_t i = 0; i < found_.size(); ++i)
    if (clearest < needle || found_[i].arrangement.clear >= needle) pool.push_back(i);
  Shown shown;
  std::set<std::string> arrangements;
  std::vector<double> apart(found_.size(), std::numeric_limits<double>::infinity());
  while (result.size() < wanted && !pool.empty()) {
    using Rank = std::tuple<int, int, bool, int, double>;
    const auto rank = [&](std::size_t i) {
      const Arrangement& a = found_[i].arrangement;
      if (result.empty()) return Rank(-a.collinear, 0, true, 0, a.clear);
      return Rank(adds(a, shown), -a.collinear, !arrangements.contains(a.signs), adds_angles(a, shown), apart[i]);
    };
    std::size_t best = 0;
    Rank highest = rank(pool[0]);
    for (std::size_t k = 1; k < pool.size(); ++k)
      if (const Rank next = rank(pool[k]); next > highest) {
        highest = next;
        best = k;
      }
    const std::size_t picked = pool[best];
    pool.erase(pool.begin() + static_cast<std::ptrdiff_t>(best));
    result.push_back(picked);
    show(found_[picked].arrangement, shown);
    arrangements.insert(found_[picked].arrangement.signs);
    for (const std::size_t i : pool)
      apart[i] = std::min(apart[i], difference(found_[picked].x, found_[i].x, points_));
  }
  return result;
}

}  // namespace prover::sketching
