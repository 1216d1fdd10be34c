#include "calc/safety_conditions.h"

#include <algorithm>

#include "calc/blend.h"
#include "calc/flash_point.h"
#include "calc/safety_parts.h"
#include "calc/station_vapour.h"

namespace calc {
namespace {

/// Adds an ink to the condition of that subject, or begins one for it.
void add_ink(const std::string& subject, const Ink& ink, std::vector<Notice>& to) {
  auto known = std::find_if(to.begin(), to.end(), [&](const Notice& n) {
    return std::get<std::string>(n.args.back().value) == subject;
  });
  if (known == to.end()) {
    Notice notice{"zone_unclassified",
                  {words("ink", ink.name), words("subject", subject)},
                  "ink." + ink.name + ".flash_point",
                  {}};
    known = to.insert(to.end(), std::move(notice));
  } else {
    std::get<std::string>(known->args.front().value) += ", " + ink.name;
  }
  if (ink.flash_point) known->where.push_back(ink.flash_point->origin);
}

/// Equipment is chosen without regard to zones, so each ink whose vapour or mist may burn, or of
/// which nobody says whether it may, leaves the choice open.
std::vector<Notice> zone_conditions(const SafetyCase& c) {
  std::vector<Notice> list;
  for (const Ink* ink : inks_of(c.job)) {
    const std::optional<Temperature> flash = blend_of(c.job, channel_of(c.job, *ink)).flash;
    const bool flammable = flash && !(*flash > flammable_to);
    const bool hot = flash && may_form_vapour(handling_temperature(c, *ink), *flash, false);
    if (flammable || hot) add_ink("", *ink, list);
    if (!flash && may_burn(c.job, *ink)) add_ink("unknown", *ink, list);
  }
  return list;
}

void drying_condition(const Job& job, std::vector<Notice>& to) {
  if (!has_family(job, InkFamily::solvent)) return;
  const bool none = job.absorbency == Absorbency::none;
  to.push_back({"solvent_drying", {words("subject", none ? "none" : "")}, "ink.solvent", {}});
}

void capture_condition(const Job& job, std::vector<Notice>& to) {
  const Ends captured = captured_share(job);
  const bool any = std::any_of(job.channels.begin(), job.channels.end(), gives_vapour);
  if (!any || captured.likely <= 0) return;
  to.push_back(
      {"capture_unproved",
       {number("share", captured.likely * 100, "%"), number("least", captured.low * 100, "%")},
       "line.enclosed",
       {}});
}

}  // namespace

std::vector<Notice> safety_conditions(const Job& job, const Catalogue& catalogue,
                                      const std::vector<Group>& groups) {
  if (groups.empty()) return {};
  std::vector<Notice> list = zone_conditions({job, catalogue, groups, nullptr});
  drying_condition(job, list);
  capture_condition(job, list);
  const Given<bool>& food = job.request->substrate.food_contact;
  if (food && food->value) {
    list.push_back({"food_face", {region_of(job)}, "substrate.food_contact", {food->origin}});
  }
  return list;
}

}  // namespace calc
