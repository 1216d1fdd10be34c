#include "output/json_parts.h"

namespace output {
namespace {

std::optional<FileDigest> file_of(const Json& root, const char* kind) {
  const Json& file = root.at("files").at(kind);
  return FileDigest{file.at("name").get<std::string>(), file.at("sha256").get<std::string>()};
}

/// Takes out what may differ between two issues of one specification.
void strip(Json& root) {
  root.erase("program");
  root.erase("files");
  root.at("request").erase("date");
  root.at("request").erase("source_sha256");
  for (Json& input : root.at("inputs")) {
    for (const char* key : {"file", "line", "column"}) input.erase(key);
  }
}

}  // namespace

std::optional<IssuedJson> read_issued(std::string_view json) try {
  Json root = Json::parse(json);
  IssuedJson issued;
  issued.verdict = root.at("verdict").get<std::string>();
  if (root.contains("files")) {
    issued.pdf = file_of(root, "pdf");
    issued.bom_csv = file_of(root, "bom_csv");
  }
  strip(root);
  issued.content = root.dump();
  return issued;
} catch (const Json::exception&) {
  return std::nullopt;  // damaged or foreign: whatever it is, it is not this specification
}

}  // namespace output
