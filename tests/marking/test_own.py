#!/usr/bin/env python3
"""Tests of this folder's own reader and algebra, on ladders and lines made by hand: each leak has a clean twin."""
import sys
import unittest
from fractions import Fraction
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from claims import Names, angle_key, chains, relations  # noqa: E402
from leaks import Question, Span, leaks  # noqa: E402
from pieces_data import Figure, holds, statement  # noqa: E402

KLQ, KQL, LKQ = (angle_key(p) for p in ("KLQ", "KQL", "LKQ"))


def only_chain(text):
    found = chains(text)
    assert len(found) == 1, found
    return found[0].forms


class Reading(unittest.TestCase):
    def test_a_chain(self):
        forms = only_chain("∠KLQ = ∠LQK = (180 − 52)/2 = 64, isosceles triangle KLQ, angle sum")
        self.assertEqual(forms[0], {KLQ: 1})
        self.assertEqual(forms[1], {KQL: 1})
        self.assertEqual([f.constant() for f in forms[2:]], [64, 64])

    def test_products_and_halves(self):
        self.assertEqual([f.constant() for f in only_chain("angle LKM = 180 - 2(40) = 110")[1:]], [100, 110])
        self.assertEqual(only_chain("m∠KLQ = ½ m∠KQL = 32.5°")[1], {KQL: Fraction(1, 2)})
        self.assertEqual(only_chain("2 m∠KLQ + 52 = 180")[0], {KLQ: 2, 1: 52})
        self.assertEqual(only_chain("3x + 10 + 2x + 20 = 180")[0], {("number", "x"): 5, 1: 30})
        self.assertEqual(only_chain("∠KLQ = 180° ÷ 5")[1].constant(), 36)

    def test_names_of_angles(self):
        for name in ("∠KLQ", "∠QLK", "angle KLQ", "<KLQ", "KL̂Q", "m∠KLQ", "ANGLE KLQ"):
            self.assertEqual(only_chain(name + " = 64")[0], {KLQ: 1}, name)

    def test_reflex_is_not_the_angle(self):
        self.assertNotEqual(only_chain("reflex ∠KLQ = 250°")[0], {KLQ: 1})

    def test_two_claims_are_two(self):
        self.assertEqual(len(chains("KL = KN and ML = MN")), 2)
        self.assertEqual(len(chains("∠LPK = 120°, ∠KPM = 60°")), 2)

    def test_words_are_no_unknowns(self):
        self.assertEqual(chains("a tangent and a chord"), [])
        self.assertEqual(chains("Which lines does KP cut?"), [])

    def test_relations(self):
        self.assertEqual(relations("RU ∥ ST (opp sides)"), [("parallel", ("R", "U"), ("S", "T"))])
        self.assertEqual(relations("△KLM ≅ △PQR"), [("congruent", tuple("KLM"), tuple("PQR"))])
        self.assertEqual(relations("K, L, M, N lie on a circle"), [("concyclic", tuple("KLMN"))])
        self.assertEqual(relations("KL = KM"), [])

    def test_the_reason_is_cut_off(self):
        self.assertEqual(statement("∠LKQ = 52° (alt ∠s; KL ∥ PQ)"), "∠LKQ = 52°")
        self.assertEqual(statement("∠KLQ = (180 − 52) ÷ 2 = 64 because angles"), "∠KLQ = (180 − 52) ÷ 2 = 64 ")


class Measuring(unittest.TestCase):
    figure = Figure({"K": (0, 0), "L": (4, 0), "M": (0, 4)})

    def test_true_and_false(self):
        for text, truth in (("∠LKM = 90°", True), ("∠LKM = 89°", False), ("∠KLM = ∠KML = 45", True), ("KL = KM", True),
                            ("KL = LM", False), ("KL ⟂ KM", True), ("KL ∥ KM", False), ("∠KLX = 3", None),
                            ("180 − 2(40) = 110", False), ("△KLM ≅ △KML", True), ("△KLM ≅ △LKM", False)):
            self.assertIs(holds(text, self.figure, {}), truth, text)


class Algebra(unittest.TestCase):
    def test_span(self):
        one, two = (c.equations()[0] for c in chains("∠KLQ = ∠KQL; ∠KLQ + ∠KQL + 52 = 180"))
        goal, false = (c.equations()[0] for c in chains("∠KLQ = 64; ∠KLQ = 65"))
        self.assertTrue(Span([one, two]).gives(goal))
        self.assertFalse(Span([one, two]).gives(false))
        self.assertFalse(Span([two]).gives(goal))
        self.assertTrue(Span([one, two, false]).contradictory())

    def test_arms_are_named_by_any_point_of_their_ray(self):
        figure = Figure({"K": (0, 0), "L": (1, 0), "P": (2, 0), "M": (0, 1), "R": (-1, 0)})
        names, form = Names(figure), lambda text: chains(text + " = 1")[0].forms[0]
        self.assertEqual(names.form(form("∠LKM")), names.form(form("∠PKM")))
        self.assertNotEqual(names.form(form("∠LKM")), names.form(form("∠RKM")))
        self.assertEqual(names.form(form("∠LKR")), {1: 180})
        self.assertEqual(names.relation(("parallel", ("K", "L"), ("M", "R"))), names.relation(("parallel", ("R", "M"), ("P", "R"))))


class Ladders(unittest.TestCase):
    laths = Question(["KL ∥ PQ", "L and P are on opposite sides of KQ.", "KL = KQ", "angle PQK = 52"], "angle KLQ", Fraction(64), Names())
    STEP = ("step", "∠LKQ = ∠PQK = 52° (alternate angles, KL ∥ PQ, cut by KQ)")
    END = ("answer", "∠KLQ = (180° − 52°) ÷ 2 = 64° (angle sum of triangle KLQ)")

    def clean(self, *rungs, question=None):
        self.assertEqual(leaks(question or self.laths, [*rungs, self.END]), [])

    def leaking(self, *rungs, question=None, word=""):
        found = leaks(question or self.laths, [*rungs, self.END])
        self.assertTrue(found and word in found[0], found)

    def test_places_and_theorems_may_be_named(self):
        self.clean(("where", "Look at KQ. Which lines does it cut?"), ("fact", "The fact you need is about alternate angles."),
                   ("places", "One of the pair is ∠PQK. Write its partner with three letters; its corner is K."), self.STEP)

    def test_the_value(self):
        self.leaking(("places", "∠KLQ is 64 degrees."))
        self.leaking(("step", "∠KQL = 64° (base angles)"), word="one subtraction")
        self.clean(("step", "∠KQL = ∠KLQ (base angles)"))

    def test_one_subtraction(self):
        self.leaking(("step", "∠LQX = 116° (straight line)"), word="one subtraction")    # 180 − 64
        self.leaking(("step", "∠KQX = 26° (right angle)"), word="one subtraction")       # 90 − 64
        self.leaking(("step", "∠LQP = 116° (co-interior angles)"))                       # and 116 − 52
        self.clean(("step", "∠LQX = 115° (straight line)"))

    def test_a_given_quoted_as_reason_is_no_leak(self):
        question = Question(["angle KLM = 7x", "angle MLP = 5x"], "angle KLM", Fraction(84), Names())
        self.clean(("step", "5x + 7x = 144, so x = 12 (angle sum, given ∠KLM = 7x°)"), question=question)
        self.leaking(("step", "∠KLM = 7x and x = 12 (angle sum)"), question=question, word="says the goal")
        self.leaking(("step", "2∠KLM = 168° (angle sum)"), question=question, word="one subtraction")

    def test_numbers_of_the_question_may_be_said(self):
        self.clean(("where", "Which angle is 52°?"))
        self.leaking(("where", "Which angles add up to 180°?"), word="not told before")
        self.clean(("step", "∠LKQ + ∠KLQ + ∠KQL = 180° (angle sum of triangle KLQ)"), ("where", "You have a sum of 180° now."))

    def test_partners_beside_the_asked_angle(self):
        question = Question(["KL ∥ PQ", "angle PQK = 52"], "angle LKQ", Fraction(52), Names())
        self.leaking(("places", "Compare: ∠LKQ = ∠PQK?"), question=question, word="give the goal")
        self.clean(("places", "Which angle is the partner of ∠PQK?"), question=question)

    def test_claims(self):
        question = Question(["triangle: KLM", "KL = KM"], "KQ ∥ LM", None, Names())
        self.clean(("look-again", "Your last line will be KQ ∥ LM. What kind of fact allows such a line?"), question=question)
        self.leaking(("places", "LM ∥ QK because of ∠QKM."), question=question, word="says the goal")
        question = Question(["triangle: KLM", "KL = KM"], "angle KLM = angle KML", None, Names())
        self.leaking(("step", "∠LMK = ∠MLK (base angles)"), question=question, word="says the goal")
        self.clean(("step", "KL = KM (given)"), question=question)


if __name__ == "__main__":
    result = unittest.main(exit=False, verbosity=0).result
    bad = len(result.failures) + len(result.errors)
    print(f"{result.testsRun - bad} passed, {bad} failed")
    sys.exit(bool(bad))
