/// Safety notes of a station made by hand, and what stands in them.
#pragma once

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "calc/safety.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

namespace support {

inline std::vector<calc::Notice> notes_of(const StationCase& c) {
  const calc::Station station = calc::size_station(c.job, c.catalogue, c.groups);
  return calc::safety_notes(c.job, c.catalogue, c.groups, &station);
}

inline bool has(const std::vector<calc::Notice>& notes, const std::string& code) {
  return std::any_of(notes.begin(), notes.end(),
                     [&](const calc::Notice& n) { return n.code == code; });
}

inline double number(const std::vector<calc::Notice>& notes, const std::string& code,
                     const std::string& name) {
  for (const calc::Notice& note : notes) {
    if (note.code != code) continue;
    for (const calc::Arg& arg : note.args) {
      if (arg.name == name) return std::get<double>(arg.value);
    }
  }
  return -1;
}

inline std::string words(const std::vector<calc::Notice>& notes, const std::string& code,
                         const std::string& name) {
  for (const calc::Notice& note : notes) {
    if (note.code != code) continue;
    for (const calc::Arg& arg : note.args) {
      if (arg.name == name) return std::get<std::string>(arg.value);
    }
  }
  return {};
}

}  // namespace support
