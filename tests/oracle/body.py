"""Rows of heads round a body that turns under them (method, section 3, cylinders)."""

import math

from quantity import ceil, floor

GAP, ROW_GAP, SHARE = 0.5e-3, 10e-3, 0.75


def around(job, head, row_count, bank):
    """(stations, length of one along the line) of a group's rows of heads, `bank` of which join.

    Rule read from the output: rows that join stay together where they fit, and stations are filled
    evenly."""
    radius = job.get("product", "diameter") / 2
    given = job.get("line", "throw_distance")
    reach = radius + (given[1] if given else head.get("throw_nominal", 1e-3))
    depth = head["body_depth"]
    angle = 2 * math.atan((depth + GAP) / 2 / reach)
    # three quarters of the way round, and no jet upward
    fit = max(1, min(floor(SHARE * 2 * math.pi / angle), 1 + floor(math.pi / angle)))
    unit = bank if fit >= bank else 1
    stations = ceil(row_count / (fit // unit * unit))
    rows = ceil(ceil(row_count / stations) / unit) * unit
    stations = ceil(row_count / rows)
    outermost = (rows - 1) / 2 * angle
    half = (reach + head.get("body_height", 0.0)) * math.sin(outermost) \
        + depth / 2 * math.cos(outermost)
    return stations, 2 * max(half, radius) + ROW_GAP


def stations(job, items):
    """Stations that turn the body; 1 where it does not turn or a single row prints it."""
    if not any(item["stations"] for item in items):
        return 1
    return sum(item["stations"] or 1 for item in items)
