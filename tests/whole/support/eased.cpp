#include "tests/whole/support/eased.h"

#include <cmath>
#include <set>
#include <stdexcept>

namespace whole {
namespace {

using namespace calc;

template <class T>
bool times(Given<T>& field, double k) {
  if (!field) return false;
  for (T* end : {&field->value, &field->low, &field->high}) *end = *end * k;
  return true;
}

bool times(Given<ResolutionPair>& field, double k) {
  if (!field) return false;
  for (ResolutionPair* end : {&field->value, &field->low, &field->high}) {
    *end = {end->across * k, end->along * k};
  }
  return true;
}

bool times(Given<Price>& field, double k) {
  if (!field) return false;
  for (Price* end : {&field->value, &field->low, &field->high}) {
    end->amount.minor = std::lround(static_cast<double>(end->amount.minor) * k);
  }
  return true;
}

bool times(Given<int>& field, double k) {
  if (!field) return false;
  for (int* end : {&field->value, &field->low, &field->high}) {
    *end = static_cast<int>(std::floor(*end * k + 1e-6));
  }
  return true;
}

bool times_viscosity(Request& r, const std::string& key, double k) {
  for (Ink& ink : r.inks) {
    if (key != "ink." + ink.name + ".viscosity" || !ink.viscosity) continue;
    for (auto* points : {&ink.viscosity->value, &ink.viscosity->low, &ink.viscosity->high}) {
      for (ViscosityPoint& point : *points) point.viscosity = point.viscosity * k;
    }
    return true;
  }
  return false;
}

bool times_other(Request& r, const std::string& key, double k) {
  if (key == "line.speed") return times(r.line.speed, k);
  if (key == "line.throughput") {
    return times(r.line.throughput_parts, k) || times(r.line.throughput_area, k);
  }
  if (key == "line.throw_distance") return times(r.line.throw_distance, k);
  if (key == "image.width") return times(r.image.width, k);
  if (key == "image.resolution") return times(r.image.resolution, k);
  if (key == "image.smallest_feature") return times(r.image.smallest_feature, k);
  if (key == "image.smallest_text") return times(r.image.smallest_text, k);
  if (key == "limits.budget") return times(r.limits.budget, k);
  if (key == "limits.space") return times(r.limits.space, k);
  if (key == "limits.heads") return times(r.limits.heads, k);
  if (key == "limits.lead_time") return times(r.limits.lead_time, k);
  return times_viscosity(r, key, k);
}

}  // namespace

Request moved(Request request, const std::string& key, double factor) {
  if (!times_other(request, key, factor)) throw std::invalid_argument("not moved: " + key);
  return request;
}

std::vector<std::string> movable_keys(const Request& request) {
  std::vector<std::string> keys{"line.speed",          "line.throughput",  "line.throw_distance",
                                "image.width",         "image.resolution", "image.smallest_feature",
                                "image.smallest_text", "limits.budget",    "limits.space",
                                "limits.heads",        "limits.lead_time"};
  for (const Ink& ink : request.inks) keys.push_back("ink." + ink.name + ".viscosity");
  std::vector<std::string> given;
  for (const std::string& key : keys) {
    Request copy = request;
    if (times_other(copy, key, 1)) given.push_back(key);
  }
  return given;
}

int easing(const std::string& key) {
  static const std::set<std::string> less{"line.speed", "line.throughput", "image.width",
                                          "image.resolution"};
  if (less.count(key) == 1) return -1;
  const bool viscosity = key.ends_with(".viscosity");
  return viscosity || key == "line.throw_distance" ? 0 : 1;
}

}  // namespace whole
