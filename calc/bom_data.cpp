#include "calc/bom_table.h"

namespace calc {
namespace {

constexpr std::size_t rows = static_cast<std::size_t>(PartCode::count);

// Reference letters are ours; fields are the catalogue's own names.
constexpr std::array<BomKind, rows> table{{
    {PartCode::printhead,
     "PH",
     {"image.width", "image.resolution", "line.speed"},
     {"row_pitch", "nozzles", "drops", "frequency"}},
    {PartCode::drive_board, "DB", {"image.resolution", "line.speed"}, {"heads", "data_rate"}},
    {PartCode::cable, "W", {"image.resolution", "line.speed"}, {"per"}},
    {PartCode::ink_supply,
     "IS",
     {"ink.family", "line.speed", "colour.cover_peak"},
     {"flow", "heads", "container"}},
    {PartCode::degasser, "DG", {"ink.family"}, {"per"}},
    {PartCode::filter, "FL", {"ink.particle_size", "ink.family"}, {"per", "life"}},
    {PartCode::heater, "EH", {"ink.viscosity", "ink.jetting_temperature"}, {"per"}},
    {PartCode::chiller, "CH", {"ink.viscosity", "line.air_temperature"}, {"per"}},
    {PartCode::pretreatment, "PT", {"substrate.surface_energy", "ink.surface_tension"}, {"per"}},
    {PartCode::mount, "MB", {"image.width", "line.throw_distance"}, {"per"}},
    {PartCode::alignment_gauge, "AL", {"image.registration"}, {"per"}},
    {PartCode::alignment_hours, "", {"image.registration"}, {}},
    {PartCode::cap, "CP", {"line.hours_per_day"}, {"per", "life"}},
    {PartCode::wipe, "WP", {"line.hours_per_day"}, {"per", "life"}},
    {PartCode::spittoon, "SP", {"line.hours_per_day"}, {"per", "life"}},
    {PartCode::strike_sensor,
     "BS",
     {"product.thickness_variation", "line.throw_distance"},
     {"per"}},
    {PartCode::uv_lamp,
     "L",
     {"ink.cure_dose", "line.speed"},
     {"wavelength", "irradiance", "window_along", "window_across"}},
    {PartCode::dryer,
     "DR",
     {"ink.water_share", "line.speed"},
     {"width", "length", "drying_rate", "electrical"}},
    {PartCode::exhaust, "EX", {"ink.family"}, {"per", "air_flow"}},
    {PartCode::ventilation, "VE", {"ink.exposure_limit", "ink.solvent"}, {"per", "air_flow"}},
    {PartCode::encoder, "EN", {"image.resolution", "line.speed"}, {"per"}},
    {PartCode::product_sensor, "PS", {"product.pitch"}, {"per"}},
    {PartCode::controller, "PC", {"image.width", "image.resolution"}, {"per"}},
    {PartCode::flush, "", {"ink.family"}, {"per", "life"}},
    {PartCode::first_fill, "", {"colour.cover_mean", "line.hours_per_day"}, {}},
    {PartCode::spare_head, "", {"limits.lead_time", "line.hours_per_day"}, {"life", "lead_time"}},
    {PartCode::commissioning, "", {}, {"per"}},
    {PartCode::training, "", {"service.serviceable"}, {"per"}},
}};

}  // namespace

const BomKind& bom_kind(PartCode code) { return table.at(static_cast<std::size_t>(code)); }

}  // namespace calc
