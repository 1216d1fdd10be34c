"""Flights of drops through still air against the equation of motion integrated by scipy (package python3-scipy)."""
import math
import os
import subprocess
import unittest

from scipy import integrate

DENSITY, START, ROOM = 1050.0, 6.0, 293.15
# Drops in pL at 6 m/s: speed after 1, 2, 3 and 5 mm [m/s] (0 stops short), time to 1 mm [us], stop distance [mm];
# computed independently.
SHEET = {
    3: ((4.517263, 3.135347, 1.858558, 0), 191.743, 4.66594),
    7: ((5.081528, 4.205019, 3.370949, 1.833743), 181.010, 7.81951),
    10: ((5.248005, 4.525202, 3.831766, 2.534289), 178.152, 9.69924),
    14: ((5.376641, 4.774065, 4.192329, 3.091834), 176.029, 11.8720),
    30: ((5.590751, 5.191204, 4.801348, 4.050704), 172.647, 18.6905),
    42: ((5.659468, 5.325889, 4.999249, 4.366752), 171.600, 22.7953),
    80: ((5.759667, 5.523023, 5.290061, 4.835146), 170.105, 33.2340),
}
WAYS = (1e-3, 2e-3, 3e-3, 5e-3)


def diameter(picolitres):
    return (6 * picolitres * 1e-15 / math.pi) ** (1 / 3)


def air(kelvin):
    """Viscosity by Sutherland and density of an ideal gas at 101325 Pa."""
    return 1.458e-6 * kelvin ** 1.5 / (kelvin + 110.4), 101325 / (287.05287 * kelvin)


def flight(density, d, start, way, kelvin):
    """Impact speed and time from F = C_D rho v^2 A / 2 with Schiller and Naumann's C_D; None where it stops short."""
    viscosity, air_density = air(kelvin)
    mass = density * math.pi * d ** 3 / 6
    area = math.pi * d ** 2 / 4

    def motion(_, state):
        speed = max(state[1], 1e-12)
        reynolds = air_density * speed * d / viscosity
        drag = 24 / reynolds * (1 + 0.15 * reynolds ** 0.687)
        return state[1], -0.5 * air_density * drag * area * speed ** 2 / mass

    def arrived(_, state):
        return state[0] - way

    arrived.terminal = True
    done = integrate.solve_ivp(motion, (0, 1), (0, start), method="DOP853", rtol=1e-12, atol=1e-15, events=arrived)
    return (done.y_events[0][0][1], done.t_events[0][0]) if done.t_events[0].size else None


def ours(rows):
    text = "".join(" ".join(repr(x) for x in row) + "\n" for row in rows)
    done = subprocess.run([os.environ["CROSS_FLIGHT"]], input=text, capture_output=True, text=True, check=True)
    return [line.split("\t") for line in done.stdout.splitlines()]


class Flight(unittest.TestCase):
    def test_against_the_integrated_equation(self):
        rows = [(DENSITY, diameter(pl), v0, way, kelvin) for pl in (3, 10, 42) for v0 in (4.0, 6.0, 9.0)
                for way in (0.5e-3, 1e-3, 3e-3, 5e-3) for kelvin in (283.15, 293.15, 313.15)]
        answers = ours(rows)
        self.assertEqual(len(answers), len(rows))
        stopped = 0
        for row, (speed, time, _) in zip(rows, answers):
            with self.subTest(row=row):
                theirs = flight(*row)
                if theirs is None:
                    stopped += 1
                    self.assertEqual(speed, "stopped")
                    continue
                self.assertAlmostEqual(float(speed) / theirs[0], 1, delta=1e-8)
                self.assertAlmostEqual(float(time) / theirs[1], 1, delta=1e-8)
        self.assertGreater(stopped, 0)

    def test_against_the_sheet(self):
        for pl, (speeds, time, stop) in SHEET.items():
            answers = ours([(DENSITY, diameter(pl), START, way, ROOM) for way in WAYS])
            with self.subTest(pl=pl):
                for expected, answer in zip(speeds, answers):
                    if expected == 0:
                        self.assertEqual(answer[0], "stopped")
                    else:
                        self.assertAlmostEqual(float(answer[0]) / expected, 1, delta=1e-6)
                self.assertAlmostEqual(float(answers[0][1]) * 1e6 / time, 1, delta=5e-6)
                self.assertAlmostEqual(float(answers[0][2]) * 1e3 / stop, 1, delta=5e-6)


if __name__ == "__main__":
    unittest.main()
