// Course files: what they may say, and that each mistake in one is shown in its place while all others load.
#include <algorithm>
#include <catch2/catch.hpp>

#include "prover/rule/rule.hpp"

using namespace prover;

namespace {

const std::string head = "course lath\n  title \"laths\"\n  says \"Laths.\"\n  source \"common practice\"\n";

LoadedCatalogue with_courses(std::vector<RuleFile> files) {
  std::vector<RuleFile> all = builtin_rule_files();
  all.insert(all.end(), files.begin(), files.end());
  return load_catalogue(all, Examples::kept);
}
std::string complaint(const std::string& text) {
  std::string out;
  for (const auto& [file, mistakes] : with_courses({{"lath.course", text}}).mistakes)
    for (const Diagnostic& mistake : mistakes) out += render(mistake, file.name, file.text);
  return out;
}
std::vector<std::string> ids_of(const LoadedCatalogue& loaded, std::string_view course) {
  std::vector<std::string> out;
  const Course* found = find_course(loaded.catalogue, course);
  REQUIRE(found);
  for (const CourseEntry& entry : found->entries)
    out.push_back((entry.taken ? "takes " : "teaches ") + loaded.catalogue[entry.rule].id);
  return out;
}
using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("takes and teaches interleave and keep their order", "[course]") {
  const LoadedCatalogue loaded = with_courses({{"lath.course", head + "  teaches vertical-angles\n"
                                                                      "  takes   angles-on-a-straight-line  # seen\n"
                                                                      "          angles-at-a-point\n"
                                                                      "  teaches triangle-angle-sum\n"}});
  CHECK(loaded.mistakes.empty());
  CHECK(ids_of(loaded, "lath") == Lines{"teaches vertical-angles", "takes angles-on-a-straight-line",
                                        "takes angles-at-a-point", "teaches triangle-angle-sum"});
}

TEST_CASE("a family stands behind its head, but for members with a place of their own", "[course]") {
  CHECK(ids_of(with_courses({{"lath.course", head + "  teaches rhombus-converse\n"}}), "lath") ==
        Lines{"teaches rhombus-converse", "teaches rhombus-converse-bisector", "teaches rhombus-converse-diagonals"});
  CHECK(ids_of(with_courses({{"lath.course", head + "  takes rhombus-converse-diagonals\n  teaches rhombus-converse\n"}}),
               "lath") ==
        Lines{"takes rhombus-converse-diagonals", "teaches rhombus-converse", "teaches rhombus-converse-bisector"});
}

TEST_CASE("chapters: what stands behind a title is in it, with families and courses named there", "[course]") {
  const std::string knot = "course knot\n  title \"k\"\n  says \"K.\"\n  source \"s\"\n  chapter \"knots\"\n  takes angles-at-a-point\n";
  const LoadedCatalogue loaded = with_courses(
      {{"knot.course", knot},
       {"lath.course", head + "  takes angles-on-a-straight-line\n  chapter \"laths\"\n  teaches vertical-angles knot\n"
                              "  chapter \"diamonds\"\n  teaches rhombus-converse\n"}});
  REQUIRE(loaded.mistakes.empty());
  const Course& lath = *find_course(loaded.catalogue, "lath");
  std::vector<std::string> chapters;
  for (const CourseEntry& entry : lath.entries) chapters.push_back(entry.chapter);
  CHECK(chapters == Lines{"", "laths", "knots", "diamonds", "diamonds", "diamonds"});

  const auto id = [&](const char* name) { return *loaded.catalogue.find(name); };
  const auto needed = chapter_needed(lath, {id("rhombus-converse"), id("vertical-angles"), id("triangle-angle-sum")});
  REQUIRE(needed);
  CHECK(needed->rule == id("rhombus-converse"));
  CHECK(needed->chapter == "diamonds");
  CHECK(chapter_needed(lath, {id("vertical-angles")})->chapter == "laths");
  CHECK_FALSE(chapter_needed(lath, {id("triangle-angle-sum")}));
  CHECK(complaint(head + "  chapter\n  teaches vertical-angles\n").find("`chapter` says nothing") != std::string::npos);
}

TEST_CASE("a course may stand in another, whichever file comes first", "[course]") {
  const std::string other = "course knot\n  title \"k\"\n  says \"K.\"\n  source \"s\"\n  takes angles-at-a-point\n";
  for (const char* word : {"takes", "teaches"}) {
    const std::string text = head + "  " + word + " knot\n  teaches vertical-angles\n";
    const std::string knot = other + "  teaches triangle-angle-sum\n";
    const Lines expected = {"takes angles-at-a-point",
                            std::string(word) + " triangle-angle-sum",  // `teaches` leaves it as it is there
                            "teaches vertical-angles"};
    CHECK(ids_of(with_courses({{"knot.course", knot}, {"lath.course", text}}), "lath") == expected);
    CHECK(ids_of(with_courses({{"lath.course", text}, {"knot.course", knot}}), "lath") == expected);
  }
}

TEST_CASE("mistakes in a course file are shown in their place", "[course]") {
  CHECK(complaint(head + "  teaches vertical-angle\n") ==
        "lath.course:5:11: error: there is no rule or course `vertical-angle`\n"
        "      teaches vertical-angle\n"
        "              ^\n"
        "  try: did you mean `vertical-angles`?\n");
  const auto says = [](const std::string& text, const std::string& message) {
    INFO(complaint(text));
    CHECK(complaint(text).find(message) != std::string::npos);
  };
  says(head + "  takes vertical-angles\n  teaches vertical-angles\n",
       "lath.course:6:11: error: `vertical-angles` has its place in this course already, on line 5");
  says(head + "  takes school\n  teaches vertical-angles\n", "has its place in this course already, on line 5");
  says(head + "  takes vertical-angles, angles-at-a-point\n", "\"vertical-angles,\" is no name of a rule");
  says(head + "  teachs vertical-angles\n", "did you mean `teaches`?");
  says(head, "this course names no rule");
  says("course lath\n  takes given\n", "no `title`");
  says("course lath\n  takes given\n", "no `source`");
  says(head + "  says \"Twice.\"\n  takes given\n", "`says` is here twice");
  says("  title \"lath\"\n", "a course file begins with `course` and a name");
  says("course Lath\n", "a course is named in small letters");
  says(head + "  takes given\ncourse second\n", "a file holds one course");
  says("course school\n  title \"t\"\n  says \"S.\"\n  source \"s\"\n  takes given\n",
       "there is a course `school` already, in courses/school.course");
  says("course given\n  title \"t\"\n  says \"S.\"\n  source \"s\"\n  takes given\n", "`given` is the name of a rule");
  says(head + "  teaches lath\n", "the course `lath` rests on this one");
}

TEST_CASE("a broken course takes no other along", "[course]") {
  const LoadedCatalogue loaded =
      with_courses({{"lath.course", head + "  teaches no-such-thing\n"},
                    {"knot.course", "course knot\n title \"k\"\n says \"K.\"\n source \"s\"\n takes given lath\n"}});
  REQUIRE(loaded.mistakes.size() == 1);  // told once, in its own file
  CHECK(loaded.mistakes[0].first.name == "lath.course");
  CHECK_FALSE(find_course(loaded.catalogue, "lath"));
  CHECK(ids_of(loaded, "knot") == Lines{"takes given"});
  CHECK(find_course(loaded.catalogue, "school"));
  CHECK(loaded.catalogue.rules.size() == standard_catalogue().rules.size());
}

TEST_CASE("a rule with a mistake in its own file is missing from a course without a second complaint", "[course]") {
  const LoadedCatalogue loaded =
      with_courses({{"own/lath-fact.rule", "rule lath-fact\n"}, {"lath.course", head + "  takes given lath-fact\n"}});
  REQUIRE(loaded.mistakes.size() == 1);
  CHECK(loaded.mistakes[0].first.name == "own/lath-fact.rule");
  CHECK(ids_of(loaded, "lath") == Lines{"takes given"});
}

TEST_CASE("courses that name each other are refused, not followed for ever", "[course]") {
  const LoadedCatalogue loaded =
      with_courses({{"lath.course", head + "  takes given knot\n"},
                    {"knot.course", "course knot\n title \"k\"\n says \"K.\"\n source \"s\"\n takes lath\n"}});
  CHECK(loaded.mistakes.size() == 1);
  CHECK_FALSE(find_course(loaded.catalogue, "knot"));
}
