#include "output/section_links.h"

#include <algorithm>
#include <cstddef>

#include "calc/figure_steps.h"
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

calc::FigureSteps steps(const Context& c) {
  return {c.spec, [&c](const std::string& id) { return c.has_step(id); }};
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

std::string group_of_channel(const Context& c, const std::string& channel) {
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const std::vector<std::string>& all = c.spec.chosen[i].channels;
    if (std::find(all.begin(), all.end(), channel) != all.end()) return group_prefix(i);
  }
  return {};
}

std::string heads_step(const Context& c) { return steps(c).heads(); }
std::string boards_step(const Context& c) { return steps(c).boards(); }
std::string joints_step(const Context& c) { return steps(c).joints(); }
std::string speed_step(const Context& c) { return steps(c).speed(); }
std::string frequency_step(const Context& c) { return steps(c).frequency(); }
std::string use_step(const Context& c) { return steps(c).use(); }
std::string cover_step(const Context& c) { return steps(c).cover(); }
std::string widest_budget_step(const Context& c, std::string_view name) {
  return steps(c).widest_budget(name);
}
std::string tightest_budget_step(const Context& c) { return steps(c).tightest_budget(); }
std::string headline_step(const Context& c, const std::string& figure) {
  return steps(c).headline(figure);
}
std::string gate_step(const Context& c, const std::string& gate, bool up) {
  return steps(c).gate(gate, up);
}

}  // namespace output
