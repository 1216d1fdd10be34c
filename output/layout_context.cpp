#include "output/layout_context.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace output {

Column LayoutContext::text_column() const {
  const double width =
      page_width() - style.margin_left - style.margin_right - style.key_column - style.key_gap;
  return {style.margin_left, width, -1, false};
}

Column LayoutContext::wide_column() const {
  return {style.margin_left, page_width() - style.margin_left - style.margin_right, -1, true};
}

Slice& LayoutContext::begin_slice(Box::Kind kind, const Column& column) {
  Slice slice;
  slice.kind = kind;
  slice.x = column.x;
  slice.width = column.width;
  slice.before = room_;
  slice.new_page = break_ && !break_before_headings();
  slice.landscape = landscape;
  const bool turns = !story.slices.empty() && story.slices.back().landscape != landscape;
  slice.new_page = slice.new_page || turns;
  slice.wide = column.x + column.width > key_left();
  slice.frame = column.frame;
  slice.items.first = story.items.size();
  room_ = 0;
  break_ = false;
  story.slices.push_back(slice);
  return story.slices.back();
}

/// Moves a page break asked for behind headings before them; false when there are none.
bool LayoutContext::break_before_headings() {
  std::size_t first = story.slices.size();
  while (first > 0 && story.slices[first - 1].kind == Box::Kind::heading) --first;
  if (first == story.slices.size()) return false;
  story.slices[first].new_page = true;
  return true;
}

double LayoutContext::room_beside_kept() const {
  double held = room_;
  for (std::size_t i = story.slices.size(); i > 0 && story.slices[i - 1].keep; --i) {
    held += story.slices[i - 1].before + story.slices[i - 1].height;
  }
  return body_height() - std::min(held, body_height() / 2);
}

void LayoutContext::end_slice(double height) {
  story.slices.back().height = height;
  story.slices.back().items.last = story.items.size();
}

void LayoutContext::anchor_next(std::string_view id) {
  if (id.empty()) return;
  story.anchors.push_back({std::string(id), static_cast<int>(story.slices.size())});
}

double baseline(const Fonts& fonts, double size, double pitch) {
  const double ascent = fonts.ascent(Face::text) * size / 1000;
  const double descent = fonts.descent(Face::text) * size / 1000;
  return (pitch - ascent - descent) / 2 + ascent;
}

double parse_number(std::string_view text, std::string_view what) {
  double value = 0;
  const char* const end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, value);
  if (error != std::errc{} || stop != end || !std::isfinite(value)) {
    throw MarkupError("markup: " + std::string(what) + " is not a number: \"" + std::string(text) +
                      "\"");
  }
  return value;
}

double number_of(const Node& node, const std::string& attribute) {
  return parse_number(node.get(attribute), attribute + " of <" + node.name + ">");
}

double number_of(const Node& node, const std::string& attribute, double fallback) {
  return node.attributes.contains(attribute) ? number_of(node, attribute) : fallback;
}

bool flag_of(const Node& node, const std::string& attribute) {
  const std::string_view value = node.get(attribute, "no");
  if (value != "yes" && value != "no") {
    throw MarkupError("markup: " + attribute + " of <" + node.name + "> is neither yes nor no");
  }
  return value == "yes";
}

}  // namespace output
