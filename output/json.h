/// The specification as JSON, schema "swathspec/1": every figure of a document for other programs.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/specification.h"
#include "output/digest.h"
#include "output/issue_record.h"

namespace output {

struct FileDigest {
  std::string name, sha256;
};

/// What the JSON says beside the specification.
struct JsonFacts {
  std::string version;        ///< of the program
  std::string source_sha256;  ///< of the request's text
  std::optional<FileDigest> pdf, bom_csv;
  std::string templates_sha256{};         ///< of the user's own templates; empty without
  std::vector<EarlierIssue> revisions{};  ///< issues it replaces, oldest first
};

/// The whole file, keys in the public order, ends in a line feed. Throws std::logic_error when a
/// figure is not finite.
std::string write_json(const calc::Specification& specification, const JsonFacts& facts);

/// What an issued JSON file says: the digest of its content less everything that may differ between
/// two issues of one specification (date, program version, files, earlier issues, and where in
/// which source the inputs stand), and its row of the overview (json_overview.h).
struct IssuedJson {
  Digest content{};
  std::string verdict;
  std::optional<FileDigest> pdf, bom_csv;
  std::string row;
};
/// nullopt when the text is no JSON of ours.
std::optional<IssuedJson> read_issued(std::string_view json);
/// What read_issued would say of the file that write_json makes of the same.
IssuedJson issued_json(const calc::Specification& specification, const JsonFacts& facts);
/// Both at once.
struct WrittenJson {
  std::string text;
  IssuedJson said;
};
WrittenJson write_issue(const calc::Specification& specification, const JsonFacts& facts);

/// Only the files an issued JSON names; nullopt as above.
struct IssuedFiles {
  FileDigest pdf, bom_csv;
};
std::optional<IssuedFiles> issued_files(std::string_view json);

/// SHA-256 of the sorted `row.field=value` lines of every catalogue value in the specification.
std::string used_catalogue_digest(const calc::Specification& specification);

}  // namespace output
