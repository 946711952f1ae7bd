#!/usr/bin/env python3
"""Feeds every piece of pupils' work to `mark --json` and compares status and marks line by line.

    python3 tests/marking/check_pieces.py [--show ID] build/anglewright

A line agrees when its status is one of those expected and the marks for statement (S) and reason (R) are as expected,
where the convention says. README.md says where expectations come from. Fails below 95 lines in 100, or when a false line is
called right; every piece counts. Known disagreements are listed with reasons in known_disagreements.md.
"""
import argparse
import sys
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from pieces_data import REGISTERS, complaints, pieces, statuses  # noqa: E402
from program import mark_all  # noqa: E402

LEAST_AGREEMENT = 0.95
# A line with one of these statuses stands; none of them may be given to a line that is false.
STANDS = {"right", "right-no-reason", "wrong-reason", "reason-not-accepted", "given", "not-needed", "not-taught"}
FALSE = {"false", "arithmetic-slip"}


def problem_with_work(piece):
    return "\n".join([*piece["text"], "work:", *(line["text"] for line in piece["lines"])]) + "\n"


def marked(program, work):
    """What the program says of every piece, each in its register."""
    answers = {}
    for register in REGISTERS:
        chosen = [piece for piece in work if piece["register"] == register]
        answers |= zip((p["id"] for p in chosen), mark_all(program, map(problem_with_work, chosen), register))
    return [answers[piece["id"]] for piece in work]


def compare(expected, line):
    """What is not as expected, in words; empty: nothing."""
    if line is None:
        return ["the line is missing"]
    wrong = []
    if line["status"] not in statuses(expected):
        wrong.append(f"{line['status']}, expected {' or '.join(statuses(expected))}")
    for letter, given in (("S", line["stated"]), ("R", line["stated"] and line["reasoned"])):
        if expected[letter] is not None and given != expected[letter]:
            wrong.append(f"{letter} {'given' if given else 'not given'}")
    if line["text"].strip() != expected["text"].strip():
        wrong.append(f"its text is given back as {line['text']!r}")
    return wrong


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--show", metavar="ID", help="print a piece, ready for mark -, and what is expected")
    parser.add_argument("program", nargs="?", default="build/anglewright")
    arguments = parser.parse_args()
    work = list(pieces())
    if arguments.show:
        for piece in (p for p in work if p["id"] == arguments.show):
            print(f"# {piece['convention']}\n{problem_with_work(piece)}", end="")
            for line in piece["lines"]:
                print(f"# {statuses(line)} S {line['S']} R {line['R']}: {line['text']}")
        return 0

    badly_formed, _ = complaints()
    for complaint in badly_formed:
        print("The expectation itself:", complaint)
    answers = marked(arguments.program, work)

    agreed = total = false_called_right = 0
    by_file, pairs = Counter(), Counter()
    for piece, answer in zip(work, answers):
        lines = {line["line"]: line for line in answer.get("lines", [])}
        if len(lines) != len(piece["lines"]):
            print(f"{piece['id']}: {len(lines)} lines marked of {len(piece['lines'])} {answer.get('trouble', '')}")
        # A piece is one voice: in a long one each kind of line counts once for every way it came out.
        said = Counter()
        for number, expected in enumerate(piece["lines"], 1):
            line = lines.get(number)
            wrong = compare(expected, line)
            key = (expected["text"], tuple(wrong))
            said[key] += 1
            if line is not None and line["status"] in STANDS and set(statuses(expected)) <= FALSE:
                false_called_right += 1
                wrong.append("A FALSE LINE IS CALLED RIGHT")
            if said[key] > 3:
                continue
            total += 1
            by_file[piece["file"], not wrong] += 1
            if not wrong:
                agreed += 1
                continue
            pairs[statuses(expected)[0], line["status"] if line else "missing"] += 1
            print(f"{piece['id']} ({piece['register']}), line {number}: {expected['text']}")
            print(f"    {'; '.join(wrong)}" + (f"  [{line.get('remark', '')}]" if line else ""))

    print("\nExpected → given, most often:", ", ".join(f"{a} → {b} ×{n}" for (a, b), n in pairs.most_common(12)) or "none")
    for file in sorted({f for f, _ in by_file}):
        print(f"  {file:16}{by_file[file, True]:5} of {by_file[file, True] + by_file[file, False]}")
    share = agreed / total
    print(f"{len(work)} pieces, {agreed} of {total} lines agreed: {100 * share:.1f} in 100; "
          f"{false_called_right} false lines called right")
    failed = len(badly_formed) + false_called_right + (share < LEAST_AGREEMENT)
    print(f"{agreed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
