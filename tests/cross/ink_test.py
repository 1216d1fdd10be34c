"""Viscosity fits, numbers of the jet and settling against scipy (package python3-scipy)."""
import math
import unittest

import numpy
from scipy import constants, optimize, stats

from support import ours

# Dow's glycerol-water table after Segur and Oberstar 1951, mPa.s at 0, 10, 20, 30, 40 degC.
TABLE = {
    50: (14.6, 9.01, 6.00, 4.21, 3.10),
    60: (29.9, 17.4, 10.8, 7.19, 5.08),
    70: (76.0, 38.8, 22.5, 14.1, 9.4),
    0: (1.792, 1.308, 1.005, 0.8007, 0.656),
}
CELSIUS = (0.0, 10.0, 20.0, 30.0, 40.0)


def arrhenius(points, query):
    """Straight line of ln eta over 1/T by linear regression."""
    fit = stats.linregress([1 / (t + 273.15) for t, _ in points], [math.log(e) for _, e in points])
    return math.exp(fit.intercept + fit.slope / (query + 273.15))


def vogel(points, query):
    """ln eta = a + b/(T - c): c by root finding, a and b from the outer points, so that the middle one fits."""
    (t1, e1), (t2, e2), (t3, e3) = [(t + 273.15, math.log(e)) for t, e in points]

    def curve(c):
        b = (e1 - e3) / (1 / (t1 - c) - 1 / (t3 - c))
        return e1 - b / (t1 - c), b

    def misfit(c):
        a, b = curve(c)
        return a + b / (t2 - c) - e2

    c = optimize.brentq(misfit, -500, t1 - 1, xtol=1e-13, rtol=1e-15)
    a, b = curve(c)
    return math.exp(a + b / (query + 273.15 - c))


class Viscosity(unittest.TestCase):
    def compare(self, cases, theirs, share):
        rows = [[query] + [x for point in points for x in point] for points, query in cases]
        answers = ours("viscosity", rows)
        self.assertEqual(len(answers), len(cases))
        for (points, query), (answer,) in zip(cases, answers):
            with self.subTest(points=points, query=query):
                self.assertAlmostEqual(float(answer) / theirs(points, query), 1, delta=share)

    def test_two_points(self):
        cases = []
        for etas in TABLE.values():
            for i in range(4):
                points = [(CELSIUS[i], etas[i]), (CELSIUS[i + 1], etas[i + 1])]
                cases += [(points, CELSIUS[i] + step) for step in (0.0, 2.5, 7.0, 10.0)]
        self.compare(cases, arrhenius, 1e-11)

    def test_three_points(self):
        cases = []
        for etas in TABLE.values():
            points = [(CELSIUS[i], etas[i]) for i in (0, 2, 4)]
            cases += [(points, query) for query in (0.0, 5.0, 13.0, 20.0, 31.0, 40.0)]
        self.compare(cases, vogel, 1e-8)

    def test_table_between_its_points(self):
        cases = [([(0.0, e[0]), (20.0, e[2]), (40.0, e[4])], q) for e in TABLE.values() for q in (10.0, 30.0)]
        printed = {(e[0], q): e[1] if q == 10.0 else e[3] for e in TABLE.values() for q in (10.0, 30.0)}
        self.compare(cases, lambda points, query: printed[(points[0][1], query)], 0.02)

    def test_nothing_outside(self):
        answers = ours("viscosity", [[50.0, 20.0, 10.8, 40.0, 5.08], [19.0, 20.0, 10.8, 40.0, 5.08]])
        self.assertEqual(answers, [["unknown"], ["unknown"]])


class Jet(unittest.TestCase):
    def test_numbers(self):
        rng = numpy.random.default_rng(7)
        rows = [[rng.uniform(700, 1500), rng.uniform(1e-3, 3e-2), rng.uniform(0.018, 0.073), rng.uniform(1, 20),
                 rng.uniform(1e-5, 1e-4)] for _ in range(50)]
        rows = [[float(x) for x in row] for row in rows]
        for (rho, eta, sigma, v, d), answer in zip(rows, ours("jet", rows)):
            re, we, oh, z, least, k = (float(x) for x in answer)
            pressure, capillary, viscous = rho * v * v, sigma / d, eta * v / d
            self.assertAlmostEqual(re / (pressure / viscous), 1, delta=1e-12)
            self.assertAlmostEqual(we / (pressure / capillary), 1, delta=1e-12)
            self.assertAlmostEqual(oh / (math.sqrt(we) / re), 1, delta=1e-12)
            self.assertAlmostEqual(z * oh, 1, delta=1e-12)
            # The least speed by root finding on the Weber number.
            root = optimize.brentq(lambda x: rho * x * x * d / sigma - 4, 1e-3, 100, xtol=1e-14)
            self.assertAlmostEqual(least / root, 1, delta=1e-10)
            self.assertAlmostEqual(k / (we ** 0.5 * re ** 0.25), 1, delta=1e-12)

    def test_settling(self):
        rows = [[0.25e-6, 4230.0, 1000.0, 298.15, 0.01], [0.12e-6, 1500.0, 1000.0, 298.15, 0.004],
                [1e-6, 2600.0, 1100.0, 323.15, 0.02]]
        for (d, heavy, rho, kelvin, eta), answer in zip(rows, ours("settling", rows)):
            speed, height = (float(x) for x in answer)
            weight = math.pi / 6 * d ** 3 * (heavy - rho) * constants.g
            drag = lambda v, d=d, eta=eta: 3 * math.pi * eta * d * v
            root = optimize.brentq(lambda v: drag(v) - weight, 0, 1e-3, xtol=1e-24, rtol=1e-14)
            self.assertAlmostEqual(speed / root, 1, delta=1e-9)
            # Barometric: where the weight of a particle times the height is k T.
            self.assertAlmostEqual(height / (constants.k * kelvin / weight), 1, delta=1e-12)


if __name__ == "__main__":
    unittest.main()
