/// Alternatives, and every head of the catalogue that was left out with its reasons.
#include <algorithm>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

calc::Speed least_limit(const std::vector<calc::Group>& groups) {
  calc::Speed least = groups.front().speed_limit;
  for (const calc::Group& group : groups) least = std::min(least, group.speed_limit);
  return least;
}

int count_heads(const std::vector<calc::Group>& groups) {
  int count = 0;
  for (const calc::Group& group : groups) count += group.heads_total;
  return count;
}

std::string arrangement(const Context& c, const std::vector<calc::Group>& groups) {
  std::vector<std::string> parts;
  for (const calc::Group& group : groups) {
    parts.push_back(c.words("alternative_group",
                            {{"GROUP", group.name}, {"HEAD", group.head}, {"MODE", group.mode}}));
  }
  return joined(c, parts);
}

std::string price(const calc::Station& station, calc::Money money_value) {
  return money(money_value) + (station.bom_unpriced > 0 ? "*" : "");
}

void add_row(Values& table, const std::vector<calc::Group>& groups, const calc::Station& station,
             const std::string& name, const std::string& differs) {
  Values& row = table.add("ROW");
  row.set_markup("NAME", name);
  row.set("HEADS", std::to_string(count_heads(groups)));
  row.set("LIMIT", speed_limit_number(least_limit(groups)));
  row.set("CAPITAL", price(station, station.cost.capital));
  row.set("OWNERSHIP", price(station, station.cost.ownership));
  row.set_markup("DIFFERS", differs);
}

void add_alternatives(const Context& c, Values& values) {
  if (c.spec.alternatives.empty() || c.spec.chosen.empty() || !c.spec.station) return;
  Values& table = values.add("ALTERNATIVES");
  table.set_markup("CAPTION",
                   c.words("alternatives_caption", {{"CURRENCY", c.spec.station->currency}}));
  add_row(table, c.spec.chosen, *c.spec.station, "<b>" + arrangement(c, c.spec.chosen) + "</b>",
          c.words("chosen"));
  for (const calc::Alternative& other : c.spec.alternatives) {
    if (other.groups.empty()) continue;
    std::vector<std::string> differs;
    for (const std::string& key : other.differs) {
      differs.push_back(c.words_or("differs." + key, key));
    }
    add_row(table, other.groups, other.station, arrangement(c, other.groups), joined(c, differs));
  }
}

void add_rejected(const Context& c, Values& values) {
  if (c.spec.rejected.empty()) return;
  Values& table = values.add("REJECTED");
  for (const calc::RejectedHead& head : c.spec.rejected) {
    Values& row = table.add("ROW");
    row.set("HEAD", head.head);
    for (const calc::Reason& reason : head.reasons) {
      row.add("REASON").set_markup("TEXT", c.reason(reason));
    }
  }
}

}  // namespace

std::string heads_section(const Context& c) {
  Values values;
  add_alternatives(c, values);
  add_rejected(c, values);
  return values.sections().empty() ? std::string() : c.expand("heads", values);
}

}  // namespace output
