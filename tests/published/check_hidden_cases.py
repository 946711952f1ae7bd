#!/usr/bin/env python3
"""Statements with a hidden second case (hidden_cases.json: ten of our own, the others published ones with a sentence left
out or weakened): every arrangement must come out, with its value, its figure and the sentence that selects it.

    python3 tests/published/check_hidden_cases.py [--show ID] build/anglewright

Each value is measured anew from the coordinates of the case's figure (measured.py), each selecting sentence is pasted into
the problem and the problem solved again, and the item's own sentences (`twins`) must remove the second case.
"""
import json
import subprocess
import sys
from fractions import Fraction
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from measured import Figure  # noqa: E402

HERE = Path(__file__).resolve().parent


def text_of(item, more=""):
    return "\n".join(item["facts"]) + ("\n" + more if more else "") + "\nfind: " + item["ask"] + "\n"


def solve(program, problems):
    lines = "".join(json.dumps({"id": n, "problem": p}) + "\n" for n, p in enumerate(problems))
    done = subprocess.run([program, "batch", "--limit", "10", "-"], input=lines, capture_output=True, text=True)
    answers = [json.loads(line) for line in done.stdout.splitlines()]
    if len(answers) != len(problems):
        sys.exit(f"batch answered {len(answers)} of {len(problems)} lines\n0 passed, 1 failed")
    return answers


def wrong_with(item, answer):
    """What is wrong with the cases of an item, a sentence each."""
    if answer["verdict"] != "depends-on-figure":
        return [f"verdict {answer['verdict']} {answer.get('value', '')}"]
    wrong = []
    values = {c.get("value") for c in answer["cases"] if c["verdict"] == "proved"}
    if values != set(item["values"]):
        wrong.append(f"values {sorted(values, key=str)}, wanted {item['values']}")
    figures = {f["name"]: f["points"] for f in answer["figures"]}
    for case in answer["cases"]:
        if case["verdict"] != "proved":
            continue
        if case["name"] not in figures:
            wrong.append(f"no figure for {case['name']}")
            continue
        figure = Figure(figures[case["name"]])
        if figure.meets(item["facts"]) > 1e-6:
            wrong.append(f"the figure of {case['name']} misses the givens by {figure.meets(item['facts']):.2g}")
        measured = figure.value(item["ask"])
        if abs(measured - float(Fraction(case["value"]))) > 1e-5:
            wrong.append(f"{case['name']}: {case['value']}, but its figure measures {measured:.6g}")
        if not case.get("selects"):
            wrong.append(f"no sentence selects {case['name']}")
        if not any(p.get("case") == case["name"] and p["checks"] == {"replay": True, "z3": True} for p in answer["proofs"]):
            wrong.append(f"no checked proof of {case['name']}")
    return wrong


def main():
    arguments = sys.argv[1:]
    items = json.loads((HERE / "hidden_cases.json").read_text(encoding="utf-8"))
    if arguments[:1] == ["--show"]:
        for item in items:
            if item["id"] == arguments[1]:
                print(f"# {item['statement']}\n# {item['source']}; values {item['values']}\n{text_of(item)}", end="")
        return 0
    program = arguments[0] if arguments else "build/anglewright"
    answers = solve(program, [text_of(i) for i in items])
    pasted, wanted = [], []
    failures = {i["id"]: wrong_with(i, a) for i, a in zip(items, answers)}
    for item, answer in zip(items, answers):
        for case in answer["cases"]:
            if case.get("selects"):
                pasted.append(text_of(item, case["selects"]))
                wanted.append((item["id"], "selected by “" + case["selects"] + "”", case["value"]))
        for twin in item["twins"]:
            pasted.append(text_of(item, twin["add"]))
            wanted.append((item["id"], "with “" + twin["add"] + "”", twin["value"]))
    for (name, how, value), answer in zip(wanted, solve(program, pasted)):
        if answer["verdict"] != "proved" or answer.get("value") != value:
            failures[name].append(f"{how}: {answer['verdict']} {answer.get('value', '')}, wanted {value}")
    for name, wrong in failures.items():
        for sentence in wrong:
            print(f"  {name}: {sentence}")
    failed = sum(bool(w) for w in failures.values())
    print(f"{len(wanted)} sentences pasted and solved again")
    print(f"\n{len(items) - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
