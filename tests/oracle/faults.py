"""Where the program is known to depart from the method. The oracle follows the program in these alone; each is shown to
be there still by a seed that differs without it, so that a mended program fails here until its line is taken out."""

FAULTS = {
    "first_group_only": (
        "controllers, encoders, product sensors, commissioning and training count the first group of colours only; "
        "`per` row, head, channel or supply means those of the whole station", 16),
    "one_row_staggered": (
        "heads that do not join but stand in one row, because their bodies are no wider than their pitch, are called "
        "staggered; one row is straight", 19),
    "peak_without_margin": (
        "the peak flow leaves the margin beside the image out, though its nozzles jet (W = image + 2 margin)", 56),
    "carriage_rows": (
        "under a carriage the parts counted per row follow the colours, not the staggered rows nor the heads in line",
        1),
    "space_without_installed": (
        "the space is held against the length of dryer needed; the units installed are longer, and the accepted "
        "station then stands over the limit it prints", 4),
    "carriage_drop_by_use": (
        "under a carriage an arrangement counts as no faster than another of equal use of the rating, which the "
        "carriage makes 0.9 for both; so the faster is dropped, or by a last binary digit is not", 871),
    "equal_dropped": (
        "of arrangements equal in heads, frequency and laydown one is dropped though they differ in cost or order, and "
        "which one does not follow the order mode, k, m, R_m", 108),
    "largest_drop_in_line": (
        "heads in line for a film are tried with the largest drop alone", 593),
    "rates_at_face_value": (
        "labour and energy priced in another currency than the totals are added as they stand, without a rate", 240),
}
