#include "output/layout_plan.h"

#include <algorithm>

namespace output {
namespace {

constexpr double slack = 1e-6;      // pt
constexpr double group_room = 2.5;  // pt, between keys of a block and those pushed down by them

/// How far a page is filled.
struct Fill {
  double y = 0;          ///< lower end of the text
  double keys = 0;       ///< lower end of the keys
  bool fresh = true;     ///< nothing on it, apart from a repeated head
  bool has_any = false;  ///< something on it
};

class Planner {
 public:
  Planner(const Story& story, const PageRoom& room, double key_pitch)
      : story_(story), room_(room), key_pitch_(key_pitch), fill_(empty()) {
    plan_.landscape.push_back(false);
  }

  Plan run() {
    std::size_t next = 0;
    while (next < story_.slices.size()) next = place_chain(next);
    flush_keys();
    return std::move(plan_);
  }

 private:
  Fill empty() const { return {room_.top, room_.top - group_room, true, false}; }
  double bottom() const { return plan_.landscape.back() ? room_.landscape_bottom : room_.bottom; }

  /// Slices that stand together, from `first` to before the result.
  std::size_t chain_end(std::size_t first) const {
    std::size_t last = first;
    while (last + 1 < story_.slices.size() && story_.slices[last].keep &&
           !story_.slices[last + 1].new_page) {
      ++last;
    }
    return last + 1;
  }

  static double top_of(const Slice& slice, const Fill& fill) {
    const double y = fill.y + (fill.has_any ? slice.before : 0);
    return slice.wide ? std::max(y, fill.keys) : y;
  }

  static double keys_top(const KeyGroup& group, double slice_top, const Fill& fill) {
    return std::max(fill.keys + group_room, slice_top + group.offset);
  }

  /// Advances the fill over the slice; false when it does not fit.
  bool advance(const Slice& slice, Fill& fill) const {
    const double y = top_of(slice, fill);
    fill.y = y + slice.height;
    if (slice.keys >= 0) {
      const KeyGroup& group = story_.keys[static_cast<std::size_t>(slice.keys)];
      fill.keys = keys_top(group, y, fill) + group.count * key_pitch_;
    }
    fill.fresh = false;
    fill.has_any = true;
    return fill.y <= bottom() + slack && fill.keys <= bottom() + slack;
  }

  bool fits(std::size_t first, std::size_t last) const {
    Fill fill = fill_;
    for (std::size_t i = first; i < last; ++i) {
      if (!advance(story_.slices[i], fill)) return false;
    }
    return true;
  }

  std::size_t place_chain(std::size_t first) {
    const Slice& slice = story_.slices[first];
    const std::size_t last = chain_end(first);
    if (slice.new_page && !fill_.fresh) turn_page(slice);
    if (!fill_.has_any) plan_.landscape.back() = slice.landscape;
    if (!fits(first, last) && !fill_.fresh) turn_page(slice);
    if (fits(first, last)) {
      for (std::size_t i = first; i < last; ++i) place(i);
      return last;
    }
    return place_part(first, last);
  }

  /// A chain higher than a page: as much of it as fits, but no heading last.
  std::size_t place_part(std::size_t first, std::size_t last) {
    Fill fill = fill_;
    std::size_t end = first;
    while (end < last && advance(story_.slices[end], fill)) ++end;
    std::size_t cut = end;
    while (cut > first && story_.slices[cut - 1].kind == Box::Kind::heading) --cut;
    if (cut > first) end = cut;
    end = std::max(end, first + 1);
    for (std::size_t i = first; i < end; ++i) place(i);
    if (end < last) turn_page(story_.slices[end]);
    return end;
  }

  void turn_page(const Slice& next) {
    flush_keys();
    add_page(next.landscape);
    fill_ = empty();
    if (next.head < 0) return;
    place(static_cast<std::size_t>(next.head));
    fill_.fresh = true;
  }

  void add_page(bool landscape) {
    ++plan_.pages;
    plan_.landscape.push_back(landscape);
  }

  void place(std::size_t index) {
    const Slice& slice = story_.slices[index];
    const double y = top_of(slice, fill_);
    plan_.placements.push_back({static_cast<int>(index), plan_.pages - 1, y});
    if (slice.keys >= 0) place_keys(story_.keys[static_cast<std::size_t>(slice.keys)], y);
    advance(slice, fill_);
  }

  void place_keys(const KeyGroup& group, double slice_top) {
    double y = keys_top(group, slice_top, fill_);
    for (int i = 0; i < group.count; ++i) {
      const int line = group.first_line + i;
      if (y + key_pitch_ <= bottom() + slack) {
        plan_.keys.push_back({line, plan_.pages - 1, y});
      } else {
        late_keys_.push_back(line);
      }
      y += key_pitch_;
    }
  }

  /// Keys of one block that are more than a page holds get pages of their own.
  void flush_keys() {
    double y = bottom();
    for (const int line : late_keys_) {
      if (y + key_pitch_ > bottom() + slack) {
        add_page(plan_.landscape.back());
        y = room_.top;
      }
      plan_.keys.push_back({line, plan_.pages - 1, y});
      y += key_pitch_;
    }
    late_keys_.clear();
  }

  const Story& story_;
  PageRoom room_;
  double key_pitch_;
  Fill fill_;
  Plan plan_;
  std::vector<int> late_keys_;
};

constexpr double least_tail = 72;  // pt, an inch: a page with less on it reads as a mistake

}  // namespace

void keep_tails(Story& story) {
  std::vector<Slice>& slices = story.slices;
  for (std::size_t end = slices.size(); end > 0; --end) {
    const bool ends = end == slices.size() || slices[end].new_page;
    if (!ends) continue;
    double tail = slices[end - 1].height;
    for (std::size_t i = end - 1; i > 0 && !slices[i].new_page && tail < least_tail; --i) {
      slices[i - 1].keep = true;
      tail += slices[i].before + slices[i - 1].height;
    }
  }
}

Plan make_plan(const Story& story, const PageRoom& room, double key_pitch) {
  return Planner(story, room, key_pitch).run();
}

}  // namespace output
