#include "tests/whole/support/code_cases.h"

namespace whole {
namespace {

const std::string no_dot = "-substrate.dot_diameter\n-substrate.dot_volume\n";
const std::string no_dose = "-ink.black.cure_dose\n-ink.cyan.cure_dose\n";
const std::string solvent = no_dose +
                            "ink.black.family = solvent\nink.cyan.family = solvent\n"
                            "head.A.families = solvent\n";
const std::string aqueous = no_dose + "ink.black.family = aqueous\nink.cyan.family = aqueous\n";
const std::string oil =
    no_dose + "ink.black.family = oil\nink.cyan.family = oil\nhead.A.families = oil\n";
const std::string scanning =
    "line.mode = scanning\nimage.length = 500 mm\nline.speed = 0.2 m/min\n";
const std::string white =
    "colour.white.kind = white\ncolour.white.ink = white\nink.white.family = uv\n";
const std::string bar_code =
    "-image.resolution\nimage.barcode_symbol = ean-13-retail\nimage.barcode_module = 0.33 mm\n";
const std::string ink_unknown =
    "-ink.black.viscosity\n-ink.black.surface_tension\n-ink.black.density\n"
    "-ink.black.particle_size\n-ink.black.price\n-ink.black.cure_dose\n"
    "-colour.black.cover_mean\n-substrate.surface_energy\n-substrate.temperature_limit\n";
const std::string one_family_unsaid =
    "-ink.black.family\nink.cyan.family = aqueous\ncolour.green.ink = green\n"
    "ink.green.family = uv\n";
const std::string fine_image =
    "image.resolution = 1200 dpi\nimage.smallest_feature = 0.08 mm\nimage.levels = 4\n"
    "substrate.dot_diameter = 100 um\nline.speed = 10 m/min\nline.mount_tolerance = 1 um\n"
    "line.wheel_error = 0.001 %\nsubstrate.temperature_limit = 300 degC";
const std::string said_not_to_settle =
    "ink.black.settles = no\nink.black.particle_size = 0.3 um\n"
    "ink.black.particle_density = 4200 kg/m3";
const std::string pinned_by_mercury =
    "ink.black.pinning_dose = 10 mJ/cm2\nlamp.LED.mercury = yes\n"
    "substrate.temperature_limit = 300 degC";
const std::string cold_inks =
    "ink.black.jetting_temperature = 27 degC\nink.black.viscosity = 10 mPa.s at 27 degC\n"
    "ink.cyan.jetting_temperature = 27 degC\nink.cyan.viscosity = 10 mPa.s at 27 degC\n";
const std::string only_cool =
    "-line.air_temperature\nink.black.viscosity = 10 mPa.s at 32 degC\nink.cyan.viscosity = 10 "
    "mPa.s at 28 degC\n";
const std::string slow_drops =
    "line.throw_distance = 2.9 mm\nline.speed = 5 m/min\nhead.A.drop_speed = 4 m/s\n"
    "head.B.drop_speed = 4 m/s";
const std::string hardly_covered =
    "line.speed = 120 m/min\nline.throw_distance = 2.5 mm\nline.throw_variation = 0.01 mm\n"
    "image.resolution = 100 x 100 dpi\nsubstrate.dot_diameter = 500 um\nimage.registration = "
    "2000 um\n"
    "head.A.drop_speed = 5 m/s\nhead.B.drop_speed = 5 m/s";
const std::string round_body =
    "product.form = cylinder\nproduct.diameter = 300 mm\nimage.length = 100 mm\n"
    "product.pitch = 101 mm";
const std::string stirred_elsewhere =
    "ink.black.settles = yes\nsupply.IS2.price = 100 EUR\nsupply.IS2.stirs = yes\n"
    "head.A.supply = IS\nhead.B.supply = IS\n";
const std::string long_lead =
    "limits.lead_time = 900 day\n-head.A.lead_time\n-head.B.lead_time\n-board.DB.lead_time\n"
    "-supply.IS.lead_time\n-lamp.LED.lead_time\n-part.FL.lead_time\n";
const std::string to_be_served =
    "service.serviceable = must\nservice.waveform = must\nservice.driver_sources = must\n"
    "head.A.serviceable = none\nhead.A.waveform = maker\nhead.A.driver_sources = 1\n"
    "head.B.waveform = limited";
const std::string undesignated =
    "-head.A.designation\n-board.DB.designation\n-supply.IS.designation\n"
    "-lamp.LED.designation\n-part\npart.GA.kind = alignment\n";

}  // namespace

std::vector<std::string> code_cases() {
  return {
      // Nearly nothing is said.
      "-image.width",
      "-line.speed",
      "-line.speed\nline.throughput = 100 parts/min",
      "-line\n-image.resolution\n-image.registration",
      "-substrate",
      "-colour",
      ink_unknown,
      "ink.black.viscosity = 20 mPa.s at 25 degC\n",
      one_family_unsaid,
      "-ink.black.family\n-ink.cyan.family",
      "-substrate.absorbency\n" + no_dot,
      // The image.
      white,
      bar_code + "image.width = 30 mm",
      bar_code + "image.width = 30 mm\nimage.barcode_module = 0.1 mm",
      "-image.resolution\nimage.barcode_module = 0.4 mm",
      "image.smallest_feature = 0.05 mm\nimage.viewing_distance = 3 m",
      "-image.resolution\nimage.smallest_feature = 0.079 mm",
      "image.smallest_feature = 0.02 mm\nsubstrate.dot_diameter = 130 um",
      fine_image,
      "image.levels = 200",
      "image.resolution = 9000 dpi",
      "colour.green.kind = process\ncolour.green.ink = cyan",
      "colour.black.film = 500 um",
      "colour.black.cover_peak = 100 %\ncolour.cyan.cover_peak = 100 %\nink.black.limit = 150 %",
      "substrate.width = 180 mm",
      // Dot, drop and ink on the substrate.
      no_dot,
      no_dot + "substrate.contact_angle = 5 deg",
      "substrate.dot_diameter = 20 um",
      "substrate.dot_diameter = 160 um",
      "substrate.dot_diameter = 50 um\nimage.solids = no",
      "substrate.surface_energy = 30 mN/m",
      "substrate.food_contact = yes",
      "ink.black.particle_size = 20 um",
      "ink.black.settles = yes\nhead.A.recirculates = no\nhead.B.recirculates = no",
      "ink.black.settles = yes\n-head.A.recirculates\n-head.B.recirculates",
      "ink.black.surface_tension = 60 mN/m",
      "ink.black.jetting_temperature = 90 degC",
      "ink.black.viscosity = 200 mPa.s at 25 degC; 100 mPa.s at 50 degC",
      "ink.black.flash_point = 30 degC",
      "head.A.nozzle_diameter = 5 um",
      "head.A.nozzle_diameter = 2 um",
      "head.A.drop_speed = 30 m/s",
      said_not_to_settle,
      only_cool,
      "line.encoder = on the drum",
      // Families and stages.
      solvent,
      solvent + "ink.black.flash_point = 20 degC\nink.black.exposure_limit = 50 ppm\n",
      solvent +
          "ink.black.solvent = methyl ethyl ketone 70 %; cyclohexanone 30 %\n"
          "ink.cyan.solvent = ethanol\nline.enclosed = yes\n",
      solvent +
          "ink.black.solvent = DEGDEE\nink.cyan.solvent = unheard-of\nline.enclosed = yes\n"
          "line.vapour_monitored = yes\nrequest.region = US\n",
      solvent + "ink.black.solvent = DEGDEE\nink.cyan.solvent = ethanol\nline.enclosed = yes\n",
      solvent + "ink.black.flash_point = 10 degC\n-ink.black.solvent\n",
      aqueous,
      aqueous + "substrate.absorbency = high",
      aqueous + "substrate.temperature_limit = 28 degC\nsubstrate.absorbency = high",
      pinned_by_mercury,
      "ink.black.cure_irradiance = 50 W/cm2",
      "-substrate.area_mass",
      "lamp.LED.wavelength = 405 nm",
      "lamp.LED.wavelength = 280 nm",
      "lamp.LED.mercury = yes\nlamp.LED.ozone = 2 g/h\nsubstrate.temperature_limit = 300 degC",
      oil + "substrate.absorbency = high",
      oil,
      "lamp.LED.mercury = yes",
      "-lamp",
      "-lamp.LED.electrical",
      // Line and bodies.
      scanning + "line.indexing = yes",
      scanning + "colour.cyan.kind = white\n",
      scanning + "line.indexing = no",
      scanning + "line.indexing = yes\nline.throw_variation = 0.03 mm\n",
      scanning,
      "line.speed = 70 m/min",
      "line.speed = 2000 m/min",
      "line.throughput = 4000 m2/h",
      "line.throughput = 10 m2/h",
      "line.air_temperature = 45 degC",
      cold_inks,
      "line.throw_distance = 9 mm",
      "line.throw_variation = 0.4 mm",
      slow_drops,
      "image.placement = 20 um",
      hardly_covered,
      "product.form = cylinder\nproduct.diameter = 16 mm",
      "product.form = cylinder\nproduct.diameter = 8 mm",
      "product.form = cylinder\nproduct.diameter = 80 mm",
      "product.form = cylinder\nproduct.diameter = 80 mm\n-image.length",
      "product.form = cylinder\nproduct.diameter = 80 mm\n-substrate.area_mass",
      "product.form = cylinder\nproduct.diameter = 80 mm +- 0.2 mm\n-image.length",
      round_body,
      // Limits and wishes.
      "limits.heads = 2",
      "limits.space = 100 mm",
      "limits.budget = 10 EUR",
      "limits.budget = 900000 EUR",
      "limits.lead_time = 5 day",
      long_lead,
      "-supply.IS.pump\nhead.A.recirculates = yes\nhead.A.recirculation = 50 mL/min\n",
      to_be_served,
      "ink.black.settles = yes\n",
      stirred_elsewhere,
      // The catalogue.
      "head.A.mode.grey.frequency = 40 kHz\nimage.levels = 3\n-head.B\n-part",
      "-head.A.throw_most\n-head.A.tension_window",
      "head.A.overlap = 100 mm",
      "head.A.price_date = 2024-01-01\nhead.A.price = 2000 USD\nhead.B.price_date = 2024-01-01\n",
      "board.DB.price_date = 2024-01-01",
      "board.DB.price = 900 USD",
      undesignated,
      aqueous + "-dryer.DR.designation",
  };
}

}  // namespace whole
