#include "calc/region.h"

#include <algorithm>

namespace calc {

namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

}  // namespace

Region region_named(std::string name) {
  std::transform(name.begin(), name.end(), name.begin(), lower);
  if (name == "us" || name == "usa" || name == "united states") return Region::us;
  if (name == "eu" || name == "european union") return Region::eu;
  return Region::other;
}

}  // namespace calc
