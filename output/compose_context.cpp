#include "output/compose_context.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/notice_parts.h"
#include "output/report_text.h"

namespace output {
namespace {

constexpr int least_digits = 3, most_digits = 6;

bool is_count(double value, std::string_view unit) {
  return unit.empty() && value == std::floor(value);
}

/// Digits at which numbers that differ differ on paper too; 3 where no two do.
int telling_digits(const std::vector<double>& values) {
  for (int digits = least_digits; digits < most_digits; ++digits) {
    bool told = true;
    for (const double a : values) {
      for (const double b : values) {
        told = told && (a == b || number(a, digits) != number(b, digits));
      }
    }
    if (told) return digits;
  }
  return most_digits;
}

/// A number of a notice or a reason; the unit "1" marks a share, which reads as percent.
std::string argument_text(const Context& context, double value, const std::string& unit,
                          int digits) {
  if (is_count(value, unit)) return number(value, 9);
  const auto& station = context.spec.station;
  if (station && unit == station->currency) return rough_amount(unit, value, digits);
  return unit == "1" ? with_unit(value * 100, "%", digits) : context.measure(value, unit, digits);
}

/// Which way a figure of a safety note is rounded: minima and what there may be at most up, limits,
/// allowed times and the nearest anything may come down.
Rounding safe_way(std::string_view argument) {
  using namespace std::string_view_literals;
  constexpr std::array up{
      "safe"sv,         "density"sv, "safe_worst"sv,      "density_worst"sv, "air"sv,
      "bund"sv,         "peak"sv,    "vapour"sv,          "mass"sv,          "temperature"sv,
      "irradiance"sv,   "litres"sv,  "litres_per_year"sv, "air_least"sv,     "air_most"sv,
      "density_near"sv, "width"sv};
  constexpr std::array down{"time"sv, "limit"sv, "dose_limit"sv, "flash_point"sv,
                            "lel"sv,  "gap"sv,   "share_least"sv};
  if (std::find(up.begin(), up.end(), argument) != up.end()) return Rounding::up;
  const bool least = std::find(down.begin(), down.end(), argument) != down.end();
  return least ? Rounding::down : Rounding::nearest;
}

/// Whether two reasons say the same of different groups.
bool alike(const calc::Reason& a, const calc::Reason& b) {
  return a.code == b.code && a.subject == b.subject && a.value == b.value && a.limit == b.limit &&
         a.unit == b.unit;
}

std::string capitals(std::string_view text) {
  std::string upper(text);
  std::transform(upper.begin(), upper.end(), upper.begin(), [](char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  });
  return upper;
}

/// What stands between semicolons.
std::vector<std::string_view> pieces_of(std::string_view text) {
  constexpr std::string_view between = "; ";
  std::vector<std::string_view> pieces;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t to = std::min(text.find(between, from), text.size());
    pieces.push_back(text.substr(from, to - from));
    from = to + between.size();
  }
  return pieces;
}

/// The key of the words of a piece: it in small letters, an underscore for whatever is neither
/// letter nor digit.
std::string said_key(std::string_view text) {
  std::string key = "said.";
  for (const char c : text) {
    const bool big = c >= 'A' && c <= 'Z';
    if (big || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      key += big ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (key.back() != '_') {
      key += '_';
    }
  }
  if (key.back() == '_') key.pop_back();
  return key;
}

}  // namespace

Context::Context(const calc::Specification& specification, const calc::Request& source,
                 const Templates& house, const Matter& what)
    : spec(specification),
      request(source),
      templates(house),
      matter(what),
      language_(house.has_language(specification.language) ? specification.language
                                                           : std::string(base_language)) {
  for (const calc::Step& step : spec.trace) steps_.insert(step.id);
  for (const calc::Input& input : spec.inputs) {
    inputs_.emplace(input.key, &input);
    const bool of_catalogue = input.origin.kind == calc::OriginKind::catalogue;
    if (of_catalogue) rows_.insert(catalogue_row(input.key));
  }
}

bool Context::fails_as_assumed(const calc::Notice& notice) const {
  const auto assumed =
      std::find_if(spec.assumptions.begin(), spec.assumptions.end(),
                   [&](const calc::Assumption& row) { return row.field == notice.field; });
  if (assumed == spec.assumptions.end()) return false;
  double value = assumed->value, holds = assumed->value;
  for (const calc::Arg& arg : notice.args) {
    const auto* const number = std::get_if<double>(&arg.value);
    if (number != nullptr && arg.name == "value") value = *number;
    if (number != nullptr && arg.name == "holds") holds = *number;
  }
  return value > assumed->value ? holds < assumed->value : holds > assumed->value;
}

std::string Context::words(const std::string& key, Arguments arguments) const {
  Values values;
  for (const auto& [name, text] : arguments) values.set(name, text);
  return templates.words(language_, key, values);
}

std::string Context::worded(const std::string& key, Arguments markup) const {
  Values values;
  for (const auto& [name, text] : markup) values.set_markup(name, text);
  return templates.words(language_, key, values);
}

std::string Context::counted(const std::string& key, std::size_t count, Arguments arguments) const {
  const std::string one = key + ".one";
  return words(count == 1 && has_words(one) ? one : key, arguments);
}

std::string Context::words_or(const std::string& key, std::string_view fallback) const {
  return has_words(key) ? words(key) : escaped(fallback);
}

bool Context::has_words(const std::string& key) const {
  return templates.has_words(language_, key);
}

const std::string& Context::house(std::string_view name) const {
  return templates.setting("house." + std::string(name), language_);
}

std::string Context::expand(const std::string& name, const Values& values) const {
  return templates.expand(language_ + "/" + name + ".tpl", values);
}

std::string Context::variant(const std::string& key, const std::string& subject) const {
  const std::string whole = key + "." + subject;
  return !subject.empty() && has_words(whole) ? whole : key;
}

std::string Context::of_motion(const std::string& key) const {
  return !spec.chosen.empty() && spec.chosen.front().scan ? variant(key, "scan") : key;
}

bool Context::in_us_units() const {
  const auto& units = request.request.units;
  return units && units->value == calc::UnitSystem::us;
}

std::string Context::measure(double value, std::string_view unit, int digits) const {
  return with_units(value, this->unit(unit), digits, in_us_units());
}

std::string Context::bound(double value, std::string_view unit, Rounding way, int digits) const {
  return bound_with_units(value, this->unit(unit), digits, in_us_units(), way);
}

std::string Context::unit(std::string_view unit) const {
  const std::string key = "unit." + std::string(unit);
  return has_words(key) ? words(key) : std::string(unit);
}

std::string Context::plain(double value, std::string_view unit, int digits) const {
  return with_unit(value, this->unit(unit), digits);
}

std::string Context::said(std::string_view text) const {
  std::string worded;
  for (const std::string_view piece : pieces_of(text)) {
    worded += (worded.empty() ? "" : "; ") + words_or(said_key(piece), piece);
  }
  return worded;
}

std::vector<std::string> Context::said_keys(std::string_view text) {
  std::vector<std::string> keys;
  for (const std::string_view piece : pieces_of(text)) keys.push_back(said_key(piece));
  return keys;
}

std::string Context::in_column(double value, std::string_view unit, int digits,
                               Rounding way) const {
  std::string text = number(rounded(value, digits, way), digits);
  if (!in_us_units() || !has_us_unit(unit)) return text;
  return text + " (" + in_us_unit(value, unit, digits, way) + ")";
}

std::string Context::word_of(const calc::Notice& notice, const calc::Arg& arg) const {
  const auto& text = std::get<std::string>(arg.value);
  if (arg.name.ends_with("gate")) {
    return words_or(variant("gate." + text, text_of(notice, arg.name + "_subject")), text);
  }
  if (arg.name == "group") return escaped(group_name(text));
  if (arg.name == "row") return row_text(*this, text);
  return words_or(of_motion("name." + text), text);
}

std::string Context::figure_of(std::string_view kind, const calc::Arg& arg, int digits) const {
  const double value = std::get<double>(arg.value);
  const Rounding way = kind == "safety" ? safe_way(arg.name) : Rounding::nearest;
  if (way == Rounding::nearest) return escaped(argument_text(*this, value, arg.unit, digits));
  const int shown = arg.name == "width" ? std::max(digits, 4) : digits;  // as it stands elsewhere
  return escaped(bound(value, arg.unit, way, shown));
}

std::string Context::arising(std::string_view kind, const calc::Notice& notice,
                             const LinkArgument& link) const {
  const Arising parts = parted(notice);
  const std::string name = field(notice.field);
  Values values;
  const LinkArgument of_condition = [&](const calc::Arg* arg, const std::string& markup) {
    if (arg == nullptr || !link) return markup;
    const calc::Arg whole{"condition_" + arg->name, arg->value, arg->unit};
    return link(&whole, markup);
  };
  values.set_markup("CONDITION", this->notice(kind, parts.condition, of_condition));
  values.set_markup("FIELD", link ? link(nullptr, name) : name);
  values.set("VALUE", argument_text(*this, parts.value, parts.unit, least_digits));
  return templates.words(language_, std::string(kind) + "." + notice.code, values);
}

std::string Context::notice(std::string_view kind, const calc::Notice& notice,
                            const LinkArgument& link) const {
  if (notice.code == "assumption_condition") return arising(kind, notice, link);
  std::vector<double> numbers;
  for (const calc::Arg& arg : notice.args) {
    if (const auto* const value = std::get_if<double>(&arg.value)) numbers.push_back(*value);
  }
  const int digits = telling_digits(numbers);
  Values values;
  const auto set = [&](const std::string& name, const calc::Arg* arg, const std::string& markup) {
    values.set_markup(name, link ? link(arg, markup) : markup);
  };
  for (const calc::Arg& arg : notice.args) {
    const bool is_text = std::holds_alternative<std::string>(arg.value);
    set(capitals(arg.name), &arg, is_text ? word_of(notice, arg) : figure_of(kind, arg, digits));
  }
  set("FIELD", nullptr, field(notice.field));
  std::string wording = wording_of(notice);
  if (wording == "holds_kind" && fails_as_assumed(notice)) wording += "_below";
  const std::string key = std::string(kind) + "." + notice.code;
  return templates.words(language_, of_motion(variant(key, wording)), values);
}

std::vector<std::string> Context::notices(std::string_view kind,
                                          const std::vector<calc::Notice>& list,
                                          std::vector<std::size_t>* first) const {
  std::vector<std::string> texts;
  for (std::size_t i = 0; i < list.size(); ++i) {
    std::string text = notice(kind, list[i]);
    if (std::find(texts.begin(), texts.end(), text) != texts.end()) continue;
    texts.push_back(std::move(text));
    if (first != nullptr) first->push_back(i);
  }
  return texts;
}

std::string Context::reason_of(const calc::Reason& reason, const std::string& groups,
                               const LinkReason& link) const {
  const int digits = telling_digits({reason.value, reason.limit});
  const auto text = [&](std::string_view figure, double value) {
    std::string markup = escaped(argument_text(*this, value, reason.unit, digits));
    return link ? link(reason, figure, markup) : markup;
  };
  Values values;
  values.set_markup("VALUE", text("value", reason.value));
  values.set_markup("LIMIT", text("limit", reason.limit));
  values.set("SHORTFALL", argument_text(*this, std::abs(reason.limit - reason.value), reason.unit,
                                        least_digits));
  values.set_markup("SUBJECT", has_words("name." + reason.subject) ? words("name." + reason.subject)
                                                                   : said(reason.subject));
  values.set_markup("GROUP", groups);
  if (const std::optional<double>& at =
          reason.known_to_degc ? reason.known_to_degc : reason.at_degc) {
    values.set("TEMPERATURE", measure(*at, "degC"));
    const char* const which = reason.known_to_degc ? ".known_to" : ".at";
    return templates.words(language_, "reason." + reason.code + which, values);
  }
  const std::string key = "reason." + reason.code;
  std::string worded = templates.words(language_, variant(key, reason.subject), values);
  const std::string first = key + ".first";
  if (reason.field.empty() || !has_words(first)) return worded;
  values.set_markup("FIELD", field(reason.field));
  return worded + " " + templates.words(language_, first, values);
}

std::string Context::reason(const calc::Reason& reason) const {
  return reason_of(reason, words("group_of", {{"NAME", group_name(reason.group)}}));
}

std::vector<std::string> Context::reasons(const std::vector<calc::Reason>& list,
                                          std::vector<std::size_t>* first,
                                          const LinkReason& link) const {
  std::vector<std::string> texts;
  std::set<std::string> all;
  for (const calc::Reason& reason : list) all.insert(reason.group);
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto same = [&](const calc::Reason& other) { return alike(list[i], other); };
    const auto end = list.begin() + static_cast<std::ptrdiff_t>(i);
    if (std::any_of(list.begin(), end, same)) continue;
    std::set<std::string> groups;
    for (const calc::Reason& other : list) {
      if (same(other)) groups.insert(other.group);
    }
    const std::string named = groups.size() == 1
                                  ? words("group_of", {{"NAME", group_name(list[i].group)}})
                              : groups.size() == 2 ? words("group_both")
                                                   : words("group_several");
    std::string text = reason_of(list[i], named, link);
    if (all.size() > groups.size() && text.find(named) == std::string::npos) {
      Values values;
      values.set_markup("GROUP", named);
      values.set_markup("TEXT", text);
      text = templates.words(language_, "in_group", values);
    }
    if (std::find(texts.begin(), texts.end(), text) != texts.end()) continue;
    texts.push_back(std::move(text));
    if (first != nullptr) first->push_back(i);
  }
  return texts;
}

}  // namespace output
