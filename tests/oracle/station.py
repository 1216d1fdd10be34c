"""What stands around the heads, its bill and its cost (method, sections 6 to 8). Money in minor
units."""

import math
from decimal import Decimal

import body
from equipment import curing, dryer
from quantity import above, cents, ceil

UPTIME, PURGE_SHARE, PURGES, PURGE, FLUSH, LIFE = 0.85, 0.03, 2, 2e-6, 1e-6, 8000 * 3600.0
CONFIDENCE, SERVICE_ACCESS, PROCESS_LIMIT, DENSITY = 0.95, 0.6, 2.4, 1050.0
PER = {"cable": "head", "mount": "head", "heater": "channel", "chiller": "station",
       "degasser": "supply",
       "filter": "supply", "flush": "channel", "cap": "head", "wipe": "row", "spittoon": "row",
       "strike_sensor": "station", "pretreatment": "station", "exhaust": "station",
       "ventilation": "station",
       "encoder": "station",
       "product_sensor": "station", "controller": "station", "alignment": "station",
       "commissioning": "station", "training": "station"}


def poisson(mean):
    """The least number of spares that suffices with the confidence wanted."""
    count, term = 0, math.exp(-mean)
    total = term
    while total < CONFIDENCE * (1 - 1e-12):
        count += 1
        term *= mean / count
        total += term
    return count


class Buyer:
    """What the catalogue has for the channels of a request, at its prices."""

    def __init__(self, job, rows, context, uses):
        self.job, self.rows, self.context, self.uses = job, rows, context, uses
        self.currency, self.hours = context["currency"], context["hours"]

    def price(self, row):
        """Unit price in minor units of the totals' currency, None when there is none."""
        if not row or "price" not in row or row["price"][1] != self.currency:
            return None
        return row["price"][0]

    def choice(self, kind, use):
        """The cheapest part of a kind for a channel: of its family, for its head; priced before
        unpriced."""
        family, head = use["channel"]["ink"]["family"], use["item"]["group"].head["name"]
        found = [row for row in self.rows["part"] if row.get("kind") == kind
                 and ("families" not in row or family in row["families"])
                 and ("fits" not in row or head in row["fits"])]
        return min(found, default=None,
                   key=lambda row: (self.price(row) is None, self.price(row) or 0))

    def wet(self):
        """Channels whose ink gives off vapour to be exhausted."""
        return [use for use in self.uses
                if use["channel"]["ink"]["family"] in ("aqueous", "solvent")]


class Station(Buyer):
    """Bill and cost of one arrangement for every group."""

    def __init__(self, job, rows, items, context):
        super().__init__(job, rows, context, [])
        self.items = items
        # (part number or kind, quantity, unit price or None, lead time or None)
        self.lines = []
        self.worn, self.without_lead, self.halves = [], 0, 0
        self.flow()
        self.turns = body.stations(job, items)
        self.bill()
        self.cost()

    def round(self, amount):
        """Whole minor units; counts amounts so near a half that binary numbers may fall to either
        side."""
        amount = Decimal(amount)
        self.halves += abs(amount % 1 - Decimal("0.5")) < Decimal("1e-6")
        return cents(amount)

    # -- what flows

    def flow(self):
        """Area, ink and its use for every channel."""
        job = self.job
        limits = [item["limit"] for item in self.items]
        self.limit = min(limits)
        self.margin = self.limit / job.speed
        self.area = job.image_width * job.speed
        rate, unit = job.get("line", "throughput", (0.0, None))
        if self.context["carriage"] and unit not in (None, "parts"):
            # rule read from the output: a carriage prints the area asked for
            self.area = rate
        peak_width = job.width
        for item in self.items:
            # rule read from the output: under a carriage the area that a stroke floods
            flood = peak_width * job.speed
            if self.context["carriage"]:
                flood = item["advance"] * item["speed"]
            for channel, laydown in zip(item["group"].group["channels"], item["laydown"]):
                heads, head = item["per_channel"], item["group"].head
                printed = self.area * laydown * channel["mean"] * job.share
                day = job.get("line", "hours_per_day", 8 * 3600.0) * UPTIME
                purge = max(PURGE_SHARE * printed, heads * head.get("purge", PURGE) * PURGES / day)
                flush = heads * FLUSH * PURGES / day
                self.uses.append({"channel": channel, "item": item, "ink": printed + purge,
                                  "flush": flush,
                                  "laydown": laydown, "heads": heads,
                                  "peak": flood * laydown * channel["peak"]})

    # -- the bill

    def add(self, name, quantity, price, lead=None, timed=True):
        if quantity > 0:
            self.lines.append((name, quantity, price, lead))
            if timed and lead is None:
                self.without_lead += 1

    def row_line(self, row, quantity, kind):
        if row is None:
            self.add(kind, quantity, None)
        else:
            self.add(row.get("part_number", row["name"]), quantity, self.price(row),
                     row.get("lead_time"))

    def bill(self):
        job, rows = self.job, self.rows
        heads = {}
        for item in self.items:
            heads.setdefault(item["group"].head["name"], []).append(item)
        for items in heads.values():
            self.row_line(items[0]["group"].head, sum(i["total"] for i in items), "printhead")
        self.boards()
        self.supplies()
        self.parts_of("cable")
        self.parts_of("degasser")
        self.parts_of("filter")
        self.conditioning()
        self.parts_of("pretreatment",
                      [use for use in self.uses
                       if self.context["pretreatment"](use["channel"]["ink"])])
        self.parts_of("mount")
        joints = sum(item["joints"] for item in self.items)
        if joints:
            if any(row.get("kind") == "alignment" for row in rows["part"]):
                # rule read from the output: for the groups with joints, and no line when the
                # catalogue has none
                self.parts_of("alignment", [use for use in self.uses if use["item"]["joints"]])
            self.add("alignment_hours", joints, self.context["labour"], timed=False)
        for kind in ("cap", "wipe", "spittoon", "strike_sensor"):
            self.parts_of(kind)
        self.stages()
        for kind in ("encoder", "product_sensor", "controller"):
            if kind != "encoder" or not job.get("line", "encoder"):
                self.parts_of(kind)
        self.parts_of("flush")
        self.first_fill()
        self.spares(heads)
        self.parts_of("commissioning")
        self.parts_of("training")
        self.capital = sum(cents(price * quantity) for _, quantity, price,
                           _ in self.lines if price is not None)
        self.unpriced = sum(1 for line in self.lines if line[2] is None)
        leads = [line[3] for line in self.lines if line[3] is not None]
        self.lead_time = max(leads, default=0.0)

    def boards(self):
        """As many as the heads and their data need, one kind of board over all groups."""
        by_board = {}
        for item in self.items:
            by_board.setdefault(item["group"].head.get("board"), []).append(item)
        for name, items in by_board.items():
            row = next((b for b in self.rows["board"] if b["name"] == name), None)
            total = sum(item["total"] for item in items)
            count = ceil(total / (row or {}).get("heads", 1))
            if row and row.get("data_rate"):
                count = max(count,
                            ceil(sum(self.data_rate(item) for item in items) / row["data_rate"]))
            self.row_line(row, count, "drive_board")

    def data_rate(self, item):
        """Bits a second of a group: active nozzles, frequency of each, bits of a dot."""
        bits = sum(math.ceil(math.log2(level + 1)) for level in item["levels"])
        return item["active"] * item["per_nozzle"] * bits

    def supplies(self):
        """Per channel: for the peak flow, for the heads fed; the head's own, else the cheapest of
        the family."""
        counted = {}
        for use in self.uses:
            ink, head = use["channel"]["ink"], use["item"]["group"].head
            fits = [row for row in self.rows["supply"] if "families" not in row
                    or ink["family"] in row["families"]]
            # rule: ink that settles goes into a supply that stirs, whichever its head names
            stirring = [row for row in fits if row.get("stirs") == "yes"]
            if ink.get("settles") == "yes" and stirring:
                fits = stirring
            own = [row for row in fits if row["name"] == head.get("supply")]
            choices = []
            for row in own or fits:
                count = max(1, ceil(use["peak"] / row["flow"]) if "flow" in row else 1,
                            ceil(use["heads"] / row["heads"]) if "heads" in row else 1)
                price = self.price(row)
                choices.append((price is None, (price or 0) * count, len(choices), count, row))
            _, _, _, count, row = min(choices, default=(0, 0, 0, 1, None), key=lambda c: c[:3])
            use["supplies"], use["supply"] = count, row
            entry = counted.setdefault(row and row["name"], [row, 0])
            entry[1] += count
        for row, count in counted.values():
            self.row_line(row, count, "ink_supply")

    def quantity_of(self, kind, per, uses):
        """What `per` counts among the channels concerned."""
        items = list({id(use["item"]): use["item"] for use in uses}.values())
        if per == "head":
            return sum(item["total"] for item in items)
        if per == "row":
            return sum(item["rows"] for item in items)
        if per == "channel":
            return len(uses)
        if per == "supply":
            return sum(use["supplies"] for use in uses)
        # each station that turns a body times its own heads
        return self.turns if kind in ("encoder", "product_sensor") else 1

    def parts_of(self, kind, uses=None):
        """A line for each part of a kind, counted over the channels it is for."""
        by_part = {}
        for use in uses if uses is not None else self.uses:
            row = self.choice(kind, use)
            by_part.setdefault(row and row["name"], (row, []))[1].append(use)
        for row, served in by_part.values():
            per = (row or {}).get("per", PER[kind])
            count = self.quantity_of(kind, per, served) + self.unused(kind, per, served)
            self.row_line(row, count, kind)
            self.worn.append((row or {}, count))

    def unused(self, kind, per, uses):
        """Inlets of the heads that carry no channel: they are filled with flush."""
        if kind != "flush" or per != "channel":
            return 0
        items = {id(use["item"]): use["item"] for use in uses}.values()
        return sum(item["group"].positions
                   * item["group"].colours - len(item["group"].group["channels"])
                   for item in items)

    def conditioning(self):
        """A heater where the ink is jetted above the room, a chiller where not."""
        warm, cold = [], []
        for use in self.uses:
            temperature = self.context["temperature"](use["item"]["group"].head,
                                                      use["channel"]["ink"])
            if temperature is None:
                # rule read from the output: neither where nothing is known
                continue
            # rule read from the output: a chiller wherever the ink is less than 5 K above the room
            if above(temperature, self.context["room"]):
                warm.append(use)
            if above(self.context["room"] + 5, temperature):
                cold.append(use)
        if warm:
            self.parts_of("heater", warm)
        if cold:
            self.parts_of("chiller", cold)

    def stages(self):
        """Lamps, dryer, exhaust; their power and length."""
        job = self.job
        self.power = []                       # (kW at mean, None when unknown)
        self.stage_length, self.lamps_along = 0.0, 0.0
        first = self.items[0]
        pace = (first["speed"], first["advance"], first["passes"]) if self.context["carriage"] else None
        lamp, self.uncured = curing(self, pace)
        dry = dryer(self)
        self.lamps_along = lamp["feed"] if lamp else 0.0
        for stage in (lamp, dry):
            if stage:
                self.row_line(stage["row"], stage["units"], stage["kind"])
                self.power.append(stage["power"])
                self.stage_length += stage["length"]
        hot = lamp and lamp["row"] and lamp["row"].get("mercury") == "yes"
        cured = [use for use in self.uses if hot and use["channel"]["ink"]["family"] == "uv"]
        self.parts_of("exhaust", self.wet() + cured)
        solvent = [use for use in self.uses if use["channel"]["ink"]["family"] == "solvent"]
        self.parts_of("ventilation", solvent)

    def first_fill(self):
        """A container for each supply, and at least what a shift uses at the mean; whole litres
        without a container."""
        shift = min(self.job.get("line", "hours_per_day", 8 * 3600.0), 8 * 3600.0)
        for use in self.uses:
            used = (use["ink"]) * shift
            container = (use["supply"] or {}).get("container", 1e-3)
            litres = max(use["supplies"], ceil(used / container)) * container * 1000
            price = use["channel"]["ink"].get("price")
            known = price[0] if price and price[1] == self.currency else None
            self.add("first_fill", round(litres), known, timed=False)

    def life(self, item):
        """Running seconds a head lasts: by hours or by drops a nozzle, the lesser."""
        head = item["group"].head
        lives = [head["life"]] if "life" in head else []
        if head.get("life_drops"):
            mean = max(channel["mean"] for channel in item["group"].group["channels"])
            lives.append(head["life_drops"] / (item["per_nozzle"] * mean))
        return min(lives, default=LIFE)

    def spares(self, heads):
        """Poisson over the lead time, at least one, and one more where a body or board can strike
        the heads."""
        for items in heads.values():
            head = items[0]["group"].head
            mean = 0.0
            for item in items:
                mean += item["total"] * head.get("lead_time",
                                                 0.0) * self.hours / (8760
                                                                      * 3600.0) / self.life(item)
            self.row_line(head, max(1, poisson(mean)) + (1 if self.context["lifts"] else 0),
                          "spare_head")

    # -- the cost

    def cost(self):
        year = self.hours
        ink = heads = energy = labour = cleaning = Decimal(0)
        for use in self.uses:
            price = use["channel"]["ink"].get("price")
            if price and price[1] == self.currency:
                ink += self.round(Decimal(use["ink"] * year * 1000) * price[0])
            flush = self.choice("flush", use)
            if flush and self.price(flush) is not None:
                cleaning += self.round(Decimal(use["flush"] * year * 1000) * self.price(flush))
        for item in self.items:
            changes = item["total"] * year / self.life(item)
            price = self.price(item["group"].head)
            if price is not None:
                heads += self.round(Decimal(changes) * price)
            labour += self.round(Decimal(changes) * (self.context["labour"] or 0))
        for power in self.power:
            if power is not None:
                energy += self.round(Decimal(power * year / 3600) * (self.context["energy"] or 0))
        cleaning += self.wear(year)
        self.terms = {"ink": int(ink), "heads": int(heads), "energy": int(energy),
                      "labour": int(labour),
                      "cleaning": int(cleaning)}
        self.running = sum(self.terms.values())
        self.ownership = self.round(Decimal(self.capital) + Decimal(self.running)
                                    * Decimal(self.context["annuity"]))

    def wear(self, year):
        """Parts of the bill replaced in a year, in minor units."""
        total = Decimal(0)
        for row, count in self.worn:
            if row.get("life") and self.price(row) is not None:
                total += self.round(Decimal(count * year / row["life"]) * self.price(row))
        return total

    @property
    def footprint(self):
        """Along the line. Rule for a carriage: its rows stand one behind the other along the
        stroke, square to the line; along it lie the heads of a colour end to end and, beside them,
        the windows of the lamps."""
        across = [item["along_feed"] for item in self.items if item["family"] == "scanning"]
        heads = max(across + [self.lamps_along]) if across \
            else sum(item["depth"] for item in self.items)
        return heads + self.stage_length + SERVICE_ACCESS

    @property
    def key(self):
        """The ranking of section 3, with the key `open` behind the price class."""
        items = self.items
        price_class = math.floor(math.log(self.ownership)
                                 / math.log(1.05)) if self.ownership > 0 else -1
        return (sum(i["unmet"] for i in items), self.unpriced, price_class,
                sum(1 for i in items if i["open"]),
                sum(i["joints"] for i in items), -round(self.margin, 6),
                sum(i["total"] for i in items),
                self.ownership, self.order)

    @property
    def order(self):
        """The last keys: order of the catalogue, mode, k, m, R_m, t."""
        return ([i["order"][0] for i in self.items], [i["order"][1] for i in self.items],
                [(i["k"], i["stack"], i["along_m"], i.get("tilt", 0.0)) for i in self.items])

    def late_reasons(self):
        """Gates of stage B."""
        job, found = self.job, []
        limits = job.sections.get("limits", {})
        total = sum(item["total"] for item in self.items)
        if "heads" in limits and above(total, limits["heads"]):
            found.append(("heads", total, limits["heads"]))
        if self.uncured:
            found.append(("cure", *self.uncured))
        space = self.footprint
        if "space" in limits and above(space, limits["space"]):
            found.append(("space", space, limits["space"]))
        budget, currency = limits.get("budget", (None, None))
        if currency == self.currency and self.capital > budget:
            found.append(("budget", self.capital, int(budget)))
        if "lead_time" in limits and above(self.lead_time, limits["lead_time"]):
            found.append(("lead_time", self.lead_time, limits["lead_time"]))
        return found
