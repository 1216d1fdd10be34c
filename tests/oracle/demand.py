"""What the request demands: resolutions, speed, channels and their groups, from sections 1 to 3 of
the method."""

import math

from quantity import INCH, floor

SOFT = 0.90
STROKE = {"regular": 0.085, "bold": 0.13, "serif": 0.03}
COVER_MEAN = {"process": 0.15, "spot": 0.10, "white": 0.70, "varnish": 0.90, "primer": 1.00}
FILM = {"white": 10e-6, "varnish": 10e-6}
ALONE = ("white", "varnish", "primer")
# least and most module [mm], physics.md 6.1; the two axes of a matrix code must agree within 6 %
MODULE = {
    "ean-13-retail": (0.264, 0.660), "ean-8-retail": (0.264, 0.660),
    "ean-13-distribution": (0.495, 0.660), "itf-14": (0.495, 1.016),
    "gs1-128-distribution": (0.495, 1.016), "gs1-128-healthcare": (0.170, 0.495),
    "datamatrix-healthcare": (0.254, 0.990), "datamatrix-retail": (0.396, 0.990),
    "qr-retail": (0.396, 0.990), "databar-distribution": (0.495, 0.660),
}
MATRIX = ("datamatrix-healthcare", "datamatrix-retail", "qr-retail")


class Job:
    """A request with its gaps filled. Lengths [m], speeds [m/s], resolutions [1/m]."""

    def __init__(self, sections):
        self.sections = sections
        get = lambda section, key, default=None: sections.get(section, {}).get(key, default)
        self.get = get
        self.image_width = get("image", "width")
        self.margin = get("image", "margin", get("line", "weave", 0.0))
        self.width = self.image_width + 2 * self.margin
        self.length = get("image", "length")
        self.cylinder = get("product", "form", "flat") == "cylinder"
        # rule read from the output: a body without a pitch turns once for each image
        turn = math.pi * get("product", "diameter", 0.0) if self.cylinder else self.length
        self.pitch = get("product", "pitch", turn)
        self.share = self.length / self.pitch if self.length and self.pitch else 1.0
        self.levels = int(get("image", "levels", 2))
        self.solids = get("image", "solids", "yes") == "yes"
        self.feature = get("image", "smallest_feature")
        self.absorbency = get("substrate", "absorbency", "low")
        air = get("line", "air_temperature")
        self.room = air[1] if air else 25 + 273.15
        self.set_speed()
        self.set_resolution()
        self.set_channels()

    def set_speed(self):
        """Line speed served, the greater of speed and what the throughput needs."""
        low, high = self.get("line", "speed", (0.0, 0.0))
        self.passed = self.get("product", "width", self.get("substrate", "width", self.width))
        needed = 0.0
        if self.get("line", "throughput"):
            rate, unit = self.get("line", "throughput")
            needed = rate * self.pitch if unit == "parts" else rate / self.passed
        self.speed = max(high, needed)
        self.speed_low = low if low else self.speed
        self.mode = self.get("line", "mode")
        self.indexing = self.get("line", "indexing")
        if self.mode is None:
            self.mode = "either" if self.indexing == "yes" else "single"

    def set_resolution(self):
        """required and least, each (across, along): what is aimed at, and what still counts as
        met."""
        hard, soft = [0.0, 0.0], [0.0, 0.0]
        explicit = self.get("image", "resolution")
        module = self.get("image", "barcode_module")
        self.module = module
        self.symbol = self.get("image", "barcode_symbol")
        direction = self.get("image", "barcode_direction")
        self.code_axes = [axis for axis, name in enumerate(("across", "along"))
                          if self.symbol in MATRIX or direction in (None, name)]
        if explicit:
            hard = list(explicit)
        else:
            if module:
                for axis in self.code_axes:
                    hard[axis] = (4 - 0.5) / module
            demands = []
            if self.feature:
                demands.append(2 / self.feature)
            if self.get("image", "smallest_text"):
                face = STROKE[self.get("image", "typeface", "regular")]
                stroke = face * self.get("image", "smallest_text")
                good = self.get("image", "text_quality") == "good"
                demands.append((3 if good else 2) / stroke)
            if self.get("image", "viewing_distance"):
                angle = math.radians(1 / 60)
                demands.append(1 / (2 * self.get("image", "viewing_distance")
                                    * math.tan(angle / 2)))
            if not demands and not module:
                demands.append(300 / INCH)
            soft = [max(demands, default=0.0)] * 2
        # rule read from the output: an axis of which nothing is demanded wishes for what the other
        # has
        for axis in (0, 1):
            if not hard[axis] and not soft[axis]:
                soft[axis] = hard[1 - axis]
        self.required = [max(hard[axis], soft[axis]) for axis in (0, 1)]
        self.least = [max(hard[axis], SOFT * soft[axis]) for axis in (0, 1)]

    def set_channels(self):
        """Channels in order, and the groups that may share a head."""
        inks = {name[4:]: ink for name, ink in self.sections.items() if name.startswith("ink.")}
        self.channels, self.groups = [], []
        for name, colour in self.sections.items():
            if not name.startswith("colour."):
                continue
            name = name[7:]
            kind = colour.get("kind", "process")
            ink_name = colour.get("ink") or (name if name in inks else next(iter(inks)))
            ink = inks[ink_name]
            channel = {
                "name": name, "kind": kind, "ink": ink, "ink_name": ink_name,
                "mean": colour.get("cover_mean", COVER_MEAN[kind]),
                "peak": colour.get("cover_peak", 1.0),
                "film": colour.get("film", FILM.get(kind)),
            }
            self.channels.append(channel)
            key = (ink["family"], ink.get("jetting_temperature"), ink.get("settles", "no"))
            for group in self.groups:
                if kind not in ALONE and group["key"] == key:
                    group["channels"].append(channel)
                    break
            else:
                self.groups.append({"key": None if kind in ALONE else key, "channels": [channel]})
        shared = 0
        for group in self.groups:
            group["name"] = group["channels"][0]["name"]
            if len(group["channels"]) > 1:
                shared += 1
                group["name"] = "process" if shared == 1 else "process%d" % shared

    def module_printed(self, axis, resolution):
        """(dots, module printed [m], within the symbol's range) on a lattice of that resolution."""
        low, high = (limit * 1e-3 for limit in MODULE[self.symbol])
        dots = max(1, floor(self.module * resolution + 0.5))
        for dots in (dots, dots + 1 if dots / resolution < low else dots - 1):
            printed = dots / resolution
            if dots >= 1 and low * (1 - 1e-9) <= printed <= high * (1 + 1e-9):
                return dots, printed, True
        return dots, printed, False
