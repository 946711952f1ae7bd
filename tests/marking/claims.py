"""What a line of text claims, read without the program: equations between angles, lengths and numbers as exact linear
forms, and relations (parallel, perpendicular, congruent, similar, concyclic). A small reader of our own, for the checks
of this folder; it reads what pupils, proofs and hints write, and passes over every other word.

`chains(text)` gives the chains of equal expressions, `relations(text)` the relations, `Names` knows when two names of an
angle or a line mean the same thing in a figure.
"""
import re
from dataclasses import dataclass
from fractions import Fraction

POINT = r"[A-Z](?:[0-9₀-₉]|')?"
TOKEN = re.compile(rf"""
  (?P<reflex>reflex\s+(?:m?[∠∡]|angle\s+){POINT}\s*{POINT}\s*{POINT}(?![A-Za-z]))
| (?P<angle>(?:m?[∠∡<]\s*|[Aa]ngles?\s+|ANGLE\s+)(?:{POINT}){{3}}(?![A-Za-z]))
| (?P<corner>(?:m?[∠∡]\s*|[Aa]ngle\s+){POINT}(?![A-Za-z]))
| (?P<triangle>(?:[△Δ∆]\s*|[Tt]riangles?\s+)(?:{POINT}){{3}}(?![A-Za-z]))
| (?P<segment>(?<![A-Za-z])(?:{POINT}){{2}}(?![A-Za-z]))
| (?P<points>(?<![A-Za-z])(?:{POINT}){{3,}}(?![a-z]))
| (?P<number>\d+\s\d+/\d+|\d+[½⅓¼⅔¾]|\d+(?:[.,]\d+)?|[½⅓¼⅔¾])
| (?P<similar>\|\|\||⦀|∼|~|\bis\s+similar\s+to\b)
| (?P<congruent>≡|≅|\bis\s+congruent\s+to\b)
| (?P<parallel>∥|//|\|\||\b(?:is|are)\s+parallel\s+to\b)
| (?P<perpendicular>⟂|⊥|\b(?:is|are)\s+perpendicular\s+to\b)
| (?P<equal>=|\bis\s+equal\s+to\b|\bis\s+(?=\d)|\bmeasures\s+(?=\d))
| (?P<sign>[+\-−–])
| (?P<times>[×*·])
| (?P<over>[÷/])
| (?P<open>\() | (?P<close>\))
| (?P<degree>°|º|\bdegrees?\b)
| (?P<letter>(?<![A-Za-z])[a-z](?![A-Za-z'])[0-9₀-₉]?)
| (?P<word>[A-Za-z]+(?:'[a-z]+)?)
| (?P<other>\S)
""", re.X)
SMALL = {"½": Fraction(1, 2), "⅓": Fraction(1, 3), "¼": Fraction(1, 4), "⅔": Fraction(2, 3), "¾": Fraction(3, 4)}
HAT = re.compile(rf"({POINT})({POINT})\u0302({POINT})")


def points_in(text):
    return tuple(re.findall(POINT, text))


@dataclass(frozen=True)
class Token:
    kind: str
    text: str
    begin: int
    end: int


def tokens(text):
    """KL̂M is ∠KLM; a number may have a point or a comma inside it, and commas elsewhere separate."""
    text = HAT.sub(r"∠\1\2\3", text)
    return [Token(m.lastgroup, m[0], m.start(), m.end()) for m in TOKEN.finditer(text)]


def angle_key(points):
    a, b, c = points
    return ("angle", b, tuple(sorted((a, c))))


def number_of(text):
    """Also 23⅓ and 25 5/7."""
    if text[-1] in SMALL:
        return SMALL[text[-1]] + Fraction(text[:-1] or 0)
    return sum(Fraction(part) for part in text.replace(",", ".").split())


class Form(dict):
    """A linear form: {unknown: coefficient}, the constant under the key 1."""

    def plus(self, other, factor=1):
        total = Form(self)
        for key, value in other.items():
            total[key] = total.get(key, Fraction(0)) + factor * value
        return Form({k: v for k, v in total.items() if v})

    def times(self, factor):
        return Form({k: v * factor for k, v in self.items() if v * factor})

    def constant(self):
        """The number that it is, or None where an unknown occurs."""
        return self.get(1, Fraction(0)) if all(k == 1 for k in self) else None


class NoExpression(Exception):
    pass


class Reader:
    def __init__(self, text):
        self.tokens = tokens(text)
        self.place = 0

    def peek(self, ahead=0):
        at = self.place + ahead
        return self.tokens[at].kind if at < len(self.tokens) else "end"

    def take(self):
        self.place += 1
        return self.tokens[self.place - 1]

    def expression(self):
        factor = 1
        if self.peek() == "sign":
            factor = 1 if self.take().text == "+" else -1
        total = self.product().times(factor)
        while self.peek() == "sign":
            mark = self.place
            factor = 1 if self.take().text == "+" else -1
            try:
                total = total.plus(self.product(), factor)
            except NoExpression:
                self.place = mark
                break
        return total

    def product(self):
        value = self.factor()
        while True:
            mark = self.place
            try:
                if self.peek() == "times":
                    self.take()
                    value = self.multiplied(value, self.factor())
                elif self.peek() == "over":
                    self.take()
                    divisor = self.factor().constant()
                    if not divisor:
                        raise NoExpression
                    value = value.times(1 / divisor)
                elif value.constant() is not None and self.peek() in ("angle", "reflex", "corner", "letter", "segment", "open"):
                    value = self.multiplied(value, self.factor())
                else:
                    return value
            except NoExpression:
                self.place = mark
                return value

    @staticmethod
    def multiplied(left, right):
        if left.constant() is not None:
            return right.times(left.constant())
        if right.constant() is not None:
            return left.times(right.constant())
        raise NoExpression

    def factor(self):
        kind = self.peek()
        if kind == "number":
            size = number_of(self.take().text)
            value = Form({1: size}) if size else Form()
        elif kind == "angle":
            value = Form({angle_key(points_in(self.take().text.split("∠")[-1].replace("ngle", ""))[-3:]): Fraction(1)})
        elif kind == "reflex":
            value = Form({1: Fraction(360), angle_key(points_in(self.take().text)[-3:]): Fraction(-1)})
        elif kind == "corner":
            value = Form({("corner", points_in(self.take().text)[-1]): Fraction(1)})
        elif kind == "segment":
            value = Form({("length", tuple(sorted(points_in(self.take().text)))): Fraction(1)})
        elif kind == "letter":
            word = self.take().text
            if word == "m" and self.peek() in ("angle", "corner"):
                return self.factor()
            value = Form({("number", word): Fraction(1)})
        elif kind == "open":
            mark = self.place
            self.take()
            try:
                value = self.expression()
                if self.peek() != "close":
                    raise NoExpression
            except NoExpression:
                self.place = mark
                raise
            self.take()
        else:
            raise NoExpression
        while self.peek() == "degree":
            self.take()
        return value


@dataclass
class Chain:
    """Expressions set equal, and where they stand in the text."""
    forms: list
    begin: int
    end: int

    def equations(self):
        return [left.plus(right, -1) for left, right in zip(self.forms, self.forms[1:])]


def chains(text):
    """All chains of at least two expressions, also with ≅ between angles or segments."""
    reader, found = Reader(text), []
    while reader.peek() != "end":
        start, forms = reader.place, []
        try:
            forms.append(reader.expression())
            while reader.peek() == "equal" or (reader.peek() == "congruent" and reader.peek(1) in ("angle", "segment", "letter")):
                mark = reader.place
                reader.take()
                try:
                    forms.append(reader.expression())
                except NoExpression:
                    reader.place = mark
                    break
        except NoExpression:
            pass
        if len(forms) > 1:
            found.append(Chain(forms, reader.tokens[start].begin, reader.tokens[reader.place - 1].end))
        else:
            reader.place = start + 1
    return found


def relations(text):
    """(kind, points, points): parallel and perpendicular lines, congruent and similar triangles, points round a centre,
    a line that touches a circle; and     (concyclic, points)."""
    tokens_, found = tokens(text), []
    for left, middle, right in zip(tokens_, tokens_[1:], tokens_[2:]):
        kind = middle.kind
        if kind in ("parallel", "perpendicular") and left.kind == right.kind == "segment":
            found.append((kind, points_in(left.text), points_in(right.text)))
        shapes = ("triangle", "points")
        if kind in ("congruent", "similar") and left.kind in shapes and right.kind in shapes:
            found.append((kind, points_in(left.text)[-3:], points_in(right.text)[-3:]))
    for told in re.finditer(rf"((?:{POINT}(?:\s*,\s*|\s+and\s+))+{POINT}) lie on (?:a|the) circle with centre ({POINT})", text):
        found.append(("round", points_in(told[1]), (told[2],)))
    for told in re.finditer(rf"({POINT}{POINT}) touches (?:the )?circle .*?at ({POINT})", text):
        found.append(("touches", points_in(told[1]), (told[2],)))
    if re.search(r"concyclic|on (?:a|one|the same) circle|cyclic quad|\bis cyclic\b|is a cyclic", text):
        listed = re.search(rf"(?:{POINT}(?:\s*,\s*|\s+and\s+|\s*)){{4,}}", text)
        if listed:
            found.append(("concyclic", points_in(listed[0])))
    for both in re.finditer(rf"[Tt]riangles? ({POINT}{POINT}{POINT}) and ({POINT}{POINT}{POINT}) are (similar|congruent)", text):
        found.append((both[3], points_in(both[1]), points_in(both[2])))
    return found


def numbers(text):
    """Every number that stands in the text, line numbers and "(3)" included."""
    return [number_of(t.text) for t in tokens(text) if t.kind == "number"]


class Names:
    """When two names mean one thing: arms of an angle may be named by any point of their ray, lines by any two of theirs.
    Which points lie together comes from a figure; without one, names are compared as they stand."""

    def __init__(self, figure=None):
        self.figure = figure

    def known(self, *points):
        return self.figure is not None and all(p in self.figure.at for p in points)

    def arm(self, vertex, point):
        if not self.known(vertex, point):
            return point
        def on_ray(other):
            u, v = self.figure.at[point] - self.figure.at[vertex], self.figure.at[other] - self.figure.at[vertex]
            w = u.conjugate() * v
            return abs(v) > 1e-9 and w.real > 0 and abs(w.imag) < 1e-7 * abs(u) * abs(v)
        return min(p for p in self.figure.at if p != vertex and on_ray(p))

    def line(self, a, b):
        if not self.known(a, b):
            return tuple(sorted((a, b)))
        return tuple(sorted(p for p in self.figure.at if p in (a, b) or self.figure.off_line(a, b, p) < 1e-7))[:2]

    def unknown(self, key):
        if key == 1 or key[0] != "angle":
            return key
        return ("angle", key[1], tuple(sorted(self.arm(key[1], p) for p in key[2])))

    def form(self, form):
        total = Form()
        for key, value in form.items():
            name = self.unknown(key)
            if name != 1 and name[0] == "angle" and name[2][0] == name[2][1]:
                continue  # both arms one ray: no angle
            if name != 1 and name[0] == "angle" and self.known(name[1], *name[2]) and \
                    abs(self.figure.angle(name[2][0], name[1], name[2][1]) - 180) < 1e-7 and \
                    self.figure.off_line(name[2][0], name[1], name[2][1]) < 1e-9:
                total = total.plus(Form({1: 180 * value}))
                continue
            total = total.plus(Form({name: value}))
        return total

    def relation(self, relation):
        kind = relation[0]
        if kind in ("parallel", "perpendicular"):
            return (kind, frozenset((self.line(*relation[1]), self.line(*relation[2]))))
        if kind == "touches":
            return (kind, self.line(*relation[1]), relation[2])
        if kind in ("congruent", "similar"):
            return (kind, frozenset(zip(relation[1], relation[2])))
        return (kind, frozenset(relation[1]))
