#include "prover/language/lines.hpp"

#include "prover/language/grammar_words.hpp"

namespace prover {

namespace grammar {

struct gap : star<one<' ', '\t', '\r'>> {};  // blanks within a line
struct line_end : sor<pegtl::eol, eof> {};
struct comment : seq<one<'#'>, star<not_at<line_end>, pegtl::any>> {};

struct head_colon : seq<gap, one<':'>, gap> {};
struct find_head : seq<opt<bare_word<"to">, gap>, bare_word<"find|name">, head_colon> {};
struct prove_head : seq<opt<bare_word<"to">, gap>, bare_word<"prove">, head_colon> {};
struct add_head : seq<bare_word<"add">, head_colon> {};
struct given_head
    : seq<sor<bare_word<"given|givens">, seq<bare_word<"as">, gap, bare_word<"drawn">>>, head_colon> {};
struct taught_head : seq<bare_word<"taught">, head_colon> {};
struct figure_head : seq<bare_word<"figure">, head_colon> {};
struct story_head : seq<bare_word<"story">, head_colon> {};
struct work_head : seq<bare_word<"work">, head_colon> {};
struct other_head : seq<bare_word<"answer|lesson|expect">, head_colon> {};
struct sentence_head
    : seq<opt<bare_word<"hence|also">, gap>, sor<find_head, prove_head, add_head, given_head>> {};
struct whole_head : sor<taught_head, figure_head, story_head, other_head> {};
struct any_head : sor<whole_head, work_head, sentence_head> {};

// "(a)", "(iv)", "3.", "2)", "Question 3:"
struct label : seq<sor<seq<one<'('>, pegtl::rep_min_max<1, 3, pegtl::alnum>, one<')'>>,
                       seq<pegtl::rep_min_max<1, 3, pegtl::digit>, one<'.', ')'>, at<one<' ', '\t'>>>,
                       seq<one<'a', 'b', 'c', 'd', 'e', 'f'>, one<')'>>,
                       seq<bare_word<"question">, gap, plus<pegtl::digit>, opt<one<'.', ':'>>>>,
                   gap> {};

// A line goes on in the next after a comma or a word that cannot end a sentence. "BE", "AN" and "OF" are segments.
struct segment_name : seq<pegtl::upper, pegtl::upper> {};
struct open_word : bare_word<"and|with|that|where|is|are|of|to|at|the|an|on|in|has|such|from|through|by"> {};
struct open_end : sor<one<','>, seq<not_at<segment_name>, open_word>> {};
struct continued : seq<open_end, gap, pegtl::eol, gap, not_at<sor<line_end, any_head, label, one<'#'>>>> {};
struct plain_word : plus<pegtl::alpha> {};
struct full_stop : seq<one<'.', '!', '?'>, at<sor<one<' ', '\t', '\r', '#'>, line_end>>> {};
struct semicolon : one<';'> {};
struct sentence_text
    : plus<not_at<sor<line_end, full_stop, semicolon, one<'#'>>>, sor<continued, plain_word, pegtl::any>> {};
struct whole_text : plus<not_at<sor<line_end, one<'#'>>>, sor<continued, plain_word, pegtl::any>> {};

// A pupil's work may stand on the lines below its keyword, up to the next keyword. "given:", "to prove:", and "Answer:" with
// a capital letter, are the pupil's own headings there.
struct pupils_heading
    : sor<bare_word<"to">, given_head,
          seq<at<one<'A', 'P', 'F'>>, sor<find_head, prove_head, seq<bare_word<"answer">, head_colon>>>> {
};
struct work_line : plus<not_at<sor<line_end, one<'#'>>>, pegtl::any> {};
struct work_below
    : star<not_at<eof>, not_at<gap, not_at<pupils_heading>, any_head>, gap, opt<work_line>, opt<comment>, sor<pegtl::eol, at<eof>>> {
};
struct work : seq<work_head, sor<seq<work_line, opt<comment>, sor<pegtl::eol, eof>>,
                                 seq<opt<comment>, sor<pegtl::eol, eof>, work_below>>> {};

struct sentences : star<sor<full_stop, semicolon, seq<gap, sentence_text>, one<' ', '\t', '\r'>>> {};
struct headed
    : seq<sor<seq<whole_head, opt<whole_text>>, seq<opt<sentence_head>, sentences>>, opt<comment>, line_end> {
};
struct line_begin : pegtl::success {};
struct text_line : seq<not_at<eof>, line_begin, gap, opt<label>, sor<work, headed>> {};
struct text : seq<star<text_line>, eof> {};

}  // namespace grammar

namespace {

struct Cutter {
  const char* text;
  std::vector<Piece> pieces;
  Piece next;  // what the next piece will be
  LineKind headed = LineKind::sentence;

  void push(const char* begin, const char* end) {
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; };
    while (begin != end && blank(*begin)) ++begin;
    while (begin != end && blank(end[-1])) --end;
    if (begin == end) return;
    Piece piece = next;
    piece.span = {static_cast<std::size_t>(begin - text), static_cast<std::size_t>(end - text)};
    pieces.push_back(piece);
  }
};

template <class Rule>
struct Cut : tao::pegtl::nothing<Rule> {};

template <LineKind kind>
struct Heads {
  template <class Input>
  static void apply(const Input& in, Cutter& cutter) {
    cutter.next.kind = kind;
    const std::string_view head(in.begin(), in.size());
    cutter.next.keyword = head.substr(0, head.find_first_of(" \t\r:"));
  }
};
template <>
struct Cut<grammar::find_head> : Heads<LineKind::find> {};
template <>
struct Cut<grammar::prove_head> : Heads<LineKind::prove> {};
template <>
struct Cut<grammar::add_head> : Heads<LineKind::add> {};
template <>
struct Cut<grammar::given_head> : Heads<LineKind::sentence> {};
template <>
struct Cut<grammar::taught_head> : Heads<LineKind::taught> {};
template <>
struct Cut<grammar::figure_head> : Heads<LineKind::figure> {};
template <>
struct Cut<grammar::story_head> : Heads<LineKind::story> {};
template <>
struct Cut<grammar::work_head> : Heads<LineKind::other> {};
template <>
struct Cut<grammar::other_head> : Heads<LineKind::other> {};

template <>
struct Cut<grammar::line_begin> {
  static void apply0(Cutter& cutter) { cutter.next = {}; }
};
template <>
struct Cut<grammar::semicolon> {
  static void apply0(Cutter& cutter) { cutter.next.joined = true; }
};
// After a full stop a goal is over: "prove: KL = KM. Give reasons."
template <>
struct Cut<grammar::full_stop> {
  static void apply0(Cutter& cutter) {
    cutter.next.joined = false;
    if (cutter.next.kind == LineKind::find || cutter.next.kind == LineKind::prove)
      cutter.next.kind = LineKind::sentence;
  }
};

struct Pushes {
  template <class Input>
  static void apply(const Input& in, Cutter& cutter) {
    cutter.push(in.begin(), in.end());
  }
};
template <>
struct Cut<grammar::sentence_text> : Pushes {};
template <>
struct Cut<grammar::whole_text> : Pushes {};
template <>
struct Cut<grammar::work_line> : Pushes {};

}  // namespace

std::vector<Piece> cut_into_pieces(std::string_view text) {
  Cutter cutter{text.data(), {}, {}};
  tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> input(text.data(), text.size(), "");
  tao::pegtl::parse<grammar::text, Cut>(input, cutter);
  return std::move(cutter.pieces);
}

}  // namespace prover
