/// Codes of parts, checks and safety notes, each with the arguments it carries for its words.
#include <array>

#include "calc/bom.h"
#include "calc/codes.h"

namespace calc {
namespace {

// In the order of PartCode. A line carries its code where the catalogue gives no designation, and
// always for a spare.
constexpr std::array<std::string_view, static_cast<std::size_t>(PartCode::count)> parts{
    "printhead",       "drive_board",     "cable",      "ink_supply",   "degasser",
    "filter",          "heater",          "chiller",    "pretreatment", "mount",
    "alignment_gauge", "alignment_hours", "cap",        "wipe",         "spittoon",
    "strike_sensor",   "uv_lamp",         "dryer",      "exhaust",      "ventilation",
    "encoder",         "product_sensor",  "controller", "flush",        "first_fill",
    "spare_head",      "commissioning",   "training"};

// Code: acceptance [unit]; subject. The acceptance is absent where its figure is not known.
constexpr std::array checks{
    std::string_view("compatibility"),    // jetting temperature [degC]; ink / head
    std::string_view("viscosity"),        // at the jetting temperature [mPa.s]; channel
    std::string_view("drop_watching"),    // drop volume [pL] at the jetting temperature; channel
    std::string_view("frequency"),        // per nozzle [kHz]; head
    std::string_view("dot_diameter"),     // least [um]: what closes solids where they must; channel
    std::string_view("solid_cover"),      // covered share [%], rounded down; channels
    std::string_view("solids_close"),     // 100 [%]; channels
    std::string_view("film"),             // wet film [um]; channel
    std::string_view("dead_nozzles"),     // most after 8 h [of N nozzles]; head
    std::string_view("registration"),     // most [um]
    std::string_view("stitch"),           // most at a joint [um]; group, axis
    std::string_view("strokes"),          // most between strokes of a carriage [um]; group, axis
    std::string_view("tilt"),             // most off over a row of nozzles, across [um]; head
    std::string_view("row_delays"),       // most between rows of a tilted head, along [um]; head
    std::string_view("adhesion"),         // cross-cut class of ISO 2409, at most; material
    std::string_view("rub"),              // double strokes with a cloth; material that absorbs
    std::string_view("wetting"),          // surface energy after pre-treatment [mN/m]; material
    std::string_view("cure_at_speed"),    // dose [mJ/cm2] at the highest speed
    std::string_view("uv_leakage"),       // most at any place of work [W/m2]
    std::string_view("drying_at_speed"),  // water [kg/h] at the highest speed
    std::string_view("vapour_at_workplace"),   // most [ppm]
    std::string_view("vapours_at_workplace"),  // sum of shares of the limits, at most; solvents
    std::string_view("capture"),               // least share captured [%]
    std::string_view("solvent_dry"),           // speed [m/min]
    std::string_view("absorption"),            // speed [m/min]
    std::string_view("web_temperature"),       // most [degC]; material
    std::string_view("barcode_grade"),         // least grade, ISO/IEC 15416 or 15415; symbol
    std::string_view("barcode_module"),        // [um]; symbol, axis
    std::string_view("throw_trial"),           // greatest gap [mm]; head
    std::string_view("ink_consumption"),       // of all channels together [mL/h]; channels
    std::string_view("migration"),             // material
};

// Code: arguments. A note carries all of its arguments, those in brackets with the subject that
// picks their words; region is a subject "eu", "us" or "". An ink may be several, joined. clp and
// ghs are categories "1", "2", "1/2", "3", "4" or "-"; nfpa a class "IA" to "IIIB".
constexpr std::array notes{
    std::string_view("uv_led"),                  // lamp, lamps [1]
    std::string_view("uv_arc"),                  // lamp, lamps [1]
    std::string_view("uv_lamp_unknown"),         // none
    std::string_view("ozone"),                   // limit [ppm], lamps [1]; "rated": air [m3/h]
    std::string_view("mercury_waste"),           // lamps [1]
    std::string_view("photobiological"),         // irradiance [W/cm2]; wavelength [nm], dose_limit
                                                 // [kJ/m2], time [s], group; subject "actinic",
                                                 // "visible", "arc" or "unknown"
    std::string_view("stray_light"),             // distance [m], time [s], safe [m], density,
                                                 // share [%], worst_share [%], safe_worst [m],
                                                 // density_worst, near [m], density_near
    std::string_view("hot_web"),                 // temperature [degC]
    std::string_view("lamp_interlock"),          // [subject "nitrocellulose": material]
    std::string_view("uncured_ink"),             // ink
    std::string_view("uv_mist"),                 // peak [mL/h], ml_per_hour [mL/h]
    std::string_view("cure_dose_unknown"),       // ink
    std::string_view("solvent_vapour"),          // vapour [kg/h]
    std::string_view("wet_solvent"),             // subject "none" or ""
    std::string_view("air_explosion"),           // vapour [kg/h], air [m3/h], share [%], lel [%]
    std::string_view("air_health"),              // vapour [kg/h], air, air_least, air_most [m3/h],
                                                 // limit [ppm]; "captured": share, share_least [%]
    std::string_view("air_unknown"),             // none
    std::string_view("lel_estimated"),           // lel [%]
    std::string_view("voc"),                     // mass, peak [kg] a year
    std::string_view("flash_conflict"),          // ink, solvent, flash_point [degC], other [degC]
    std::string_view("flash_point_table"),       // ink, flash_point [degC]
    std::string_view("flash_point"),             // ink, subject "", "boiling_unknown",
                                                 // "combustible", "unclassified"; flash_point
                                                 // [degC], clp, ghs, nfpa, packing
    std::string_view("flash_point_unknown"),     // ink; [subject "uv"]
    std::string_view("exposure_limit"),          // ink, limit [ppm]; [subject "table"]
    std::string_view("exposure_limit_unknown"),  // ink
    std::string_view("vapour_zone"),             // ink, temperature, flash_point [degC]; subject
    std::string_view("classified_zone"),         // ink, flash_point [degC], below 23
    std::string_view("ink_family_unknown"),      // ink
    std::string_view("lel_monitoring"),          // share [%]; monitored [%] or "monitored"
    std::string_view("static"),                  // ["moving": speed [m/min]]; "eu"
    std::string_view("static_possible"),         // ["named": material]; ["dried": material, speed
                                                 // [m/min]]; "eu"
    std::string_view("static_solvent"),          // none
    std::string_view("aqueous_ink"),             // peak [mL/h], ml_per_hour [mL/h]
    std::string_view("aqueous_rest"),            // ink, share [%] that is no water
    std::string_view("oil_mist"),                // peak [mL/h], ml_per_hour [mL/h]
    std::string_view("moving_machinery"),        // region
    std::string_view("in_running_nip"),          // speed [m/min]
    std::string_view("carriage_pinch"),          // speed [m/s], width [mm]
    std::string_view("head_strike"),             // gap [mm]
    std::string_view("hot_dryer"),               // heat [kW], ["dust": material]
    std::string_view("dust_possible"),           // material
    std::string_view("nitrocellulose"),          // material
    std::string_view("pretreatment_hazard"),     // ["named": part]
    std::string_view("hot_ink"),                 // temperature [degC]
    std::string_view("compressed_air"),          // supplies [1]
    std::string_view("lockout"),                 // ["powered": electrical [kW]]; "eu"
    std::string_view("noise"),                   // region, lower, upper, action,
                                                 // permissible [dB(A)]
    std::string_view("waste_uv"),                // litres_per_year [L]
    std::string_view("waste_aqueous"),           // litres_per_year [L]
    std::string_view("waste_solvent"),           // litres_per_year [L]
    std::string_view("waste_oil"),               // litres_per_year [L]
    std::string_view("waste_law"),               // region
    std::string_view("waste_ignitable"),         // ink, flash_point [degC]
    std::string_view("flush_hazard"),            // [subject "named", fluid]
    std::string_view("ppe"),                     // ink, subject "uv", "aqueous", "solvent", "oil"
    std::string_view("ink_storage"),             // litres [L], container [L], bund [L]
    std::string_view("ink_storage_flammable"),   // litres [L], container [L], bund [L]; "us":
                                                 // limit [L]; "unknown"
    std::string_view("food_contact"),            // material (may be empty), region
    std::string_view("food_unknown"),            // region
    std::string_view("food_contact_uv"),         // material (may be empty)
};

constexpr std::array warnings{
    std::string_view("price_stale"),               // row, price_date, age [d]
    std::string_view("price_currency"),            // row, currency, wanted, prices; ["several"]
    std::string_view("ink_unpriced"),              // ink: running cost stands without it
    std::string_view("power_unknown"),             // row: energy cost stands without it
    std::string_view("spares_without_lead_time"),  // row: spares reckoned without it
    std::string_view("cure_unsized"),              // none: dose or lamp lacking, lamps on request
    std::string_view("pinning_unsized"),           // none: no lamp that can be dimmed
    std::string_view("pump_unknown"),              // row, flow [mL/min] of a channel
    std::string_view("supply_unstirred"),          // ink, row
    std::string_view("supply_not_named"),          // ink, row, head, named
};

}  // namespace

std::span<const std::string_view> part_codes() { return parts; }
std::span<const std::string_view> check_codes() { return checks; }
std::span<const std::string_view> safety_codes() { return notes; }
std::span<const std::string_view> station_warning_codes() { return warnings; }

}  // namespace calc
