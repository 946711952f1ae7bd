// The shapes with any number of parts: neighbouring angles and segments, rays along a line or round a point,
// polygons. Their places are found here, one function a shape, because no finite pattern can say them.
#pragma once
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
void offer_regular_polygons(RuleId angles, RuleId sides, const Catalogue& catalogue, const std::vector<bool>& allowed,
                            std::size_t since, Knowledge& knowledge);

}  // namespace prover
