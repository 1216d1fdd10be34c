/// What those who fill, purge and clean wear and watch, by the kind of ink.
#include <array>

#include "calc/safety_parts.h"

namespace calc {
namespace {

struct FamilyName {
  InkFamily family;
  const char* name;
};
constexpr std::array<FamilyName, 4> families{{{InkFamily::uv, "uv"},
                                              {InkFamily::aqueous, "aqueous"},
                                              {InkFamily::solvent, "solvent"},
                                              {InkFamily::oil, "oil"}}};

}  // namespace

void person_notes(const SafetyCase& c, std::vector<Notice>& to) {
  for (const FamilyName& kind : families) {
    for (const Ink* ink : inks_of(c.job, kind.family)) {
      to.push_back({"ppe",
                    {words("ink", ink->name), words("subject", kind.name)},
                    "ink." + ink->name + ".family",
                    {}});
    }
  }
}

}  // namespace calc
