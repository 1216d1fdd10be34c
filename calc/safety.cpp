#include "calc/safety.h"

#include <algorithm>

#include "calc/blend.h"
#include "calc/codes.h"
#include "calc/safety_parts.h"
#include "calc/station_load.h"

namespace calc {
namespace {

std::size_t rank(const std::string& code) {
  const auto codes = safety_codes();
  return static_cast<std::size_t>(std::find(codes.begin(), codes.end(), code) - codes.begin());
}

/// How a figure stands in a note that several inks share: the one that asks for more care.
enum class Care { equal, least, most };
Care care_of(const std::string& argument) {
  if (argument == "flash_point") return Care::least;
  return argument == "temperature" ? Care::most : Care::equal;
}

bool same_arg(const Arg& x, const Arg& y) {
  if (x.name != y.name || x.unit != y.unit) return false;
  return x.name == "ink" || care_of(x.name) != Care::equal || x.value == y.value;
}

/// Equal in everything but the ink they name and the figures of which one stands for all.
bool may_share(const Notice& a, const Notice& b) {
  return a.code == b.code &&
         std::equal(a.args.begin(), a.args.end(), b.args.begin(), b.args.end(), same_arg);
}

void take_care(const Notice& from, Notice& to) {
  for (std::size_t i = 0; i < to.args.size(); ++i) {
    const Care care = care_of(to.args[i].name);
    auto& value = to.args[i].value;
    if (care == Care::least) value = std::min(value, from.args[i].value);
    if (care == Care::most) value = std::max(value, from.args[i].value);
  }
}

/// "black, blue", each once.
void add_name(const std::string& name, std::string& all) {
  if ((", " + all + ", ").find(", " + name + ", ") == std::string::npos) all += ", " + name;
}

Arg* ink_of(Notice& note) {
  for (Arg& arg : note.args) {
    if (arg.name == "ink") return &arg;
  }
  return nullptr;
}

/// Inks of which a note says the same share it, and it names them all.
std::vector<Notice> merged(std::vector<Notice> notes) {
  std::vector<Notice> result;
  for (Notice& note : notes) {
    const auto known = std::find_if(result.begin(), result.end(),
                                    [&](const Notice& n) { return may_share(n, note); });
    Arg* const name = ink_of(note);
    if (known == result.end() || name == nullptr) {
      result.push_back(std::move(note));
      continue;
    }
    add_name(std::get<std::string>(name->value), std::get<std::string>(ink_of(*known)->value));
    take_care(note, *known);
    known->where.insert(known->where.end(), note.where.begin(), note.where.end());
  }
  return result;
}

}  // namespace

Arg region_of(const Job& job) {
  const Region region = region_of_job(job);
  return words("subject", region == Region::us ? "us" : region == Region::eu ? "eu" : "");
}

Arg number(std::string name, double value, std::string unit) {
  return {std::move(name), value, std::move(unit)};
}
Arg words(std::string name, std::string value) { return {std::move(name), std::move(value), ""}; }

bool has_family(const Job& job, InkFamily family) {
  return std::any_of(job.channels.begin(), job.channels.end(),
                     [&](const Channel& c) { return c.family == family; });
}

std::vector<const Ink*> inks_of(const Job& job, std::optional<InkFamily> family) {
  std::vector<const Ink*> list;
  for (const Channel& channel : job.channels) {
    if (channel.ink == nullptr || (family && channel.family != family)) continue;
    if (std::find(list.begin(), list.end(), channel.ink) == list.end()) {
      list.push_back(channel.ink);
    }
  }
  return list;
}

const Channel& channel_of(const Job& job, const Ink& ink) {
  return *std::find_if(job.channels.begin(), job.channels.end(),
                       [&](const Channel& channel) { return channel.ink == &ink; });
}

bool may_burn(const Job& job, const Ink& ink) {
  const bool part = ink.solvent || (ink.solvent_share && ink.solvent_share->value > 0);
  return part || std::any_of(job.channels.begin(), job.channels.end(), [&](const Channel& ch) {
           return ch.ink == &ink &&
                  (ch.family == InkFamily::solvent || ch.family == InkFamily::oil);
         });
}

double ml_per_hour(const SafetyCase& c, InkFamily family) {
  double sum = 0;
  if (c.station == nullptr) return sum;
  for (const Consumption& use : c.station->consumption) {
    for (const Channel& channel : c.job.channels) {
      if (channel.name == use.channel && channel.family == family) sum += use.ml_per_hour;
    }
  }
  return sum;
}

double peak_ml_per_hour(const SafetyCase& c, InkFamily family) {
  VolumeFlow sum;
  if (c.station == nullptr) return 0;
  const double held = process_share(c.job, channel_loads(c.job, c.groups));
  for (const ChannelFeed& feed : c.station->feeds) {
    for (const Channel& channel : c.job.channels) {
      if (channel.name != feed.channel || channel.family != family) continue;
      sum += feed.peak * (channel.kind == ColourKind::process ? held : 1);
    }
  }
  return sum.si() * 3600e6;
}

Temperature handling_temperature(const SafetyCase& c, const Ink& ink) {
  Temperature highest = c.job.room.high;
  for (const Group& group : c.groups) {
    if (!group.jetting_temperature || *group.jetting_temperature < highest) continue;
    const bool prints =
        std::any_of(c.job.channels.begin(), c.job.channels.end(), [&](const Channel& channel) {
          return channel.ink == &ink && std::find(group.channels.begin(), group.channels.end(),
                                                  channel.name) != group.channels.end();
        });
    if (prints) highest = *group.jetting_temperature;
  }
  return highest;
}

std::vector<Notice> safety_notes(const Job& job, const Catalogue& catalogue,
                                 const std::vector<Group>& groups, const Station* station) {
  const SafetyCase c{job, catalogue, groups, station};
  std::vector<Notice> notes;
  uv_notes(c, notes);
  vapour_notes(c, notes);
  machinery_notes(c, notes);
  waste_notes(c, notes);
  material_notes(c, notes);
  person_notes(c, notes);
  std::stable_sort(notes.begin(), notes.end(),
                   [](const Notice& a, const Notice& b) { return rank(a.code) < rank(b.code); });
  return merged(std::move(notes));
}

}  // namespace calc
