// What is said to the pupil about a line: one sentence, friendly and plain, that gives nothing away which the line did not
// ask. What would put the line right stands in other fields, for the teacher.
#pragma once
#include <string>

#include "prover/marking/judgement.hpp"
#include "prover/rule/rule.hpp"

namespace prover {

std::string remark_for(const JudgedLine& line);
std::string slip_remark(const Rational& left, const Rational& right);
// The rule that was named rests on the theorem that is to be shown, with the chain that leads there.
std::string circular_course_remark(RuleId cited, RuleId stated, const Catalogue& catalogue);

}  // namespace prover
