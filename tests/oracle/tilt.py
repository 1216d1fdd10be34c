"""Heads that stand tilted (method, section 3, tilt): angles worth trying, the lattice, the swath and
the rows of heads at one, by plain projection of nozzles."""

import math

from quantity import above, ceil

MOST, UNEVEN, BODY_GAP, STITCH = math.radians(60), 0.10, 0.5e-3, 16


def rows_of(mode):
    """[(offset [m], place along the motion [m])] of the rows of one colour; None where the
    catalogue does not say how several stand."""
    offsets = mode.get("row_offsets", [0.0])
    places = mode.get("row_places", [0.0] if len(offsets) == 1 else None)
    if places is None:
        return None
    return [(offset / mode["row_pitch"], place) for offset, place in zip(offsets, places)]


def depth_of_field(head, mode):
    """Depth of the field by which the swath shrinks: the rows of the colour at least."""
    places = [place for _, place in rows_of(mode)]
    return max(head.get("field_depth", 0.0), max(places) - min(places))


def may(job, head, mode):
    """Whether a head may stand tilted. Heads round a body do not."""
    if head.get("tilts") != "yes" or job.cylinder or rows_of(mode) is None:
        return False
    return int(mode.get("colours", 1)) == 1 or "field_depth" in head


def gaps(mode, angle):
    """Gaps [m] between neighbouring nozzles projected across the motion, over the pitch of a
    row."""
    period = math.cos(angle) / mode["row_pitch"]
    seen = sorted((x * math.cos(angle) - y * math.sin(angle)) % period for x, y in rows_of(mode))
    return [b - a for a, b in zip(seen, seen[1:] + [seen[0] + period])]


def evenly(mode, native, angle):
    """Whether nozzles projected across the motion stand equally spaced within a tenth of the
    pitch."""
    pitch = math.cos(angle) / native
    return all(not above(abs(gap - pitch), UNEVEN * pitch) for gap in gaps(mode, angle))


def wider(mode, native, angle):
    """By how much [m] the widest gap exceeds the pitch: so far apart columns may stand that solids
    must close; 0 for heads that stand straight."""
    return max(0.0, max(gaps(mode, angle)) - math.cos(angle) / native) if angle else 0.0


def sense(mode, native, angle):
    """The angle, or its reverse where only that is even; None for neither."""
    return next((turned for turned in (angle, -angle) if evenly(mode, native, turned)), None)


def angles(job, head, mode, native, k):
    """The angles of k interleaved heads: where they meet R_n exactly; where not every nozzle has
    its own delay, also the least at which neighbouring nozzles lie whole lines of the R_m asked for
    apart and R_n is met."""
    wanted = job.required[0]
    if not above(wanted, k * native) or above(wanted / 2, k * native):
        return []
    exact = math.acos(min(1.0, k * native / wanted))
    found = [exact]
    if head.get("nozzle_delay") != "yes":
        pitch = 1 / native
        for j in range(1, 10000):
            sine = j / (pitch * job.required[1])
            if above(sine, math.sin(MOST)):
                break
            if not above(wanted, k * native / math.sqrt(1 - sine * sine)):
                if math.asin(sine) > exact * (1 + 1e-9):
                    found.append(math.asin(sine))
                break
    return [turned for turned in (sense(mode, native, angle) for angle in found)
            if turned is not None]


def printable(head, native, angle, resolutions, most):
    """Of resolutions along the motion the ones with p sin t a whole number of lines, each the least
    that is no coarser."""
    if head.get("nozzle_delay") == "yes":
        return resolutions
    step = math.sin(abs(angle)) / native
    found = []
    for value in resolutions:
        lines = max(1, ceil(value * step))
        fine = value if not above(lines, value * step) else lines / step
        if not above(fine, most) and not (found and math.isclose(fine, found[-1], rel_tol=1e-9)):
            found.append(fine)
    return found


def across(job, head, mode, native, nozzles, angle):
    """(heads, swath, pitch of heads, rows) over the printed width, None where no swath is left.

    Tilted heads do not run on into each other: joined ones overlap as staggered ones do."""
    pitch = math.cos(angle) / native
    swath = nozzles * pitch - depth_of_field(head, mode) * math.sin(abs(angle))
    overlap = head["overlap"] * math.cos(angle) if "overlap" in head else STITCH * pitch
    step = math.floor((swath - overlap) / pitch + 1e-9) * pitch
    if swath <= overlap or step <= 0:
        return None
    heads = 1 if not above(job.width, swath) else 1 + ceil((job.width - swath) / step)
    return heads, swath, step, rows(head, step, heads, angle)


def rows(head, step, heads, angle):
    """Rows in which slanted bodies keep the gap: two of a row, r P apart, clear each other along
    their rows of nozzles or square to them."""
    count = 1
    while count < heads:
        beside = count * step * math.cos(angle)
        square = count * step * math.sin(abs(angle))
        if not above(head["body_width"] + BODY_GAP, beside) \
                or not above(head["body_depth"] + BODY_GAP, square):
            break
        count += 1
    return count


def depth(head, angle):
    """Room of a body along the motion."""
    return head["body_width"] * math.sin(abs(angle)) + head["body_depth"] * math.cos(angle)
