// What stands in the rows of a scheme: statements as short as a pupil may write them, and other words for a reason.
#pragma once
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

// "∠LKQ = 52°" of "∠LKQ = ∠PQK = 52°"; the last of several claims joined by "so".
std::string short_statement(const AnswerStep& step);
bool gives_value(const AnswerStep& step);  // its statement ends in a number

// Without the places that no convention asks for: what cuts the parallels, which triangle.
std::string short_reason(const AnswerStep& step);
std::vector<std::string> other_words(const AnswerStep& step, const Rule& rule);
std::string other_routes(const Rule& rule, const Catalogue& catalogue);

}  // namespace prover
