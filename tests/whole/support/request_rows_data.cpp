#include "tests/whole/support/field_rows.h"

namespace whole {
namespace {

// Situations in which a field comes to matter.
const std::string no_resolution = "-image.resolution\n";
const std::string small_text = no_resolution + "image.smallest_text = 4 pt\n";
const std::string bar_code =
    no_resolution + "image.barcode_symbol = ean-13-retail\nimage.barcode_module = 0.33 mm\n";
const std::string no_dot = "-substrate.dot_diameter\n-substrate.dot_volume\n";
const std::string aqueous =
    "ink.black.family = aqueous\nink.cyan.family = aqueous\nsubstrate.absorbency = high\n"
    "-ink.black.cure_dose\n-ink.cyan.cure_dose\n";
const std::string solvent =
    "ink.black.family = solvent\nink.cyan.family = solvent\nhead.A.families = solvent\n"
    "-ink.black.cure_dose\n-ink.cyan.cure_dose\n";
const std::string captured = solvent +
                             "line.enclosed = yes\nink.black.solvent = butanone\n"
                             "ink.cyan.solvent = ethanol\n";
const std::string by_area = "-line.speed\nline.throughput = 300 m2/h\n";
const std::string scanning =
    "line.mode = scanning\nline.indexing = yes\nimage.length = 500 mm\nline.speed = 0.2 m/min\n";
const std::string third_colour =
    "colour.green.kind = process\ncolour.green.ink = cyan\ncolour.green.cover_mean = 10 %\n";

std::vector<FieldRow> head_rows() {
  return {
      {"request.id", "CASE-1", "CASE-2", "request", "", ""},
      {"request.title", "made for a test", "made for another test", "request", "", ""},
      {"request.revision", "A", "B", "request", "", ""},
      {"request.date", "2026-11-20", "2026-11-21", "request", "", ""},
      {"request.currency", "EUR", "USD", "currency", "-ink.black.price\n-ink.cyan.price\n", ""},
      {"request.region", "EU", "US", "safety", "", ""},
      {"request.units", "si", "us", "", "", ""},
      {"request.language", "en", "fr", "", "", ""},
      {"request.notes", "a remark", "another remark", "", "", ""},
      {"customer.organisation", "Invented Labels", "Invented Sleeves", "", "", ""},
      {"customer.contact", "the buyer", "the planner", "", "", ""},
      {"customer.reference", "R-1", "R-2", "", "", ""},
      {"product.description", "a label", "a sleeve", "", "", ""},
      {"product.form", "flat", "cylinder", "tests", "", "product.diameter = 80 mm\n"},
      {"product.diameter", "80 mm", "20 mm", "tests", "product.form = cylinder\n", ""},
      {"product.width", "200 mm", "260 mm", "chosen", "-image.width\n", ""},
      {"product.thickness", "1 mm", "2 mm", "", "", ""},
      {"product.thickness_variation", "0.1 mm", "0.2 mm", "tests", "", ""},
      {"product.axis", "across", "along", "placement",
       "product.form = cylinder\nproduct.diameter = 300 mm\n", ""},
      {"product.pitch", "120 mm", "240 mm", "chosen",
       "-line.speed\nline.throughput = 150 parts/min\nimage.length = 100 mm\n", ""},
  };
}

std::vector<FieldRow> image_rows() {
  return {
      {"image.width", "200 mm", "260 mm", "chosen", "", ""},
      {"image.length", "100 mm", "150 mm", "consumption", "product.pitch = 200 mm\n", ""},
      {"image.resolution", "600 dpi", "300 dpi", "required", "", ""},
      {"image.smallest_feature", "0.1 mm", "0.08 mm", "required", no_resolution, ""},
      {"image.smallest_text", "4 pt", "6 pt", "required", no_resolution, ""},
      {"image.typeface", "regular", "bold", "required", small_text, ""},
      {"image.text_quality", "legible", "good", "required", small_text, ""},
      {"image.barcode_symbol", "ean-13-retail", "ean-8-retail", "tests", bar_code, ""},
      {"image.barcode_module", "0.33 mm", "0.38 mm", "required", bar_code, ""},
      {"image.barcode_direction", "across", "along", "required", bar_code, ""},
      {"image.viewing_distance", "300 mm", "600 mm", "required", no_resolution, ""},
      {"image.levels", "2", "4", "chosen", "", ""},
      {"image.solids", "yes", "no", "tests", "", ""},
      {"image.registration", "60 um", "40 um", "tests", "", ""},
      {"image.placement", "300 um", "200 um", "placement", "", ""},
      {"image.margin", "0 mm", "30 mm", "chosen", "", ""},
      {"colour.NAME.kind", "process", "white", "chosen", "", ""},
      {"colour.NAME.ink", "black", "cyan", "cost", "", ""},
      {"colour.NAME.cover_mean", "15 %", "30 %", "consumption", "", ""},
      {"colour.NAME.cover_peak", "100 %", "20 %", "bom", "supply.IS.flow = 10 mL/min\n", ""},
      {"colour.NAME.film", "5 um", "9 um", "chosen", "", ""},
  };
}

std::vector<FieldRow> ink_rows() {
  return {
      {"ink.NAME.family", "uv", "aqueous", "safety", "", ""},
      {"ink.NAME.viscosity", "20 mPa.s at 25 degC; 9 mPa.s at 50 degC",
       "24 mPa.s at 25 degC; 12 mPa.s at 50 degC", "ink", "", ""},
      {"ink.NAME.surface_tension", "28 mN/m", "34 mN/m", "conditions", "", ""},
      {"ink.NAME.density", "1060 kg/m3", "1200 kg/m3", "stages", aqueous, ""},
      {"ink.NAME.particle_size", "0.2 um", "5 um", "warnings", "", ""},
      {"ink.NAME.shear_index", "0.9", "0.6", "ink", "ink.black.shear_time = 0.1 ms\n", ""},
      {"ink.NAME.shear_time", "0.1 ms", "0.001 ms", "ink", "ink.black.shear_index = 0.6\n", ""},
      {"ink.NAME.shear_share", "20 %", "60 %", "ink",
       "ink.black.shear_index = 0.6\nink.black.shear_time = 0.1 ms\n", ""},
      {"ink.NAME.particle_density", "1500 kg/m3", "4200 kg/m3", "ink", "", ""},
      {"ink.NAME.particle_share", "2 %", "8 %", "ink", "ink.black.particle_density = 4200 kg/m3\n",
       ""},
      {"ink.NAME.settles", "no", "yes", "chosen", "", ""},
      {"ink.NAME.cure_dose", "200 mJ/cm2", "400 mJ/cm2", "stages", "", ""},
      {"ink.NAME.cure_irradiance", "1 W/cm2", "50 W/cm2", "rejected", "", ""},
      {"ink.NAME.pinning_dose", "10 mJ/cm2", "20 mJ/cm2", "stages", "", ""},
      {"ink.NAME.explosive_limit", "1.5 %", "3 %", "stages", captured, ""},
      {"ink.NAME.molar_mass", "70 g/mol", "90 g/mol", "stages", captured, ""},
      {"ink.NAME.boiling_point", "30 degC", "80 degC", "safety",
       "ink.black.flash_point = 10 degC\n", ""},
      {"ink.NAME.water_share", "60 %", "80 %", "stages", aqueous, ""},
      {"ink.NAME.solvent", "", "butanone", "safety", "", ""},
      {"ink.NAME.solvent_share", "0 %", "30 %", "safety", "", ""},
      {"ink.NAME.flash_point", "105 degC", "40 degC", "safety", "", ""},
      {"ink.NAME.exposure_limit", "200 ppm", "50 ppm", "safety", solvent, ""},
      {"ink.NAME.price", "60 EUR/L", "80 EUR/L", "cost", "", ""},
      {"ink.NAME.jetting_temperature", "42 degC", "48 degC", "ink",
       "ink.cyan.jetting_temperature = 45 degC\n", ""},
      {"ink.NAME.limit", "100 %", "240 %", "stages", aqueous + third_colour, ""},
  };
}

std::vector<FieldRow> substrate_rows() {
  return {
      {"substrate.material", "coated label", "film", "tests", "", ""},
      {"substrate.absorbency", "none", "high", "chosen", no_dot, ""},
      {"substrate.contact_angle", "30 deg", "50 deg", "chosen", no_dot, ""},
      {"substrate.dot_diameter", "62 um", "66 um", "chosen", "", ""},
      {"substrate.dot_volume", "10 pL", "9 pL", "chosen", "", ""},
      {"substrate.spread_factor", "2.4", "2.6", "chosen", no_dot, ""},
      {"substrate.surface_energy", "42 mN/m", "35 mN/m", "conditions", "", ""},
      {"substrate.temperature_limit", "80 degC", "60 degC", "tests", "", ""},
      {"substrate.area_mass", "200 g/m2", "240 g/m2", "stages", "", ""},
      {"substrate.heat_capacity", "1.2 kJ/(kg K)", "1.5 kJ/(kg K)", "stages", "", ""},
      {"substrate.food_contact", "no", "yes", "safety", "", ""},
      {"substrate.width", "220 mm", "300 mm", "chosen", by_area, ""},
  };
}

std::vector<FieldRow> line_rows() {
  return {
      {"line.speed", "30 m/min", "60 m/min", "chosen", "", ""},
      {"line.throughput", "300 m2/h", "500 m2/h", "chosen", "-line.speed\n", ""},
      {"line.mode", "single", "scanning", "chosen",
       "line.indexing = yes\nimage.length = 500 mm\nline.speed = 0.2 m/min\n", ""},
      {"line.indexing", "yes", "no", "rejected", scanning, ""},
      {"line.hours_per_day", "16 h", "8 h", "consumption", "", ""},
      {"line.days_per_year", "250", "300", "consumption", "", ""},
      {"line.throw_distance", "1 mm", "1.5 mm", "safety", "", ""},
      {"line.throw_variation", "0.01 mm", "0.02 mm", "placement", "", ""},
      {"line.weave", "0 mm", "0.05 mm", "placement", "", ""},
      {"line.weave_wavelength", "3 m", "4 m", "placement", "line.weave = 0.05 mm\n", ""},
      {"line.mount_tolerance", "8 um", "6 um", "placement", "", ""},
      {"line.wheel_error", "0.02 %", "0.01 %", "placement", "", ""},
      {"line.jetting", "down", "sideways", "placement", "image.levels = 4\n", ""},
      {"line.encoder", "", "on the drum", "bom", "", ""},
      {"line.encoder_step", "5 um", "1 um", "encoder", "", ""},
      {"line.encoder_wheel", "200 mm", "300 mm", "encoder", "line.encoder_counts = 20000\n", ""},
      {"line.encoder_counts", "20000", "40000", "encoder", "line.encoder_wheel = 200 mm\n", ""},
      {"line.air_temperature", "25 degC", "45 degC", "ink", "", ""},
      {"line.air_humidity", "50 %", "60 %", "stages", aqueous, ""},
      {"line.enclosed", "no", "yes", "stages", captured, ""},
      {"line.vapour_monitored", "no", "yes", "stages", captured, ""},
  };
}

std::vector<FieldRow> wish_rows() {
  return {
      {"service.serviceable", "must", "prefer", "rejected", "head.A.serviceable = none\n", ""},
      {"service.waveform", "must", "prefer", "rejected", "head.A.waveform = maker\n", ""},
      {"service.driver_sources", "must", "prefer", "rejected", "head.A.driver_sources = 1\n", ""},
      {"limits.heads", "4", "100", "rejected", "", ""},
      {"limits.budget", "1000 EUR", "900000 EUR", "rejected", "", ""},
      {"limits.lead_time", "20 day", "60 day", "rejected", "", ""},
      {"limits.space", "500 mm", "9000 mm", "rejected", "", ""},
      {"costs.labour", "30 EUR/h", "60 EUR/h", "cost", "", ""},
      {"costs.energy", "0.17 EUR/kWh", "0.174 EUR/kWh", "cost", "", ""},
      {"costs.discount", "8 %", "5 %", "cost", "", ""},
      {"costs.years", "5", "7", "cost", "", ""},
  };
}

}  // namespace

std::vector<FieldRow> request_rows() {
  std::vector<FieldRow> all;
  for (const auto& part :
       {head_rows(), image_rows(), ink_rows(), substrate_rows(), line_rows(), wish_rows()}) {
    all.insert(all.end(), part.begin(), part.end());
  }
  return all;
}

}  // namespace whole
