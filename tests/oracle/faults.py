"""Where the program is known to depart from the method. The oracle follows the program in these
alone; each is shown to be there still by a seed that differs without it, so that a mended program
fails here until its line is taken out."""

FAULTS = {
    # controllers, encoders, product sensors, ventilation, commissioning and training count the
    # first group of colours only; `per` row, head, channel or supply means the whole station's
    "first_group_only": 16,
    # heads that do not join but stand in one row, their bodies being no wider than their pitch, are
    # called staggered; one row is straight
    "one_row_staggered": 19,
    # the peak flow leaves out the margin beside the image, whose nozzles jet too
    "peak_without_margin": 56,
    # under a carriage the parts counted per row follow the colours, neither the staggered rows nor
    # the heads in line
    "carriage_rows": 1,
    # under a carriage an arrangement counts as no faster than another of equal use of the rating,
    # which the carriage makes 0.9 for both: the faster is dropped, or by a last binary digit is not
    "carriage_drop_by_use": 2521,
    # of arrangements equal in heads, frequency and laydown one is dropped though they differ in
    # cost or order, and which does not follow the order mode, k, m, R_m
    "equal_dropped": 108,
    # heads in line for a film are tried with the largest drop alone
    "largest_drop_in_line": 593,
    # labour and energy priced in another currency than the totals are added as they stand
    "rates_at_face_value": 240,
}
