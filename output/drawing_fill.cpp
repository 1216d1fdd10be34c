#include "output/drawing_fill.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "output/names.h"
#include "output/templates.h"

namespace output {
namespace {

/// Names whose tint stands in the style file.
constexpr std::array<std::string_view, 12> of_style{
    "black", "cyan", "magenta", "yellow", "white",      "red",
    "green", "blue", "orange",  "grey",   "light-cyan", "light-magenta"};

struct Tint {
  std::string_view name, fill;
};

/// Other common names, light enough for black text.
constexpr std::array<Tint, 21> tints{{
    {"navy", "4A6FA5"},   {"brown", "A0703C"},  {"ochre", "D9A441"},     {"gold", "D4B24C"},
    {"silver", "C8CCD0"}, {"pink", "F4B6C8"},   {"purple", "9A78B8"},    {"violet", "9A78B8"},
    {"teal", "4FA3A3"},   {"beige", "E8DCC0"},  {"turquoise", "6CCFC4"}, {"olive", "9A9A50"},
    {"maroon", "9C4A5A"}, {"russet", "B0623A"}, {"cream", "FBF3D5"},     {"lime", "B6DB5A"},
    {"copper", "C08552"}, {"bronze", "B08D57"}, {"burgundy", "8E4456"},  {"sand", "DFCDA4"},
    {"rust", "B0623A"},
}};

struct Alias {
  std::string_view name, means;
};

/// The same colours in other words.
constexpr std::array<Alias, 21> aliases{{
    {"gray", "grey"},         {"key", "black"},         {"schwarz", "black"},
    {"weiss", "white"},       {"wei\xC3\x9F", "white"}, {"rot", "red"},
    {"gr\xC3\xBCn", "green"}, {"gruen", "green"},       {"blau", "blue"},
    {"gelb", "yellow"},       {"grau", "grey"},         {"braun", "brown"},
    {"rosa", "pink"},         {"violett", "violet"},    {"silber", "silver"},
    {"ocker", "ochre"},       {"lila", "purple"},       {"t\xC3\xBCrkis", "turquoise"},
    {"bordeaux", "burgundy"}, {"kupfer", "copper"},     {"creme", "cream"},
}};

/// Greys for names that say no colour, so that two of them differ.
constexpr std::array<std::string_view, 4> neutral{"CCCCCC", "E6E6E6", "B3B3B3", "F7F7F7"};

std::string_view meant(std::string_view name) {
  const auto* const found = std::find_if(aliases.begin(), aliases.end(),
                                         [&](const Alias& alias) { return alias.name == name; });
  return found == aliases.end() ? name : found->means;
}

/// Empty for a name that says no colour.
std::string named_fill(const Context& context, std::string_view spoken) {
  const std::string_view name = meant(spoken);
  if (std::find(of_style.begin(), of_style.end(), name) != of_style.end()) {
    return context.templates.setting("drawing." + std::string(name));
  }
  const auto* const found =
      std::find_if(tints.begin(), tints.end(), [&](const Tint& tint) { return tint.name == name; });
  return found == tints.end() ? std::string() : std::string(found->fill);
}

}  // namespace

std::string fill_of(const Context& context, const std::string& channel, std::size_t order) {
  const std::string name = lower_ascii(channel);
  std::string fill = named_fill(context, name);
  const std::size_t last = name.find_last_of("-_ ");  // "dark-blue" is a blue
  if (fill.empty() && last != std::string::npos) fill = named_fill(context, name.substr(last + 1));
  return fill.empty() ? std::string(neutral.at(order % neutral.size())) : fill;
}

std::vector<std::string> fills_of(const Context& context, std::string_view channels,
                                  std::size_t order) {
  const auto inks = static_cast<std::size_t>(std::count(channels.begin(), channels.end(), '+')) + 1;
  std::vector<std::string> fills;
  while (fills.size() < inks) {
    const std::size_t end = std::min(channels.find('+'), channels.size());
    const std::string name(channels.substr(0, end));
    fills.push_back(fill_of(context, name, order * inks + fills.size()));
    channels.remove_prefix(std::min(end + 1, channels.size()));
  }
  return fills;
}

}  // namespace output
