#include "../layout_support.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <map>

namespace layout_test {

using output::Box;

const output::Fonts& fonts() {
  static const output::Fonts faces;
  return faces;
}

output::DisplayList set(std::string_view blocks, std::string_view attributes) {
  std::string xml = "<document ";
  xml.append(attributes).append(">").append(blocks).append("</document>");
  std::vector<char32_t> unprintable;
  return output::lay_out(output::parse_markup(xml), fonts(), {}, unprintable);
}

std::vector<output::TextRun> runs(const output::Page& page) {
  std::vector<output::TextRun> found;
  for (const output::Item& item : page.items) {
    if (const auto* const run = std::get_if<output::TextRun>(&item)) found.push_back(*run);
  }
  return found;
}

std::string text(const output::Page& page) {
  std::map<double, std::map<double, std::string>> lines;
  for (const output::TextRun& run : runs(page)) lines[run.y][run.x] += run.text;
  std::string joined;
  for (const auto& [y, parts] : lines) {
    for (const auto& [x, part] : parts) joined += part;
    joined += '\n';
  }
  return joined;
}

bool has_run(const output::Page& page, std::string_view beginning) {
  const std::vector<output::TextRun> all = runs(page);
  return std::any_of(all.begin(), all.end(), [beginning](const output::TextRun& run) {
    return run.text.starts_with(beginning);
  });
}

output::TextRun run_of(const output::Page& page, std::string_view beginning) {
  for (const output::TextRun& run : runs(page)) {
    if (run.text.starts_with(beginning)) return run;
  }
  FAIL("no run begins with ", std::string(beginning), "\n", text(page));
  return {};
}

std::vector<Box> body_boxes(const output::Page& page) {
  const output::PageStyle style;
  const double keys = page.width - style.margin_right - style.key_column;
  std::vector<Box> found;
  for (const Box& box : page.boxes) {
    if (box.kind != Box::Kind::furniture && box.x < keys) found.push_back(box);
  }
  return found;
}

namespace {

bool overlap(const Box& one, const Box& other) {
  constexpr double slack = 0.001;
  return one.x + one.width > other.x + slack && other.x + other.width > one.x + slack &&
         one.y + one.height > other.y + slack && other.y + other.height > one.y + slack;
}

/// Whether the run's baseline lies in a box and its right end too; markers of lists hang out left.
bool is_boxed(const output::Page& page, const output::TextRun& run) {
  return std::any_of(page.boxes.begin(), page.boxes.end(), [&run](const Box& box) {
    return run.y > box.y && run.y < box.y + box.height && run.x > box.x - 30 &&
           run.x + run.width < box.x + box.width + 0.01;
  });
}

std::string page_faults(const output::Page& page) {
  const output::PageStyle style;
  std::string found;
  for (const output::TextRun& run : runs(page)) {
    const bool outside = run.x < style.margin_left - 0.01 ||
                         run.x + run.width > page.width - style.margin_right + 0.01 ||
                         run.y < style.margin_top || run.y > page.height - 20;
    if (run.rotation != 0) continue;
    if (outside) found += "outside the margins: " + run.text + "\n";
    if (!is_boxed(page, run)) found += "outside of all boxes: " + run.text + "\n";
  }
  for (std::size_t i = 0; i < page.boxes.size(); ++i) {
    for (std::size_t k = i + 1; k < page.boxes.size(); ++k) {
      if (overlap(page.boxes[i], page.boxes[k])) {
        found += "boxes overlap: " + std::to_string(i) + " and " + std::to_string(k) + "\n";
      }
    }
  }
  const std::vector<Box> body = body_boxes(page);
  const bool has_text = std::any_of(page.boxes.begin(), page.boxes.end(), [](const Box& box) {
    return box.kind != Box::Kind::furniture;
  });
  if (!has_text) found += "empty page\n";
  if (!body.empty() && body.back().kind == Box::Kind::heading) found += "heading last\n";
  return found;
}

}  // namespace

std::string faults(const output::DisplayList& list) {
  std::string found;
  int number = 0;
  for (const output::Page& page : list.pages) {
    ++number;
    const std::string own = page_faults(page);
    if (!own.empty()) found += "page " + std::to_string(number) + ":\n" + own;
    for (const output::Item& item : page.items) {
      const auto* const link = std::get_if<output::Link>(&item);
      if (link == nullptr) continue;
      const bool resolves =
          std::any_of(list.anchors.begin(), list.anchors.end(),
                      [link](const output::Anchor& a) { return a.name == link->anchor; });
      if (!resolves) found += "link leads nowhere: " + link->anchor + "\n";
    }
  }
  return found;
}

namespace {

bool turned(const output::Page& page) { return page.width > page.height; }

double body_bottom(const output::Page& page) {
  double bottom = page.height - output::PageStyle().margin_bottom;
  for (const Box& box : page.boxes) {
    if (box.kind == Box::Kind::furniture) bottom = std::min(bottom, box.y);
  }
  return bottom;
}

/// The lower end of what stands on the page, that of the margin column too.
double lower_end(const output::Page& page) {
  double end = 0;
  for (const Box& box : page.boxes) {
    if (box.kind != Box::Kind::furniture) end = std::max(end, box.y + box.height);
  }
  return end;
}

}  // namespace

std::string nearly_empty(const output::DisplayList& list) {
  constexpr double least = 0.24;  // a quarter, less the room above the title block
  const double top = output::PageStyle().margin_top;
  std::string found;
  for (std::size_t i = 1; i < list.pages.size(); ++i) {
    const output::Page& page = list.pages[i];
    const output::Page& before = list.pages[i - 1];
    const bool ends = i + 1 == list.pages.size() || turned(list.pages[i + 1]) != turned(page);
    if (!ends || turned(before) != turned(page)) continue;
    const double body = body_bottom(page) - top;
    const double filled = lower_end(page) - top;
    if (filled >= least * body) continue;
    const std::vector<Box> own = body_boxes(page), others = body_boxes(before);
    if (own.empty() || others.empty()) continue;  // keys alone
    const double room = body_bottom(before) - lower_end(before);
    const double above = own.front().kind == Box::Kind::heading ? 24 : 10;  // at most [pt]
    const bool asked_for = room > own.front().height + above;
    const bool after_high = std::any_of(others.begin(), others.end(),
                                        [body](const Box& box) { return box.height > body / 2; });
    if (asked_for || after_high) continue;
    found += "page " + std::to_string(i + 1) + " is nearly empty\n";
  }
  return found;
}

std::string words(int count) {
  constexpr std::array<const char*, 7> stock{"web",       "resolution", "of",  "jetting",
                                             "cure dose", "a",          "head"};
  std::string joined;
  for (int i = 0; i < count; ++i) {
    if (i > 0) joined += ' ';
    joined += stock.at(static_cast<std::size_t>(i * i + i / 3) % stock.size());
  }
  return joined;
}

std::string paragraph(int count) { return "<p>" + words(count) + "</p>"; }

std::string filling(int lines) {
  std::string xml;
  for (int i = 0; i < lines; ++i) xml += "<list><item>line</item></list>";
  return xml;
}

int page_of(const output::DisplayList& list, std::string_view beginning) {
  for (std::size_t i = 0; i < list.pages.size(); ++i) {
    for (const output::TextRun& run : runs(list.pages[i])) {
      if (run.text.starts_with(beginning)) return static_cast<int>(i);
    }
  }
  return -1;
}

}  // namespace layout_test
