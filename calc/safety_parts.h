/// The topics of safety_notes(), one file each; internal to safety*.cpp.
#pragma once

#include <string>
#include <vector>

#include "calc/job.h"

namespace calc {

// Regulation (EC) No 1272/2008: flammable liquids end at this flash point.
inline constexpr Temperature flammable_to = Temperature::celsius(60);

/// What the topics read.
struct SafetyCase {
  const Job& job;
  const Catalogue& catalogue;
  const std::vector<Group>& groups;
  const Station* station;  ///< null where nothing was chosen
};

bool has_family(const Job& job, InkFamily family);
/// Distinct inks of the channels in order; of one family when asked.
std::vector<const Ink*> inks_of(const Job& job, std::optional<InkFamily> family = std::nullopt);
/// The first channel that prints an ink.
const Channel& channel_of(const Job& job, const Ink& ink);
/// Whether an ink has a part that may burn: a solvent or oil ink, or one with solvent in it.
bool may_burn(const Job& job, const Ink& ink);
/// Consumption of a family's channels together, 0 without a station.
double ml_per_hour(const SafetyCase& c, InkFamily family);
/// Ink the same channels jet at peak cover and highest speed, 0 without a station.
double peak_ml_per_hour(const SafetyCase& c, InkFamily family);
/// Highest jetting temperature of the groups that print an ink, else the room's highest.
Temperature handling_temperature(const SafetyCase& c, const Ink& ink);

Arg number(std::string name, double value, std::string unit);
Arg words(std::string name, std::string value);
/// Argument `subject`: "eu", "us", or empty where the region is another or not stated. It picks the
/// words of a note.
Arg region_of(const Job& job);

void uv_notes(const SafetyCase& c, std::vector<Notice>& to);         ///< safety_uv.cpp
void vapour_notes(const SafetyCase& c, std::vector<Notice>& to);     ///< safety_vapour.cpp
void machinery_notes(const SafetyCase& c, std::vector<Notice>& to);  ///< safety_machinery.cpp
void static_notes(const SafetyCase& c, std::vector<Notice>& to);     ///< safety_static.cpp
void material_notes(const SafetyCase& c, std::vector<Notice>& to);   ///< safety_material.cpp
void person_notes(const SafetyCase& c, std::vector<Notice>& to);     ///< safety_person.cpp
void waste_notes(const SafetyCase& c, std::vector<Notice>& to);      ///< safety_waste.cpp

}  // namespace calc
