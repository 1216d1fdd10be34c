#include <utility>

#include "output/json_overview.h"
#include "output/json_parts.h"
#include "output/overview_row.h"

namespace output {
namespace {

FileDigest file_of(const Json& root, const char* kind) {
  const Json& file = root.at("files").at(kind);
  return {file.at("name").get<std::string>(), file.at("sha256").get<std::string>()};
}

/// Takes out what may differ between two issues of one specification.
void strip(Json& root) {
  root.erase("program");
  root.erase("files");
  root.erase("revisions");
  root.at("request").erase("date");
  root.at("request").erase("source_sha256");
  for (Json& input : root.at("inputs")) {
    for (const char* key : {"file", "line", "column"}) input.erase(key);
  }
}

}  // namespace

IssuedJson issued_from(Json root) {
  IssuedJson issued;
  issued.verdict = root.at("verdict").get<std::string>();
  if (root.contains("files")) {
    issued.pdf = file_of(root, "pdf");
    issued.bom_csv = file_of(root, "bom_csv");
  }
  issued.row = overview_row_text(root);
  strip(root);
  std::string packed;  // CBOR: as exact as the text, and made in a third of its time
  Json::to_cbor(root, packed);
  issued.content = digest_of(packed);
  return issued;
}

std::optional<IssuedJson> read_issued(std::string_view json) try {
  IssuedJson issued = issued_from(Json::parse(json));
  overview_row(issued.row);  // a text of ours gives a row
  return issued;
} catch (const Json::exception&) {
  return std::nullopt;  // damaged or foreign: whatever it is, it is not this specification
}

/// Keeps none of the rest, which is nearly all of it.
std::optional<IssuedFiles> issued_files(std::string_view json) try {
  bool wanted = false;
  const auto keep = [&](int depth, Json::parse_event_t event, Json& parsed) {
    if (depth == 1 && event == Json::parse_event_t::key) wanted = parsed == "files";
    return depth == 0 || wanted;
  };
  const Json root = Json::parse(json, keep);
  return IssuedFiles{file_of(root, "pdf"), file_of(root, "bom_csv")};
} catch (const Json::exception&) {
  return std::nullopt;
}

IssuedJson issued_json(const calc::Specification& specification, const JsonFacts& facts) {
  return issued_from(whole_json(specification, facts));
}

}  // namespace output
