#include "tests/whole/support/figures.h"

#include <nlohmann/json.hpp>

#include "output/json.h"

namespace whole {
namespace {

using Json = nlohmann::json;

bool differ(const Json& a, const Json& b, const std::string& key) {
  if (a.contains(key) != b.contains(key)) return true;
  return a.contains(key) && a.at(key) != b.at(key);
}

}  // namespace

std::string figures(const calc::Specification& specification) {
  Json root = Json::parse(output::write_json(specification, {}));
  root.erase("inputs");
  root.erase("files");
  root.at("request").erase("source_sha256");
  root.at("catalogue").erase("used_sha256");
  return root.dump();
}

std::string without_places(const std::string& json) {
  Json root = Json::parse(json);
  root.at("request").erase("source_sha256");
  for (Json& input : root.at("inputs")) {
    for (const char* key : {"file", "line", "column"}) input.erase(key);
  }
  return root.dump();
}

std::set<std::string> differing_keys(const std::string& a, const std::string& b) {
  const Json first = Json::parse(a);
  const Json second = Json::parse(b);
  std::set<std::string> keys;
  for (const Json* root : {&first, &second}) {
    for (const auto& item : root->items()) {
      if (differ(first, second, item.key())) keys.insert(item.key());
    }
  }
  return keys;
}

std::string differences(const std::string& a, const std::string& b, int most) {
  std::string text;
  for (const Json& change : Json::diff(Json::parse(a), Json::parse(b))) {
    if (most-- == 0) return text + "...";
    text += change.at("op").get<std::string>() + " " + change.at("path").get<std::string>() + "; ";
  }
  return text;
}

}  // namespace whole
