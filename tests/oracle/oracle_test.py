"""Holds the program against an independent search on random requests and catalogues.

SWATHSPEC_ORACLE=all makes 500 pairs of it, else 60. SWATHSPEC_ORDERED names a program that prints,
for a request and a catalogue, the ordered list of accepted arrangements (ordered.py tells its
form); it is then held against the oracle's."""

import collections
import copy
import json
import math
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

FOLDER = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(FOLDER))

import arrange                                   # noqa: E402
import carriage                                  # noqa: E402
import compare                                   # noqa: E402
import demand                                    # noqa: E402
import generate                                  # noqa: E402
import ink                                       # noqa: E402
import ordered                                   # noqa: E402
import reading                                   # noqa: E402
import search                                    # noqa: E402
import station                                   # noqa: E402
import tilt                                      # noqa: E402
from quantity import INCH, ceil                  # noqa: E402

PROGRAM = os.environ.get("SWATHSPEC", str(FOLDER.parents[1] / ".build/release/swathspec"))
ORDERED = os.environ.get("SWATHSPEC_ORDERED")
WHOLE = os.environ.get("SWATHSPEC_ORACLE") == "all"
PAIRS = 500 if WHOLE else 60
DATE = "2026-11-25"


class Desk:
    """A folder in which the program answers one pair at a time."""

    def __init__(self):
        self.folder = tempfile.TemporaryDirectory(prefix="swathspec_oracle.")
        self.request = pathlib.Path(self.folder.name) / "request.ini"
        self.catalogue = pathlib.Path(self.folder.name) / "catalogue.xml"

    def ask(self, request, catalogue):
        """The program's JSON; a pair it refuses is a fault of the generator."""
        self.request.write_text(request, encoding="utf-8")
        self.catalogue.write_text(catalogue, encoding="utf-8")
        done = subprocess.run([PROGRAM, "explain", "--json", "--date", DATE, "-c",
                               str(self.catalogue),
                               str(self.request)], capture_output=True, text=True, timeout=120,
                              check=False)
        if done.returncode:
            raise AssertionError("the program refused a generated pair:\n" + done.stderr)
        return json.loads(done.stdout)

    def list(self):
        """The ordered list of the last pair."""
        return subprocess.run([ORDERED, str(self.request), str(self.catalogue)],
                              capture_output=True, text=True,
                              timeout=120, check=True).stdout


def answer(request, catalogue):
    return search.Answer(reading.request(request), reading.catalogue(catalogue))


class Agreement(unittest.TestCase):
    """The whole answer, on every pair."""

    def setUp(self):
        self.desk = Desk()
        self.addCleanup(self.desk.folder.cleanup)

    def test_pairs(self):
        desk, counts, found = self.desk, collections.Counter(), []
        for seed in range(PAIRS):
            request, catalogue = generate.pair(seed)
            document, ours = desk.ask(request, catalogue), answer(request, catalogue)
            compared = compare.Comparison(document, ours)
            found += ["seed %d, %s: %s" % (seed, kind, text) for kind, text in compared.differences]
            if ORDERED:
                found += ["seed %d, line %d: program %s, oracle %s" % (seed, *row)
                          for row in ordered.differences(desk.list(), ours)]
            self.count(counts, document, ours, compared)
        print("\noracle:", ", ".join("%s %d" % item for item in sorted(counts.items())))
        self.assertEqual(found, [], "\n" + "\n".join(found[:40]))
        self.assertEqual(counts["pairs"], PAIRS)
        self.assertLessEqual(counts["excused combination"], PAIRS // 10)
        if WHOLE:
            for kind, least in (("infeasible", 100), ("scanning", 50), ("unpriced", 50),
                                ("groups", 100), ("round a body", 10), ("tilted chosen", 12),
                                ("tilted ranked", 30)):
                self.assertGreaterEqual(counts[kind], least, kind)

    @staticmethod
    def count(counts, document, ours, compared):
        chosen = (document.get("chosen") or {"groups": []})["groups"]
        counts["pairs"] += 1
        counts["infeasible"] += document["verdict"] == "infeasible"
        counts["scanning"] += any(group["family"] == "scanning" for group in chosen)
        counts["unpriced"] += bool(document.get("bom_unpriced"))
        counts["groups"] += len(ours.job.groups) > 1
        counts["round a body"] += any("round" in group for group in chosen)
        counts["tilted chosen"] += any(group["family"] == "tilted" for group in chosen)
        counts["tilted ranked"] += any(item["family"] == "tilted" for one in ours.accepted
                                       for item in one.items)
        counts["stations of the oracle"] += len(ours.accepted)
        counts["excused combination"] += compared.excused


class Sharpness(unittest.TestCase):
    """The comparison sees what is wrong: a document changed by hand."""

    @classmethod
    def setUpClass(cls):
        desk = Desk()
        for seed in range(200):
            cls.pair = generate.pair(seed)
            cls.document = desk.ask(*cls.pair)
            reasons = [r for row in cls.document["rejected"] for r in row["reasons"]]
            if cls.document["alternatives"] and any(r["code"] != "lost"
                                                    for r in reasons) and "bom" in cls.document:
                break
        desk.folder.cleanup()
        cls.ours = answer(*cls.pair)

    def kinds(self, change):
        document = copy.deepcopy(self.document)
        change(document)
        return {kind for kind, _ in compare.Comparison(document, self.ours).differences}

    def test_unchanged(self):
        self.assertEqual(self.kinds(lambda d: None), set())

    def test_each_change_is_seen(self):
        def group(document):
            return document["chosen"]["groups"][0]

        def cent(document, key):
            document["cost"][key] += 0.01

        changes = {
            "required": lambda d: d["required"].update(resolution_along_dpi=1),
            "money.ownership": lambda d: cent(d, "ownership") or cent(d, "ownership")
            or cent(d, "ownership"),
            "money.capital": lambda d: cent(d, "capital"),
            "bill": lambda d: d["bom"][0].update(quantity=99),
            "unpriced": lambda d: d.update(bom_unpriced=77),
            "chosen.joints": lambda d: group(d).update(joints=77),
            "chosen.speed_limit_m_per_s": lambda d: group(d).update(speed_limit_m_per_s=9),
            "chosen.unknown": lambda d: group(d).update(mode="another"),
            "dot.laydown": lambda d: group(d)["dots"][0].update(laydown_ml_per_m2=1),
            "alternatives.capital": lambda d: d["alternatives"][0]["cost"].update(capital=1),
            "rejected.heads": lambda d: d["rejected"].pop(),
            "verdict": lambda d: d.update(chosen=None),
        }
        for kind, change in changes.items():
            with self.subTest(kind):
                self.assertIn(kind, self.kinds(change))

    def test_a_reason_of_another_value(self):
        def change(document):
            row = next(r for row in document["rejected"] for r in row["reasons"]
                       if r["code"] != "lost")
            row["limit"] += 1
        self.assertTrue(any(kind.startswith("rejected.") for kind in self.kinds(change)))

    def test_the_ordered_list(self):
        text = "\n".join(ordered.lines(self.ours))
        self.assertEqual(ordered.differences(text, self.ours), [])
        rows = text.splitlines()
        self.assertNotEqual(ordered.differences("\n".join(rows[1:]), self.ours), [])
        self.assertNotEqual(ordered.differences(text[:-1] + ("1" if text[-1] != "1" else "2"),
                                                self.ours), [])


class Worked(unittest.TestCase):
    """The oracle itself, against printed and worked figures (physics.md, method.md)."""

    # method.md, worked cases: P 977 pitches, n 8; two rows of bodies of 70 mm
    def test_heads_across(self):
        mode = {"row_pitch": 360 / INCH, "nozzles": round(70.5e-3 * 360 / INCH),
                "row_offsets": [0.0]}
        job = type("Job", (), {"width": 484.3e-3})
        head = {"overlap": 1.5e-3, "body_width": 70e-3}
        heads, _, step, rows = arrange.across(job, head, mode)
        self.assertEqual((heads, round(step * 360 / INCH), rows), (8, 977, 2))

    # method.md, worked cases: two rows of 180 npi, 0.5 mm apart, at 30 degrees: the second row 66.7
    # or 55.5 um from the first, 61.1 ideal; a tenth off is the most
    def test_tilt(self):
        mode = {"row_pitch": 180 / INCH, "row_offsets": [0.0, 0.5], "row_places": [0.0, 0.5e-3]}
        angle = math.radians(30)
        self.assertTrue(tilt.evenly(mode, 360 / INCH, angle))
        self.assertTrue(tilt.evenly(mode, 360 / INCH, -angle))
        mode["row_places"] = [0.0, 0.512e-3]     # 6.9 um more: beyond a tenth of 61.1 um
        self.assertFalse(tilt.evenly(mode, 360 / INCH, angle))

    # right triangle 3, 4, 5: 360 npi print 600 at a cosine of 0.6, nozzles a line of 450 apart
    def test_tilted_lattice(self):
        job = type("Job", (), {"required": (600 / INCH, 3600 / INCH)})
        found = tilt.angles(job, {}, {"row_pitch": 360 / INCH}, 360 / INCH, 1)
        self.assertEqual(["%.9f" % math.degrees(angle) for angle in found], ["53.130102354"])
        lines = tilt.printable({}, 360 / INCH, found[0], [400 / INCH, 451 / INCH], 1000 / INCH)
        self.assertEqual([round(value * INCH, 6) for value in lines], [450, 900])

    def test_ceiling(self):                      # method.md: 150 kHz over 50 kHz is 3, never 4
        self.assertEqual((ceil(150e3 / 50e3), ceil(3.0000000001), ceil(3.001)), (3, 3, 4))

    def test_drop(self):                         # physics.md 1 [C]: 10 pL is 26.7301 um
        self.assertAlmostEqual(ink.drop_diameter(10e-15) * 1e6, 26.7301, places=4)

    # physics.md 2.4 [C]: x = 1.2 covers 0.950911 of a square lattice
    def test_cover(self):
        self.assertAlmostEqual(ink.cover(1.2, 1.0, 1.0), 0.950911, places=6)
        self.assertEqual(ink.cover(math.sqrt(2) * (1 + 1e-12), 1.0, 1.0), 1.0)

    # physics.md 12 [C]: 60 wt% glycerol, two points give 7.31545 at 30 degC
    def test_viscosity(self):
        curve = ink.Viscosity([(293.15, 10.8e-3), (313.15, 5.08e-3)])
        self.assertAlmostEqual(curve.at(303.15) * 1e3, 7.31545, places=4)
        curve = ink.Viscosity([(273.15, 29.9e-3), (293.15, 10.8e-3), (313.15, 5.08e-3)])
        # VFT through 0/20/40 [C]
        self.assertAlmostEqual(curve.at(303.15) * 1e3, 7.21588, places=4)
        # bent as no liquid is: Arrhenius between 40 and 50 [C]
        curve = ink.Viscosity([(298.15, 22e-3), (313.15, 15e-3), (323.15, 10e-3)])
        self.assertAlmostEqual(curve.at(318.15) * 1e3, 12.20849, places=4)
        self.assertAlmostEqual(curve.where(12.20848902e-3), 318.15, places=4)

    # physics.md 6.3 [C]: 0.264 mm at 600 dpi must go to 7 dots, 0.296333 mm
    def test_module(self):
        job = demand.Job.__new__(demand.Job)
        job.module, job.symbol = 0.264e-3, "ean-13-retail"
        dots, printed, fits = job.module_printed(0, 600 / INCH)
        self.assertEqual((dots, round(printed * 1e6, 3), fits), (7, 296.333, True))

    def test_spares(self):                       # method.md, worked cases: mean 4.09 wants 8 spares
        self.assertEqual(station.poisson(40 * 1344 * 4000 / 8760 / 6000), 8)

    # physics.md 7 [C]: J = 7 rows, s = 4 prints every row once; 8 do not
    def test_advance(self):
        item = {"nozzles": 16, "steps": 4, "group": type("Group", (), {"native": 180 / INCH})}
        self.assertAlmostEqual(carriage.shared_advance([item]) * 4 * 180 / INCH, 7)


if __name__ == "__main__":
    unittest.main()
