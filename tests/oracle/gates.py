"""The gates of a head by itself (method, stage A): every reason it fails for a group, as (code,
value, limit)."""

import math

from ink import jetting
from quantity import above

FLUTTER = 0.1e-3


def throws(job, head):
    """(least, greatest) gap [m]: nominal over a product of nominal thickness, less or more what varies."""
    low, high = job.get("line", "throw_distance") or (head.get("throw_nominal", 1e-3),) * 2
    flutter = job.get("line", "throw_variation", FLUTTER)
    thickness = job.get("product", "thickness_variation", 0.0)
    least, most = low - thickness - flutter, high + thickness + flutter
    if job.cylinder:
        radius, depth = job.get("product", "diameter") / 2, head.get("field_depth", 0.0)
        # rule read from the output: a field wider than the body fails by its slope alone
        sagitta = radius - math.sqrt(radius * radius - depth * depth
                                     / 4) if depth / 2 <= radius else -math.inf
        most += sagitta
    return least, most


def window(reasons, code, value, limits):
    """Adds a reason where value lies outside limits."""
    if above(limits[0], value):
        reasons.append((code, value, limits[0]))
    elif above(value, limits[1]):
        reasons.append((code, value, limits[1]))


def ink_reasons(job, head, ink):
    """Reasons of one ink."""
    reasons = []
    if head.get("families") and ink["family"] not in head["families"]:
        reasons.append(("ink_family", 0, 1))
    if ink["family"] == "oil" and job.absorbency == "none":
        reasons.append(("ink_substrate", 0, 1))
    temperature, viscosity = jetting(head, ink, job.room)
    if temperature and "temperature_most" in head and above(temperature, head["temperature_most"]):
        reasons.append(("temperature", temperature - 273.15, head["temperature_most"] - 273.15))
    if viscosity and "viscosity_window" in head:
        window(reasons, "viscosity", viscosity, head["viscosity_window"])
    if ink.get("surface_tension") and "tension_window" in head:
        for value in dict.fromkeys(ink["surface_tension"]):
            window(reasons, "tension", value, head["tension_window"])
    return reasons


def head_reasons(job, head, group):
    """Reasons of a head for a group of channels, whatever its arrangement."""
    reasons = []
    for name in dict.fromkeys(channel["ink_name"] for channel in group["channels"]):
        ink = next(c["ink"] for c in group["channels"] if c["ink_name"] == name)
        reasons += [r for r in ink_reasons(job, head, ink) if r not in reasons]
    least, most = throws(job, head)
    if above(head.get("throw_least", 0.5e-3), least):
        reasons.append(("throw", least, head.get("throw_least", 0.5e-3)))
    if "throw_most" in head and above(most, head["throw_most"]):
        reasons.append(("throw", most, head["throw_most"]))
    if job.cylinder:
        share = head.get("field_depth", 0.0) / job.get("product", "diameter")
        slope = math.degrees(math.asin(min(1.0, share)))
        if above(slope, 25):
            reasons.append(("slope", slope, 25))
    for code, fits in wishes(head).items():
        if job.get("service", code) == "must" and fits is False:
            reasons.append((code, head.get(code) if code == "driver_sources" else 0,
                            2 if code == "driver_sources" else 1))
    return reasons


def wishes(head):
    """{wish: met, None when the catalogue does not say}. Rule read from the output: exchange of
    parts counts as serviceable, limited access as access."""
    service, waveform, sources = (head.get(key)
                                  for key in ("serviceable", "waveform", "driver_sources"))
    return {
        "serviceable": None if service is None else service in ("user", "parts"),
        "waveform": None if waveform is None else waveform in ("own", "limited"),
        "driver_sources": None if sources is None else sources >= 2,
    }


def unmet(job, head):
    """How many wishes of the request (prefer) the head leaves unmet."""
    strict = wishes(head)
    # rule read from the output: a wish, unlike a must, wants full access
    if head.get("waveform") == "limited":
        strict["waveform"] = False
    return sum(1 for code,
               fits in strict.items() if job.get("service", code) == "prefer" and not fits)
