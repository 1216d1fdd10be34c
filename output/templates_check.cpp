#include "output/templates_check.h"

#include <algorithm>
#include <set>
#include <stdexcept>
#include <vector>

namespace output {
namespace {

[[noreturn]] void fail(const std::string& file, int line, const std::string& message) {
  throw std::runtime_error(file + ":" + std::to_string(line) + ": " + message);
}

/// A part of a template within those around it.
struct Nested {
  const TemplatePart* part;
  const Nested* outer;
};

bool has_marker(const Nested& place, const Marker& marker) {
  for (const Nested* at = &place; at != nullptr; at = at->outer) {
    const auto& markers = at->part->markers;
    if (std::any_of(markers.begin(), markers.end(), [&](const Marker& known) {
          return known.name == marker.name && known.markup == marker.markup;
        })) {
      return true;
    }
  }
  return false;
}

const TemplatePart* find(const TemplatePart& part, const std::string& name) {
  const auto found = std::find_if(part.parts.begin(), part.parts.end(),
                                  [&](const TemplatePart& p) { return p.name == name; });
  return found == part.parts.end() ? nullptr : &*found;
}

/// A section may stand several times; all its places count as one.
TemplatePart merged(const TemplatePart& part) {
  TemplatePart whole{part.name, part.line, part.markers, {}};
  for (const TemplatePart& inner : part.parts) {
    const TemplatePart own = merged(inner);
    const auto known = std::find_if(whole.parts.begin(), whole.parts.end(),
                                    [&](const TemplatePart& p) { return p.name == own.name; });
    if (known == whole.parts.end()) {
      whole.parts.push_back(own);
    } else {
      known->markers.insert(known->markers.end(), own.markers.begin(), own.markers.end());
      known->parts.insert(known->parts.end(), own.parts.begin(), own.parts.end());
    }
  }
  return whole;
}

void check_part(const std::string& file, const TemplatePart& own, const Nested& shipped) {
  for (const Marker& marker : own.markers) {
    if (has_marker(shipped, marker)) continue;
    fail(file, marker.line,
         "unknown marker {{" + marker.name + (marker.markup ? ":none" : "") + "}}");
  }
  for (const TemplatePart& inner : own.parts) {
    constexpr std::string_view separator = "_separator";
    const bool is_separator = std::string_view(inner.name).ends_with(separator);
    const TemplatePart* const known = find(*shipped.part, inner.name);
    if (known == nullptr && !is_separator) {
      fail(file, inner.line, "unknown section {{#" + inner.name + "}}");
    }
    if (known == nullptr) continue;
    const Nested nested{known, &shipped};
    check_part(file, inner, nested);
  }
}

}  // namespace

void check_against(const std::string& file, const TemplatePart& own, const TemplatePart& shipped) {
  const TemplatePart whole = merged(shipped);
  check_part(file, own, {&whole, nullptr});
}

void check_against(const Words& own, const Words& shipped, const std::string& folder) {
  for (const std::string& key : own.keys("")) {
    const auto [file, line] = own.place(key);
    if (!shipped.has(key)) fail(file, line, "unknown key " + key);
    const std::set<std::string> known = shipped.arguments(key);
    for (const std::string& argument : own.arguments(key)) {
      if (!known.contains(argument)) {
        std::string fault = "unknown argument {{";
        fail(file, line, fault.append(argument).append("}} of ").append(key));
      }
    }
  }
  for (const std::string& key : shipped.keys("")) {
    if (own.has(key)) continue;
    const std::string file = shipped.place(key).first;
    fail(folder + file.substr(file.rfind('/')), 1, "no text for " + key);
  }
}

}  // namespace output
