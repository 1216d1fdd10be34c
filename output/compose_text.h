/// Figures and lists in the words of the document.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/money.h"
#include "calc/specification.h"
#include "output/compose_context.h"

namespace output {

/// "45 m/min", behind feet a minute for a request in United States units. A limit is rounded down,
/// so that the printed speed passes.
std::string speed_text(const Context& context, calc::Speed speed);
/// The highest speed of the station; of its heads where it is not known with its stages.
calc::StationSpeed highest_speed(const Context& context);
std::string speed_limit_text(const Context& context, calc::Speed speed, int digits = 3);
/// Up to which speed the station passes every check, where that is less than its parts could run.
std::optional<calc::Speed> speed_held(const Context& context);
/// Up to which lower speed the station passes as it stands, and by which gate; empty where it does
/// up to highest_speed().
std::string speed_held_text(const Context& context);
/// The same for a column of m/min.
std::string speed_limit_number(const Context& context, calc::Speed speed);
/// "210 mm", behind inches for a request in United States units.
std::string length_text(const Context& context, calc::Length length, int digits = 4);
/// "600 × 900 dpi".
std::string lattice_text(calc::Resolution across, calc::Resolution along);
/// Number of dpi.
std::string dpi_text(calc::Resolution resolution);
/// "EUR 12 345.00".
std::string amount(std::string_view currency, calc::Money money);
/// "EUR 212 000", few significant digits, for what is no exact sum.
std::string rough_amount(std::string_view currency, double major, int digits = 3);
/// The encoder in the bill of a scanning station, its part number or designation: it rides along
/// the stroke. Empty where the bill has none.
std::string carriage_encoder(const calc::Station& station);
/// A share as a number of percent, rounded down to 0.1 (or more decimals), so that 100 stands for
/// the whole only.
std::string percent_down(double share, int decimals = 1);
/// A count, ungrouped below five digits.
std::string count_text(double count);
/// "a, b and c" of pieces that are already markup.
std::string joined(const Context& context, const std::vector<std::string>& pieces);
/// "black, cyan and magenta" as markup; the many channels of a whole group as "process (6
/// channels)".
std::string names_text(const Context& context, const std::vector<std::string>& names);
/// "black, cyan and magenta, each", or the one name, as markup.
std::string channels_text(const Context& context, const std::vector<std::string>& names);
/// The word that an assumption which is no number takes, in the language.
std::string assumed_word(const Context& context, const calc::Assumption& assumption);
/// A value with its range: "45 m/min", "30 to 60 m/min", "2 ± 0.3 mm", text as it is.
std::string input_text(const Context& context, const calc::Input& input);
/// Text of the input with the units in it, behind their numbers, written as ISO 80000-1 wants them.
std::string pretty_text(std::string_view text);
/// The same of figures alone, in the language: "5 × 10 L", "6 mPa·s bei 25 °C", "10 000 h", each
/// number kept together with its unit.
std::string figures_text(const Context& context, std::string_view text);
/// The name of a bar-code symbol as markup.
std::string symbol_text(const Context& context, const std::string& symbol);
/// Request or catalogue keys in words, those that differ only in a name together, as markup.
std::string fields_text(const Context& context, const std::vector<std::string>& keys);
/// A row of the catalogue ("supply.S-1") as the document calls it, as markup: its kind in words and
/// its name, a part of the bill by its designation.
std::string row_text(const Context& context, const std::string& row);
}  // namespace output
