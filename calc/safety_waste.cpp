/// Waste, storage of ink, contact with food.
#include <algorithm>
#include <cmath>

#include "calc/blend.h"
#include "calc/flash_point.h"
#include "calc/running.h"
#include "calc/safety_parts.h"
#include "calc/station_web.h"

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

constexpr double bund_share = 1.1;
constexpr Density lightest_alcohol = Density::from_si(790);

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
           return ink->flash_point && ink->flash_point->low <= flammable_to;
         });
}

/// Whether nobody says of an ink that is not water in the main whether it is flammable.
bool may_be_flammable(const SafetyCase& c) {
  return std::any_of(c.job.channels.begin(), c.job.channels.end(), [&](const Channel& channel) {
    const bool burns = channel.family == InkFamily::uv || channel.family == InkFamily::oil;
    return burns && channel.ink != nullptr && !blend_of(c.job, channel).flash;
  });
}

/// The least of what may stand in containers outside a storage room, over the inks whose flash
/// point is known.
std::optional<Volume> least_container_limit(const SafetyCase& c) {
  std::optional<Volume> least;
  for (const Channel& channel : c.job.channels) {
    const Blend blend = blend_of(c.job, channel);
    if (!blend.flash || *blend.flash > flammable_to) continue;
    const Volume limit = container_limit(nfpa_class(*blend.flash, blend.boiling));
    if (!least || limit < *least) least = limit;
  }
  return least;
}

/// Waste ink that is ignitable by its flash point, outside the European Union, whose own list of
/// waste knows no such code.
void ignitable_note(const SafetyCase& c, std::vector<Notice>& to) {
  if (region_of_job(c.job) == Region::eu) return;
  std::vector<const Ink*> seen;
  for (const Channel& channel : c.job.channels) {
    if (channel.ink == nullptr) continue;
    if (std::find(seen.begin(), seen.end(), channel.ink) != seen.end()) continue;
    seen.push_back(channel.ink);
    const Ink& ink = *channel.ink;
    const Blend blend = blend_of(c.job, channel);
    if (!blend.flash) continue;
    // Share by volume, as if all alcohols were as light as the lightest.
    const double alcohol = blend.alcohol * (ink.solvent_share ? ink.solvent_share->high : 1) *
                           (ink_density(c.job, channel) / lightest_alcohol);
    const double water = ink.water_share ? ink.water_share->low : 0;
    if (!ignitable_waste({*blend.flash, water, alcohol})) continue;
    to.push_back(
        {"waste_ignitable",
         {words("ink", ink.name), number("flash_point", blend.flash->in_celsius(), "degC")},
         "ink." + ink.name + ".flash_point",
         {}});
  }
}

/// The largest container [L] that stands on site: of the supplies, or, where none states its
/// container, a whole first fill of a channel.
double largest_container(const Station& station) {
  double largest = 0;
  for (const ChannelFeed& feed : station.feeds) {
    const Volume one = feed.container > Volume() ? feed.container : feed.first_fill;
    largest = std::max(largest, one.si() * 1e3);
  }
  return largest;
}

/// Litres on site: the first fill and the use of a month; the bund for the largest container.
void storage_note(const SafetyCase& c, std::vector<Notice>& to) {
  double litres = 0;
  const double largest = largest_container(*c.station);
  for (const BomLine& line : c.station->bom) {
    if (line.code == "first_fill") litres += line.quantity;
  }
  for (const Consumption& use : c.station->consumption) litres += use.l_per_month;
  const bool burns = flammable(c), unknown = !burns && may_be_flammable(c);
  Notice note{burns || unknown ? "ink_storage_flammable" : "ink_storage",
              {number("litres", tenths(litres), "L"), number("container", largest, "L"),
               number("bund", largest * bund_share, "L")},
              "colour.cover_mean",
              {}};
  if (unknown) note.args.push_back(words("subject", "unknown"));
  const std::optional<Volume> limit = burns ? least_container_limit(c) : std::nullopt;
  if (limit && region_of_job(c.job) != Region::eu) {
    note.args.push_back(words("subject", "us"));
    note.args.push_back(number("limit", tenths(limit->si() * 1e3), "L"));
  }
  to.push_back(std::move(note));
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
  const char* field = "substrate.food_contact";
  if (!substrate.food_contact) to.push_back({"food_unknown", {region_of(c.job)}, field, {}});
  if (!substrate.food_contact || !substrate.food_contact->value) return;
  const std::string material = substrate.material ? substrate.material->value : "";
  to.push_back({"food_contact", {words("material", material), region_of(c.job)}, field, {}});
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
  ignitable_note(c, to);
  flush_note(c, to);
  storage_note(c, to);
}

}  // namespace calc
