// Whole sentences: what may stand before a clause and carries no meaning of its own, several clauses in one
// sentence, goals, and the remarks of a question paper.
#pragma once
#include "prover/language/grammar_drawing.hpp"

namespace prover::grammar {

// What a question paper says besides mathematics.
struct marks : seq<sor<seq<one<'('>, blanks, opt<words<"total">>, digits, blanks,
                           opt<words<"marks|mark|points|point">>, one<')'>>,
                       seq<one<'['>, blanks, opt<words<"total">>, digits, blanks,
                           opt<words<"marks|mark|points|point">>, one<']'>>>,
                   blanks> {};
struct reasons
    : seq<opt<words<"you must">>,
          sor<seq<words<"give|giving|with|state|stating|write">, opt<words<"down">>, opt<words<"a">>,
                  opt<words<"geometric|geometrical|full|clear">>, words<"reasons|reason">>,
              words<"justify|justifying">, words<"explain|explaining">,
              seq<words<"show|showing">, opt<words<"all">>, words<"your working|work|steps">>>,
          star<words<"for|a|each|every|step|steps|stage|of|your|answer|answers|working|all|statement|"
                     "statements|reasoning|in|how|you|know">>> {};
struct not_to_scale : seq<opt<words<"a? figure|diagram|drawing is?">>, words<"not">,
                          words<"drawn? accurately|to">, opt<words<"scale">>> {};
struct remark : sor<marks, reasons, not_to_scale> {};
struct remarks : star<opt<comma>, remark> {};
struct stop : seq<star<sor<one<'.', '!', '?', ';'>>, blanks>, remarks, eof> {};
struct ending : seq<opt<comma>, remarks, named<"the end of the sentence", stop>> {};
// Labels before a fact: "bisects: ray BD bisects angle ABC", "equal lengths AB = CD".
struct fact_label
    : sor<seq<words<"equal lengths|sides|angles">, opt<colon>>,
          seq<words<"lengths|midpoint|tangent|inside|outside|meet|ray|bisects|sides|position|given">,
              opt<colon>>> {};
struct labelled_lines : sor<part<Part::lines_clause, words<"parallel">, opt<colon>, list<line, conjunction>,
                                 part<Part::are_parallel, blanks>>,
                            part<Part::lines_clause, words<"perpendicular">, opt<colon>,
                                 list<line, conjunction>, part<Part::are_perpendicular, blanks>>> {};
struct labelled_row : sor<says<Predicate::collinear, "", words<"collinear">, opt<colon>, point_row>,
                          says<Predicate::convex, "", words<"convex">, opt<colon>, not_at<noun>, point_row,
                               opt<in_this_order>>> {};
struct labelled_midpoint : part<Part::points_clause, subject, midpoint_short> {};

struct clause
    : sor<labelled_row, line_row_clause, labelled_lines, labelled_circle, labelled_concyclic, numbered_angles,
          call, drawing, tangents_from, diagonals_meet, perpendicular_bisector_meets, bisector_meets,
          tangent_meets, line_through, produced_meets, matched_shapes, angle_bisected, shape_clause,
          lines_clause, line_clause, points_clause, group_clause, relation, labelled_midpoint, said_circle> {
};
struct labelled_clause : sor<clause, seq<fact_label, clause>, seq<loose_letters, at<ending>>> {};

// Between clauses, and before the first. "If" and "then" only open: what stands between two clauses must mean
// "and".
struct joint
    : sor<words<"so? such? that">, words<"with|and|where|while|but|also|has|have">, words<"in which">,
          words<"for which">, words<"it? is? given that?">, words<"which has|have">, comma> {};
struct opening_word : sor<joint, words<"if|then|hence|therefore">, words<"let|suppose|assume that?">,
                          words<"we know that?">> {};
struct picture : words<"in? a figure|diagram|drawing|picture|sketch below|above|shown|alongside|opposite?"> {
};
struct setting
    : sor<seq<words<"in">, at<words<"a figure|diagram|drawing|picture|sketch">>, picture, opt<comma>>,
          seq<at<words<"a figure|diagram|drawing|picture|sketch">>, picture, words<"shows">>,
          seq<words<"in|for">, opt<words<"any|every">>, shape_in_prefix, opt<comma>>> {};
struct opening : sor<setting, seq<not_at<call>, opening_word>> {};

struct clauses : list<seq<star<opening>, labelled_clause>, plus<joint>> {};

// Goals.
struct in_terms_of : part<Part::in_terms_of, words<"in terms of">,
                          list<sor<angle_factor, called_angle, segment_factor, letter>, conjunction>> {};
struct asked_noun : opt<words<"a exact? size|value|measure|length|magnitude of">> {};
struct all_angles
    : part<Part::all_angles, sor<words<"all a? other? angles">, words<"name">>, star<pegtl::any>> {};
struct asked : sor<all_angles, several_quantities, seq<asked_noun, opt<words<"each of">>, expression>> {};
struct question_mark : opt<sign<"=">, opt<sign<"?">>> {};
struct find_body : part<Part::find, list<asked, conjunction>, opt<in_terms_of>, question_mark> {};
struct find_verb : sor<words<"find|calculate|compute|determine|evaluate|state|express">, words<"work out">,
                       words<"what is">, words<"how large|big|long is">, words<"write down">> {};
struct prove_verb : sor<words<"prove|show|verify|deduce|demonstrate that?">, words<"is it true that">,
                        words<"is it a case that">, words<"explain why">> {};
// "if KL = KM then ∠L = ∠M" gives the first and claims the second.
struct claims
    : list<labelled_clause, sor<seq<comma, opt<words<"and|also">>>, words<"and also?">, words<"and that">>> {
};
struct hypothesis
    : part<Part::hypothesis, words<"if">, list<labelled_clause, plus<joint>>, opt<comma>, words<"then">> {};
struct prove_body : part<Part::prove, opt<colon>, opt<hypothesis>, claims> {};
struct goal_opening
    : star<sor<words<"hence|also|then|therefore|thus|now|please">, words<"or otherwise">, comma>> {};
struct goal : seq<goal_opening, sor<seq<find_verb, opt<colon>, find_body>, seq<prove_verb, prove_body>>> {};
struct goals : list<goal, plus<sor<joint, words<"hence|then|therefore">>>> {};

// "Given that KL = KM, find angle KLM." – clauses, then goals.
struct sentence_body : sor<goals, seq<clauses, opt<plus<sor<joint, words<"hence|then|therefore">>>, goals>>,
                           seq<plus<opening>, goals>> {};
struct sentence : part<Part::sentence, blanks,
                       sor<seq<remark, ending>, seq<remarks, plus<setting>, ending>,
                           seq<remarks, star<opening>, sentence_body, ending>>> {};

struct find_line : part<Part::sentence, blanks, goal_opening, sor<goals, find_body>, ending> {};
struct prove_line : part<Part::sentence, blanks, goal_opening, sor<goals, prove_body>,
                         opt<plus<sor<joint, words<"hence|then|therefore">>>, goals>, ending> {};

}  // namespace prover::grammar
