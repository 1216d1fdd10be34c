#include "output/layout_contents.h"

#include <map>

#include "output/drawing_shapes.h"
#include "output/layout_text.h"

namespace output {
namespace {

constexpr double indent = 22;        // pt a level; the number stands in it
constexpr double page_room = 26;     // for the page number
constexpr double leader_least = 12;  // a shorter leader is left out
const std::string contents_anchor = "#contents";

InlineStyle entry_style(const LayoutContext& context, const SectionEntry& entry) {
  InlineStyle style = body_style(context);
  if (entry.level == 1) style.face = Face::text_bold;
  return style;
}

void add_leader(LayoutContext& context, double from, double to, double y) {
  if (to - from < leader_least) return;
  Path leader = ruled({from, y}, {to, y}, context.style.rule, 0.6);
  leader.stroke->dash = {1, 3};
  context.story.items.emplace_back(leader);
}

void add_page_reference(LayoutContext& context, const SectionEntry& entry, const InlineStyle& style,
                        double right, double y) {
  context.story.references.push_back({context.story.items.size(), right, entry.id});
  context.story.items.emplace_back(TextRun{right, y, 0, style.size, 0, style.face, {}, ""});
}

void set_entry(LayoutContext& context, const Column& column, const SectionEntry& entry) {
  const InlineStyle style = entry_style(context, entry);
  const double pitch = context.pitch(style.size);
  const double base = baseline(context.measurer.fonts(), style.size, pitch);
  const double left = column.x + indent * (entry.level - 1);
  const double text_left = left + indent + 4.0 * (entry.level - 1);
  const double right = column.x + column.width;
  context.flow.clear();
  context.flow.open();
  context.flow.append(entry.number, style);
  const Range number = context.flow.close();
  context.flow.open();
  context.flow.append(entry.title, style);
  const double width = right - page_room - text_left;
  context.lines.clear();
  break_lines(context.flow, context.flow.close(), width, width, context.lines);
  if (context.lines.empty()) context.lines.push_back({});

  context.leave(entry.level == 1 ? 4 : 0);
  context.begin_slice(Box::Kind::text, column);
  emit_line(context.flow, {number.first, number.last, 0, false}, left, base, context.story.items);
  double y = base;
  for (const Line& line : context.lines) {
    emit_line(context.flow, line, text_left, y, context.story.items);
    y += pitch;
  }
  y -= pitch;
  add_leader(context, text_left + context.lines.back().width + 5, right - page_room + 4, y);
  add_page_reference(context, entry, style, right, y);
  const double height = pitch * static_cast<double>(context.lines.size());
  context.story.items.emplace_back(Link{left, 0, right - left, height, entry.id});
  context.end_slice(height);
}

void set_contents_title(LayoutContext& context, const Column& column, std::string_view title) {
  if (title.empty()) return;
  const double size = 1.46 * context.style.body_size;
  context.flow.clear();
  context.flow.open();
  context.flow.append(title, {Face::text_bold, size, 0, context.style.accent, nullptr});
  const Range text = context.flow.close();
  const std::size_t first = context.story.slices.size();
  set_lines(context, column, text, size, {contents_anchor, {}, {}, 0, true});
  if (context.story.slices.size() == first) return;
  for (std::size_t i = first; i < context.story.slices.size(); ++i) {
    context.story.slices[i].kind = Box::Kind::heading;
  }
  context.story.bookmarks.push_back({1, std::string(title), contents_anchor});
  context.leave(4);
}

}  // namespace

void set_contents(LayoutContext& context, const Column& column, const Node& contents) {
  const double depth = number_of(contents, "depth", 2);
  context.leave(18);
  const std::size_t first = context.story.slices.size();
  set_contents_title(context, column, contents.get("title"));
  for (const SectionEntry& entry : context.sections) {
    if (entry.level <= depth) set_entry(context, column, entry);
  }
  // Contents that fit on one page stand on one page.
  std::vector<Slice>& slices = context.story.slices;
  double height = 0;
  for (std::size_t i = first; i < slices.size(); ++i) height += slices[i].before + slices[i].height;
  if (height <= context.body_height()) {
    for (std::size_t i = first; i + 1 < slices.size(); ++i) slices[i].keep = true;
  }
  context.leave(14);
}

void write_page_numbers(LayoutContext& context, const std::vector<Anchor>& anchors) {
  std::map<std::string_view, int> pages;
  for (const Anchor& anchor : anchors) pages.emplace(anchor.name, anchor.page);
  for (const PageReference& reference : context.story.references) {
    auto& run = std::get<TextRun>(context.story.items.at(reference.item));
    run.text = std::to_string(pages.at(reference.anchor) + 1);
    for (const char digit : run.text) {
      const Metrics metrics = context.measurer.of(run.face, static_cast<char32_t>(digit));
      run.width += metrics.advance * run.size / 1000;
    }
    run.x = reference.right - run.width;
  }
}

}  // namespace output
