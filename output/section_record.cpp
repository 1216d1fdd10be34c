/// What the paper alone needs to be made again: the request's text and the digests of all inputs.
#include <algorithm>
#include <cstddef>

#include "output/compose_text.h"
#include "output/digest.h"
#include "output/json.h"
#include "output/section_list.h"
#include "output/version.h"

namespace output {
namespace {

constexpr std::string_view no_break = "\xC2\xA0";

/// A line as it stands: blanks at its beginning and all but one of several are kept by no-break
/// spaces, since a run of white space is one blank in markup. A tabulator is four of them.
std::string kept_blanks(std::string_view line) {
  std::string text;
  bool after_blank = true;
  for (const char byte : line) {
    if (byte == '\t') {
      for (int i = 0; i < 4; ++i) text += no_break;
    } else if (byte == ' ' && after_blank) {
      text += no_break;
    } else {
      text += byte;
    }
    after_blank = byte == ' ' || byte == '\t';
  }
  return text;
}

/// The request's file as the inputs name it: from the folder named, whatever the program's own.
std::string request_file(const Context& c) {
  const auto given = [](const calc::Input& input) {
    return input.origin.kind == calc::OriginKind::given && !input.origin.file.empty();
  };
  const auto found = std::find_if(c.spec.inputs.begin(), c.spec.inputs.end(), given);
  return found == c.spec.inputs.end() ? c.request.where.file : found->origin.file;
}

void add_lines(const Context& c, Values& values) {
  std::string_view text = c.matter.source;
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  calc::Origin place{calc::OriginKind::given, request_file(c), c.matter.source_line, 1, {}};
  while (!text.empty()) {
    const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
    const bool two = end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n';
    Values& line = values.add("LINE");
    line.set("ANCHOR", place_key(place));
    line.set("NUMBER", std::to_string(place.line++));
    line.set("TEXT", kept_blanks(text.substr(0, end)));
    text.remove_prefix(std::min(end + (two ? 2 : 1), text.size()));
  }
}

int lines_in(std::string_view text) {
  int lines = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
    const bool two = text.substr(end).starts_with("\r\n");
    text.remove_prefix(std::min(end + (two ? 2 : 1), text.size()));
    ++lines;
  }
  return lines;
}

/// The file, and which of its lines are printed where it holds other requests too.
void set_file(const Context& c, Values& values) {
  const std::string file = request_file(c);
  const std::string& digest = c.matter.source_sha256;
  if (digest.empty() || sha256(c.matter.source) == digest) {
    values.set_markup("FILE", escaped(file));
    return;
  }
  const int first = c.matter.source_line;
  const int last = first + std::max(1, lines_in(c.matter.source)) - 1;
  values.set_markup("FILE", c.words("record.part", {{"FIRST", std::to_string(first)},
                                                    {"LAST", std::to_string(last)},
                                                    {"FILE", file}}));
}

/// The digest of the values used of the catalogue, or that there are none.
void set_catalogue(const Context& c, Values& values) {
  const auto& inputs = c.spec.inputs;
  const bool used = std::any_of(inputs.begin(), inputs.end(), [](const calc::Input& input) {
    return input.origin.kind == calc::OriginKind::catalogue;
  });
  if (used) values.add("WITH_CATALOGUE");
  values.set_markup("CATALOGUE", used
                                     ? "<code>" + escaped(used_catalogue_digest(c.spec)) + "</code>"
                                     : c.words("record.none_used"));
}

}  // namespace

std::string record_section(const Context& c) {
  if (c.matter.source.empty()) return {};
  Values values;
  set_file(c, values);
  values.set("VERSION", version);
  values.set("DATE", c.spec.date);
  values.set("REQUEST", c.matter.source_sha256);
  set_catalogue(c, values);
  if (c.matter.replaced) values.add("PREVIOUS").set("DIGEST", c.matter.replaced->issue.sha256);
  add_lines(c, values);
  return c.expand("record", values);
}

}  // namespace output
