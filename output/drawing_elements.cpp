#include "output/drawing_elements.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "output/drawing_shapes.h"

namespace output {
namespace {

constexpr double default_weight = 0.5;  // pt
constexpr double default_label = 7.5;   // pt
constexpr double least_label = 5;       // pt, however far the drawing is scaled down
constexpr double pi = 3.14159265358979323846;

/// RRGGBB; nullopt for "none".
std::optional<Colour> parse_colour(std::string_view text) {
  if (text == "none") return std::nullopt;
  std::uint32_t value = 0;
  const char* const end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, value, 16);
  if (text.size() != 6 || error != std::errc{} || stop != end) {
    throw MarkupError("markup: not a colour RRGGBB: \"" + std::string(text) + "\"");
  }
  return Colour{static_cast<std::uint8_t>(value >> 16U), static_cast<std::uint8_t>(value >> 8U),
                static_cast<std::uint8_t>(value)};
}

/// Takes the next blank separated word; empty at the end.
std::string_view take_word(std::string_view& text) {
  text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
  const std::size_t end = std::min(text.find(' '), text.size());
  const std::string_view word = text.substr(0, end);
  text.remove_prefix(end);
  return word;
}

std::vector<double> parse_dash(std::string_view text) {
  std::vector<double> dash;
  for (std::string_view word = take_word(text); !word.empty(); word = take_word(text)) {
    dash.push_back(parse_number(word, "dash"));
    if (dash.back() < 1 || dash.back() != std::floor(dash.back())) {
      throw MarkupError("markup: dash is not of whole positive lengths");
    }
  }
  if (dash.size() % 2 != 0) throw MarkupError("markup: dash has an odd count of lengths");
  return dash;
}

std::vector<Point> parse_points(std::string_view text) {
  std::vector<Point> points;
  for (std::string_view word = take_word(text); !word.empty(); word = take_word(text)) {
    const std::size_t comma = std::min(word.find(','), word.size() - 1);
    points.push_back({parse_number(word.substr(0, comma), "x of a point"),
                      parse_number(word.substr(comma + 1), "y of a point")});
  }
  if (points.size() < 2) throw MarkupError("markup: <poly> wants two points or more");
  return points;
}

class Drawer {
 public:
  Drawer(LayoutContext& context, const Placing& placing) : context_(context), placing_(placing) {}

  void draw(const Node& node) {
    if (node.name == "label") {
      draw_label(node);
      return;
    }
    Path path = path_of(node);
    paint(node, path);
    context_.story.items.emplace_back(std::move(path));
  }

 private:
  double x(double mm) const { return placing_.left + mm * placing_.unit; }
  double y(double mm) const { return mm * placing_.unit; }
  Point at(const Node& node, const char* across, const char* down) const {
    return {x(number_of(node, across)), y(number_of(node, down))};
  }

  Path path_of(const Node& node) const {
    if (node.name == "line") return outline({at(node, "x1", "y1"), at(node, "x2", "y2")}, false);
    if (node.name == "circle") {
      return circle(at(node, "x", "y"), number_of(node, "radius") * placing_.unit);
    }
    if (node.name == "rect") {
      const Point corner = at(node, "x", "y");
      return rectangle(corner.x, corner.y, number_of(node, "width") * placing_.unit,
                       number_of(node, "height") * placing_.unit);
    }
    std::vector<Point> points = parse_points(node.get("points"));
    for (Point& point : points) point = {x(point.x), y(point.y)};
    return outline(points, flag_of(node, "closed"));
  }

  /// Without stroke and fill an outline is stroked in black; a fill alone is not stroked.
  static void paint(const Node& node, Path& path) {
    path.fill = parse_colour(node.get("fill", "none"));
    const std::string_view fallback = path.fill ? "none" : "000000";
    const std::optional<Colour> stroke = parse_colour(node.get("stroke", fallback));
    if (stroke) {
      path.stroke =
          Stroke{*stroke, number_of(node, "weight", default_weight), parse_dash(node.get("dash"))};
    }
  }

  void draw_label(const Node& node) {
    InlineStyle style;
    style.face = node.get("weight") == "bold" ? Face::text_bold : Face::text;
    style.size =
        std::max(number_of(node, "size", default_label) * placing_.text_scale, least_label);
    style.colour = parse_colour(node.get("colour", "000000")).value_or(Colour{});
    const double rotation = number_of(node, "rotate", 0);
    Range text = set_text(node, style);
    double width = context_.flow.width(text);
    if (rotation == 0 && width > placing_.width) {
      style.size *= placing_.width / width;
      text = set_text(node, style);
      width = placing_.width;
    }
    Point start = at(node, "x", "y");
    const double back = width * anchor_share(node);
    const double turn = rotation * pi / 180;
    start = {start.x - back * std::cos(turn), start.y + back * std::sin(turn)};
    if (rotation == 0) start.x = within_column(start.x, width);
    emit_turned(text, start, rotation);
  }

  Range set_text(const Node& node, const InlineStyle& style) {
    context_.flow.open();
    context_.flow.append(node.children, style, style.colour);
    return context_.flow.close();
  }

  static double anchor_share(const Node& node) {
    const std::string_view anchor = node.get("anchor", "start");
    if (anchor == "start") return 0;
    if (anchor == "middle") return 0.5;
    if (anchor == "end") return 1;
    throw MarkupError("markup: unknown anchor of <label>: " + std::string(anchor));
  }

  double within_column(double left, double width) const {
    const double most = placing_.left + placing_.width - width;
    return std::max(std::min(left, most), placing_.left);
  }

  /// The text from `start` on, turned about that point.
  void emit_turned(Range text, Point start, double rotation) {
    std::vector<Item>& items = context_.story.items;
    const std::size_t first = items.size();
    emit_line(context_.flow, {text.first, text.last, 0, false}, 0, 0, items);
    const double turn = rotation * pi / 180;
    for (std::size_t i = first; i < items.size(); ++i) {
      auto& run = std::get<TextRun>(items[i]);
      const Point own{run.x, run.y};
      run.x = start.x + own.x * std::cos(turn) + own.y * std::sin(turn);
      run.y = start.y - own.x * std::sin(turn) + own.y * std::cos(turn);
      run.rotation = rotation;
    }
  }

  LayoutContext& context_;
  Placing placing_;
};

}  // namespace

void emit_drawing(LayoutContext& context, const Node& drawing, const Placing& placing) {
  Drawer drawer(context, placing);
  for (const Node& node : drawing.children) drawer.draw(node);
}

}  // namespace output
