#!/usr/bin/env python3
"""Runs the program as a user would: exit statuses, what is said about mistakes, limits, Ctrl-C, streams.

    python3 tests/cli/check_program.py build/anglewright
"""
import json
import os
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = sorted((ROOT / "frontend" / "examples").glob("*.aw"))
SCHEMA = ROOT / "frontend" / "render" / "answer.schema.json"
PROGRAM = None

SOLVED = "triangle: KLM\nangle KLM = 50\nangle LMK = 60\nfind: angle MKL\n"
SILENCE = 20  # seconds after which the program is called hung


def with_ctrl_c():
    """A program started in the background inherits that Ctrl-C is not meant for it; these tests mean it."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


def run(*arguments, text=None, raw=None, timeout=SILENCE):
    given = raw if raw is not None else None if text is None else text.encode()
    done = subprocess.run([PROGRAM, *map(str, arguments)], input=given, stdin=None if given is not None else subprocess.DEVNULL,
                          capture_output=True, timeout=timeout)
    done.out, done.err = done.stdout.decode("utf-8", "replace"), done.stderr.decode("utf-8", "replace")
    return done


def prove(text, *options, **more):
    return run("prove", *options, "-", text=text, **more)


class TestCase(unittest.TestCase):
    def assert_mistake(self, done, *words):
        """Status 2, nothing on standard output, a message with these words, and no trace of a crash."""
        self.assertEqual(done.returncode, 2, done.err)
        self.assertEqual(done.out, "")
        for word in words:
            self.assertIn(word, done.err)
        self.assertNotIn("terminate", done.err)


class Statuses(TestCase):
    def test_proved_is_0(self):
        done = prove(SOLVED)
        self.assertEqual(done.returncode, 0, done.out + done.err)
        self.assertIn("70", done.out)

    def test_another_verdict_is_1(self):
        done = prove("triangle: KLM\nangle KLM = 50\nfind: angle MKL\n")
        self.assertEqual(done.returncode, 1, done.out + done.err)

    def test_help_of_every_command_ends_with_an_example(self):
        for command in ("prove", "rules", "batch", "completion"):
            done = run(command, "--help")
            self.assertEqual(done.returncode, 0)
            self.assertIn("Example", done.out.split("Options:")[1], command)
            self.assertIn("anglewright " + command, done.out)

    def test_version(self):
        done = run("--version")
        self.assertEqual(done.returncode, 0)
        self.assertRegex(done.out, r"^anglewright \d+\.\d+\.\d+")

    def test_no_command_and_a_misspelt_one(self):
        self.assert_mistake(run(), "name a command")
        self.assert_mistake(run("prov", "x"), "prov", "try: anglewright prove")

    def test_completion_is_a_script_that_bash_reads(self):
        done = run("completion", "bash")
        self.assertEqual(done.returncode, 0)
        self.assertEqual(subprocess.run(["bash", "-n"], input=done.stdout).returncode, 0)
        reply = subprocess.run(["bash", "-c", done.out + "COMP_WORDS=(anglewright prove --lay); COMP_CWORD=2; _anglewright; echo ${COMPREPLY[@]}"],
                               capture_output=True, text=True)
        self.assertEqual(reply.stdout, "--layout\n")


class Mistakes(TestCase):
    def test_what_is_not_a_readable_file(self):
        with tempfile.TemporaryDirectory() as folder:
            self.assert_mistake(run("prove", folder + "/none.aw"), "there is no file")
            self.assert_mistake(run("prove", folder), "is a folder")
            empty = Path(folder, "empty.aw")
            empty.write_text("\n  \n")
            self.assert_mistake(run("prove", empty), "is empty")
            binary = Path(folder, "binary.aw")
            binary.write_bytes(bytes(range(256)) * 20)
            self.assert_mistake(run("prove", binary), "is not a text file")
            large = Path(folder, "large.aw")
            large.write_text("triangle: KLM\n" * 720_000)
            self.assert_mistake(run("prove", large), "too large")
            wide = Path(folder, "wide.aw")
            wide.write_text(SOLVED, encoding="utf-16")
            self.assert_mistake(run("prove", wide), "UTF-16")
            if os.geteuid() != 0:
                large.chmod(0)
                self.assert_mistake(run("prove", large), "may not be read")

    def test_stray_bytes(self):
        done = run("prove", "-", raw=b"triangle: K\xff\xfeM\nfind: angle \xc3\n")
        self.assertEqual(done.returncode, 2, done.err)

    def test_a_missing_goal(self):
        done = prove("triangle: KLM\nangle KLM = 50\n")
        self.assert_mistake(done, "error", "try:")

    def test_all_mistakes_at_once_with_line_and_caret(self):
        done = prove("triangel: KLM\nangle KLM = 50\nangle KLM == = 60\nfind: angle MKL\n")
        self.assertEqual(done.returncode, 2)
        self.assertIn("standard input:1:", done.err)
        self.assertIn("standard input:3:", done.err)
        self.assertIn("^", done.err)

    def test_an_unknown_rule_gets_the_nearest(self):
        self.assert_mistake(prove(SOLVED, "--without", "triangle-angle-som"), "triangle-angle-som", "triangle-angle-sum")
        self.assert_mistake(prove(SOLVED, "--taught", "alternate angels"), "alternate angels", "alternate angles")
        self.assert_mistake(run("rules", "--topic", "paralel"), "parallel")
        self.assert_mistake(run("rules", "vertical-angels"), "vertical-angles")

    def test_options_with_wrong_words(self):
        self.assert_mistake(prove(SOLVED, "--limit", "nan"), "--limit")
        self.assert_mistake(prove(SOLVED, "--limit", "0"), "--limit")
        self.assert_mistake(prove(SOLVED, "--layout", "round"), "two-column")
        self.assert_mistake(prove(SOLVED, "--wording", "fr"), "plain")
        self.assert_mistake(prove(SOLVED, "--rules", "/nowhere/at/all"), "no folder")

    def test_a_broken_rule_file(self):
        with tempfile.TemporaryDirectory() as folder:
            Path(folder, "own").mkdir()
            Path(folder, "own", "broken.rule").write_text("rule broken\n  gibberish\n")
            done = prove(SOLVED, "--rules", folder)
            self.assertEqual(done.returncode, 2)
            self.assertRegex(done.err, r"broken\.rule:2:3: error")
            self.assertEqual(done.out, prove(SOLVED).out)  # all other rules still load
            Path(folder, "own", "broken.rule").unlink()
            Path(folder, "lath.course").write_text(
                'course lath\n  title "laths"\n  says "Laths."\n  source "ours"\n  takes given\n  teaches midsegmant\n')
            self.assert_mistake(run("rules", "--course", "lath", "--rules", folder), "lath.course:6:11: error",
                                "midsegment", "no course")
            Path(folder, "lath.course").write_text(
                'course lath\n  title "laths"\n  says "Laths."\n  source "ours"\n  takes given\n  teaches midsegment\n')
            self.assertIn("midsegment", run("rules", "--course", "lath", "--rules", folder).out)

    def test_contradictory_order(self):
        done = prove("line: K, L, M in this order\nline: L, K, M in this order\ntriangle: KLP\nfind: angle KLP\n")
        self.assertIn(done.returncode, (1, 2), done.err)

    def test_a_reader_that_goes_away(self):
        done = subprocess.run(["bash", "-c", '"$0" rules --json | true; exit ${PIPESTATUS[0]}', PROGRAM], capture_output=True,
                              timeout=SILENCE)
        self.assertIn(done.returncode, (0, 2))
        with open("/dev/full", "wb") as full:
            done = subprocess.run([PROGRAM, "prove", "-"], input=SOLVED.encode(), stdout=full, stderr=subprocess.PIPE, timeout=SILENCE)
        self.assertEqual(done.returncode, 2)
        self.assertIn(b"cannot be written", done.stderr)


class Large(TestCase):
    def test_ten_thousand_points(self):
        lines = [f"line: P{3 * i}, P{3 * i + 1}, P{3 * i + 2} in this order" for i in range(3_334)]
        done = prove("\n".join(lines) + "\nfind: angle P0P1P3\n")
        self.assertIn(done.returncode, (1, 2), done.err[:2000])

    def test_ten_thousand_lines_through_few_points(self):
        names = [f"{a}{b}" for a in "ABCDEFGHIJKLMNOPQRSTUVWXYZ" for b in range(10)]
        lines = [f"line: {names[i % 260]}, {names[(i * 7 + 1) % 260]}, {names[(i * 13 + 2) % 260]} in this order" for i in range(10_000)]
        begin = time.monotonic()
        done = prove("\n".join(lines) + "\nfind: angle A0B0C0\n")
        self.assertIn(done.returncode, (1, 2), done.err[:2000])
        self.assertLess(time.monotonic() - begin, SILENCE)

    def test_ten_thousand_points_on_one_line(self):
        names = ", ".join(f"P{i}" for i in range(10_000))
        done = prove(f"line: {names} in this order\nfind: angle P1P2P3\n")
        self.assertIn(done.returncode, (0, 1, 2), done.err[:2000])

    def test_numbers_of_four_hundred_digits(self):
        small = "0." + "0" * 398 + "1"
        done = prove(f"triangle: KLM\nangle KLM = 50 + {small}\nangle LMK = 60 - {small}\nfind: angle MKL\n", "--json")
        self.assertIn(done.returncode, (0, 2), done.err[:2000])
        if done.returncode == 0:
            self.assertEqual(json.loads(done.out)["value"], "70")
        done = prove(f"triangle: KLM\nangle KLM = {'9' * 400}\nangle LMK = 60\nfind: angle MKL\n")
        self.assertIn(done.returncode, (1, 2), done.err[:2000])

    def test_deep_nesting_and_long_words(self):
        for text in ("find: " + "(" * 20_000 + "\n", "angle " + "K" * 100_000 + " = 3\nfind: x\n", "a" * 500_000, "=" * 5000 + "\n;;;;\n\n"):
            self.assertEqual(prove(text).returncode, 2)


class Limits(TestCase):
    GRID = "".join(f"line: A{i}, B{i}, C{i}, D{i} in this order\n" for i in range(10)) + \
           "".join(f"line: {c}0, {c}1, {c}2, {c}3, {c}4, {c}5, {c}6, {c}7, {c}8, {c}9 in this order\n" for c in "ABCD") + \
           "".join(f"parallel: A0B0, A{i}B{i}\n" for i in range(1, 10)) + \
           "triangle: A0B0A1\nparallel: A0A1, B0B1\nequal lengths: A0B0 = B1C2\nfind: angle A0A1B3\n"

    def test_a_limit_ends_the_work(self):
        begin = time.monotonic()
        done = prove(self.GRID, "--limit", "0.2")
        self.assertIn(done.returncode, (0, 1, 2), done.err[:2000])
        self.assertLess(time.monotonic() - begin, 5)

    def test_ctrl_c_ends_the_work_with_an_answer(self):
        process = subprocess.Popen([PROGRAM, "prove", "--limit", "600", "--json", "-"], preexec_fn=with_ctrl_c, stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE)
        process.stdin.write(self.GRID.encode())
        process.stdin.close()
        time.sleep(0.3)
        process.send_signal(signal.SIGINT)
        out = process.stdout.read()
        process.stderr.read()
        self.assertIn(process.wait(timeout=SILENCE), (0, 1, 2))
        self.assertIn("verdict", json.loads(out))
        process.stdout.close(), process.stderr.close()

    def test_ctrl_c_while_waiting_for_input(self):
        process = subprocess.Popen([PROGRAM, "batch", "-"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, preexec_fn=with_ctrl_c)
        time.sleep(0.3)
        process.send_signal(signal.SIGINT)
        self.assertIn(process.wait(timeout=SILENCE), (1, 2))
        self.assertIn(b"interrupted", process.stderr.read())
        process.stdin.close(), process.stdout.close(), process.stderr.close()


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
        process = subprocess.Popen([PROGRAM, "batch", "-"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
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


OWN_RULE = """rule lath-fact
  title    "lath fact"
  kind     theorem
  says     "Laths of one length stand at equal angles."
  given    triangle: ABC; equal lengths: AB = AC
  then     angle ABC = angle ACB
  plain    "lath fact, {AB} = {AC}"
  why      Seen on the trellis.
  source   "our own"
  example  fires   triangle: PQR; equal lengths: PQ = PR   gives  angle PQR = angle PRQ
  example  silent  triangle: PQR; equal lengths: PQ = QR   gives  angle PQR = angle PRQ
"""


class Rules(TestCase):
    def test_a_rule_of_ones_own_is_proved_when_it_is_cited(self):
        problem = "triangle: KLM\nKL = KM\nangle KLM = 70\nfind: angle KML\n"
        with tempfile.TemporaryDirectory() as folder:
            Path(folder, "lath-fact.rule").write_text(OWN_RULE)
            options = ("--rules", folder, "--taught", "lath fact")
            done = prove(problem, *options)
            self.assertEqual(done.returncode, 0, done.err)
            self.assertNotIn("Assumed", done.out)
            self.assertEqual(json.loads(prove(problem, *options, "--json").out)["proofs"][0]["rules"], ["lath-fact"])
            unfolded = prove(problem, *options, "--unfold")
            self.assertIn("angles opposite equal sides", unfolded.out)
            self.assertNotIn("lath fact, KL = KM", unfolded.out)
            Path(folder, "second.rule").write_text(OWN_RULE)
            done = prove(problem, *options)
            self.assertEqual(done.returncode, 2)
            self.assertIn("there is a rule `lath-fact` already", done.err)

    # The side laid off on the side of a 100° triangle (J. Wilson, University of Georgia): true, and beyond the catalogue
    # without a further line.
    LAID_OFF = ("triangle: KLM\nequal lengths: KL = KM\nangle LKM = 100\nline: K, L, D in this order\n"
                "equal lengths: KD = LM\n")

    def test_a_problem_becomes_a_rule(self):
        with tempfile.TemporaryDirectory() as folder:
            file, rules = Path(folder, "problem.aw"), Path(folder, "own")
            rules.mkdir()

            def save(name, text, *options):
                file.write_text(text)
                return run("rules", "--rules", str(rules), "--save", name, str(file), *options)

            outer = "In triangle KLM, KL = KM\nLM is produced to P\nprove: angle KMP = 180 - angle KLM\n"
            done = save("outer-lath", outer)
            self.assertEqual(done.returncode, 0, done.err)
            self.assertIn("proved from the catalogue", done.out)
            self.assertEqual(run("rules", "--lint", "--rules", str(rules)).returncode, 0)
            before = Path(rules, "outer-lath.rule").read_bytes()
            self.assertEqual(save("outer-lath", outer).returncode, 2)  # a rule of that name is there
            self.assertEqual(Path(rules, "outer-lath.rule").read_bytes(), before)
            question = "In triangle RST, RS = RT\nST is produced to U\nangle RST = 52\nfind: angle RTU\n"
            cited = prove(question, "--rules", str(rules), "--taught", "outer-lath")
            self.assertIn("128", cited.out)
            self.assertNotIn("Assumed", cited.out)
            unfolded = prove(question, "--rules", str(rules), "--taught", "outer-lath", "--unfold")
            self.assertIn("angles opposite equal sides, RS = RT", unfolded.out)

            # False in some figure: never saved, not even as an assumption.
            wrong = "triangle: KLM\nprove: angle KLM = angle KML\n"
            for more in ((), ("--assume",)):
                done = save("wrong-lath", wrong, *more)
                self.assertEqual(done.returncode, 1)
                self.assertIn("it is false", done.err)
            self.assertFalse(Path(rules, "wrong-lath.rule").exists())

            # True and not proved: only as an assumption, and every proof says so before all else.
            claim = self.LAID_OFF + "prove: angle LMD = 10\n"
            self.assertEqual(save("laid-off", claim).returncode, 1)
            self.assertFalse(Path(rules, "laid-off.rule").exists())
            done = save("laid-off", claim, "--assume")
            self.assertEqual(done.returncode, 0, done.err)
            self.assertIn("as an assumption", done.out)
            done = prove(self.LAID_OFF + "find: angle LMD\n", "--rules", str(rules))
            self.assertIn("10", done.out)
            proof = done.out.split("Proof by")[1].split("\n", 2)[2]
            self.assertTrue(proof.strip().startswith("Assumed without proof: laid-off."), done.out)

    def test_what_a_theorem_rests_on(self):
        page = run("rules", "--from", "triangle-angle-sum")
        self.assertEqual(page.returncode, 0, page.err)
        for word in ("alternate", "It rests on", "On trust", "corresponding-angles"):
            self.assertIn(word, page.out)
        graph = run("rules", "--from", "triangle-angle-sum", "--graph", "dot").out
        self.assertIn('"triangle-angle-sum" -> "alternate-interior-angles"', graph)
        self.assertNotIn('"alternate-interior-angles" -> "triangle-angle-sum"', graph)
        self.assertIn("<svg", run("rules", "--from", "triangle-angle-sum", "--graph", "svg").out)
        self.assertEqual(run("rules", "--from", "no-such-rule").returncode, 2)

    def test_rules_are_linted(self):
        rule = """rule own-angles
  title    "our own"
  kind     theorem
  says     "A rule of our own."
  given    triangle: ABC; equal lengths: AB = AC
  then     angle ABC = angle %s
  plain    "our own rule"
  why      To be tried.
  source   "our own"
  example  fires   triangle: KLM; equal lengths: KL = KM   gives  angle KLM = angle KML
  example  silent  triangle: KLM   gives  angle KLM = angle KML
"""
        with tempfile.TemporaryDirectory() as folder:
            def linted(angle):
                (Path(folder) / "own-angles.rule").write_text(rule % angle, encoding="utf-8")
                return run("rules", "--lint", "--rules", folder)
            wrong, right = linted("BAC"), linted("ACB")
        self.assertEqual(wrong.returncode, 2)
        self.assertIn("own-angles.rule:6:12: error: ∠ABC = ∠BAC does not follow", wrong.out)
        self.assertEqual(right.returncode, 1)  # a warning alone
        self.assertIn("says the same as `isosceles-base-angles`", right.out)

    def test_the_catalogue_lists_and_shows_rules(self):
        listed = json.loads(run("rules", "--json").out)
        self.assertGreater(len(listed), 60)
        self.assertEqual(len({rule["id"] for rule in listed}), len(listed))
        text = run("rules").out
        for rule in listed:
            self.assertIn(rule["id"], text)
            self.assertTrue(rule["statement"], rule["id"])
        one = run("rules", "alternate-interior-angles")
        self.assertEqual(one.returncode, 0)
        for word in ("Alternate angles", "Weight", "UK", "Sources", "Where it applies"):
            self.assertIn(word, one.out)
        # Published table: the three schools on alternate angles, with their sources.
        table = run("rules", "--topic", "parallel", "--wording", "all").out
        self.assertRegex(table, r"us +Alternate Interior Angles Theorem +US5")
        self.assertRegex(table, r"uk +alternate angles are equal +UK4")
        self.assertRegex(table, r"sa +alt ∠s; PA ∥ QD +ZA4")
        wide = run("rules", "--topic", "parallel", "--wording", "all", "--format", "markdown").out
        self.assertIn("| Alternate Interior Angles Theorem | alternate angles are equal | alt ∠s; PA ∥ QD |", wide)

    def test_courses(self):
        courses = json.loads(run("rules", "--courses", "--json").out)
        ids = {rule["id"] for rule in json.loads(run("rules", "--json").out)}
        whole = next(course for course in courses if course["id"] == "school-with-circles")
        self.assertEqual(sorted(rule["id"] for rule in whole["rules"]), sorted(ids))
        text = run("rules", "--courses").out
        for course in courses:
            self.assertIn(course["id"], text)
            self.assertEqual(json.loads(run("rules", "--course", course["id"], "--json").out), course)
        # Heath: Euclid proves I.8; US3 has it as a postulate.
        self.assertRegex(run("rules", "--course", "euclid-1").out, r"congruent-sss +taught")
        self.assertRegex(run("rules", "--course", "us-high-school").out, r"congruent-sss +taken")
        one = json.loads(run("rules", "congruent-sss", "--json").out)
        self.assertIn({"course": "us-high-school", "taken": True},
                      [{key: at[key] for key in ("course", "taken")} for at in one["courses"]])
        self.assert_mistake(run("rules", "--course", "euclid-2"), "euclid-2", "euclid-")

    def test_taught_up_to_a_rule(self):
        problem = "triangle: KLM\nangle KLM = 50\nangle LKM = 60\nfind: angle KML\n"
        self.assertEqual(prove(problem, "--taught", "euclid-1 up to triangle-angle-sum").returncode, 0)
        self.assertEqual(prove(problem, "--taught", "euclid-1 up to alternate angles").returncode, 1)
        self.assertEqual(prove("taught: angles; not triangle-angle-sum, exterior-angle-of-triangle\n" + problem).returncode, 1)
        self.assert_mistake(prove("taught: angles up to midsegment\n" + problem), "standard input:1:", "does not teach")

    def test_no_braces_are_left_in_wordings(self):
        self.assertNotRegex(run("rules", "--wording", "all").out, "[{}]")



def ways(text, *options, **more):
    return run("ways", *options, "-", text=text, **more)


class Ways(TestCase):
    PARALLELOGRAM = "RSTU is a parallelogram\nangle URS = 116\nangle SRT = 41\nfind: angle RTS\n"
    ISOSCELES = "KLM is an isosceles triangle\nangle KLM = 50\nfind: angle LKM\n"

    def answer(self, text, *options):
        return json.loads(ways(text, "--json", *options).out)

    def test_every_example_fits_the_schema_and_is_checked(self):
        import jsonschema
        validator = jsonschema.Draft202012Validator(json.loads(SCHEMA.read_text(encoding="utf-8")))
        for example in EXAMPLES:
            with self.subTest(example.name):
                done = run("ways", "--json", example)
                self.assertEqual(done.returncode, 0, done.err)
                answer = json.loads(done.out)
                self.assertEqual([e.message for e in validator.iter_errors(answer)], [])
                for proof in answer["proofs"]:
                    self.assertEqual(proof["checks"], {"replay": True, "z3": True})
                first = json.loads(run("prove", "--json", example).out)["proofs"][0]
                self.assertEqual(answer["proofs"][0]["cost"], first["cost"])
                titles = [proof["title"] for proof in answer["proofs"]]
                self.assertEqual(len(titles), len(set(titles)))

    def test_both_textbook_proofs_of_the_angle_sum_each_once(self):
        example = ROOT / "frontend" / "examples" / "trellis-angle-sum.aw"
        proofs = [p for p in json.loads(run("ways", "--json", example).out)["proofs"] if p["in_full"]]
        rules = [frozenset(p["rules"]) - {"angles-on-a-straight-line", "angle-addition"} for p in proofs]
        self.assertEqual(rules.count(frozenset({"alternate-interior-angles"})), 1)
        self.assertEqual(rules.count(frozenset({"corresponding-angles", "vertical-angles"})), 1)
        self.assertEqual({p["idea"] for p in proofs}, {1})
        self.assertIn("Complete: with these rules and the lines drawn there is no other idea.", run("ways", example).out)

    def test_other_theorems_are_other_ideas_ranked_by_cost(self):
        from fractions import Fraction
        answer = self.answer(self.PARALLELOGRAM, "--most", "5")
        first = {}
        for proof in answer["proofs"]:
            first.setdefault(proof["idea"], proof)
        self.assertEqual(sorted(first), [1, 2, 3, 4, 5])
        costs = [Fraction(first[i]["cost"]) for i in sorted(first)]
        self.assertEqual(costs, sorted(costs))
        extent = answer["ways"][0]
        self.assertGreater(extent["more"], 0)
        self.assertGreaterEqual(Fraction(extent["lines_drawn"]["complete_below"]), costs[-1])
        # A completeness that reaches further finds nothing below.
        more = self.answer(self.PARALLELOGRAM, "--most", "12")
        cheaper = {p["idea"] for p in more["proofs"] if Fraction(p["cost"]) < Fraction(extent["lines_drawn"]["complete_below"])}
        self.assertLessEqual(cheaper, {1, 2, 3, 4, 5})

    def test_with_without_and_at_most(self):
        wanted = "parallelogram-opposite-angles"
        with_rule = self.answer(self.PARALLELOGRAM, "--with", wanted)
        self.assertTrue(with_rule["proofs"])
        for proof in with_rule["proofs"]:
            self.assertIn(wanted, proof["rules"])
        for proof in self.answer(self.PARALLELOGRAM, "--without", wanted)["proofs"]:
            self.assertNotIn(wanted, proof["rules"])
        for proof in self.answer(self.PARALLELOGRAM, "--at-most", "2")["proofs"]:
            self.assertLessEqual(proof["cited"], 2)
        taught = self.answer(self.PARALLELOGRAM, "--taught", "school; not congruence")
        for proof in taught["proofs"]:
            self.assertFalse([rule for rule in proof["rules"] if rule.startswith("congruent-")])
        nothing = ways(self.PARALLELOGRAM, "--with", "tangent-radius")
        self.assertEqual(nothing.returncode, 1)
        self.assertIn("No way was found that is as asked for", nothing.out)

    def test_names_that_are_not_known(self):
        self.assert_mistake(ways(SOLVED, "--with", "paralelogram-opposite-angles"), "parallelogram-opposite-angles")
        self.assert_mistake(ways(SOLVED, "--without", "triangle-angle-sun"), "triangle-angle-sum")
        self.assert_mistake(ways(SOLVED, "--measure", "shortest"), "fewest-steps")
        self.assert_mistake(ways(SOLVED, "--most", "0"), "--most")
        self.assert_mistake(ways(SOLVED, "--at-most", "none"), "--at-most")

    def test_variants_are_shown_when_asked_for(self):
        self.assertNotIn("variant by", ways(self.PARALLELOGRAM, "--most", "2").out)
        self.assertIn("variant by", ways(self.PARALLELOGRAM, "--most", "2", "--variants").out)

    def test_each_case_and_each_goal_has_its_ways(self):
        answer = self.answer(self.ISOSCELES)
        self.assertEqual(answer["verdict"], "depends-on-figure")
        self.assertEqual(len(answer["ways"]), 3)
        self.assertEqual({w["case"] for w in answer["ways"]}, {p["case"] for p in answer["proofs"]})
        two = self.answer("KLMN is a parallelogram\nprove: KL = MN; angle KLM = angle MNK\nprove: angle NKL + angle KLM = 180\n")
        self.assertEqual([w["goal"] for w in two["ways"]], ["KL = MN; angle KLM = angle MNK", "angle NKL + angle KLM = 180"])
        self.assertTrue(all(w["ideas"] > 1 for w in two["ways"]))

    def test_the_same_theorems_at_other_places_do_not_drown_the_rest(self):
        few, many = (self.answer(self.PARALLELOGRAM, "--most", "40", "--alike", n) for n in ("1", "40"))
        cited = lambda answer: [frozenset(p["rules"]) for p in answer["proofs"] if p["in_full"]]
        self.assertGreater(few["ways"][0]["elsewhere"], 0)
        self.assertEqual(many["ways"][0]["elsewhere"], 0)
        self.assertGreaterEqual(len(set(cited(few))), len(set(cited(many))))

    def test_other_verdicts_are_those_of_prove(self):
        for text in ("triangle: KLM\nangle KLM = 100\nangle LMK = 90\nfind: angle LKM\n",
                     "triangle: KLM\nKL = KM\nprove: KL = LM\n",
                     "triangle: KLM\nangle KLM = 50\nfind: angle LKM\n"):
            self.assertEqual(ways(text).out, prove(text).out)
            self.assertEqual(ways(text).returncode, 1)
        self.assertEqual(ways("triangle: KLM\nfrobnicate\n").returncode, 2)

    def test_a_theorem_is_not_its_own_proof(self):
        answer = self.answer("triangle: KLM\nKL = KM\nprove: angle KLM = angle KML\n")
        for proof in answer["proofs"]:
            self.assertEqual(proof["set_aside"], ["isosceles-base-angles"])
            self.assertNotIn("isosceles-base-angles", proof["rules"])

    def test_the_same_bytes_every_time(self):
        self.assertEqual(ways(self.PARALLELOGRAM).out, ways(self.PARALLELOGRAM).out)


if __name__ == "__main__":
    PROGRAM = str(Path(sys.argv[1] if len(sys.argv) > 1 else ROOT / "build" / "anglewright").resolve())
    suite = unittest.defaultTestLoader.loadTestsFromModule(sys.modules[__name__])
    result = unittest.TextTestRunner(stream=sys.stdout, verbosity=1).run(suite)
    bad = len({str(test).split(" (<subtest>")[0].split(" [")[0] for test, _ in result.failures + result.errors})
    print(f"{result.testsRun - bad} passed, {bad} failed")
    sys.exit(1 if bad else 0)
