// Quantities, sums of them, and how they compare. Everything is linear in the end; products of unknowns are
// read here too, so that they can be refused with the reason.
#pragma once
#include "prover/language/grammar_names.hpp"

namespace prover::grammar {

// 40   22.5   22,5   1/2   22 1/2   ½   23⅓
struct digits : plus<pegtl::digit> {};
struct number_token : part<Part::number, named<"a number", digits, opt<sor<seq<one<'.', ','>, digits>>>>> {};
struct whole_token : part<Part::number, digits> {};
struct vulgar : utf8::one<0xBC, 0xBD, 0xBE, 0x2150, 0x2151, 0x2152, 0x2153, 0x2154, 0x2155, 0x2156, 0x2157,
                          0x2158, 0x2159, 0x215A, 0x215B, 0x215C, 0x215D, 0x215E> {};
struct glyph_token : part<Part::glyph, vulgar> {};
struct fraction_token
    : seq<part<Part::fraction, whole_token, one<'/'>, whole_token>, not_at<one<'.', ','>, pegtl::digit>> {};
struct mixed_token
    : part<Part::mixed, whole_token, sor<glyph_token, seq<some_blanks, sor<glyph_token, fraction_token>>>> {};
struct number : sor<mixed_token, glyph_token, fraction_token, number_token> {};

struct degree_sign : sor<sign<"°">, sign<"º">, sign<"˚">, words<"degrees|degree|deg">> {};
struct degree_unit : part<Part::degree_unit, degree_sign> {};
// In capitals it is a segment: "KL = 2 KM".
struct length_unit
    : seq<not_at<pegtl::upper>, part<Part::length_unit,
           words<"cm|mm|km|dm|m|metres|metre|meters|centimetres|centimeters|units|unit|inches|feet">>> {};
struct unit : sor<degree_unit, length_unit> {};

struct expression;
struct bracket : seq<part<Part::bracketed, sign<"(">, expression, one<')'>>, blanks, opt<degree_unit>> {};
struct power_mark
    : part<Part::power, blanks, sor<seq<one<'^'>, blanks, digits>, utf8::one<0xB2, 0xB3>>, blanks> {};

struct length_of : words<"a length|measure|size of"> {};
struct segment_factor : seq<opt<length_of>, segment> {};
struct angle_factor : seq<opt<words<"a size|value|measure of">>, angle> {};
struct letter_factor;
struct called_angle : seq<clear_angle_sign, letter> {};
// "2x", "2 angle ABC", "2(x + 5)", "½x": what a coefficient may stand before.
struct clear_angle_factor : sor<exterior_angle, angle_at, clear_angle, hatted_angle> {};
struct after_coefficient
    : sor<letter_factor, called_angle, clear_angle_factor, seq<plain_line, opt<power_mark>>, bracket> {};
struct number_factor
    : seq<number,
          sor<seq<at<letter_token>, after_coefficient>, seq<blanks, opt<unit>, opt<after_coefficient>>>> {};
struct letter_factor
    : seq<letter, opt<degree_unit>, opt<power_mark>, opt<sor<bracket, letter_token>>, blanks> {};
struct multiple
    : part<Part::multiple,
           sor<words<"twice|double|thrice a size|length|measure of">,
               words<"twice|thrice as large|big|long|great as">, words<"half as large|big|long as">,
               words<"half a size|length of">, words<"twice|thrice|double">, words<"a one? half of?">,
               words<"a one? third of">, words<"a one? quarter of">, words<"two thirds of">,
               words<"three quarters of">, words<"two|three|four|five|six times as large|big|long as">,
               words<"two|three|four|five|six times a size of">, words<"two|three|four|five|six times">>> {};
struct sum_of;
struct loose_letters : part<Part::loose_letters, letters> {};
struct factor
    : seq<star<multiple>,
          sor<sum_of, number_factor, called_angle, angle_factor, seq<segment_factor, opt<power_mark>>,
              letter_factor,
              seq<bracket, opt<sor<letter_factor, called_angle, clear_angle_factor, plain_line, bracket>>>,
              loose_letters>> {};

struct times_sign : sor<sign<"*">, sign<"·">, sign<"×">, sign<"⋅">, words<"times">> {};
struct over : part<Part::over, sor<sign<"/">, sign<"÷">, words<"divided by">>, factor> {};
struct product : part<Part::product, factor, star<sor<over, seq<times_sign, factor>>>> {};
struct minus : part<Part::minus, sor<sign<"-">, sign<"−">, sign<"–">>> {};
struct plus_sign : sign<"+"> {};
struct expression
    : part<Part::expression, opt<sor<minus, plus_sign>>, product, star<sor<plus_sign, minus>, product>> {};

// A list of quantities: "angles KLM and MNP", "KL, LM and MN".
struct listed_quantity : sor<angle_factor, segment_factor> {};
struct quantity_list
    : part<Part::quantities,
           sor<angles_of, angle_list, seq<opt<words<"both a?">>, list<listed_quantity, conjunction>>>> {};
struct several_quantities
    : part<Part::quantities,
           sor<angles_of, angle_list,
               seq<opt<words<"both">>, listed_quantity, plus<conjunction, listed_quantity>>>> {};
struct sum_of : part<Part::sum_of, words<"a sum of">, opt<words<"a sizes of">>, several_quantities> {};

// "angle KLM is 20° more than angle KML"
struct more : part<Part::more, words<"more|greater|larger|bigger|longer than">, expression> {};
struct less : part<Part::less, words<"less|smaller|shorter than">, expression> {};
struct side : part<Part::side, expression, opt<sor<more, less>>> {};

struct inclusive
    : part<Part::inclusive,
           sor<sign<"<=">, sign<">=">, sign<"≤">, sign<"≥">, sign<"≠">, words<"is at least|most">>> {};
struct less_than : part<Part::less_than, sor<sign<"<">, words<"is less|smaller|shorter than">>> {};
struct greater_than
    : part<Part::greater_than, sor<sign<">">, words<"is greater|larger|bigger|longer|more than">>> {};
struct equal : part<Part::equal,
                    sor<sign<"=">, sign<"≅">, words<"is equal in? size|length? to">, words<"equals|measures">,
                        words<"is a same size|length as">, words<"is as large|big|long as">,
                        words<"is congruent to">, words<"has size|measure|length">, words<"is">>> {};
struct comparison : sor<inclusive, less_than, greater_than, equal> {};
struct exceeds : seq<part<Part::equal, words<"exceeds">>,
                     part<Part::side, expression, words<"by">, part<Part::more, expression>>> {};

struct right_angle : part<Part::right_angle, words<"is a right angle">> {};
struct straight_angle : part<Part::straight_angle, words<"is a straight angle">> {};
struct acute_angle : part<Part::acute_angle, words<"is a acute angle?">> {};
struct obtuse_angle : part<Part::obtuse_angle, words<"is a obtuse angle?">> {};

// KLM : MNP = 2 : 3 – quantities in a ratio
struct ratio_number : seq<number, blanks> {};
struct ratio : part<Part::ratio, ratio_number, plus<sor<colon, sign<"∶">, words<"to">>, ratio_number>> {};
struct ratio_clause : part<Part::quantities, listed_quantity, plus<sor<colon, sign<"∶">>, listed_quantity>> {
};

struct relation
    : part<Part::relation, side,
           sor<right_angle, straight_angle, acute_angle, obtuse_angle, exceeds, plus<comparison, side>>> {};

// What is said of several quantities at once.
struct group_equal : part<Part::group_equal, words<"is both|all? equal|congruent">,
                          opt<sor<words<"in length|size">, words<"to each|one other|another">>>> {};
struct group_sum
    : part<Part::group_sum,
           sor<words<"add|adds|sum up? to">, words<"total">, words<"have sum">, words<"together make|are">>,
           expression> {};
struct group_each : part<Part::group_each, words<"is both|each|all?">, expression> {};
struct group_respectively : part<Part::group_respectively, words<"is|measure">, list<expression, conjunction>,
                                 opt<comma>, words<"respectively">> {};
struct group_ratio
    : seq<sor<words<"is in a ratio">, words<"is as">, words<"have a ratio">>, opt<sign<"of">>, ratio> {};
struct complementary : part<Part::complementary, words<"is complementary">> {};
struct supplementary : part<Part::supplementary, words<"is supplementary">> {};
struct group_right : part<Part::group_right, words<"is both|all? right angles">> {};
struct group_clause : sor<part<Part::group, several_quantities,
                               sor<group_equal, complementary, supplementary, group_right, group_ratio,
                                   group_sum, group_respectively, group_each>>,
                          part<Part::group, ratio_clause, sor<sign<"=">, words<"is">>, ratio>> {};

}  // namespace prover::grammar
