#include "calc/blend.h"

#include <algorithm>

namespace calc {
namespace {

constexpr double few_percent = 0.05;

using Limit = std::optional<double> (*)(const SolventRow&, Region);

std::optional<double> lel_of(const SolventRow& row, Region) { return lower_limit(row).value; }

bool all_known(const Blend& blend) {
  return !blend.parts.empty() && std::all_of(blend.parts.begin(), blend.parts.end(),
                                             [](const BlendPart& p) { return p.row != nullptr; });
}

/// Limit of the mixture [1] from those of its solvents, by mole; nullopt where one is not known.
std::optional<double> mixed(const Blend& blend, Region region, Limit limit_of) {
  if (!all_known(blend)) return std::nullopt;
  std::vector<ExplosivePart> list;
  for (const BlendPart& part : blend.parts) {
    const std::optional<double> limit = limit_of(*part.row, region);
    if (!limit) return std::nullopt;
    list.push_back({part.share / molar_mass(*part.row).si(), *limit});
  }
  return mixture_limit(list);
}

std::optional<MolarMass> mean_molar_mass(const Blend& blend) {
  if (!all_known(blend)) return std::nullopt;
  double moles = 0;
  for (const BlendPart& part : blend.parts) moles += part.share / molar_mass(*part.row).si();
  return MolarMass::from_si(1 / moles);
}

void lower_to(std::optional<Temperature>& lowest, const std::optional<Temperature>& t) {
  if (t && (!lowest || *t < *lowest)) lowest = t;
}

/// Alcohols and the nature of the limits, from the table; flash and boiling points only of inks
/// that are solvent in the main, for water or monomers beside a solvent change them.
void read_rows(std::optional<InkFamily> family, Blend& blend) {
  const bool mainly = family == InkFamily::solvent || family == InkFamily::oil;
  for (const BlendPart& part : blend.parts) {
    if (part.row == nullptr) continue;
    const LowerLimit lel = lower_limit(*part.row);
    blend.lel_estimated |= lel.estimated;
    blend.lel_hot |= lel.measured_hot;
    if (part.row->alcohol) blend.alcohol += part.share;
    if (!mainly) continue;
    lower_to(blend.flash, lower_flash(*part.row));
    if (part.row->boiling) {
      lower_to(blend.boiling, Temperature::celsius(part.row->boiling->value));
    }
  }
}

/// What the request says comes before the table.
void override_by(const Ink& ink, Blend& blend) {
  if (ink.molar_mass) blend.molar_mass = ink.molar_mass->low;
  if (ink.explosive_limit) {
    blend.lel = ink.explosive_limit->low;
    blend.lel_estimated = blend.lel_hot = false;
  }
  if (ink.exposure_limit) blend.limit = ink.exposure_limit->low * 1e-6;
  if (ink.flash_point) blend.flash = ink.flash_point->low;
  if (ink.boiling_point) blend.boiling = ink.boiling_point->low;
}

}  // namespace

Region region_of_job(const Job& job) {
  const Given<std::string>& given = job.request->request.region;
  return region_named(given ? given->value : "");
}

bool gives_vapour(const Channel& channel) {
  if (channel.family == InkFamily::solvent) return true;
  if (channel.family == InkFamily::oil || channel.ink == nullptr) return false;
  const Ink& ink = *channel.ink;
  return ink.solvent && ink.solvent_share && ink.solvent_share->value > few_percent;
}

Blend blend_of(const Job& job, const Channel& channel) {
  Blend blend;
  blend.evaporates = job.parameters[P::solvent_share];
  if (channel.ink == nullptr) return blend;
  const Ink& ink = *channel.ink;
  for (const SolventShare& s : ink.solvents) {
    blend.parts.push_back({s.name, s.share, find_solvent(s.name)});
  }
  blend.share_known = ink.solvent_share.has_value();
  if (blend.share_known) blend.evaporates = ink.solvent_share->high;
  const Region region = region_of_job(job);
  blend.molar_mass = mean_molar_mass(blend);
  blend.lel = mixed(blend, region, lel_of);
  blend.limit = mixed(blend, region, exposure_limit);
  read_rows(channel.family, blend);
  override_by(ink, blend);
  return blend;
}

}  // namespace calc
