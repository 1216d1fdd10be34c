/// The display list as JSON lines: what stands where on which page, for tests and other programs.
#include <array>
#include <cmath>
#include <variant>

#include "output/frames.h"
#include "output/json_parts.h"

namespace output {
namespace {

/// A length to a thousandth of a point.
double rounded(double value) { return std::round(value * 1000) / 1000 + 0.0; }

std::string hex(Colour colour) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string text;
  for (const auto channel : {colour.red, colour.green, colour.blue}) {
    text += digits[channel >> 4U];
    text += digits[channel & 15U];
  }
  return text;
}

std::string_view face_name(Face face) {
  constexpr std::array<std::string_view, face_count> names{
      "text", "text_bold", "text_italic", "mono", "symbol", "symbol_bold", "cjk"};
  return names.at(static_cast<std::size_t>(face));
}

Json rectangle(const char* kind, double x, double y, double width, double height) {
  return {{"kind", kind},
          {"x", rounded(x)},
          {"y", rounded(y)},
          {"width", rounded(width)},
          {"height", rounded(height)}};
}

struct ItemWriter {
  Json operator()(const TextRun& run) const {
    Json object{{"kind", "text"},
                {"x", rounded(run.x)},
                {"y", rounded(run.y)},
                {"width", rounded(run.width)},
                {"size", rounded(run.size)},
                {"face", face_name(run.face)},
                {"colour", hex(run.colour)},
                {"text", run.text}};
    if (run.rotation != 0) object["rotation"] = rounded(run.rotation);
    return object;
  }

  Json operator()(const Path& path) const {
    Json steps = Json::array();
    for (const PathStep& step : path.steps) steps.push_back(step_json(step));
    Json object{{"kind", "path"}, {"steps", std::move(steps)}};
    if (path.fill) object["fill"] = hex(*path.fill);
    if (path.stroke) {
      object["stroke"] = hex(path.stroke->colour);
      object["weight"] = rounded(path.stroke->width);
    }
    return object;
  }

  Json operator()(const Link& link) const {
    Json object = rectangle("link", link.x, link.y, link.width, link.height);
    object["anchor"] = link.anchor;
    return object;
  }

  Json operator()(const Image& image) const {
    return rectangle("image", image.x, image.y, image.width, image.height);
  }

 private:
  static Json step_json(const PathStep& step) {
    const auto points = [](const char* verb, std::initializer_list<Point> list) {
      Json array = Json::array({verb});
      for (const Point& point : list) {
        array.push_back(rounded(point.x));
        array.push_back(rounded(point.y));
      }
      return array;
    };
    switch (step.verb) {
      case PathStep::Verb::move:
        return points("move", {step.a});
      case PathStep::Verb::line:
        return points("line", {step.a});
      case PathStep::Verb::curve:
        return points("curve", {step.a, step.b, step.c});
      case PathStep::Verb::close:
        break;
    }
    return points("close", {});
  }
};

std::string_view box_name(Box::Kind kind) {
  constexpr std::array<std::string_view, 5> names{"text", "heading", "row", "figure", "furniture"};
  return names.at(static_cast<std::size_t>(kind));
}

}  // namespace

std::string frames_json(const DisplayList& list, std::string_view stem) {
  std::string text;
  int number = 0;
  for (const Page& page : list.pages) {
    Json line{{"stem", stem},
              {"page", ++number},
              {"width", rounded(page.width)},
              {"height", rounded(page.height)}};
    line["boxes"] = json_list(page.boxes, [](const Box& box) {
      Json object = rectangle("", box.x, box.y, box.width, box.height);
      object["kind"] = box_name(box.kind);
      return object;
    });
    line["items"] =
        json_list(page.items, [](const Item& item) { return std::visit(ItemWriter(), item); });
    text += line.dump() + "\n";
  }
  return text;
}

}  // namespace output
