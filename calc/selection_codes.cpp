/// Codes of gates and of conditions.
#include <array>

#include "calc/codes.h"

namespace calc {
namespace {

/// In the order the gates are read: head and ink, lattice and rate, station.
constexpr std::array<std::string_view, 27> reasons{
    "head_data",  "ink_family", "ink_substrate", "temperature", "viscosity",      "tension",
    "throw",      "slope",      "serviceable",   "waveform",    "driver_sources", "levels",
    "resolution", "cover",      "feature",       "film",        "bar_code",       "frequency",
    "indexing",   "placement",  "heads",         "space",       "cure",           "drying",
    "budget",     "lead_time",  "lost"};

constexpr std::array<std::string_view, 39> conditions{
    "soft_demand",        "high_use",
    "rating_from_binary", "measure_dot",
    "aqueous_on_none",    "pretreatment",
    "viscosity_unknown",  "viscosity_span",
    "tension_unknown",    "surface_energy_unknown",
    "family_unknown",     "resolution_assumed",
    "colours_assumed",    "absorbency_assumed",
    "symbol_unknown",     "recirculation",
    "placement",          "waveform_limited",
    "indexing_unknown",   "head_data_unknown",
    "unpriced_budget",    "currency_budget",
    "lead_time_unknown",  "web_heat_unknown",
    "assumption_edge",    "ink_limit",
    "stroke_order",       "several_stations",
    "turn_travel",        "seam",
    "seam_unknown",       "assumption_condition",
    "throw_anew",         "zone_unclassified",
    "solvent_drying",     "capture_unproved",
    "food_face",          "dryer_heat_unknown",
    "no_recirculation"};

}  // namespace

std::span<const std::string_view> reason_codes() { return reasons; }
std::span<const std::string_view> condition_codes() { return conditions; }

}  // namespace calc
