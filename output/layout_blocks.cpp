#include "output/layout_blocks.h"

#include <algorithm>
#include <span>

#include "output/drawing.h"
#include "output/layout_contents.h"
#include "output/layout_note.h"
#include "output/table.h"

namespace output {
namespace {

constexpr double paragraph_room = 5.5;  // pt
constexpr double item_room = 2.5;
constexpr double list_indent = 15;
constexpr double marker_indent = 11;
constexpr double marker_gap = 4.5;  // between a number or bullet and its text
constexpr double narrowest = 120;   // lists nested deeper are not indented further

bool is_block(const Node& node) { return node.name == "p" || node.name == "list"; }

void set_section(LayoutContext& context, const Column& column, const Node& section) {
  const SectionEntry& entry = context.sections.at(context.next_section++);
  const bool turns = flag_of(section, "landscape");
  if (turns && entry.level > 1) throw MarkupError("markup: landscape is for sections of level 1");
  context.landscape = turns || context.landscape;
  const Column own = turns ? context.text_column() : column;
  Column inner = own;
  inner.wide = own.wide || turns || flag_of(section, "wide");
  set_heading(context, own, entry);
  set_blocks(context, inner, section);
  if (turns) context.landscape = false;
}

/// `introduces`: a table or figure follows, which its text stays with. `between`: it stands between
/// a heading and a table; broken, the heading would be left behind with a line or two.
void set_block(LayoutContext& context, const Column& column, const Node& node, bool introduces,
               bool between) {
  if (node.name == "section") {
    set_section(context, column, node);
    return;
  }
  context.flow.clear();
  if (node.name == "p") {
    std::vector<Slice>& before = context.story.slices;
    if (flag_of(node, "after") && !before.empty()) before.back().keep = true;
    context.leave(paragraph_room);
    set_paragraph(context, column, node.children, body_style(context),
                  {node.get("id"), node.get("key"), {}, 0, introduces, between});
    context.leave(paragraph_room);
  } else if (node.name == "list") {
    set_list(context, column, node);
    context.leave(paragraph_room);
  } else if (node.name == "note") {
    set_note(context, column, node);
  } else if (node.name == "table") {
    set_table(context, column, node);
  } else if (node.name == "figure") {
    set_figure(context, column, node);
  } else if (node.name == "contents") {
    set_contents(context, column, node);
  } else if (node.name == "front") {
    set_blocks(context, column, node);
  } else if (node.name == "newpage") {
    context.break_page();
  }
}

/// The number or bullet before an item, as a text of the flow.
Range marker_of(LayoutContext& context, bool ordered, int number) {
  context.flow.open();
  context.flow.append(ordered ? std::to_string(number) + "." : "•", body_style(context));
  return context.flow.close();
}

}  // namespace

void set_blocks(LayoutContext& context, const Column& column, const Node& parent) {
  const std::vector<Node>& all = parent.children;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const bool introduces =
        i + 1 < all.size() && (all[i + 1].name == "table" || all[i + 1].name == "figure");
    const bool between = introduces && i == 0 && parent.name == "section" && all[1].name == "table";
    set_block(context, column, all[i], introduces, between);
  }
}

void set_mixed(LayoutContext& context, const Column& column, const Node& node,
               TextOptions options) {
  const std::span<const Node> all(node.children);
  for (std::size_t i = 0; i < all.size();) {
    std::size_t end = i;
    while (end < all.size() && !is_block(all[end])) ++end;
    const std::size_t before = context.story.slices.size();
    if (end > i) {
      set_paragraph(context, column, all.subspan(i, end - i), body_style(context), options);
      i = end;
    } else if (all[i].name == "list") {
      set_list(context, column, all[i++]);
    } else {
      const Node& inner = all[i++];
      if (options.id.empty()) options.id = inner.get("id");
      if (options.keys.empty()) options.keys = inner.get("key");
      set_paragraph(context, column, inner.children, body_style(context), options);
    }
    if (context.story.slices.size() > before) {
      options = {};
      context.leave(item_room);
    }
  }
}

void set_list(LayoutContext& context, const Column& column, const Node& list) {
  const bool ordered = flag_of(list, "ordered");
  const auto items = static_cast<int>(list.children.size());
  const double marker_width = context.flow.width(marker_of(context, ordered, items)) + marker_gap;
  const double indent = std::max(list_indent, marker_width);
  Column inner = column;
  if (inner.width > narrowest) {
    inner.x += indent;
    inner.width -= indent;
  }
  int number = 0;
  for (const Node& item : list.children) {
    context.leave(item_room);
    const Range marker = marker_of(context, ordered, ++number);
    set_mixed(context, inner, item,
              {item.get("id"), item.get("key"), marker,
               std::max(marker_indent, context.flow.width(marker) + marker_gap), false});
    context.leave(item_room);
  }
}

}  // namespace output
