#include "output/field_names.h"

#include <algorithm>

#include "intake/suggest.h"

namespace output {
namespace {

using Parts = std::vector<std::string_view>;

Parts parts_of(std::string_view text) {
  Parts parts;
  for (;;) {
    const std::size_t point = std::min(text.find('.'), text.size());
    parts.push_back(text.substr(0, point));
    if (point == text.size()) return parts;
    text.remove_prefix(point + 1);
  }
}

/// The key with the name's own words where it has NAME.
std::string named_like(std::string_view key, const Parts& name) {
  const Parts parts = parts_of(key);
  std::string result;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const bool own = parts[i] == "NAME" && i < name.size() && !name[i].empty();
    result.append(i > 0 ? "." : "").append(own ? name[i] : parts[i]);
  }
  return result;
}

}  // namespace

bool means_field(std::string_view key, std::string_view name) {
  if (key.find(name) != std::string_view::npos) return true;
  const Parts wanted = parts_of(name);
  if (wanted.size() < 2) return false;
  const std::string own = named_like(key, wanted);
  return own == name || own.starts_with(std::string(name) + ".");
}

std::string nearest_field(const std::vector<std::string_view>& keys, std::string_view name) {
  const Parts wanted = parts_of(name);
  std::vector<std::string> words;
  for (const std::string_view key : keys) {
    if (wanted.size() == 1) {
      for (const std::string_view part : parts_of(key)) words.emplace_back(part);
    } else {
      words.push_back(named_like(key, wanted));
    }
  }
  const std::vector<std::string_view> views(words.begin(), words.end());
  return std::string(intake::nearest(name, views));
}

}  // namespace output
