"""Verdicts as exit statuses; mistakes in the input; large input; limits and Ctrl-C."""
import json
import os
import signal
import subprocess
import tempfile
import time
from pathlib import Path

import program
from program import SOLVED, SILENCE, TestCase, prove, run, with_ctrl_c


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
        reply = subprocess.run(["bash"], input=done.out + "COMP_WORDS=(anglewright prove --lay); COMP_CWORD=2; _anglewright; echo ${COMPREPLY[@]}",
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
        done = subprocess.run(["bash", "-c", '"$0" rules --json | true; exit ${PIPESTATUS[0]}', program.PROGRAM], capture_output=True,
                              timeout=SILENCE)
        self.assertIn(done.returncode, (0, 2))
        with open("/dev/full", "wb") as full:
            done = subprocess.run([program.PROGRAM, "prove", "-"], input=SOLVED.encode(), stdout=full, stderr=subprocess.PIPE, timeout=SILENCE)
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
        process = subprocess.Popen([program.PROGRAM, "prove", "--limit", "600", "--json", "-"], preexec_fn=with_ctrl_c, stdin=subprocess.PIPE, stdout=subprocess.PIPE,
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
        process = subprocess.Popen([program.PROGRAM, "batch", "-"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, preexec_fn=with_ctrl_c)
        time.sleep(0.3)
        process.send_signal(signal.SIGINT)
        self.assertIn(process.wait(timeout=SILENCE), (1, 2))
        self.assertIn(b"interrupted", process.stderr.read())
        process.stdin.close(), process.stdout.close(), process.stderr.close()
