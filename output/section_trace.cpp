/// The calculation trace and the list of its sources.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <set>
#include <utility>

#include "output/compose_text.h"
#include "output/figure_places.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/trace_rows.h"

namespace output {
namespace {

constexpr int trace_digits = 6;  ///< enough to follow a step by hand

std::string tag_key(calc::SourceTag tag) {
  switch (tag) {
    case calc::SourceTag::printed:
      return "tag.printed";
    case calc::SourceTag::library:
      return "tag.library";
    case calc::SourceTag::table:
      return "tag.table";
    case calc::SourceTag::computed:
      return "tag.computed";
    case calc::SourceTag::memory:
      return "tag.memory";
    case calc::SourceTag::practice:
      return "tag.practice";
  }
  return {};
}

std::string kind_key(calc::StepKind kind) {
  switch (kind) {
    case calc::StepKind::formula:
      return "step.formula";
    case calc::StepKind::table:
      return "step.table";
    case calc::StepKind::solve:
      return "step.solve";
    case calc::StepKind::least:
      return "step.least";
    case calc::StepKind::choice:
      return "step.choice";
    case calc::StepKind::again:
      return "step.again";
    case calc::StepKind::last:
      return "step.last";
  }
  return {};
}

/// A name of which no line ends behind one of those signs within.
std::string whole(std::string_view name, std::string_view signs) {
  std::string text;
  for (const char byte : name) {
    text += byte;
    if (signs.find(byte) != std::string_view::npos) text += "\xE2\x81\xA0";  // word joiner
  }
  return text;
}

std::string code(const std::string& markup) { return "<code>" + markup + "</code>"; }

/// Names of steps, fields and rows break at their dots only, formulas at their operators too.
std::string whole_name(std::string_view name) { return whole(name, "-_"); }
std::string whole_symbols(std::string_view formula) { return whole(formula, "_"); }

/// Anchors an origin can lead to, gathered once a document.
struct Targets {
  std::set<std::string, std::less<>> inputs, assumptions, catalogue;
};

Targets targets(const Context& c) {
  Targets found;
  for (const calc::Input& input : c.spec.inputs) {
    if (input.origin.kind == calc::OriginKind::catalogue) {
      found.catalogue.insert(catalogue_row(input.key));
    } else if (input.origin.kind != calc::OriginKind::assumed && is_listed(input)) {
      found.inputs.insert(input.key);
    }
  }
  for (const calc::Assumption& row : c.spec.assumptions) found.assumptions.insert(row.field);
  return found;
}

/// Where an input comes from, as a link when the document has the place.
std::string origin(const Context& c, const Targets& known, const calc::StepInput& input) {
  if (input.ref.empty()) return c.words_or("origin." + input.origin, input.origin);
  if (c.has_step(input.ref)) return link_to(anchor(input.ref), escaped(whole_name(input.ref)));
  if (input.origin == "assumed" && known.assumptions.contains(input.ref)) {
    return link_to(input_anchor("assumed " + input.ref), escaped(whole_name(input.ref)));
  }
  if (known.inputs.contains(input.ref)) {
    return link_to(input_anchor(input.ref), escaped(whole_name(input.ref)));
  }
  for (const std::string& row : {input.ref, catalogue_row(input.ref)}) {
    if (known.catalogue.contains(row))
      return link_to(input_anchor(row), escaped(whole_name(input.ref)));
  }
  return escaped(whole_name(input.ref));
}

using SourceKey = std::pair<std::string_view, calc::SourceTag>;

using Sources = std::vector<SourceKey>;

Sources sources(const Context& c) {
  Sources list;
  for (const calc::Step& step : c.spec.trace) {
    const SourceKey key{step.source, step.tag};
    if (std::find(list.begin(), list.end(), key) == list.end()) list.push_back(key);
  }
  return list;
}

/// Number of a step's source in the list, from 1.
std::size_t source_number(const Sources& list, const calc::Step& step) {
  const auto found = std::find(list.begin(), list.end(), SourceKey{step.source, step.tag});
  return static_cast<std::size_t>(found - list.begin()) + 1;
}

/// The names a row goes by beside its first: what sets them apart, or whole.
void add_others(Values& row, const TraceRow& merged) {
  std::string anchors;
  for (const calc::Step* other : merged.others) {
    anchors += (anchors.empty() ? "" : " ") + anchor(other->id);
  }
  row.set("ANCHORS", anchors);
  if (merged.others.empty()) return;
  const std::vector<std::string> parts = differing_parts(merged.step->id, merged.others);
  Values& others = row.add(parts.empty() ? "ALSO" : "ALSO_FOR");
  for (std::size_t i = 0; i < merged.others.size(); ++i) {
    others.add("NAME").set("TEXT", whole_name(parts.empty() ? merged.others[i]->id : parts[i]));
  }
}

/// Where an input comes from in all steps of the row; equal steps are one place.
std::string origins(const Context& c, const Targets& known, const TraceRow& merged,
                    std::size_t index) {
  const calc::StepInput& input = merged.step->inputs[index];
  std::string all = origin(c, known, input);
  std::set<std::string_view> said{input.ref};
  for (const calc::Step* other : merged.others) {
    const calc::StepInput& own = other->inputs[index];
    if (c.has_step(own.ref) || !said.insert(own.ref).second) continue;
    all += ", " + origin(c, known, own);
  }
  return all;
}

/// What the steps of the row assume at that place of their lists, in words.
std::string assumed(const Context& c, const TraceRow& merged, std::size_t index) {
  std::vector<std::string> keys{merged.step->assumptions[index]};
  for (const calc::Step* other : merged.others) {
    const std::string& key = other->assumptions[index];
    if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
  }
  return fields_text(c, keys);
}

/// An amount of money in full, so that sums can be added up; empty for what is none, or is a price
/// of less than whole cents.
std::string in_full(const Context& c, double value, const std::string& unit) {
  constexpr double worth = 100;  // from which a part of a cent tells nothing
  const auto& station = c.spec.station;
  if (!station || unit.empty() || unit != station->currency) return {};
  const calc::Money amount = calc::to_money(value);
  const bool whole = std::abs(amount.major() - value) < 1e-9;
  if (!whole && std::abs(value) < worth) return {};
  return escaped(money(amount) + "\xC2\xA0" + unit);
}

/// A figure as markup, the exponent of its unit that is no whole number raised.
std::string figure(const Context& c, double value, const std::string& unit) {
  std::string amount = in_full(c, value, unit);
  if (!amount.empty()) return amount;
  const std::string text = c.plain(value, unit, trace_digits);
  const std::size_t power = text.find('^');
  if (power == std::string::npos) return escaped(text);
  const std::size_t end = std::min(text.find_first_not_of("0123456789.", power + 1), text.size());
  return escaped(text.substr(0, power)) + "<sup>" +
         escaped(text.substr(power + 1, end - power - 1)) + "</sup>" + escaped(text.substr(end));
}

/// The formula of a step, or what stands in place of one: the name of a row of the catalogue, a
/// step whose working was gone through once more, what a value passes.
std::string formula(const Context& c, const calc::Step& step) {
  switch (step.kind) {
    case calc::StepKind::table:
      return code(escaped(whole_name(step.formula)));
    case calc::StepKind::again:
      return c.has_step(step.formula)
                 ? link_to(anchor(step.formula), code(escaped(whole_name(step.formula))))
                 : c.words_or("gate." + step.formula, step.formula);
    case calc::StepKind::last:
      return c.words("gate." + step.formula);
    default:
      return code(escaped(whole_symbols(step.formula)));
  }
}

void add_row(const Context& c, const Targets& known, const Sources& list, Values& values,
             const TraceRow& merged) {
  const calc::Step& step = *merged.step;
  Values& row = values.add("ROW");
  row.set("ANCHOR", anchor(step.id));
  add_others(row, merged);
  row.set("ID", whole_name(step.id));
  row.set("SYMBOL", whole_symbols(step.symbol));
  row.set_markup("RELATION", c.words(kind_key(step.kind)));
  row.set_markup("FORMULA", formula(c, step));
  row.set_markup("CONDITION", c.has_words(kind_key(step.kind) + ".condition")
                                  ? c.words(kind_key(step.kind) + ".condition")
                                  : std::string());
  row.set_markup("VALUE", figure(c, step.value, step.unit));
  const std::string source = "S" + std::to_string(source_number(list, step));
  row.set("SOURCE", source);
  row.set("SOURCE_ANCHOR", "s-source-" + source);
  row.set_markup("TAG", c.words(tag_key(step.tag)));
  row.set_markup("VALIDITY", c.said(step.validity));
  if (!step.inputs.empty()) {
    Values& inputs = row.add("INPUTS");
    for (std::size_t i = 0; i < step.inputs.size(); ++i) {
      const calc::StepInput& input = step.inputs[i];
      Values& one = inputs.add("INPUT");
      one.set("SYMBOL", whole_symbols(input.symbol));
      one.set_markup("VALUE", figure(c, input.value, input.unit));
      one.set_markup("ORIGIN", origins(c, known, merged, i));
    }
  }
  for (std::size_t i = 0; i < step.assumptions.size(); ++i) {
    row.add("ASSUMES").set_markup("TEXT", assumed(c, merged, i));
  }
}

using Input = calc::Input;

/// Catalogue values in the order of their rows, each row with its values.
std::vector<std::pair<std::string, std::vector<const Input*>>> catalogue_rows(const Context& c) {
  std::vector<std::pair<std::string, std::vector<const Input*>>> rows;
  std::set<std::string_view> seen;
  for (const Input& input : c.spec.inputs) {
    const bool from_catalogue = input.origin.kind == calc::OriginKind::catalogue;
    if (!from_catalogue || !seen.insert(input.key).second) continue;
    const std::string name = catalogue_row(input.key);
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.first == name; });
    if (found != rows.end()) {
      found->second.push_back(&input);
    } else {
      rows.push_back({name, {&input}});
    }
  }
  return rows;
}

/// The line that a row stands on; of another file than the first row's with its name.
std::string catalogue_line(const calc::Origin& origin, const std::string& file) {
  if (origin.file.empty()) return {};
  return origin.file == file ? std::to_string(origin.line) : place_key(origin);
}

void add_catalogue(const Context& c, Values& values) {
  const auto rows = catalogue_rows(c);
  if (rows.empty()) return;
  Values& table = values.add("CATALOGUE");
  table.set_markup("DATED", c.spec.catalogue_date.empty()
                                ? c.words("catalogue_undated")
                                : c.words("catalogue_dated", {{"DATE", c.spec.catalogue_date}}));
  const calc::Origin& first = rows.front().second.front()->origin;
  if (!first.file.empty()) {
    table.add("LINES").set_markup("TEXT", c.words("catalogue_lines", {{"FILE", first.file}}));
  }
  for (const auto& [name, inputs] : rows) {
    Values& row = table.add("ROW");
    row.set("LINE", catalogue_line(inputs.front()->origin, first.file));
    row.set("ANCHOR", input_anchor(name));
    row.set("NAME", whole_name(name));
    for (const Input* input : inputs) {
      Values& value = row.add("VALUE");
      value.set("FIELD",
                whole_name(input->key.substr(std::min(name.size() + 1, input->key.size()))));
      value.set("TEXT", input_text(c, *input));
    }
  }
}

}  // namespace

std::string trace_section(const Context& c) {
  if (c.spec.trace.empty()) return {};
  Values values;
  const Targets known = targets(c);
  const Sources list = sources(c);
  for (const TraceRow& row : trace_rows(c.spec.trace)) add_row(c, known, list, values, row);
  return c.expand("trace", values);
}

std::string sources_section(const Context& c) {
  Values values;
  const Sources list = sources(c);
  for (std::size_t i = 0; i < list.size(); ++i) {
    Values& row = values.add("ROW");
    row.set("ANCHOR", "s-source-S" + std::to_string(i + 1));
    row.set("NUMBER", "S" + std::to_string(i + 1));
    row.set_markup("TEXT", c.said(list[i].first));
    row.set_markup("TAG", c.words(tag_key(list[i].second)));
  }
  add_catalogue(c, values);
  return values.sections().empty() ? std::string() : c.expand("sources", values);
}

}  // namespace output
