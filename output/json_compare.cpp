#include <algorithm>
#include <array>
#include <utility>

#include "output/compare.h"
#include "output/json_overview.h"
#include "output/json_parts.h"

namespace output {
namespace {

/// What the areas before `other` look at.
constexpr std::array<std::string_view, 9> covered{"request",   "verdict",      "inputs",
                                                  "chosen",    "bom",          "cost",
                                                  "bom_total", "bom_unpriced", "lead_time"};
/// What may differ between two issues of one specification.
constexpr std::array<std::string_view, 3> passing{"program", "files", "catalogue"};

bool is_one_of(std::string_view name, const auto& names) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

std::string text_of(const Json& value);

std::string list_text(const Json& list) {
  std::string text;
  for (const Json& one : list) text.append(text.empty() ? "" : ", ").append(text_of(one));
  return text;
}

/// "30 m/min (20 to 40), given"
std::string input_text(const Json& input) {
  std::string text = text_of(input.at("value"));
  const auto unit = input.value("unit", "");
  const bool as_written = input.at("value").is_string();  // with its units in it
  if (!unit.empty() && !as_written) text += " " + unit;
  if (input.contains("low") && input.contains("high")) {
    text += " (" + text_of(input.at("low")) + " to " + text_of(input.at("high")) + ")";
  }
  return text + ", " + text_of(input.at("origin"));
}

/// "8 pc at 1200"
std::string part_text(const Json& part) {
  const Json& price = part.at("unit_price");
  return text_of(part.at("quantity")) + " " + text_of(part.at("unit")) +
         (price.is_null() ? ", on request" : " at " + text_of(price));
}

std::string text_of(const Json& value) {
  if (value.is_null()) return "-";
  if (value.is_string()) return value.get<std::string>();
  if (value.is_array()) return list_text(value);
  if (value.is_object() && value.contains("origin")) return input_text(value);
  if (value.is_object() && value.contains("quantity")) return part_text(value);
  return value.dump();
}

Change change_of(std::string_view area, std::string name, const Json& before, const Json& after) {
  return {std::string(area), std::move(name), text_of(before),
          text_of(after),    before.dump(),   after.dump()};
}

Json member(const Json& object, std::string_view key) {
  const auto found = object.find(key);
  return found == object.end() ? Json() : *found;
}

/// Objects of a list by what `name` makes of each, in the order of the newer list, then the rest.
class Paired {
 public:
  template <class Name>
  Paired(const Json& before, const Json& after, Name name) {
    for (const Json& one : after) entry(name(one)).second = one;
    for (const Json& one : before) entry(name(one)).first = one;
  }
  const std::vector<std::pair<std::string, std::pair<Json, Json>>>& pairs() const { return pairs_; }

 private:
  std::pair<Json, Json>& entry(const std::string& name) {
    for (auto& [known, values] : pairs_) {
      if (known == name) return values;
    }
    pairs_.emplace_back(name, std::pair<Json, Json>());
    return pairs_.back().second;
  }
  std::vector<std::pair<std::string, std::pair<Json, Json>>> pairs_;
};

class Comparer {
 public:
  Comparer(const Json& before, const Json& after) : before_(before), after_(after) {}

  std::vector<Change> run() {
    for (const char* key : {"id", "revision", "title"}) {
      add("request", key, before_.at("request").at(key), after_.at("request").at(key));
    }
    add("request", "verdict", before_.at("verdict"), after_.at("verdict"));
    compare_inputs();
    compare_choice();
    compare_parts();
    compare_cost();
    compare_rest();
    return std::move(changes_);
  }

 private:
  void add(std::string_view area, std::string name, const Json& before, const Json& after) {
    if (before == after) return;
    changes_.push_back(change_of(area, std::move(name), before, after));
  }

  /// Only some members of an object; null for an object that is not there.
  static Json only(const Json& object, std::initializer_list<const char*> keys) {
    if (object.is_null()) return {};
    Json some = Json::object();
    for (const char* key : keys) {
      if (object.contains(key)) some[key] = object.at(key);
    }
    return some;
  }

  void compare_inputs() {
    const Paired inputs(before_.at("inputs"), after_.at("inputs"),
                        [](const Json& input) { return input.at("key").get<std::string>(); });
    const auto said = [](const Json& input) {
      return only(input, {"value", "unit", "low", "high", "origin"});
    };
    for (const auto& [key, pair] : inputs.pairs()) {
      add("inputs", key, said(pair.first), said(pair.second));
    }
  }

  void compare_scalars(std::string_view area, const std::string& prefix, const Json& before,
                       const Json& after) {
    for (const auto& [key, value] : after.items()) {
      if (!value.is_structured()) add(area, prefix + key, member(before, key), value);
    }
    for (const auto& [key, value] : before.items()) {
      if (!value.is_structured() && !after.contains(key)) add(area, prefix + key, value, {});
    }
  }

  static Json groups_of(const Json& root) {
    return root.contains("chosen") ? root.at("chosen").at("groups") : Json::array();
  }

  void compare_choice() {
    const Paired groups(groups_of(before_), groups_of(after_),
                        [](const Json& group) { return group.at("name").get<std::string>(); });
    for (const auto& [name, pair] : groups.pairs()) {
      compare_scalars("choice", name + ".", pair.first, pair.second);
      add("choice", name + ".channels", member(pair.first, "channels"),
          member(pair.second, "channels"));
    }
  }

  static Json list_of(const Json& root, const char* key) {
    return root.contains(key) ? root.at(key) : Json::array();
  }

  void compare_parts() {
    const Paired parts(list_of(before_, "bom"), list_of(after_, "bom"), [](const Json& line) {
      const auto number = line.at("part_number").get<std::string>();
      const auto designation = line.at("designation").get<std::string>();
      return number.empty() ? designation : number + " " + designation;
    });
    const auto said = [](const Json& line) {
      return only(line, {"quantity", "unit", "unit_price", "extended_price", "lead_time_days"});
    };
    for (const auto& [name, pair] : parts.pairs()) {
      add("parts", name, said(pair.first), said(pair.second));
    }
  }

  void compare_cost() {
    const Json nothing = Json::object();
    compare_scalars("cost", "", before_.contains("cost") ? before_.at("cost") : nothing,
                    after_.contains("cost") ? after_.at("cost") : nothing);
    for (const char* key : {"bom_total", "bom_unpriced"}) {
      add("cost", key, member(before_, key), member(after_, key));
    }
    const Json before = member(before_, "lead_time"), after = member(after_, "lead_time");
    compare_scalars("cost", "lead_time.", before.is_null() ? nothing : before,
                    after.is_null() ? nothing : after);
  }

  /// What else differs is named, with how many entries it had and has.
  void compare_rest() {
    const auto size = [](const Json& value) {
      return value.is_structured() ? Json(std::to_string(value.size()) + " entries") : value;
    };
    const auto look = [&](const std::string& key) {
      if (is_one_of(key, covered) || is_one_of(key, passing)) return;
      const Json before = member(before_, key), after = member(after_, key);
      if (before == after) return;
      changes_.push_back(change_of("other", key, size(before), size(after)));
    };
    for (const auto& [key, value] : after_.items()) look(key);
    for (const auto& [key, value] : before_.items()) {
      if (!after_.contains(key)) look(key);
    }
  }

  const Json& before_;
  const Json& after_;
  std::vector<Change> changes_;
};

IssueName name_of(const Json& root) {
  const Json& request = root.at("request");
  return {request.at("id").get<std::string>(), request.at("revision").get<std::string>(),
          request.at("date").get<std::string>()};
}

/// The value, or nullopt for a text that is no JSON of ours.
std::optional<Json> parsed(std::string_view text) try {
  Json root = Json::parse(text);
  overview_row_text(root);
  return root;
} catch (const Json::exception&) {
  return std::nullopt;
}

Json name_value(const IssueName& name) {
  return {{"id", name.id}, {"revision", name.revision}, {"date", name.date}};
}

}  // namespace

Compared compare_issues(std::string_view before, std::string_view after) {
  const std::optional<Json> first = parsed(before);
  if (!first) return {};
  const std::optional<Json> second = parsed(after);
  if (!second) return {std::nullopt, true};
  return {Comparison{name_of(*first), name_of(*second), Comparer(*first, *second).run()}, false};
}

std::string comparison_json(const Comparison& comparison) {
  Json changes = Json::array();
  for (const Change& change : comparison.changes) {
    changes.push_back({{"area", change.area},
                       {"name", change.name},
                       {"old", Json::parse(change.before_json)},
                       {"new", Json::parse(change.after_json)}});
  }
  return Json{{"same", comparison.changes.empty()},
              {"old", name_value(comparison.before)},
              {"new", name_value(comparison.after)},
              {"changes", changes}}
             .dump() +
         "\n";
}

}  // namespace output
