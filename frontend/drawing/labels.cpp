#include "frontend/drawing/labels.hpp"

#include <algorithm>
#include <cmath>

namespace frontend {

namespace {

constexpr double touches_line = 10, touches_mark = 8, touches_text = 30, leaves_page = 100;
constexpr double air = 0.35;  // millimetres round a label
constexpr int most_rounds = 30;

struct Box {
  double left, top, right, bottom;
};

Box box_of(const Text& text, Spot middle, double margin) {
  return {middle.x - text.width / 2 - margin, middle.y - text.size / 2 - margin, middle.x + text.width / 2 + margin,
          middle.y + text.size / 2 + margin};
}

bool meet(const Box& a, const Box& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

// Liang and Barsky's clipping of a segment by a box, asked only whether anything is left (1984).
bool meets(const Box& box, Spot p, Spot q) {
  double from = 0, to = 1;
  const auto clip = [&](double direction, double distance) {
    if (direction == 0) return distance >= 0;
    const double t = distance / direction;
    if (direction < 0) from = std::max(from, t);
    else to = std::min(to, t);
    return from <= to;
  };
  return clip(p.x - q.x, p.x - box.left) && clip(q.x - p.x, box.right - p.x) && clip(p.y - q.y, p.y - box.top) &&
         clip(q.y - p.y, box.bottom - p.y);
}

struct Obstacle {
  std::vector<Spot> path;
  double cost;
};

std::vector<Obstacle> obstacles_of(const Drawing& drawing) {
  std::vector<Obstacle> all;
  const auto cost = [](Stroke::Weight weight) { return weight == Stroke::Weight::line ? touches_line : touches_mark; };
  for (const Stroke& stroke : drawing.strokes) {
    all.push_back({stroke.path, cost(stroke.weight)});
    if (stroke.closed) all.back().path.push_back(stroke.path.front());
  }
  for (const RoundStroke& round : drawing.rounds) all.push_back({path_of(round), cost(round.weight)});
  for (const Dot& dot : drawing.dots)
    all.push_back({{{dot.at.x - dot.radius, dot.at.y}, {dot.at.x + dot.radius, dot.at.y}}, touches_line});
  return all;
}

bool touches(const Box& box, const Obstacle& obstacle) {
  for (std::size_t i = 1; i < obstacle.path.size(); ++i)
    if (meets(box, obstacle.path[i - 1], obstacle.path[i])) return true;
  return false;
}

}  // namespace

void place_labels(std::vector<Label> labels, Drawing& drawing) {
  const std::vector<Obstacle> obstacles = obstacles_of(drawing);
  std::vector<std::vector<Box>> boxes(labels.size());
  std::vector<std::vector<double>> alone(labels.size());  // the cost of a place, the other labels aside
  for (std::size_t i = 0; i < labels.size(); ++i)
    for (const Label::Place& place : labels[i].places) {
      const Box box = box_of(labels[i].text, place.middle, air);
      double cost = place.cost;
      for (const Obstacle& obstacle : obstacles)
        if (touches(box, obstacle)) cost += obstacle.cost;
      if (box.left < 0 || box.top < 0 || box.right > drawing.width || box.bottom > drawing.height) cost += leaves_page;
      boxes[i].push_back(box);
      alone[i].push_back(cost);
    }
  std::vector<std::size_t> chosen(labels.size());
  for (std::size_t i = 0; i < labels.size(); ++i)
    chosen[i] = static_cast<std::size_t>(std::min_element(alone[i].begin(), alone[i].end()) - alone[i].begin());
  bool changed = true;
  for (int round = 0; round < most_rounds && changed; ++round) {
    changed = false;
    for (std::size_t i = 0; i < labels.size(); ++i) {
      std::size_t best = chosen[i];
      double least = 1e300;
      for (std::size_t place = 0; place < boxes[i].size(); ++place) {
        double cost = alone[i][place];
        for (std::size_t j = 0; j < labels.size(); ++j)
          if (j != i && meet(boxes[i][place], boxes[j][chosen[j]])) cost += touches_text;
        if (cost < least - 1e-9) {
          least = cost;
          best = place;
        }
      }
      changed |= best != chosen[i];
      chosen[i] = best;
    }
  }
  for (std::size_t i = 0; i < labels.size(); ++i) {
    labels[i].text.middle = labels[i].places[chosen[i]].middle;
    const Box box = box_of(labels[i].text, labels[i].text.middle, 0);
    for (const Obstacle& obstacle : obstacles) drawing.overlaps += touches(box, obstacle) ? 1 : 0;
    for (std::size_t j = 0; j < i; ++j)
      drawing.overlaps += meet(box, box_of(labels[j].text, labels[j].text.middle, 0)) ? 1 : 0;
    drawing.texts.push_back(labels[i].text);
  }
}

}  // namespace frontend
