// The small words and signs of a pupil's line, outside its claims: where "so" stands, what "∴" is, which words cannot
// belong to a claim.
#pragma once
#include <cstddef>
#include <string_view>
#include <vector>

namespace prover::work_words {

// The end of the words at `at`, which must begin and end there as words, or 0. Capitals only at the beginning: "SO" is a
// segment. `choices` are separated by '|'; a blank in them stands for any blanks.
std::size_t match(std::string_view text, std::size_t at, std::string_view choices);
std::size_t find(std::string_view text, std::string_view choices);  // npos
std::size_t skip_blanks(std::string_view text, std::size_t at);
std::size_t skip_signs(std::string_view text, std::size_t at, std::string_view signs);  // one of the signs, '|' between
bool is_blank(std::string_view text);

bool is_small(char c);
bool is_capital(char c);
bool is_digit(char c);

// A sign that joins two sides: what stands after it goes on with what stands before it.
bool joins_at(std::string_view text, std::size_t at);
bool joins_before(std::string_view text, std::size_t end);

// Something is said of quantities or lines: "=", "∥", "⊥", "≅" …
bool has_relation(std::string_view text);
// A row of capitals that could be points: "KLM", not "SAS" or the K of "Keep".
bool has_letters(std::string_view text);
bool has_prose(std::string_view text);  // a word of three small letters that is no word of a claim

}  // namespace prover::work_words
