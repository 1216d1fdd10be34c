#include "tests/whole/support/recorded.h"

#include <nlohmann/json.hpp>
#include <stdexcept>

#include "output/json.h"

namespace whole {
namespace {

using Json = nlohmann::json;

RecordedInput input_of(const Json& json) {
  return {json.at("symbol").get<std::string>(), json.at("unit").get<std::string>(),
          json.at("origin").get<std::string>(), json.at("ref").get<std::string>(),
          json.at("value").get<double>()};
}

RecordedStep step_of(const Json& json) {
  RecordedStep step;
  const auto text = [&](const char* key) { return json.at(key).get<std::string>(); };
  step.id = text("id");
  step.kind = text("kind");
  step.symbol = text("symbol");
  step.formula = text("formula");
  step.unit = text("unit");
  step.source = text("source");
  step.tag = text("tag");
  step.validity = text("validity");
  step.value = json.at("value").get<double>();
  for (const Json& input : json.at("inputs")) step.inputs.push_back(input_of(input));
  return step;
}

}  // namespace

std::map<std::string, double> RecordedStep::values() const {
  std::map<std::string, double> all;
  for (const RecordedInput& input : inputs) {
    if (!all.emplace(input.symbol, input.value).second) {
      throw std::logic_error(id + ": symbol twice: " + input.symbol);
    }
  }
  return all;
}

std::vector<RecordedStep> recorded_trace(const calc::Specification& specification) {
  std::vector<RecordedStep> steps;
  const Json root = Json::parse(output::write_json(specification, {}));
  for (const Json& json : root.at("trace")) steps.push_back(step_of(json));
  return steps;
}

}  // namespace whole
