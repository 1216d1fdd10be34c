"""Drop, dot and lattice (physics.md 1, 2) and the ink in the head (physics.md 12)."""

import math

SPREAD = {"none": (1.6, 1.3, 2.4), "low": (1.8, 1.5, 2.2), "high": (2.2, 1.8, 2.8)}


def drop_diameter(volume):
    """Diameter [m] of a sphere of that volume [m3]."""
    return (6 * volume / math.pi) ** (1 / 3)


def dots(job, volume):
    """(likely, least, most) dot diameter [m]; the three differ on a spread that is only assumed."""
    substrate = job.sections.get("substrate", {})
    drop = drop_diameter(volume)
    if substrate.get("dot_diameter"):
        dot = substrate["dot_diameter"]
        if substrate.get("dot_volume"):
            dot = dot * (volume / substrate["dot_volume"]) ** (1 / 3)
        return dot, dot, dot
    if substrate.get("spread_factor"):
        return (substrate["spread_factor"] * drop,) * 3
    if substrate.get("contact_angle") and job.absorbency == "none":
        half = math.tan(math.radians(substrate["contact_angle"]) / 2)
        factor = (8 / (half * (3 + half * half))) ** (1 / 3)
        return (min(factor, 3.12) * drop,) * 3
    likely, least, most = SPREAD[job.absorbency]
    return likely * drop, least * drop, most * drop


def cover(dot, pitch_n, pitch_m):
    """Share of the lattice cell that round dots cover: a quarter disc cut by a quarter cell."""
    radius, half_n, half_m = dot / 2, pitch_n / 2, pitch_m / 2
    if radius * radius >= half_n * half_n + half_m * half_m:
        return 1.0
    disc = lambda x: (x * math.sqrt(max(0.0, radius * radius - x * x))
                      + radius * radius * math.asin(min(1.0, x / radius))) / 2
    end = min(half_n, radius)
    flat = math.sqrt(radius * radius - half_m * half_m) if radius > half_m else 0.0
    flat = min(flat, end)
    return (flat * half_m + disc(end) - disc(flat)) / (half_n * half_m)


class Viscosity:
    """Viscosity [Pa s] over temperature [K] through the points given, and where they end."""

    def __init__(self, points):
        self.points = points
        self.low, self.high = points[0][0], points[-1][0]
        self.curve = self.fit(points) if len(points) == 3 else None

    def fit(self, points):
        """a, b, c of Vogel-Fulcher-Tammann through three points; none where c, at which the liquid would
        stand still, lies above them."""
        (t1, e1), (t2, e2), (t3, e3) = points
        ratio = math.log(e1 / e2) / math.log(e2 / e3)

        # ((t3-c)(t2-t1)) / ((t1-c)(t3-t2)) = ratio is linear in c
        share = ratio * (t3 - t2) / (t2 - t1)
        c = (t3 - share * t1) / (1 - share)
        b = math.log(e1 / e2) / (1 / (t1 - c) - 1 / (t2 - c))
        return (math.log(e1) - b / (t1 - c), b, c) if c <= t1 else None

    def pair(self, first):
        """a, b, c of Arrhenius' line through a point and the next."""
        (t1, e1), (t2, e2) = self.points[first:first + 2]
        b = math.log(e1 / e2) / (1 / t1 - 1 / t2)
        return math.log(e1) - b / t1, b, 0.0

    def at(self, temperature):
        if len(self.points) == 1:
            return self.points[0][1]
        beyond = len(self.points) > 2 and temperature > self.points[1][0]
        a, b, c = self.curve or self.pair(1 if beyond else 0)
        return math.exp(a + b / (temperature - c))

    def where(self, viscosity):
        """The temperature of that viscosity on the curve."""
        beyond = len(self.points) > 2 and viscosity < self.points[1][1]
        a, b, c = self.curve or self.pair(1 if beyond else 0)
        return c + b / (math.log(viscosity) - a)


def jetting(head, ink, room):
    """(temperature [K], viscosity [Pa s]) the ink is jetted at in this head; viscosity None when
    not known there."""
    curve = Viscosity(ink["viscosity"]) if ink.get("viscosity") else None
    if ink.get("jetting_temperature"):
        temperature = ink["jetting_temperature"]
        if curve is None or not curve.low - 1e-6 <= temperature <= curve.high + 1e-6:
            return temperature, None
        return temperature, curve.at(temperature)
    if curve is None:
        return room + 5, None
    window = head.get("viscosity_window")
    nominal = head.get("viscosity") or (sum(window) / 2 if window else None)
    low = max(room + 5, curve.low)
    # rule read from the output: a head of unknown greatest temperature is not heated above that
    # least one
    high = min(head.get("temperature_most", room + 5), curve.high)
    if low > high + 1e-9:
        return None, None
    if len(curve.points) > 1 and nominal:
        wanted = curve.where(nominal)
        if low <= wanted <= high:
            return wanted, nominal
    centre = sum(window) / 2 if window else nominal
    if centre is None:
        return low, curve.at(low)
    ends = [low, high]
    best = min(ends, key=lambda t: abs(curve.at(t) - centre))
    wanted = curve.where(centre) if len(curve.points) > 1 else None
    if wanted is not None and low <= wanted <= high:
        best = wanted
    return best, curve.at(best)
