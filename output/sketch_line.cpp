/// The station along the line, to scale: heads, stages, room for service, one behind the other.
#include <algorithm>
#include <cmath>
#include <map>
#include <utility>
#include <vector>

#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 178;
constexpr double upstream =
    34;  ///< for encoder and sensor, which have no place in the figures [mm]
constexpr double box_top = 12, box_height = 14;
constexpr double line_y = box_top + box_height + 3;
constexpr double first_dimension = line_y + 7, dimension_step = 5.5;
constexpr double narrow = 20;      ///< an element narrower on paper is named above, in turn
constexpr double character = 1.5;  ///< of a label, at most [mm]
constexpr const char* stage_fill = "F2F2F2";
constexpr double least_shown = 1;  ///< what is left over below that is rounding [mm, real]

struct Element {
  std::string name;                ///< as markup
  double length = 0;               ///< [mm, real]
  std::vector<std::string> fills;  ///< bands along the line
  bool is_room = false;            ///< nothing stands there
  bool is_heads = false;
};

std::optional<double> assumed_mm(const Context& c, std::string_view field) {
  for (const calc::Assumption& assumption : c.spec.assumptions) {
    if (assumption.field == field && assumption.unit == "mm") return assumption.value;
  }
  return std::nullopt;
}

/// The fills of the inks at the colour positions from `first` to before `last` of a group.
std::vector<std::string> inks(const Context& c, const calc::Group& group, int first, int last) {
  std::map<int, std::string> channels;
  for (const calc::HeadPlace& place : group.places) channels.emplace(place.position, place.channel);
  std::vector<std::string> fills;
  for (const auto& [position, channel] : channels) {
    if (position < first || position >= last) continue;
    for (std::string& fill : fills_of(c, channel, static_cast<std::size_t>(position))) {
      fills.push_back(std::move(fill));
    }
  }
  if (fills.empty()) fills.emplace_back(stage_fill);
  return fills;
}

std::vector<Element> elements(const Context& c) {
  std::vector<Element> list;
  double left = in_mm(c.spec.station->footprint);
  const auto add = [&](Element element) {
    if (element.length <= 0) return;
    left -= element.length;
    list.push_back(std::move(element));
  };
  bool pinned = false;
  for (const calc::Group& group : c.spec.chosen) {
    // Cut behind each colour that is pinned; the first piece has the name.
    const double position = in_mm(group.footprint) / group.positions;
    std::string name = escaped(c.group_name(group.name));
    for (int i = 0; i < group.pinned_places; ++i) {
      add({std::exchange(name, {}), position, inks(c, group, i, i + 1), false, true});
      add({pinned ? std::string() : c.words("stage.pinning"),
           in_mm(group.pinned_each),
           {stage_fill}});
      pinned = true;
    }
    add({std::move(name), position * (group.positions - group.pinned_places),
         inks(c, group, group.pinned_places, group.positions), false, true});
  }
  for (const calc::Stage& stage : c.spec.station->stages) {
    if (pinned && stage.kind == "pinning") continue;
    const auto& length = stage.installed_length_m ? stage.installed_length_m : stage.length_m;
    if (length) add({c.words("stage." + stage.kind), *length * 1000, {stage_fill}});
  }
  const double service = assumed_mm(c, "assume.service_access").value_or(0);
  add({c.words("line.service"), service, {"FFFFFF"}, true});
  if (left > least_shown) list.push_back({c.words("line.rest"), left, {"FFFFFF"}, true});
  return list;
}

void draw_upstream(const Context& c, Sketch& sketch) {
  const Pen outline{c.templates.setting("drawing.outline"), 0.6, ""};
  sketch.circle({7, line_y + 3.2}, 3.2, outline, "FFFFFF");
  sketch.label({7, line_y + 11}, "middle", 6.5, c.words("line.encoder"));
  sketch.rect({18, line_y - 8}, 4, 4, outline, "FFFFFF");
  sketch.line({20, line_y - 4}, {20, line_y}, {c.templates.setting("drawing.travel"), 0.5, "1 1"});
  sketch.label({20, line_y - 9.5}, "middle", 6.5, c.words("line.sensor"));
}

/// Draws the elements and their lengths; yields the height below the last dimension.
double draw_elements(const Context& c, Sketch& sketch, const std::vector<Element>& list,
                     double factor) {
  const std::string& colour = c.templates.setting("drawing.dimension");
  double x = upstream;
  double lowest = first_dimension;
  std::size_t stagger = 0;
  double next_name = 0;
  for (const Element& element : list) {
    const double width = element.length * factor;
    const double right = x + width, foot = box_top + box_height;
    sketch.bands({{x, box_top}, {x, foot}, {right, foot}, {right, box_top}},
                 {c.templates.setting("drawing.outline"), 0.5, element.is_room ? "2 2" : ""},
                 element.fills);
    const double name_width = character * static_cast<double>(element.name.size());
    const double middle = x + width / 2;
    if (name_width + 1 < width) {
      if (element.is_heads) {  // the name on white, so that it reads on any ink
        sketch.rect({middle - name_width / 2, box_top + box_height / 2 - 2}, name_width, 4,
                    {"none", 0.1, ""}, "FFFFFF");
      }
      sketch.label({middle, box_top + box_height / 2 + 1}, "middle", 7, element.name, true);
    } else {
      const bool raised = middle - name_width / 2 < next_name;
      sketch.label({middle, box_top - (raised ? 5.0 : 1.6)}, "middle", 7, element.name, true);
      if (!raised) next_name = middle + name_width / 2;
    }
    stagger = width < narrow ? stagger + 1 : 0;
    const double y =
        first_dimension + dimension_step * static_cast<double>(stagger == 0 ? 0 : stagger % 3);
    sketch.dimension_across(x, x + width, y, escaped(c.measure(element.length, "mm", 4)), colour);
    lowest = std::max(lowest, y);
    x += width;
  }
  const double total = lowest + dimension_step;
  sketch.dimension_across(
      upstream, x, total,
      c.words("line.total", {{"VALUE", length_text(c, c.spec.station->footprint)}}), colour);
  return total;
}

}  // namespace

std::string sketch_line(const Context& c) {
  if (c.spec.chosen.empty() || !c.spec.station || c.spec.chosen.front().scan) return {};
  const std::vector<Element> list = elements(c);
  double length = 0;
  for (const Element& element : list) length += element.length;
  if (length <= 0) return {};
  const Scale scale = fitting_scale(length, 1, paper_width - upstream - 12, box_height);
  Sketch sketch(paper_width, line_y + 30);
  sketch.line({0, line_y}, {paper_width, line_y}, {c.templates.setting("drawing.outline"), 1, ""});
  draw_upstream(c, sketch);
  const double foot = draw_elements(c, sketch, list, scale.factor) + 7;
  sketch.arrow({0, foot}, {14, foot}, {c.templates.setting("drawing.travel"), 1.2, ""});
  sketch.label({16, foot + 0.9}, "start", 7, c.words("plan.travel"));
  sketch.stretch(foot + 3);
  return sketch.figure(c.words("line.caption", {{"SCALE", scale.text}}), "", true);
}

}  // namespace output
