/// What fields, groups and heads are called where the customer reads of them.
#include <algorithm>
#include <array>
#include <utility>

#include "output/compose_context.h"
#include "output/format.h"
#include "output/report_text.h"

namespace output {
namespace {

/// The key of a field's words: the names of repeated sections become NAME.
/// "ink.black.viscosity" -> "ink.NAME.viscosity" with "black".
std::pair<std::string, std::string> split_name(const std::string& key) {
  constexpr std::array<std::string_view, 8> repeated{"colour", "ink",  "head",  "board",
                                                     "supply", "lamp", "dryer", "part"};
  const std::size_t first = key.find('.');
  const std::size_t last = key.rfind('.');
  const bool has_name =
      first != std::string::npos && last > first &&
      std::find(repeated.begin(), repeated.end(), key.substr(0, first)) != repeated.end();
  if (!has_name) return {key, {}};
  std::string name = key.substr(first + 1, last - first - 1);
  return {key.substr(0, first) + ".NAME" + key.substr(last), std::move(name)};
}

/// "process", "spot" or "colours", where they are mixed, of the channels that print in the group;
/// of those of all such groups where nothing is chosen.
std::string kind_of_group(const calc::Specification& spec, const calc::Request& request,
                          const std::string& name) {
  const auto group = std::find_if(spec.chosen.begin(), spec.chosen.end(),
                                  [&](const calc::Group& g) { return g.name == name; });
  bool process = false, spot = false;
  for (const calc::Colour& colour : request.colours) {
    const bool prints = group == spec.chosen.end() ||
                        std::find(group->channels.begin(), group->channels.end(), colour.name) !=
                            group->channels.end();
    const calc::ColourKind kind = colour.kind ? colour.kind->value : calc::ColourKind::process;
    process = process || (prints && kind == calc::ColourKind::process);
    spot = spot || (prints && kind == calc::ColourKind::spot);
  }
  if (!spot) return "process";
  return process ? "colours" : "spot";
}

}  // namespace

std::string Context::field(const std::string& key) const {
  const auto [pattern, name] = split_name(key);
  const std::string text = "field." + pattern;
  if (!has_words(text)) return "<code>" + escaped(key) + "</code>";
  return words(text, {{"NAME", name}});
}

std::string Context::field(const std::string& pattern, const std::vector<std::string>& keys) const {
  const std::string text = "field." + pattern;
  if (keys.size() == 1 || !has_words(text)) return field(keys.front());
  std::string names;
  for (std::size_t i = 0; i < keys.size(); ++i) {
    if (i > 0) names += i + 1 == keys.size() ? " " + words("and") + " " : std::string(", ");
    names += name(keys[i]);
  }
  return words(text, {{"NAME", names}});
}

std::string Context::pattern(const std::string& key) { return split_name(key).first; }

std::string Context::name(const std::string& key) { return split_name(key).second; }

std::string Context::group_name(const std::string& name) const {
  constexpr std::string_view several = "process";  // with a number from the second such group on
  const std::string number = name.starts_with(several) ? name.substr(several.size()) : "-";
  const bool is_channel = std::any_of(request.colours.begin(), request.colours.end(),
                                      [&](const calc::Colour& c) { return c.name == name; });
  if (is_channel || number.find_first_not_of("0123456789") != std::string::npos) return name;
  const std::string key = "group." + kind_of_group(spec, request, name);
  return without_markup(number.empty() ? words(key) : words(key + "_n", {{"NUMBER", number}}));
}

std::string Context::effect(const std::string& key) const { return words_or("effect." + key, key); }

}  // namespace output
