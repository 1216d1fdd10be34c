"""Scanning: one carriage for all groups, its advance, speed and strokes (method, section 3)."""

import itertools
import math
from fractions import Fraction

from arrange import ROW_GAP, Group, finish, kept, nozzles, rating, rows
from equipment import lamps_aboard
from quantity import INCH, above, ceil
from station import Buyer

PASSES, MOST_SPEED, ACCELERATION, DWELL, PARK, SHARE = 2, 1.5, 10.0, 0.1, 0.2, 0.9
MOST_HEADS = 24
ADVANCES, COUNTS = {}, {}


def arrangements(job, group, heads):
    """Every lattice of every head for a group, with its reasons; the number of heads is still
    open."""
    for order, head in enumerate(heads):
        for number, mode in enumerate(head["modes"]):
            base = Group(job, head, mode, group)
            steps = ceil(job.least[1] / base.native)
            for item in base.lattices(steps * base.native, job.required[0], 1, []):
                reasons = list(item["reasons"])
                if job.indexing == "no":
                    reasons.append(("indexing", 0, 1))
                yield dict(item, reasons=reasons, steps=steps, order=(order, number, 1), k=1,
                           stack=1,
                           allowed=rating(mode, max(item["levels"])), family="scanning")


def with_heads(job, item, count):
    """The arrangement with that many heads end to end for a colour."""
    base, head, mode = item["group"], item["group"].head, item["group"].mode
    pitch = 1 / base.native
    own = nozzles(mode)
    overlap = head.get("overlap", 0.0 if head.get("joins") == "yes" else 16 * pitch)
    step = math.floor(own - overlap / pitch + 1e-9)
    total_nozzles = own + (count - 1) * step
    staggered = rows(head, step * pitch, count)
    row_count = staggered * base.positions * item["lines"]
    counted = row_count
    total = base.positions * count * item["lines"]
    return finish(dict(item, heads_across=count, nozzles=total_nozzles, staggered=staggered,
                       rows=counted, total=total,
                       depth=row_count * (head["body_depth"] + ROW_GAP), idle=0.0,
                       all_nozzles=own * count,
                       along_feed=(count - 1) * step * pitch + head["body_width"]))


def counted(job, item, count):
    """The same, kept for the next combination."""
    known = item.setdefault("counted", {})
    if count not in known:
        known[count] = with_heads(job, item, count)
    return known[count]


def shared_advance(items):
    """The longest advance [m] that is whole rows of every group, coprime with its steps and within
    its nozzles."""
    known = tuple((item["nozzles"], item["steps"], item["group"].native) for item in items)
    if known not in ADVANCES:
        # the rows of each group as a fraction of an inch, and the least length that is whole rows
        # of all
        rows_of = [1 / (steps * Fraction(native * INCH).limit_denominator(1000)) for _, steps,
                   native in known]
        common = rows_of[0]
        for row in rows_of[1:]:
            common = Fraction(math.lcm(common.numerator * row.denominator,
                                       row.numerator * common.denominator),
                              common.denominator * row.denominator)
        # (rows a common length is, most rows an advance may be, steps) of each group
        whole = [(int(common / row), nozzles // PASSES, steps) for (nozzles, steps, _),
                 row in zip(known, rows_of)]
        longest = min(most // rows for rows, most, _ in whole)
        count = next((count for count in range(longest, 0, -1)
                      if all(math.gcd(count * rows, steps) == 1 for rows, _, steps in whole)),
                     None) \
            if all(math.gcd(rows, steps) == 1 for rows, _, steps in whole) else None
        ADVANCES[known] = count and float(count * common) * INCH
    return ADVANCES[known]


class Aboard:
    """The lamps a carriage takes along: those its station chooses at its speed and advance."""

    def __init__(self, job, rows, context):
        self.job, self.rows, self.context, self.known = job, rows, context, {}

    def length(self, items, speed, advance):
        head, passes = items[0]["group"].head["name"], passes_of(items)
        if (head, speed, advance, passes) not in self.known:
            uses = [{"channel": channel, "item": item} for item in items
                    for channel in item["group"].group["channels"]]
            buyer = Buyer(self.job, self.rows, self.context, uses)
            self.known[head, speed, advance, passes] = lamps_aboard(buyer, (speed, advance, passes))
        return self.known[head, speed, advance, passes]


def passes_of(items):
    """Strokes that lay down a point, of the group that takes the most."""
    return max(item["steps"] for item in items) * PASSES


def drive(job, items, aboard):
    """(advance, speed, strokes, stroke time, array, line speed served) or None when no advance
    suits. aboard: None leaves the lamps out."""
    advance = shared_advance(items)
    if not advance:
        return None
    heads = sum(item["depth"] for item in items)
    strokes = ceil(job.length / advance) + max(item["steps"] for item in items) * PASSES - 1
    for share in (SHARE, 1.0):
        speed = min([MOST_SPEED] + [share * item["allowed"] / item["along_m"] for item in items])
        while any(through(item, speed) for item in items):
            # rule read from the output: slowed to 0.999 of the lower end of the band
            speed = min(0.999 * item["group"].head["avoid"][0] / item["along_m"]
                        for item in items if through(item, speed))
        array = heads + (aboard.length(items, speed, advance) if aboard else 0.0)
        time = (job.width + array) / speed + 2 * speed / ACCELERATION + DWELL
        served = (job.pitch or job.length) / (strokes * time)
        if not above(job.speed, served):
            break
    return advance, speed, strokes, time, array, served


def through(item, speed):
    """Whether the frequency at that carriage speed lies in the band the head must avoid."""
    if not item["group"].head.get("avoid"):
        return False
    low, high = item["group"].head["avoid"]
    return not (above(low, speed * item["along_m"]) or above(speed * item["along_m"], high))


def loaded(job, items, found):
    """The items with what the carriage gives them."""
    advance, speed, strokes, time, array, served = found
    done = []
    for item in items:
        column = speed * item["along_m"]
        # rows of its lattice in an advance, each from another nozzle, once for each pass
        printing = round(advance * item["along_n"]) * PASSES
        done.append(dict(item, advance=advance, speed=speed, per_nozzle=column,
                         passes=passes_of(items), idle=1 - printing / item["all_nozzles"],
                         use=column / item["allowed"],
                         limit=served, scan={"strokes": strokes, "time": time, "array": array,
                                             "machine": job.width + array + speed ** 2
                                             / ACCELERATION + PARK},
                         active=printing * item["lines"]))
    return done


def combinations(job, aboard, heads, every, served):
    """Every combination that meets the throughput with a least number of heads; served takes, for
    each group and head, the fastest line any combination with it serves."""
    lists = []
    for number, group in enumerate(job.groups):
        items = list(arrangements(job, group, heads))
        for item in items:
            # rule read from the output: beside other groups the lamps, which are chosen for all,
            # are left out
            alone(job, item, aboard if len(job.groups) == 1 else None)
        every[number] += items
        for item in items:
            item.pop("counted")
            item["pace"] = item["allowed"] / item["along_m"]
        full = [with_heads(job, item, item["least"]) for item in items if not item["reasons"]]
        lists.append(kept(full))
    for items in itertools.product(*lists):
        yield from least_heads(job, items, aboard, served)


def alone(job, item, aboard):
    """Finds the least heads that make the arrangement fast enough by itself; adds the reason why
    none do, or too many."""
    best = 0.0
    for count in range(1, MOST_HEADS + 1):
        found = drive(job, [counted(job, item, count)], aboard)
        if found:
            best = max(best, found[5])
            if not above(job.speed, found[5]):
                item["least"], item["use"] = count, found[1] * item["along_m"] / item["allowed"]
                break
    else:
        item["reasons"].append(("frequency", best, job.speed))
    total, limit = counted(job, item, item.get("least", MOST_HEADS))["total"], job.get("limits",
                                                                                       "heads")
    if limit and above(total, limit):
        item["reasons"].append(("heads", total, limit))


def least_heads(job, items, aboard, served):
    """The combinations of head counts of which none can be lessened and the throughput still
    met."""
    met = []
    most = MOST_HEADS if len(items) == 1 else 16
    if (most, len(items)) not in COUNTS:
        COUNTS[most, len(items)] = sorted(itertools.product(range(1, most + 1), repeat=len(items)),
                                          key=sum)
    for counts in COUNTS[most, len(items)]:
        if any(all(a >= b for a, b in zip(counts, known)) for known in met):
            continue
        full = [counted(job, item, count) for item, count in zip(items, counts)]
        found = drive(job, full, aboard)
        for number, item in enumerate(items):
            name = number, item["group"].head["name"]
            served[name] = max(served.get(name, 0.0), found[5] if found else 0.0)
        if found and not above(job.speed, found[5]):
            met.append(counts)
            yield loaded(job, full, found)
