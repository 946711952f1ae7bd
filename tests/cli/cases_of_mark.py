"""A pupil's work marked: the page, the two copies, the JSON and its schema, a class, and bulk."""
import json
import tempfile
from pathlib import Path

from program import ROOT, TestCase, run

MARK_SCHEMA = ROOT / "frontend" / "render" / "mark.schema.json"
NOTE = "A suggestion: the teacher decides."
LATHS = ("KL ∥ PQ\nL and P are on opposite sides of KQ.\nKL = KQ\nangle PQK = 52\nfind: angle KLQ\n"
         "taught: alternate angles, base angles of an isosceles triangle, triangle-angle-sum\n")
RIGHT = "∠LKQ = 52° (alternate angles, KL ∥ PQ)\n∠KLQ = ∠KQL (base angles, KL = KQ)\n∠KLQ = 64° (angle sum of triangle KLQ)\n"
WRONG = "∠LKQ = 53° (alternate angles, KL ∥ PQ)\n∠KLQ = 64°\n"


def mark(problem, work=None, *options):
    if work is None:
        return run("mark", *options, "-", text=problem)
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "work.txt"
        file.write_text(work, encoding="utf-8")
        return run("mark", *options, "--work", file, "-", text=problem)


def validator(part=None):
    import jsonschema
    schema = json.loads(MARK_SCHEMA.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema if part is None else {"$ref": f"#/$defs/{part}", "$defs": schema["$defs"]})


class Mark(TestCase):
    def test_right_work_is_full_marks_in_every_scheme(self):
        for scheme in ("plain", "sa", "uk", "us", "friendly", "strict"):
            with self.subTest(scheme):
                done = mark(LATHS, RIGHT, "--json", "--scheme", scheme)
                self.assertEqual(done.returncode, 0, done.err)
                answer = json.loads(done.out)
                self.assertEqual([line["status"] for line in answer["lines"]], ["right"] * 3)
                self.assertEqual(answer["awarded"], answer["possible"])
                self.assertEqual(answer["scheme"]["id"], scheme)

    def test_the_scheme_of_the_laths(self):
        rows = json.loads(mark(LATHS, RIGHT, "--json").out)["scheme"]["rows"]
        self.assertEqual([row["codes"] for row in rows], [["S/R"], ["S/R"], ["S"]])
        self.assertEqual((rows[0]["statement"], rows[0]["reason"]), ("∠LKQ = 52°", "alternate angles, KL ∥ PQ"))
        self.assertIn("KL = KQ", rows[1]["reason"])
        self.assertEqual(rows[2]["statement"], "∠KLQ = 64°")

    def test_what_lines_and_missing_steps_could_earn_is_the_total(self):
        for work in (RIGHT, WRONG, "", "∠KLQ = 64°\n", "∠KLQ = 64°\n" * 40, "nothing of this\nis mathematics\n", "KL = KQ (given)\n"):
            for scheme in ("plain", "uk", "strict"):
                answer = json.loads(mark(LATHS, work, "--json", "--scheme", scheme).out)
                lines = answer["lines"]
                self.assertEqual(sum(one["possible"] for one in lines + answer["missing"]), answer["possible"])
                self.assertEqual(sum(one["awarded"] for one in lines), answer["awarded"])
                self.assertEqual(answer["possible"], answer["scheme"]["total"])

    def test_the_register_chooses_the_scheme(self):
        for register in ("plain", "sa", "uk", "us"):
            self.assertEqual(json.loads(mark(LATHS, RIGHT, "--json", "--wording", register).out)["scheme"]["id"], register)

    def test_the_total_of_the_question(self):
        asked = LATHS.replace("find: angle KLQ", "find: angle KLQ [4]")
        self.assertEqual(json.loads(mark(asked, RIGHT, "--json").out)["possible"], 4)
        unfit = json.loads(mark(asked.replace("[4]", "[30]"), RIGHT, "--json").out)
        self.assertIn("gives 30 marks", unfit["scheme"]["note"])

    def test_bad_work_is_marked_and_is_no_mistake(self):
        for work in (WRONG, "", "∠KLZ = 4 (\n", "\x01\n", "q" * 5000 + "\n"):
            done = mark(LATHS, work)
            self.assertEqual(done.returncode, 0, done.err)
            self.assertIn(NOTE, done.out)
        self.assertIn("no work to mark", mark(LATHS, "").out)

    def test_every_line_is_given_back(self):
        lines = [f"∠LKQ = {i}° (alternate angles)" for i in range(1, 90)] + ["no words that we know"] * 10
        answer = json.loads(mark(LATHS, "\n".join(lines) + "\n", "--json").out)
        self.assertEqual([line["text"] for line in answer["lines"]], lines)
        self.assertEqual([line["line"] for line in answer["lines"]], list(range(1, 100)))

    def test_statuses_of_the_problem(self):
        self.assertEqual(mark("triangle: KLM\nangle KLM = 50\nfind: angle MKL\n", "∠MKL = 60°\n").returncode, 1)
        done = mark("triangel KLM\nfind: angle MKL\n", "∠MKL = 60°\n")
        self.assert_mistake(done, "triangel")

    def test_the_pupils_copy_gives_nothing_away(self):
        for work in ("∠KLQ = 64°\n", WRONG, "∠LKQ = 50°\n", ""):
            for options in (["--copy", "pupil"], ["--copy", "pupil", "--json"], ["--for", "pupil", "--format", "markdown"]):
                out = mark(LATHS, work, *options).out.replace(json.dumps(work.strip(), ensure_ascii=False)[1:-1], "")
                for secret in ("angle sum of", "angles opposite equal sides", "would do", "bridge"):
                    self.assertNotIn(secret, out)
                if "64" not in work:
                    self.assertNotIn("64", out)
                self.assertIn(NOTE, out)
        teacher = mark(LATHS, "∠KLQ = 64°\n").out
        self.assertIn("angle sum of", teacher)
        self.assert_mistake(mark(LATHS, WRONG, "--copy", "pupil", "--show-scheme"), "teacher's copy")

    def test_pages_fit_and_say_the_status_in_words(self):
        done = mark(LATHS, WRONG + "∠KLQ = 64° " + "and so on " * 20 + "\n", "--show-scheme")
        for line in done.out.splitlines():
            self.assertLessEqual(len(line), 100)
            self.assertEqual(line, line.rstrip())
        self.assertIn("Not true", done.out)
        self.assertIn("common practice", done.out)
        self.assertNotIn("\x1b", done.out)

    def test_a_scheme_of_ones_own(self):
        with tempfile.TemporaryDirectory() as folder:
            own = Path(folder) / "own.scheme"
            text = (ROOT / "rules" / "schemes" / "plain.scheme").read_text(encoding="utf-8").replace("scheme plain", "scheme own")
            own.write_text(text.replace("S/R 1", "SR 2"), encoding="utf-8")
            answer = json.loads(mark(LATHS, RIGHT, "--json", "--scheme", own).out)
            self.assertEqual((answer["scheme"]["id"], answer["possible"]), ("own", 5))
            own.write_text(text.replace("largest-gap        1", "largest-gap        wide"), encoding="utf-8")
            self.assert_mistake(mark(LATHS, RIGHT, "--scheme", own), "own.scheme:", "a number from 0 to 9", "^")
            self.assert_mistake(mark(LATHS, RIGHT, "--scheme", Path(folder) / "none.scheme"), "there is no file")
        self.assert_mistake(mark(LATHS, RIGHT, "--scheme", "plane"), "plain")

    def test_both_from_standard_input(self):
        self.assert_mistake(run("mark", "-", "--work", "-", text=LATHS), "cannot both")

    def test_everything_fits_the_schema(self):
        check = validator()
        problems = [LATHS, "triangle: KLM\nangle KLM = 50\nfind: angle MKL\n", "nonsense\n", LATHS + "work:\n" + WRONG]
        for problem in problems:
            for work in (None, RIGHT, WRONG, "∠KLQ = 64°\n~~∠KLQ = 9~~\nsome words\n∠KLQ = ∠KQL (Z angles)\n∠LKQ = (104 ÷ 2) = 53\n"):
                for options in ([], ["--copy", "pupil"], ["--scheme", "uk", "--wording", "sa"]):
                    out = mark(problem, work, "--json", *options).out
                    self.assertEqual([e.message for e in check.iter_errors(json.loads(out))], [], out)


class Class(TestCase):
    def folder(self, place, works):
        for name, work in works.items():
            (Path(place) / name).write_text(work, encoding="utf-8")
        problem = Path(place) / "problem.aw"
        problem.write_text(LATHS, encoding="utf-8")
        return problem

    WORKS = {"10.txt": RIGHT, "2.txt": WRONG, "3.txt": "", "4.txt": RIGHT.splitlines()[0] + "\n", ".hidden": RIGHT, "old~": RIGHT}

    def test_a_tally_by_step_and_a_table_in_order(self):
        with tempfile.TemporaryDirectory() as place:
            problem = self.folder(place, self.WORKS)
            done = run("mark", problem, "--class", place, "--json")
            self.assertEqual(done.returncode, 0, done.err)
            tally = json.loads(done.out)
            self.assertEqual([e.message for e in validator("class").iter_errors(tally)], [])
            self.assertEqual([pupil["name"] for pupil in tally["pupils"]], ["2", "3", "4", "10"])
            self.assertEqual([pupil["complete"] for pupil in tally["pupils"]], [False, False, False, True])
            first = tally["steps"][0]
            self.assertEqual((first["statement"], first["reached"], first["reasoned"]), ("∠LKQ = 52°", 2, 2))
            for pupil, work in zip(tally["pupils"], (WRONG, "", RIGHT.splitlines()[0] + "\n", RIGHT)):
                self.assertEqual(pupil["awarded"], json.loads(mark(LATHS, work, "--json").out)["awarded"])
            page = run("mark", problem, "--class", place).out
            self.assertIn("2 of 4", page)
            self.assertIn(NOTE, page)
            outputs = {run("mark", problem, "--class", place, "--threads", n).out for n in (1, 2, 1, 2)}
            self.assertEqual(len(outputs), 1)

    def test_what_cannot_be_read(self):
        with tempfile.TemporaryDirectory() as place:
            problem = self.folder(place, {"1.txt": RIGHT})
            (Path(place) / "2.txt").write_bytes(b"\xff\xfea\x00")
            done = run("mark", problem, "--class", place)
            self.assertEqual(done.returncode, 2)
            self.assertIn("UTF-16", done.out)
            self.assertIn("3 of 3", done.out)
            self.assert_mistake(run("mark", problem, "--class", Path(place) / "none"), "there is no folder")
        with tempfile.TemporaryDirectory() as place:
            self.assert_mistake(run("mark", self.folder(place, {}), "--class", place), "there is no work")


class Bulk(TestCase):
    def test_a_line_of_marks_for_each_piece_of_work(self):
        pieces = [{"id": i, "problem": LATHS, "work": work} for i, work in enumerate((RIGHT, WRONG, "", "∠KLQ = 64°\n") * 3)]
        pieces.append({"id": "inside", "problem": LATHS + "work:\n" + RIGHT})
        done = run("batch", "--mark", "-", text="".join(json.dumps(p) + "\n" for p in pieces))
        self.assertEqual(done.returncode, 0, done.err)
        answers = [json.loads(line) for line in done.out.splitlines()]
        self.assertEqual([a["id"] for a in answers], [p["id"] for p in pieces])
        check = validator()
        for answer, piece in zip(answers, pieces):
            self.assertEqual([e.message for e in check.iter_errors(answer)], [])
            alone = json.loads(mark(piece["problem"], piece.get("work"), "--json").out)
            self.assertEqual({k: v for k, v in answer.items() if k != "id"}, alone)

    def test_bad_lines_are_answered(self):
        lines = ["nonsense", '{"id": 1, "problem": "x", "work": 7}', json.dumps({"id": 2, "problem": LATHS, "work": RIGHT})]
        done = run("batch", "--mark", "-", text="\n".join(lines) + "\n")
        self.assertEqual(done.returncode, 2)
        answers = [json.loads(line) for line in done.out.splitlines()]
        self.assertTrue(answers[0]["diagnostics"] and answers[1]["diagnostics"])
        self.assertEqual(answers[2]["awarded"], answers[2]["possible"])
        for answer in answers:
            self.assertEqual([e.message for e in validator().iter_errors(answer)], [])
