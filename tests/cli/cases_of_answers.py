"""Many problems through a pipe, and the machine-readable answer."""
import json
import subprocess

import program
from program import EXAMPLES, ROOT, SCHEMA, SOLVED, SILENCE, TestCase, prove, run


class Batch(TestCase):
    def lines(self, count):
        return [{"id": f"p{i}", "problem": f"triangle: KLM\nangle KLM = {40 + i}\nangle LMK = {30 + i}\nfind: angle MKL\n"} for i in range(count)]

    def test_answers_come_in_order_with_their_ids(self):
        problems = self.lines(25)
        done = run("batch", "-", text="".join(json.dumps(p) + "\n" for p in problems))
        self.assertEqual(done.returncode, 0, done.err)
        answers = [json.loads(line) for line in done.out.splitlines()]
        self.assertEqual([a["id"] for a in answers], [p["id"] for p in problems])
        self.assertEqual([a["value"] for a in answers], [str(110 - 2 * i) for i in range(25)])

    def test_a_bad_line_is_answered_and_the_others_go_on(self):
        good = json.dumps(self.lines(1)[0])
        bad = ["nonsense", "[]", '{"id": 7}', '{"problem": "x"}', '{"id": "b", "problem": "triangel KLM"}', '{"id": [], "problem": ""}',
               '{"id": "long", "problem": "' + "k" * 1_100_000 + '"}']
        done = run("batch", "-", text="\n".join([good, *bad, "", good]))  # and no line end at the end
        self.assertEqual(done.returncode, 2, done.err)
        answers = [json.loads(line) for line in done.out.splitlines()]
        self.assertEqual(len(answers), len(bad) + 2)
        self.assertEqual(answers[0], answers[-1])
        self.assertEqual(answers[0]["verdict"], "proved")
        for answer in answers[1:-1]:
            self.assertTrue(answer["diagnostics"], answer)
        self.assertEqual(answers[3]["id"], 7)
        self.assertEqual(answers[5]["id"], "b")

    def test_the_first_answer_comes_before_the_second_problem(self):
        process = subprocess.Popen([program.PROGRAM, "batch", "-"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        for problem in self.lines(3):
            process.stdin.write(json.dumps(problem) + "\n")
            process.stdin.flush()
            self.assertEqual(json.loads(process.stdout.readline())["id"], problem["id"])
        process.stdin.close()
        self.assertEqual(process.wait(timeout=SILENCE), 0)
        process.stdout.close()

    def test_the_same_bytes_whatever_the_threads_and_every_time(self):
        problems = [{"id": path.stem, "problem": path.read_text(encoding="utf-8")} for path in EXAMPLES] + self.lines(10)
        text = "".join(json.dumps(p) + "\n" for p in problems)
        outputs = {run("batch", "--threads", n, "-", text=text, timeout=120).stdout for n in (1, 2, 1, 2)}
        self.assertEqual(len(outputs), 1)


class Answers(TestCase):
    def test_every_example_is_proved_and_fits_the_schema(self):
        import jsonschema
        schema = json.loads(SCHEMA.read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator.check_schema(schema)
        validator = jsonschema.Draft202012Validator(schema)
        self.assertGreater(len(EXAMPLES), 8)
        for path in EXAMPLES:
            with self.subTest(path.name):
                done = run("prove", "--json", "--times", path)
                self.assertEqual(done.returncode, 0, done.err + done.out[:400])
                validator.validate(json.loads(done.out))
        for text in ("triangle: KLM\nfind: angle KLM\n", "triangle: KLM\n", "gibberish\nfind: angle ABC\n"):
            validator.validate(json.loads(prove(text, "--json").out))
        for line in run("batch", "-", text='{"id": 1, "problem": ""}\nnonsense\n').out.splitlines():
            validator.validate(json.loads(line))

    def test_times_only_on_request(self):
        self.assertNotIn("time_ms", json.loads(prove(SOLVED, "--json").out))
        self.assertIn("time_ms", json.loads(prove(SOLVED, "--json", "--times").out))

    def test_what_a_class_was_taught_decides_the_way(self):
        folder = ROOT / "frontend" / "examples"
        def rules(name, *options):
            return json.loads(run("prove", "--json", *options, folder / name).out)["proofs"][0]["rules"]
        self.assertIn("alternate-interior-angles", rules("trellis-angle-sum-alternate.aw"))
        other = rules("trellis-angle-sum-corresponding.aw")
        self.assertIn("corresponding-angles", other)
        self.assertIn("vertical-angles", other)
        self.assertNotIn("alternate-interior-angles", other)
        self.assertEqual(rules("trellis-angle-sum.aw", "--taught", "corresponding angles, vertical angles, angles on a straight line"), other)

    def test_layouts_formats_and_readers(self):
        path = ROOT / "frontend" / "examples" / "trellis-laths.aw"
        self.assertIn("because", run("prove", "--layout", "paragraph", path).out)
        self.assertIn("| Claim | Reason |", run("prove", "--format", "markdown", path).out)
        self.assertNotIn("Seen in the figure", run("prove", "--for", "pupil", path).out)
        for line in run("prove", path).out.splitlines():
            self.assertLessEqual(len(line), 100)
            self.assertEqual(line, line.rstrip())

    def test_a_rule_left_out_is_not_cited(self):
        done = prove(SOLVED, "--json", "--without", "triangle-angle-sum")
        for proof in json.loads(done.out)["proofs"]:
            self.assertNotIn("triangle-angle-sum", proof["rules"])

    def test_what_rests_on_a_rule_left_out_is_left_out_too(self):
        # Euclid I.32: the exterior angle and the angle sum stand and fall together (Heath); ours is proved from the sum.
        outer = "triangle: KLM\nline: L, M, P in this order\nangle LKM = 50\nangle KLM = 60\nfind: angle KMP\n"
        alone = json.loads(prove(outer, "--json", "--without-only", "triangle-angle-sum").out)
        self.assertEqual(alone["value"], "110")
        rests = json.loads(run("rules", "--from", "right-triangle-acute-angles", "--json").out)
        self.assertIn("triangle-angle-sum", [one["id"] for one in rests["rests_on"]])
        right = "triangle: KLM\nangle LKM = 90\nangle KLM = 60\nfind: angle KML\n"
        for option, value in (("--without", None), ("--without-only", "30")):
            answer = json.loads(prove(right, "--json", option, "triangle-angle-sum", "--without", "exterior-angle-of-triangle").out)
            self.assertEqual(answer.get("value"), value)

    def test_a_theorem_is_not_its_own_proof(self):
        laths = "triangle: KLM\nKL = KM\n"
        stated = prove(laths + "prove: angle KLM = angle KML\n")
        self.assertEqual(stated.returncode, 0, stated.err)
        self.assertIn("Not used, since the claim says no more than it: base angles of an isosceles triangle", stated.out)
        self.assertIn("(SAS)", stated.out)
        used = prove(laths + "angle KLM = 70\nfind: angle KML\n")  # here it is what the class should use
        self.assertNotIn("Not used", used.out)
        self.assertIn("angles opposite equal sides", used.out)
