/// Alternatives, and every head of the catalogue that was left out with its reasons.
#include <algorithm>
#include <cmath>

#include "calc/ranking.h"
#include "output/compose_text.h"
#include "output/figure_places.h"
#include "output/format.h"
#include "output/section_links.h"
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

std::string arrangement(const Context& c, const Links& links,
                        const std::vector<calc::Group>& groups) {
  std::vector<std::string> parts;
  parts.reserve(groups.size());
  for (const calc::Group& group : groups) {
    Values values;
    values.set("GROUP", c.group_name(group.name));
    values.set_markup("HEAD", links.catalogue("head." + group.head, escaped(group.head)));
    values.set("MODE", group.mode);
    parts.push_back(c.templates.words(c.language(), "alternative_group", values));
  }
  return joined(c, parts);
}

int joints(const std::vector<calc::Group>& groups) {
  int count = 0;
  for (const calc::Group& group : groups) count += group.joints;
  return count;
}

/// One term of the ranking, in its order: what a station has, larger being worse.
struct Term {
  std::string name, step;  ///< step: of the station chosen
  double other = 0, chosen = 0;
  bool larger_first = false;
};

std::vector<Term> terms(const Context& c, const calc::Alternative& other) {
  const calc::Specification& spec = c.spec;
  const calc::Station& station = *spec.station;
  const auto price_class = [](const calc::Station& s) {
    return static_cast<double>(calc::price_class(s.cost.ownership));
  };
  return {{"unpriced", "", static_cast<double>(other.station.bom_unpriced),
           static_cast<double>(station.bom_unpriced)},
          {"class", "", price_class(other.station), price_class(station)},
          {"joints", joints_step(c), static_cast<double>(joints(other.groups)),
           static_cast<double>(joints(spec.chosen))},
          {"margin", "", least_limit(other.groups).si(), least_limit(spec.chosen).si(), true},
          {"heads", heads_step(c), static_cast<double>(count_heads(other.groups)),
           static_cast<double>(count_heads(spec.chosen))},
          {"ownership", "", other.station.cost.ownership.major(), station.cost.ownership.major()}};
}

/// The term that puts an alternative behind the chosen station. The first that differs decides;
/// where it favours the alternative, wishes did, which rank before them all.
std::string decided(const Context& c, const calc::Alternative& other, const std::string& number) {
  for (const Term& term : terms(c, other)) {
    // Speeds that agree to a millionth are one to the ranking.
    const bool same = std::abs(term.other - term.chosen) <= 1e-6 * std::abs(term.chosen);
    if (same) continue;
    const bool worse = (term.other > term.chosen) != term.larger_first;
    if (!worse) return c.words("decided.prefers");
    const std::string step = "alternative." + number + "." + term.name;
    return c.worded("decided." + term.name,
                    {{"VALUE", c.figure({step}, count_text(term.other))},
                     {"LIMIT", c.figure({term.step}, count_text(term.chosen))}});
  }
  return c.words("decided.order");
}

void add_row(Values& table, const std::string& station, const std::string& name,
             const std::string& differs, const std::string& behind) {
  Values& row = table.add("ROW");
  row.set_markup("STATION", station);
  row.set_markup("NAME", name);
  row.set_markup("DIFFERS", differs);
  row.set_markup("BEHIND", behind);
}

/// Names what the starred sums are without, over all rows.
void add_footnote(const Context& c, Values& table) {
  std::vector<const calc::Station*> stations{&*c.spec.station};
  for (const calc::Alternative& other : c.spec.alternatives) stations.push_back(&other.station);
  const std::vector<std::string> items = unpriced_items(c, stations);
  if (items.empty()) return;
  table.add("FOOTNOTE").set_markup("ITEMS", joined(c, items));
}

void add_alternatives(const Context& c, const Links& links, Values& values) {
  if (c.spec.alternatives.empty() || c.spec.chosen.empty() || !c.spec.station) return;
  Values& table = values.add("ALTERNATIVES");
  table.set_markup("CAPTION", c.words("alternatives_caption"));
  add_row(table, c.words("side.chosen"), arrangement(c, links, c.spec.chosen), "",
          c.words("chosen"));
  for (std::size_t i = 0; i < c.spec.alternatives.size(); ++i) {
    const calc::Alternative& other = c.spec.alternatives[i];
    std::vector<std::string> differs;
    for (const std::string& key : other.differs) {
      differs.push_back(c.words_or("differs." + key, key));
    }
    const std::string number = std::to_string(i + 1);
    add_row(table, c.words("side.alternative", {{"NUMBER", number}}),
            arrangement(c, links, other.groups), joined(c, differs), decided(c, other, number));
  }
  add_side_by_side(c, table);
  add_footnote(c, table);
}

void add_rejected(const Context& c, const Links& links, Values& values) {
  if (c.spec.rejected.empty()) return;
  Values& table = values.add("REJECTED");
  for (const calc::RejectedHead& head : c.spec.rejected) {
    Values& row = table.add("ROW");
    row.set_markup("HEAD", links.catalogue("head." + head.head, escaped(head.head)));
    for (const std::string& reason : linked_reasons(c, head)) {
      row.add("REASON").set_markup("TEXT", reason);
    }
  }
}

}  // namespace

std::string heads_section(const Context& c) {
  Values values;
  const Links links(c);
  add_alternatives(c, links, values);
  add_rejected(c, links, values);
  return values.sections().empty() ? std::string() : c.expand("heads", values);
}

}  // namespace output
