/// Flammable liquids and their vapour, oil mist, aqueous ink.
#include <algorithm>

#include "calc/flash_point.h"
#include "calc/safety_parts.h"

namespace calc {
namespace {

// NFPA 86 and EN 1539: share of the lower explosive limit without continuous control.
constexpr double lel_share_percent = 25;
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

/// GHS adds category 4 where CLP ends.
std::string ghs_name(Temperature flash) {
  return ghs_category_4(flash) ? "4" : clp_name(clp_category(flash, std::nullopt));
}

/// Which words say the class: below 23 degC the boiling point, which is not known here, divides
/// categories 1 and 2; above 60 degC CLP names none, above 93 degC GHS neither.
std::string flash_words(Temperature flash) {
  if (flash < light_vapour_below) return "boiling_unknown";
  if (clp_category(flash, std::nullopt) != ClpCategory::none) return "";
  return ghs_category_4(flash) ? "combustible" : "unclassified";
}

/// Where vapour stands over the ink at room temperature the equipment itself must suit the zone.
void zone_note(const Ink& ink, Temperature flash, std::vector<Notice>& to) {
  if (!(flash < light_vapour_below)) return;
  to.push_back({"classified_zone",
                {words("ink", ink.name), number("flash_point", flash.in_celsius(), "degC")},
                "ink." + ink.name + ".flash_point",
                {ink.flash_point->origin}});
}

bool gives_vapour(const SafetyCase& c, const Ink& ink) {
  const bool part = ink.solvent || (ink.solvent_share && ink.solvent_share->value > 0);
  return part || std::any_of(c.job.channels.begin(), c.job.channels.end(), [&](const Channel& ch) {
           return ch.ink == &ink &&
                  (ch.family == InkFamily::solvent || ch.family == InkFamily::oil);
         });
}

void flash_notes(const SafetyCase& c, const Ink& ink, std::vector<Notice>& to) {
  const std::string field = "ink." + ink.name + ".flash_point";
  if (!ink.flash_point) {
    if (gives_vapour(c, ink)) {
      to.push_back({"flash_point_unknown", {words("ink", ink.name)}, field, {}});
    }
    return;
  }
  const Temperature flash = ink.flash_point->low;
  to.push_back({"flash_point",
                {words("ink", ink.name), words("subject", flash_words(flash)),
                 number("flash_point", flash.in_celsius(), "degC"),
                 words("clp", clp_name(clp_category(flash, std::nullopt))),
                 words("ghs", ghs_name(flash)), words("nfpa", nfpa_name(nfpa_class(flash, {})))},
                field,
                {ink.flash_point->origin}});
  zone_note(ink, flash, to);
  const Temperature handling = handling_temperature(c, ink);
  if (!may_form_vapour(handling, flash, false)) return;
  to.push_back({"vapour_zone",
                {words("ink", ink.name), number("temperature", handling.in_celsius(), "degC"),
                 number("flash_point", flash.in_celsius(), "degC")},
                field,
                {ink.flash_point->origin}});
}

void exposure_notes(const Ink& ink, std::vector<Notice>& to) {
  const std::string field = "ink." + ink.name + ".exposure_limit";
  if (!ink.exposure_limit) {
    to.push_back({"exposure_limit_unknown", {words("ink", ink.name)}, field, {}});
    return;
  }
  to.push_back({"exposure_limit",
                {words("ink", ink.name), number("limit", ink.exposure_limit->low, "ppm")},
                field,
                {ink.exposure_limit->origin}});
}

void solvent_notes(const SafetyCase& c, std::vector<Notice>& to) {
  if (!has_family(c.job, InkFamily::solvent)) return;
  if (c.station != nullptr) {
    to.push_back({"solvent_vapour",
                  {number("ml_per_hour", ml_per_hour(c, InkFamily::solvent), "mL/h")},
                  "ink.solvent",
                  {}});
  }
  for (const Ink* ink : inks_of(c.job, InkFamily::solvent)) exposure_notes(*ink, to);
  to.push_back({"lel_monitoring", {number("share", lel_share_percent, "%")}, "ink.solvent", {}});
  to.push_back({"static_solvent", {}, "ink.solvent", {}});
}

void static_note(const SafetyCase& c, std::vector<Notice>& to) {
  if (c.job.absorbency != Absorbency::none) return;
  const bool scans = std::any_of(c.groups.begin(), c.groups.end(),
                                 [](const Group& g) { return g.scan.has_value(); });
  Notice note{"static", {}, "substrate.absorbency", {}};
  if (!scans && c.job.speed) {
    note.args = {words("subject", "moving"), number("speed", c.job.speed->high.si() * 60, "m/min")};
  }
  to.push_back(std::move(note));
}

/// Channels whose ink's family nobody stated.
void family_notes(const SafetyCase& c, std::vector<Notice>& to) {
  for (const Channel& channel : c.job.channels) {
    if (channel.family) continue;
    const std::string name = channel.ink == nullptr ? channel.name : channel.ink->name;
    to.push_back({"ink_family_unknown", {words("ink", name)}, "ink." + name + ".family", {}});
  }
}

}  // namespace

void vapour_notes(const SafetyCase& c, std::vector<Notice>& to) {
  family_notes(c, to);
  for (const Ink* ink : inks_of(c.job)) flash_notes(c, *ink, to);
  solvent_notes(c, to);
  static_note(c, to);
  if (c.station == nullptr) return;
  if (has_family(c.job, InkFamily::aqueous)) {
    to.push_back({"aqueous_ink",
                  {number("ml_per_hour", ml_per_hour(c, InkFamily::aqueous), "mL/h")},
                  "ink.family",
                  {}});
  }
  if (has_family(c.job, InkFamily::oil)) {
    to.push_back({"oil_mist",
                  {number("ml_per_hour", ml_per_hour(c, InkFamily::oil), "mL/h")},
                  "ink.family",
                  {}});
  }
}

}  // namespace calc
