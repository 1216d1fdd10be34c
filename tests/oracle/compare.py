"""Holds the program's JSON against the oracle's answer: a list of differences, each (kind,
text)."""

import math

from ink import cover
from quantity import INCH
from tilt import wider


def close(a, b, relative=1e-9):
    """Equal within what the JSON prints."""
    if a is None or b is None:
        return a is b
    return abs(a - b) <= relative * max(abs(a), abs(b)) + 1e-12


class Comparison:
    """differences[]; met: what of the request came up, for the counts."""

    def __init__(self, document, answer):
        self.document, self.answer, self.differences = document, answer, []
        self.excused, self.first = 0, None
        self.required()
        chosen = document.get("chosen")
        if bool(chosen) != bool(answer.accepted):
            self.differ("verdict", bool(chosen), bool(answer.accepted))
        elif chosen:
            self.chosen(chosen)
        self.rejected()

    def differ(self, kind, program, oracle):
        self.differences.append((kind, "program %s, oracle %s" % (program, oracle)))

    def number(self, kind, program, oracle):
        if not close(program, oracle):
            self.differ(kind, program, oracle)

    def equal(self, kind, program, oracle):
        if program != oracle:
            self.differ(kind, program, oracle)

    def required(self):
        required = self.document["required"]
        for axis, key in enumerate(("resolution_across_dpi", "resolution_along_dpi")):
            self.number("required", required[key], self.answer.job.required[axis] * INCH)

    def amount(self, kind, program, oracle, slack):
        """Equal to the minor unit; beyond it only by the amounts that lie on a half within the last
        binary digits."""
        if abs(program - oracle) > slack:
            self.differ(kind, program, oracle)

    @staticmethod
    def slack(station):
        return station.halves and int(station.halves * station.context["annuity"]) + 1

    # -- the chosen station and its alternatives

    @staticmethod
    def shape(station):
        """What names a station, comparable with the program's groups."""
        return [(i["group"].head["name"], i["group"].mode["name"], i["family"], i["k"], i["stack"],
                 i["lines"],
                 i["heads_across"], i["total"], float("%.9g" % (i["along_n"] * INCH)),
                 float("%.9g" % (i["along_m"] * INCH)), "%.6f" % math.degrees(i.get("tilt", 0.0)),
                 [n + 1 for n in i["levels"]])
                for i in station.items]

    @staticmethod
    def shape_of(groups):
        found = []
        for g in groups:
            lattice = [g["resolution_across_dpi"], g["resolution_along_dpi"]]
            if g["family"] == "scanning":
                lattice.reverse()
            found.append((g["head"], g["mode"], g["family"], g["interleave"], g["stack"],
                          g["film_heads"],
                          g["scan"]["heads_per_colour"] if "scan" in g else g["heads_across"],
                          g["heads_total"],
                          float("%.9g" % lattice[0]), float("%.9g" % lattice[1]),
                          "%.6f" % g.get("tilt_deg", 0.0),
                          [dot["levels_used"] for dot in g["dots"]]))
        return found

    def station_of(self, groups):
        """(rank, station) of the oracle that is the program's."""
        wanted = self.shape_of(groups)
        for rank, station in enumerate(self.answer.accepted):
            if self.shape(station) == wanted:
                return rank, station
        return None, None

    def chosen(self, chosen):
        rank, station = self.station_of(chosen["groups"])
        if station is None:
            first = self.answer.accepted[0]
            self.differ("chosen.unknown", self.shape_of(chosen["groups"]),
                        (self.shape(first), first.key))
            return
        if rank:
            self.worse("chosen", station, self.answer.accepted[0])
        self.first = station
        for group, item in zip(chosen["groups"], station.items):
            self.group(group, item)
        self.money(station)
        self.alternatives()

    def group(self, group, item):
        base, along = item["group"], item["along_m"]
        expected = {
            "positions": base.positions, "rows_staggered": item["staggered"],
            "joints": item["joints"],
            "idle_nozzle_share": item["idle"], "frequency_allowed_hz": item["allowed"],
            "frequency_per_nozzle_hz": item["per_nozzle"], "frequency_use": item["use"],
            "frequency_needed_hz": item["per_nozzle"] * item["stack"],
            "speed_limit_m_per_s": item["limit"],
            "native_npi": base.native * INCH, "footprint_mm": item["depth"] * 1e3,
        }
        if not item["scan"]:
            expected.update(swath_mm=item["swath"] * 1e3, head_pitch_mm=item["head_pitch"] * 1e3)
        for key, value in expected.items():
            self.number("chosen." + key, group[key], value)
        self.equal("chosen.channels", group["channels"],
                   [c["name"] for c in base.group["channels"]])
        for dot, level, laydown in zip(group["dots"], item["levels"], item["laydown"]):
            likely = base.dots[level - 1][0]
            self.number("dot.drop_volume", dot["drop_volume_pl"],
                        base.mode["drops"][level - 1] * 1e15)
            self.number("dot.dot_diameter", dot["dot_diameter_um"], likely * 1e6)
            self.number("dot.laydown", dot["laydown_ml_per_m2"], laydown * 1e6)
            columns = 1 / item["along_n"] + wider(base.mode, base.native, item.get("tilt", 0.0))
            if not close(dot["cover_fraction"], cover(likely, columns, 1 / along), 1e-8):
                self.differ("dot.cover", dot["cover_fraction"], cover(likely, columns, 1 / along))
        if item["scan"]:
            scan = group["scan"]
            for key, value in (("interlace_steps", item["steps"]),
                               ("strokes", item["scan"]["strokes"]),
                               ("advance_mm", item["advance"] * 1e3),
                               ("carriage_speed_m_per_s", item["speed"]),
                               ("machine_width_mm", item["scan"]["machine"] * 1e3),
                               ("array_length_mm", item["scan"]["array"] * 1e3),
                               ("stroke_time_s", item["scan"]["time"])):
                self.number("scan." + key, scan[key], value)

    def money(self, station):
        document = self.document
        minor = lambda amount: None if amount is None else round(amount * 100)
        bill = sorted((str(b["quantity"]), str(minor(b["unit_price"]))) for b in document["bom"])
        ours = sorted((str(line[1]), str(line[2] if line[2] is None else round(line[2])))
                      for line in station.lines)
        if bill != ours:
            names = [(b["part_number"] or b["designation"], b["quantity"], b["unit_price"])
                     for b in document["bom"]]
            mine = [(n, q, p if p is None else float(p) / 100) for n, q, p, _ in station.lines]
            self.differ("bill",
                        [n for n in names if n[1:] not in [m[1:] for m in mine]] or len(names),
                        [m for m in mine if m[1:] not in [n[1:] for n in names]] or len(mine))
        cost = document["cost"]
        self.equal("money.capital", minor(cost["capital"]), station.capital)
        for key, value in station.terms.items():
            self.amount("money." + key, minor(cost[key + "_per_year"]), value, station.halves)
        self.amount("money.running", minor(cost["running_per_year"]), station.running,
                    station.halves)
        self.amount("money.ownership", minor(cost["ownership"]), station.ownership,
                    self.slack(station))
        self.equal("unpriced", document["bom_unpriced"], station.unpriced)
        self.number("footprint", document["footprint_mm"], station.footprint * 1e3)
        self.number("lead_time", document["lead_time"]["days"] if document["lead_time"] else None,
                    station.lead_time / 86400)

    def worse(self, kind, station, best):
        """A station of the program that does not rank first among its like: a combination it did
        not try, or a difference."""
        if len(station.items) > 1 and station.key >= best.key:
            self.excused += 1
        else:
            self.differ(kind + ".rank", (self.shape(station), station.key),
                        (self.shape(best), best.key))

    @staticmethod
    def heads_of(station):
        return [(item["group"].head["name"], item["family"]) for item in station.items]

    def alternatives(self):
        """Each differs from those before in heads or families, stands in order, and is the best of
        its like."""
        expected = [s for s in self.answer.alternatives(self.first)]
        listed = self.document["alternatives"]
        if len(self.answer.job.groups) == 1:
            self.equal("alternatives.heads",
                       [[(g["head"], g["family"]) for g in a["groups"]] for a in listed],
                       [self.heads_of(station) for station in expected])
        last = self.first
        for number, alternative in enumerate(listed):
            _, station = self.station_of(alternative["groups"])
            if station is None:
                self.differ("alternatives.unknown", self.shape_of(alternative["groups"]), None)
                continue
            like = next(s for s in self.answer.accepted
                        if self.heads_of(s) == self.heads_of(station))
            if station is not like:
                self.worse("alternatives", station, like)
            elif number < len(expected) \
                    and self.heads_of(expected[number]) != self.heads_of(station):
                self.worse("alternatives", station, expected[number])
            if station.key[:7] < last.key[:7]:
                self.differ("alternatives.order", station.key, last.key)
            last = station
            self.equal("alternatives.capital", round(alternative["cost"]["capital"] * 100),
                       station.capital)
            self.amount("alternatives.ownership", round(alternative["cost"]["ownership"] * 100),
                        station.ownership,
                        self.slack(station))
            self.equal("alternatives.unpriced", alternative["bom_unpriced"], station.unpriced)

    # -- the heads not chosen

    def rejected(self):
        """Every other head, for every group: its reasons with value and limit."""
        answer = self.answer
        mounted = {g["head"] for g in (self.document.get("chosen") or {"groups": []})["groups"]}
        listed = {row["head"]: row["reasons"] for row in self.document["rejected"]}
        wanted = [h["name"] for h in answer.rows["head"] if h["name"] not in mounted]
        self.equal("rejected.heads", list(listed), wanted)
        for name in wanted:
            if name in listed:
                self.reasons(name, listed[name])

    def reasons(self, head, listed):
        for number, group in enumerate(self.answer.job.groups):
            program = sorted(self.plain(r) for r in listed if r["group"] == group["name"])
            oracle = sorted(self.answer.reasons_of(head, number, self.first))
            same = len(program) == len(oracle) and all(
                p[:2] == o[:2] and close(p[2], o[2], 1e-6)
                and (o[3] is None or close(p[3], o[3], 1e-6))
                for p, o in zip(program, oracle))
            if [o[0] for o in oracle] == ["frequency"] and len(self.answer.job.groups) > 1:
                # rule read from the output: a carriage without an advance is measured for the late
                # gates too
                program = [p for p in program
                           if p[0] not in ("heads", "space", "budget", "lead_time")]
                same = [p[0] for p in program] == ["frequency"] and close(program[0][3],
                                                                          oracle[0][3], 1e-6)
            if not same and len(self.answer.job.groups) > 1:
                same = self.refused_otherwise(head, number, program)
            if not same and len(program) == 1 and program[0][0] == "lost":
                same = self.lost_otherwise(head, number, program[0])
            if not same:
                kind = "lost" if any(r[0] == "lost" for r in program + oracle) else "reasons"
                codes = [p[:2] for p in program] == [o[:2] for o in oracle]
                self.differ("rejected." + kind + (".value" if codes else ""),
                            (head, group["name"], program), oracle)

    def lost_otherwise(self, head, number, reason):
        """Whether the reason is true of another accepted station with that head, and why that is
        excused."""
        best = self.answer.best_with(head, number)
        for station in self.answer.accepted:
            if station.items[number]["group"].head["name"] == head and self.first:
                mine = self.answer.lost(station, self.first)
                if mine[:2] == reason[:2] and self.near(mine, reason, station):
                    before = len(self.differences)
                    if station is not best:
                        self.worse("rejected.lost", station, best)
                    return len(self.differences) == before
        return False

    def refused_otherwise(self, head, number, program):
        """Whether another combination with that head fails late by just these reasons."""
        for station, reasons in self.answer.refused:
            if station.items[number]["group"].head["name"] == head:
                mine = sorted((code, "", value, limit) for code, value, limit in reasons)
                if [m[:2] for m in mine] == [p[:2] for p in program] and \
                        all(close(m[2], p[2], 1e-6) for m, p in zip(mine, program)):
                    self.excused += 1
                    return True
        return False

    def near(self, mine, reason, station):
        """Values and limits alike; sums of money within what halves of a minor unit leave open."""
        slack = self.slack(station) + self.slack(self.first) if mine[1] == "ownership" else 0
        return all(close(a, b, 1e-6) or abs(a - b) <= slack for a, b in zip(mine[2:], reason[2:]))

    SCALE = {"mm": 1e-3, "um": 1e-6, "mPa.s": 1e-3, "mN/m": 1e-3, "kHz": 1e3, "dpi": 1 / INCH,
             "m/s": 1.0, "mJ/cm2": 10.0, "Hz": 1.0,
             "d": 86400.0, "m/min": 1 / 60, "EUR": 100.0, "USD": 100.0, "": 1.0, "deg": 1.0,
             "degC": 1.0}

    def plain(self, reason):
        """(code, subject where it tells, value, limit) in SI or minor units."""
        scale = self.SCALE[reason["unit"]]
        subject = reason["subject"] if reason["code"] == "lost" else ""
        return reason["code"], subject, reason["value"] * scale, reason["limit"] * scale
