/// Codes of warnings beside a number, and of questions to the customer.
#include <array>

#include "calc/codes.h"

namespace calc {
namespace {

constexpr std::array<std::string_view, 20> warnings{
    "explicit_below_derived", "finer_than_eye",  "finer_than_dot", "line_deviation",
    "angle_capped",           "overspray",       "particle_size",  "slope",
    "speed_below_throughput", "symbol_too_wide", "closed_gap",     "throughput_below_speed",
    "jetting_windows",        "slow_ejection",   "splash",         "settles_by_figures",
    "impact_speed",           "web_air_drag",    "stroke_hue",     "carriage_pace"};

constexpr std::array<std::string_view, 57> questions{"q_width",
                                                     "q_speed",
                                                     "q_pitch",
                                                     "q_ink_family",
                                                     "q_substrate",
                                                     "q_resolution",
                                                     "q_viewing",
                                                     "q_dot",
                                                     "q_absorbency",
                                                     "q_colours",
                                                     "q_viscosity",
                                                     "q_surface_tension",
                                                     "q_surface_energy",
                                                     "q_cure_dose",
                                                     "q_flash_point",
                                                     "q_exposure_limit",
                                                     "q_solvent",
                                                     "q_solvent_share",
                                                     "q_water_share",
                                                     "q_film",
                                                     "q_cover",
                                                     "q_ink_limit",
                                                     "q_ink_price",
                                                     "q_density",
                                                     "q_particle_size",
                                                     "q_settles",
                                                     "q_throw",
                                                     "q_thickness_variation",
                                                     "q_weave",
                                                     "q_indexing",
                                                     "q_barcode_symbol",
                                                     "q_barcode_direction",
                                                     "q_temperature_limit",
                                                     "q_hours",
                                                     "q_days",
                                                     "q_air_temperature",
                                                     "q_head_data",
                                                     "q_registration",
                                                     "q_symbol_size",
                                                     "q_particle_density",
                                                     "q_encoder",
                                                     "q_explosive_limit",
                                                     "q_molar_mass",
                                                     "q_boiling_point",
                                                     "q_area_mass",
                                                     "q_enclosed",
                                                     "q_diameter",
                                                     "q_viscosity_hot",
                                                     "q_contact",
                                                     "q_flush",
                                                     "q_cosolvent",
                                                     "q_printed_share",
                                                     "q_axis",
                                                     "q_body_mass",
                                                     "q_zone",
                                                     "q_drying",
                                                     "q_food_face"};

}  // namespace

std::span<const std::string_view> warning_codes() { return warnings; }
std::span<const std::string_view> question_codes() { return questions; }

}  // namespace calc
