#include "output/layout.h"

#include <array>

#include "output/layout_blocks.h"
#include "output/layout_contents.h"
#include "output/layout_context.h"
#include "output/layout_furniture.h"
#include "output/layout_keys.h"
#include "output/layout_pages.h"
#include "output/layout_plan.h"
#include "output/layout_text.h"

namespace output {
namespace {

void add_id(LayoutContext& context, std::string_view id) {
  if (id.empty()) return;
  if (!context.ids.emplace(id).second) {
    throw MarkupError("markup: id twice: " + std::string(id));
  }
}

/// Walks the tree once for anchors and section numbers, which contents, keys and links need before
/// the blocks they name are set.
class Survey {
 public:
  explicit Survey(LayoutContext& context) : context_(context) {}

  void visit(const Node& node) {
    if (node.name == "section") {
      visit_section(node);
      return;
    }
    add_id(context_, node.get("id"));
    std::string_view also = node.get("also");
    for (std::string_view id = take_key(also); !id.empty(); id = take_key(also)) {
      add_id(context_, id);
    }
    for (const Node& child : node.children) visit(child);
  }

 private:
  void visit_section(const Node& node) {
    ++counts_.at(depth_);
    SectionEntry entry;
    entry.level = static_cast<int>(depth_) + 1;
    for (std::size_t i = 0; i <= depth_; ++i) {
      if (i > 0) entry.number += '.';
      entry.number += std::to_string(counts_.at(i));
    }
    entry.title = node.get("title");
    entry.id = node.get("id");
    if (entry.id.empty()) entry.id.append("#").append(entry.number);
    add_id(context_, entry.id);
    context_.sections.push_back(std::move(entry));
    ++depth_;
    for (const Node& child : node.children) visit(child);
    if (depth_ < counts_.size()) counts_.at(depth_) = 0;
    --depth_;
  }

  LayoutContext& context_;
  std::array<int, 3> counts_{};
  std::size_t depth_ = 0;
};

void check_links(const LayoutContext& context, const Node& node) {
  if (node.name == "a" && !context.ids.contains(node.get("to"))) {
    throw MarkupError("markup: link without its anchor: \"" + std::string(node.get("to")) + "\"");
  }
  for (const Node& child : node.children) check_links(context, child);
}

Info info_of(const Node& document) {
  const auto text = [&document](const char* name) { return std::string(document.get(name)); };
  return {text("title"),   text("author"), text("subject"), text("keywords"),
          text("creator"), text("date"),   text("language")};
}

}  // namespace

DisplayList lay_out(const Node& document, const Fonts& fonts, const PageStyle& style,
                    std::vector<char32_t>& unprintable) {
  LayoutContext context(fonts, style, unprintable);
  Survey(context).visit(document);
  check_links(context, document);
  context.landscape = true;
  const TitleBlock turned(context, document);
  context.landscape = false;
  const TitleBlock upright(context, document);
  set_title(context, document);
  set_blocks(context, context.text_column(), document);
  const PageRoom room{style.margin_top, context.body_bottom, context.landscape_bottom};
  fill_last_pages(context.story, room, key_pitch(context));
  const Plan plan = make_plan(context.story, room, key_pitch(context));
  DisplayList list;
  list.info = info_of(document);
  list.anchors = place_anchors(context.story, plan);
  list.bookmarks = std::move(context.story.bookmarks);
  write_page_numbers(context, list.anchors);
  list.pages = make_pages(context, plan, upright, turned);
  return list;
}

}  // namespace output
