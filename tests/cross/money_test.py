"""Money over years against polynomials of numpy, and spares against the Poisson distribution of scipy (python3-scipy)."""
import os
import subprocess
import unittest

import numpy
from scipy import stats

RATES = (0.0, 0.01, 0.05, 0.08, 0.125, 0.3)
YEARS = (1, 2, 5, 10, 25)
MEANS = (0.001, 0.05, 0.3, 1.0, 2.5, 7.0, 19.5, 120.0, 600.0)
CONFIDENCES = (0.5, 0.9, 0.95, 0.99, 0.999)
# Interest tables of engineering economy, present worth of an annual series (P/A) [M].
TABLE = {(0.05, 20): 12.4622, (0.08, 5): 3.9927, (0.10, 10): 6.1446, (0.12, 8): 4.9676}


def ours(lines):
    done = subprocess.run([os.environ["CROSS_MONEY"]], input="".join(line + "\n" for line in lines),
                          capture_output=True, text=True, check=True)
    return [float(line) for line in done.stdout.splitlines()]


class Money(unittest.TestCase):
    def test_annuity_is_the_sum_of_the_discounted_years(self):
        cases = [(rate, years) for rate in RATES for years in YEARS]
        got = ours(f"annuity {rate} {years}" for rate, years in cases)
        self.assertEqual(len(got), len(cases))
        for (rate, years), value in zip(cases, got):
            wanted = numpy.polyval([1.0] * years + [0.0], 1 / (1 + rate))
            self.assertAlmostEqual(value / wanted, 1, delta=1e-12, msg=f"{rate} {years}")

    def test_discount_of_one_year_is_what_the_annuity_grows_by(self):
        cases = [(rate, years) for rate in RATES for years in YEARS]
        got = ours(f"discount {rate} {years}" for rate, years in cases)
        for (rate, years), value in zip(cases, got):
            self.assertAlmostEqual(value * numpy.power(1 + rate, years), 1, delta=1e-12)

    def test_annuity_of_the_printed_table(self):
        got = ours(f"annuity {rate} {years}" for rate, years in TABLE)
        for wanted, value in zip(TABLE.values(), got):
            self.assertAlmostEqual(value, wanted, delta=0.00005)


class Spares(unittest.TestCase):
    def test_chance_of_a_poisson_count(self):
        cases = [(k, mean) for mean in MEANS for k in (0, 1, 3, 20, 130, 640)]
        got = ours(f"at_most {k} {mean}" for k, mean in cases)
        self.assertEqual(len(got), len(cases))
        for (k, mean), value in zip(cases, got):
            self.assertAlmostEqual(value, stats.poisson.cdf(k, mean), delta=1e-11, msg=f"{k} {mean}")

    def test_spares_are_the_quantile_and_at_least_one(self):
        cases = [(mean, confidence) for mean in MEANS for confidence in CONFIDENCES]
        got = ours(f"spares {mean} {confidence}" for mean, confidence in cases)
        for (mean, confidence), value in zip(cases, got):
            self.assertEqual(value, max(1, stats.poisson.ppf(confidence, mean)), f"{mean} {confidence}")


if __name__ == "__main__":
    unittest.main()
