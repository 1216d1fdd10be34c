/// What else the station could do, and what it takes to keep it going.
#include <algorithm>
#include <cstddef>

#include "calc/parameter.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

void add_row(const Context& c, Values& table, const std::string& name, std::string value,
             const std::string& keys = {}) {
  Values& row = table.add("ROW");
  row.set("KEY", keys);
  row.set_markup("NAME", c.words("property." + name));
  row.set_markup("VALUE", std::move(value));
}

std::string list_or_none(const Context& c, const std::vector<std::string>& names) {
  if (names.empty()) return c.words("none");
  std::vector<std::string> pieces;
  pieces.reserve(names.size());
  for (const std::string& name : names) pieces.push_back(c.words_or("name." + name, name));
  return joined(c, pieces);
}

void add_reserves(const Context& c, Values& table, const calc::Flexibility& entry,
                  const std::string& g) {
  if (entry.spare_speed) {
    add_row(c, table, "spare_speed", escaped(speed_limit_text(c, *entry.spare_speed)),
            c.step_keys({g + ".spare_speed"}));
  }
  if (entry.spare_width) {
    add_row(c, table, "spare_width", escaped(length_text(c, *entry.spare_width, 3)),
            c.step_keys({g + ".spare_width"}));
  }
  if (entry.free_colours > 0) {
    add_row(c, table, "free_colours", std::to_string(entry.free_colours),
            c.step_keys({g + ".free_colours"}));
  }
  add_row(c, table, "other_families", list_or_none(c, entry.families));
  add_row(c, table, "interchangeable", list_or_none(c, entry.interchangeable));
}

void add_service(const Context& c, const Links& links, Values& table,
                 const calc::Flexibility& entry, const std::string& g) {
  const std::string cost = entry.replace_cost && c.spec.station
                               ? escaped(amount(c.spec.station->currency, *entry.replace_cost))
                               : c.words("on_request");
  add_row(c, table, "replace",
          c.linked(std::string(calc::parameter(calc::P::alignment_h).key),
                   c.words("replace", {{"HOURS", with_unit(entry.replace_hours, "h", 2)}})) +
              ", " + cost,
          c.step_keys({g + ".replace_cost"}));
  if (entry.serviceable) add_row(c, table, "service", c.words(serviceable_key(*entry.serviceable)));
  if (entry.waveform) add_row(c, table, "waveform", c.words(waveform_key(*entry.waveform)));
  if (entry.driver_sources) {
    add_row(c, table, "driver_sources",
            links.catalogue("head." + entry.head, std::to_string(*entry.driver_sources)));
  }
}

/// Parts without price that only one maker offers, each as a link to its row of the catalogue.
std::string unpriced_parts(const Context& c, const Links& links) {
  const std::vector<calc::BomLine>& bom = c.spec.station->bom;
  std::vector<std::string> pieces;
  for (const std::string& part : c.spec.single_source_unpriced) {
    const auto line = std::find_if(
        bom.begin(), bom.end(), [&](const calc::BomLine& one) { return one.part_number == part; });
    const std::string row = line == bom.end() ? std::string() : line->source;
    pieces.push_back(links.catalogue(row, escaped(part)));
  }
  return joined(c, pieces);
}

/// What only one maker offers: its share of what is priced, and what has no price.
void add_single_source(const Context& c, const Links& links, Values& values) {
  const std::optional<double>& share = c.spec.single_source_share;
  if (share && *share > 0) {
    Values& single = values.add("SINGLE");
    single.set("KEY", c.step_keys({"station.single_source"}));
    single.set_markup("TEXT",
                      c.words("single_source", {{"SHARE", with_unit(*share * 100, "%", 2)}}));
  }
  if (c.spec.single_source_unpriced.empty() || !c.spec.station) return;
  Values& unpriced = values.add("SINGLE");
  unpriced.set("KEY", "");
  Values items;
  items.set_markup("ITEMS", unpriced_parts(c, links));
  unpriced.set_markup("TEXT", c.templates.words(c.language(), "single_source.unpriced", items));
}

}  // namespace

std::string serviceable_key(calc::Serviceable who) {
  switch (who) {
    case calc::Serviceable::user:
      return "serviceable.user";
    case calc::Serviceable::parts:
      return "serviceable.parts";
    case calc::Serviceable::returned:
      return "serviceable.returned";
    case calc::Serviceable::none:
      return "serviceable.none";
  }
  return {};
}

std::string waveform_key(calc::WaveformAccess access) {
  switch (access) {
    case calc::WaveformAccess::own:
      return "waveform.own";
    case calc::WaveformAccess::limited:
      return "waveform.limited";
    case calc::WaveformAccess::maker:
      return "waveform.maker";
  }
  return {};
}

std::string flexibility_section(const Context& c) {
  if (c.spec.flexibility.empty()) return {};
  Values values;
  const Links links(c);
  for (std::size_t i = 0; i < c.spec.flexibility.size(); ++i) {
    const calc::Flexibility& entry = c.spec.flexibility[i];
    Values& table = values.add("GROUP");
    table.set_markup("CAPTION",
                     c.words("flexibility_caption",
                             {{"GROUP", c.group_name(entry.group)}, {"HEAD", entry.head}}));
    add_reserves(c, table, entry, group_prefix(i));
    add_service(c, links, table, entry, group_prefix(i));
  }
  add_single_source(c, links, values);
  return c.expand("flexibility", values);
}

}  // namespace output
