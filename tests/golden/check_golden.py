#!/usr/bin/env python3
"""Compares pages with the approved ones beside this file, byte by byte: of the examples in all three layouts and with their
ways, the reports on the worksheet, pupils' work marked, the ladders of the problems in hints/, and the proofs of the figures in figures/ as they stand on the board. Each was read by one of us before it was approved.

    python3 tests/golden/check_golden.py [--update] build/anglewright

With --update the pages are approved as they are now: look at the difference before you commit it.
"""
import difflib
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
BOARD = {"txt": ["prove"]}
REPORT = {"txt": ["solvable"]}
MARKED = {"txt": ["mark"], "pupil.txt": ["mark", "--copy", "pupil"]}
LADDER = {"txt": ["hints", "--all"]}
REGISTERS = {f"{wording}.txt": ["hints", "--all", "--wording", wording] for wording in ("us", "uk", "sa")}
PAGES = {**BOARD, "paragraph.txt": ["prove", "--layout", "paragraph"], "md": ["prove", "--format", "markdown"],
         "ways.txt": ["ways"], "ways.md": ["ways", "--variants", "--format", "markdown"]}


def problems():
    """Each problem with its pages, and where they are kept."""
    for example in sorted((ROOT / "frontend" / "examples").glob("*.aw")):
        yield example, PAGES, HERE
    for problem in sorted((ROOT / "frontend" / "examples" / "worksheet").glob("*.aw")):
        yield problem, REPORT, HERE / "worksheet"
    for work in sorted((HERE / "mark").glob("*.aw")):
        scheme = work.stem.rsplit("-", 1)[1]  # also the register
        yield work, {page: [*options, "--wording", scheme] for page, options in MARKED.items()}, HERE / "mark"
    for figure in sorted((HERE / "figures").glob("*.aw")):
        yield figure, BOARD, HERE / "figures"
    for problem in sorted((HERE / "hints").glob("*.aw")):
        yield problem, LADDER, HERE / "hints"
    for problem in sorted((HERE / "hints" / "registers").glob("*.aw")):
        yield problem, REGISTERS, HERE / "hints" / "registers"


def main():
    arguments = [a for a in sys.argv[1:] if a != "--update"]
    update = len(arguments) < len(sys.argv) - 1
    program = arguments[0] if arguments else "build/anglewright"
    passed = failed = 0
    for example, pages, folder in problems():
        for ending, options in pages.items():
            page = folder / f"{example.stem}.{ending}"
            # A page must not depend on how fast the machine is: far more time than needed.
            done = subprocess.run([program, *options, "--limit", "60", str(example)], capture_output=True, text=True)
            if update:
                page.write_text(done.stdout, encoding="utf-8")
            approved = page.read_text(encoding="utf-8") if page.exists() else ""
            if done.stdout == approved:
                passed += 1
                continue
            failed += 1
            print(f"{page.name} differs:")
            print("\n".join(difflib.unified_diff(approved.splitlines(), done.stdout.splitlines(), "approved", "now", lineterm="")))
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
