#!/usr/bin/env python3
"""Runs the program as a user would: exit statuses, what is said about mistakes, limits, Ctrl-C, streams.

    python3 tests/cli/check_program.py build/anglewright
"""
import sys
import unittest
from pathlib import Path

import program

CASES = ["cases_of_prove", "cases_of_answers", "cases_of_rules", "cases_of_ways", "cases_of_solvable", "cases_of_draw", "cases_of_hints", "cases_of_mark"]

if __name__ == "__main__":
    program.PROGRAM = str(Path(sys.argv[1] if len(sys.argv) > 1 else program.ROOT / "build" / "anglewright").resolve())
    suite = unittest.defaultTestLoader.loadTestsFromNames(CASES)
    result = unittest.TextTestRunner(stream=sys.stdout, verbosity=1).run(suite)
    bad = len({str(test).split(" (<subtest>")[0].split(" [")[0] for test, _ in result.failures + result.errors})
    print(f"{result.testsRun - bad} passed, {bad} failed")
    sys.exit(1 if bad else 0)
