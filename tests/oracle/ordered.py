"""The ordered list of accepted arrangements as text, and its comparison with the oracle's.

A line is a station, best first. Its groups are parted by ` + `, each with nine columns parted by
blanks: head mode family k m x n R_n R_m heads
(x heads in line for a film, n heads across or end to end, resolutions along the nozzle and the
motion axis in dpi, all heads of the group), then ` = ` and the ownership in minor units. Lines that
start with # are comments."""

from quantity import INCH


def lines(answer):
    """The oracle's own list in that form."""
    for station in answer.accepted:
        groups = ["%s %s %s %d %d %d %d %.9g %.9g %d" % (
            i["group"].head["name"], i["group"].mode["name"], i["family"], i["k"], i["stack"],
            i["lines"],
            i["heads_across"], i["along_n"] * INCH, i["along_m"] * INCH, i["total"])
                  for i in station.items]
        yield " + ".join(groups) + " = %d" % station.ownership


def parsed(line):
    """(groups, ownership): words and numbers, so that 600 and 600.0 are alike."""
    groups, _, ownership = line.partition(" = ")
    found = []
    for group in groups.split(" + "):
        words = group.split()
        found.append(words[:3] + [float("%.8g" % float(word)) for word in words[3:]])
    return found, int(ownership)


def differences(text, answer):
    """[(line number, program, oracle)] of the first disagreement, [] when the lists are one."""
    theirs = [line for line in text.splitlines() if line.strip() and not line.startswith("#")]
    ours = list(lines(answer))
    for number, (their, our) in enumerate(zip(theirs, ours), 1):
        if parsed(their) != parsed(our):
            return [(number, their, our)]
    if len(theirs) != len(ours):
        return [(min(len(theirs), len(ours)) + 1, "%d lines" % len(theirs), "%d lines" % len(ours))]
    return []
