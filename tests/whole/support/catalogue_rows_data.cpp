#include "tests/whole/support/field_rows.h"

namespace whole {
namespace {

// Situations in which a field comes to matter.
const std::string aqueous =
    "ink.black.family = aqueous\nink.cyan.family = aqueous\nsubstrate.absorbency = high\n"
    "-ink.black.cure_dose\n-ink.cyan.cure_dose\n";
const std::string cylinder = "product.form = cylinder\nproduct.diameter = 80 mm\n";
const std::string one_rating = "head.A.mode.grey.frequency = 40 kHz\n";
const std::string second_board = "board.DB2.heads = 1\nboard.DB2.price = 100 EUR\n";
/// Between what one head prints and what two interleaved print.
const std::string to_tilt =
    "image.resolution = 700 x 600 dpi\nhead.A.tilts = yes\nhead.A.nozzle_delay = yes\n"
    "head.A.mode.grey.row_places = 0 mm; 0 mm; 0 mm; 0 mm\n";
const std::string second_supply = "supply.IS2.heads = 1\nsupply.IS2.price = 100 EUR\n";

std::vector<FieldRow> common_rows(const std::string& element, const std::string& both) {
  const std::string at = element + ".NAME.";
  return {
      {at + "maker", "Invented Works", "Invented Shop", element == "head" ? "trace" : "", both, ""},
      {at + "part_number", "IW-1", "IW-2", "bom", both, ""},
      {at + "designation", "one of a kind", "another of a kind", "bom", both, ""},
      {at + "price_date", "2026-09-01", "2025-09-01", "warnings", both, ""},
      {at + "price", "1000 EUR", "1100 EUR", "bom", both, ""},
      {at + "lead_time", "70 day", "90 day", "bom", both, ""},
      {at + "provenance", "measured", "mail", "", both, ""},
  };
}

std::vector<FieldRow> body_rows() {
  return {
      {"head.NAME.families", "uv; aqueous", "aqueous", "chosen", "", ""},
      {"head.NAME.body_width", "70 mm", "40 mm", "chosen", "", ""},
      {"head.NAME.body_depth", "40 mm", "60 mm", "footprint_mm", "", ""},
      {"head.NAME.body_height", "100 mm", "150 mm", "footprint_mm", cylinder, ""},
      {"head.NAME.field_depth", "5 mm", "8 mm", "tests", cylinder, ""},
      {"head.NAME.joins", "no", "yes", "chosen", "", ""},
      {"head.NAME.overlap", "0.5 mm", "5 mm", "chosen", "", ""},
      {"head.NAME.tilts", "yes", "no", "chosen", to_tilt, ""},
      {"head.NAME.nozzle_delay", "yes", "no", "chosen", to_tilt, ""},
      {"head.NAME.nozzle_diameter", "30 um", "20 um", "warnings",
       "ink.black.particle_size = 0.5 um\n", ""},
      {"head.NAME.drop_speed", "6 m/s", "8 m/s", "placement", "", ""},
      {"head.NAME.drop_speed_at", "nozzle", "one_mm", "placement", "", ""},
      {"head.NAME.straightness", "5 mrad", "4 mrad", "placement", "", ""},
      {"head.NAME.speed_spread", "5 %", "4 %", "placement", "", ""},
      {"head.NAME.throw_least", "0.5 mm", "0.995 mm", "rejected", "", ""},
      {"head.NAME.throw_nominal", "1 mm", "1.5 mm", "safety", "-line.throw_distance\n", ""},
      {"head.NAME.throw_most", "3 mm", "1.005 mm", "rejected", "", ""},
      {"head.NAME.viscosity", "10 mPa.s", "12 mPa.s", "ink", "", ""},
      {"head.NAME.viscosity_window", "7..14 mPa.s", "2..4 mPa.s", "rejected", "-head.A.viscosity\n",
       ""},
      {"head.NAME.tension_window", "24..36 mN/m", "30..36 mN/m", "rejected", "", ""},
      {"head.NAME.temperature_most", "60 degC", "28 degC", "rejected", "", ""},
  };
}

std::vector<FieldRow> service_rows() {
  return {
      {"head.NAME.serviceable", "user", "none", "rejected", "service.serviceable = must\n", ""},
      {"head.NAME.waveform", "own", "maker", "rejected", "service.waveform = must\n", ""},
      {"head.NAME.driver_sources", "3", "1", "rejected", "service.driver_sources = must\n", ""},
      {"head.NAME.recirculation", "50 mL/min", "400 mL/min", "supply", "", ""},
      {"head.NAME.recirculates", "yes", "no", "conditions", "ink.black.settles = yes\n", ""},
      {"head.NAME.life", "8000 h", "4000 h", "spares", "", ""},
      {"head.NAME.life_drops", "100000000000", "50000000000", "spares", "", ""},
      {"head.NAME.purge", "2 mL", "40 mL", "consumption", "", ""},
      {"head.NAME.avoid", "0.1..200 kHz", "300..400 kHz", "chosen", "", ""},
      {"head.NAME.board", "DB", "DB2", "bom", second_board, ""},
      {"head.NAME.supply", "IS", "IS2", "bom", second_supply, ""},
  };
}

std::vector<FieldRow> mode_rows() {
  return {
      {"head.NAME.mode.NAME.colours", "1", "2", "chosen", "", ""},
      {"head.NAME.mode.NAME.row_pitch", "150 npi", "180 npi", "chosen", "", ""},
      {"head.NAME.mode.NAME.row_offsets", "0; 0.25; 0.5; 0.75", "0; 0.5", "chosen", "", ""},
      {"head.NAME.mode.NAME.row_places", "0 mm; 0 mm; 0 mm; 0 mm", "0 mm; 0.02 mm; 0 mm; 0 mm",
       "chosen", to_tilt, ""},
      {"head.NAME.mode.NAME.nozzles", "1280", "2560", "chosen", "", ""},
      {"head.NAME.mode.NAME.drops", "5 pL; 10 pL; 15 pL", "6 pL; 12 pL; 18 pL", "chosen", "", ""},
      {"head.NAME.mode.NAME.frequency", "40 kHz; 30 kHz; 25 kHz", "4 kHz; 3 kHz; 2 kHz", "chosen",
       "", ""},
      {"head.NAME.mode.NAME.drop_speed", "6 m/s; 6 m/s; 6 m/s", "7 m/s; 6 m/s; 6 m/s", "placement",
       "", ""},
      {"head.NAME.mode.NAME.grey_method", "amplitude", "subdrops", "chosen",
       one_rating + "image.levels = 4\n", ""},
  };
}

std::vector<FieldRow> station_rows() {
  return {
      {"board.NAME.heads", "2", "1", "boards", "", ""},
      {"board.NAME.data_rate", "1000 Mbit/s", "20 Mbit/s", "boards", "", ""},
      {"supply.NAME.families", "uv; aqueous", "aqueous", "bom", "-head.A.supply\n", ""},
      {"supply.NAME.flow", "200 mL/min", "5 mL/min", "bom", "", ""},
      {"supply.NAME.pump", "1000 mL/min", "5 mL/min", "bom", "", ""},
      {"supply.NAME.heads", "8", "1", "bom", "", ""},
      {"supply.NAME.container", "5 L", "1 L", "bom", "", ""},
      {"supply.NAME.stirs", "no", "yes", "warnings", "ink.black.settles = yes\n", ""},
      {"lamp.NAME.wavelength", "395 nm", "365 nm", "bom", "", ""},
      {"lamp.NAME.irradiance", "12 W/cm2", "8 W/cm2", "safety", "", ""},
      {"lamp.NAME.shape", "0.6", "0.1", "stages", "", ""},
      {"lamp.NAME.window_along", "20 mm", "4 mm", "stages", "", ""},
      {"lamp.NAME.window_across", "225 mm", "75 mm", "stages", "", ""},
      {"lamp.NAME.electrical", "2.5 kW", "4 kW", "stages", "", ""},
      {"lamp.NAME.depth", "120 mm", "200 mm", "footprint_mm", "", ""},
      {"lamp.NAME.mercury", "no", "yes", "safety", "", ""},
      {"lamp.NAME.ozone", "1 g/h", "2 g/h", "stages", "", ""},
      {"dryer.NAME.width", "600 mm", "150 mm", "stages", aqueous, ""},
      {"dryer.NAME.length", "500 mm", "5 mm", "stages", aqueous, ""},
      {"dryer.NAME.drying_rate", "20 kg/(m2 h)", "40 kg/(m2 h)", "stages", aqueous, ""},
      {"dryer.NAME.electrical", "30 kW", "1 kW", "stages", aqueous, ""},
      {"part.NAME.kind", "filter", "degasser", "bom", "", ""},
      {"part.NAME.per", "channel", "head", "bom", "", ""},
      {"part.NAME.families", "uv; aqueous", "aqueous", "bom", "", ""},
      {"part.NAME.fits", "A; B", "B", "bom", "", ""},
      {"part.NAME.life", "1000 h", "500 h", "cost", "", ""},
      {"part.NAME.air_flow", "500 m3/h", "5 m3/h", "bom", aqueous + "part.FL.kind = exhaust\n", ""},
      {"catalogue.date", "2026-09-01", "2026-10-01", "catalogue", "", ""},
  };
}

}  // namespace

std::vector<FieldRow> catalogue_rows() {
  std::vector<FieldRow> all;
  const auto add = [&](const std::vector<FieldRow>& part) {
    all.insert(all.end(), part.begin(), part.end());
  };
  for (const char* element : {"head", "board", "supply", "lamp", "part"}) {
    add(common_rows(element, ""));
  }
  add(common_rows("dryer", aqueous));
  add(body_rows());
  add(service_rows());
  add(mode_rows());
  add(station_rows());
  return all;
}

}  // namespace whole
