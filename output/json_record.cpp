/// Reads an issued JSON file back, as far as a later issue is compared with it.
#include <array>

#include "output/issue_record.h"
#include "output/json_parts.h"

namespace output {
namespace {

std::string text_of(const Json& object, const char* key) { return object.value(key, ""); }

std::optional<double> number_at(const Json& object, const char* key) {
  const auto found = object.find(key);
  if (found == object.end() || !found->is_number()) return std::nullopt;
  return found->get<double>();
}

calc::Input input_of(const Json& object) {
  calc::Input input;
  input.key = object.at("key").get<std::string>();
  const Json& value = object.at("value");
  if (value.is_number()) {
    input.value = value.get<double>();
  } else {
    input.text = value.get<std::string>();
  }
  input.unit = text_of(object, "unit");
  input.low = number_at(object, "low").value_or(input.value);
  input.high = number_at(object, "high").value_or(input.value);
  if (object.contains("low")) {
    // A demand shows its ends and an uncertainty its middle; the value tells which it was.
    const bool at_end = input.value == input.low || input.value == input.high;
    input.spread = at_end ? calc::Spread::demand : calc::Spread::uncertain;
  }
  return input;
}

calc::Assumption assumption_of(const Json& object) {
  calc::Assumption assumption;
  assumption.field = object.at("field").get<std::string>();
  const Json& value = object.at("value");
  if (value.is_number()) {
    assumption.value = value.get<double>();
  } else {
    assumption.text = value.get<std::string>();
  }
  assumption.unit = text_of(object, "unit");
  assumption.high = number_at(object, "high");
  return assumption;
}

std::optional<calc::Money> money_at(const Json& object, const char* key) {
  const std::optional<double> major = number_at(object, key);
  if (!major) return std::nullopt;
  return calc::to_money(*major);
}

calc::BomLine part_of(const Json& object) {
  calc::BomLine part;
  part.part_number = text_of(object, "part_number");
  part.designation = text_of(object, "designation");
  part.quantity = number_at(object, "quantity").value_or(0);
  part.unit = text_of(object, "unit");
  part.unit_price = money_at(object, "unit_price");
  return part;
}

calc::Notice notice_of(const Json& object) {
  calc::Notice notice;
  notice.code = object.at("code").get<std::string>();
  notice.field = text_of(object, "field");
  const Json units = object.value("units", Json::object());
  for (const auto& [name, value] : object.at("args").items()) {
    const std::string unit = text_of(units, name.c_str());
    if (value.is_number()) {
      notice.args.push_back({name, value.get<double>(), unit});
    } else {
      notice.args.push_back({name, value.get<std::string>(), unit});
    }
  }
  return notice;
}

EarlierIssue earlier_of(const Json& object) {
  return {text_of(object, "revision"), text_of(object, "date"), text_of(object, "verdict"),
          text_of(object, "sha256")};
}

/// A number of the JSON, how it is called and in which unit it is read.
struct Row {
  const char* key = "";
  const char* name = "";
  const char* unit = "";
  double factor = 1;
};

constexpr std::array<Row, 7> group_rows{{
    {"heads_total", "heads_total", ""},
    {"resolution_across_dpi", "resolution_across", "dpi"},
    {"resolution_along_dpi", "resolution_along", "dpi"},
    {"frequency_per_nozzle_hz", "frequency", "kHz", 1e-3},
    {"speed_limit_m_per_s", "speed_limit", "m/min", 60},
    {"drop_volume_pl", "drop_volume", "pL"},
    {"cover_fraction", "cover", "%", 100},
}};

void add_group(IssueRecord& record, const Json& group) {
  const std::string name = group.at("name").get<std::string>();
  for (const char* key : {"head", "mode"}) {
    record.figures.push_back({key, name, 0, "", text_of(group, key), false});
  }
  for (const Row& row : group_rows) {
    const std::optional<double> value = number_at(group, row.key);
    if (value) record.figures.push_back({row.name, name, *value * row.factor, row.unit, "", false});
  }
}

void add_figures(IssueRecord& record, const Json& root) {
  record.figures.push_back({"verdict", "", 0, "", record.verdict, false});
  if (!root.contains("chosen")) return;
  const Json& chosen = root.at("chosen");
  record.figures.push_back(
      {"heads_total", "", chosen.at("heads_total").get<double>(), "", "", false});
  for (const Json& group : chosen.at("groups")) add_group(record, group);
  if (!root.contains("cost")) return;
  for (const char* key : {"capital", "running_per_year", "ownership"}) {
    const std::optional<double> value = number_at(root.at("cost"), key);
    if (value) record.figures.push_back({key, "", *value, record.currency, "", true});
  }
  if (root.at("lead_time").is_object()) {
    record.figures.push_back(
        {"lead_time", "", root.at("lead_time").at("days").get<double>(), "d", "", false});
  }
  record.figures.push_back({"unpriced", "", root.at("bom_unpriced").get<double>(), "", "", false});
}

template <class Make>
auto list_of(const Json& root, const char* key, Make make) {
  std::vector<decltype(make(root))> list;
  if (!root.contains(key)) return list;
  for (const Json& object : root.at(key)) list.push_back(make(object));
  return list;
}

void read_head(IssueRecord& record, const Json& root) {
  const Json& request = root.at("request");
  record.revision = request.at("revision").get<std::string>();
  record.date = request.at("date").get<std::string>();
  record.source_sha256 = text_of(request, "source_sha256");
  record.verdict = root.at("verdict").get<std::string>();
  record.program = text_of(root.at("program"), "version");
  record.catalogue_date = text_of(root.at("catalogue"), "date");
  record.catalogue_sha256 = text_of(root.at("catalogue"), "used_sha256");
  record.currency = text_of(root, "currency");
}

}  // namespace

std::optional<IssueRecord> read_record(std::string_view json) try {
  const Json root = Json::parse(json);
  if (root.at("schema") != "swathspec/1") return std::nullopt;
  IssueRecord record;
  read_head(record, root);
  record.revisions = list_of(root, "revisions", earlier_of);
  for (const Json& input : root.at("inputs")) {
    if (input.at("origin") == "given") record.inputs.push_back(input_of(input));
  }
  record.assumptions = list_of(root, "assumptions", assumption_of);
  add_figures(record, root);
  record.parts = list_of(root, "bom", part_of);
  record.conditions = list_of(root, "conditions", notice_of);
  return record;
} catch (const Json::exception&) {
  return std::nullopt;  // damaged or foreign
}

}  // namespace output
