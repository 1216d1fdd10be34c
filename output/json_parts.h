/// Pieces of the JSON writer; nlohmann's header is heavy, so only json*.cpp may include this.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <utility>

#include "calc/specification.h"
#include "output/json.h"

namespace output {

using Json = nlohmann::ordered_json;

/// A figure to 12 significant digits, whole ones without a fraction. Throws std::logic_error when
/// it is not finite, as all below.
Json json_number(double value);
/// All 17 digits, for the trace, where every formula is to be evaluated again.
Json json_exact(double value);
Json json_number_or_null(const std::optional<double>& value);
/// Major units.
Json json_money(calc::Money amount);
Json json_money_or_null(const std::optional<calc::Money>& amount);

/// Sets the key when there is a value; an absent key means: not applicable.
void json_set(Json& object, const char* key, const std::optional<double>& value);
void json_set(Json& object, const char* key, const std::optional<int>& value);
void json_set(Json& object, const char* key, const std::string& text);
void json_set_dpi(Json& object, const char* key, const std::optional<calc::Resolution>& value);

/// An array of what `make` makes of each element.
template <class Range, class Make>
Json json_list(const Range& range, Make make) {
  Json::array_t array;
  array.reserve(range.size());
  for (const auto& element : range) array.push_back(make(element));
  return array;
}

/// Makes an object member by member, of keys that differ. For what a file has hundreds of: it takes
/// a third of the time of a braced list, which copies.
class JsonObject {
 public:
  JsonObject() { members_.reserve(12); }
  template <class T>
  JsonObject& with(const char* key, T&& value) {
    members_.emplace_back(key, std::forward<T>(value));
    return *this;
  }
  Json made() { return std::move(members_); }

 private:
  Json::object_t members_;
};

/// The whole file as one value.
Json whole_json(const calc::Specification& specification, const JsonFacts& facts);

/// What such a value says. Throws Json::exception when it is none of ours.
IssuedJson issued_from(Json root);

/// Every key of one group; the dots' keys are those of its first channel, `dots` has them all.
Json group_json(const calc::Group& group);
/// `chosen` of a specification that has chosen something.
Json chosen_json(const calc::Specification& specification);
/// The first group that prints a process colour, else the first of all. Something is chosen.
const calc::Group& leading_group(const calc::Specification& specification);
/// Flights and budgets; `leading` has a flight.
Json placement_json(const calc::Specification& specification, const calc::Group& leading);
/// The carriage at the speed that just serves the line.
Json pace_json(const calc::CarriagePace& pace);
Json inks_json(const std::vector<calc::InkInHead>& inks);
/// Sets drive, supply and encoder of a station.
void set_drive(Json& root, const calc::Station& station);
/// One headline figure with its range (json_uncertainty.cpp).
Json uncertainty_json(const calc::Uncertainty& entry);
/// Sets what would make something fit, or the edges of what fits (json_room.cpp).
void set_room(Json& root, const calc::Specification& specification);
/// One stage after the heads (json_stages.cpp).
Json stage_json(const calc::Stage& stage);

}  // namespace output
