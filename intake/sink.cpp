#include "intake/sink.h"

#include <algorithm>
#include <utility>

#include "intake/codes.h"

namespace intake {
namespace {

constexpr std::size_t most_findings = 200;
constexpr std::size_t longest_line = 160;  // bytes

/// The start of the code point `count` places before `offset`, not before `least`.
std::size_t back(std::string_view text, std::size_t offset, std::size_t least, int count) {
  while (offset > least && count > 0) {
    --offset;
    if ((static_cast<unsigned char>(text[offset]) & 0xC0U) != 0x80U) --count;
  }
  return offset;
}

/// The line, or of a very long one the part around `offset`, with what was cut before it.
void set_excerpt(Diagnostic& d, const SourceText& text, std::size_t offset) {
  const std::string_view line = text.line(d.line);
  if (line.size() <= longest_line) {
    d.source_line = line;
    return;
  }
  const auto start = static_cast<std::size_t>(line.data() - text.text().data());
  const std::size_t from = back(text.text(), std::min(offset, start + line.size()), start, 60);
  std::size_t to = std::min(from + longest_line, start + line.size());
  while (to < start + line.size() && decode(text.text(), to).length == 0) --to;
  d.line_cut = text.column_of(from) - 1;
  d.source_line = text.text().substr(from, to - from);
}

}  // namespace

Diagnostic& Sink::add(std::string_view code, Place where, std::string message) {
  if (findings_.size() >= most_findings) return overflow_;
  const bool last = findings_.size() + 1 == most_findings;
  const std::size_t offset = std::min(where.offset, text_->text().size());
  std::string_view marked = text_->text().substr(offset, std::min(where.length, longest_line));
  marked = marked.substr(0, std::min(marked.find_first_of("\r\n"), marked.size()));
  Diagnostic d;
  d.file = text_->name();
  d.line = text_->line_of(offset);
  d.column = text_->column_of(offset);
  d.length = std::max(1, code_points(marked));
  d.code = last ? code::too_much : code;
  d.severity = d.code.front() == 'W' ? Severity::warning : Severity::error;
  d.message = last ? "further faults of this text are not shown" : std::move(message);
  if (last) d.hint = "mend the faults above, then check again";
  set_excerpt(d, *text_, offset);
  findings_.push_back(std::move(d));
  return last ? overflow_ : findings_.back();
}

Diagnostic& Sink::add(std::string_view code, const calc::Origin& origin, std::string message) {
  return add(code, {text_->offset_of(origin.line, origin.column), origin.raw.size()},
             std::move(message));
}

bool Sink::full() const { return findings_.size() >= most_findings; }

Diagnostics Sink::take() {
  std::stable_sort(findings_.begin(), findings_.end(), [](const auto& a, const auto& b) {
    return std::pair(a.line, a.column) < std::pair(b.line, b.column);
  });
  return std::exchange(findings_, {});
}

std::string place_text(const calc::Origin& origin) {
  return origin.file + ":" + std::to_string(origin.line) + ":" + std::to_string(origin.column);
}

}  // namespace intake
