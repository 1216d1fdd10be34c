#include "calc/safety.h"

#include <algorithm>

#include "calc/blend.h"
#include "calc/codes.h"
#include "calc/safety_parts.h"

namespace calc {
namespace {

std::size_t rank(const std::string& code) {
  const auto codes = safety_codes();
  return static_cast<std::size_t>(std::find(codes.begin(), codes.end(), code) - codes.begin());
}

/// Equal in everything but the ink they name.
bool same_but_ink(const Notice& a, const Notice& b) {
  if (a.code != b.code || a.args.size() != b.args.size()) return false;
  return std::equal(a.args.begin(), a.args.end(), b.args.begin(), [](const Arg& x, const Arg& y) {
    return x.name == y.name && (x.name == "ink" || (x.value == y.value && x.unit == y.unit));
  });
}

Arg* ink_of(Notice& note) {
  for (Arg& arg : note.args) {
    if (arg.name == "ink") return &arg;
  }
  return nullptr;
}

/// Inks that share a note's values share the note, which names them all.
std::vector<Notice> merged(std::vector<Notice> notes) {
  std::vector<Notice> result;
  for (Notice& note : notes) {
    const auto known = std::find_if(result.begin(), result.end(),
                                    [&](const Notice& n) { return same_but_ink(n, note); });
    Arg* const name = ink_of(note);
    if (known == result.end() || name == nullptr) {
      result.push_back(std::move(note));
      continue;
    }
    Arg& all = *ink_of(*known);
    all.value = std::get<std::string>(all.value) + ", " + std::get<std::string>(name->value);
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
  std::stable_sort(notes.begin(), notes.end(),
                   [](const Notice& a, const Notice& b) { return rank(a.code) < rank(b.code); });
  return merged(std::move(notes));
}

}  // namespace calc
