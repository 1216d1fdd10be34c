"""Random requests and catalogues from a seed. Every maker, head, part and price in them is
invented."""

import random

FAMILIES = ("uv", "aqueous", "solvent", "oil")
KINDS = ("cable", "mount", "heater", "chiller", "degasser", "filter", "flush", "cap", "wipe",
         "spittoon", "strike_sensor", "pretreatment", "exhaust", "encoder", "product_sensor",
         "controller", "alignment", "commissioning", "training", "ventilation")
SYMBOLS = ("ean-13-retail", "itf-14", "gs1-128-distribution", "datamatrix-healthcare", "qr-retail")


class Maker:
    """One pair: text of the request and of its catalogue."""

    def __init__(self, seed):
        self.random = random.Random(seed)
        self.profile = ("plain", "scanning", "scanning", "groups", "tight", "scanning", "groups",
                        "scanning", "film",
                        "plain")[seed % 10]
        self.seed = seed
        self.tilting = random.Random("tilt %d" % seed)
        self.stirring = random.Random("stir %d" % seed)
        self.family = self.pick(FAMILIES[:3] if self.profile == "film" else FAMILIES)
        self.room = self.maybe(0.3, (22, 28, 32)) or 25

    def pick(self, choices):
        return self.random.choice(choices)

    def maybe(self, chance, choices):
        return self.pick(choices) if self.random.random() < chance else None

    # -- the catalogue

    def fields(self, tag, name, values, body=""):
        lines = "".join("    <%s>%s</%s>\n" % (k, v, k) for k, v in values.items() if v is not None)
        return '  <%s name="%s">\n%s%s  </%s>\n' % (tag, name, lines, body, tag)

    def priced(self, low, high, lead=(1, 16), unpriced=0.06):
        """Price and lead time, either of them now and then missing."""
        price = "%.2f" % (self.random.randint(low * 20, high * 20)
                          / 20) if self.random.random() > unpriced else None
        currency = self.maybe(0.01, ("USD",)) or "EUR"
        return {"price": price and price + " " + currency, "price_date": price and "2026-09-01",
                "lead_time": "%d week" % self.random.randint(*lead) if self.random.random() > 0.05
                else None}

    def mode(self, name, colours):
        pick = self.pick
        rows = pick((1, 2, 2, 4))
        offsets = [number / rows for number in range(rows)]
        if rows == 2 and self.random.random() < 0.1:
            offsets[1] = 0.4
        drops = pick(([12], [30], [3, 6, 9], [6, 12], [7, 14, 21], [14, 28, 42], [30, 60, 90],
                      [4, 8], [80], [10]))
        top = pick((12, 18, 24, 30, 42, 60))
        ratings = [top * share for share in (1, 0.75, 0.5)[:len(drops)]]
        if len(drops) > 1 and self.random.random() < 0.3:
            ratings = ratings[:1]
        native = pick((100, 150, 180, 200, 300, 360, 400, 600))
        values = {
            "colours": colours, "row_pitch": "%.9g npi" % (native / rows),
            "row_offsets": "; ".join("%g" % offset for offset in offsets),
            "nozzles": pick((256, 384, 512, 720, 1024, 1280)) if native < 300
            else pick((768, 1024, 1600, 2048, 2560)),
            "drops": "; ".join("%g pL" % drop for drop in drops),
            "frequency": "; ".join("%g kHz" % f for f in ratings),
            "grey_method": self.maybe(0.4, ("amplitude", "subdrops")),
            "row_places": self.places(rows),
        }
        lines = "".join("      <%s>%s</%s>\n" % (k, v, k) for k,
                        v in values.items() if v is not None)
        swath = int(values["nozzles"]) / native * 25.4
        return '    <mode name="%s">\n%s    </mode>\n' % (name, lines), swath

    def places(self, rows):
        """Of rows along the motion: in one line, or so that some angles print them evenly."""
        step = self.tilting.choice((0, 0, 0, 0, 0.002, 0.05, 0.5, 1.1))
        return "; ".join("%g mm" % (step * row) for row in range(rows))

    def head(self, number):
        pick, maybe = self.pick, self.maybe
        families = {self.family} if self.random.random() < 0.85 else {pick(FAMILIES)}
        families |= {f for f in FAMILIES if self.random.random() < 0.3}
        modes = [self.mode("m%d" % n, pick((1, 1, 1, 2, 4))) for n in range(pick((1, 1, 2)))]
        swath = min(s for _, s in modes)
        joins = self.random.random() < 0.3
        nominal = pick((5, 8, 10, 12))
        values = {
            "maker": "Invented Heads %d" % number, "part_number": "PH-%d" % number,
            **self.priced(300, 6000), "families": "; ".join(f for f in FAMILIES if f in families),
            "body_width": "%.4g mm" % (swath if joins else swath + pick((5, 15, 30, 60))),
            "body_depth": "%d mm" % pick((20, 26, 35, 50)),
            "body_height": maybe(0.7, ("60 mm", "110 mm", "180 mm")),
            "field_depth": "%g mm" % pick((1, 2.5, 5, 9)),
            "joins": "yes" if joins else "no", "overlap": maybe(0.25, ("0.5 mm", "1 mm", "2 mm")),
            "throw_least": maybe(0.9, ("0.3 mm", "0.5 mm", "0.8 mm")),
            "throw_nominal": maybe(0.9, ("1 mm", "1.5 mm")),
            "throw_most": maybe(0.9, ("1.8 mm", "3 mm", "5 mm")),
            "viscosity": maybe(0.8, ("%d mPa.s" % nominal,)),
            "viscosity_window": maybe(0.95,
                                      ("%d..%d mPa.s" % (nominal - 3, nominal + pick((3, 5, 8))),)),
            "tension_window": maybe(0.95, ("22..36 mN/m", "24..40 mN/m", "28..44 mN/m")),
            "temperature_most": maybe(0.95, ("45 degC", "55 degC", "65 degC")),
            "serviceable": maybe(0.95, ("user", "parts", "returned", "none")),
            "waveform": maybe(0.95, ("own", "limited", "maker")),
            "driver_sources": maybe(0.95, (1, 2, 3)), "recirculates": pick(("yes", "no")),
            "life": maybe(0.85, ("4000 h", "8000 h", "12000 h")),
            "life_drops": maybe(0.2, ("20000000000", "200000000000")),
            "purge": maybe(0.85, ("1 mL", "2.5 mL", "6 mL")),
            "avoid": maybe(0.1, ("9..11 kHz", "17..19 kHz")),
            "tilts": self.tilting.choice(("yes",) * 8 + ("no", None)),
            "nozzle_delay": self.tilting.choice(("yes", "no", None)),
            "board": maybe(0.9, ("B1", "B2")), "supply": maybe(0.8, ("S1", "S2", "S3")),
        }
        return self.fields("head", "H%d" % number, values, "".join(text for text, _ in modes))

    def catalogue(self):
        pick, maybe = self.pick, self.maybe
        count = pick((2, 3)) if self.profile in ("groups", "scanning") else pick((3, 4, 5))
        rows = [self.head(number) for number in range(1, count + 1)]
        for number in (1, 2):
            rows.append(self.fields("board", "B%d" % number, {
                "part_number": "BD-%d" % number, **self.priced(200, 1500),
                "heads": pick((1, 2, 4, 8)),
                "data_rate": maybe(0.8, ("0.05 Gbit/s", "0.5 Gbit/s", "4 Gbit/s"))}))
        for number in (1, 2, 3):
            rows.append(self.fields("supply", "S%d" % number, {
                "part_number": "SU-%d" % number, **self.priced(900, 4000),
                "families": "; ".join(f for f in FAMILIES if number == 1
                                      or self.random.random() < 0.6) or "uv",
                "flow": maybe(0.9, ("20 mL/min", "90 mL/min", "200 mL/min")),
                "heads": maybe(0.9, (2, 4, 8)),
                "container": maybe(0.9, ("1 L", "2 L", "5 L", "10 L")),
                "stirs": self.stirring.choice(("yes", "no", None))}))
        for number in range(pick((0, 1, 2, 3))):
            rows.append(self.fields("lamp", "L%d" % number, {
                "part_number": "LA-%d" % number, **self.priced(1500, 9000),
                "irradiance": "%d W/cm2" % pick((2, 6, 12)),
                "shape": maybe(0.6, ("0.9", "0.7")), "window_along": "%d mm" % pick((15, 25, 60)),
                "window_across": "%d mm" % pick((75, 150, 300)),
                "electrical": maybe(0.9, ("0.8 kW", "2.5 kW", "8 kW")),
                "depth": "%d mm" % pick((80, 120, 200)), "mercury": maybe(0.3, ("yes", "no"))}))
        for number in range(pick((0, 1, 2))):
            rows.append(self.fields("dryer", "D%d" % number, {
                "part_number": "DR-%d" % number, **self.priced(2000, 30000),
                "width": "%d mm" % pick((150, 600, 1300)),
                "length": "%d mm" % pick((300, 1000)),
                "drying_rate": maybe(0.8, ("18 kg/(m2 h)", "30 kg/(m2 h)")),
                "electrical": maybe(0.9, ("4 kW", "30 kW"))}))
        for kind in KINDS:
            for number in range(pick((0, 1, 1, 1, 1, 1, 1, 2))):
                rows.append(self.part(kind, number))
        return '<?xml version="1.0" encoding="UTF-8"?>\n<!-- Invented. -->\n' \
            '<catalogue date="2026-09-15">\n%s</catalogue>\n' % "".join(rows)

    def part(self, kind, number):
        station = kind in ("chiller", "pretreatment", "exhaust", "ventilation", "encoder",
                           "product_sensor", "controller", "alignment", "commissioning", "training")
        per = self.maybe(0.3,
                         ("station", "row") if station else ("head", "row", "channel", "supply"))
        families = None if station else self.maybe(0.3,
                                                   ("uv; aqueous", "solvent; oil", "uv",
                                                    self.family))
        return self.fields("part", "%s-%d" % (kind, number), {
            "part_number": "%s%d" % (kind[:3].upper(), number), **self.priced(10, 3000),
            "kind": kind, "per": per,
            "families": families, "fits": None if station else self.maybe(0.15, ("H1", "H1; H2")),
            "life": self.maybe(0.2, ("1000 h", "6000 h")) if kind != "flush" else None})

    # -- the request

    def ink(self, family):
        points = self.pick((
            "%g mPa.s at 40 degC" % self.pick((6, 9, 12)),
            "%g mPa.s at 25 degC; %g mPa.s at 45 degC"
            % self.pick(((20, 9), (12, 6), (30, 12), (6, 4.5))),
            "%g mPa.s at 25 degC; %g mPa.s at 35 degC; %g mPa.s at 45 degC"
            % self.pick(((22, 15, 10), (14, 9, 6.5), (8, 6, 5)))))
        values = {
            "family": family, "viscosity": points if self.random.random() < 0.95 else None,
            "surface_tension": self.maybe(0.95, ("24 mN/m", "28 mN/m", "33 mN/m", "26..30 mN/m")),
            "density": self.maybe(0.6, ("920 kg/m3", "1060 kg/m3", "1250 kg/m3")),
            "settles": self.maybe(0.2, ("yes", "no")),
            "price": self.maybe(0.85, ("48 EUR/L", "95.50 EUR/L", "130 EUR/L")),
            "cure_dose": self.maybe(0.9, ("120 mJ/cm2", "250 mJ/cm2", "500 mJ/cm2"))
            if family == "uv" else None,
            "water_share": self.maybe(0.4, ("60 %", "70 %")) if family == "aqueous" else None,
        }
        if points.count("at") > 1 and self.random.random() < 0.15:
            values["jetting_temperature"] = self.pick(("30 degC", "40 degC", "45 degC"))
        return values

    def image(self):
        pick, maybe = self.pick, self.maybe
        wide = self.profile == "scanning"
        values = {"width": "%g mm"
                  % pick((300, 600, 1000, 1600) if wide else (20, 44, 90, 150, 210, 333.3, 500)),
                  "length": "%g mm" % pick((600, 900, 1400) if wide else (20, 60, 100, 250))}
        demand = pick(("explicit", "explicit", "feature", "text", "code", "viewing", "two", "none"))
        finest = pick((1.0, 1.0, 2.0))
        if demand == "explicit":
            values["resolution"] = pick(("150 dpi", "200 dpi", "300 dpi", "360 dpi", "400 dpi",
                                         "600 dpi",
                                         "600 x 300 dpi", "360 x 720 dpi"))
        if demand in ("feature", "two"):
            values["smallest_feature"] = "%g mm" % (pick((0.25, 0.3, 0.5)) / finest)
        if demand in ("text", "two"):
            values["smallest_text"] = "%g pt" % pick((6, 8, 12, 18))
            values["typeface"] = pick(("regular", "bold", "serif"))
            values["text_quality"] = pick(("legible", "good"))
        if demand == "code":
            values["barcode_symbol"] = pick(SYMBOLS)
            values["barcode_module"] = {"ean-13-retail": "0.33 mm",
                                        "datamatrix-healthcare": "0.38 mm"}.get(
                values["barcode_symbol"], "0.5 mm")
            values["barcode_direction"] = maybe(0.6, ("across", "along"))
        if demand == "viewing" or self.random.random() < 0.2:
            values["viewing_distance"] = pick(("400 mm", "700 mm", "2 m"))
        values["levels"] = maybe(0.25, (2, 3, 4))
        values["solids"] = maybe(0.1, ("no", "yes"))
        values["margin"] = maybe(0.15, ("2 mm", "5 mm"))
        self.between_heads(values)
        return values

    def between_heads(self, values):
        """Now and then asks for what lies between the resolutions of most heads, so that it takes a
        tilt or a second head; without solids, which would keep most drops out."""
        if self.profile == "scanning" or self.tilting.random() < 0.45:
            return
        for key in ("smallest_feature", "smallest_text", "typeface", "text_quality", "barcode_symbol",
                    "barcode_module", "barcode_direction"):
            values.pop(key, None)
        values["resolution"] = self.tilting.choice((
            "220 dpi", "250 dpi", "330 dpi", "450 dpi", "500 x 300 dpi", "270 x 540 dpi"))
        values["solids"] = "no"

    def colours(self):
        """Colour sections with their inks."""
        pick, found, inks = self.pick, {}, {"main": self.ink(self.family)}
        process = pick((1, 1, 2, 4)) if self.profile != "groups" else pick((1, 2, 3))
        kind = pick(("process", "spot"))
        if self.profile == "film":
            found["gloss"] = {"kind": pick(("varnish", "white")), "ink": "main",
                              "film": "%g um" % pick((6, 8, 12, 20, 35, 60))}
        else:
            for number in range(process):
                found["c%d" % number] = {"kind": kind, "ink": "main",
                                         "cover_mean": self.maybe(0.3, ("8 %", "35 %")),
                                         "cover_peak": self.maybe(0.2, ("80 %", "95 %"))}
        if self.profile == "groups" or self.random.random() < 0.1:
            other = pick(("white", "white", "varnish", "second"))
            if other == "second":
                inks["more"] = self.ink(pick([f for f in FAMILIES if f != self.family]))
                found["other"] = {"kind": "spot", "ink": "more"}
            else:
                inks["more"] = self.ink(self.family)
                found[other] = {"kind": other, "ink": "more",
                                "film": self.maybe(0.6, ("6 um", "10 um", "15 um"))}
            if self.random.random() < 0.5:
                found = dict(reversed(found.items()))
        return found, inks

    def request(self):
        pick, maybe = self.pick, self.maybe
        cylinder = self.profile != "scanning" and self.random.random() < 0.2
        image = self.image()
        length = float(image["length"].split()[0])
        sections = {"request": {"id": "ORACLE-%d" % self.seed,
                                "title": "Invented request %d" % self.seed},
                    "product": {"form": "cylinder" if cylinder else "flat",
                                "diameter": "%g mm" % pick((24, 60, 120, 300)) if cylinder
                                else None,
                                "thickness": maybe(0.4, ("1 mm", "3 mm")),
                                "thickness_variation": maybe(0.4, ("0.1 mm", "0.4 mm")),
                                "pitch": maybe(0.4, ("%g mm" % (length * 1.25),))}, "image": image}
        if cylinder:
            image["length"] = "%g mm" % min(length, 60)
            image["width"] = "%g mm" % min(float(image["width"].split()[0]), 210)
        if self.random.random() < 0.3 and not cylinder:
            wide = float(image["width"].split()[0])
            sections["product"]["width"] = "%g mm" % (wide + pick((0, 10, 50)))
        sections["request"]["currency"] = maybe(0.3, ("EUR",))
        found, inks = self.colours()
        sections.update({"colour." + name: colour for name, colour in found.items()})
        sections.update({"ink." + name: ink for name, ink in inks.items()})
        sections["substrate"] = {
            "material": "invented board",
            "absorbency": pick(("none", "low", "high") if self.family != "oil" else
                                                              ("low", "high", "high", "high",
                                                               "none")),
            "surface_energy": maybe(0.7, ("32 mN/m", "38 mN/m", "46 mN/m")), **pick((
                {}, {}, {"spread_factor": "1.9"}, {"spread_factor": "2.2"},
                {"contact_angle": "30 deg"},
                {"dot_diameter": "55 um", "dot_volume": "12 pL"})),
            "temperature_limit": maybe(0.3, ("60 degC", "90 degC"))}
        sections["line"] = self.line()
        sections["service"] = {key: maybe(0.15, ("must", "prefer", "prefer"))
                               for key in ("serviceable", "waveform", "driver_sources")}
        tight = self.profile == "tight" or self.random.random() < 0.05
        sections["limits"] = {} if not tight else {
            "heads": maybe(0.4, (2, 6, 14, 40)),
            "budget": maybe(0.4, ("30000 EUR", "60000 EUR", "150000 EUR")),
            "lead_time": maybe(0.3, ("60 day", "90 day")),
            "space": maybe(0.4, ("700 mm", "900 mm", "1400 mm"))}
        sections["costs"] = {"labour": maybe(0.2, ("34 EUR/h", "52.75 EUR/h")),
                             "energy": maybe(0.2, ("0.21 EUR/kWh",)),
                             "discount": maybe(0.2, ("5 %", "11 %")), "years": maybe(0.2, (3, 7))}
        return self.text(sections)

    def line(self):
        pick, maybe = self.pick, self.maybe
        values = {"hours_per_day": maybe(0.7, ("6 h", "8 h", "16 h", "22 h")),
                  "days_per_year": maybe(0.7, (200, 250, 310)),
                  "throw_distance": maybe(0.5, ("1 mm", "1.4 mm", "2.5 mm")),
                  "throw_variation": maybe(0.3, ("0 mm", "0.2 mm")),
                  "weave": maybe(0.2, ("0.3 mm", "2 mm")),
                  "air_temperature": "%d degC" % self.room if self.room != 25 else None,
                  "encoder": maybe(0.1, ("on the line already",))}
        if self.profile == "scanning":
            values["mode"] = pick(("scanning", "scanning", "either"))
            values["indexing"] = pick(("yes", "yes", "yes", None, "no")
                                      if values["mode"] == "scanning" else ("yes",))
            values["throughput"] = "%g m2/h" % pick((5, 12, 25, 60))
            return values
        top = (10, 25, 40, 60, 100) if self.profile != "tight" else (60, 120, 200, 300)
        if self.random.random() < 0.25:
            values["throughput"] = "%d parts/min" % pick((30, 120, 300))
        else:
            values["speed"] = self.maybe(0.15, ("20..45 m/min",)) or "%d m/min" % pick(top)
        values["mode"] = maybe(0.5, ("single",))
        return values

    @staticmethod
    def text(sections):
        lines = ["; Invented."]
        for name, fields in sections.items():
            fields = {key: value for key, value in fields.items() if value is not None}
            if fields:
                lines += ["[%s]" % name] + ["%s = %s" % item for item in fields.items()] + [""]
        return "\n".join(lines)


def pair(seed):
    """(request text, catalogue text) of a seed."""
    maker = Maker(seed)
    return maker.request(), maker.catalogue()


if __name__ == "__main__":                # python3 generate.py SEED FOLDER writes the pair there
    import pathlib
    import sys
    for NAME, TEXT in zip(("request.ini", "catalogue.xml"), pair(int(sys.argv[1]))):
        (pathlib.Path(sys.argv[2]) / NAME).write_text(TEXT, encoding="utf-8")
