/// Ids of the trace steps that have figures of the whole station: of the group or budget that
/// governs them.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "calc/specification.h"

namespace calc {

/// Every id may be of a step that does not exist where the figure does not apply.
class FigureSteps {
 public:
  /// Whether a step of that id exists.
  using Has = std::function<bool(const std::string&)>;
  /// Precondition: something is chosen. The specification must outlive it.
  FigureSteps(const Specification& spec, Has has) : spec_(spec), has_(std::move(has)) {}

  std::string heads() const;
  std::string boards() const;
  std::string joints() const;
  std::string speed() const;
  std::string frequency() const;
  std::string use() const;
  std::string cover() const;
  /// Of the widest budget of a name ("dot"); empty where there is none.
  std::string widest_budget(std::string_view name) const;
  /// Of the budget nearest to its limit, or farthest beyond it.
  std::string tightest_budget() const;
  /// Of a key of headline_key(): "heads_total".
  std::string headline(const std::string& key) const;
  /// What the gate of that code ("frequency") holds; empty where it is no figure of the station.
  /// `up`: of the two ends of a throw the farther.
  std::string gate(const std::string& code, bool up) const;

 private:
  std::string station_or_group(const std::string& figure, const std::string& of_group) const;
  /// The first of those steps that there is.
  std::string first_of(std::initializer_list<std::string> ids) const;

  const Specification& spec_;
  Has has_;
};

}  // namespace calc
