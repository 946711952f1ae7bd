"""The program under test, and how the cases call it. `check_program.py` says which program it is."""
import signal
import subprocess
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
