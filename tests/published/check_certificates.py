#!/usr/bin/env python3
"""Checks the exact values of the adventitious items, and each certificate anew, without any code of ours.

    python3 tests/published/check_certificates.py build/anglewright

The items, their answers and their figures are those of theorems.json and classroom.json (their sources stand there). An
item holds when its published answer is proved, or certified by trigonometry. A certificate is judged in four ways:

  figure      what the rules are said to show, and the condition, hold in the published figure, measured from its
              coordinates
  digits      with the value put in, both sides of the condition agree to 60 digits (sine by its power series)
  residues    they agree modulo three large primes that have the roots of unity needed: integer arithmetic, in which equal
              algebraic numbers stay equal, and different ones would agree only by an accident of about 1 in 10^18
  only one    between the stated limits the two sides change order exactly once (a fine grid of values)

The wrong twins: one given changed by a degree, so that the value is no fraction of a degree, and one given left out.
Nothing of theirs may be certified.
"""
import json
import math
import random
import re
import subprocess
import sys
from decimal import Decimal, getcontext
from fractions import Fraction
from pathlib import Path

HERE = Path(__file__).resolve().parent
getcontext().prec = 75

# Beside the adventitious ones, by id: classroom problems whose usual solution draws a line that no rule draws.
CLASSROOM = ("aime-2003-I-10", "amc10b-2022-20")


def ask(program, text):
    run = subprocess.run([program, "prove", "--json", "--limit", "10", "-"], input=text, capture_output=True, text=True)
    return json.loads(run.stdout)


# ---- formulas as they are printed -------------------------------------------------------------------------------------

RAISED = {"²": 2, "³": 3, "⁴": 4}
THIRDS = {"⅓": Fraction(1, 3), "⅔": Fraction(2, 3), "½": Fraction(1, 2)}


def number(text):
    text = text.strip()
    if text.startswith("(") and text.endswith(")"):
        return number(text[1:-1])
    total = Fraction(0)
    for part in text.split():
        third = Fraction(0)
        if part[-1] in THIRDS:
            third, part = THIRDS[part[-1]], part[:-1]
        total += third + (Fraction(part) if part else 0)
    return total


def linear(text):
    """"2x − 51°" → ({"x": 2}, −51)."""
    letters, constant = {}, Fraction(0)
    for sign, part in re.findall(r"([+−]?)\s*([^+−]+)", text):
        factor = -1 if sign == "−" else 1
        part = part.strip()
        if part.endswith("°"):
            constant += factor * number(part[:-1])
        else:
            letter = re.search(r"[a-z]$", part).group()
            coefficient = part[: -1].strip()
            letters[letter] = letters.get(letter, 0) + factor * (number(coefficient) if coefficient else 1)
    return letters, constant


def products(text):
    """"3 sin x · sin² 15° + …" → [(3, [angle, …]), …]."""
    found = []
    for term in re.split(r" \+ (?![^(]*\))", text):
        factor, sines = Fraction(1), []
        for piece in term.split(" · "):
            plain, _, inside = piece.partition("sin")
            if plain.strip():
                factor *= number(plain)
            if inside:
                raised, inside = RAISED.get(inside[0], 1), inside.lstrip("²³⁴").strip()
                angle = inside[1:-1] if inside.startswith("(") else inside
                sines += [linear(angle)] * raised
        found.append((factor, sines))
    return found


def sides(equation):
    left, right = equation.split(" = ")
    return products(left) + [(-factor, sines) for factor, sines in products(right)]


# ---- digits -----------------------------------------------------------------------------------------------------------

def pi():
    # Machin: pi/4 = 4 arctan(1/5) − arctan(1/239)
    def arctan_of_inverse(n):
        total, power, k = Decimal(0), Decimal(1) / n, 1
        while power > Decimal(10) ** -80:
            total += power / k if k % 4 == 1 else -power / k
            power /= n * n
            k += 2
        return total
    return 4 * (4 * arctan_of_inverse(5) - arctan_of_inverse(239))


PI = pi()


def sine(degrees):
    x = Decimal(degrees.numerator) / Decimal(degrees.denominator) % 360 * PI / 180
    total, term, k = Decimal(0), x, 1
    while abs(term) > Decimal(10) ** -80:
        total += term
        term *= -x * x / ((k + 1) * (k + 2))
        k += 2
    return total


def value_in_digits(terms):
    total = Decimal(0)
    for factor, sines in terms:
        product = Decimal(factor.numerator) / Decimal(factor.denominator)
        for letters, constant in sines:
            assert not letters, "a letter is left in a condition with its value"
            product *= sine(constant)
        total += product
    return total


# ---- residues ---------------------------------------------------------------------------------------------------------

def is_prime(n):
    if n % 2 == 0:
        return n == 2
    d, s = n - 1, 0
    while d % 2 == 0:
        d, s = d // 2, s + 1
    for a in (2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37):  # enough below 3.3e24 (Sorenson, Webster 2015)
        if a % n == 0:
            continue
        x = pow(a, d, n)
        if x in (1, n - 1):
            continue
        for _ in range(s - 1):
            x = x * x % n
            if x == n - 1:
                break
        else:
            return False
    return True


def root_of_unity(order, prime):
    factors = {p for p in range(2, order + 1) if order % p == 0 and is_prime(p)}
    for g in range(2, 1000):
        root = pow(g, (prime - 1) // order, prime)
        if all(pow(root, order // p, prime) != 1 for p in factors):
            return root
    raise AssertionError("no root of unity")


def vanishes_modulo(terms, prime, order):
    root = root_of_unity(order, prime)
    i = pow(root, order // 4, prime)
    total = 0
    for factor, sines in terms:
        product = factor.numerator * pow(factor.denominator, -1, prime)
        for _, constant in sines:
            k = constant * order / 360
            assert k.denominator == 1
            up = pow(root, int(k) % order, prime)
            product = product * (up - pow(up, -1, prime)) * pow(2 * i, -1, prime) % prime
        total += product
    return total % prime == 0


def vanishes_in_residues(terms):
    order = 4
    for _, sines in terms:
        for _, constant in sines:
            order = math.lcm(order, (constant / 360).denominator)
    prime, found = 10 ** 18 // order * order + 1, 0
    while found < 3:
        prime += order
        if is_prime(prime):
            found += 1
            if not vanishes_modulo(terms, prime, order):
                return False
    return True


# ---- the figure -------------------------------------------------------------------------------------------------------

def angle(points, name):
    p, v, q = (points[letter] for letter in name)
    a = math.atan2(p[1] - v[1], p[0] - v[0]) - math.atan2(q[1] - v[1], q[0] - v[0])
    a = abs(math.degrees(a)) % 360
    return min(a, 360 - a)


def relation_gap(text, points, values):
    """How far "∠KUV = 160° − x" or "QR = 3QS" is from true in the figure."""
    def side(part):
        total = 0.0
        for sign, piece in re.findall(r"([+−]?)\s*([^+−]+)", part):
            piece = piece.strip()
            factor = -1.0 if sign == "−" else 1.0
            if piece.endswith("°"):
                total += factor * float(number(piece[:-1]))
                continue
            what = re.search(r"∠[A-Z]{3}$|[A-Z]{2}$|[a-z]$", piece)
            if not what:
                total += factor * float(number(piece))
                continue
            name, coefficient = what.group(), piece[: what.start()].strip()
            factor *= float(number(coefficient)) if coefficient else 1.0
            if name[0] == "∠":
                total += factor * angle(points, name[1:])
            elif name.islower():
                total += factor * values[name]
            else:
                total += factor * math.dist(points[name[0]], points[name[1]])
        return total
    left, right = text.split(" = ")
    return abs(side(left) - side(right))


def measured_gap(equation, values):
    total, size = 0.0, 0.0
    for factor, sines in sides(equation):
        product = float(factor)
        for letters, constant in sines:
            degrees = float(constant) + sum(float(c) * values[letter] for letter, c in letters.items())
            product *= math.sin(math.radians(degrees))
        total += product
        size = max(size, abs(product))
    return abs(total) / size


def changes_of_order(equation, letter, low, high, values):
    terms = sides(equation)
    steps, last, count = 4001, 0, 0
    for k in range(1, steps):
        here = dict(values, **{letter: low + (high - low) * (k - 0.5) / steps})
        total = 0.0
        for factor, sines in terms:
            product = float(factor)
            for letters, constant in sines:
                product *= math.sin(math.radians(float(constant) + sum(float(c) * here[l] for l, c in letters.items())))
            total += product
        sign = (total > 0) - (total < 0)
        if sign and last and sign != last:
            count += 1
        last = sign or last
    return count


def objections(certificate, points):
    values = {}
    for step in certificate["steps"]:
        name = step["angle"]
        values[step["letter"]] = angle(points, name[1:]) if name.startswith("∠") else float(Fraction(step["value"]))
    for relation in certificate["relations"]:
        if relation_gap(relation, points, values) > 1e-5:
            yield f"“{relation}” is not so in the published figure"
    for step in certificate["steps"]:
        if measured_gap(step["condition"], values) > 1e-6:
            yield f"“{step['condition']}” is not so in the published figure"
        low, high = (float(Fraction(bound)) for bound in step["between"])
        if changes_of_order(step["condition"], step["letter"], low, high, values) != 1:
            yield f"“{step['condition']}” does not have one solution"
        if "value" not in step:
            continue
        if abs(float(Fraction(step["value"])) - values[step["letter"]]) > 1e-5:
            yield f"{step['letter']} is not {step['value']} in the published figure"
        with_value = sides(step["with_value"])
        if all(not letters for _, sines in with_value for letters, _ in sines):
            if abs(value_in_digits(with_value)) > Decimal(10) ** -60:
                yield f"“{step['with_value']}” is not so to 60 digits"
            if not vanishes_in_residues(with_value):
                yield f"“{step['with_value']}” is not so modulo a prime"
    for identity in certificate["identities"]:
        if not vanishes_in_residues(sides(identity)):
            yield f"“{identity}” is not so modulo a prime"


# ---- items and twins --------------------------------------------------------------------------------------------------

def text_of(facts, wanted):
    return "\n".join(facts) + f"\nfind: {wanted}\n"


def main():
    program = sys.argv[1]
    items = [i for i in json.loads((HERE / "theorems.json").read_text(encoding="utf-8")) if i["kind"] == "adventitious"]
    items += [i for i in json.loads((HERE / "classroom.json").read_text(encoding="utf-8")) if i["id"] in CLASSROOM]
    wrong, proved, certified, helped, twins = [], 0, 0, 0, 0
    rng = random.Random(1)
    for item in items:
        answer = ask(program, text_of(item["facts"], item["ask"]))
        value = answer.get("value")
        if value is None or Fraction(value) != Fraction(str(item["answer"])):
            wrong.append(f"{item['id']}: {answer['verdict']}, value {value}, published {item['answer']}")
            continue
        if answer["verdict"] == "proved":
            proved += 1
        elif answer["verdict"] == "beyond-rules" and answer.get("evidence") == "trigonometry":
            certified += 1
            for certificate in answer["certificates"]:
                wrong += [f"{item['id']}: {o}" for o in objections(certificate, item["points"])]
            for unlock in answer.get("unlocked_by", []):
                if "lines" in unlock:
                    helped += 1
                    add = "add: " + "; ".join(unlock["lines"]) + "\n"
                    with_line = ask(program, text_of(item["facts"], item["ask"]) + add)
                    if with_line["verdict"] != "proved" or Fraction(with_line["value"]) != Fraction(str(item["answer"])):
                        wrong.append(f"{item['id']} with “{add.strip()}”: {with_line['verdict']}")
        else:
            wrong.append(f"{item['id']}: {answer['verdict']} with a value but without evidence")
        # One number given changed by a degree: measured values are hardly ever fractions of a degree then.
        numbers = [k for k, fact in enumerate(item["facts"]) if re.match(r"angle \w+ = \d+$", fact)]
        k = rng.choice(numbers)
        name, size = item["facts"][k].split(" = ")
        changed = item["facts"][:k] + [f"{name} = {int(size) + 1}"] + item["facts"][k + 1:]
        twin = ask(program, text_of(changed, item["ask"]))
        twins += 1
        if "evidence" in twin:
            figure = twin["figures"][0]
            if abs(float(Fraction(twin["value"])) - figure["value"]) > 1e-7:
                wrong.append(f"{item['id']} with {changed[k]}: certified {twin['value']}, measured {figure['value']}")
            for certificate in twin["certificates"]:
                wrong += [f"{item['id']} with {changed[k]}: {o}" for o in objections(certificate, figure["points"])]
        left_out = item["facts"][:k] + item["facts"][k + 1:]
        twin = ask(program, text_of(left_out, item["ask"]))
        twins += 1
        if twin["verdict"] == "beyond-rules" and "evidence" in twin:
            wrong.append(f"{item['id']} without {item['facts'][k]}: certified {twin['value']}")
    print(f"{len(items)} items: {proved} proved, {certified} certified by trigonometry, "
          f"{helped} of them proved with a line that the answer names; {twins} changed ones.")
    for line in wrong:
        print("WRONG:", line)
    of_all = len(items) + twins
    print(f"\n{max(0, of_all - len(wrong))} passed, {len(wrong)} failed")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
