// The shapes with any number of parts: neighbouring angles and segments, rays along a line or round a point,
// polygons. Their places are found here, one function a shape, because no finite pattern can say them.
#pragma once
#include <array>

#include "prover/chain/knowledge.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

void offer_angle_addition(RuleId rule, const Rational& cost, Knowledge& knowledge);
void offer_segment_addition(RuleId rule, const Rational& cost, Knowledge& knowledge);
// The whole side of a line at once, and every choice of one or two rays on it.
void offer_straight_lines(RuleId rule, const Rational& cost, Knowledge& knowledge);
// Three or four rays, neighbours less than 180° apart.
void offer_round_points(RuleId rule, const Rational& cost, Knowledge& knowledge);
// Polygons named in the text and drawn convex quadrilaterals; corners may be reflex where that is known.
void offer_polygon_sums(RuleId quadrilateral, RuleId polygon, const Catalogue& catalogue,
                        const std::vector<bool>& allowed, const Statement& statement, Knowledge& knowledge);
// Regular polygons among the known facts from index `since` on.
struct RegularPolygonRules {
  RuleId angles, sides, equal_angles;
};
void offer_regular_polygons(const RegularPolygonRules& rules, const Catalogue& catalogue,
                            const std::vector<bool>& allowed, std::size_t since, Knowledge& knowledge);
// Convex polygons whose sides are produced one way round: rows of points that sentences name, and the faces that a
// reader sees.
void offer_exterior_sums(RuleId rule, const Rational& cost, const Statement& statement, Knowledge& knowledge);
// Triangles with two or three pairs of sides in one known ratio other than 1. `triangles`: each in every order.
void offer_similar_triangles(RuleId sas, RuleId sss, const Catalogue& catalogue, const std::vector<bool>& allowed,
                             const std::vector<std::array<PointId, 3>>& triangles, Knowledge& knowledge);
// The other sides of triangles known to be similar, where one ratio of sides is known.
void offer_similar_sides(RuleId rule, const Rational& cost, Knowledge& knowledge);

}  // namespace prover
