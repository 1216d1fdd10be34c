#include "output/section_links.h"

#include <algorithm>
#include <cstddef>

#include "calc/trace.h"
#include "calc/trace_writer.h"
#include "output/compose_text.h"
#include "output/section_list.h"

namespace output {
namespace {

/// Keys of one pattern together, in the order of their first.
std::vector<std::vector<std::string>> by_pattern(const std::vector<std::string>& keys) {
  std::vector<std::vector<std::string>> groups;
  for (const std::string& key : keys) {
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
      return Context::pattern(group.front()) == Context::pattern(key);
    });
    if (same == groups.end()) {
      groups.push_back({key});
    } else {
      same->push_back(key);
    }
  }
  return groups;
}

/// Start of the ids of the first group of which no other has less of a figure.
template <class Figure>
std::string least_group(const Context& c, Figure figure) {
  const std::vector<calc::Group>& all = c.spec.chosen;
  const auto least = std::min_element(
      all.begin(), all.end(), [&](const auto& a, const auto& b) { return figure(a) < figure(b); });
  return group_prefix(static_cast<std::size_t>(least - all.begin()));
}

std::string station_or_group(const Context& c, const std::string& figure,
                             const std::string& of_group) {
  return c.has_step("station." + figure) ? "station." + figure : "g1." + of_group;
}

/// The step of the budget that has most of a figure among those of a name, or of any.
template <class Figure>
std::string most_budget(const Context& c, std::string_view name, Figure figure) {
  const calc::Budget* most = nullptr;
  for (const calc::Budget& budget : c.spec.placement) {
    if (!name.empty() && budget.name != name) continue;
    if (most == nullptr || figure(*most) < figure(budget)) most = &budget;
  }
  return most == nullptr ? std::string() : calc::budget_step(c.spec, *most);
}

}  // namespace

Links::Links(const Context& context) : c_(context) {
  for (const calc::Input& input : c_.spec.inputs) {
    const bool is_given = input.origin.kind == calc::OriginKind::given;
    if (is_given && !shall_words(c_, input).empty()) shall_.insert(input.key);
  }
}

std::string Links::step(std::initializer_list<std::string> ids, const std::string& markup) const {
  const auto* const found =
      std::find_if(ids.begin(), ids.end(), [&](const auto& id) { return c_.has_step(id); });
  return found == ids.end() ? markup : c_.to_step(*found, markup);
}

std::string Links::catalogue(const std::string& row, const std::string& markup) const {
  return c_.lists_row(row) ? link_to(input_anchor(row), markup) : markup;
}

std::string Links::requirement(const std::string& key, const std::string& markup) const {
  return shall_.contains(key) ? link_to("s-shall-" + anchor(key), markup) : c_.linked(key, markup);
}

std::string Links::requirements(const std::vector<std::string>& keys) const {
  std::vector<std::string> pieces;
  for (const std::vector<std::string>& group : by_pattern(keys)) {
    const std::string& key = group.front();
    const std::string text = c_.field(Context::pattern(key), group);
    pieces.push_back(requirement(key, text));
  }
  return joined(c_, pieces);
}

std::string heads_step(const Context& c) { return station_or_group(c, "heads", "heads_total"); }

std::string boards_step(const Context& c) {
  const auto& uses = c.spec.station->board_uses;
  return c.has_step("station.boards") || uses.empty() ? "station.boards"
                                                      : "station.boards." + uses.front().board;
}

std::string group_of_channel(const Context& c, const std::string& channel) {
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const std::vector<std::string>& all = c.spec.chosen[i].channels;
    if (std::find(all.begin(), all.end(), channel) != all.end()) return group_prefix(i);
  }
  return {};
}

std::string joints_step(const Context& c) { return station_or_group(c, "joints", "joints"); }

std::string speed_step(const Context& c) {
  return least_group(c, [](const calc::Group& g) { return g.speed_limit; }) + ".speed_limit";
}

std::string frequency_step(const Context& c) {
  return least_group(c, [](const calc::Group& g) { return -g.frequency_per_nozzle.si(); }) +
         ".per_nozzle";
}

std::string use_step(const Context& c) {
  return least_group(c, [](const calc::Group& g) { return -g.frequency_use; }) + ".use";
}

std::string cover_step(const Context& c) {
  std::string step;
  double least = 0;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const calc::Group& group = c.spec.chosen[i];
    for (const calc::ChannelDots& dots : group.dots) {
      if (!step.empty() && dots.cover_fraction >= least) continue;
      least = dots.cover_fraction;
      step = calc::dots_steps(group, dots.channel, group_prefix(i)) + ".cover";
    }
  }
  return step;
}

std::string widest_budget_step(const Context& c, std::string_view name) {
  return most_budget(c, name, [](const calc::Budget& b) { return b.expanded; });
}

std::string tightest_budget_step(const Context& c) {
  return most_budget(c, {}, [](const calc::Budget& b) { return b.expanded / b.limit; });
}

}  // namespace output
