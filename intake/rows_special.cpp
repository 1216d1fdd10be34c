/// Values of a form of their own: texts, dates, prices, pairs, points.
#include <algorithm>
#include <charconv>
#include <cmath>

#include "intake/codes.h"
#include "intake/rows.h"
#include "intake/suggest.h"
#include "intake/text.h"
#include "intake/unit_data.h"

namespace intake {
namespace {

constexpr int longest_text = 2000;
constexpr int longest_short_text = 200;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_lower(char c) { return c >= 'a' && c <= 'z'; }
bool is_upper(char c) { return c >= 'A' && c <= 'Z'; }

int whole(std::string_view digits) {
  int value = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), value);
  return value;
}

int days_in(int year, int month) {
  if (month == 2) return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0 ? 29 : 28;
  return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

FieldInfo of_dimension(std::string_view dimension, std::string_view unit, double least,
                       double most) {
  FieldInfo info = field_info("", "quantity", dimension, unit, "");
  info.least = least;
  info.most = most;
  return info;
}

const FieldInfo& temperature_info() {
  static const FieldInfo info = of_dimension("temperature", "degC", -50, 250);
  return info;
}

/// `14 mPa.s at 20 degC`.
Parsed<calc::ViscosityPoint> read_point(std::string_view item, const FieldInfo& info) {
  const auto at = item.find(" at ");
  if (at == std::string_view::npos) {
    return Fault{code::bad_point, "a viscosity without its temperature",
                 "write each point as in 14 mPa.s at 20 degC"};
  }
  const Parsed<Span> viscosity = read_span(trim(item.substr(0, at)), info);
  if (const auto* fault = std::get_if<Fault>(&viscosity)) return *fault;
  const Parsed<Span> temperature = read_span(trim(item.substr(at + 4)), temperature_info());
  if (const auto* fault = std::get_if<Fault>(&temperature)) return *fault;
  return calc::ViscosityPoint{calc::Viscosity::from_si(std::get<Span>(viscosity).value.si),
                              calc::Temperature::kelvin(std::get<Span>(temperature).value.si)};
}

/// nullopt, or the two points between which the viscosity does not fall. `items` are their texts.
std::optional<Fault> check_falls(const std::vector<calc::ViscosityPoint>& points,
                                 const std::vector<std::string_view>& items) {
  for (std::size_t a = 0; a < points.size(); ++a) {
    for (std::size_t b = 0; b < points.size(); ++b) {
      const bool warmer = points[a].temperature < points[b].temperature;
      if (!warmer || points[b].viscosity < points[a].viscosity) continue;
      return Fault{code::viscosity_rises,
                   "the viscosity does not fall from " + std::string(items[a]) + " to " +
                       std::string(items[b]),
                   "an ink thins as it warms: give each temperature the viscosity measured there"};
    }
  }
  return std::nullopt;
}

/// `ethanol 60 %`; a share of 0 stands for one that is not given.
Parsed<calc::SolventShare> read_solvent(std::string_view item) {
  static const FieldInfo share = of_dimension("fraction", "%", 0.01, 100);
  if (item.empty() || item.back() != '%') return calc::SolventShare{std::string(item), 0};
  const std::string_view before = trim(item.substr(0, item.size() - 1));
  const auto blank = before.find_last_of(" \t");
  if (blank == std::string_view::npos) {
    return Fault{code::bad_share, "a share without its solvent", "write it as in ethanol 60 %"};
  }
  const Parsed<Span> read = read_span(item.substr(blank + 1), share);
  if (const auto* fault = std::get_if<Fault>(&read)) return *fault;
  return calc::SolventShare{std::string(trim(before.substr(0, blank))),
                            std::get<Span>(read).value.si};
}

/// nullopt, or what is wrong with the shares together. One solvent alone is the whole.
std::optional<Fault> complete_shares(std::vector<calc::SolventShare>& list) {
  if (list.size() == 1 && list.front().share <= 0) list.front().share = 1;
  double sum = 0;
  for (const calc::SolventShare& solvent : list) {
    if (solvent.share <= 0) {
      return Fault{code::bad_share, "\"" + solvent.name + "\" has no share",
                   "give each of several solvents its share, as in ethanol 60 %"};
    }
    sum += solvent.share;
  }
  if (std::abs(sum - 1) <= 0.005) return std::nullopt;
  return Fault{code::bad_share,
               "the shares make " + number_text(std::round(sum * 1e4) / 100) + " %",
               "make the shares of all solvents 100 % together"};
}

/// `600 x 900 dpi` as its two texts; the first gets the unit of the second when it has none.
std::optional<std::pair<std::string, std::string>> split_pair(std::string_view text) {
  const auto cross = text.find('x');
  if (cross == std::string_view::npos) return std::nullopt;
  std::string first(trim(text.substr(0, cross)));
  const std::string second(trim(text.substr(cross + 1)));
  const bool bare = !first.empty() && (is_digit(first.back()) || first.back() == '.');
  const auto letters = second.find_first_not_of("0123456789. ");
  if (bare && letters != std::string::npos) first += " " + second.substr(letters);
  return std::pair(first, second);
}

}  // namespace

std::optional<Fault> check_any(std::string_view text) {
  if (code_points(text) <= longest_text) return std::nullopt;
  return Fault{code::bad_text, "longer than 2000 characters", "shorten it to 2000 at most"};
}

std::optional<Fault> check_short(std::string_view text) {
  if (text.find_first_of("\r\n\t") != std::string_view::npos) {
    return Fault{code::bad_text, "more than one line", "write it on one line without tabs"};
  }
  if (code_points(text) <= longest_short_text) return std::nullopt;
  return Fault{code::bad_text, "longer than 200 characters", "shorten it to 200 at most"};
}

std::optional<Fault> check_date(std::string_view text) {
  const bool form = text.size() == 10 && text[4] == '-' && text[7] == '-' &&
                    std::count_if(text.begin(), text.end(), is_digit) == 8;
  if (!form) {
    return Fault{code::bad_date, "\"" + std::string(text.substr(0, 40)) + "\" is not a date",
                 "write year, month and day as in 2026-03-31"};
  }
  const int year = whole(text.substr(0, 4));
  const int month = whole(text.substr(5, 2));
  const int day = whole(text.substr(8, 2));
  const bool in_calendar =
      year >= 1900 && month >= 1 && month <= 12 && day >= 1 && day <= days_in(year, month);
  if (in_calendar) return std::nullopt;
  return Fault{code::bad_date, "there is no day " + std::string(text),
               "give a day of the calendar as year, month and day, as in 2026-03-31"};
}

std::optional<Fault> check_revision(std::string_view text) {
  const bool good = text.size() <= 8 && std::all_of(text.begin(), text.end(), [](char c) {
                      return is_digit(c) || is_lower(c) || is_upper(c) || c == '.';
                    });
  if (good) return std::nullopt;
  return Fault{code::bad_text, "not a revision",
               "use one to eight letters, digits and points, as in B or 2.1"};
}

std::optional<Fault> check_currency(std::string_view text) {
  const auto all = currencies();
  if (std::find(all.begin(), all.end(), text) != all.end()) return std::nullopt;
  return Fault{code::bad_word, "unknown currency \"" + std::string(text.substr(0, 40)) + "\"",
               "one of: " + joined(all)};
}

std::optional<Fault> check_language(std::string_view text) {
  if (text.size() == 2 && is_lower(text[0]) && is_lower(text[1])) return std::nullopt;
  return Fault{code::bad_text, "not a language code", "use two small letters, as in en"};
}

std::optional<std::string> take_text(const Node& node, Scribe& scribe) {
  scribe.note_text(node, node.value);
  return node.value;
}

std::optional<calc::Price> take_price(const Node& node, const FieldInfo& info, Scribe& scribe) {
  const std::string text = plain_letters(node.value);
  const Parsed<Span> read = read_span(text, info);
  if (const auto* fault = std::get_if<Fault>(&read)) {
    scribe.report(node, *fault);
    return std::nullopt;
  }
  const double amount = std::get<Span>(read).value.si;
  const bool whole_cents = std::abs(amount * 100 - std::round(amount * 100)) < 1e-6;
  if (info.dimension == "price" && !whole_cents) {
    scribe.report(
        node, {code::bad_money, "parts of a cent",
               "give at most two decimals: " + number_text(calc::to_money(amount).major()) + " " +
                   text.substr(text.size() - 3)});
    return std::nullopt;
  }
  const std::string unit(std::get<Number>(leading_number(text)).rest);
  const std::string currency = unit.substr(0, 3);
  const Measure m{amount, amount};
  const std::string suffix(info.unit.substr(std::min<std::size_t>(3, info.unit.size())));
  scribe.note_number(node, {m, m, m, {}}, currency + suffix);
  return calc::Price{calc::to_money(amount), currency};
}

std::optional<std::vector<calc::SolventShare>> take_solvents(const Node& node, Scribe& scribe) {
  std::optional<Fault> fault = check_short(node.value);
  std::vector<calc::SolventShare> list;
  for (const std::string_view item : split_list(node.value)) {
    if (fault) break;
    const Parsed<calc::SolventShare> read = read_solvent(item);
    if (const auto* wrong = std::get_if<Fault>(&read)) {
      fault = *wrong;
    } else {
      list.push_back(std::get<calc::SolventShare>(read));
    }
  }
  const bool nameless = std::any_of(list.begin(), list.end(),
                                    [](const calc::SolventShare& s) { return s.name.empty(); });
  if (!fault && nameless) fault = Fault{code::bad_list, "an empty item", "take the extra ; out"};
  if (!fault) fault = complete_shares(list);
  if (fault) {
    scribe.report(node, *fault);
    return std::nullopt;
  }
  scribe.note_text(node, node.value);
  return list;
}

std::optional<calc::ResolutionPair> take_pair(const Node& node, const FieldInfo& info,
                                              Scribe& scribe) {
  const std::string text = plain_letters(node.value);
  const auto texts = split_pair(text).value_or(std::pair(text, text));
  const Parsed<Span> across = read_span(texts.first, info);
  const Parsed<Span> along = read_span(texts.second, info);
  for (const auto* read : {&across, &along}) {
    if (const auto* fault = std::get_if<Fault>(read)) {
      scribe.report(node, *fault);
      return std::nullopt;
    }
  }
  const bool is_pair = text.find('x') != std::string::npos;
  scribe.note_number(node, std::get<Span>(across), info.unit, is_pair ? node.value : "");
  return calc::ResolutionPair{calc::Resolution::from_si(std::get<Span>(across).value.si),
                              calc::Resolution::from_si(std::get<Span>(along).value.si)};
}

std::optional<std::vector<calc::ViscosityPoint>> take_points(const Node& node,
                                                             const FieldInfo& info,
                                                             Scribe& scribe) {
  const std::string text = plain_letters(node.value);
  const std::vector<std::string_view> items = split_list(text);
  std::vector<calc::ViscosityPoint> points;
  for (const std::string_view item : items) {
    const Parsed<calc::ViscosityPoint> read = read_point(item, info);
    if (const auto* fault = std::get_if<Fault>(&read)) {
      scribe.report(node, *fault);
      return std::nullopt;
    }
    points.push_back(std::get<calc::ViscosityPoint>(read));
    for (std::size_t k = 0; k + 1 < points.size(); ++k) {
      const auto gap = points[k].temperature - points.back().temperature;
      if (std::abs(gap.si()) > 1e-6) continue;
      scribe.report(node, {code::same_temperature, "two points at the same temperature",
                           "give each temperature once"});
      return std::nullopt;
    }
    if (points.size() > 16) {
      scribe.report(node, {code::bad_list, "more than 16 points", "give at most 16"});
      return std::nullopt;
    }
  }
  if (const auto fault = check_falls(points, items)) {
    scribe.report(node, *fault);
    return std::nullopt;
  }
  const double first = calc::in_mpas(points.front().viscosity);
  const Measure m{points.front().viscosity.si(), first};
  scribe.note_number(node, {m, m, m, {}}, info.unit, node.value);
  return points;
}

}  // namespace intake
