#include "output/json_overview.h"

#include <algorithm>
#include <utility>

#include "output/overview_row.h"

namespace output {
namespace {

Json customer_of(const Json& root) {
  for (const Json& input : root.at("inputs")) {
    if (input.at("key") == "customer.organisation") return input.at("value");
  }
  return "";
}

Json heads_of(const Json& root) {
  Json heads = Json::array();
  if (!root.contains("chosen")) return heads;
  for (const Json& group : root.at("chosen").at("groups")) {
    const Json& head = group.at("head");
    if (std::find(heads.begin(), heads.end(), head) == heads.end()) heads.push_back(head);
  }
  return heads;
}

/// The value at a path of keys; null where the way ends.
Json found(const Json& root, std::initializer_list<const char*> keys) {
  const Json* at = &root;
  for (const char* key : keys) {
    if (!at->is_object() || !at->contains(key)) return {};
    at = &at->at(key);
  }
  return *at;
}

Json questions_of(const Json& root) {
  Json questions = Json::array();
  for (const Json& question : root.at("questions")) {
    questions.push_back({question.at("code"), question.at("field")});
  }
  return questions;
}

template <class T>
std::optional<T> optional_of(const Json& value) {
  if (value.is_null()) return std::nullopt;
  return value.get<T>();
}

}  // namespace

std::string overview_row_text(const Json& root) {
  const Json& request = root.at("request");
  Json row =
      Json::array({request.at("id"), request.at("revision"), request.at("date"),
                   request.at("title"), customer_of(root), root.at("verdict"), heads_of(root)});
  row.push_back(found(root, {"chosen", "heads_total"}));
  row.push_back(found(root, {"cost", "capital"}));
  row.push_back(found(root, {"cost", "ownership"}));
  row.push_back(found(root, {"currency"}));
  row.push_back(found(root, {"bom_unpriced"}));
  row.push_back(found(root, {"lead_time", "days"}));
  row.push_back(questions_of(root));
  return row.dump();
}

std::vector<QuestionKind> kinds_of(const std::vector<OpenQuestion>& questions) {
  std::vector<QuestionKind> kinds;
  for (const OpenQuestion& question : questions) {
    auto kind = std::find_if(kinds.begin(), kinds.end(),
                             [&](const QuestionKind& k) { return k.code == question.code; });
    if (kind == kinds.end()) kind = kinds.insert(kinds.end(), {question.code, {}});
    if (!question.field.empty()) kind->fields.push_back(question.field);
  }
  return kinds;
}

OverviewRow overview_row(std::string_view text) {
  const Json values = Json::parse(text);
  std::size_t next = 0;
  const auto take = [&]() -> const Json& { return values.at(next++); };
  OverviewRow row;
  for (std::string* field :
       {&row.id, &row.revision, &row.date, &row.title, &row.customer, &row.verdict}) {
    *field = take().get<std::string>();
  }
  row.heads = take().get<std::vector<std::string>>();
  row.heads_total = optional_of<int>(take());
  row.capital = optional_of<double>(take());
  row.ownership = optional_of<double>(take());
  row.currency = optional_of<std::string>(take()).value_or("");
  row.unpriced = optional_of<int>(take());
  row.lead_time_days = optional_of<double>(take());
  for (const Json& question : take()) {
    row.questions.push_back({question.at(0).get<std::string>(), question.at(1).get<std::string>()});
  }
  return row;
}

}  // namespace output
