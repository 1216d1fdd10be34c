"""Where the program is known to depart from the method. The oracle follows the program in these
alone; each is shown to be there still by a seed that differs without it, so that a mended program
fails here until its line is taken out."""

FAULTS = {
    # under a carriage an arrangement counts as no faster than another of equal use of the rating,
    # which the carriage makes 0.9 for both: the faster is dropped, or by a last binary digit is not
    "carriage_drop_by_use": 2521,
    # of arrangements equal in heads, frequency and laydown one is dropped though they differ in
    # cost or order, and which does not follow the order mode, k, m, R_m
    "equal_dropped": 108,
    # heads in line for a film are tried with the largest drop alone
    "largest_drop_in_line": 593,
}
