#include "output/figure_places.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "calc/trace.h"
#include "output/notice_places.h"
#include "output/section_list.h"

namespace output {
namespace {

/// Units of figures and of steps in a common one: number * factor + offset.
struct Scale {
  std::string_view unit, common;
  double factor, offset = 0;
};

constexpr std::array<Scale, 26> scales{{
    {"nm", "m", 1e-9},
    {"um", "m", 1e-6},
    {"mm", "m", 1e-3},
    {"m", "m", 1},
    {"mL/m2", "m", 1e-6},
    {"m/s", "m/s", 1},
    {"m/min", "m/s", 1.0 / 60},
    {"mL/h", "mL/h", 1},
    {"mL/min", "mL/h", 60},
    {"J/m2", "J/m2", 1},
    {"kJ/m2", "J/m2", 1e3},
    {"degC", "K", 1, 273.15},
    {"K", "K", 1},
    {"", "1", 1},
    {"1", "1", 1},
    {"%", "1", 0.01},
    {"mL", "L", 1e-3},
    {"L", "L", 1},
    {"m2/s", "m2/h", 3600},
    {"m2/h", "m2/h", 1},
    {"min", "s", 60},
    {"s", "s", 1},
    {"Hz", "kHz", 1e-3},
    {"kHz", "kHz", 1},
    {"mJ/m2", "mN/m", 1},
    {"mN/m", "mN/m", 1},
}};

const Scale* scale_of(std::string_view unit) {
  const auto* const found = std::find_if(scales.begin(), scales.end(),
                                         [&](const Scale& scale) { return scale.unit == unit; });
  return found == scales.end() ? nullptr : &*found;
}

std::optional<double> converted(double value, std::string_view from, std::string_view to) {
  if (from == to) return value;
  const Scale* const a = scale_of(from);
  const Scale* const b = scale_of(to);
  if (a == nullptr || b == nullptr || a->common != b->common) return std::nullopt;
  return (value * a->factor + a->offset - b->offset) / b->factor;
}

/// How far a step's value is from the figure, as a share of it; nothing where it is another.
std::optional<double> off(const calc::Step& step, const Figure& figure) {
  constexpr double printed = 0.006;  // as far as three digits tell
  const std::optional<double> value = converted(step.value, step.unit, figure.unit);
  if (!value) return std::nullopt;
  const double most = std::max(std::abs(*value), std::abs(figure.value));
  const double share = most > 0 ? std::abs(*value - figure.value) / most : 0;
  return share < printed ? std::optional(share) : std::nullopt;
}

/// The words of a list between blanks, to each as long as it yields true.
template <class Take>
void each_place(std::string_view at, Take take) {
  while (!at.empty()) {
    const std::size_t end = std::min(at.find(' '), at.size());
    if (!take(at.substr(0, end))) return;
    at.remove_prefix(std::min(end + 1, at.size()));
  }
}

bool is_input(std::string_view place) { return place.starts_with('@'); }

bool is_at(const calc::Step& step, std::string_view place) {
  return place.starts_with('.') ? step.id.ends_with(place) : step.id == place;
}

bool holds(const std::vector<std::string>& names, std::string_view name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

/// Whether a step is of what the figure is about: of its group, or of its channel.
bool is_about(const Context& c, const calc::Step& step, const Figure& figure) {
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const calc::Group& group = c.spec.chosen[i];
    if (!step.id.starts_with(group_prefix(i) + ".")) continue;
    return holds(figure.about, group.name) || holds(figure.about, group.head) ||
           std::any_of(group.channels.begin(), group.channels.end(),
                       [&](const std::string& name) { return holds(figure.about, name); });
  }
  const std::size_t from = step.id.find('.') + 1;
  return holds(figure.about,
               std::string_view(step.id).substr(from, step.id.find('.', from) - from));
}

/// Of the steps at a place that have the figure, that which it is about, else the nearest.
const calc::Step* nearest_step(const Context& c, std::string_view place, const Figure& figure) {
  constexpr double other = 1;  // beyond any share
  const calc::Step* best = nullptr;
  double least = 0;
  for (const calc::Step& step : c.spec.trace) {
    if (!is_at(step, place)) continue;
    const std::optional<double> share = off(step, figure);
    if (!share) continue;
    const double rank = *share + (is_about(c, step, figure) ? 0 : other);
    if (best != nullptr && rank >= least) continue;
    best = &step;
    least = rank;
  }
  return best;
}

/// Whether a key's name is one of the names; a catalogue's head has its mode behind it.
bool is_of(const std::vector<std::string>& names, const std::string& name) {
  return holds(names, name) || std::any_of(names.begin(), names.end(), [&](const std::string& one) {
           return name.starts_with(one + ".");
         });
}

/// The first key of that pattern in the document, NAME of which is one of the names.
std::string named_key(const Context& c, std::string_view pattern, const Figure& figure) {
  if (pattern.find("NAME") == std::string_view::npos) return std::string(pattern);
  const std::string_view start = pattern.substr(0, pattern.find("NAME"));
  for (const calc::Input& input : c.spec.inputs) {
    if (!input.key.starts_with(start) || Context::pattern(input.key) != pattern) continue;
    if (figure.about.empty() || is_of(figure.about, Context::name(input.key))) return input.key;
  }
  return {};
}

/// Names between commas and strokes: "black, cyan / H-1".
void add_names(std::string_view text, std::vector<std::string>& names) {
  while (!text.empty()) {
    const std::size_t end = std::min({text.find(", "), text.find(" / "), text.size()});
    names.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + (text.substr(end).starts_with(" /") ? 3 : 2), text.size()));
  }
}

std::vector<std::string> names_in(const calc::Notice& notice) {
  std::vector<std::string> names;
  for (const calc::Arg& arg : notice.args) {
    if (const auto* const text = std::get_if<std::string>(&arg.value)) add_names(*text, names);
  }
  return names;
}

void fill_in(std::string& text, std::string_view name, std::string_view value) {
  for (std::size_t at = 0; (at = text.find(name, at)) != std::string::npos; at += value.size()) {
    text.replace(at, name.size(), value);
  }
}

/// A budget of strokes is that of their joints.
std::string budget_name(const std::string& subject) {
  return subject.starts_with("stroke") ? "joint" : subject;
}

/// Of another value: its name is too long for the margin, so its figure is a link.
bool is_moved(const std::string& step) { return step.starts_with("moved."); }

/// The step of a reason's value: of several of its code that which has it.
std::string left_out_at(const std::string& head, const calc::Reason& reason) {
  constexpr int most_groups = 9;
  const std::string first = calc::left_out_step(head, reason);
  std::string at = first;
  for (int i = 2; i <= most_groups; ++i) at += " " + first + "." + std::to_string(i);
  return at;
}

/// Where a figure of a reason was worked out or given.
std::string reason_anchor(const Context& c, const std::string& head, const calc::Reason& reason,
                          std::string_view of) {
  std::string at(places_of("reason", reason.code + "." + reason.subject, of));
  if (at.empty()) at = places_of("reason", reason.code, of);
  if (of == "value") at = left_out_at(head, reason) + " " + at;
  const double value = of == "value" ? reason.value : reason.limit;
  const Figure figure{value, reason.unit, {reason.subject, head, reason.group}};
  const std::string step = figure_step(c, at, figure);
  if (!step.empty()) return anchor(step);
  const std::string given = figure_input(c, at, figure);
  // What it is worked out from otherwise, or held against, stands in the head's own row.
  return given.empty() ? listed_at(c, "head." + head + ".name") : given;
}

Figure figure_of(const calc::Check& check) {
  Figure figure{check.acceptance.value_or(0), check.unit, {}};
  add_names(check.subject, figure.about);
  return figure;
}

}  // namespace

std::string figure_step(const Context& c, std::string_view at, const Figure& figure) {
  const calc::Step* found = nullptr;
  each_place(at, [&](std::string_view place) {
    if (!is_input(place)) found = nearest_step(c, place, figure);
    return found == nullptr;
  });
  return found == nullptr ? std::string() : found->id;
}

std::string figure_input(const Context& c, std::string_view at, const Figure& figure) {
  std::string anchor;
  each_place(at, [&](std::string_view place) {
    if (is_input(place)) anchor = listed_at(c, named_key(c, place.substr(1), figure));
    return anchor.empty();
  });
  return anchor;
}

std::string notice_places(std::string_view kind, const calc::Notice& notice,
                          const std::string& argument) {
  std::string at(places_of(kind, notice.code, argument));
  for (const calc::Arg& arg : notice.args) {
    const auto* const text = std::get_if<std::string>(&arg.value);
    if (text == nullptr) continue;
    if (arg.name == "subject") fill_in(at, "SUBJECT", budget_name(*text));
    if (arg.name == "axis") fill_in(at, "AXIS", *text);
  }
  fill_in(at, "FIELD", notice.field);
  return at;
}

std::string notice_keys(const Context& c, std::string_view kind, const calc::Notice& notice,
                        const std::string& before) {
  std::string keys = before;
  std::vector<std::string> seen;
  const std::vector<std::string> names = names_in(notice);
  for (const calc::Arg& arg : notice.args) {
    const auto* const value = std::get_if<double>(&arg.value);
    if (value == nullptr) continue;
    const std::string id =
        figure_step(c, notice_places(kind, notice, arg.name), {*value, arg.unit, names});
    if (id.empty() || is_moved(id) || holds(seen, id)) continue;
    keys += (keys.empty() ? "" : " ") + anchor(id);
    seen.push_back(id);
  }
  return keys;
}

std::string linked_notice(const Context& c, std::string_view kind, const calc::Notice& notice) {
  const std::vector<std::string> names = names_in(notice);
  return c.notice(kind, notice, [&](const calc::Arg* arg, const std::string& markup) {
    if (arg == nullptr) return as_link(listed_at(c, notice.field), markup);
    const auto* const value = std::get_if<double>(&arg->value);
    if (value == nullptr) return markup;
    const Figure figure{*value, arg->unit, names};
    const std::string at = notice_places(kind, notice, arg->name);
    const std::string step = figure_step(c, at, figure);
    if (is_moved(step)) return as_link(anchor(step), markup);
    if (!step.empty()) return markup;
    return as_link(figure_input(c, at, figure), markup);
  });
}

std::vector<std::string> linked_reasons(const Context& c, const calc::RejectedHead& head,
                                        std::vector<std::size_t>* first) {
  return c.reasons(head.reasons, first,
                   [&](const calc::Reason& reason, std::string_view of, const std::string& markup) {
                     return as_quiet_link(reason_anchor(c, head.head, reason, of), markup);
                   });
}

std::string check_keys(const Context& c, const calc::Check& check) {
  if (!check.acceptance) return {};
  return anchor(figure_step(c, places_of("check", check.code, {}), figure_of(check)));
}

std::string linked_acceptance(const Context& c, const calc::Check& check) {
  std::string text = check_acceptance(c, check);
  if (!check.acceptance || !check_keys(c, check).empty()) return text;
  return as_link(figure_input(c, places_of("check", check.code, {}), figure_of(check)), text);
}

}  // namespace output
