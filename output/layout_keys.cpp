#include "output/layout_keys.h"

#include <algorithm>
#include <string>

namespace output {
namespace {

/// A key of which no line ends at a hyphen within: its file's name stays whole.
std::string kept_whole(std::string_view key) {
  std::string text;
  for (const char byte : key) {
    text += byte;
    if (byte == '-') text += "\xE2\x81\xA0";  // U+2060, the word joiner
  }
  return text;
}

/// Takes keys into the open text, blank separated; a key that names an anchor becomes a link.
void append_each(LayoutContext& context, std::string_view keys) {
  for (std::string_view key = take_key(keys); !key.empty(); key = take_key(keys)) {
    InlineStyle style{Face::text, context.sizes().key, 0, {}, nullptr};
    const auto anchor = context.ids.find(key);
    if (anchor != context.ids.end()) {
      style.link = &*anchor;
      style.colour = context.style.accent;
    }
    context.flow.append(kept_whole(key), style);
    style.link = nullptr;
    context.flow.append(" ", style);
  }
}

}  // namespace

std::string_view take_key(std::string_view& keys) {
  constexpr std::string_view blanks = " \t\n\r";
  keys.remove_prefix(std::min(keys.find_first_not_of(blanks), keys.size()));
  const std::size_t end = std::min(keys.find_first_of(blanks), keys.size());
  const std::string_view key = keys.substr(0, end);
  keys.remove_prefix(end);
  return key;
}

double key_pitch(const LayoutContext& context) { return context.sizes().key * 1.25; }

int set_keys(LayoutContext& context, std::string_view keys, double first_baseline) {
  context.flow.open();
  append_each(context, keys);
  std::vector<Line> lines;
  break_lines(context.flow, context.flow.close(), context.style.key_column,
              context.style.key_column, lines);
  if (lines.empty()) return -1;
  Story& story = context.story;
  const double pitch = key_pitch(context);
  const double base = baseline(context.measurer.fonts(), context.sizes().key, pitch);
  story.keys.push_back({static_cast<int>(story.key_lines.size()), static_cast<int>(lines.size()),
                        first_baseline - base});
  for (const Line& line : lines) {
    const std::size_t first = story.items.size();
    emit_line(context.flow, line, context.key_left(), base, story.items);
    story.key_lines.push_back({first, story.items.size()});
  }
  return static_cast<int>(story.keys.size()) - 1;
}

void append_keys(LayoutContext& context, std::string_view keys) {
  InlineStyle style{Face::text, context.sizes().key, 0, {}, nullptr};
  context.flow.append(" ", style);
  append_each(context, keys);
}

}  // namespace output
