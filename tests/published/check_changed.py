#!/usr/bin/env python3
"""Every determined classroom problem (or, with --of theorems, every true theorem) with a given left out, or with one of its numbers changed; and every verdict on these
weighed by its evidence, measured anew from the coordinates (measured.py).

    python3 tests/published/check_changed.py [--show KIND] [--save FILE] build/anglewright

Without a given the published figure still meets the rest, so "contradictory" and another value are wrong; figures that
are shown must meet the givens and differ in what is asked. With a changed number a value must be what the shown figure
measures. Verdicts without evidence are counted, not failed: "not decided".
"""
import argparse
import json
import re
import subprocess
import sys
from collections import Counter, defaultdict
from fractions import Fraction
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from measured import FAR, Figure, Unreadable  # noqa: E402

HERE = Path(__file__).resolve().parent
MEETS = 1e-8      # how exactly a figure must meet the givens
DIFFERS = 1e-3    # degrees or parts: values that differ by more are different


def items(file):
    data = json.loads((HERE / file).read_text(encoding="utf-8"))
    return [i for i in (data if isinstance(data, list) else data["items"])
            if i["answer"] not in ("undetermined", "contradictory", False)]


def text_of(facts, item):
    return "\n".join(facts) + ("\nprove: " if isinstance(item["answer"], bool) else "\nfind: ") + item["ask"] + "\n"


def variants(file):
    """(id, kind, facts, item): every fact left out in turn, every number changed in turn."""
    for item in items(file):
        facts = item["facts"]
        for i, fact in enumerate(facts):
            rest = facts[:i] + facts[i + 1:]
            if points_needed(item) <= points_named(rest):
                yield f"{item['id']} without {i}", "left out", rest, item
        for i, fact in enumerate(facts):
            if not re.search(r"=|<|>", fact):
                continue
            for found in re.finditer(r"(?<![A-Za-z\d./])\d+(?![\d./]|\s*[A-Za-z])", fact):
                number = int(found[0])
                for change in (7, -4):
                    if number + change > 0:
                        changed = fact[:found.start()] + str(number + change) + fact[found.end():]
                        yield (f"{item['id']} {i} {number}{change:+}", "changed", facts[:i] + [changed] + facts[i + 1:], item)


def points_named(facts):
    return {p for f in facts for p in re.findall(r"(?<![a-z])[A-Z]\d?", f)}


def points_needed(item):
    return points_named([item["ask"]])


def shown(answer, facts):
    """The answer's figures that meet the facts, and whether any does not."""
    good, bad = [], 0
    for figure in answer["figures"]:
        drawn = Figure(figure["points"])
        if drawn.meets(facts) < MEETS:
            good.append(drawn)
        else:
            bad += 1
    return good, bad


def exact(text):
    try:
        return float(Fraction(text))
    except ValueError:
        return None


def judge(kind, facts, item, answer):
    """(verdict as weighed, wrong or not)."""
    verdict, ask = answer["verdict"], item["ask"]
    if any(d["severity"] == "error" for d in answer["diagnostics"]):
        return "not understood", False
    if answer["checks_disagree"]:
        return "checks disagree", True
    claim = isinstance(item["answer"], bool)
    figures, bad = shown(answer, facts)
    original = Figure(item["points"])
    stands = kind == "left out"          # the published figure is one of these givens
    if bad:
        return f"{verdict}: a figure does not meet the givens", True
    if verdict == "contradictory":
        return verdict, stands
    if verdict == "proved":
        if claim:
            wrong = [f for f in figures if not f.holds(ask, facts)]
            return verdict, bool(wrong)
        value = exact(answer.get("value", ""))
        if value is None:
            return "proved, an expression", False
        seen = [f.value(ask, facts) for f in figures] + ([original.value(ask, facts)] if stands else [])
        if not seen:
            return "proved without a figure", True
        return "proved", any(abs(v - value) > 1e-6 for v in seen)
    if verdict == "false":
        return verdict, not figures or any(f.holds(ask, facts) for f in figures)
    if verdict == "undetermined":
        if claim:
            return "undetermined claim", True
        values = [f.value(ask, facts) for f in figures]
        return verdict, len(values) < 2 or max(values) - min(values) < DIFFERS
    if verdict == "depends-on-figure":
        values = [f.value(ask, facts) for f in figures] if not claim else []
        told = [exact(c.get("value", "")) for c in answer["cases"]]
        lost = [v for v in values if not any(t is not None and abs(t - v) < 1e-6 for t in told)]
        return verdict, not claim and (len(values) < 2 or max(values) - min(values) < DIFFERS or bool(lost))
    return verdict, False  # beyond-rules, unknown: nothing is claimed that could be wrong


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--show", help="print the items that were weighed so, or all wrong ones: wrong")
    parser.add_argument("--save", help="write all answers to this file")
    parser.add_argument("--of", choices=["classroom", "theorems"], default="classroom")
    parser.add_argument("--every", type=int, default=1, help="only every n-th variant")
    parser.add_argument("program")
    arguments = parser.parse_args()
    asked = {}
    for name, kind, facts, item in list(variants(arguments.of + ".json"))[::arguments.every]:
        asked[name] = (kind, facts, item)
    lines = "".join(json.dumps({"id": n, "problem": text_of(f, i)}) + "\n" for n, (_, f, i) in asked.items())
    run = subprocess.run([arguments.program, "batch", "-"], input=lines, capture_output=True, text=True, check=False)
    answers = [json.loads(line) for line in run.stdout.splitlines()]
    if arguments.save:
        Path(arguments.save).write_text(run.stdout, encoding="utf-8")
    counts, wrong = defaultdict(Counter), []
    for answer in answers:
        kind, facts, item = asked[answer["id"]]
        try:
            said, is_wrong = judge(kind, facts, item, answer)
        except Unreadable as reason:
            said, is_wrong = f"unreadable: {reason}", True
        counts[kind][said] += 1
        if is_wrong:
            wrong.append((answer["id"], said))
        if arguments.show and (arguments.show == said or (is_wrong and arguments.show == "wrong")):
            print(f"--- {answer['id']}: {said} {answer.get('value', '')}; published {item['answer']}")
            print(text_of(facts, item))
    missing = len(asked) - len(answers)
    for kind, verdicts in counts.items():
        print(f"{kind}: {sum(verdicts.values())}")
        for said, count in verdicts.most_common():
            print(f"  {count:4}  {said}")
    for name, said in wrong:
        print(f"WRONG {name}: {said}")
    failed = len(wrong) + missing
    print(f"{len(answers) - len(wrong)} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
