#!/usr/bin/env python3
"""Is any published proof shorter than ours? Counts the steps of `usual_reasons` in theorems.json (source: the published
collection, README.md) and compares with the cost by the measure "fewest-steps" of the proof that the program finds.

    python3 tests/published/check_lengths.py build/anglewright

A published reason counts once, or as often as it says ("twice", "three times"). The lists name theorems only: lines to
draw, definitions (radii, parts of congruent triangles) and what is free (adding neighbouring angles, halving) are not in
them and are taken off ours. Items that we do not prove within the limit are passed over: that is check_published.py's
business. KNOWN_SHORTER names the exceptions, each with the reason; the check fails when there
are others and when one of them is one no more.
"""
import json
import re
import subprocess
import sys
from math import floor
from pathlib import Path

from check_published import EXPECTED, HERE, problem_text

TIMES = {"twice": 2, "three times": 3, "four times": 4}
FREE = ("halving", "adjacent angles add", "adding", "half")
ONCE = "the list names each theorem once, however often it is used: "
KNOWN_SHORTER = {
    "thm-isosceles-altitude-half-angle": ONCE + "the angle sum in two triangles",
    "thm-tangent-angle-supplement": ONCE + "two tangents, each at right angles to its radius",
    "thm-excentre-angle": ONCE + "two outer angles",
    "thm-two-equilateral-triangles": "the angles of the equilateral triangles and the bow-tie's second sum are not listed",
    "oly-imo-1994-2": "that WF is perpendicular to DF, by symmetry in DW, is not listed",
    "oly-midpoint-tangents": "that the feet and V, W are concyclic, and what follows for the angle at E, is not listed",
    "oly-nine-point-feet": "'the altitude bisects the angle of the feet triangle' is listed as one reason",
    "oly-usajmo-2011-5": "five concyclic points are listed as one reason; ours is not proved to be shortest",
    "oly-egmo-2017-1": "sums and vertically opposite angles are not listed; ours is not proved to be shortest",
    "oly-isl-2010-g1": ONCE + "the exterior angle of a cyclic quadrilateral four times",
    "oly-usamo-2010-1": ONCE + "and the angle sums that join them are not listed",
    "adv-80-80-20-lines-50-40": ONCE + "the angle sum in two triangles; base angles of the large one are not listed",
}


def published_steps(reasons):
    steps = 0
    for reason in reasons:
        if reason.startswith(FREE):
            continue
        found = re.search(r"\((twice|three times|four times)\)", reason)
        steps += TIMES[found.group(1)] if found else 1
    return steps


def main():
    program = sys.argv[-1]
    items = json.load(open(HERE / "theorems.json", encoding="utf-8"))
    proved = set(EXPECTED.read_text(encoding="utf-8").split())
    items = [i for i in items if i["id"] in proved and i["answer"] is not False and i.get("usual_reasons")]
    lines = "".join(json.dumps({"id": i["id"], "problem": problem_text(i)}) + "\n" for i in items)
    done = subprocess.run([program, "batch", "--measure", "fewest-steps", "--limit", "10", "-"], input=lines, text=True,
                          capture_output=True, check=False)
    answers = {a["id"]: a for a in map(json.loads, done.stdout.splitlines())}
    rules = json.loads(subprocess.run([program, "rules", "--json"], text=True, capture_output=True, check=True).stdout)
    kinds = {rule["id"]: rule["kind"] for rule in rules}
    shorter, compared = [], 0
    for item in items:
        answer = answers[item["id"]]
        if answer["verdict"] != "proved":
            continue
        compared += 1
        ours = max(theorems_cited(p, kinds) for p in answer["proofs"])
        theirs = published_steps(item["usual_reasons"])
        if theirs < ours:
            shorter.append((item["id"], theirs, ours, answer["proofs"][0]["rules"]))
    failed = 0
    for name, theirs, ours, rules in shorter:
        why = KNOWN_SHORTER.get(name)
        print(f"{name}: published {theirs}, ours {ours}: {why or 'NOT EXPECTED'}")
        if not why:
            print("   ", ", ".join(rules))
            failed += 1
    for name in set(KNOWN_SHORTER) - {s[0] for s in shorter}:
        print(f"{name}: no longer an exception")
        failed += 1
    print(f"{compared - failed} passed, {failed} failed")
    return failed > 0


def theorems_cited(proof, kinds):
    """The cost counts every citation; lines to draw and definitions are taken off."""
    whole, _, part = proof["cost"].partition("/")
    cited = floor(int(whole) / int(part or 1))
    steps = [kinds.get(step["rule"]) for step in proof["steps"]]
    return cited - len(proof["constructions"]) - sum(kind in ("definition", "construction") for kind in steps)


if __name__ == "__main__":
    sys.exit(main())
