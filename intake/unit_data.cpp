/// The rows of the unit table. Factors follow from the definitions of the units (inch 25.4 mm, foot
/// 12 inch, mil 1/1000 inch, point 1/72 inch, US liquid gallon 231 cubic inches, poise 0.1 Pa s,
/// dyne 1e-5 N); a test holds each against UDUNITS-2 through the last column.
#include "intake/unit_data.h"

#include <array>

namespace intake {
namespace {

constexpr double inch = 0.0254;
constexpr double foot = 0.3048;
constexpr double gallon = 3.785411784e-3;
constexpr double day = 86400;
constexpr double pi = 3.14159265358979323846;

constexpr std::array rows = {
    Unit{"mm", "length", 1e-3, 0, "mm"},
    Unit{"cm", "length", 1e-2, 0, "cm"},
    Unit{"m", "length", 1, 0, "m"},
    Unit{"um", "length", 1e-6, 0, "um"},
    Unit{"nm", "length", 1e-9, 0, "nm"},
    Unit{"in", "length", inch, 0, "inch"},
    Unit{"inch", "length", inch, 0, "inch"},
    Unit{"ft", "length", foot, 0, "foot"},
    Unit{"mil", "length", inch / 1000, 0, "inch/1000"},
    Unit{"pt", "length", inch / 72, 0, "inch/72"},
    Unit{"m/s", "speed", 1, 0, "m/s"},
    Unit{"m/min", "speed", 1.0 / 60, 0, "m/min"},
    Unit{"ft/min", "speed", foot / 60, 0, "foot/min"},
    Unit{"in/s", "speed", inch, 0, "inch/s"},
    Unit{"mm/s", "speed", 1e-3, 0, "mm/s"},
    Unit{"dpi", "resolution", 1 / inch, 0, "1/inch"},
    Unit{"npi", "resolution", 1 / inch, 0, "1/inch"},
    Unit{"dots/mm", "resolution", 1000, 0, "1/mm"},
    Unit{"pL", "volume", 1e-15, 0, "pL"},
    Unit{"uL", "volume", 1e-9, 0, "uL"},
    Unit{"mL", "volume", 1e-6, 0, "mL"},
    Unit{"L", "volume", 1e-3, 0, "L"},
    Unit{"gal", "volume", gallon, 0, "231 inch3"},
    Unit{"mPa.s", "viscosity", 1e-3, 0, "mPa.s"},
    Unit{"cP", "viscosity", 1e-3, 0, "centipoise"},
    Unit{"Pa.s", "viscosity", 1, 0, "Pa.s"},
    Unit{"mN/m", "surface tension", 1e-3, 0, "mN/m"},
    Unit{"dyn/cm", "surface tension", 1e-3, 0, "1e-5 N/cm"},
    Unit{"N/m", "surface tension", 1, 0, "N/m"},
    Unit{"mJ/m2", "surface tension", 1e-3, 0, "mJ/m2"},
    Unit{"kg/m3", "density", 1, 0, "kg/m3"},
    Unit{"g/cm3", "density", 1000, 0, "g/cm3"},
    Unit{"g/mL", "density", 1000, 0, "g/mL"},
    Unit{"kg/L", "density", 1000, 0, "kg/L"},
    Unit{"s", "time", 1, 0, "s"},
    Unit{"ms", "time", 1e-3, 0, "ms"},
    Unit{"min", "time", 60, 0, "min"},
    Unit{"h", "time", 3600, 0, "h"},
    Unit{"day", "time", day, 0, "day"},
    Unit{"days", "time", day, 0, "day"},
    Unit{"week", "time", 7 * day, 0, "week"},
    Unit{"weeks", "time", 7 * day, 0, "week"},
    Unit{"year", "time", 365 * day, 0, "common_year"},
    Unit{"years", "time", 365 * day, 0, "common_year"},
    Unit{"degC", "temperature", 1, 273.15, "degC"},
    Unit{"degF", "temperature", 5.0 / 9, 459.67 * 5 / 9, "degF"},
    Unit{"K", "temperature", 1, 0, "K"},
    Unit{"kHz", "frequency", 1e3, 0, "kHz"},
    Unit{"Hz", "frequency", 1, 0, "Hz"},
    Unit{"MHz", "frequency", 1e6, 0, "MHz"},
    Unit{"parts/min", "part rate", 1.0 / 60, 0, "1/min"},
    Unit{"parts/h", "part rate", 1.0 / 3600, 0, "1/h"},
    Unit{"parts/s", "part rate", 1, 0, "1/s"},
    Unit{"1/min", "part rate", 1.0 / 60, 0, "1/min"},
    Unit{"1/h", "part rate", 1.0 / 3600, 0, "1/h"},
    Unit{"bit/s", "data rate", 1, 0, "1/s"},
    Unit{"kbit/s", "data rate", 1e3, 0, "1000/s"},
    Unit{"Mbit/s", "data rate", 1e6, 0, "1e6/s"},
    Unit{"Gbit/s", "data rate", 1e9, 0, "1e9/s"},
    Unit{"mJ/cm2", "dose", 10, 0, "mJ/cm2"},
    Unit{"J/cm2", "dose", 1e4, 0, "J/cm2"},
    Unit{"J/m2", "dose", 1, 0, "J/m2"},
    Unit{"W/cm2", "irradiance", 1e4, 0, "W/cm2"},
    Unit{"mW/cm2", "irradiance", 10, 0, "mW/cm2"},
    Unit{"W/m2", "irradiance", 1, 0, "W/m2"},
    Unit{"%", "fraction", 1e-2, 0, "0.01"},
    Unit{"", "fraction", 1, 0, "1"},
    Unit{"ppm", "concentration", 1e-6, 0, "1e-6"},
    Unit{"deg", "angle", pi / 180, 0, "degree"},
    Unit{"rad", "angle", 1, 0, "rad"},
    Unit{"mrad", "angle", 1e-3, 0, "0.001 rad"},
    Unit{"mL/min", "flow", 1e-6 / 60, 0, "mL/min"},
    Unit{"L/min", "flow", 1e-3 / 60, 0, "L/min"},
    Unit{"L/h", "flow", 1e-3 / 3600, 0, "L/h"},
    Unit{"mL/h", "flow", 1e-6 / 3600, 0, "mL/h"},
    Unit{"m2/h", "area rate", 1.0 / 3600, 0, "m2/h"},
    Unit{"m2/min", "area rate", 1.0 / 60, 0, "m2/min"},
    Unit{"m2/s", "area rate", 1, 0, "m2/s"},
    Unit{"ft2/h", "area rate", foot* foot / 3600, 0, "foot2/h"},
    Unit{"ft2/min", "area rate", foot* foot / 60, 0, "foot2/min"},
    Unit{"kg/(m2 h)", "drying rate", 1.0 / 3600, 0, "kg/(m2 h)"},
    Unit{"g/(m2 s)", "drying rate", 1e-3, 0, "g/(m2 s)"},
    Unit{"kW", "power", 1e3, 0, "kW"},
    Unit{"W", "power", 1, 0, "W"},
    Unit{"m3/h", "flow", 1.0 / 3600, 0, "m3/h"},
    Unit{"g/mol", "molar mass", 1e-3, 0, "g/mol"},
    Unit{"g/m2", "area mass", 1e-3, 0, "g/m2"},
    Unit{"kg/m2", "area mass", 1, 0, "kg/m2"},
    Unit{"kJ/(kg K)", "heat capacity", 1e3, 0, "kJ/(kg K)"},
    Unit{"J/(kg K)", "heat capacity", 1, 0, "J/(kg K)"},
    Unit{"g/h", "mass flow", 1e-3 / 3600, 0, "g/h"},
    Unit{"mg/h", "mass flow", 1e-6 / 3600, 0, "mg/h"},
};

constexpr std::array<std::string_view, 16> known_currencies = {
    "EUR", "USD", "GBP", "CHF", "JPY", "SEK", "NOK", "DKK",
    "PLN", "CZK", "CAD", "AUD", "CNY", "INR", "KRW", "BRL"};

}  // namespace

std::span<const Unit> physical_units() { return rows; }

std::span<const std::string_view> currencies() { return known_currencies; }

}  // namespace intake
