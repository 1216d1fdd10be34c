"""The whole answer for a request: stations over every combination, ranked, and what is said of
every other head."""

import itertools
from decimal import Decimal

import arrange
import carriage
from demand import Job
from ink import jetting
from quantity import above
from station import UPTIME, Station

LOST = ("prefers", "unpriced", "ownership", "open", "joints", "speed_margin", "heads", "ownership",
        "order")


class Answer:
    """accepted: stations in order of rank; groups: the arrangements of each group; reasons of
    heads."""

    def __init__(self, sections, rows):
        self.job, self.rows = Job(sections), rows
        self.context = context(self.job, rows)
        heads = rows["head"]
        for group in self.job.groups:
            arrange.with_reasons(self.job, group, heads)
        self.accepted, self.refused, self.served = [], [], {}
        self.every = [[] for _ in self.job.groups]
        if self.job.mode in ("single", "either"):
            self.single_pass(heads)
        if self.job.mode in ("scanning", "either"):
            self.scanning(heads)
        self.accepted.sort(key=lambda station: station.key)

    def single_pass(self, heads):
        passing = []
        for number, group in enumerate(self.job.groups):
            items = list(arrange.single(self.job, group, heads))
            self.every[number] += items
            passing.append(arrange.kept([item for item in items if not item["reasons"]]))
        self.combine(itertools.product(*passing), dict(self.context, carriage=False))

    def scanning(self, heads):
        aboard = carriage.Aboard(self.job, self.rows, self.context)
        for combination in carriage.combinations(self.job, aboard, heads, self.every, self.served):
            self.combine([combination], dict(self.context, carriage=True))

    def combine(self, combinations, context_of):
        for items in combinations:
            station = Station(self.job, self.rows, list(items), context_of)
            late = station.late_reasons()
            if late:
                self.refused.append((station, late))
            else:
                self.accepted.append(station)

    def alternatives(self, first):
        """Up to three behind the first that differ from all before in a head or a family."""
        seen, found = set(), []
        for station in [first] + self.accepted:
            shape = tuple((i["group"].head["name"], i["family"]) for i in station.items)
            if shape in seen:
                continue
            seen.add(shape)
            found.append(station)
        return found[1:4]

    def best_with(self, head, number):
        """The first accepted station that has the head in a group."""
        for station in self.accepted:
            if station.items[number]["group"].head["name"] == head:
                return station
        return None

    def reasons_of(self, head, number, first):
        """[(code, subject, value, limit)] of a head for a group. Rule read from the output: of all
        its arrangements the one that fails fewest gates speaks, the earlier on a tie."""
        station = self.best_with(head, number)
        if station and first and first.items[number]["group"].head["name"] != head:
            return [self.lost(station, first)]
        late = [(len(reasons), other.key, reasons) for other, reasons in self.refused
                if other.items[number]["group"].head["name"] == head]
        if late:
            return [(code, "", value, limit) for code, value,
                    limit in min(late, key=lambda l: l[:2])[2]]
        items = [item for item in self.every[number] if item["group"].head["name"] == head]
        fewest = min(items, key=lambda item: len(item["reasons"]))
        if not fewest["reasons"] and (number, head) in self.served and (not first or not station):
            return [("frequency", "", self.served[number, head], self.job.speed)]
        return [(code, "", value, limit) for code, value, limit in fewest["reasons"]]

    @staticmethod
    def lost(station, first):
        """The term of the ranking by which a station stands behind the first."""
        for subject, mine, best in zip(LOST, station.key, first.key):
            if mine != best:
                if subject == "ownership":
                    return "lost", subject, station.ownership, first.ownership
                if subject == "speed_margin":
                    return "lost", subject, -mine, -best
                return "lost", subject, mine, best
        return "lost", "order", 0, 0


def context(job, rows):
    """What every station of a request shares."""
    hours = job.get("line", "hours_per_day", 8 * 3600.0) * job.get("line", "days_per_year",
                                                                   250.0) * UPTIME
    years, rate = int(job.get("costs", "years", 5)), job.get("costs", "discount", 0.08)
    annuity = (1 - (1 + rate) ** -years) / rate if rate else float(years)
    energy = job.get("substrate", "surface_energy")
    lifts = job.cylinder or (job.get("product", "thickness")
                             and job.get("product", "thickness_variation"))
    # without request.currency that of the request's own prices, all in one, else that of the
    # catalogue's first price
    own = [job.get("limits", "budget"), job.get("costs", "labour"), job.get("costs", "energy")]
    own += [channel["ink"].get("price") for channel in job.channels]
    listed = [row["price"] for tag in rows for row in rows[tag] if "price" in row]
    priced = [price for price in own if price] + listed
    currency = job.get("request", "currency") or priced[0][1]

    def rate(key, default):
        """An hourly or energy price in minor units."""
        price = job.get("costs", key)
        return price[0] if price else Decimal(default)

    return {
        "currency": currency, "hours": hours, "annuity": annuity, "room": job.room,
        "labour": rate("labour", 4000), "energy": rate("energy", 20),
        "lifts": bool(lifts),
        # aqueous ink on what absorbs nothing needs a primer; any other 10 mN/m between its tension
        # and the surface
        "pretreatment": lambda ink: job.absorbency == "none" and ink["family"] == "aqueous"
        or energy is not None
        and "surface_tension" in ink and above(ink["surface_tension"][1] + 10e-3, energy),
        "temperature": lambda head, ink: jetting(head, ink, job.room)[0]
        if ink.get("viscosity") or ink.get("jetting_temperature") else None,
    }
