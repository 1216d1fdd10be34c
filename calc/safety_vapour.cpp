/// Flammable liquids and their vapour, oil mist, aqueous ink.
#include <algorithm>

#include "calc/blend.h"
#include "calc/compare.h"
#include "calc/flash_point.h"
#include "calc/safety_parts.h"
#include "calc/station_vapour.h"

namespace calc {
namespace {

// Regulation (EC) 1272/2008 Annex I Table 2.6.1: below it vapour stands over the liquid in a room.
const Temperature light_vapour_below = Temperature::celsius(23);

std::string clp_name(ClpCategory category) {
  switch (category) {
    case ClpCategory::one:
      return "1";
    case ClpCategory::two:
      return "2";
    case ClpCategory::one_or_two:
      return "1/2";
    case ClpCategory::three:
      return "3";
    case ClpCategory::none:
      break;
  }
  return "-";
}

std::string nfpa_name(NfpaClass liquid) {
  switch (liquid) {
    case NfpaClass::ia:
      return "IA";
    case NfpaClass::ib:
      return "IB";
    case NfpaClass::ia_or_ib:
      return "IA/IB";
    case NfpaClass::ic:
      return "IC";
    case NfpaClass::ii:
      return "II";
    case NfpaClass::iiia:
      return "IIIA";
    case NfpaClass::iiib:
      break;
  }
  return "IIIB";
}

std::string packing_name(PackingGroup group) {
  switch (group) {
    case PackingGroup::i:
      return "I";
    case PackingGroup::ii:
      return "II";
    case PackingGroup::i_or_ii:
      return "I/II";
    case PackingGroup::iii:
      return "III";
    case PackingGroup::none:
      break;
  }
  return "-";
}

using Boiling = std::optional<Temperature>;

/// GHS adds category 4 where CLP ends.
std::string ghs_name(Temperature flash, const Boiling& boiling) {
  return ghs_category_4(flash) ? "4" : clp_name(clp_category(flash, boiling));
}

/// Which words say the class: below 23 degC the boiling point divides categories 1 and 2; above
/// 60 degC CLP names none, above 93 degC GHS neither.
std::string flash_words(Temperature flash, const Boiling& boiling) {
  const ClpCategory category = clp_category(flash, boiling);
  if (category == ClpCategory::one_or_two) return "boiling_unknown";
  if (category != ClpCategory::none) return "";
  return ghs_category_4(flash) ? "combustible" : "unclassified";
}

/// Where the request states the flash point.
std::vector<Origin> stated_at(const Ink& ink) {
  if (!ink.flash_point) return {};
  return {ink.flash_point->origin};
}

/// Where vapour stands over the ink at room temperature the equipment itself must suit the zone.
void zone_note(const Ink& ink, Temperature flash, std::vector<Notice>& to) {
  if (!(flash < light_vapour_below)) return;
  to.push_back({"classified_zone",
                {words("ink", ink.name), number("flash_point", flash.in_celsius(), "degC")},
                "ink." + ink.name + ".flash_point",
                stated_at(ink)});
}

/// Sources that disagree on the flash point of a solvent: the lower one counts, and both are said.
void conflict_notes(const Ink& ink, const Blend& blend, std::vector<Notice>& to) {
  for (const BlendPart& part : blend.parts) {
    if (part.row == nullptr || !flash_conflict(*part.row)) continue;
    to.push_back(
        {"flash_conflict",
         {words("ink", ink.name), words("solvent", part.name),
          number("flash_point", lower_flash(*part.row)->in_celsius(), "degC"),
          number("other", std::max(part.row->flash->value, part.row->other_flash->value), "degC")},
         "ink." + ink.name + ".flash_point",
         {}});
  }
}

/// What the table of solvents says stands in for a flash point nobody stated.
void table_note(const Ink& ink, Temperature flash, std::vector<Notice>& to) {
  to.push_back({"flash_point_table",
                {words("ink", ink.name), number("flash_point", flash.in_celsius(), "degC")},
                "ink." + ink.name + ".flash_point",
                {}});
}

void flash_notes(const SafetyCase& c, const Ink& ink, std::vector<Notice>& to) {
  const std::string field = "ink." + ink.name + ".flash_point";
  const Channel& channel = channel_of(c.job, ink);
  const Blend blend = blend_of(c.job, channel);
  conflict_notes(ink, blend, to);
  if (!blend.flash) {
    Notice unknown{"flash_point_unknown", {words("ink", ink.name)}, field, {}};
    const bool burns = may_burn(c.job, ink);
    if (!burns && channel.family == InkFamily::uv) unknown.args.push_back(words("subject", "uv"));
    if (burns || channel.family == InkFamily::uv) to.push_back(std::move(unknown));
    return;
  }
  if (!ink.flash_point) table_note(ink, *blend.flash, to);
  const Temperature flash = *blend.flash;
  to.push_back({"flash_point",
                {words("ink", ink.name), words("subject", flash_words(flash, blend.boiling)),
                 number("flash_point", flash.in_celsius(), "degC"),
                 words("clp", clp_name(clp_category(flash, blend.boiling))),
                 words("ghs", ghs_name(flash, blend.boiling)),
                 words("nfpa", nfpa_name(nfpa_class(flash, blend.boiling))),
                 words("packing", packing_name(packing_group(flash, blend.boiling)))},
                field,
                stated_at(ink)});
  zone_note(ink, flash, to);
  const Temperature handling = handling_temperature(c, ink);
  if (!may_form_vapour(handling, flash, false)) return;
  Notice zone{"vapour_zone",
              {words("ink", ink.name), number("temperature", handling.in_celsius(), "degC"),
               number("flash_point", flash.in_celsius(), "degC")},
              field,
              stated_at(ink)};
  if (flash < handling) zone.args.push_back(words("subject", "above"));
  to.push_back(std::move(zone));
}

void exposure_notes(const SafetyCase& c, const Ink& ink, std::vector<Notice>& to) {
  const std::string field = "ink." + ink.name + ".exposure_limit";
  const Blend blend = blend_of(c.job, channel_of(c.job, ink));
  if (!blend.limit) {
    to.push_back({"exposure_limit_unknown", {words("ink", ink.name)}, field, {}});
    return;
  }
  Notice note{"exposure_limit",
              {words("ink", ink.name), number("limit", *blend.limit * 1e6, "ppm")},
              field,
              {}};
  if (ink.exposure_limit) note.where.push_back(ink.exposure_limit->origin);
  if (!ink.exposure_limit) note.args.push_back(words("subject", "table"));
  to.push_back(std::move(note));
}

/// Air of the ventilation stage in words: what is captured, what is in the room.
void air_notes(const SafetyCase& c, const Stage& stage, std::vector<Notice>& to) {
  const Airing& air = *stage.airing;
  if (air.lel_m3_per_h) {
    to.push_back(
        {"air_explosion",
         {number("vapour", air.captured_kg_per_h + air.room_kg_per_h, "kg/h"),
          number("air", *air.lel_m3_per_h, "m3/h"), number("share", air.lel_share_percent, "%"),
          number("lel", *air.lel_percent, "%")},
         "line.enclosed",
         {}});
  }
  if (air.health_m3_per_h) {
    const Ends captured = captured_share(c.job);
    Notice note{
        "air_health",
        {number("vapour", air.room_kg_per_h, "kg/h"), number("air", *air.health_m3_per_h, "m3/h"),
         number("air_least", *air.health_least_m3_per_h, "m3/h"),
         number("air_most", *air.health_most_m3_per_h, "m3/h"),
         number("limit", *air.limit_ppm, "ppm")},
        "line.enclosed",
        {}};
    if (air.captures) {
      note.args.push_back(words("subject", "captured"));
      note.args.push_back(number("share", captured.likely * 100, "%"));
      note.args.push_back(number("share_least", captured.low * 100, "%"));
    }
    to.push_back(std::move(note));
  }
  const bool lacking = !air.health_m3_per_h || (air.captures && !air.lel_m3_per_h);
  if (lacking) to.push_back({"air_unknown", {}, "ink.solvent", {}});
  if (air.lel_estimated && air.lel_percent) {
    to.push_back(
        {"lel_estimated", {number("lel", *air.lel_percent, "%")}, "ink.explosive_limit", {}});
  }
  to.push_back(
      {"voc",
       {number("mass", air.voc_kg_per_year, "kg"), number("peak", air.voc_peak_kg_per_year, "kg")},
       "ink.solvent_share",
       {}});
}

/// No drying of solvent ink is reckoned: what is still wet goes on with the product.
void wet_note(const SafetyCase& c, std::vector<Notice>& to) {
  const bool none = c.job.absorbency == Absorbency::none;
  to.push_back({"wet_solvent", {words("subject", none ? "none" : "")}, "ink.solvent", {}});
}

void solvent_notes(const SafetyCase& c, std::vector<Notice>& to) {
  const Stage* stage = nullptr;
  if (c.station != nullptr) {
    for (const Stage& s : c.station->stages) {
      if (s.airing) stage = &s;
    }
  }
  const bool any = std::any_of(c.job.channels.begin(), c.job.channels.end(), gives_vapour);
  if (!any) return;
  if (stage != nullptr) {
    to.push_back(
        {"solvent_vapour", {number("vapour", *stage->vapour_kg_per_h, "kg/h")}, "ink.solvent", {}});
    air_notes(c, *stage, to);
  }
  for (const Ink* ink : inks_of(c.job)) {
    if (gives_vapour(channel_of(c.job, *ink))) exposure_notes(c, *ink, to);
  }
  const Line& line = c.job.request->line;
  const bool monitored = line.vapour_monitored && line.vapour_monitored->value;
  const double share = c.job.parameters[monitored ? P::lel_share_monitored : P::lel_share];
  Notice monitoring{"lel_monitoring", {number("share", share * 100, "%")}, "ink.solvent", {}};
  if (monitored) {
    monitoring.args.push_back(words("subject", "monitored"));
  } else {
    monitoring.args.push_back(
        number("monitored", c.job.parameters[P::lel_share_monitored] * 100, "%"));
  }
  to.push_back(std::move(monitoring));
  to.push_back({"static_solvent", {}, "ink.solvent", {}});
  if (has_family(c.job, InkFamily::solvent)) wet_note(c, to);
}

/// Channels whose ink's family nobody stated.
void family_notes(const SafetyCase& c, std::vector<Notice>& to) {
  for (const Channel& channel : c.job.channels) {
    if (channel.family) continue;
    const std::string name = channel.ink == nullptr ? channel.name : channel.ink->name;
    to.push_back({"ink_family_unknown", {words("ink", name)}, "ink." + name + ".family", {}});
  }
}

/// Ink in the air: the most the heads jet is what extraction is made for, not what is used.
void mist_note(const SafetyCase& c, InkFamily family, const char* code, std::vector<Notice>& to) {
  if (!has_family(c.job, family)) return;
  to.push_back({code,
                {number("peak", peak_ml_per_hour(c, family), "mL/h"),
                 number("ml_per_hour", ml_per_hour(c, family), "mL/h")},
                "ink.family",
                {}});
}

/// What is no water in an aqueous ink is told of where nothing says what it is.
void aqueous_rest_notes(const SafetyCase& c, std::vector<Notice>& to) {
  for (const Ink* ink : inks_of(c.job, InkFamily::aqueous)) {
    if (ink->solvent && ink->flash_point) continue;
    const double water =
        ink->water_share ? served_low(*ink->water_share) : c.job.parameters[P::water_share];
    if (at_least(water, 1.0)) continue;
    const char* field = ink->flash_point ? ".solvent" : ".flash_point";
    to.push_back({"aqueous_rest",
                  {words("ink", ink->name), number("share", (1 - water) * 100, "%")},
                  "ink." + ink->name + field,
                  {}});
  }
}

}  // namespace

void vapour_notes(const SafetyCase& c, std::vector<Notice>& to) {
  family_notes(c, to);
  for (const Ink* ink : inks_of(c.job)) flash_notes(c, *ink, to);
  aqueous_rest_notes(c, to);
  solvent_notes(c, to);
  static_notes(c, to);
  if (c.station == nullptr) return;
  mist_note(c, InkFamily::aqueous, "aqueous_ink", to);
  mist_note(c, InkFamily::oil, "oil_mist", to);
  mist_note(c, InkFamily::uv, "uv_mist", to);
}

}  // namespace calc
