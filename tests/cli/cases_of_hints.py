"""Hints: a rung at a time for the pupil, the whole ladder for the teacher, and from where the pupil is."""
import json

from program import EXAMPLES, ROOT, TestCase, run

SCHEMA = ROOT / "frontend" / "render" / "hints.schema.json"
RAILS = ROOT / "tests" / "golden" / "hints" / "rails.aw"
TWO = ROOT / "tests" / "golden" / "hints" / "two-questions.aw"


def ladder(*options, file=RAILS, text=None):
    done = run("hints", "--json", *options, "-" if text else file, text=text)
    return done, json.loads(done.out) if done.out else None


class Hints(TestCase):
    def test_every_example_fits_the_schema_and_ends_with_the_answer(self):
        import jsonschema
        schema = json.loads(SCHEMA.read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator.check_schema(schema)
        validator = jsonschema.Draft202012Validator(schema)
        ladders = sorted((ROOT / "tests" / "golden" / "hints").glob("*.aw"))
        for file in [*EXAMPLES, *ladders]:
            for options in ([], ["--worth"], ["--step", "1"]):
                with self.subTest(file.name, options=options):
                    done, answer = ladder(*options, file=file)
                    self.assertEqual([e.message for e in validator.iter_errors(answer)], [])
                    self.assertEqual(done.returncode, 0 if answer["verdict"] == "proved" else 1, done.err)
                    self.assertEqual(bool(answer["rungs"]), answer["verdict"] == "proved")
                    if not options and answer["rungs"]:
                        self.assertEqual([r["kind"] for r in answer["rungs"]].index("answer"), len(answer["rungs"]) - 1)

    def test_the_pupil_sees_one_sentence_and_never_the_answer_before_the_last(self):
        _, answer = ladder()
        texts = [rung["text"] for rung in answer["rungs"]]
        for step, text in enumerate(texts, 1):
            done = run("hints", "--step", step, RAILS)
            self.assertEqual(done.returncode, 0, done.err)
            self.assertEqual(" ".join(done.out.split()), " ".join(text.split()))
            alone = run("hints", "--json", "--step", step, RAILS).out
            self.assertEqual("52" in done.out or "52" in alone, step == len(texts))
        self.assertEqual(run("hints", RAILS).out, run("hints", "--step", 1, RAILS).out)

    def test_the_teacher_sees_the_ladder_with_what_each_rung_is_worth(self):
        done = run("hints", "--all", RAILS)
        self.assertEqual(done.returncode, 0, done.err)
        self.assertIn("Steps left   Ways open", done.out)
        self.assertIn("= 52°", "\n".join(done.out.splitlines()[-2:]))
        self.assertIn("|", run("hints", "--all", "--format", "markdown", RAILS).out)

    def test_a_rung_or_a_way_that_is_not_there_is_a_mistake(self):
        self.assert_mistake(run("hints", "--step", 99, RAILS), "there is no rung 99")
        self.assert_mistake(run("hints", "--way", 99, RAILS), "there is no way 99")
        self.assert_mistake(run("hints", "--step", 0, RAILS))
        self.assert_mistake(run("hints", "--way", 1, "--ways", RAILS))
        self.assert_mistake(run("hints", "no-such-file.aw"))

    def test_ways_have_ladders_of_their_own(self):
        _, answer = ladder("--ways", "--worth")
        self.assertGreaterEqual(len(answer["ladders"]), 2)
        self.assertEqual([one["way"] for one in answer["ladders"]], list(range(1, len(answer["ladders"]) + 1)))
        told = [[r["text"] for r in one["rungs"] if r["kind"] == "step"] for one in answer["ladders"]]
        self.assertEqual(len(set(map(tuple, told))), len(told))
        for one in answer["ladders"]:
            self.assertTrue(all(r["ways_open"] >= 1 for r in one["rungs"]))
        _, second = ladder("--way", "2")
        self.assertEqual([r["text"] for r in second["rungs"]], [r["text"] for r in answer["ladders"][1]["rungs"]])

    def test_the_ladder_starts_at_what_is_missing(self):
        _, whole = ladder()
        _, rest = ladder("--done", "∠VWX = 64° (alternate angles, RS ∥ TU)")
        self.assertEqual([line["status"] for line in rest["lines"]], ["right"])
        self.assertLess(len(rest["rungs"]), len(whole["rungs"]))
        self.assertNotIn("alternate angles", " ".join(r["text"] for r in rest["rungs"]))
        self.assertEqual(rest["rungs"][0]["steps_left"], whole["rungs"][0]["steps_left"] - 1)
        # Behind work: it is the same.
        _, behind = ladder(text=RAILS.read_text(encoding="utf-8") + "work: ∠VWX = 64° (alternate angles, RS ∥ TU)\n")
        self.assertEqual(behind["rungs"], rest["rungs"])

    def test_a_wrong_line_is_met_first_and_its_correction_is_not_told(self):
        _, answer = ladder("--done", "∠VWX = 116° (alternate angles, RS ∥ TU)")
        self.assertEqual(answer["lines"][0]["status"], "false")
        first = answer["rungs"][0]
        self.assertEqual((first["kind"], first["line"]), ("your-line", 1))
        self.assertNotIn("64", first["text"])
        self.assertNotIn("116", first["text"])

    def test_finished_work_needs_no_hint(self):
        work = ["∠VWX = 64° (alternate angles, RS ∥ TU)", "∠VXW = 64° (angles opposite equal sides, VW = VX)",
                "∠WVX = 180° − 64° − 64° = 52° (angle sum of triangle VWX)"]
        done, answer = ladder(*[word for line in work for word in ("--done", line)])
        self.assertEqual(done.returncode, 0, done.err)
        self.assertEqual([line["status"] for line in answer["lines"]], ["right"] * 3)
        self.assertTrue(answer["complete"])
        self.assertEqual(answer["rungs"], [])
        self.assertIn("Everything that is asked for is there.", run("hints", *[w for line in work for w in ("--done", line)], RAILS).out)

    def test_registers_name_the_theorem_in_their_own_words(self):
        words = {"us": "Alternate Interior Angles Theorem", "uk": "alternate angles are equal", "sa": "alt ∠s"}
        for wording, name in words.items():
            _, answer = ladder("--wording", wording)
            self.assertIn(name, " ".join(r["text"] for r in answer["rungs"] if r["kind"] == "fact"))

    def test_each_question_has_its_ladder(self):
        _, answer = ladder(file=TWO)
        self.assertEqual([one["goal"] for one in answer["ladders"]], ["angle KML", "angle LKM"])
        page = run("hints", TWO).out
        self.assertIn("For angle KML", page)
        self.assertIn("For angle LKM", page)

    def test_no_ladder_where_nothing_is_proved(self):
        done = run("hints", "-", text="In triangle KLM, angle KLM = 70\nfind: angle LKM\n")
        self.assertEqual(done.returncode, 1, done.err)
        self.assertIn("do not settle", done.out)
        done, answer = ladder(text="In triangle KLM, KL = KM\nprove: angle LKM = angle KLM\n")
        self.assertEqual((done.returncode, answer["rungs"]), (1, []))
        self.assert_mistake(run("hints", "-", text="In triangle KLM, angle KLZ = 70\nfind: angle LKQ\n"))

    def test_what_is_taught_is_heeded(self):
        _, answer = ladder("--without", "alternate-interior-angles")
        self.assertNotIn("alternate-interior-angles", {r.get("rule") for r in answer["rungs"]})
