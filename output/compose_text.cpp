#include "output/compose_text.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <optional>
#include <system_error>
#include <utility>

#include "output/format.h"

namespace output {
namespace {

constexpr std::string_view times = "\xC2\xA0\xC3\x97\xC2\xA0";       // U+00A0 U+00D7 U+00A0
constexpr std::string_view plus_minus = "\xC2\xA0\xC2\xB1\xC2\xA0";  // U+00A0 U+00B1 U+00A0
constexpr double minute = 60;
constexpr int as_given_digits = 6, converted_digits = 4;
constexpr std::size_t most_named = 4;  // channels named one by one

constexpr std::string_view no_break = "\xC2\xA0";

bool is_digit(char byte) { return byte >= '0' && byte <= '9'; }

/// The words of a text, those within brackets with what precedes them, so that "kg/(m2 h)" is one.
std::vector<std::string_view> words_of(std::string_view text) {
  std::vector<std::string_view> words;
  for (std::size_t from = 0; from < text.size();) {
    std::size_t to = std::min(text.find(' ', from), text.size());
    const std::size_t bracket = text.substr(from, to - from).find('(');
    if (bracket != std::string_view::npos) {
      to = std::min(text.find(' ', std::min(text.find(')', from), text.size())), text.size());
    }
    if (to > from) words.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return words;
}

bool is_number(std::string_view word) {
  return !word.empty() && is_digit(word.front()) &&
         word.find_first_not_of("0123456789.") == std::string_view::npos;
}

/// A number as this document prints them, as it is where that would lose a digit.
std::string printed_number(std::string_view digits) {
  constexpr int most_digits = 9;
  double value = 0;
  const char* const end = digits.data() + digits.size();
  const auto read = std::from_chars(digits.data(), end, value);
  const bool whole = read.ec == std::errc{} && read.ptr == end && digits.size() <= most_digits;
  return whole ? number(value, most_digits) : std::string(digits);
}

/// The unit behind a number in the language: its word for one where it has it.
std::string unit_text(const Context& context, std::string_view number, std::string_view unit) {
  const std::string one = "unit." + std::string(unit) + ".one";
  if (number == "1" && context.has_words(one)) return context.words(one);
  return pretty_unit(context.unit(unit));
}

}  // namespace

std::string speed_text(const Context& context, calc::Speed speed) {
  return context.measure(speed.si() * minute, "m/min", 4);
}

calc::StationSpeed highest_speed(const Context& context) {
  const auto& station = context.spec.station;
  if (station && station->speed_limit) return *station->speed_limit;
  calc::StationSpeed heads{context.spec.chosen.front().speed_limit, "heads"};
  for (const calc::Group& group : context.spec.chosen) {
    heads.speed = std::min(heads.speed, group.speed_limit);
  }
  return heads;
}

std::string speed_limit_text(const Context& context, calc::Speed speed, int digits) {
  return context.bound(speed.si() * minute, "m/min", Rounding::down, digits);
}

namespace {

/// The edge of the speed up to which the station passes, where that is below what its parts could.
const calc::Edge* held_edge(const Context& context) {
  const double highest = highest_speed(context).speed.si() * minute;
  for (const calc::Edge& edge : context.spec.edges) {
    const bool of_speed = edge.quantity == "line.speed" && edge.unit == "m/min" && edge.up;
    if (!of_speed || edge.kind != calc::EdgeKind::passes || !edge.value) continue;
    const auto down = [](double value) { return rounded(value, 3, Rounding::down); };
    return down(*edge.value) < down(highest) ? &edge : nullptr;
  }
  return nullptr;
}

}  // namespace

std::optional<calc::Speed> speed_held(const Context& context) {
  const calc::Edge* const edge = held_edge(context);
  if (edge == nullptr) return std::nullopt;
  return calc::metres_per_second(*edge->value / minute);
}

std::string speed_held_text(const Context& context) {
  const calc::Edge* const edge = held_edge(context);
  if (edge == nullptr) return {};
  const std::string held = speed_limit_text(context, *speed_held(context));
  const char* const key = edge->beyond == "placement" ? "speed_held.placement" : "speed_held";
  return context.worded(key, {{"VALUE", link_to("s-edges", escaped(held))},
                              {"GATE", context.words("gate." + edge->beyond)}});
}

std::string speed_limit_number(const Context& context, calc::Speed speed) {
  return context.in_column(speed.si() * minute, "m/min", 3, Rounding::down);
}

std::string length_text(const Context& context, calc::Length length, int digits) {
  return context.measure(in_mm(length), "mm", digits);
}

std::string dpi_text(calc::Resolution resolution) { return number(in_dpi(resolution), 4); }

std::string carriage_encoder(const calc::Station& station) {
  for (const calc::BomLine& line : station.bom) {
    if (line.kind != "encoder") continue;
    return line.part_number.empty() ? line.designation : line.part_number;
  }
  return {};
}

std::string lattice_text(calc::Resolution across, calc::Resolution along) {
  return dpi_text(across) + std::string(times) + with_unit(in_dpi(along), "dpi", 4);
}

std::string amount(std::string_view currency, calc::Money money) {
  return std::string(currency) + (currency.empty() ? "" : "\xC2\xA0") + output::money(money);
}

std::string rough_amount(std::string_view currency, double major, int digits) {
  return std::string(currency) + (currency.empty() ? "" : "\xC2\xA0") + number(major, digits);
}

std::string percent_down(double share, int decimals) {
  const double step = std::pow(10.0, decimals);
  const double percent = std::floor(share * 100 * step * (1 + 1e-12)) / step;
  return percent >= 100 ? number(percent, decimals + 3) : fixed(percent, decimals);
}

std::string count_text(double count) { return number(count, 9); }

std::string joined(const Context& context, const std::vector<std::string>& pieces) {
  std::string text;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0 && i + 1 == pieces.size()) {
      text += " " + context.words("and") + " ";
    } else if (i > 0) {
      text += ", ";
    }
    text += pieces[i];
  }
  return text;
}

namespace {

/// A whole group of more channels than are named one by one, in the words of that key.
std::optional<std::string> whole_group(const Context& context,
                                       const std::vector<std::string>& names,
                                       const std::string& key) {
  const auto& groups = context.spec.chosen;
  const auto whole = std::find_if(groups.begin(), groups.end(),
                                  [&](const calc::Group& g) { return g.channels == names; });
  if (names.size() <= most_named || whole == groups.end()) return std::nullopt;
  return context.words(
      key, {{"GROUP", context.group_name(whole->name)}, {"COUNT", std::to_string(names.size())}});
}

}  // namespace

std::string names_text(const Context& context, const std::vector<std::string>& names) {
  if (auto whole = whole_group(context, names, "channels_of")) return *std::move(whole);
  std::vector<std::string> pieces;
  pieces.reserve(names.size());
  for (const std::string& name : names) pieces.push_back(escaped(name));
  return joined(context, pieces);
}

std::string channels_text(const Context& context, const std::vector<std::string>& names) {
  if (auto whole = whole_group(context, names, "each_of")) return *std::move(whole);
  return names_text(context, names) + (names.size() > 1 ? ", " + context.words("each") : "");
}

std::string assumed_word(const Context& context, const calc::Assumption& assumption) {
  const std::string word = "read." + Context::pattern(assumption.field) + "." + assumption.text;
  return context.has_words(word) ? context.words(word) : assumption.text;
}

std::string input_text(const Context& context, const calc::Input& input) {
  if (!input.text.empty()) {
    const std::string word = "read." + Context::pattern(input.key) + "." + input.text;
    if (context.has_words(word)) return context.words(word);
    return input.unit.empty() ? pretty_text(input.text) : figures_text(context, input.text);
  }
  const bool derived = input.origin.kind == calc::OriginKind::derived;
  const bool us = context.in_us_units() && has_us_unit(input.unit);
  const int digits = derived || us ? converted_digits : as_given_digits;
  const bool spread = input.spread != calc::Spread::none && input.low < input.high;
  const auto text = [&](double value) { return context.measure(value, input.unit, digits); };
  if (!spread && input.key == "costs.years") return context.measure(input.value, "a", digits);
  if (!spread) return input.unit.empty() ? number(input.value, 9) : text(input.value);
  const std::string to = " " + context.words("to") + " ";
  const auto range = [&] {
    return range_with_units(input.low, input.high, input.unit, digits, us, to);
  };
  if (input.spread == calc::Spread::demand) return range();
  const double below = input.value - input.low;
  const double above = input.high - input.value;
  const bool even =
      std::abs(below - above) <= 1e-9 * std::max(std::abs(input.low), std::abs(input.high));
  if (us) return text(input.value) + ", " + range();
  if (even) return number(input.value, digits) + std::string(plus_minus) + text(above);
  return text(input.value) + " (" + number(input.low, digits) + to + number(input.high, digits) +
         ")";
}

std::string pretty_text(std::string_view text) {
  std::string pretty;
  bool after_number = false;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, end);
    const std::size_t bare = std::min(word.find_last_not_of(";,") + 1, word.size());
    pretty += after_number ? pretty_unit(word.substr(0, bare)) : std::string(word.substr(0, bare));
    pretty += word.substr(bare);
    after_number = !word.empty() && bare == word.size() && is_digit(word.front());
    if (end < text.size()) pretty += ' ';
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return pretty;
}

std::string figures_text(const Context& context, std::string_view text) {
  const std::vector<std::string_view> words = words_of(text);
  std::string figures;
  bool has_unit = false;  // the last number has its unit already
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string_view word = words[i];
    const std::string_view bare = word.substr(0, word.find_last_not_of(";,") + 1);
    const bool after = i > 0 && is_number(words[i - 1]);
    const bool before = i + 1 < words.size() && is_digit(words[i + 1].front());
    if (after && before && bare == "x") {
      figures += times;
      continue;
    }
    const bool bound = i == 0 || figures.ends_with(times);
    if (!bound) figures += after ? no_break : std::string_view(" ");
    if (is_number(bare)) {
      figures += printed_number(bare);
    } else if (has_unit && before && bare == "at") {
      figures += context.words("read.at");
    } else {
      figures += after ? unit_text(context, words[i - 1], bare) : std::string(bare);
    }
    has_unit = after && !is_number(bare);
    figures += word.substr(bare.size());
  }
  return figures;
}

std::string symbol_text(const Context& context, const std::string& symbol) {
  return context.words_or("read.image.barcode_symbol." + symbol, symbol);
}

std::string row_text(const Context& context, const std::string& row) {
  const std::size_t dot = row.find('.');
  const std::string key = "row." + row.substr(0, dot);
  if (dot == std::string::npos || !context.has_words(key)) return escaped(row);
  const std::string name = row.substr(dot + 1);
  const std::string named = key + ".named";
  if (context.spec.station && context.has_words(named)) {
    const std::vector<calc::BomLine>& bom = context.spec.station->bom;
    const auto line = std::find_if(bom.begin(), bom.end(),
                                   [&row](const calc::BomLine& l) { return l.source == row; });
    if (line != bom.end() && !line->designation.empty()) {
      return context.words(named, {{"NAME", name}, {"DESIGNATION", line->designation}});
    }
  }
  return context.words(key, {{"NAME", name}});
}

std::string fields_text(const Context& context, const std::vector<std::string>& keys) {
  std::vector<std::pair<std::string, std::vector<std::string>>> patterns;
  for (const std::string& key : keys) {
    const std::string pattern = Context::pattern(key);
    const auto found = std::find_if(patterns.begin(), patterns.end(),
                                    [&](const auto& entry) { return entry.first == pattern; });
    auto& entry = found == patterns.end()
                      ? patterns.emplace_back(pattern, std::vector<std::string>())
                      : *found;
    entry.second.push_back(key);
  }
  std::vector<std::string> pieces;
  pieces.reserve(patterns.size());
  for (const auto& [pattern, members] : patterns) {
    pieces.push_back(context.field(pattern, members));
  }
  return joined(context, pieces);
}

}  // namespace output
