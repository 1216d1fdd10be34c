/// Waste, storage of ink, contact with food.
#include <algorithm>
#include <cmath>

#include "calc/running.h"
#include "calc/safety_parts.h"

namespace calc {
namespace {

struct FamilyWaste {
  InkFamily family;
  const char* code;
};
constexpr std::array<FamilyWaste, 4> wastes{{{InkFamily::uv, "waste_uv"},
                                             {InkFamily::aqueous, "waste_aqueous"},
                                             {InkFamily::solvent, "waste_solvent"},
                                             {InkFamily::oil, "waste_oil"}}};

// Regulation (EC) 1272/2008: flammable liquids end at this flash point.
const Temperature flammable_below = Temperature::celsius(60);
constexpr double bund_share = 1.1;

/// Litres to a tenth, as far as such a figure is known.
double tenths(double litres) { return std::round(litres * 10) / 10; }

double waste_litres(const SafetyCase& c, InkFamily family) {
  double ml = 0;
  for (const Consumption& use : c.station->consumption) {
    for (const Channel& channel : c.job.channels) {
      if (channel.name == use.channel && channel.family == family) ml += use.waste_ml_per_hour;
    }
  }
  return ml / 1e3 * (running_time(c.job).si() / 3600);
}

bool flammable(const SafetyCase& c) {
  const std::vector<const Ink*> inks = inks_of(c.job);
  return has_family(c.job, InkFamily::solvent) ||
         std::any_of(inks.begin(), inks.end(), [](const Ink* ink) {
           return ink->flash_point && ink->flash_point->low <= flammable_below;
         });
}

/// Litres on site: the first fill and the use of a month; the bund for the largest filling.
void storage_note(const SafetyCase& c, std::vector<Notice>& to) {
  double litres = 0, largest = 0;
  for (const BomLine& line : c.station->bom) {
    if (line.code != "first_fill") continue;
    litres += line.quantity;
    largest = std::max(largest, line.quantity);
  }
  for (const Consumption& use : c.station->consumption) litres += use.l_per_month;
  to.push_back(
      {flammable(c) ? "ink_storage_flammable" : "ink_storage",
       {number("litres", tenths(litres), "L"), number("bund", tenths(largest * bund_share), "L")},
       "colour.cover_mean",
       {}});
}

/// Flushing fluids of the bill; the catalogue states no hazard of theirs.
void flush_note(const SafetyCase& c, std::vector<Notice>& to) {
  std::string fluids;
  bool any = false;
  for (const BomLine& line : c.station->bom) {
    const bool fluid =
        line.code == "flush" ||
        std::any_of(c.catalogue.parts.begin(), c.catalogue.parts.end(), [&](const Part& part) {
          return part.kind && part.kind->value == PartKind::flush &&
                 line.source == "part." + part.name;
        });
    if (!fluid) continue;
    any = true;
    const std::string& name = line.designation.empty() ? line.part_number : line.designation;
    if (!name.empty()) fluids += (fluids.empty() ? "" : ", ") + name;
  }
  if (!any) return;
  Notice note{"flush_hazard", {}, "ink.family", {}};
  if (!fluids.empty()) note.args = {words("subject", "named"), words("fluid", fluids)};
  to.push_back(std::move(note));
}

void food_notes(const SafetyCase& c, std::vector<Notice>& to) {
  const Substrate& substrate = c.job.request->substrate;
  if (!substrate.food_contact || !substrate.food_contact->value) return;
  const std::string material = substrate.material ? substrate.material->value : "";
  const char* field = "substrate.food_contact";
  to.push_back({"food_contact", {words("material", material)}, field, {}});
  if (!has_family(c.job, InkFamily::uv)) return;
  to.push_back({"food_contact_uv", {words("material", material)}, field, {}});
}

}  // namespace

void waste_notes(const SafetyCase& c, std::vector<Notice>& to) {
  food_notes(c, to);
  if (c.station == nullptr) return;
  for (const FamilyWaste& waste : wastes) {
    if (!has_family(c.job, waste.family)) continue;
    to.push_back({waste.code,
                  {number("litres_per_year", tenths(waste_litres(c, waste.family)), "L")},
                  "ink.family",
                  {}});
  }
  to.push_back({"waste_law", {region_of(c.job)}, "request.region", {}});
  flush_note(c, to);
  storage_note(c, to);
}

}  // namespace calc
