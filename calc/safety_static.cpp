/// Static charge of what passes under the heads.
#include <algorithm>

#include "calc/blend.h"
#include "calc/safety_material.h"
#include "calc/safety_parts.h"

namespace calc {
namespace {

Notice charges(const SafetyCase& c, bool eu) {
  const bool scans = std::any_of(c.groups.begin(), c.groups.end(),
                                 [](const Group& g) { return g.scan.has_value(); });
  Notice note{"static", {}, "substrate.absorbency", {}};
  if (!scans && c.job.speed) {
    note.args = {words("subject", eu ? "moving.eu" : "moving"),
                 number("speed", c.job.speed->high.si() * 60, "m/min")};
  } else if (eu) {
    note.args = {words("subject", "eu")};
  }
  return note;
}

/// Whether a dryer takes the moisture from paper that runs past it.
bool dried_paper(const SafetyCase& c) {
  const Given<std::string>& material = c.job.request->substrate.material;
  if (c.station == nullptr || !c.job.speed || !material || !names_paper(material->value)) {
    return false;
  }
  return std::any_of(c.station->stages.begin(), c.station->stages.end(),
                     [](const Stage& stage) { return stage.kind == "drying"; });
}

}  // namespace

void static_notes(const SafetyCase& c, std::vector<Notice>& to) {
  const bool eu = region_of_job(c.job) == Region::eu;
  const Substrate& s = c.job.request->substrate;
  if (c.job.absorbency == Absorbency::none) {
    to.push_back(charges(c, eu));
  } else if (s.material && names_plastic(s.material->value)) {
    to.push_back(
        {"static_possible",
         {words("subject", eu ? "named.eu" : "named"), words("material", s.material->value)},
         "substrate.material",
         {}});
  } else if (!s.absorbency) {
    Notice note{"static_possible", {}, "substrate.absorbency", {}};
    if (eu) note.args = {words("subject", "eu")};
    to.push_back(std::move(note));
  } else if (dried_paper(c)) {
    to.push_back(
        {"static_possible",
         {words("subject", eu ? "dried.eu" : "dried"), words("material", s.material->value),
          number("speed", c.job.speed->high.si() * 60, "m/min")},
         "substrate.material",
         {}});
  }
}

}  // namespace calc
