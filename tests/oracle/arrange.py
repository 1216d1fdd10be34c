"""Every arrangement of a head for a group (method, section 3), gates included, by plain
enumeration."""

import math

import tilt
from body import around
from demand import MATRIX
from gates import head_reasons, unmet
from ink import dots
from quantity import above, ceil

BODY_GAP, ROW_GAP, STITCH = 0.5e-3, 10e-3, 16
STACKS, STEPS, LINES = 6, 4, 6


def native(mode):
    """Nozzles per metre of one colour: of the rows together when evenly spaced, else of their
    largest gap."""
    offsets = sorted({round(offset % 1, 9) for offset in mode.get("row_offsets", [0.0])})
    gaps = [b - a for a, b in zip(offsets, offsets[1:] + [offsets[0] + 1])]
    return mode["row_pitch"] / max(gaps)


def nozzles(mode):
    """Nozzles of one colour at the native pitch. Rule read from the output: rows at uneven offsets
    count as many whole pitches of the gap as they are long."""
    rows_of = len(mode.get("row_offsets", [0.0]))
    return math.floor(mode["nozzles"] / rows_of / mode["row_pitch"] * native(mode) + 1e-6)


def rating(mode, level):
    """Frequency [Hz] allowed when drops up to that level (1 = smallest) are used; estimated from a
    binary rating."""
    ratings = mode["frequency"]
    if len(ratings) > 1 or len(mode["drops"]) == 1 or level == 1:
        return ratings[level - 1] if len(ratings) > 1 else ratings[0]
    method = mode.get("grey_method") or ("amplitude" if len(mode["drops"]) == 2 else "subdrops")
    return ratings[0] * 0.6 if method == "amplitude" else ratings[0] / level


def across(job, head, mode):
    """(heads, swath, pitch of heads, staggered rows) over the printed width."""
    pitch = 1 / native(mode)
    swath = nozzles(mode) * pitch
    overlap = head.get("overlap", 0.0 if head.get("joins") == "yes" else STITCH * pitch)
    step = math.floor((swath - overlap) / pitch + 1e-9) * pitch
    heads = 1 if not above(job.width, swath) else 1 + ceil((job.width - swath) / step)
    return heads, swath, step, rows(head, step, heads)


def rows(head, step, heads):
    """Rows that heads of that pitch stand in."""
    if head.get("joins") == "yes":
        return 1
    return min(heads, ceil((head["body_width"] + BODY_GAP) / step))


class Group:
    """What of a group and a mode does not depend on the lattice."""

    def __init__(self, job, head, mode, group):
        self.job, self.head, self.mode, self.group = job, head, mode, group
        self.colours = int(mode.get("colours", 1))
        self.positions = ceil(len(group["channels"]) / self.colours)
        self.native = native(mode)
        self.dots = [dots(job, volume) for volume in mode["drops"]]
        self.reasons = list(group["reasons"][head["name"]])
        self.wanted = max(job.levels - 1, 1)
        if self.wanted > len(mode["drops"]):
            self.reasons.append(("levels", len(mode["drops"]) + 1, job.levels))
        if job.feature and above(self.dots[0][1], job.feature):
            self.reasons.append(("feature", self.dots[0][0], job.feature))
        self.films = [channel["film"] or 0.0 for channel in group["channels"]]

    def candidates(self, along_n, required, wider):
        """Resolutions along the motion: the required one, those that close solids with a drop, at
        the likely and at the widest dot, and those that reach a film."""
        most = max(2 * required, along_n)
        found = [required]
        pitch = 1 / along_n + wider
        for likely, _, widest in self.dots if self.job.solids else ():
            for dot in (likely, widest):
                if dot > pitch:
                    found.append(1 / math.sqrt(dot * dot - pitch * pitch))
        for film in filter(None, self.films):
            found += [film / (volume * lines * along_n) for volume in self.mode["drops"]
                      for lines in range(1, LINES + 1)]
        kept = []
        for value in sorted(found):
            if value >= required and not above(value, most) and \
                    not (kept and math.isclose(value, kept[-1], rel_tol=1e-12)):
                kept.append(value)
        return kept

    def levels(self, along_n, along_m, lines, wider):
        """(level of each channel, reasons, open): the least drop that closes solids, gives the
        levels and the film."""
        diagonal = math.hypot(1 / along_n + wider, 1 / along_m)
        last = len(self.mode["drops"])
        base, reasons, is_open = 1, [], False
        if self.job.solids:
            closing = [n for n, dot in enumerate(self.dots, 1) if not above(diagonal, dot[2])]
            base = closing[0] if closing else last
            if not closing:
                reasons.append(("cover", self.dots[-1][2], diagonal))
        base = min(max(base, self.wanted), last)
        chosen = []
        for film in self.films:
            level = base
            while film and level < last and above(film,
                                                  self.laydown(level, along_n, along_m, lines)):
                level += 1
            if film and above(film, self.laydown(level, along_n, along_m, lines)):
                reasons.append(("film", self.laydown(level, along_n, along_m, lines), film))
            chosen.append(level)
        if self.job.solids:
            is_open = any(above(diagonal, self.dots[level - 1][0]) for level in chosen)
        return chosen, reasons, is_open

    def laydown(self, level, along_n, along_m, lines):
        """Ink of a solid [m3/m2]."""
        return self.mode["drops"][level - 1] * lines * along_n * along_m

    def lattices(self, along_n, required, axes, reasons, angle=0.0):
        """Every lattice and drop at that nozzle resolution; axes = which of (nozzle, motion) is
        across the line."""
        wider = tilt.wider(self.mode, self.native, angle)
        resolutions = self.candidates(along_n, required, wider)
        if angle:
            resolutions = tilt.printable(self.head, self.native, angle, resolutions,
                                         max(2 * required, along_n))
        for along_m in resolutions:
            codes = self.bar_code((along_n, along_m) if axes == 0 else (along_m, along_n))
            for lines, (levels, more, is_open) in self.in_line(along_n, along_m, wider):
                yield {"group": self, "along_n": along_n, "along_m": along_m, "lines": lines,
                       "levels": levels,
                       "open": is_open, "reasons": self.reasons + reasons + more + codes}

    def in_line(self, along_n, along_m, wider):
        """(heads in line, drops) that reach the film, each with the least drops that do; six where
        nothing does."""
        tried, found = {}, []
        for lines in range(1, LINES + 1):
            tried[lines] = self.levels(along_n, along_m, lines, wider)
            missed = any(code == "film" for code, _, _ in tried[lines][1])
            if not missed and not any(tried[n][0] == tried[lines][0] for n in found):
                found.append(lines)
        return [(lines, tried[lines]) for lines in found or [LINES]]

    def bar_code(self, lattice):
        """Reasons of the bar code on (across, along)."""
        job = self.job
        if not job.module or not job.symbol:
            return []
        found, printed = [], []
        for axis in job.code_axes:
            _, module, fits = job.module_printed(axis, lattice[axis])
            printed.append(module)
            if not fits:
                found.append(("bar_code", module, None))
        if job.symbol in MATRIX:
            apart = abs(printed[0] - printed[1]) / (sum(printed) / 2)
            if above(apart, 0.06):
                found.append(("bar_code", apart, 0.06))
        return found


def single(job, group, heads_list):
    """Every single-pass arrangement of every head, with the reasons it fails."""
    for order, head in enumerate(heads_list):
        for number, mode in enumerate(head["modes"]):
            base = Group(job, head, mode, group)
            across_n = across(job, head, mode)
            steps = [k for k in range(1, STEPS + 1) if not above(job.least[0], k * base.native)]
            coarse = [] if steps else [("resolution", STEPS * base.native, job.least[0])]
            for k in steps or [STEPS]:
                for item in base.lattices(k * base.native, job.required[1], 0, coarse):
                    item.update(order=(order, number, k), family=None, scan=None, tilt=0.0)
                    yield from stacked(job, head, item, k, across_n)
            if tilt.may(job, head, mode):
                yield from tilted(job, head, base, (order, number))


def tilted(job, head, base, order):
    """Every arrangement of tilted heads in a mode."""
    for k in range(1, STEPS + 1):
        for angle in tilt.angles(job, head, base.mode, base.native, k):
            across_n = tilt.across(job, head, base.mode, base.native, nozzles(base.mode), angle)
            if not across_n:
                continue
            along_n = k * base.native / math.cos(angle)
            for item in base.lattices(along_n, job.required[1], 0, [], angle):
                item.update(order=order + (k,), family="tilted", scan=None, tilt=angle)
                yield from stacked(job, head, item, k, across_n)


def stacked(job, head, item, k, across_n):
    """The arrangement with the heads that share its columns."""
    heads, swath, step, staggered = across_n
    base = item["group"]
    top = max(item["levels"])
    allowed = rating(base.mode, top)
    column = job.speed * item["along_m"]
    stack = max(1, ceil(column / allowed))
    reasons = list(item["reasons"])
    if stack > STACKS:
        stack = STACKS
        reasons.append(("frequency", column / stack, allowed))
    elif base.head.get("avoid"):
        free = [m for m in range(stack, STACKS + 1)
                if not in_band(job, item["along_m"], m, base.head["avoid"])]
        if free:
            stack = free[0]
        else:
            reasons.append(("frequency", column / stack, base.head["avoid"][0]))
    total = base.positions * heads * k * stack * item["lines"]
    if job.get("limits", "heads") and above(total, job.get("limits", "heads")):
        reasons.append(("heads", total, job.get("limits", "heads")))
    row_count = staggered * base.positions * k * stack * item["lines"]
    family = "tilted" if item["tilt"] else "straight" if heads == 1 else \
        "joined" if head.get("joins") == "yes" else "staggered" if staggered > 1 else "straight"
    body = tilt.depth(head, item["tilt"]) if item["tilt"] else head["body_depth"]
    turned, depth = 0, row_count * (body + ROW_GAP)
    if job.cylinder and (row_count > 1 or len(job.groups) > 1):
        turned, length = around(job, head, row_count, staggered)
        depth = turned * length
    yield finish(dict(item, reasons=reasons, k=k, stack=stack, heads_across=heads,
                      staggered=staggered, total=total,
                      rows=row_count, depth=depth, stations=turned, swath=swath, head_pitch=step,
                      family=family,
                      active=job.width * item["along_n"] * stack * item["lines"],
                      allowed=allowed, use=column / stack / allowed, per_nozzle=column / stack,
                      limit=stack * allowed / item["along_m"],
                      pace=stack * allowed / item["along_m"],
                      idle=idle(job, item, k, across_n)))


def idle(job, item, k, across_n):
    """Share of nozzles that print nothing: of straight heads over what their swaths make, of tilted
    ones counted nozzle by nozzle."""
    heads, swath, step, _ = across_n
    if not item["tilt"]:
        return 1 - job.width / (heads * step + swath - step)
    printing = math.floor(job.width * item["along_n"] / k + 1e-6)
    return 1 - printing / (heads * nozzles(item["group"].mode))


def in_band(job, along_m, stack, band):
    """Whether a nozzle's frequency, over the speeds asked, runs through the band."""
    low, high = job.speed_low * along_m / stack, job.speed * along_m / stack
    return not (above(band[0], high) or above(low, band[1]))


def beats(one, other):
    """Whether one arrangement of a head and mode beats another in heads, speed its frequency allows
    and laydown, and leaves no more solids open. Rule read from the output: open solids are the
    fourth term."""
    pairs = [(one["total"], other["total"]), (-one["pace"], -other["pace"]),
             (one["open"], other["open"]),
             (sum(one["laydown"]), sum(other["laydown"]))]
    return not any(above(a, b) for a, b in pairs) and any(above(b, a) for a, b in pairs)


def kept(items):
    """Marks the arrangements that no other of the same head and mode beats, and returns them."""
    same = {}
    for item in items:
        same.setdefault(item["order"][:2], []).append(item)
    for item in items:
        item["kept"] = not any(beats(other, item) for other in same[item["order"][:2]])
    return [item for item in items if item["kept"]]


def finish(item):
    """Adds what ranking and cost read."""
    base = item["group"]
    item.setdefault("stations", 0)
    item["unmet"] = unmet(base.job, base.head)
    item["joints"] = item["total"] - 1
    item["per_channel"] = item["total"] // base.positions
    item["laydown"] = [base.laydown(level, item["along_n"], item["along_m"], item["lines"])
                       for level in item["levels"]]
    return item


def with_reasons(job, group, heads_list):
    """The reasons of every head by itself, kept with the group."""
    group["reasons"] = {head["name"]: head_reasons(job, head, group) for head in heads_list}
    return group
