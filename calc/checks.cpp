#include "calc/checks.h"

#include <algorithm>

#include "calc/codes.h"
#include "calc/compare.h"
#include "calc/exposure.h"
#include "calc/gates.h"
#include "calc/lattice.h"
#include "calc/named.h"
#include "calc/placement.h"
#include "calc/station_load.h"
#include "calc/station_vapour.h"
#include "calc/throw.h"

namespace calc {
namespace {

constexpr double cross_cut_class = 1;  // ISO 2409, common practice
constexpr double rub_strokes = 10;     // with a dry cloth, common practice
constexpr double dead_nozzles = 1;     // of a head after 8 h, common practice
constexpr double least_grade = 1.5;    // grade C, ISO/IEC 15416 and 15415

/// Collects checks of one job.
struct Writer {
  const Job& job;
  const Catalogue& catalogue;
  std::vector<Check> list;
  void add(std::string_view code, std::optional<double> acceptance, std::string_view unit,
           std::string subject = {}, std::string axis = {}) {
    list.push_back(
        {std::string(code), acceptance, std::string(unit), std::move(subject), std::move(axis)});
  }
};

std::string material(const Job& job) {
  const Given<std::string>& given = job.request->substrate.material;
  return given ? given->value : "";
}

bool has_family(const Job& job, InkFamily family) {
  return std::any_of(job.channels.begin(), job.channels.end(),
                     [&](const Channel& c) { return c.family == family; });
}

void of_inks(Writer& w, const Group& group) {
  std::optional<double> celsius, viscosity;
  if (group.jetting_temperature) celsius = group.jetting_temperature->in_celsius();
  if (group.viscosity) viscosity = in_mpas(*group.viscosity);
  for (const std::string& name : group.channels) {
    const Channel* channel = named(w.job.channels, name);
    const bool named = channel != nullptr && channel->ink != nullptr;
    w.add("compatibility", celsius, "degC",
          (named ? channel->ink->name : name) + " / " + group.head);
    w.add("viscosity", viscosity, "mPa.s", name);
  }
}

/// Where solids must close, nothing less is accepted, whatever the likely dot covers. Else never
/// more than was calculated: the figure in percent is rounded down.
void of_cover(Writer& w, const ChannelDots& dots) {
  if (w.job.solids || at_least(dots.cover_fraction, 1.0)) {
    w.add("solids_close", 100, "%", dots.channel);
    return;
  }
  w.add("solid_cover", floor_tolerant(dots.cover_fraction * 1000) / 10, "%", dots.channel);
}

/// Least dot accepted: the one that closes a solid where solids must close, neither the likely one,
/// which may be too small, nor more than is needed.
Length least_dot(const Job& job, const Group& group, const ChannelDots& dots) {
  if (!job.solids) return dots.dot_diameter;
  // A tilted head's columns stand up to `wider` more than their pitch apart.
  return closing_dot(1.0 / group.resolution_across + group.wider, 1.0 / group.resolution_along);
}

void of_dots(Writer& w, const Group& group) {
  for (const ChannelDots& dots : group.dots) {
    const Channel* channel = named(w.job.channels, dots.channel);
    w.add("drop_watching", in_pl(dots.drop), "pL", dots.channel);
    w.add("dot_diameter", in_um(least_dot(w.job, group, dots)), "um", dots.channel);
    of_cover(w, dots);
    if (channel != nullptr && channel->film) {
      w.add("film", in_um(channel->film->high), "um", dots.channel);
    }
  }
}

void of_heads(Writer& w, const Group& group) {
  w.add("frequency", in_khz(group.frequency_per_nozzle), "kHz", group.head);
  if (group.nozzles > 0) {
    w.add("dead_nozzles", dead_nozzles, "of " + std::to_string(group.nozzles) + " nozzles",
          group.head);
  }
  if (group.family == Family::tilted) {
    w.add("tilt", in_um(joint_limit(w.job, 1.0 / group.resolution_across)), "um", group.head);
  }
  if (group.row_delays.size() > 1) {
    w.add("row_delays", in_um(1.0 / group.resolution_along) / 2, "um", group.head);
  }
  if (group.joints <= 0 && !group.scan) return;
  const char* const code = group.scan ? "strokes" : "stitch";
  w.add(code, in_um(joint_limit(w.job, 1.0 / group.resolution_across)), "um", group.name, "across");
  w.add(code, in_um(joint_limit(w.job, 1.0 / group.resolution_along)), "um", group.name, "along");
}

/// Greatest gap [m] the outermost row must bridge, over the whole range stated.
Length greatest_gap(const Job& job, const Head& head) {
  const Given<Length>& stated = job.request->line.throw_distance;
  const Length nominal = stated ? stated->high : nominal_throw(job, head);
  const Length gap = nominal + job.throw_variation.high + job.thickness_variation;
  const Throw bend = throw_of(job, head);
  return gap + bend.along + bend.across;
}

void of_throw(Writer& w, const Group& group) {
  const bool uneven = w.job.radius || w.job.radius_across || w.job.thickness_variation > Length();
  const Head* head = named(w.catalogue.heads, group.head);
  if (!uneven || head == nullptr) return;
  w.add("throw_trial", in_mm(greatest_gap(w.job, *head)), "mm", group.head);
}

void of_bar_codes(Writer& w, const Group& group) {
  for (const BarcodeFit& fit : group.barcodes) {
    w.add("barcode_grade", least_grade, "grade", fit.symbol);
    w.add("barcode_module", in_um(fit.module_printed), "um", fit.symbol,
          fit.across ? "across" : "along");
  }
}

void of_registration(Writer& w, const std::vector<Group>& groups) {
  if (!w.job.request->image.registration && w.job.channels.size() < 2) return;
  w.add("registration", in_um(registration_limit(w.job, groups)), "um");
}

bool heats(const Station& station) {
  return std::any_of(station.stages.begin(), station.stages.end(),
                     [](const Stage& stage) { return !stage.airing; });
}

void of_substrate(Writer& w, const Station& station) {
  const Substrate& substrate = w.job.request->substrate;
  // A cut through what takes the ink in tests the substrate, not the print.
  if (w.job.absorbency == Absorbency::high) {
    w.add("rub", rub_strokes, "", material(w.job));
  } else {
    w.add("adhesion", cross_cut_class, "class", material(w.job));
  }
  for (const Channel& channel : w.job.channels) {
    if (!wants_pretreatment(w.job, channel)) continue;
    std::optional<double> energy;
    if (channel.ink != nullptr && channel.ink->surface_tension) {
      energy = in_mn_per_m(served_high(*channel.ink->surface_tension)) +
               w.job.parameters[P::wetting_margin];
    }
    w.add("wetting", energy, "mN/m", material(w.job));
    break;
  }
  if (substrate.temperature_limit && heats(station)) {
    w.add("web_temperature", substrate.temperature_limit->low.in_celsius(), "degC",
          material(w.job));
  }
  if (substrate.food_contact && substrate.food_contact->value) {
    w.add("migration", std::nullopt, "", material(w.job));
  }
}

/// All channels are weighed at once. Flushing fluid is no ink and is not weighed with it.
void of_consumption(Writer& w, const Station& station) {
  if (station.consumption.empty()) return;
  double sum = 0;
  std::string channels;
  for (const Consumption& use : station.consumption) {
    sum += use.ml_per_hour - use.flush_ml_per_hour;
    channels += (channels.empty() ? "" : ", ") + use.channel;
  }
  w.add("ink_consumption", sum, "mL/h", channels);
}

/// Leakage that may fall on a person all day; no figure where the lamp's light is not weighted.
void of_light(Writer& w, const Stage& stage) {
  std::optional<double> most;
  for (const Lamp& lamp : w.catalogue.lamps) {
    const bool arc = lamp.mercury && lamp.mercury->value;
    if (lamp.name != stage.equipment || arc || !lamp.wavelength) continue;
    const std::optional<Dose> limit = daily_limit(lamp.wavelength->value);
    if (limit) most = (*limit / working_day).si();
  }
  w.add("uv_leakage", most, "W/m2");
}

/// Several vapours together: each keeps its own limit, and the shares of the limits add up to 1 at
/// most. One vapour, or one whose limit as a whole is stated, keeps that limit.
void of_vapour(Writer& w, const Airing& airing) {
  std::vector<std::string> solvents;
  for (const SolventUse& use : airing.solvents) {
    const bool known = std::find(solvents.begin(), solvents.end(), use.solvent) != solvents.end();
    if (!known) solvents.push_back(use.solvent);
  }
  const bool stated = std::any_of(w.job.channels.begin(), w.job.channels.end(), [](const auto& c) {
    return c.ink != nullptr && c.ink->exposure_limit;
  });
  if (solvents.size() > 1 && !stated) {
    std::string names;
    for (const std::string& name : solvents) names += (names.empty() ? "" : ", ") + name;
    w.add("vapours_at_workplace", 1, "", names);
  } else {
    w.add("vapour_at_workplace", airing.limit_ppm, "ppm");
  }
  if (airing.captures) w.add("capture", captured_share(w.job).low * 100, "%");
}

void of_stages(Writer& w, const Station& station) {
  for (const Stage& stage : station.stages) {
    if (stage.kind == "uv") w.add("cure_at_speed", stage.dose_mj_per_cm2, "mJ/cm2");
    if (stage.kind == "uv") of_light(w, stage);
    if (stage.kind == "drying") w.add("drying_at_speed", stage.water_kg_per_h, "kg/h");
    if (stage.airing) of_vapour(w, *stage.airing);
  }
  std::optional<double> speed;
  if (w.job.speed) speed = w.job.speed->high.si() * 60;
  if (has_family(w.job, InkFamily::solvent)) w.add("solvent_dry", speed, "m/min");
  if (has_family(w.job, InkFamily::oil)) w.add("absorption", speed, "m/min");
  of_consumption(w, station);
}

bool same(const std::optional<double>& a, const std::optional<double>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  return at_most(*a, *b) && at_most(*b, *a);
}

/// Whether two ask the same, be it of two subjects.
bool same(const Check& a, const Check& b) {
  return a.code == b.code && a.unit == b.unit && same(a.acceptance, b.acceptance);
}

/// "black / H-1" and "cyan / H-1" are "black, cyan / H-1"; a subject named already stays.
std::string joined(const std::string& all, const std::string& next) {
  const std::size_t tail = all.find(" / ");
  const std::size_t next_tail = next.find(" / ");
  const bool one_head = tail != std::string::npos && next_tail != std::string::npos &&
                        all.substr(tail) == next.substr(next_tail);
  const std::string list = ", " + (one_head ? all.substr(0, tail) : all) + ", ";
  std::string name = one_head ? next.substr(0, next_tail) : next;
  if (name.empty() || list.find(", " + name + ", ") != std::string::npos) return all;
  if (all.empty()) return name;
  return one_head ? all.substr(0, tail) + ", " + name + all.substr(tail) : all + ", " + name;
}

/// What is asked of a subject alike along both axes, once.
std::vector<Check> of_both_axes(const std::vector<Check>& list) {
  std::vector<Check> all;
  for (const Check& check : list) {
    const auto known = std::find_if(all.begin(), all.end(), [&](const Check& c) {
      return same(c, check) && c.subject == check.subject && c.axis != check.axis;
    });
    if (known == all.end()) {
      all.push_back(check);
    } else {
      known->axis = "both";
    }
  }
  return all;
}

/// In the order of the list of codes; what is asked of several subjects alike is one check.
std::vector<Check> in_order(const std::vector<Check>& list) {
  std::vector<Check> sorted;
  const std::vector<Check> all = of_both_axes(list);
  for (const std::string_view code : check_codes()) {
    for (const Check& check : all) {
      if (check.code != code) continue;
      const auto known = std::find_if(sorted.begin(), sorted.end(), [&](const Check& c) {
        return same(c, check) && c.axis == check.axis;
      });
      if (known == sorted.end()) {
        sorted.push_back(check);
      } else {
        known->subject = joined(known->subject, check.subject);
      }
    }
  }
  return sorted;
}

}  // namespace

std::vector<Check> checks(const Job& job, const Catalogue& catalogue,
                          const std::vector<Group>& groups, const Station& station) {
  if (groups.empty()) return {};
  Writer w{job, catalogue, {}};
  for (const Group& group : groups) {
    of_inks(w, group);
    of_dots(w, group);
    of_heads(w, group);
    of_throw(w, group);
    of_bar_codes(w, group);
  }
  of_registration(w, groups);
  of_substrate(w, station);
  of_stages(w, station);
  return in_order(w.list);
}

}  // namespace calc
