/// The plain request and catalogue. Everything in them is invented.
#include "tests/whole/support/written.h"

namespace whole {

const Entries& plain_request() {
  static const Entries entries{
      {"request.id", "CASE-1"},
      {"request.title", "made for a test"},
      {"request.date", "2026-11-20"},
      {"product.form", "flat"},
      {"image.width", "200 mm"},
      {"image.resolution", "600 dpi"},
      {"image.registration", "60 um"},
      {"colour.black.kind", "process"},
      {"colour.black.ink", "black"},
      {"colour.black.cover_mean", "15 %"},
      {"colour.cyan.kind", "process"},
      {"colour.cyan.ink", "cyan"},
      {"colour.cyan.cover_mean", "12 %"},
      {"ink.black.family", "uv"},
      {"ink.black.viscosity", "20 mPa.s at 25 degC; 9 mPa.s at 50 degC"},
      {"ink.black.surface_tension", "28 mN/m"},
      {"ink.black.density", "1060 kg/m3"},
      {"ink.black.particle_size", "0.2 um"},
      {"ink.black.cure_dose", "200 mJ/cm2"},
      {"ink.black.price", "60 EUR/L"},
      {"ink.cyan.family", "uv"},
      {"ink.cyan.viscosity", "20 mPa.s at 25 degC; 9 mPa.s at 50 degC"},
      {"ink.cyan.surface_tension", "28 mN/m"},
      {"ink.cyan.density", "1050 kg/m3"},
      {"ink.cyan.particle_size", "0.2 um"},
      {"ink.cyan.cure_dose", "180 mJ/cm2"},
      {"ink.cyan.price", "70 EUR/L"},
      {"substrate.material", "coated label"},
      {"substrate.absorbency", "none"},
      {"substrate.dot_diameter", "62 um"},
      {"substrate.dot_volume", "10 pL"},
      {"substrate.surface_energy", "42 mN/m"},
      {"substrate.temperature_limit", "80 degC"},
      {"substrate.area_mass", "200 g/m2"},
      {"line.speed", "30 m/min"},
      {"line.mode", "single"},
      {"line.hours_per_day", "16 h"},
      {"line.days_per_year", "250"},
      {"line.throw_distance", "1 mm"},
      {"line.throw_variation", "0.01 mm"},
      {"line.weave", "0 mm"},
      {"line.mount_tolerance", "5 um"},
      {"line.wheel_error", "0.01 %"},
      {"line.air_temperature", "25 degC"},
  };
  return entries;
}

const Entries& plain_catalogue() {
  static const Entries entries = [] {
    Entries all{{"catalogue.date", "2026-09-01"}};
    const auto row = [&](const std::string& element, const std::string& name,
                         const std::string& price, const Entries& own) {
      const std::string at = element + "." + name + ".";
      all.insert(all.end(), {{at + "maker", "Invented Works"},
                             {at + "part_number", "IW-" + name},
                             {at + "designation", "Invented " + element + " " + name},
                             {at + "price", price},
                             {at + "price_date", "2026-09-01"},
                             {at + "lead_time", "42 day"},
                             {at + "provenance", "data_sheet"}});
      for (const auto& [key, value] : own) all.push_back({at + key, value});
    };
    const Entries head{{"families", "uv; aqueous"},
                       {"body_width", "70 mm"},
                       {"body_depth", "40 mm"},
                       {"field_depth", "5 mm"},
                       {"joins", "no"},
                       {"overlap", "0.5 mm"},
                       {"nozzle_diameter", "30 um"},
                       {"drop_speed", "6 m/s"},
                       {"drop_speed_at", "nozzle"},
                       {"straightness", "4 mrad"},
                       {"speed_spread", "2 %"},
                       {"throw_least", "0.5 mm"},
                       {"throw_nominal", "1 mm"},
                       {"throw_most", "3 mm"},
                       {"viscosity", "10 mPa.s"},
                       {"viscosity_window", "7..14 mPa.s"},
                       {"tension_window", "24..36 mN/m"},
                       {"temperature_most", "60 degC"},
                       {"serviceable", "user"},
                       {"waveform", "own"},
                       {"driver_sources", "3"},
                       {"recirculates", "yes"},
                       {"life", "8000 h"},
                       {"purge", "2 mL"},
                       {"board", "DB"},
                       {"supply", "IS"},
                       {"mode.grey.colours", "1"},
                       {"mode.grey.row_pitch", "150 npi"},
                       {"mode.grey.row_offsets", "0; 0.25; 0.5; 0.75"},
                       {"mode.grey.nozzles", "1280"},
                       {"mode.grey.drops", "5 pL; 10 pL; 15 pL"},
                       {"mode.grey.frequency", "40 kHz; 30 kHz; 25 kHz"}};
    row("head", "A", "2000 EUR", head);
    row("head", "B", "9000 EUR", head);
    row("board", "DB", "900 EUR", {{"heads", "2"}, {"data_rate", "1000 Mbit/s"}});
    row("supply", "IS", "3200 EUR",
        {{"families", "uv; aqueous; solvent; oil"},
         {"flow", "200 mL/min"},
         {"heads", "8"},
         {"container", "5 L"}});
    row("lamp", "LED", "7000 EUR",
        {{"wavelength", "395 nm"},
         {"irradiance", "12 W/cm2"},
         {"shape", "0.6"},
         {"window_along", "20 mm"},
         {"window_across", "225 mm"},
         {"electrical", "2.5 kW"},
         {"depth", "120 mm"},
         {"mercury", "no"}});
    row("dryer", "DR", "21000 EUR",
        {{"width", "600 mm"},
         {"length", "500 mm"},
         {"drying_rate", "20 kg/(m2 h)"},
         {"electrical", "30 kW"}});
    row("part", "FL", "46 EUR",
        {{"kind", "filter"},
         {"per", "channel"},
         {"families", "uv; aqueous"},
         {"fits", "A; B"},
         {"life", "1000 h"}});
    return all;
  }();
  return entries;
}

}  // namespace whole
