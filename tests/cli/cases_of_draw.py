"""Figures as SVG: well formed, true to size, marks as given, nothing on top of a letter."""
import math
import re
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path

from program import EXAMPLES, ROOT, TestCase, run

SVG = "{http://www.w3.org/2000/svg}"


def draw(text, *options):
    return run("draw", *options, "-", text=text)


def texts(svg):
    return [t.text for t in xml.fromstring(svg).iter(SVG + "text")]


class Draw(TestCase):
    TRIANGLE = "triangle: KLM\nangle KLM = 40\nangle LMK = 75\nfind: angle MKL\n"

    def test_every_example_is_drawn_with_all_its_letters(self):
        for example in EXAMPLES:
            with self.subTest(example.name):
                done = run("draw", example)
                self.assertEqual(done.returncode, 0, done.err)
                letters = {t for t in texts(done.out) if re.fullmatch(r"[A-Z]\d?", t)}
                source = re.sub(r"#.*|^[a-z]+:", "", example.read_text(encoding="utf-8"), flags=re.M)
                self.assertLessEqual(letters, set(re.findall(r"[A-Z]\d?", source)))
                self.assertGreaterEqual(len(letters), 3)

    def test_sizes_stand_at_their_angles_and_the_asked_one_has_a_question_mark(self):
        shown = texts(draw(self.TRIANGLE).out)
        self.assertEqual(sorted(shown), sorted(["K", "L", "M", "40°", "75°", "?"]))

    def test_forty_degrees_look_like_forty(self):
        root = xml.fromstring(draw(self.TRIANGLE).out)
        lines = []
        for path in root.iter(SVG + "path"):
            spots = [tuple(map(float, s.split())) for s in re.findall(r"[ML](-?[\d.]+ -?[\d.]+)", path.get("d"))]
            if path.get("stroke-width") == "0.35" and len(spots) == 2:
                lines.append(spots)
        self.assertEqual(len(lines), 3)
        corners = sorted({p for line in lines for p in line})
        self.assertEqual(len(corners), 3)
        sizes = []
        for v in corners:
            a, b = (p for p in corners if p != v)
            turn = math.atan2(a[1] - v[1], a[0] - v[0]) - math.atan2(b[1] - v[1], b[0] - v[0])
            sizes.append(math.degrees(abs(math.remainder(turn, 2 * math.pi))))
        for size, expected in zip(sorted(sizes), [40, 65, 75]):
            self.assertAlmostEqual(size, expected, delta=0.1)  # coordinates are rounded to a hundredth of a millimetre

    def test_a_right_angle_is_a_square_and_equal_lengths_have_ticks(self):
        def marks(givens):
            svg = draw(f"triangle: KLM\n{givens}\nfind: angle LKM\n").out
            paths = [m[1].count("L") for m in re.finditer(r'<path d="(M[^A"]*)" stroke-width="0.25"', svg)]
            return paths.count(2), paths.count(1), svg  # squares, ticks

        self.assertEqual(marks("angle KLM = 80\nangle KML = 40")[:2], (0, 0))
        self.assertEqual(marks("angle KLM = 90\nangle KML = 40")[:2], (1, 0))
        self.assertNotIn("90°", marks("angle KLM = 90\nangle KML = 40")[2])
        self.assertEqual(marks("KL = KM\nangle KML = 40")[:2], (0, 2))

    def test_two_figures_side_by_side_when_the_answer_is_open(self):
        done = run("draw", ROOT / "frontend" / "examples" / "worksheet" / "4.aw")
        self.assertEqual(done.returncode, 1)
        captions = [t for t in texts(done.out) if "=" in t]
        self.assertEqual(len(captions), 2)
        values = [float(re.search(r"= ([\d.]+)°", c)[1]) for c in captions]
        self.assertGreater(abs(values[0] - values[1]), 1)

    def test_what_it_shows_is_said_for_those_who_do_not_see_it(self):
        description = xml.fromstring(draw(self.TRIANGLE).out).find(SVG + "desc").text
        self.assertIn("angle KLM is 40°", description)
        self.assertNotIn("65", description)  # the answer is not given away

    def test_into_a_file_whole_or_not_at_all(self):
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "figure.svg"
            done = draw(self.TRIANGLE, "--out", path)
            self.assertEqual((done.returncode, done.out), (0, ""))
            self.assertTrue(path.read_text(encoding="utf-8").endswith("</svg>\n"))
            self.assertEqual([p.name for p in Path(folder).iterdir()], ["figure.svg"])
            self.assert_mistake(draw(self.TRIANGLE, "--out", Path(folder) / "none" / "figure.svg"), "cannot write")

    def test_nothing_to_draw_is_said(self):
        done = draw("triangle: KLM\nangle KLM = 100\nangle LMK = 90\nfind: angle LKM\n")
        self.assertEqual(done.returncode, 1)
        self.assertIn("no figure", done.err)
        self.assert_mistake(draw("nonsense here\n"))
