"""What a figure shows of a fact phrase, measured from its coordinates: plain trigonometry, written for the checks that
judge the program's figures and sharing nothing with the program. Knows the phrases of README.md.

`Figure(points).meets(facts)` says by how much the facts are missed; `Figure(points).value(quantity, facts)` measures a
quantity; unknown numbers are solved for from the facts (least squares).
"""
import math
import re

FAR = math.inf
POINT = r"[A-Z]\d?"


def points_in(text):
    return re.findall(POINT, text)


class Unreadable(Exception):
    """A phrase that this reader does not know."""


class Figure:
    def __init__(self, points):
        self.at = {name: complex(*place) for name, place in points.items()}
        places = list(self.at.values())
        self.size = max((abs(p - q) for p in places for q in places), default=1.0) or 1.0
        self.circles = {}   # centre: a point of the circle

    # Elements: all in degrees or in parts of the figure's size.
    def angle(self, a, b, c):
        u, v = self.at[a] - self.at[b], self.at[c] - self.at[b]
        if abs(u) < 1e-12 or abs(v) < 1e-12:
            return math.nan
        return abs(math.degrees(math.atan2((v * u.conjugate()).imag, (v * u.conjugate()).real)))

    def length(self, a, b):
        return abs(self.at[a] - self.at[b])

    def turn(self, a, b, c):
        """The sine of the turn at a: positive when c is left of the line from a to b."""
        u, v = self.at[b] - self.at[a], self.at[c] - self.at[a]
        return (u.conjugate() * v).imag / (abs(u) * abs(v)) if abs(u) > 1e-12 and abs(v) > 1e-12 else 0.0

    def off_line(self, a, b, c):
        p, q, r = sorted((a, b, c), key=lambda k: (self.at[k].real, self.at[k].imag))
        longest = max((self.length(p, q), p, q), (self.length(q, r), q, r), (self.length(p, r), p, r))
        _, s, t = longest
        u = next(k for k in (a, b, c) if k not in (s, t))
        return abs(((self.at[t] - self.at[s]).conjugate() * (self.at[u] - self.at[s])).imag) / (longest[0] * self.size)

    def ordered(self, names):
        """Along one line in this order."""
        worst = 0.0
        for p, q, r in zip(names, names[1:], names[2:]):
            worst = max(worst, self.off_line(p, q, r))
            u, v = self.at[q] - self.at[p], self.at[r] - self.at[q]
            if (u.conjugate() * v).real <= 0:
                return FAR
        return worst

    def centre(self, a, b, c):
        z, w, u = self.at[a], self.at[b], self.at[c]
        w, u = w - z, u - z
        d = 2 * (w.real * u.imag - w.imag * u.real)
        if abs(d) < 1e-14 * self.size**2:
            return None
        s, t = abs(w) ** 2, abs(u) ** 2
        return z + complex((u.imag * s - w.imag * t) / d, (w.real * t - u.real * s) / d)

    def on_circle(self, names, centre=None):
        if len(names) < 1:
            return 0.0
        middle = self.at[centre] if centre else self.centre(*names[:3])
        if middle is None:
            return FAR
        radii = [abs(self.at[n] - middle) for n in names]
        return (max(radii) - min(radii)) / self.size

    def cyclic(self, names, middle):
        turns = [math.atan2((self.at[n] - middle).imag, (self.at[n] - middle).real) for n in names]
        for sign in (1, -1):
            round_once = [sign * (t - turns[0]) % (2 * math.pi) for t in turns]
            if all(x < y for x, y in zip(round_once, round_once[1:])):
                return 0.0
        return FAR

    def convex(self, names):
        ring = list(names) + list(names[:2])
        turns = [self.turn(*ring[i:i + 2], ring[i + 2]) for i in range(len(names))]
        if not (all(t > 1e-9 for t in turns) or all(t < -1e-9 for t in turns)):
            return FAR
        total = sum(180 - self.angle(ring[i], ring[i + 1], ring[i + 2]) for i in range(len(names)))
        return 0.0 if abs(total - 360) < 1e-3 else FAR

    def simple(self, names):
        n = len(names)
        for i in range(n):
            for j in range(i + 2, n):
                if (j + 1) % n == i:
                    continue
                a, b, c, d = names[i], names[i + 1], names[j], names[(j + 1) % n]
                if self.turn(a, b, c) * self.turn(a, b, d) < 0 and self.turn(c, d, a) * self.turn(c, d, b) < 0:
                    return FAR
        return 0.0

    def winds_round(self, names, p):
        total = 0.0
        for a, b in zip(names, names[1:] + names[:1]):
            u, v = self.at[a] - self.at[p], self.at[b] - self.at[p]
            total += math.atan2((u.conjugate() * v).imag, (u.conjugate() * v).real)
        return abs(total) > math.pi

    def direction(self, a, b, c, d, turned):
        u, v = self.at[b] - self.at[a], self.at[d] - self.at[c]
        w = u.conjugate() * v / (abs(u) * abs(v))
        return abs(w.real if turned else w.imag)

    # Relations: linear in measured quantities and unknown numbers.
    def expression(self, text):
        """(measured value, {number: coefficient}, are there lengths)."""
        text = text.replace("°", "").replace("−", "-").strip()
        total, numbers, lengths = 0.0, {}, False
        pattern = re.compile(r"\s*([+-]?)\s*(\d+(?:\.\d+)?(?:/\d+)?)?\s*\*?\s*"
                             r"((?:reflex\s+)?angle\s+[A-Z]\d?[A-Z]\d?[A-Z]\d?|[A-Z]\d?[A-Z]\d?|[a-z]\d?)?")
        place = 0
        while place < len(text):
            found = pattern.match(text, place)
            if not found or found.end() == place or (found[2] is None and found[3] is None):
                raise Unreadable(text)
            place = found.end()
            factor = 1.0
            if found[2]:
                top, _, bottom = found[2].partition("/")
                factor = float(top) / float(bottom or 1)
            if found[1] == "-":
                factor = -factor
            what = found[3]
            if what is None:
                total += factor
            elif "angle" in what:
                size = self.angle(*points_in(what.split("angle")[1]))
                total += factor * (360 - size if what.startswith("reflex") else size)
            elif what[0].isupper():
                total += factor * self.length(*points_in(what))
                lengths = True
            else:
                numbers[what] = numbers.get(what, 0.0) + factor
        return total, numbers, lengths

    def equations(self, facts):
        """Of all relations: (difference, coefficients of numbers, scale, sign)."""
        for fact in facts:
            if not is_relation(fact):
                continue
            parts = re.split(r"(<|>|=)", relation_of(fact))
            for left, sign, right in zip(parts[::2], parts[1::2], parts[2::2]):
                (p, m, lengths), (q, n, more) = self.expression(left), self.expression(right)
                numbers = {k: m.get(k, 0) - n.get(k, 0) for k in {*m, *n}}
                yield p - q, numbers, (self.size if lengths or more else 57.3), sign

    def solve_numbers(self, facts):
        rows = [(d, n) for d, n, _, sign in self.equations(facts) if n and sign == "="]
        names = sorted({k for _, n in rows for k in n})
        if not names:
            return {}
        size = len(names)
        normal = [[0.0] * (size + 1) for _ in names]
        for difference, numbers in rows:
            row = [numbers.get(k, 0.0) for k in names]
            for i in range(size):
                for j in range(size):
                    normal[i][j] += row[i] * row[j]
                normal[i][size] -= row[i] * difference
        for i in range(size):
            pivot = max(range(i, size), key=lambda r: abs(normal[r][i]))
            if abs(normal[pivot][i]) < 1e-12:
                return {}
            normal[i], normal[pivot] = normal[pivot], normal[i]
            for r in range(size):
                if r != i:
                    f = normal[r][i] / normal[i][i]
                    normal[r] = [x - f * y for x, y in zip(normal[r], normal[i])]
        return {k: normal[i][size] / normal[i][i] for i, k in enumerate(names)}

    def meets(self, facts):
        """The largest violation of an equation (relative), or infinity where a position or an inequality fails."""
        for fact in facts:  # which circle belongs to which centre
            found = re.match(rf"circle:? centre ({POINT}) through (.*)", fact)
            if found:
                self.circles[found[1]] = points_in(found[2].split("(")[0])[0]
            found = re.match(rf"tangent:? line {POINT}{POINT} touches circle ({POINT}) at ({POINT})", fact)
            if found:
                self.circles.setdefault(found[1], found[2])
        worst = max((self.misses(f) for f in facts if not is_relation(f)), default=0.0)
        numbers = self.solve_numbers(facts)
        for difference, unknown, scale, sign in self.equations(facts):
            value = difference + sum(c * numbers.get(k, math.nan) for k, c in unknown.items())
            if sign == "=":
                worst = max(worst, abs(value) / scale if value == value else FAR)
            elif not (value < 0 if sign == "<" else value > 0):
                worst = FAR
        return worst

    def holds(self, claims, facts):
        """Whether every claim of "a; b" holds to 1e-6 in this figure of the facts."""
        return self.meets([*facts, *(c.strip() for c in claims.split(";"))]) < 1e-6

    def value(self, quantity, facts=()):
        measured, unknown, _ = self.expression(quantity)
        numbers = self.solve_numbers(facts) if unknown else {}
        return measured + sum(c * numbers.get(k, math.nan) for k, c in unknown.items())

    def misses(self, fact):
        kind, _, rest = fact.partition(":")
        if not rest:  # goals may stand without the colon
            kind, _, rest = fact.partition(" ")
        p = points_in(rest.split("(")[0])
        bracket = rest.split("(")[1] if "(" in rest else ""
        if kind == "triangle":
            return 0.0 if abs(self.turn(*p)) > 1e-9 else FAR
        if kind == "acute":
            return 0.0 if max(self.angle(*p), self.angle(p[1], p[2], p[0]), self.angle(p[2], p[0], p[1])) < 90 else FAR
        if kind == "line":
            return self.ordered(points_in(rest))
        if kind == "collinear":
            return max(self.off_line(p[0], p[1], q) for q in p[2:])
        if kind == "ray":
            p = points_in(rest)
            u, v = self.at[p[2]] - self.at[p[1]], self.at[p[0]] - self.at[p[1]]
            return self.off_line(*p) if (u.conjugate() * v).real > 0 else FAR
        if kind == "parallel":
            apart = max(self.off_line(p[0], p[1], p[2]), self.off_line(p[0], p[1], p[3]))
            return self.direction(*p, False) if apart > 1e-9 else FAR
        if kind == "perpendicular":
            return self.direction(*p, True)
        if kind == "meet":
            p = points_in(rest)
            return max(self.off_line(p[0], *p[1:3]), self.off_line(p[0], *p[3:5]))
        if kind == "midpoint":
            return abs(2 * self.at[p[0]] - self.at[p[1]] - self.at[p[2]]) / self.size
        if kind == "isosceles":
            a, b, c = (self.length(*s) for s in ((p[0], p[1]), (p[1], p[2]), (p[2], p[0])))
            return min(abs(a - b), abs(b - c), abs(c - a)) / self.size
        if kind in ("circle", "concyclic"):
            centre = p.pop(0) if "centre" in rest else None
            middle = self.at[centre] if centre else self.centre(*p[:3])
            if middle is None:
                return FAR
            return max(self.on_circle(p, centre), self.cyclic(p, middle) if "cyclic" in bracket else 0.0)
        if kind == "tangent":
            return self.tangent(rest)
        if kind == "bisects":
            ray, _, angle = rest.partition("bisects")
            (_, d), (a, b, c) = points_in(ray), points_in(angle)
            if abs(self.angle(a, b, d) + self.angle(d, b, c) - self.angle(a, b, c)) > 1e-3:
                return FAR
            return abs(self.angle(a, b, d) - self.angle(d, b, c)) / 57.3
        if kind == "polygon":
            return self.polygon(points_in(rest.split()[0]), rest.split("in this")[0].split()[1:])
        if kind == "convex":
            return self.convex(p)
        if kind in ("inside", "outside"):
            return 0.0 if self.inside(rest) == (kind == "inside") else FAR
        if kind == "sides":
            a, b, c, d = points_in(rest)
            product = self.turn(c, d, a) * self.turn(c, d, b)
            return 0.0 if (product > 0 if "same" in rest else product < 0) else FAR
        raise Unreadable(fact)

    def tangent(self, rest):
        found = re.search(rf"line ({POINT})({POINT}) touches circle ((?:{POINT})+) at ({POINT})", rest)
        a, b, circle, touch = found[1], found[2], points_in(found[3]), found[4]
        worst = 0.0 if touch in (a, b) else self.off_line(a, b, touch)
        if len(circle) == 1:
            middle, some = self.at[circle[0]], self.circles.get(circle[0])
        else:
            middle, some = self.centre(*circle), circle[0]
        if middle is None:
            return FAR
        if some:
            worst = max(worst, abs(abs(self.at[some] - middle) - abs(self.at[touch] - middle)) / self.size)
        other = a if b == touch else b
        u, v = self.at[other] - self.at[touch], middle - self.at[touch]
        return max(worst, abs((u.conjugate() * v).real) / (abs(u) * abs(v)))

    def polygon(self, p, kinds):
        n, worst = len(p), 0.0
        ring = p + p[:2]
        sides = [self.length(ring[i], ring[i + 1]) for i in range(n)]
        angles = [self.angle(*ring[i:i + 3]) for i in range(n)]
        for kind in (k.strip(",") for k in kinds):
            if kind == "simple":
                worst = max(worst, self.simple(p))
                continue
            worst = max(worst, self.convex(p) if n > 3 else 0.0)
            if kind in ("regular", "rhombus", "square"):
                worst = max(worst, (max(sides) - min(sides)) / self.size)
            if kind in ("regular", "rectangle", "square"):
                worst = max(worst, (max(angles) - min(angles)) / 57.3)
            if kind in ("parallelogram", "rectangle", "rhombus", "square"):
                worst = max(worst, abs(self.at[p[0]] - self.at[p[1]] + self.at[p[2]] - self.at[p[3]]) / self.size)
            if kind not in ("regular", "rhombus", "square", "rectangle", "parallelogram", "convex"):
                raise Unreadable(kind)
        return worst

    def inside(self, rest):
        point, _, where = rest.partition("side")
        p = points_in(point)[0]
        q = points_in(where)
        if "circle" in where:
            middle = self.at[q[0]] if len(q) == 1 else self.centre(*q)
            radius = self.length(q[0], self.circles[q[0]]) if len(q) == 1 else abs(self.at[q[0]] - middle)
            return abs(self.at[p] - middle) < radius
        if "angle" in where and "triangle" not in where:
            a, b, c = q
            return abs(self.angle(a, b, p) + self.angle(p, b, c) - self.angle(a, b, c)) < 1e-6
        return self.winds_round(q, p)


def is_relation(fact):
    head = fact.partition(":")[0]
    return bool(re.search(r"[<>=]", fact)) and head not in ("circle",)


def relation_of(fact):
    fact = re.sub(r"^(equal lengths|lengths):?\s*", "", fact)
    return fact
