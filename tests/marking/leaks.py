"""What a rung of a ladder gives away, judged by reading its text and by exact linear algebra; the program has no part in it.

A rung below the last must not name the asked value, nor a value from which it follows in one subtraction (180 −, 90 −,
360 −, or with a number of the question), unless that number stands in the question; no equation or fact equal to the goal;
and, unless it is a step told, no number that is neither in the question nor in a step told before, and no equation that
gives the goal together with the question and the steps told (CLASSROOM.md, section 4: such a rung may name places and a
theorem, and never writes the partner of an angle beside the asked one).
"""
import re
from fractions import Fraction

from claims import Form, chains, numbers, relations

TOLD = ("step", "answer")
ROUND = (Fraction(180), Fraction(90), Fraction(360))


class Span:
    """Equations (forms that are zero), eliminated as they come."""

    def __init__(self, equations=()):
        self.rows = {}  # pivot: row with coefficient 1 there
        for equation in equations:
            self.add(equation)

    def reduce(self, form):
        form = Form(form)
        for key in list(form):
            if key in form and key in self.rows:
                form = form.plus(self.rows[key], -form[key])
        return form

    def add(self, equation):
        row = self.reduce(equation)
        pivot = next((k for k in row if k != 1), 1 if row else None)
        if pivot is None:
            return
        row = row.times(1 / row[pivot])
        for key, other in self.rows.items():
            if pivot in other:
                self.rows[key] = other.plus(row, -other[pivot])
        self.rows[pivot] = row

    def gives(self, equation):
        return not self.reduce(equation)

    def contradictory(self):
        return 1 in self.rows


def equations_in(text, names):
    return [names.form(e) for chain in chains(text) for e in chain.equations() if names.form(e)]


def facts_in(text, names):
    return {names.relation(r) for r in relations(text)}


def values_in(text):
    """Sizes said: of one angle, length or letter ("2∠KLM = 128" says 64; the 180 of a sum is no size), and bare numbers."""
    said, rest, place = set(), "", 0
    for chain in chains(text):
        constants = {f.constant() for f in chain.forms if f.constant() is not None}
        unknown = [f for f in chain.forms if f.constant() is None]
        said |= {(c - f.get(1, 0)) / k for c in constants for f in unknown if len(set(f) - {1}) == 1
                 for key, k in f.items() if key != 1}
        rest, place = rest + " " + text[place:chain.begin], chain.end
    return said | set(numbers(rest + " " + text[place:]))


class Question:
    """`givens`: the sentences of the problem; `goals`: what is asked, each "angle KLM" or a claim; `value`: of a find goal."""

    def __init__(self, givens, goal, value, names):
        self.names = names
        text = "\n".join(givens)
        self.numbers = set(numbers(text + "\n" + goal))
        self.given = [e for line in givens for e in equations_in(line.replace("angles", "angle"), names)]
        self.value = value
        self.goal_facts = facts_in(goal.replace(":", " "), names)
        self.goal_equations = equations_in(as_equation(goal), names)
        self.asked = None
        if value is not None:
            whole = chains(f"{goal} = {value}")
            self.asked = names.form(whole[0].forms[0]) if whole else Form()
            self.goal_equations = [names.form(e) for c in whole for e in c.equations()]
        self.goal_facts |= plain_fact(goal, names)

    def one_step_away(self):
        """Numbers from which the value follows in one subtraction, and the value."""
        v = self.value
        near = {v} | {base - v for base in ROUND}
        for number in self.numbers:
            near |= {number - v, number + v}
        return {w for w in near if w > 0} - self.numbers


def plain_fact(goal, names):
    """A goal in the words of the published phrases: "parallel AB, CD"."""
    found = re.match(r"(parallel|perpendicular|concyclic):?\s+(.*)", goal.strip())
    if not found:
        return set()
    if found[1] == "concyclic":
        return facts_in(found[2] + " lie on a circle", names)
    first, second = found[2].replace(",", " ").split()[:2]
    return facts_in(f"{first} {'∥' if found[1] == 'parallel' else '⟂'} {second}", names)


def as_equation(goal):
    """A midpoint of a segment on which it lies is as much as two equal lengths."""
    found = re.match(r"midpoint:?\s+([A-Z]) of ([A-Z])([A-Z])", goal.strip())
    return f"{found[2]}{found[1]} = {found[1]}{found[3]}" if found else goal


def claim_of(text):
    """A step without its reason: "CLAIM (REASON)"."""
    place, depth = len(text), 0
    if not text.endswith(")"):
        return text
    while place:
        place -= 1
        depth += {")": 1, "(": -1}.get(text[place], 0)
        if not depth:
            break
    return text[:place]


def leaks(question, rungs):
    """Sentences about what the rungs below the last give away. `rungs`: (kind, text), in order."""
    found = []
    told_numbers, told_equations = set(), []
    for place, (kind, text) in enumerate(rungs[:-1], 1):
        where = f"rung {place} ({kind}): {text}"
        new = equations_in(text, question.names)
        if kind not in TOLD:
            strange = set(numbers(text)) - question.numbers - told_numbers
            if strange:
                found.append(f"{where}\n      a number not told before: {', '.join(map(str, sorted(strange)))}")
            before = [*question.given, *told_equations]
            known = Span(before)
            if question.goal_equations and not aims(question, kind) and not all(map(known.gives, question.goal_equations)):
                after = Span([*before, *new])
                if not after.contradictory() and all(map(after.gives, question.goal_equations)):
                    found.append(f"{where}\n      its equations give the goal")
        else:
            told_numbers |= set(numbers(text)) | values_in(text)
            told_equations += new
            new = equations_in(claim_of(text), question.names)  # a given that the reason quotes stands in the question
        if question.value is not None:
            near = values_in(claim_of(text) if kind in TOLD else text) & question.one_step_away()
            if kind not in TOLD:
                near -= told_numbers  # what was told before was judged there
            if near:
                found.append(f"{where}\n      names {', '.join(map(str, sorted(near)))}, one subtraction from the answer {question.value}")
        own = Span(new)
        if question.goal_equations and not aims(question, kind) and not own.contradictory() and \
                all(map(own.gives, question.goal_equations)):
            found.append(f"{where}\n      says the goal")
        if question.goal_facts and not aims(question, kind) and question.goal_facts <= facts_in(text, question.names):
            found.append(f"{where}\n      says the goal")
    return found


def aims(question, kind):
    """The first rungs may repeat what is to be shown: it stands in the question."""
    return question.value is None and kind == "look-again"
