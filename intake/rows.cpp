#include "intake/rows.h"

#include <algorithm>
#include <cmath>

#include "intake/codes.h"
#include "intake/suggest.h"

namespace intake {
namespace {

constexpr std::size_t most_items = 64;

/// The items of a list field, none of them empty; nullopt with a report otherwise.
std::optional<std::vector<std::string_view>> take_items(std::string_view text, const Node& node,
                                                        const Scribe& scribe) {
  std::vector<std::string_view> items = split_list(text);
  const bool has_empty =
      std::any_of(items.begin(), items.end(), [](std::string_view item) { return item.empty(); });
  if (has_empty) {
    scribe.report(node, {code::bad_list, "an empty item in the list",
                         "put one ; between two items and none at the ends"});
    return std::nullopt;
  }
  if (items.size() > most_items) {
    scribe.report(node, {code::bad_list, "more than 64 items in the list", "give at most 64"});
    return std::nullopt;
  }
  return items;
}

/// The index of a word among info.words, or the fault.
Parsed<std::size_t> find_word(std::string_view text, const FieldInfo& info) {
  const auto found = std::find(info.words.begin(), info.words.end(), text);
  if (found != info.words.end()) return static_cast<std::size_t>(found - info.words.begin());
  const std::string_view near = nearest(text, info.words);
  const std::string list = joined(info.words);
  return Fault{
      code::bad_word, "unknown word \"" + std::string(text.substr(0, 60)) + "\"",
      near.empty() ? "one of: " + list : "one of: " + list + "; did you mean " + std::string(near)};
}

}  // namespace

calc::Origin Scribe::origin(const Node& field) const {
  const SourceText& text = sink.text();
  return {kind, text.name(), text.line_of(field.value_place.offset),
          text.column_of(field.value_place.offset), field.value};
}

void Scribe::report(const Node& field, const Fault& fault) const {
  Diagnostic& d = sink.add(fault.code, field.value_place, key(field) + ": " + fault.message);
  d.hint = fault.hint;
  d.field = key(field);
}

void Scribe::note_text(const Node& field, std::string_view text) const {
  if (inputs == nullptr) return;
  calc::Input input;
  input.key = key(field);
  input.text = text;
  input.origin = origin(field);
  inputs->push_back(std::move(input));
}

void Scribe::note_number(const Node& field, const Span& listed, std::string_view unit,
                         std::string_view text) const {
  if (inputs == nullptr) return;
  inputs->push_back({key(field), std::string(text), listed.value.listed, std::string(unit),
                     listed.low.listed, listed.high.listed, listed.spread, origin(field)});
}

FieldInfo field_info(std::string_view key, std::string_view type, std::string_view dimension,
                     std::string_view unit, std::string_view meaning) {
  FieldInfo info;
  info.key = key;
  info.type = type;
  info.dimension = dimension;
  info.unit = unit;
  for (const Unit& u : units()) {
    if (!dimension.empty() && u.dimension == dimension) info.units.push_back(u.text);
  }
  info.repeats = key.find(".NAME.") != std::string_view::npos;
  info.spread = "none";
  info.since = "0.1";
  info.meaning = meaning;
  return info;
}

std::optional<Span> take_span(const Node& node, const FieldInfo& info, Scribe& scribe) {
  const Parsed<Span> read = read_span(plain_letters(node.value), info);
  if (const auto* fault = std::get_if<Fault>(&read)) {
    scribe.report(node, *fault);
    return std::nullopt;
  }
  scribe.note_number(node, std::get<Span>(read), info.unit);
  return std::get<Span>(read);
}

std::optional<int> take_integer(const Node& node, const FieldInfo& info, Scribe& scribe) {
  const Parsed<Span> read = read_span(plain_letters(node.value), info);
  if (const auto* fault = std::get_if<Fault>(&read)) {
    scribe.report(node, *fault);
    return std::nullopt;
  }
  const double value = std::get<Span>(read).value.si;
  if (value != std::floor(value) || std::abs(value) > 1e9) {
    scribe.report(node, {code::not_whole, "not a whole number",
                         "give a whole number, as in " + number_text(std::ceil(value))});
    return std::nullopt;
  }
  scribe.note_number(node, std::get<Span>(read), info.unit);
  return static_cast<int>(value);
}

std::optional<std::size_t> take_word(const Node& node, const FieldInfo& info, Scribe& scribe) {
  const Parsed<std::size_t> found = find_word(node.value, info);
  if (const auto* fault = std::get_if<Fault>(&found)) {
    scribe.report(node, *fault);
    return std::nullopt;
  }
  scribe.note_text(node, node.value);
  return std::get<std::size_t>(found);
}

std::optional<std::vector<std::size_t>> take_words(const Node& node, const FieldInfo& info,
                                                   Scribe& scribe) {
  const auto items = take_items(node.value, node, scribe);
  if (!items) return std::nullopt;
  std::vector<std::size_t> out;
  for (const std::string_view item : *items) {
    const Parsed<std::size_t> found = find_word(item, info);
    if (const auto* fault = std::get_if<Fault>(&found)) {
      scribe.report(node, *fault);
      return std::nullopt;
    }
    out.push_back(std::get<std::size_t>(found));
  }
  scribe.note_text(node, node.value);
  return out;
}

std::optional<std::vector<Measure>> take_measures(const Node& node, const FieldInfo& info,
                                                  Scribe& scribe) {
  const std::string text = plain_letters(node.value);
  const auto items = take_items(text, node, scribe);
  if (!items) return std::nullopt;
  std::vector<Measure> out;
  for (const std::string_view item : *items) {
    const Parsed<Measure> read = read_measure(item, info);
    const auto* fault = std::get_if<Fault>(&read);
    const auto bounds =
        fault != nullptr ? *fault : check_bounds(std::get<Measure>(read).listed, info);
    if (bounds) {
      scribe.report(node, *bounds);
      return std::nullopt;
    }
    out.push_back(std::get<Measure>(read));
  }
  const Measure& first = out.front();
  scribe.note_number(node, {first, first, first, {}}, info.unit, node.value);
  return out;
}

std::optional<std::vector<std::string>> take_names(const Node& node, Scribe& scribe) {
  const auto items = take_items(node.value, node, scribe);
  if (!items) return std::nullopt;
  scribe.note_text(node, node.value);
  return std::vector<std::string>(items->begin(), items->end());
}

}  // namespace intake
