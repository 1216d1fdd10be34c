"""Lamps and dryers (method, section 7), chosen by what they cost to buy and to run."""

from decimal import Decimal

from quantity import ceil, floor

AGEING, WATER, EVAPORATED, EFFICIENCY, DRYING_RATE = 0.8, 0.65, {"none": 0.9, "low": 0.9,
                                                                 "high": 0.6}, 0.45, 20 / 3600
PROCESS_LIMIT, DENSITY = 2.4, 1050.0


# rule read from the output: no more rows of lamps than these
MOST_ROWS = 100
# latent heat of water [kJ/kg] over temperature [degC], safety.md 3.1 [P21]
LATENT = ((0.01, 2500.9), (20, 2453.5), (25, 2441.7), (40, 2406.0), (50, 2382.0), (60, 2357.6),
          (70, 2333.0), (80, 2308.0))


def heat_of(job):
    """J to warm a kilogram of water from the air of the room and evaporate it (safety.md 3.1). Rule
    read from the output: at 80 degC, or at the temperature the substrate bears if that is less."""
    limit = job.get("substrate", "temperature_limit", 353.15) - 273.15
    start = job.room - 273.15
    end = min(80.0, limit)
    for (low, first), (high, second) in zip(LATENT, LATENT[1:]):
        if low <= end <= high:
            latent = first + (second - first) * (end - low) / (high - low)
    return (latent + 4.186 * (end - start)) * 1e3


def cheapest(station, choices):
    """The choice of least cost over the years; unknown price or power last, the earlier row on a
    tie. Rule read from the output: method.md does not say by what a lamp or dryer is chosen."""
    def cost(choice):
        prices = [(station.price(choice["row"]), choice["units"])]
        if choice["row"].get("mercury") == "yes" and not station.wet():
            prices.append((station.price(station.choice("exhaust", station.uses[0])), 1))
        energy = Decimal((choice["power"] or 0) * station.hours
                         / 3600) * (station.context["energy"] or 0)
        unknown = sum(1 for price, _ in prices if price is None) + (choice["power"] is None)
        return unknown, sum((price or 0) * units for price, units in prices) \
            + energy * Decimal(station.context["annuity"])
    return min(choices, key=cost, default=None)


def curing(buyer, pace):
    """(lamps for the largest dose, over the printed width, or None without UV ink; the greatest
    dose any lamp gives and the one asked for where none is strong enough, else None). pace: speed
    and advance of a carriage and the strokes that lay down a point, None on a line.

    Rule for a carriage: its windows lie side by side along the feed and begin with the swath; ink of
    the last stroke over a point lies at the swath's far end, passes * advance from there, and moves
    on by an advance a stroke. It is lit on its own stroke and on each that still finds it under a
    window; a stroke under no whole window gives it nothing."""
    job = buyer.job
    inks = [channel["ink"] for channel in job.channels if channel["ink"]["family"] == "uv"]
    if not inks:
        return None, None
    nothing = {"kind": "uv_lamp", "row": None, "units": 1, "power": None, "length": 0.0,
               "feed": 0.0}
    dose = max((ink.get("cure_dose", 0.0) for ink in inks))
    if not dose:
        return nothing, None
    choices, doses = [], []
    for row in buyer.rows["lamp"]:
        if not all(key in row for key in ("irradiance", "window_along", "window_across")):
            continue
        peak = row.get("shape", 0.5) * row["irradiance"] * AGEING * row["window_along"]
        if pace:
            speed, advance, passes = pace
            stroke, window = peak / speed, row["window_across"]
            # the last ink has gone `passes` advances before its first light, one more before each
            # further one
            reach = lambda strokes: (passes + strokes - 1) * advance
            rows = max(1, ceil(reach(max(1, ceil(dose / stroke))) / window))
            units, length = 2 * rows, 0.0
            strokes = floor(MOST_ROWS * window / advance) - passes + 1
            doses.append(max(0, strokes) * stroke)
        else:
            given = peak / job.speed
            rows = max(1, ceil(dose / given))
            units = rows * ceil(job.width / row["window_across"])
            length = rows * row.get("depth", 0.0)
            doses.append(MOST_ROWS * given)
        if rows > MOST_ROWS:
            continue
        # on a carriage only the lamps behind the heads are lit in a stroke: half of them
        lit = rows if pace else units
        power = row["electrical"] * lit / 1000 if "electrical" in row else None
        choices.append({"kind": "uv_lamp", "row": row, "units": units, "power": power,
                        "length": length,
                        "feed": rows * row["window_across"] if pace else 0.0})
    weak = (max(doses), dose) if doses and not choices else None
    return cheapest(buyer, choices) or nothing, weak


def lamps_aboard(buyer, pace):
    """Length [m] of the lamps on both ends of a carriage: those chosen for its speed and advance,
    side by side along the feed. Rule read from the output: without a choice the deepest."""
    lamp, _ = curing(buyer, pace)
    if not lamp:
        return 0.0
    rows = [lamp["row"]] if lamp["row"] else buyer.rows["lamp"]
    return 2 * max((row.get("depth", 0.0) for row in rows), default=0.0)


def dryer(station):
    """Dryers for the water at peak; None without aqueous ink."""
    job = station.job
    wet = [use for use in station.uses if use["channel"]["ink"]["family"] == "aqueous"]
    if not wet:
        return None
    # all process colours together are limited at the peak
    process = [use for use in wet if use["channel"]["kind"] == "process"]
    sum_of_peaks = sum(use["channel"]["peak"] for use in process)
    factor = min(1.0, PROCESS_LIMIT / sum_of_peaks) if sum_of_peaks else 1.0
    peak = mean = 0.0
    for use in wet:
        ink = use["channel"]["ink"]
        water = use["laydown"] * station.area * ink.get("density", DENSITY) * ink.get("water_share",
                                                                                      WATER) \
            * EVAPORATED[job.absorbency]
        peak += water * use["channel"]["peak"] * (factor if use in process else 1.0)
        mean += water * use["channel"]["mean"] * job.share
    power = mean * heat_of(job) / EFFICIENCY / 1000
    length_at = lambda rate: peak / (job.image_width * rate)
    choices = []
    for row in station.rows["dryer"]:
        if "width" not in row or "length" not in row:
            continue
        beside = ceil(job.width / row["width"])
        along = max(1, ceil(length_at(row.get("drying_rate", DRYING_RATE)) / row["length"]))
        units = along * beside
        # rule read from the output: the power of a dryer limits it too; images and the gaps
        # between them share its heat, while each film needs the whole length
        if row.get("electrical"):
            units = max(units, ceil(peak * job.share * heat_of(job) / EFFICIENCY / row["electrical"]))
        choices.append({"kind": "dryer", "row": row, "units": units, "power": power,
                        "length": ceil(units / beside) * row["length"]})
    return cheapest(station, choices) or {"kind": "dryer", "row": None, "units": 1, "power": power,
                                          "length": length_at(DRYING_RATE)}
