// The lines that steer the work: `taught:` and `figure:`.
#pragma once
#include "prover/language/grammar_sentences.hpp"

namespace prover::grammar {

// taught: angle facts, parallel lines; not congruence; school up to midsegment
struct between_names : seq<star<sor<one<',', ';', '.'>, some_blanks>>> {};
struct up_to : seq<some_blanks, words<"up to">> {};
struct name_text : plus<not_at<one<',', ';', '\n'>>, not_at<one<'.'>, sor<eof, some_blanks>>, not_at<up_to>, pegtl::any> {
};
struct taught_name : seq<part<Part::name, name_text>, opt<up_to, part<Part::up_to, name_text>>> {};
struct excluded_name
    : part<Part::excluded, sor<words<"but? not">, words<"without">>, taught_name> {};
struct taught_line
    : part<Part::sentence, between_names,
           star<sor<excluded_name, seq<opt<words<"and">>, taught_name>>, between_names>,
           eof> {};

// figure: K = (0, 0), L = (4, 1); positions count
struct coordinate_token
    : part<Part::coordinate, opt<sor<one<'-', '+'>, pegtl::string<'\xE2', '\x88', '\x92'>>>,
           named<"a number", digits>, opt<one<'.'>, digits>, opt<one<'e', 'E'>, opt<one<'-', '+'>>, digits>> {
};
struct drawn_point : part<Part::drawn_point, point, opt<sign<"=">>, sign<"(">, coordinate_token, blanks,
                          sor<comma, sign<"|">, sign<";">>, coordinate_token, blanks, sign<")">> {};
struct positions_count : part<Part::positions_count, words<"positions count">> {};
struct drawn_not_to_scale : part<Part::not_to_scale, words<"not drawn? to scale">> {};
struct figure_item : sor<drawn_point, positions_count, drawn_not_to_scale> {};
struct figure_stop : sor<conjunction, sign<";">, sign<".">> {};
struct figure_line : part<Part::sentence, blanks, opt<list<figure_item, star<figure_stop>>>,
                          star<figure_stop>, named<"the end of the line", eof>> {};

}  // namespace prover::grammar
