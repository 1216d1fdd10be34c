/// A price list laid over a catalogue.
#pragma once

#include <string_view>

#include "calc/catalogue.h"
#include "intake/diagnostic.h"

namespace intake {

/// Gives every row of the catalogue whose part number stands in the list the list's price and date,
/// with their places there as origin. The text is CSV: the line
/// `part_number,unit_price,currency,price_date`, then one such line a price; a field with a comma
/// stands in double quotes. Returns the faults and warnings of the list; the catalogue stays as it
/// was when one is an error.
Diagnostics apply_prices(std::string_view name, std::string_view text, calc::Catalogue& catalogue);

}  // namespace intake
