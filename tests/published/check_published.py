#!/usr/bin/env python3
"""Feeds every published item to the program as text and compares the answers.

    python3 tests/published/check_published.py [--update] [--show ID] build/anglewright

Prints a table by kind and every item that is not answered rightly, by name. README.md says what makes it fail. With
--update the list of items that must hold is written anew; with --show the text of an item is printed, ready for
"anglewright prove -".
"""
import argparse
import json
import subprocess
import sys
from collections import Counter
from fractions import Fraction
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
from measured import Figure  # noqa: E402

EXPECTED = HERE / "expected_to_hold.txt"

PLAIN = "classroom, without circle"
CIRCLE = "classroom, with circle"
THEOREM = "theorem, without circle and added line"
KINDS = [PLAIN, CIRCLE, THEOREM, "Euclid, Books I and III", "theorem, others", "olympiad", "adventitious angle", "false claim", "undetermined",
         "contradictory"]

# What may come of an item. `right` counts as passed, `not reached` as honest, the others make the check fail.
RIGHT, HONEST, WRONG = "right", "not reached", "wrong"


def has_circle(item):
    text = " ".join(item["facts"]) + " " + item["ask"]
    return any(word in text for word in ("circle", "concyclic", "tangent", "diameter"))


def kind_of(item, file):
    if item["answer"] is False:
        return "false claim"
    if item["answer"] in ("undetermined", "contradictory"):
        return item["answer"]
    if file == "euclid":
        return "Euclid, Books I and III"
    if file == "classroom":
        return CIRCLE if has_circle(item) else PLAIN
    if item["kind"] == "theorem":
        return THEOREM if not has_circle(item) and item["construction"] is None else "theorem, others"
    return {"olympiad": "olympiad", "adventitious": "adventitious angle"}[item["kind"]]


def problem_text(item):
    lines = list(item["facts"])
    if item.get("add"):  # the published auxiliary line
        lines.append("add: " + item["add"])
    if item.get("without"):
        lines.append("taught: not " + ", ".join(item["without"]))
    lines.append(("prove: " if isinstance(item["answer"], bool) else "find: ") + item["ask"])
    return "\n".join(lines) + "\n"


def same_value(text, expected):
    try:
        return abs(Fraction(text) - Fraction(expected)) <= Fraction(1, 10**9)
    except (ValueError, ZeroDivisionError):
        return False


def evidence_holds(item, answer):
    """Do the figures behind "false", "undetermined" and "depends-on-figure" meet the givens, measured anew, and show it?"""
    if answer["verdict"] not in ("false", "undetermined", "depends-on-figure"):
        return True
    figures = [Figure(figure["points"]) for figure in answer["figures"]]
    if not figures or any(figure.meets(item["facts"]) > 1e-8 for figure in figures):
        return False
    if answer["verdict"] == "false":
        return not any(figure.holds(item["ask"], item["facts"]) for figure in figures)
    values = [figure.value(item["ask"], item["facts"]) for figure in figures]
    return max(values) - min(values) > 1e-2


def judge(item, answer):
    """What came of the item, and a word about it."""
    verdict, expected = answer["verdict"], item["answer"]
    mistakes = [d["message"] for d in answer["diagnostics"] if d["severity"] == "error"]
    if mistakes:
        return HONEST, "not understood: " + mistakes[0]
    if answer["checks_disagree"]:
        return WRONG, "the checks disagree"
    if verdict == "proved" and not all(p["checks"]["replay"] and p["checks"]["z3"] for p in answer["proofs"]):
        return WRONG, "called proved without both checks"
    said = verdict + (" " + answer["value"] if "value" in answer else "")
    if expected in (False, "undetermined", "contradictory") and "evidence" in answer:
        return WRONG, f"{said}: certified by {answer['evidence']}"
    if expected in (False, "undetermined") and not evidence_holds(item, answer):
        return WRONG, f"{said}, but its figures do not show it"
    if expected is False:
        return (WRONG if verdict == "proved" else RIGHT if verdict == "false" else HONEST), said
    if expected == "undetermined":
        right = ("undetermined", "depends-on-figure")
        return (WRONG if verdict in ("proved", "contradictory") else RIGHT if verdict in right else HONEST), said
    if expected == "contradictory":
        return (WRONG if verdict == "proved" else RIGHT if verdict == "contradictory" else HONEST), said
    if verdict in ("false", "undetermined", "contradictory"):
        return WRONG, said
    if "evidence" in answer and expected is not True and not same_value(answer.get("value", ""), expected):
        return WRONG, f"{said} by {answer['evidence']}, but it is {expected}"
    if verdict != "proved":
        return HONEST, said + (" (" + answer["stop"] + ")" if answer["stop"] else "")
    if expected is True or same_value(answer.get("value", ""), expected):
        return RIGHT, said
    return WRONG, f"{said}, but it is {expected}"


def items():
    for file in ("classroom", "theorems", "euclid"):
        for item in json.loads((HERE / f"{file}.json").read_text(encoding="utf-8")):
            yield item, kind_of(item, file)


def answers(program, problems):
    lines = "".join(json.dumps({"id": item["id"], "problem": problem_text(item)}) + "\n" for item, _ in problems)
    done = subprocess.run([program, "batch", "--limit", "10", "-"], input=lines, capture_output=True, text=True)
    sys.stderr.write(done.stderr)
    read = [json.loads(line) for line in done.stdout.splitlines()]
    if [a.get("id") for a in read] != [item["id"] for item, _ in problems]:
        sys.exit(f"batch did not answer every line in order (status {done.returncode})\n0 passed, 1 failed")
    return read


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--update", action="store_true")
    parser.add_argument("--show", metavar="ID")
    parser.add_argument("program", nargs="?", default="build/anglewright")
    arguments = parser.parse_args()
    problems = list(items())
    if arguments.show:
        found = [item for item, _ in problems if item["id"] == arguments.show]
        for item in found:
            print(f"# {item['statement']}\n# {item['source']}; answer: {item['answer']}\n{problem_text(item)}", end="")
        return 0 if found else 2

    results = [(item["id"], kind, *judge(item, answer))
               for (item, kind), answer in zip(problems, answers(arguments.program, problems))]
    held = {name for name, _, outcome, _ in results if outcome == RIGHT}
    if arguments.update:
        EXPECTED.write_text("".join(name + "\n" for name in sorted(held)), encoding="utf-8")
    expected = set(EXPECTED.read_text(encoding="utf-8").split()) if EXPECTED.exists() else set()
    lost = expected - held

    open_items = [row for row in results if row[2] != RIGHT]
    if open_items:
        print("Not answered rightly:")
        for name, kind, outcome, said in open_items:
            mark = "WRONG " if outcome == WRONG else "LOST  " if name in lost else "      "
            print(f"  {mark}{name:36} {kind}: {said}")
        print()
    tally = Counter((kind, outcome) for _, kind, outcome, _ in results)
    print(f"{'kind':42}{'items':>7}{'right':>7}{'not reached':>13}{'wrong':>7}")
    for kind in KINDS:
        counts = [tally[kind, outcome] for outcome in (RIGHT, HONEST, WRONG)]
        print(f"{kind:42}{sum(counts):7}{counts[0]:7}{counts[1]:13}{counts[2]:7}")
    wrong = sum(outcome == WRONG for _, _, outcome, _ in results)
    gained = held - expected
    if gained and expected:
        print(f"\nNot yet in {EXPECTED.name}: {', '.join(sorted(gained))}")
    print(f"\n{len(held)} passed, {wrong + len(lost - {r[0] for r in results if r[2] == WRONG})} failed")
    return 1 if wrong or lost else 0


if __name__ == "__main__":
    sys.exit(main())
