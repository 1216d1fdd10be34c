/// Static charge of what passes under the heads.
#include <algorithm>
#include <array>

#include "calc/blend.h"
#include "calc/safety_parts.h"

namespace calc {
namespace {

using namespace std::string_view_literals;

// Common names of plastics, in English and German; no source.
constexpr std::array short_names{"pp"sv, "pe"sv, "pet"sv, "pvc"sv,
                                 "ps"sv, "pc"sv, "abs"sv, "pla"sv};
constexpr std::array parts_of_names{"film"sv,  "plastic"sv, "poly"sv,  "vinyl"sv,
                                    "acryl"sv, "nylon"sv,   "folie"sv, "kunststoff"sv};

bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

/// Whether a material goes by a name of plastics: a short one as a word of its own, the others
/// anywhere in a word.
bool names_plastic(std::string material) {
  std::transform(material.begin(), material.end(), material.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  const auto stands_in = [&](std::string_view name) {
    return material.find(name) != std::string::npos;
  };
  if (std::any_of(parts_of_names.begin(), parts_of_names.end(), stands_in)) return true;
  for (auto from = material.begin(); from != material.end();) {
    const auto to = std::find_if_not(from, material.end(), is_letter);
    const std::string word(from, to);
    if (std::find(short_names.begin(), short_names.end(), word) != short_names.end()) return true;
    from = std::find_if(to, material.end(), is_letter);
  }
  return false;
}

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
  }
}

}  // namespace calc
