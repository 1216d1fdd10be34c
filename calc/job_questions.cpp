/// Questions to the customer, ranked by how far an answer could move the result.
#include <algorithm>

#include "calc/blend.h"
#include "calc/flash_point.h"
#include "calc/job_parts.h"

namespace calc {
namespace {

/// How far an answer could move the result, coarse on purpose; only the order matters.
constexpr double vital = 100;   ///< nothing can be answered without it
constexpr double choice = 50;   ///< may change the head or the number of heads
constexpr double physics = 30;  ///< may break the print or its cure
constexpr double safety = 20;   ///< without it the station cannot be judged safe
constexpr double money = 10;    ///< moves cost and consumption
constexpr double detail = 5;

void add(Job& job, const char* code, std::string field, const char* effect, double weight) {
  Question q;
  q.code = code;
  q.field = std::move(field);
  q.effect = effect;
  q.weight = weight;
  job.questions.push_back(std::move(q));
}

/// A question whose answer replaces a default.
void add(Job& job, const char* code, std::string field, P stands_in, double weight) {
  const Parameter& row = parameter(stands_in);
  add(job, code, std::move(field), "", weight);
  Question& q = job.questions.back();
  q.effect = effect_of(job, stands_in);
  q.assumed = job.parameters[stands_in];
  q.unit = unit_of(job, stands_in);
  q.parameter = row.key;
  if (row.low < row.high) {
    q.low = row.low;
    q.high = row.high;
  }
}

P spread_parameter(Absorbency absorbency) {
  if (absorbency == Absorbency::none) return P::spread_none;
  return absorbency == Absorbency::low ? P::spread_low : P::spread_high;
}

void ask_image(Job& job) {
  const Request& r = *job.request;
  const Image& image = r.image;
  if (!image.width) add(job, "q_width", "image.width", "heads_total", vital);
  if (!job.required_known) {
    add(job, "q_resolution", "image.resolution", P::fallback_dpi, choice + 5);
  }
  if (!image.viewing_distance && !image.resolution) {
    add(job, "q_viewing", "image.viewing_distance", "resolution_across_dpi", choice - 5);
  }
  if (!share_known(job)) {
    const char* field = image.length ? "product.pitch" : "image.length";
    add(job, "q_printed_share", field, P::printed_share, money + 3);
  }
  if (r.colours.empty()) add(job, "q_colours", "colour.NAME.kind", "heads_total", choice + 10);
  if (job.module && job.symbol == nullptr) {
    add(job, "q_barcode_symbol", "image.barcode_symbol", "resolution_across_dpi", physics);
  }
  if (job.symbol != nullptr && job.symbol->modules <= 0) {
    add(job, "q_symbol_size", "image.barcode_symbol", "heads_total", detail + 2);
  }
  const bool matrix = job.symbol != nullptr && job.symbol->two_dimensional;
  if (job.module && !matrix && !image.barcode_direction) {
    add(job, "q_barcode_direction", "image.barcode_direction", "resolution_along_dpi", physics);
  }
  if (job.channels.size() > 1 && !image.registration) {
    add(job, "q_registration", "image.registration", "placement", detail);
  }
}

void ask_line(Job& job) {
  const Line& line = job.request->line;
  if (rate_without_pitch(job) && !job.speed) {
    add(job, "q_pitch", "product.pitch", "frequency_needed_hz", vital);
  } else if (!job.speed) {
    add(job, "q_speed", "line.speed", "frequency_needed_hz", vital);
  }
  if (!line.throw_distance) {
    add(job, "q_throw", "line.throw_distance", P::throw_mm, physics);
  }
  if (!line.throw_variation && !job.request->product.thickness_variation) {
    add(job, "q_thickness_variation", "product.thickness_variation", P::throw_variation_mm,
        physics - 5);
  }
  if (!line.weave && !job.request->image.margin && !job.radius) {
    if (job.single_pass) {
      add(job, "q_weave", "line.weave", P::weave_mm, detail);
    } else {
      add(job, "q_weave", "line.weave", "heads_total", detail);
    }
  }
  if ((job.scanning || !line.mode) && !line.indexing) {
    add(job, "q_indexing", "line.indexing", "family", choice);
  }
  if (job.radius && !job.request->product.axis) {
    add(job, "q_axis", "product.axis", "heads_total", choice + 3);
  }
  const Given<Length>& diameter = job.request->product.diameter;
  if (image_meets_itself(job) && diameter->spread != Spread::uncertain) {
    add(job, "q_diameter", "product.diameter", "placement", physics);
  }
  if (!line.hours_per_day) add(job, "q_hours", "line.hours_per_day", P::hours_per_day, money);
  if (!line.days_per_year) add(job, "q_days", "line.days_per_year", P::days_per_year, money);
  const bool counts_known = line.encoder_step || (line.encoder_wheel && line.encoder_counts);
  if (line.encoder && !counts_known) {
    add(job, "q_encoder", "line.encoder_step", "encoder_residue_um", detail);
  }
  if (!line.air_temperature) {
    add(job, "q_air_temperature", "line.air_temperature", P::room_c, detail);
  }
}

/// A dryer warms what it dries, lamps what they cure; the mass of bodies is asked for by the piece.
void ask_mass(Job& job) {
  const bool dried = std::any_of(job.channels.begin(), job.channels.end(),
                                 [](const Channel& c) { return c.family == InkFamily::aqueous; });
  const bool bodies = job.radius || job.radius_across;
  add(job, bodies ? "q_body_mass" : "q_area_mass", "substrate.area_mass",
      dried ? "electrical_kw" : "web_degc", dried ? money + 4 : detail + 3);
}

void ask_substrate(Job& job) {
  const Substrate& s = job.request->substrate;
  if (!s.material && !s.absorbency) {
    add(job, "q_substrate", "substrate.material", "cover_fraction", choice + 8);
  }
  if (!s.absorbency) add(job, "q_absorbency", "substrate.absorbency", "cover_fraction", physics);
  const bool angle = s.contact_angle && job.absorbency == Absorbency::none;
  if (!s.dot_diameter && !s.spread_factor && !angle) {
    add(job, "q_dot", "substrate.dot_diameter", spread_parameter(job.absorbency), choice - 2);
  }
  if (!s.surface_energy && job.absorbency == Absorbency::none) {
    add(job, "q_surface_energy", "substrate.surface_energy", "dot_diameter_um", physics - 4);
  }
  const bool heated = std::any_of(job.channels.begin(), job.channels.end(), [](const Channel& c) {
    return c.family == InkFamily::uv || c.family == InkFamily::aqueous;
  });
  if (heated && !s.temperature_limit) {
    add(job, "q_temperature_limit", "substrate.temperature_limit", "electrical_kw", detail);
  }
  if (heated && !s.area_mass) ask_mass(job);
}

/// What the table of solvents does not say of an ink is asked of its maker.
void ask_vapour(Job& job, const Channel& channel, const std::string& at) {
  const Blend blend = blend_of(job, channel);
  if (!blend.limit) {
    add(job, "q_exposure_limit", at + "exposure_limit", "air_health_m3_per_h", safety);
  }
  if (!blend.lel || blend.lel_estimated) {
    add(job, "q_explosive_limit", at + "explosive_limit", "air_lel_m3_per_h", safety);
  }
  if (channel.ink->solvent && !blend.molar_mass) {
    add(job, "q_molar_mass", at + "molar_mass", "air_lel_m3_per_h", safety - 1);
  }
  if (blend.flash && clp_category(*blend.flash, blend.boiling) == ClpCategory::one_or_two) {
    add(job, "q_boiling_point", at + "boiling_point", "fire_protection", safety - 2);
  }
}

void ask_solvent(Job& job, const Ink& ink, const Channel& channel, const std::string& at) {
  if (!ink.flash_point) add(job, "q_flash_point", at + "flash_point", "fire_protection", safety);
  if (!ink.solvent) add(job, "q_solvent", at + "solvent", "air_lel_m3_per_h", safety);
  if (!ink.solvent_share) {
    add(job, "q_solvent_share", at + "solvent_share", P::solvent_share, safety - 1);
  }
  ask_vapour(job, channel, at);
}

void ask_family(Job& job, const Ink& ink, const Channel& channel, const std::string& at) {
  const std::optional<InkFamily> family = channel.family;
  if (family == InkFamily::uv && !ink.cure_dose) {
    add(job, "q_cure_dose", at + "cure_dose", "lamps", physics + 2);
  }
  if (family == InkFamily::aqueous && !ink.water_share) {
    add(job, "q_water_share", at + "water_share", P::water_share, money);
  }
  if (family == InkFamily::oil && !ink.flash_point) {
    add(job, "q_flash_point", at + "flash_point", "fire_protection", safety);
  }
  if (gives_vapour(channel)) ask_solvent(job, ink, channel, at);
  // A co-solvent counts only once its share is known.
  const bool named = ink.solvent && family != InkFamily::solvent && family != InkFamily::oil;
  if (named && !ink.solvent_share) {
    add(job, "q_solvent_share", at + "solvent_share", "vapour_kg_per_h", safety - 1);
  }
}

void ask_ink(Job& job, const Ink& ink, const Channel& channel) {
  const std::string at = "ink." + ink.name + ".";
  if (!ink.family) add(job, "q_ink_family", at + "family", "head", vital - 1);
  if (!ink.viscosity) {
    add(job, "q_viscosity", at + "viscosity", "jetting_temperature_degc", choice - 4);
  }
  if (!ink.surface_tension) {
    add(job, "q_surface_tension", at + "surface_tension", "dot_diameter_um", choice - 6);
  }
  ask_family(job, ink, channel, at);
  if (!ink.density) add(job, "q_density", at + "density", P::ink_density, detail);
  if (!ink.particle_size) {
    add(job, "q_particle_size", at + "particle_size", "head", detail + 1);
  }
  if (!ink.settles && channel.kind == ColourKind::white) {
    add(job, "q_settles", at + "settles", "head", physics - 8);
    if (!ink.particle_density) {
      add(job, "q_particle_density", at + "particle_density", "head", physics - 9);
    }
  }
  if (!ink.price) add(job, "q_ink_price", at + "price", "ownership", money + 2);
}

void ask_colour(Job& job, const Colour& colour, const Channel& channel) {
  if (!colour.cover_mean) {
    add(job, "q_cover", "colour." + channel.name + ".cover_mean", mean_parameter(channel.kind),
        money + 1);
  }
  if (channel.film && channel.film->origin.kind == OriginKind::assumed) {
    const P id = channel.kind == ColourKind::white ? P::film_white_um : P::film_varnish_um;
    add(job, "q_film", "colour." + channel.name + ".film", id, physics - 2);
  }
}

void ask_channels(Job& job) {
  const Request& r = *job.request;
  std::vector<const Ink*> asked;
  for (std::size_t i = 0; i < job.channels.size(); ++i) {
    const Channel& channel = job.channels[i];
    if (i < r.colours.size()) ask_colour(job, r.colours[i], channel);
    if (channel.ink == nullptr) {
      add(job, "q_ink_family", "colour." + channel.name + ".ink", "head", vital - 1);
    } else if (std::find(asked.begin(), asked.end(), channel.ink) == asked.end()) {
      asked.push_back(channel.ink);
      ask_ink(job, *channel.ink, channel);
    }
  }
  const bool vapour = std::any_of(job.channels.begin(), job.channels.end(), gives_vapour);
  if (vapour && !r.line.enclosed) {
    add(job, "q_enclosed", "line.enclosed", "air_health_m3_per_h", safety - 3);
  }
  const auto processes =
      std::count_if(job.channels.begin(), job.channels.end(),
                    [](const Channel& c) { return c.kind == ColourKind::process; });
  if (processes > 2 && limiting_ink(job) == nullptr) {
    add(job, "q_ink_limit", "ink.NAME.limit", P::process_limit, detail);
  }
}

}  // namespace

void ask(Job& job) {
  ask_image(job);
  ask_line(job);
  ask_substrate(job);
  ask_channels(job);
  std::stable_sort(job.questions.begin(), job.questions.end(),
                   [](const Question& a, const Question& b) { return a.weight > b.weight; });
}

}  // namespace calc
