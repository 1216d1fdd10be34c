#include "output/layout_plan.h"

#include <algorithm>
#include <array>

namespace output {
namespace {

constexpr double slack = 1e-6;       // pt
constexpr double group_room = 2.5;   // pt, between keys of a block and those pushed down by them
constexpr double full_share = 0.75;  // of a page: with less on it, it looks forgotten
/// How far the room between blocks is closed up, the mildest first; at half the eye sees it.
constexpr std::array<double, 4> closings{0.9, 0.8, 0.7, 0.6};

/// How far a page is filled.
struct Fill {
  double y = 0;          ///< lower end of the text
  double keys = 0;       ///< lower end of the keys
  bool fresh = true;     ///< nothing on it, apart from a repeated head
  bool has_any = false;  ///< something on it
};

/// Where a page begins: the fill, below a repeated head, and what is placed before it.
struct PageStart {
  Fill fill;
  std::size_t placements = 0, keys = 0;
};

class Planner {
 public:
  Planner(const Story& story, const PageRoom& room, double key_pitch)
      : story_(story), room_(room), key_pitch_(key_pitch), fill_(empty()), start_{fill_} {
    plan_.landscape.push_back(false);
  }

  /// Places the slices from `first` to before `last`.
  void run(std::size_t first, std::size_t last) {
    while (first < last) first = place_chain(first);
    flush_keys();
  }

  int pages() const { return plan_.pages; }
  /// How much of the body the last page fills, from 0 to 1.
  double last_share() const { return (fill_.y - room_.top) / (bottom() - room_.top); }
  Plan take() { return std::move(plan_); }

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

  double top_of(const Slice& slice, const Fill& fill) const {
    const double y = fill.y + (fill.has_any ? slice.before * closing_ : 0);
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

  bool fits(std::size_t first, std::size_t last) const { return fits(first, last, fill_); }
  bool fits(std::size_t first, std::size_t last, Fill fill) const {
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
    if (!fits(first, last) && !fill_.fresh && !close_up(first, last)) turn_page(slice);
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

  const Slice& slice_of(const Placement& placement) const {
    return story_.slices[static_cast<std::size_t>(placement.slice)];
  }

  /// Closes up the page, which would be left with much of it empty, by as little as makes room for
  /// the slices from `first` to before `last`; false when that does not do.
  bool close_up(std::size_t first, std::size_t last) {
    if (last_share() >= full_share || closing_ < 1 || !late_keys_.empty()) return false;
    const auto begin = plan_.placements.begin() + static_cast<std::ptrdiff_t>(start_.placements);
    const std::vector<Placement> there(begin, plan_.placements.end());
    for (const double closing : closings) {
      closing_ = closing;
      Fill fill = start_.fill;
      for (const Placement& p : there) advance(slice_of(p), fill);
      if (!fits(first, last, fill)) continue;
      plan_.placements.resize(start_.placements);
      plan_.keys.resize(start_.keys);
      fill_ = start_.fill;
      for (const Placement& p : there) place(static_cast<std::size_t>(p.slice));
      return true;
    }
    closing_ = 1;
    return false;
  }

  void turn_page(const Slice& next) {
    flush_keys();
    add_page(next.landscape);
    fill_ = empty();
    closing_ = 1;
    if (next.head >= 0) {
      place(static_cast<std::size_t>(next.head));
      fill_.fresh = true;
    }
    start_ = {fill_, plan_.placements.size(), plan_.keys.size()};
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
  PageStart start_;     ///< of the page that is filled now
  double closing_ = 1;  ///< factor of the room above its slices
  Plan plan_;
  std::vector<int> late_keys_;
};

constexpr double least_share = 0.25;  // of a page: with less on it, it reads as a mistake

/// The slices from one page break that is asked for to the next.
struct Stretch {
  std::size_t first = 0, last = 0;
};

std::vector<Stretch> stretches(const Story& story) {
  std::vector<Stretch> list;
  for (std::size_t i = 0; i < story.slices.size(); ++i) {
    if (i == 0 || story.slices[i].new_page) list.push_back({i, i});
    list.back().last = i + 1;
  }
  return list;
}

Planner planned(const Story& story, const Stretch& stretch, const PageRoom& room,
                double key_pitch) {
  Planner planner(story, room, key_pitch);
  planner.run(stretch.first, stretch.last);
  return planner;
}

/// Scales the room above the slices; without a factor it is as it was.
void set_rooms(Story& story, const Stretch& stretch, const std::vector<double>& rooms,
               double factor = 1) {
  for (std::size_t i = stretch.first; i < stretch.last; ++i) {
    story.slices[i].before = rooms[i - stretch.first] * factor;
  }
}

/// Closes the stretch up by as little as saves its last page, or not at all.
void save_page(Story& story, const Stretch& stretch, const PageRoom& room, double key_pitch,
               int pages) {
  std::vector<double> rooms;
  for (std::size_t i = stretch.first; i < stretch.last; ++i) {
    rooms.push_back(story.slices[i].before);
  }
  for (const double closing : closings) {
    set_rooms(story, stretch, rooms, closing);
    if (planned(story, stretch, room, key_pitch).pages() < pages) return;
  }
  set_rooms(story, stretch, rooms);
}

/// Makes the last quarter of a page of the stretch stand together, as far as a page holds it.
void keep_tail(Story& story, const Stretch& stretch, double body) {
  std::vector<Slice>& slices = story.slices;
  double tail = slices[stretch.last - 1].height;
  for (std::size_t i = stretch.last - 1; i > stretch.first && tail < least_share * body;) {
    const std::size_t end = i;
    do {
      tail += slices[i].before + slices[i - 1].height;
      --i;
    } while (i > stretch.first && slices[i - 1].keep);
    if (tail > body) break;
    slices[end - 1].keep = true;
  }
}

}  // namespace

void fill_last_pages(Story& story, const PageRoom& room, double key_pitch) {
  for (const Stretch& stretch : stretches(story)) {
    const Planner planner = planned(story, stretch, room, key_pitch);
    if (planner.pages() > 1 && planner.last_share() < least_share) {
      save_page(story, stretch, room, key_pitch, planner.pages());
    }
    const bool turned = story.slices[stretch.first].landscape;
    keep_tail(story, stretch, (turned ? room.landscape_bottom : room.bottom) - room.top);
  }
}

Plan make_plan(const Story& story, const PageRoom& room, double key_pitch) {
  Planner planner(story, room, key_pitch);
  planner.run(0, story.slices.size());
  return planner.take();
}

}  // namespace output
