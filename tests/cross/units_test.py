"""Every factor of the unit table against GNU units (package units)."""
import re
import subprocess
import unittest

from support import ours

# UDUNITS-2 and GNU units read a few words otherwise: h is Planck's constant to GNU units, rad a dose.
GNU = {"h": "hour", "common_year": "(365 day)", "Pa": "pascal", "rad": "radian"}
BASE = {
    "length": "m", "speed": "m/s", "resolution": "1/m", "volume": "m^3", "viscosity": "Pa s",
    "surface tension": "N/m", "density": "kg/m^3", "time": "s", "frequency": "Hz", "part rate": "1/s",
    "data rate": "1/s", "dose": "J/m^2", "irradiance": "W/m^2", "fraction": "1", "concentration": "1",
    "angle": "radian", "flow": "m^3/s", "area rate": "m^2/s", "drying rate": "kg/(m^2 s)", "power": "W",
    "mass flow": "kg/s", "area mass": "kg/m^2", "heat capacity": "J/(kg K)", "molar mass": "kg/mol",
}


def expression(udunits):
    words = re.sub(r"[A-Za-z_]+", lambda m: GNU.get(m[0], m[0]), udunits)
    return re.sub(r"(?<=[A-Za-z])\.(?=[A-Za-z])", " ", words)


def gnu(source, target):
    done = subprocess.run(["units", "-t", "-1", "-o", "%.17g", source, target], capture_output=True, text=True,
                          check=False)
    return done.stdout.strip()


class Units(unittest.TestCase):
    def test_every_factor(self):
        rows = ours("units")
        self.assertGreater(len(rows), 70)
        for text, dimension, factor, offset, udunits in rows:
            with self.subTest(unit=text, dimension=dimension):
                if dimension == "temperature":
                    self.check_temperature(text, float(factor), float(offset))
                    continue
                theirs = float(gnu(expression(udunits), BASE[dimension]))
                self.assertAlmostEqual(float(factor) / theirs, 1, delta=1e-12)
                self.assertEqual(float(offset), 0)

    def check_temperature(self, text, factor, offset):
        for number in (0.0, 37.5, 451.0):
            source = {"degC": f"tempC({number})", "degF": f"tempF({number})", "K": f"{number} K"}[text]
            theirs = float(gnu(source, "K"))
            self.assertAlmostEqual(number * factor + offset, theirs, delta=1e-9)


if __name__ == "__main__":
    unittest.main()
