"""Texts with units to SI numbers and money to minor units, for what the generator writes and the
samples hold."""

import math
import re
from decimal import Decimal, ROUND_HALF_UP

INCH = 0.0254
UNITS = {
    "mm": 1e-3, "cm": 1e-2, "m": 1.0, "um": 1e-6, "nm": 1e-9, "in": INCH, "ft": 0.3048,
    "pt": INCH / 72, "mil": 25.4e-6, "in/s": INCH, "ft2/h": 0.3048 ** 2 / 3600, "degF": 1.0,
    "dpi": 1 / INCH, "npi": 1 / INCH, "pL": 1e-15, "mL": 1e-6, "L": 1e-3,
    "kHz": 1e3, "Hz": 1.0, "m/s": 1.0, "m/min": 1 / 60, "ft/min": 0.3048 / 60,
    "m2/h": 1 / 3600, "m2/min": 1 / 60, "mPa.s": 1e-3, "cP": 1e-3, "mN/m": 1e-3, "dyn/cm": 1e-3,
    "kg/m3": 1.0,
    "mJ/cm2": 10.0, "W/cm2": 1e4, "kW": 1e3, "W": 1.0, "%": 0.01, "deg": 1.0, "h": 3600.0,
    "day": 86400.0, "week": 604800.0, "mL/min": 1e-6 / 60, "Gbit/s": 1e9, "Mbit/s": 1e6,
    "kg/(m2 h)": 1 / 3600, "ppm": 1e-6, "degC": 1.0, "": 1.0,
}
PARTS = {"parts/min": 1 / 60, "parts/h": 1 / 3600}


def number(text):
    """(value in SI, unit); temperatures come out in kelvin."""
    found = re.fullmatch(r"(-?[0-9.]+(?:[eE][-+]?[0-9]+)?)\s*(.*)", text.strip())
    value, unit = float(found.group(1)), found.group(2).strip()
    if unit in PARTS:
        return value * PARTS[unit], "parts"
    if unit == "degC":
        return value + 273.15, unit
    return value * UNITS[unit], unit


def span(text):
    """(least, most) in SI of `a..b unit`, `a +- b unit` (nominal twice) or one value."""
    if ".." in text:
        low, high = text.split("..")
        unit = re.sub(r"^[-0-9. eE]+", "", high.strip()).strip()
        return number(low + " " + unit)[0], number(high)[0]
    if "+-" in text:
        text = text.split("+-")[0].strip()
        raise ValueError("uncertain values are not generated: " + text)
    value = number(text)[0]
    return value, value


def pair(text):
    """(across, along) of a resolution, one number standing for both."""
    if " x " in text:
        first, second = text.split(" x ")
        return number(first + " dpi")[0], number(second)[0]
    return number(text)[0], number(text)[0]


def points(text):
    """[(temperature, viscosity)] in SI."""
    found = []
    for item in text.split(";"):
        value, temperature = item.split(" at ")
        found.append((number(temperature)[0], number(value)[0]))
    return sorted(found)


def money(text):
    """(Decimal minor units, currency) of `95 EUR`, `95 EUR/L`."""
    amount, currency = text.split(None, 1)
    return Decimal(amount) * 100, currency.split("/")[0]


def cents(value):
    """Whole minor units, half away from nought; a half that binary numbers miss by a hair is a
    half."""
    return int((Decimal(value) + Decimal("1e-7")).quantize(Decimal(1), rounding=ROUND_HALF_UP))


def ceil(value):
    """The least integer >= value, with the tolerance of the method page."""
    least = value - 1e-9 * max(1.0, abs(value))
    whole = int(least)
    return whole if whole >= least else whole + 1


def floor(value):
    """The greatest integer <= value, with that tolerance."""
    return math.floor(value + 1e-9 * max(1.0, abs(value)))


def above(value, limit):
    """value > limit beyond the tolerance at limits."""
    return value > limit + 1e-9 * max(abs(value), abs(limit))
