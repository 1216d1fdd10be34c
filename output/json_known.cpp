#include <stdexcept>
#include <utility>

#include "output/archive_known.h"
#include "output/json_parts.h"

namespace output {
namespace {

Json stamp_value(const Stamp& stamp) {
  return {stamp.size, stamp.inode, stamp.modified_ns, stamp.changed_ns};
}

Stamp stamp_from(const Json& value) {
  return {value.at(0).get<std::uint64_t>(), value.at(1).get<std::uint64_t>(),
          value.at(2).get<std::int64_t>(), value.at(3).get<std::int64_t>()};
}

Json file_value(const KnownFile& file) { return {hex(file.digest), stamp_value(file.stamp)}; }

Json file_value_or_null(const std::optional<KnownFile>& file) {
  return file ? file_value(*file) : Json();
}

Digest digest_at(const Json& value) {
  const auto digest = digest_from(value.get<std::string>());
  if (!digest) throw std::invalid_argument("no digest");
  return *digest;
}

KnownFile file_from(const Json& value) { return {digest_at(value.at(0)), stamp_from(value.at(1))}; }

Json finding_value(const intake::Diagnostic& finding) {
  return {finding.file,   finding.line,
          finding.column, finding.severity == intake::Severity::error,
          finding.code,   finding.message,
          finding.notes,  finding.hint,
          finding.field,  finding.source_line,
          finding.length, finding.line_cut};
}

intake::Diagnostic finding_from(const Json& value) {
  intake::Diagnostic finding;
  finding.file = value.at(0).get<std::string>();
  finding.line = value.at(1).get<int>();
  finding.column = value.at(2).get<int>();
  finding.severity = value.at(3).get<bool>() ? intake::Severity::error : intake::Severity::warning;
  finding.code = value.at(4).get<std::string>();
  finding.message = value.at(5).get<std::string>();
  finding.notes = value.at(6).get<std::vector<std::string>>();
  finding.hint = value.at(7).get<std::string>();
  finding.field = value.at(8).get<std::string>();
  finding.source_line = value.at(9).get<std::string>();
  finding.length = value.at(10).get<int>();
  finding.line_cut = value.at(11).get<int>();
  return finding;
}

Json request_value(const KnownRequest& request) {
  return {request.id,
          request.revision,
          request.own_date ? Json(*request.own_date) : Json(),
          request.line,
          request.column,
          static_cast<int>(request.verdict),
          request.issued_date,
          hex(request.content),
          json_list(request.findings, finding_value),
          request.index};
}

KnownRequest request_from(const Json& value) {
  KnownRequest request;
  request.id = value.at(0).get<std::string>();
  request.revision = value.at(1).get<std::string>();
  if (!value.at(2).is_null()) request.own_date = value.at(2).get<std::string>();
  request.line = value.at(3).get<int>();
  request.column = value.at(4).get<int>();
  request.verdict = static_cast<calc::Verdict>(value.at(5).get<int>());
  request.issued_date = value.at(6).get<std::string>();
  request.content = digest_at(value.at(7));
  request.index = value.at(9).get<std::size_t>();
  for (const Json& finding : value.at(8)) request.findings.push_back(finding_from(finding));
  return request;
}

KnownIssue issue_from(const Json& value) {
  KnownIssue issue;
  for (const IssueFile file : base_files) {
    issue.files.at(file) = file_from(value.at("files").at(file));
  }
  for (const IssueFile extra : extra_files) {
    const Json& file = value.at("files").at(extra);
    if (!file.is_null()) issue.files.at(extra) = file_from(file);
  }
  issue.content = digest_at(value.at("content_cbor"));
  issue.row = value.at("row").get<std::string>();
  return issue;
}

KnownSource source_from(const Json& value) {
  KnownSource source;
  source.key = digest_at(value.at("key"));
  source.total = value.at("total").get<std::size_t>();
  for (const Json& request : value.at("requests")) {
    source.requests.push_back(request_from(request));
  }
  return source;
}

/// Empty for a value that JSON cannot hold to the byte (text that is no UTF-8).
std::string line_of(const Json& value) try {
  return value.dump() + "\n";
} catch (const Json::type_error&) {
  return {};
}

}  // namespace

std::string known_line(std::string_view stem, const KnownIssue& issue) {
  return line_of({{"issue", stem},
                  {"files", json_list(issue.files, file_value_or_null)},
                  {"content_cbor", hex(issue.content)},
                  {"row", issue.row}});
}

std::string known_line(std::string_view path, const KnownSource& source) {
  return line_of({{"source", path},
                  {"key", hex(source.key)},
                  {"total", source.total},
                  {"requests", json_list(source.requests, request_value)}});
}

std::string known_line(const KnownOverview& overview) {
  return line_of({{"overview", hex(overview.key)},
                  {"html", file_value(overview.html)},
                  {"csv", file_value(overview.csv)}});
}

void KnownReader::take(std::string_view line) const try {
  const Json value = Json::parse(line);
  if (value.contains("issue")) {
    on_issue(value.at("issue").get<std::string>(), issue_from(value));
  } else if (value.contains("source")) {
    on_source(value.at("source").get<std::string>(), source_from(value));
  } else if (value.contains("overview")) {
    on_overview(
        {digest_at(value.at("overview")), file_from(value.at("html")), file_from(value.at("csv"))});
  }
} catch (const Json::exception&) {
  return;  // a line cut off or of another version: the next run looks for itself
} catch (const std::invalid_argument&) {
  return;
}

}  // namespace output
