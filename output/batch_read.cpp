#include "output/batch_read.h"

#include <cerrno>
#include <utility>

namespace output {
namespace {

std::string_view line_of(std::string_view text, int number) {
  for (; number > 1; --number) {
    const std::size_t end = text.find('\n');
    if (end == std::string_view::npos) return {};
    text.remove_prefix(end + 1);
  }
  return text.substr(0, text.find_first_of("\r\n"));
}

}  // namespace

SourceText load_source(Os& os, const Source& source) {
  const bool is_input = source.path == "-";
  SourceText loaded{source.path,
                    is_input ? "<stdin>" : source.path,
                    source.name,
                    is_input ? os.read_input() : os.read_file(source.path),
                    {}};
  loaded.digest = digest_of(loaded.text);
  return loaded;
}

std::shared_ptr<const ReadSource> read_source(SourceText source) {
  auto read = std::make_shared<ReadSource>(ReadSource{std::move(source), {}});
  read->file = intake::read_requests(read->shown, read->text);
  const std::string digest = hex(read->digest);
  for (intake::ReadRequest& request : read->file.requests) {
    if (request.request.source_sha256.empty()) request.request.source_sha256 = digest;
  }
  return read;
}

std::shared_ptr<const ReadSource> unread_source(SourceText source) {
  return std::make_shared<ReadSource>(ReadSource{std::move(source), {}});
}

void add_source_lines(intake::Diagnostics& findings, std::string_view file, std::string_view text) {
  for (intake::Diagnostic& finding : findings) {
    if (!finding.source_line.empty() || finding.file != file) continue;
    finding.source_line = line_of(text, finding.line);
  }
}

Fault unread(const Source& source, const OsError& error) {
  const std::string shown = source.path == "-" ? "<stdin>" : source.path;
  return {file_finding(unreadable, shown, error.what()),
          error.code == ENOENT ? Exit::no_input : Exit::io};
}

Fault requestless(const std::string& root, bool is_catalogue) {
  if (is_catalogue) {
    return {file_finding(without_request, root, "this is a catalogue, no request",
                         "name the requests, and the catalogue with -c " + root),
            Exit::no_input};
  }
  return {file_finding(without_request, root, "there is no request in it",
                       "a folder is searched for files named *.xml and *.ini"),
          Exit::no_input};
}

}  // namespace output
