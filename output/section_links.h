/// Links from figures and names within a text or a cell to where they stand in the document.
#pragma once

#include <functional>
#include <initializer_list>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "output/compose_context.h"

namespace output {

/// Gathers once what the sections on steps, catalogue and requirement list. Each link is the
/// markup as it is where the document has no such place.
class Links {
 public:
  /// The context must outlive it.
  explicit Links(const Context& context);

  /// To the first of those trace steps that exists.
  std::string step(std::initializer_list<std::string> ids, const std::string& markup) const;
  /// To the row of the catalogue, "head.H-1".
  std::string catalogue(const std::string& row, const std::string& markup) const;
  /// To the requirement of that key of the request, else to its value as given.
  std::string requirement(const std::string& key, const std::string& markup) const;
  /// Request keys in words, those that differ only in a name together, each with its requirement,
  /// else with its value as given; as markup.
  std::string requirements(const std::vector<std::string>& keys) const;

 private:
  const Context& c_;
  std::set<std::string, std::less<>> shall_;
};

/// Steps of figures that stand for the whole station: of the group or budget that governs them.
std::string heads_step(const Context& context);
std::string boards_step(const Context& context);
std::string joints_step(const Context& context);
std::string speed_step(const Context& context);
std::string frequency_step(const Context& context);
std::string use_step(const Context& context);
std::string cover_step(const Context& context);
/// Start of the trace ids of the group that prints a channel; empty for none.
std::string group_of_channel(const Context& context, const std::string& channel);
/// Of the widest budget of a name ("dot"); empty where there is none.
std::string widest_budget_step(const Context& context, std::string_view name);
/// Of the budget nearest to its limit, or farthest beyond it.
std::string tightest_budget_step(const Context& context);
/// Of a figure that the section on ranges has ("heads_total").
std::string headline_step(const Context& context, const std::string& figure);
/// Of what a gate holds where it is a figure of the station chosen; else empty.
std::string gate_step(const Context& context, const std::string& gate, bool up);

}  // namespace output
