#include "output/layout_pages.h"

#include <algorithm>
#include <utility>

#include "output/drawing_shapes.h"
#include "output/layout_keys.h"

namespace output {
namespace {

class PageMaker {
 public:
  PageMaker(LayoutContext& context, const Plan& plan) : context_(context), plan_(plan) {
    pages_.resize(static_cast<std::size_t>(plan.pages));
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      pages_[i].width = context.style.page_width;
      pages_[i].height = context.style.page_height;
      if (plan.landscape[i]) std::swap(pages_[i].width, pages_[i].height);
    }
  }

  std::vector<Page> run() {
    int frame = -1, page = -1;
    for (std::size_t i = 0; i < plan_.placements.size(); ++i) {
      const Slice& slice = slice_of(plan_.placements[i]);
      const bool begins = slice.frame != frame || plan_.placements[i].page != page;
      frame = slice.frame;
      page = plan_.placements[i].page;
      if (frame >= 0 && begins) add_ground(i);
      add_slice(plan_.placements[i]);
    }
    for (const KeyPlacement& key : plan_.keys) add_key(key);
    return std::move(pages_);
  }

 private:
  const Slice& slice_of(const Placement& placement) const {
    return context_.story.slices[static_cast<std::size_t>(placement.slice)];
  }
  Page& page(int number) { return pages_[static_cast<std::size_t>(number)]; }

  /// A note's ground and bar under its slices from placement `first` to the end of the page.
  void add_ground(std::size_t first) {
    const Placement& begin = plan_.placements[first];
    const int frame = slice_of(begin).frame;
    double bottom = begin.y;
    for (std::size_t i = first; i < plan_.placements.size(); ++i) {
      const Placement& placement = plan_.placements[i];
      const Slice& slice = slice_of(placement);
      if (slice.frame != frame || placement.page != begin.page) break;
      bottom = placement.y + slice.height;
    }
    const Frame& look = context_.story.frames[static_cast<std::size_t>(frame)];
    std::vector<Item>& items = page(begin.page).items;
    const double height = bottom - begin.y;
    items.emplace_back(filled(look.x, begin.y, look.width, height, look.ground));
    items.emplace_back(filled(look.x, begin.y, look.bar, height, look.bar_colour));
  }

  void add_slice(const Placement& placement) {
    const Slice& slice = slice_of(placement);
    Page& target = page(placement.page);
    target.boxes.push_back({slice.kind, slice.x, placement.y, slice.width, slice.height});
    add_items(target, slice.items, placement.y, slice.repeats);
  }

  void add_key(const KeyPlacement& key) {
    Page& target = page(key.page);
    const PageStyle& style = context_.style;
    target.boxes.push_back({Box::Kind::text, target.width - style.margin_right - style.key_column,
                            key.y, style.key_column, key_pitch(context_)});
    add_items(target, context_.story.key_lines[static_cast<std::size_t>(key.line)], key.y, false);
  }

  void add_items(Page& target, Range range, double y, bool copy) {
    for (std::size_t i = range.first; i < range.last; ++i) {
      Item& item = context_.story.items[i];
      if (copy) {
        target.items.push_back(item);
      } else {
        target.items.push_back(std::move(item));
      }
      shift_down(target.items.back(), y);
    }
  }

  LayoutContext& context_;
  const Plan& plan_;
  std::vector<Page> pages_;
};

}  // namespace

std::vector<Anchor> place_anchors(const Story& story, const Plan& plan) {
  std::vector<const Placement*> first(story.slices.size(), nullptr);
  for (const Placement& placement : plan.placements) {
    const Placement*& known = first[static_cast<std::size_t>(placement.slice)];
    if (known == nullptr) known = &placement;
  }
  std::vector<Anchor> anchors;
  for (const SliceAnchor& anchor : story.anchors) {
    if (first.empty()) break;
    // An anchor behind the last block stands at that block.
    const auto slice = std::min(static_cast<std::size_t>(anchor.slice), first.size() - 1);
    anchors.push_back({anchor.name, first[slice]->page, first[slice]->y});
  }
  return anchors;
}

std::vector<Page> make_pages(LayoutContext& context, const Plan& plan, const TitleBlock& upright,
                             const TitleBlock& turned) {
  std::vector<Page> pages = PageMaker(context, plan).run();
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const TitleBlock& block = plan.landscape[i] ? turned : upright;
    block.stamp(pages[i], static_cast<int>(i) + 1, plan.pages);
  }
  return pages;
}

}  // namespace output
