"""Is it solvable: the report on a problem, the answer book, a folder of problems."""
import json
import re
import tempfile
from pathlib import Path

from program import EXAMPLES, ROOT, SCHEMA, TestCase, run

WORKSHEET = ROOT / "frontend" / "examples" / "worksheet"


def solvable(text, *options):
    return run("solvable", *options, "-", text=text)


class Solvable(TestCase):
    TRIANGLE = "triangle: KLM\nKL = KM\nangle KLM = 65\nfind: angle LKM\n"

    def answer(self, text, *options):
        return json.loads(solvable(text, "--json", *options).out)

    def test_every_example_and_worksheet_problem_fits_the_schema(self):
        import jsonschema
        validator = jsonschema.Draft202012Validator(json.loads(SCHEMA.read_text(encoding="utf-8")))
        for example in [*EXAMPLES, *sorted(WORKSHEET.glob("*.aw"))]:
            with self.subTest(example.name):
                answer = json.loads(run("solvable", "--json", example).out)
                self.assertEqual([e.message for e in validator.iter_errors(answer)], [])

    def test_a_theorem_without_which_nothing_is_reached_is_needed(self):
        given = {c["rule"]: c for c in self.answer(self.TRIANGLE)["contributions"]}
        self.assertEqual(set(given), {"isosceles-base-angles", "triangle-angle-sum"})
        # What is said to be needed is: without it there is no proof; what is not, costs what it says.
        from fractions import Fraction
        cost = Fraction(self.answer(self.TRIANGLE)["proofs"][0]["cost"])
        for rule, one in given.items():
            other = self.answer(self.TRIANGLE, "--without-only", rule)
            if one["needed"]:
                self.assertNotEqual(other["verdict"], "proved", rule)
            else:
                self.assertEqual(Fraction(other["proofs"][0]["cost"]) - cost, Fraction(one["more"]), rule)

    def test_a_report_tells_what_a_proof_is_and_not_its_lines(self):
        done = solvable(self.TRIANGLE)
        self.assertEqual(done.returncode, 0)
        self.assertIn("2 steps", done.out)
        self.assertNotIn("∴", done.out)
        self.assertIn("∴", run("prove", "-", text=self.TRIANGLE).out)

    def test_why_givens_exclude_each_other_is_told_in_full(self):
        done = run("solvable", WORKSHEET / "3.aw")
        self.assertEqual(done.returncode, 1)
        self.assertIn("∴", done.out)


class AnswerBook(TestCase):
    def outcome(self, text):
        [entry] = json.loads(run("prove", "--json", "-", text=text).out)["answer_book"]
        return entry["outcome"]

    def test_numbers_are_compared_exactly(self):
        for book, outcome in [("50", "agrees"), ("50°", "agrees"), ("angle LKM = 50 degrees", "agrees"), ("50,0", "agrees"),
                              ("100/2", "agrees"), ("51", "differs"), ("-50", "differs"), ("fifty", "unread")]:
            with self.subTest(book):
                self.assertEqual(self.outcome(Solvable.TRIANGLE + f"answer: {book}\n"), outcome)

    def test_a_book_that_knows_one_case_only(self):
        text = "KL ∥ PQ\nKL = KQ\nangle PQK = 52\nfind: angle KLQ\n"
        self.assertEqual(self.outcome(text + "answer: 64\n"), "one-case")
        self.assertEqual(self.outcome(text + "answer: 26\n"), "one-case")
        self.assertEqual(self.outcome(text + "answer: 65\n"), "differs")

    def test_an_answer_that_the_givens_allow_but_do_not_force(self):
        text = "triangle: KLM\nangle KLM = 50\nfind: angle LKM\n"
        self.assertIn(self.outcome(text + "answer: 65\n"), ("possible", "only-if"))
        self.assertEqual(self.outcome(text + "answer: 140\n"), "no-figure")

    def test_claims(self):
        true = "triangle: KLM\nKL = KM\nprove: angle KLM = angle KML\n"
        false = "triangle: KLM\nKL = KM\nprove: angle KLM = angle LKM\n"
        self.assertEqual(self.outcome(true + "answer: yes\n"), "agrees")
        self.assertEqual(self.outcome(true + "answer: no\n"), "differs")
        self.assertEqual(self.outcome(false + "answer: false\n"), "agrees")
        self.assertEqual(self.outcome(false + "answer: true\n"), "differs")

    def test_several_goals_have_several_answers(self):
        text = "triangle: KLM\nKL = KM\nangle KLM = 65\nfind: angle LKM\nfind: angle KML\nanswer: 50\nanswer: 60\n"
        book = json.loads(run("prove", "--json", "-", text=text).out)["answer_book"]
        self.assertEqual([e["outcome"] for e in book], ["agrees", "differs"])


class FolderOfProblems(TestCase):
    def test_the_worksheet_as_a_table(self):
        done = run("batch", WORKSHEET)
        self.assertEqual(done.returncode, 0, done.err)
        rows = dict(re.findall(r"^  (\d+)   +(\S.*?)(?:  |$)", done.out, re.M))
        self.assertEqual(rows["1"], "solvable")
        self.assertEqual(rows["2"], "several answers")
        self.assertEqual(rows["3"], "contradictory")
        self.assertEqual(rows["4"], "not determined")
        self.assertEqual(rows["5"], "beyond what is taught")
        self.assertEqual(rows["6"], "false")
        self.assertEqual(rows["7"], "solvable")
        self.assertEqual(rows["9"], "beyond what is taught")
        self.assertIn("| Problem |", run("batch", "--format", "markdown", WORKSHEET).out)

    def test_json_lines_name_the_files(self):
        answers = [json.loads(line) for line in run("batch", "--json", WORKSHEET).out.splitlines()]
        self.assertEqual([a["id"] for a in answers], [str(i) for i in range(1, len(answers) + 1)])
        self.assertNotIn("contributions", answers[0])
        [first, *_] = run("batch", "--json", "--in-full", WORKSHEET).out.splitlines()
        self.assertIn("contributions", json.loads(first))

    def test_problems_stand_in_the_order_in_which_people_count(self):
        with tempfile.TemporaryDirectory() as folder:
            for name in ("10.aw", "9.aw", "2b.aw", "2.aw", "notes.txt"):
                (Path(folder) / name).write_text(Solvable.TRIANGLE, encoding="utf-8")
            answers = [json.loads(line)["id"] for line in run("batch", "--json", folder).out.splitlines()]
        self.assertEqual(answers, ["2", "2b", "9", "10"])

    def test_a_mistake_in_one_problem_is_its_row(self):
        with tempfile.TemporaryDirectory() as folder:
            (Path(folder) / "1.aw").write_text("nonsense here\n", encoding="utf-8")
            (Path(folder) / "2.aw").write_text(Solvable.TRIANGLE, encoding="utf-8")
            (Path(folder) / "3.aw").write_bytes(b"\xff\xfe")
            done = run("batch", folder)
        self.assertEqual(done.returncode, 2)
        self.assertIn("1         not understood", done.out)
        self.assertIn("2         solvable", done.out)
        self.assertIn("3         not understood", done.out)
        self.assertIn("1 of 3", done.out)

    def test_a_folder_without_problems(self):
        with tempfile.TemporaryDirectory() as folder:
            self.assert_mistake(run("batch", folder), ".aw")

    def test_a_stream_as_a_table(self):
        line = json.dumps({"id": 7, "problem": Solvable.TRIANGLE})
        done = run("batch", "--table", "-", text=line + "\n")
        self.assertIn("7         solvable", done.out)
        self.assertEqual(run("batch", "--table", "--json", "-", text="").returncode, 2)
