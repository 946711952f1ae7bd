// Building instances of built-in shapes: forms of named angles and lengths, and the premises for lines that had
// to be drawn first.
#pragma once
#include <algorithm>

#include "prover/chain/knowledge.hpp"
#include "prover/statement/canonical_fact.hpp"

namespace prover {

class ShapeInstance {
 public:
  ShapeInstance(RuleId rule, Rational cost, std::vector<PointId> places, Knowledge& knowledge)
      : knowledge_(knowledge) {
    instance_.rule = rule;
    instance_.cost = std::move(cost);
    instance_.places = std::move(places);
  }

  // The angle at v between the rays through a and b; the rays must differ and not be opposite.
  Form angle(PointId a, PointId v, PointId b) {
    need_line(v, a);
    need_line(v, b);
    const Arrangement& figure = knowledge_.arrangement;
    return Form::of(knowledge_.unknowns.angle(v, figure.ray(v, a), figure.ray(v, b)));
  }
  Form length(PointId a, PointId b) {
    need_line(a, b);
    return Form::of(knowledge_.unknowns.length(a, b));
  }
  void need(Position position) {
    position = canonical(position);
    if (std::find(instance_.positions.begin(), instance_.positions.end(), position) == instance_.positions.end())
      instance_.positions.push_back(position);
  }
  void premise(Form form) { instance_.premises.push_back(std::move(form)); }
  void conclude(Form form) { instance_.conclusions.push_back(std::move(form)); }
  void offer() { knowledge_.offer(instance_); }

 private:
  void need_line(PointId a, PointId b) {
    const Arrangement& figure = knowledge_.arrangement;
    const LineId l = figure.line(a, b);
    if (!figure.is_joined(l)) return;
    Form joined = Form::of(point_fact(FactKind::joined, figure.points_on(l), knowledge_.unknowns));
    if (std::find(instance_.premises.begin(), instance_.premises.end(), joined) == instance_.premises.end())
      instance_.premises.push_back(std::move(joined));
  }

  Knowledge& knowledge_;
  Instance instance_;
};

}  // namespace prover
