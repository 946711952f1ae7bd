"""The different ways to prove a claim."""
import json

from program import EXAMPLES, ROOT, SCHEMA, SOLVED, TestCase, prove, run


def ways(text, *options, **more):
    return run("ways", *options, "-", text=text, **more)


class Ways(TestCase):
    PARALLELOGRAM = "RSTU is a parallelogram\nangle URS = 116\nangle SRT = 41\nfind: angle RTS\n"
    ISOSCELES = "KLM is an isosceles triangle\nangle KLM = 50\nfind: angle LKM\n"

    def answer(self, text, *options):
        return json.loads(ways(text, "--json", *options).out)

    def test_every_example_fits_the_schema_and_is_checked(self):
        import jsonschema
        validator = jsonschema.Draft202012Validator(json.loads(SCHEMA.read_text(encoding="utf-8")))
        for example in EXAMPLES:
            with self.subTest(example.name):
                done = run("ways", "--json", example)
                self.assertEqual(done.returncode, 0, done.err)
                answer = json.loads(done.out)
                self.assertEqual([e.message for e in validator.iter_errors(answer)], [])
                for proof in answer["proofs"]:
                    self.assertEqual(proof["checks"], {"replay": True, "z3": True})
                first = json.loads(run("prove", "--json", example).out)["proofs"][0]
                self.assertEqual(answer["proofs"][0]["cost"], first["cost"])
                titles = [proof["title"] for proof in answer["proofs"]]
                self.assertEqual(len(titles), len(set(titles)))

    def test_both_textbook_proofs_of_the_angle_sum_each_once(self):
        example = ROOT / "frontend" / "examples" / "trellis-angle-sum.aw"
        proofs = [p for p in json.loads(run("ways", "--json", example).out)["proofs"] if p["in_full"]]
        rules = [frozenset(p["rules"]) - {"angles-on-a-straight-line", "angle-addition"} for p in proofs]
        self.assertEqual(rules.count(frozenset({"alternate-interior-angles"})), 1)
        self.assertEqual(rules.count(frozenset({"corresponding-angles", "vertical-angles"})), 1)
        self.assertEqual({p["idea"] for p in proofs}, {1})
        self.assertIn("Complete: with these rules and the lines drawn there is no other idea.", run("ways", example).out)

    def test_other_theorems_are_other_ideas_ranked_by_cost(self):
        from fractions import Fraction
        answer = self.answer(self.PARALLELOGRAM, "--most", "5")
        first = {}
        for proof in answer["proofs"]:
            first.setdefault(proof["idea"], proof)
        self.assertEqual(sorted(first), [1, 2, 3, 4, 5])
        costs = [Fraction(first[i]["cost"]) for i in sorted(first)]
        self.assertEqual(costs, sorted(costs))
        extent = answer["ways"][0]
        self.assertGreater(extent["more"], 0)
        self.assertGreaterEqual(Fraction(extent["lines_drawn"]["complete_below"]), costs[-1])
        # A completeness that reaches further finds nothing below.
        more = self.answer(self.PARALLELOGRAM, "--most", "12")
        cheaper = {p["idea"] for p in more["proofs"] if Fraction(p["cost"]) < Fraction(extent["lines_drawn"]["complete_below"])}
        self.assertLessEqual(cheaper, {1, 2, 3, 4, 5})

    def test_with_without_and_at_most(self):
        wanted = "parallelogram-opposite-angles"
        with_rule = self.answer(self.PARALLELOGRAM, "--with", wanted)
        self.assertTrue(with_rule["proofs"])
        for proof in with_rule["proofs"]:
            self.assertIn(wanted, proof["rules"])
        for proof in self.answer(self.PARALLELOGRAM, "--without", wanted)["proofs"]:
            self.assertNotIn(wanted, proof["rules"])
        for proof in self.answer(self.PARALLELOGRAM, "--at-most", "2")["proofs"]:
            self.assertLessEqual(proof["cited"], 2)
        taught = self.answer(self.PARALLELOGRAM, "--taught", "school; not congruence")
        for proof in taught["proofs"]:
            self.assertFalse([rule for rule in proof["rules"] if rule.startswith("congruent-")])
        nothing = ways(self.PARALLELOGRAM, "--with", "tangent-radius")
        self.assertEqual(nothing.returncode, 1)
        self.assertIn("No way was found that is as asked for", nothing.out)

    def test_names_that_are_not_known(self):
        self.assert_mistake(ways(SOLVED, "--with", "paralelogram-opposite-angles"), "parallelogram-opposite-angles")
        self.assert_mistake(ways(SOLVED, "--without", "triangle-angle-sun"), "triangle-angle-sum")
        self.assert_mistake(ways(SOLVED, "--measure", "shortest"), "fewest-steps")
        self.assert_mistake(ways(SOLVED, "--most", "0"), "--most")
        self.assert_mistake(ways(SOLVED, "--at-most", "none"), "--at-most")

    def test_variants_are_shown_when_asked_for(self):
        self.assertNotIn("variant by", ways(self.PARALLELOGRAM, "--most", "2").out)
        self.assertIn("variant by", ways(self.PARALLELOGRAM, "--most", "2", "--variants").out)

    def test_each_case_and_each_goal_has_its_ways(self):
        answer = self.answer(self.ISOSCELES)
        self.assertEqual(answer["verdict"], "depends-on-figure")
        self.assertEqual(len(answer["ways"]), 3)
        self.assertEqual({w["case"] for w in answer["ways"]}, {p["case"] for p in answer["proofs"]})
        two = self.answer("KLMN is a parallelogram\nprove: KL = MN; angle KLM = angle MNK\nprove: angle NKL + angle KLM = 180\n")
        self.assertEqual([w["goal"] for w in two["ways"]], ["KL = MN; angle KLM = angle MNK", "angle NKL + angle KLM = 180"])
        self.assertTrue(all(w["ideas"] > 1 for w in two["ways"]))

    def test_the_same_theorems_at_other_places_do_not_drown_the_rest(self):
        few, many = (self.answer(self.PARALLELOGRAM, "--most", "40", "--alike", n) for n in ("1", "40"))
        cited = lambda answer: [frozenset(p["rules"]) for p in answer["proofs"] if p["in_full"]]
        self.assertGreater(few["ways"][0]["elsewhere"], 0)
        self.assertEqual(many["ways"][0]["elsewhere"], 0)
        self.assertGreaterEqual(len(set(cited(few))), len(set(cited(many))))

    def test_other_verdicts_are_those_of_prove(self):
        for text in ("triangle: KLM\nangle KLM = 100\nangle LMK = 90\nfind: angle LKM\n",
                     "triangle: KLM\nKL = KM\nprove: KL = LM\n",
                     "triangle: KLM\nangle KLM = 50\nfind: angle LKM\n"):
            self.assertEqual(ways(text).out, prove(text).out)
            self.assertEqual(ways(text).returncode, 1)
        self.assertEqual(ways("triangle: KLM\nfrobnicate\n").returncode, 2)

    def test_a_theorem_is_not_its_own_proof(self):
        answer = self.answer("triangle: KLM\nKL = KM\nprove: angle KLM = angle KML\n")
        for proof in answer["proofs"]:
            self.assertEqual(proof["set_aside"], ["isosceles-base-angles"])
            self.assertNotIn("isosceles-base-angles", proof["rules"])

    def test_the_same_bytes_every_time(self):
        self.assertEqual(ways(self.PARALLELOGRAM).out, ways(self.PARALLELOGRAM).out)

    def test_a_rule_that_is_asked_for_is_looked_for_however_dear(self):
        # The diagonals of a parallelogram bisect each other: by similar triangles too, which nobody needs.
        text = "RSTU is a parallelogram\nthe diagonals RT and SU meet at V\nprove: RV = VT\n"
        answer = self.answer(text, "--with", "similar-aa", "--most", "1")
        self.assertEqual(len({p["idea"] for p in answer["proofs"]}), 1)
        for proof in answer["proofs"]:
            self.assertIn("similar-aa", proof["rules"])
            self.assertEqual(proof["checks"], {"replay": True, "z3": True})
        # A rule that has no place in the figure is not found, and that is said.
        self.assertIn("No way was found that is as asked for.", ways(text, "--with", "tangent-radius").out)
