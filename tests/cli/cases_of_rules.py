"""The catalogue as a user asks for it; a teacher's own rules; courses."""
import json
import tempfile
from pathlib import Path

from program import TestCase, prove, run


OWN_RULE = """rule lath-fact
  title    "lath fact"
  kind     theorem
  says     "Laths of one length stand at equal angles."
  given    triangle: ABC; equal lengths: AB = AC
  then     angle ABC = angle ACB
  plain    "lath fact, {AB} = {AC}"
  why      Seen on the trellis.
  source   "our own"
  example  fires   triangle: PQR; equal lengths: PQ = PR   gives  angle PQR = angle PRQ
  example  silent  triangle: PQR; equal lengths: PQ = QR   gives  angle PQR = angle PRQ
"""


class Rules(TestCase):
    def test_a_rule_of_ones_own_is_proved_when_it_is_cited(self):
        problem = "triangle: KLM\nKL = KM\nangle KLM = 70\nfind: angle KML\n"
        with tempfile.TemporaryDirectory() as folder:
            Path(folder, "lath-fact.rule").write_text(OWN_RULE)
            options = ("--rules", folder, "--taught", "lath fact")
            done = prove(problem, *options)
            self.assertEqual(done.returncode, 0, done.err)
            self.assertNotIn("Assumed", done.out)
            self.assertEqual(json.loads(prove(problem, *options, "--json").out)["proofs"][0]["rules"], ["lath-fact"])
            unfolded = prove(problem, *options, "--unfold")
            self.assertIn("angles opposite equal sides", unfolded.out)
            self.assertNotIn("lath fact, KL = KM", unfolded.out)
            Path(folder, "second.rule").write_text(OWN_RULE)
            done = prove(problem, *options)
            self.assertEqual(done.returncode, 2)
            self.assertIn("there is a rule `lath-fact` already", done.err)

    # The side laid off on the side of a 100° triangle (J. Wilson, University of Georgia): true, and beyond the catalogue
    # without a further line.
    LAID_OFF = ("triangle: KLM\nequal lengths: KL = KM\nangle LKM = 100\nline: K, L, D in this order\n"
                "equal lengths: KD = LM\n")

    def test_a_problem_becomes_a_rule(self):
        with tempfile.TemporaryDirectory() as folder:
            file, rules = Path(folder, "problem.aw"), Path(folder, "own")
            rules.mkdir()

            def save(name, text, *options):
                file.write_text(text)
                return run("rules", "--rules", str(rules), "--save", name, str(file), *options)

            outer = "In triangle KLM, KL = KM\nLM is produced to P\nprove: angle KMP = 180 - angle KLM\n"
            done = save("outer-lath", outer)
            self.assertEqual(done.returncode, 0, done.err)
            self.assertIn("proved from the catalogue", done.out)
            self.assertEqual(run("rules", "--lint", "--rules", str(rules)).returncode, 0)
            before = Path(rules, "outer-lath.rule").read_bytes()
            self.assertEqual(save("outer-lath", outer).returncode, 2)  # a rule of that name is there
            self.assertEqual(Path(rules, "outer-lath.rule").read_bytes(), before)
            question = "In triangle RST, RS = RT\nST is produced to U\nangle RST = 52\nfind: angle RTU\n"
            cited = prove(question, "--rules", str(rules), "--taught", "outer-lath")
            self.assertIn("128", cited.out)
            self.assertNotIn("Assumed", cited.out)
            unfolded = prove(question, "--rules", str(rules), "--taught", "outer-lath", "--unfold")
            self.assertIn("angles opposite equal sides, RS = RT", unfolded.out)

            # False in some figure: never saved, not even as an assumption.
            wrong = "triangle: KLM\nprove: angle KLM = angle KML\n"
            for more in ((), ("--assume",)):
                done = save("wrong-lath", wrong, *more)
                self.assertEqual(done.returncode, 1)
                self.assertIn("it is false", done.err)
            self.assertFalse(Path(rules, "wrong-lath.rule").exists())

            # True and not proved: only as an assumption, and every proof says so before all else.
            claim = self.LAID_OFF + "prove: angle LMD = 10\n"
            self.assertEqual(save("laid-off", claim).returncode, 1)
            self.assertFalse(Path(rules, "laid-off.rule").exists())
            done = save("laid-off", claim, "--assume")
            self.assertEqual(done.returncode, 0, done.err)
            self.assertIn("as an assumption", done.out)
            done = prove(self.LAID_OFF + "find: angle LMD\n", "--rules", str(rules))
            self.assertIn("10", done.out)
            proof = done.out.split("Proof by")[1].split("\n", 2)[2]
            self.assertTrue(proof.strip().startswith("Assumed without proof: laid-off."), done.out)

    def test_what_a_theorem_rests_on(self):
        page = run("rules", "--from", "triangle-angle-sum")
        self.assertEqual(page.returncode, 0, page.err)
        for word in ("alternate", "It rests on", "On trust", "corresponding-angles"):
            self.assertIn(word, page.out)
        graph = run("rules", "--from", "triangle-angle-sum", "--graph", "dot").out
        self.assertIn('"triangle-angle-sum" -> "alternate-interior-angles"', graph)
        self.assertNotIn('"alternate-interior-angles" -> "triangle-angle-sum"', graph)
        self.assertIn("<svg", run("rules", "--from", "triangle-angle-sum", "--graph", "svg").out)
        self.assertEqual(run("rules", "--from", "no-such-rule").returncode, 2)

    def test_hint_sentences_are_shown_and_may_be_changed_or_translated(self):
        asked = json.loads(run("rules", "isosceles-base-angles", "--json").out)["hints"]["plain"]
        self.assertEqual(set(asked), {"where", "kind", "places"})
        self.assertIn("Which two sides of triangle ABC do you know something about?", run("rules", "isosceles-base-angles").out)
        with tempfile.TemporaryDirectory() as folder:
            hints = Path(folder, "hints")
            hints.mkdir()
            file = Path(hints, "deutsch.hints")
            file.write_text('rule isosceles-base-angles\n  hint where "Welche Seiten von Dreieck {ABC} kennst du?"\n')
            done = run("rules", "isosceles-base-angles", "--json", "--rules", folder)
            self.assertEqual(done.returncode, 0, done.err)
            changed = json.loads(done.out)["hints"]["plain"]
            self.assertEqual(changed["where"], "Welche Seiten von Dreieck ABC kennst du?")
            self.assertEqual(changed["kind"], asked["kind"])
            problem = "triangle: KLM\nKL = KM\nangle KLM = 70\nfind: angle LKM\n"
            ladder = run("hints", "-", "--all", "--rules", folder, text=problem).out
            self.assertIn("Welche Seiten von Dreieck KLM kennst du?", ladder)
            self.assertNotIn("Which two sides of triangle KLM", ladder)
            # The rule itself is the catalogue's own: a proof that cites it is what it was.
            self.assertEqual(prove(problem, "--rules", folder).out, prove(problem).out)

            # A sentence that gives the step away, or belongs to no rule, is shown in its place and left out.
            file.write_text('rule isosceles-base-angles\n  hint where "Compare {angle ABC} with {angle ACB}."\nrule no-such-rule\n')
            done = run("rules", "isosceles-base-angles", "--json", "--rules", folder)
            self.assertEqual(done.returncode, 2)
            self.assertIn("deutsch.hints:2:15: error: this hint names together", done.err)
            self.assertIn("deutsch.hints:3:6: error: there is no rule", done.err)
            self.assertEqual(json.loads(done.out)["hints"]["plain"], asked)
            self.assertEqual(run("rules", "--lint", "--rules", folder).returncode, 2)

    def test_rules_are_linted(self):
        rule = """rule own-angles
  title    "our own"
  kind     theorem
  says     "A rule of our own."
  given    triangle: ABC; equal lengths: AB = AC
  then     angle ABC = angle %s
  plain    "our own rule"
  why      To be tried.
  source   "our own"
  example  fires   triangle: KLM; equal lengths: KL = KM   gives  angle KLM = angle KML
  example  silent  triangle: KLM   gives  angle KLM = angle KML
"""
        with tempfile.TemporaryDirectory() as folder:
            def linted(angle):
                (Path(folder) / "own-angles.rule").write_text(rule % angle, encoding="utf-8")
                return run("rules", "--lint", "--rules", folder)
            wrong, right = linted("BAC"), linted("ACB")
        self.assertEqual(wrong.returncode, 2)
        self.assertIn("own-angles.rule:6:12: error: ∠ABC = ∠BAC does not follow", wrong.out)
        self.assertEqual(right.returncode, 1)  # a warning alone
        self.assertIn("says the same as `isosceles-base-angles`", right.out)

    def test_the_catalogue_lists_and_shows_rules(self):
        listed = json.loads(run("rules", "--json").out)
        self.assertGreater(len(listed), 60)
        self.assertEqual(len({rule["id"] for rule in listed}), len(listed))
        text = run("rules").out
        for rule in listed:
            self.assertIn(rule["id"], text)
            self.assertTrue(rule["statement"], rule["id"])
        one = run("rules", "alternate-interior-angles")
        self.assertEqual(one.returncode, 0)
        for word in ("Alternate angles", "Weight", "UK", "Sources", "Where it applies"):
            self.assertIn(word, one.out)
        # Published table: the three schools on alternate angles, with their sources.
        table = run("rules", "--topic", "parallel", "--wording", "all").out
        self.assertRegex(table, r"us +Alternate Interior Angles Theorem +US5")
        self.assertRegex(table, r"uk +alternate angles are equal +UK4")
        self.assertRegex(table, r"sa +alt ∠s; PA ∥ QD +ZA4")
        wide = run("rules", "--topic", "parallel", "--wording", "all", "--format", "markdown").out
        self.assertIn("| Alternate Interior Angles Theorem | alternate angles are equal | alt ∠s; PA ∥ QD |", wide)

    def test_courses(self):
        courses = json.loads(run("rules", "--courses", "--json").out)
        ids = {rule["id"] for rule in json.loads(run("rules", "--json").out)}
        whole = next(course for course in courses if course["id"] == "school-with-circles")
        self.assertEqual(sorted(rule["id"] for rule in whole["rules"]), sorted(ids))
        text = run("rules", "--courses").out
        for course in courses:
            self.assertIn(course["id"], text)
            self.assertEqual(json.loads(run("rules", "--course", course["id"], "--json").out), course)
        # Heath: Euclid proves I.8; US3 has it as a postulate.
        self.assertRegex(run("rules", "--course", "euclid-1").out, r"congruent-sss +taught")
        self.assertRegex(run("rules", "--course", "us-high-school").out, r"congruent-sss +taken")
        one = json.loads(run("rules", "congruent-sss", "--json").out)
        self.assertIn({"course": "us-high-school", "taken": True},
                      [{key: at[key] for key in ("course", "taken")} for at in one["courses"]])
        self.assert_mistake(run("rules", "--course", "euclid-2"), "euclid-2", "euclid-")

    def test_taught_up_to_a_rule(self):
        problem = "triangle: KLM\nangle KLM = 50\nangle LKM = 60\nfind: angle KML\n"
        self.assertEqual(prove(problem, "--taught", "euclid-1 up to triangle-angle-sum").returncode, 0)
        self.assertEqual(prove(problem, "--taught", "euclid-1 up to alternate angles").returncode, 1)
        self.assertEqual(prove("taught: angles; not triangle-angle-sum, exterior-angle-of-triangle\n" + problem).returncode, 1)
        self.assert_mistake(prove("taught: angles up to midsegment\n" + problem), "standard input:1:", "does not teach")

    def test_no_braces_are_left_in_wordings(self):
        self.assertNotRegex(run("rules", "--wording", "all").out, "[{}]")
