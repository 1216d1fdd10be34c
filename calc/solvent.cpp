#include "calc/solvent.h"

#include <algorithm>

#include "calc/compare.h"
#include "calc/flash_point.h"

namespace calc {

namespace {

constexpr double ppm = 1e-6;
constexpr double hot_limit_above = 40;  // degC: a limit measured above it counts as hot

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool same_word(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return lower(x) == lower(y); });
}

/// The lower of two limits as a fraction; nullopt where neither is set.
std::optional<double> lower_of(const std::optional<Sourced>& a, const std::optional<Sourced>& b) {
  if (!a) return b ? std::optional(b->value * ppm) : std::nullopt;
  return (b ? std::min(a->value, b->value) : a->value) * ppm;
}

/// The limit of a region; elsewhere the lower of both.
std::optional<double> in_region(Region region, std::optional<double> us, std::optional<double> eu) {
  if (region == Region::us) return us;
  if (region == Region::eu) return eu;
  return us && eu ? std::min(*us, *eu) : us ? us : eu;
}

}  // namespace

const SolventRow* find_solvent(std::string_view name) {
  const auto rows = solvents();
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const SolventRow& row) {
    return same_word(row.name, name) || row.cas == name ||
           std::any_of(row.also.begin(), row.also.end(), [&](std::string_view other) {
             return !other.empty() && same_word(other, name);
           });
  });
  return found == rows.end() ? nullptr : &*found;
}

std::optional<Temperature> lower_flash(const SolventRow& row) {
  if (!row.flash) return std::nullopt;
  const double lowest =
      row.other_flash ? std::min(row.flash->value, row.other_flash->value) : row.flash->value;
  return Temperature::celsius(lowest);
}

bool flash_conflict(const SolventRow& row) { return row.other_flash.has_value(); }

MolarMass molar_mass(const SolventRow& row) { return MolarMass::from_si(row.molar_g * 1e-3); }

Density density(const SolventRow& row) {
  return Density::from_si(row.relative_density.value * 1000);
}

LowerLimit lower_limit(const SolventRow& row) {
  if (!row.lel) return {estimated_limit(row.atoms) * (1 - estimate_error), true, false};
  return {row.lel->value / 100, false, row.lel_at && *row.lel_at > hot_limit_above};
}

std::optional<double> exposure_limit(const SolventRow& row, Region region) {
  const std::optional<double> us = lower_of(row.us_recommended, row.us_permissible);
  return in_region(region, us, lower_of(row.eu_indicative, std::nullopt));
}

std::optional<double> short_term_limit(const SolventRow& row, Region region) {
  return in_region(region, lower_of(row.us_short, std::nullopt),
                   lower_of(row.eu_short, std::nullopt));
}

}  // namespace calc
