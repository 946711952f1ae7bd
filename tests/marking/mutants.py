"""Wrong lines made from right proofs. Every mutant is a whole proof as a pupil would hand it in, with one to three lines
changed; which of its lines are then false is measured in the published figure, not known from how they were made.
"""
import random
import re
import sys
from dataclasses import dataclass, field
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
from claims import chains, points_in, relations  # noqa: E402
from pieces_data import measured, relation_holds  # noqa: E402
from measured import Unreadable  # noqa: E402  (its folder is known through pieces_data)

KINDS = ("another angle", "wrong reason", "number off", "step left out", "order changed", "other points", "looks equal")
ANGLE = re.compile(r"∠([A-Z])([A-Z])([A-Z])")
NAME = re.compile(r"(?<![A-Za-z∠△])([A-Z])([A-Z])(?![A-Za-z])")
NUMBER = re.compile(r"(?<![\d.])(\d+(?:\.\d+)?)(?![\d.])")
FAR, NEAR = 1e-2, 1e-6  # degrees or lengths: surely false, surely true


@dataclass
class Mutant:
    item: dict
    lines: list
    kinds: dict = field(default_factory=dict)  # line number (from 1): how it was changed


def line_of(step):
    return f"{step['claim']} ({step['reason']})"


def truth(text, figure, letters):
    """True, False, or None where it cannot be measured or lies between."""
    said = []
    for chain in chains(text):
        for equation in chain.equations():
            value = measured(equation, figure, letters)
            if value is None or value != value:
                said.append(None)
            else:
                said.append(False if abs(value) > FAR else True if abs(value) < NEAR else None)
    said += [relation_holds(r, figure) for r in relations(text)]
    return False if False in said else None if None in said or not said else True


def letters_of(lines, figure, facts):
    """What the letters stand for: unknown numbers of the problem, and "Let ∠KLM = x" of the proof."""
    try:
        letters = dict(figure.solve_numbers(facts))
    except Unreadable:
        letters = {}
    for line in lines:
        found = re.match(r"Let (.*?) = ([a-z])(?![a-z])", line)
        if found and chains(found[1] + " = 0"):
            size = measured(chains(found[1] + " = 0")[0].forms[0], figure, letters)
            if size is not None:
                letters[found[2]] = size
    return letters


class Maker:
    def __init__(self, seed, reasons):
        self.random = random.Random(seed)
        self.reasons = reasons  # of other problems' steps: (rule, reason)

    def mutant(self, item, steps, points):
        lines, kinds = [line_of(s) for s in steps], {}
        for _ in range(1 + (len(steps) > 3) + (len(steps) > 6)):
            kind = self.random.choice(KINDS)
            place = self.random.randrange(len(lines))
            if place + 1 in kinds:
                continue
            changed = self.changed(kind, place, lines, steps, points)
            if changed is not None and changed[0] != lines:
                lines, moved = changed
                kinds = {(moved(n)): k for n, k in kinds.items()}
                kinds[min(place + 1, len(lines))] = kind
        return Mutant(item, lines, kinds) if kinds else None

    def changed(self, kind, place, lines, steps, points):
        """The new lines, and where old line numbers went; None where this cannot be done here."""
        line, stay = lines[place], lambda n: n
        if kind == "step left out":
            if len(lines) < 2 or place == len(lines) - 1:
                return None
            return lines[:place] + lines[place + 1:], lambda n: n - (n > place + 1)
        if kind == "order changed":
            other = self.random.randrange(len(lines))
            swapped = list(lines)
            swapped[place], swapped[other] = swapped[other], swapped[place]
            return swapped, lambda n: other + 1 if n == place + 1 else place + 1 if n == other + 1 else n
        new = getattr(self, kind.replace(" ", "_"))(line, points)
        return None if new is None else ([*lines[:place], new, *lines[place + 1:]], stay)

    def replaced(self, pattern, line, new):
        """One match in the claim changed; the reason stays."""
        end = line.rfind(" (")
        found = [m for m in pattern.finditer(line[:end])]
        if not found:
            return None
        one = self.random.choice(found)
        text = new(one)
        return None if text is None else line[:one.start()] + text + line[one.end():]

    def another_angle(self, line, points):
        def new(found):
            corner = found[2] if self.random.random() < 0.7 else self.random.choice(points)
            rest = [p for p in points if p != corner]
            if len(rest) < 2:
                return None
            return "∠{}{}{}".format(*(lambda arms: (arms[0], corner, arms[1]))(self.random.sample(rest, 2)))
        return self.replaced(ANGLE, line, new)

    def number_off(self, line, points):
        off = self.random.choice((1, -1, 2, 5, 10, -10, 20, 90))
        return self.replaced(NUMBER, line, lambda m: f"{max(1, round(float(m[1])) + off)}")

    def other_points(self, line, points):
        def new(found):
            a, b = self.random.choice(((found[1], self.random.choice(points)), (self.random.choice(points), found[2])))
            return a + b if a != b else None
        return self.replaced(NAME, line, new)

    def wrong_reason(self, line, points):
        end = line.rfind(" (")
        reason = self.random.choice(self.reasons)
        letters = sorted(set(points_in(reason)))
        names = dict(zip(letters, self.random.sample(points, min(len(points), len(letters)))))
        return line[:end] + " (" + re.sub(r"(?<![a-z])[A-Z](?![a-z])", lambda m: names.get(m[0], m[0]), reason) + ")"

    def looks_equal(self, line, points):
        if len(points) < 4:
            return None
        (a, b, c), (d, e, f) = self.random.sample(points, 3), self.random.sample(points, 3)
        says = self.random.choice((f"∠{a}{b}{c} = ∠{d}{e}{f}", f"{a}{b} = {d}{e}", f"{a}{b} ∥ {d}{e}"))
        if {a, b} == {d, e}:
            return None
        return says + self.random.choice((" because it looks so", " (given)", " (alternate angles)", " (base angles)", ""))
