"""The pieces of pupils' work, read, and their expectations held against figures: what is called right must hold in the
figure of its problem, what is called false must not. Measured by tests/published/measured.py; the program has no part in
it. `python3 tests/marking/pieces_data.py` does this alone.
"""
import json
import math
import re
import sys
from collections import Counter
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "published"))
sys.path.insert(0, str(HERE))
from claims import chains, relations  # noqa: E402
from measured import Figure  # noqa: E402

STATUSES = ("right", "right-no-reason", "wrong-reason", "reason-not-accepted", "unsupported", "false", "arithmetic-slip",
            "follows-from-error", "circular", "assumes-the-claim", "given", "construction", "not-needed", "not-taught",
            "one-example", "ambiguous-name", "remark", "crossed-out", "unread")
REGISTERS = ("plain", "us", "uk", "sa")
MUST_HOLD = {"right", "right-no-reason", "wrong-reason", "reason-not-accepted", "given", "not-needed", "not-taught"}
REASON = re.compile(r"\s\|\s|\bbecause\b|\bsince\b|\s\[|\s\((?=[^()]*[a-z]{3}|[^()]*∠s|v\.o\.a|AA|SS|SAS|ASA|RHS|S∠S|∠∠)")


def pieces():
    """Every piece with the text and the figure of its problem in it, in the order of the files."""
    for file in sorted((HERE / "pieces").glob("*.json")):
        data = json.loads(file.read_text(encoding="utf-8"))
        for piece in data["pieces"]:
            problem = data["problems"][piece["problem"]]
            yield {**piece, "text": [*problem["text"], *piece.get("extra", [])], "points": problem["points"],
                   "numbers": problem.get("numbers", {}), "file": file.stem}


def statuses(line):
    return line["status"] if isinstance(line["status"], list) else [line["status"]]


def statement(text):
    """The line without its reason, as far as the reason stands behind it."""
    return REASON.split(text, maxsplit=1)[0]


def measured(form, figure, numbers):
    """The size of a form in a figure, or None where it speaks of what has no size there."""
    total = 0.0
    for key, factor in form.items():
        if key == 1:
            total += float(factor)
        elif key[0] == "angle" and all(p in figure.at for p in (key[1], *key[2])):
            total += float(factor) * figure.angle(key[2][0], key[1], key[2][1])
        elif key[0] == "length" and all(p in figure.at for p in key[1]):
            total += float(factor) * figure.length(*key[1])
        elif key[0] == "number" and key[1] in numbers:
            total += float(factor) * numbers[key[1]]
        else:
            return None
    return total


def relation_holds(relation, figure):
    kind, points = relation[0], [p for part in relation[1:] for p in part]
    if not all(p in figure.at for p in points):
        return None
    if kind in ("parallel", "perpendicular"):
        one_line = kind == "parallel" and all(p in relation[1] or figure.off_line(*relation[1], p) < 1e-9 for p in relation[2])
        return not one_line and figure.direction(*points, kind == "perpendicular") < 1e-6
    if kind == "touches":
        return None  # which circle is meant would have to be known
    if kind == "round":
        return figure.on_circle(relation[1], relation[2][0]) < 1e-6
    if kind == "concyclic":
        return figure.misses("concyclic: " + ", ".join(points)) < 1e-6
    sides = [[figure.length(t[i], t[(i + 1) % 3]) for i in range(3)] for t in relation[1:]]
    ratios = [a / b for a, b in zip(*sides)]
    return max(ratios) - min(ratios) < 1e-6 and (kind == "similar" or abs(ratios[0] - 1) < 1e-6)


def holds(text, figure, numbers):
    """Whether all that the statement says holds in the figure; None where nothing of it could be measured."""
    said = []
    for chain in chains(text):
        for equation in chain.equations():
            value = measured(equation, figure, numbers)
            if value is not None and not math.isnan(value):
                said.append(abs(value) < 1e-6)
    said += [r for r in (relation_holds(x, figure) for x in relations(text)) if r is not None]
    return all(said) if said else None


def complaints():
    """Sentences about pieces that are badly formed or do not agree with their figures; and the number of lines measured."""
    wrong, count, seen = [], Counter(), set()
    for piece in pieces():
        name = piece["id"]
        if name in seen:
            wrong.append(f"{name}: this id is there twice")
        seen.add(name)
        if piece["register"] not in REGISTERS or not piece["convention"]:
            wrong.append(f"{name}: register or convention is missing")
        figure = Figure(piece["points"])
        for number, line in enumerate(piece["lines"], 1):
            where = f"{name}, line {number} ({line['text']})"
            expected = set(statuses(line))
            if not expected <= set(STATUSES) or not {line["S"], line["R"]} <= {True, False, None}:
                wrong.append(f"{where}: status or marks unknown")
            if len(expected) > 1 and not line.get("why"):
                wrong.append(f"{where}: leaves the status open and does not say why")
            if line["R"] is True and line["S"] is False:
                wrong.append(f"{where}: R without S")
            truth = holds(statement(line["text"]), figure, piece["numbers"])
            count["measured" if truth is not None else "not measured"] += 1
            if truth is False and (expected <= MUST_HOLD or line["S"] is True and "follows-from-error" not in expected):
                wrong.append(f"{where}: expected {expected}, but it does not hold in the figure")
            if truth is True and expected <= {"false", "arithmetic-slip"}:
                wrong.append(f"{where}: expected {expected}, but it holds in the figure")
    return wrong, count


def main():
    wrong, count = complaints()
    print("\n".join(wrong))
    print(f"{count['measured']} lines measured in figures, {count['not measured']} say nothing that can be measured")
    print(f"{count['measured'] - len(wrong)} passed, {len(wrong)} failed")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
