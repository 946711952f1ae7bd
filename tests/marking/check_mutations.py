#!/usr/bin/env python3
"""No false line of a pupil's work is called right: proofs of all published problems, with lines made wrong.

    python3 tests/marking/check_mutations.py [--lines 2000] [--seed 1] [--show] build/anglewright

From each proof that `batch` gives, mutants are made (mutants.py: another angle, a wrong reason, a number off, a step left
out, order changed, a relation of other points, "looks equal"); each goes back as `work:`. Every line of every mutant, changed
or not, is measured in the published figure: one that is false there follows from nothing, so it may not be called right,
right-no-reason, wrong-reason (which says that the statement stands), given, or not-needed. How many false lines are called merely a gap is
counted; where a figure or a value shows that a line is false, that evidence is measured, too. Deterministic for a seed.
"""
import argparse
import json
import re
import subprocess
import sys
from collections import Counter
from fractions import Fraction
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
sys.path.insert(0, str(HERE.parent / "published"))
from check_published import items, problem_text  # noqa: E402
from claims import chains  # noqa: E402
from leaks import claim_of  # noqa: E402
from measured import Figure  # noqa: E402
from mutants import KINDS, Maker, letters_of, truth  # noqa: E402
from pieces_data import measured  # noqa: E402
from program import mark_all  # noqa: E402

STANDS = {"right", "right-no-reason", "wrong-reason", "reason-not-accepted", "given", "not-needed", "not-taught"}
NOT_READ = {"unread", "remark", "crossed-out", "ambiguous-name", "construction"}


def proofs(program):
    """(item, steps of all its proofs) of what the program proves, where a figure is published."""
    chosen = [item for item, _ in items() if "points" in item and (item["answer"] is True or isinstance(item["answer"], (int, float)))]
    lines = "".join(json.dumps({"id": item["id"], "problem": problem_text(item)}) + "\n" for item in chosen)
    done = subprocess.run([program, "batch", "--limit", "10", "-"], input=lines, capture_output=True, text=True)
    for item, answer in zip(chosen, map(json.loads, done.stdout.splitlines())):
        steps = [step for proof in answer.get("proofs", []) for step in proof["steps"] if fits(item, proof["steps"])]
        if answer["verdict"] == "proved" and steps:
            yield item, steps


def fits(item, steps):
    """Where figures differ there is a proof for each arrangement; only those of the published figure can be measured in it."""
    figure = Figure(item["points"])
    figure.meets(item["facts"])
    claims = [step["claim"] for step in steps]
    letters = letters_of(claims, figure, item["facts"])
    return not any(truth(claim, figure, letters) is False for claim in claims)


def mutants_of(proved, wanted, seed):
    """So many mutants that `wanted` lines were changed: round after round over all problems."""
    reasons = sorted({step["reason"] for _, steps in proved for step in steps if len(step["reason"]) > 12})
    made, count, round_ = [], 0, 0
    while count < wanted:
        round_ += 1
        for item, steps in proved:
            maker = Maker(f"{seed} {round_} {item['id']}", reasons)
            mutant = maker.mutant(item, steps, sorted(item["points"]))
            if mutant:
                made.append(mutant)
                count += len(mutant.kinds)
            if count >= wanted:
                break
    return made


def with_work(mutant):
    return problem_text(mutant.item) + "work:\n" + "\n".join(mutant.lines) + "\n"


def evidence(item, line, given):
    """What shows that a line called false is false: "figure" or "value" where it does, "nothing", or what is wrong with it."""
    if "figure" in given:
        figure = Figure(given["figure"]["points"])
        missed = figure.meets(item["facts"])
        if missed > 1e-6:
            return f"its figure misses the givens by {missed:.1e}"
        if truth(claim_of(line), figure, letters_of([line], figure, item["facts"])) is True:
            return "the line holds in its figure"
        return "figure"
    if "value" in given:
        said = chains(claim_of(line))
        size = measured(said[0].forms[0], Figure(item["points"]), {}) if said else None
        shown = Fraction(re.sub("[°x= ]", "", given["value"]) or 0) if re.fullmatch(r"[x= ]*-?\d+(/\d+)?°?", given["value"]) else None
        if size is not None and shown is not None and abs(size - shown) > 1e-6:
            return f"the value should be {size:.6f}, not {given['value']}"
        return "value"
    return "nothing"


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--lines", type=int, default=2000)
    parser.add_argument("--seed", default="1")
    parser.add_argument("--show", action="store_true", help="print every false line and what it was called")
    parser.add_argument("program", nargs="?", default="build/anglewright")
    arguments = parser.parse_args()
    proved = list(proofs(arguments.program))
    if arguments.lines < 1000:  # a smaller run takes every problem's turn as far as it goes: short proofs first would be unfair
        proved = proved[::max(1, len(proved) * 2 // arguments.lines)] or proved
    mutants = mutants_of(proved, arguments.lines, arguments.seed)
    answers = mark_all(arguments.program, map(with_work, mutants))

    called, kinds, false_kinds, gaps = Counter(), Counter(), Counter(), Counter()
    wrong_reasons, shown_by = Counter(), Counter()
    unsound, lost, false_lines, measured_lines, all_lines = 0, 0, 0, 0, 0
    for mutant, answer in zip(mutants, answers):
        lines, text = answer["lines"], with_work(mutant)
        for kind in mutant.kinds.values():
            kinds[kind] += 1
        if len(lines) != len(mutant.lines):
            lost += 1
            print(f"{mutant.item['id']}: {len(lines)} lines of {len(mutant.lines)} {answer.get('trouble', '')}: {text}")
            continue
        figure = Figure(mutant.item["points"])
        figure.meets(mutant.item["facts"])
        letters = letters_of(mutant.lines, figure, mutant.item["facts"])
        for number, (line, given) in enumerate(zip(mutant.lines, lines), 1):
            kind = mutant.kinds.get(number, "unchanged")
            holds = truth(claim_of(line), figure, letters)
            all_lines += 1
            measured_lines += holds is not None
            if kind == "wrong reason" and holds:
                wrong_reasons[given["status"]] += 1
            if holds is not False:
                continue
            false_lines += 1
            false_kinds[kind] += 1
            if given["status"] == "false":
                shown = evidence(mutant.item, line, given)
                shown_by[shown if shown in ("figure", "value", "nothing") else "wrong evidence"] += 1
                if shown not in ("figure", "value", "nothing"):
                    print(f"EVIDENCE: {mutant.item['id']}, line {number}: {line}\n    {shown}\n    seen with: {text!r}")
            called[given["status"]] += 1
            if given["status"] == "unsupported":
                gaps[kind] += 1
            if arguments.show:
                print(f"  {given['status']:18} {kind:14} {mutant.item['id']}: {line}")
            if given["status"] in STANDS:
                unsound += 1
                print(f"FALSE AND CALLED {given['status']}: {mutant.item['id']}, line {number} ({kind}): {line}\n"
                      f"    {given.get('remark', '')}\n    seen with: {text!r}")

    changed = sum(kinds.values())
    print(f"\n{len(mutants)} pieces of work from {len(proved)} proofs, {changed} lines changed: "
          + ", ".join(f"{kinds[k]} {k}" for k in KINDS))
    print(f"{all_lines} lines, {measured_lines} of them measured, {false_lines} false: "
          + ", ".join(f"{n} {k}" for k, n in false_kinds.most_common()))
    print("The false ones are called: " + (", ".join(f"{k} {n}" for k, n in called.most_common()) or "–"))
    unread = sum(called[k] for k in NOT_READ)
    print(f"Merely a gap: {called['unsupported']} of {false_lines} ({', '.join(f'{n} {k}' for k, n in gaps.most_common())}); not read: {unread}")
    print("Called false and shown by: " + (", ".join(f"{k} {n}" for k, n in shown_by.most_common()) or "–"))
    print("True lines with a reason from elsewhere are called: " + (", ".join(f"{k} {n}" for k, n in wrong_reasons.most_common()) or "–"))
    failed = unsound + lost + shown_by["wrong evidence"] + (false_lines == 0)
    print(f"{false_lines - unsound} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
