/// Moving machinery, heat, air, noise, isolation from energy.
#include <algorithm>

#include "calc/blend.h"
#include "calc/named.h"
#include "calc/safety_parts.h"
#include "calc/throw.h"

namespace calc {
namespace {

// Skin on metal for hours, ISO 13732-1, from memory.
const Temperature hot_to_touch = Temperature::celsius(43);
// Directive 2003/10/EC Article 3, daily exposure.
constexpr double noise_lower_db = 80, noise_upper_db = 85;
// 29 CFR 1910.95: action level and permissible exposure, 8 h.
constexpr double noise_action_db = 85, noise_permissible_db = 90;

const Scan* scan_of(const SafetyCase& c) {
  for (const Group& group : c.groups) {
    if (group.scan) return &*group.scan;
  }
  return nullptr;
}

void motion_notes(const SafetyCase& c, std::vector<Notice>& to) {
  to.push_back({"moving_machinery", {region_of(c.job)}, "line.speed", {}});
  if (const Scan* scan = scan_of(c)) {
    to.push_back({"carriage_pinch",
                  {number("speed", scan->carriage_speed.si(), "m/s"),
                   number("width", in_mm(scan->machine_width), "mm")},
                  "line.mode",
                  {}});
  } else if (c.job.speed) {
    to.push_back({"in_running_nip",
                  {number("speed", c.job.speed->high.si() * 60, "m/min")},
                  "line.speed",
                  {}});
  }
}

/// Least gap [mm] between head and product: the least throw stated less its variation.
double least_gap(const SafetyCase& c, const Group& group) {
  const Head* const head = named(c.catalogue.heads, group.head);
  Length nominal = millimetres(c.job.parameters[P::throw_mm]);
  if (head != nullptr) nominal = nominal_throw(c.job, *head);
  const Given<Length>& stated = c.job.request->line.throw_distance;
  if (stated) nominal = stated->low;
  return in_mm(nominal - c.job.throw_variation.high - c.job.thickness_variation);
}

void head_notes(const SafetyCase& c, std::vector<Notice>& to) {
  if (c.groups.empty()) return;
  double gap = least_gap(c, c.groups.front());
  Temperature hottest = Temperature::celsius(0);
  for (const Group& group : c.groups) {
    gap = std::min(gap, least_gap(c, group));
    hottest = std::max(hottest, group.jetting_temperature.value_or(hottest));
  }
  to.push_back({"head_strike", {number("gap", gap, "mm")}, "line.throw_distance", {}});
  if (hottest < hot_to_touch) return;
  to.push_back({"hot_ink",
                {number("temperature", hottest.in_celsius(), "degC")},
                "ink.jetting_temperature",
                {}});
}

/// Only the European Union's own wording names no law of the United States.
Notice lockout(const Job& job, double electrical) {
  const bool eu = region_of_job(job) == Region::eu;
  Notice note{"lockout", {}, "line.speed", {}};
  if (electrical > 0) {
    note.args = {words("subject", eu ? "powered.eu" : "powered"),
                 number("electrical", electrical, "kW")};
  } else if (eu) {
    note.args = {words("subject", "eu")};
  }
  return note;
}

bool pretreats(const SafetyCase& c, const BomLine& line) {
  if (line.code == "pretreatment") return true;
  return std::any_of(c.catalogue.parts.begin(), c.catalogue.parts.end(), [&](const Part& part) {
    return part.kind && part.kind->value == PartKind::pretreatment &&
           line.source == "part." + part.name;
  });
}

/// Corona, plasma or flame before the heads; which of them the catalogue does not say.
void pretreatment_note(const SafetyCase& c, std::vector<Notice>& to) {
  const std::vector<BomLine>& bom = c.station->bom;
  const auto line =
      std::find_if(bom.begin(), bom.end(), [&](const BomLine& l) { return pretreats(c, l); });
  if (line == bom.end()) return;
  Notice note{"pretreatment_hazard", {}, "substrate.surface_energy", {}};
  const std::string& name = line->designation.empty() ? line->part_number : line->designation;
  if (!name.empty()) note.args = {words("subject", "named"), words("part", name)};
  to.push_back(std::move(note));
}

void station_notes(const Job& job, const Station& station, std::vector<Notice>& to) {
  double electrical = 0;
  for (const Stage& stage : station.stages) {
    electrical += stage.running_kw.value_or(stage.electrical_kw.value_or(0));
    if (stage.kind != "drying") continue;
    Notice dryer{"hot_dryer",
                 {number("heat", stage.electrical_kw.value_or(0), "kW")},
                 "ink.water_share",
                 {}};
    if (const Given<std::string>& material = job.request->substrate.material) {
      dryer.args.push_back(words("subject", "dust"));
      dryer.args.push_back(words("material", material->value));
    }
    to.push_back(std::move(dryer));
  }
  double supplies = 0;
  for (const BomLine& line : station.bom) {
    if (line.source.rfind("supply.", 0) == 0 || line.code == "ink_supply") {
      supplies += line.quantity;
    }
  }
  to.push_back({"compressed_air", {number("supplies", supplies, "")}, "ink.family", {}});
  to.push_back(lockout(job, electrical));
}

}  // namespace

void machinery_notes(const SafetyCase& c, std::vector<Notice>& to) {
  motion_notes(c, to);
  head_notes(c, to);
  if (c.station != nullptr) {
    station_notes(c.job, *c.station, to);
    pretreatment_note(c, to);
  }
  to.push_back(
      {"noise",
       {region_of(c.job), number("lower", noise_lower_db, "dB(A)"),
        number("upper", noise_upper_db, "dB(A)"), number("action", noise_action_db, "dB(A)"),
        number("permissible", noise_permissible_db, "dB(A)")},
       "line.hours_per_day",
       {}});
}

}  // namespace calc
