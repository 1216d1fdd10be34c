// No section is filled by constant text alone: one changed input changes the text of each.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "output/format.h"
#include "output/markup.h"
#include "output/report_text.h"
#include "tests/whole/support/case.h"

namespace {

struct Change {
  std::string section;  ///< anchor of a section, or "front"
  std::string first, second;
};

const std::vector<Change>& changes() {
  static const std::vector<Change> all{
      {"front", "image.width = 200 mm", "image.width = 300 mm"},
      {"s-requirement", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-conditions", "substrate.surface_energy = 35 mN/m", "substrate.surface_energy = 34 mN/m"},
      {"s-resolution", "image.resolution = 600 dpi", "image.resolution = 300 dpi"},
      {"s-arrangement", "image.width = 200 mm", "image.width = 300 mm"},
      {"s-frequency", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-dots", "substrate.dot_diameter = 62 um", "substrate.dot_diameter = 64 um"},
      {"s-jetting", "ink.black.surface_tension = 28 mN/m", "ink.black.surface_tension = 29 mN/m"},
      {"s-drive", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-placement", "head.A.drop_speed = 6 m/s", "head.A.drop_speed = 7 m/s"},
      {"s-ink", "colour.black.cover_mean = 15 %", "colour.black.cover_mean = 25 %"},
      {"s-stages", "ink.black.cure_dose = 200 mJ/cm2", "ink.black.cure_dose = 300 mJ/cm2"},
      {"s-services", "ink.black.cure_dose = 200 mJ/cm2", "ink.black.cure_dose = 300 mJ/cm2"},
      {"s-safety", "ink.black.flash_point = 100 degC", "ink.black.flash_point = 50 degC"},
      {"s-parts", "head.A.price = 2000 EUR", "head.A.price = 2100 EUR"},
      {"s-cost", "costs.years = 5", "costs.years = 6"},
      {"s-heads", "head.B.throw_most = 1.005 mm", "head.B.throw_most = 1.002 mm"},
      {"s-flexibility", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-uncertainty", "costs.years = 5", "costs.years = 6"},
      {"s-edges", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-questions", "-line.weave", "-line.throw_distance"},
      {"s-checks", "image.registration = 60 um", "image.registration = 50 um"},
      {"s-control", "catalogue.date = 2026-10-01", "request.notes = Second shift only."},
      {"s-terms", "request.title = Labels", "request.title = Labels near the explosive limit"},
      {"s-layout", "line.throw_distance = 1 mm", "line.throw_distance = 1.2 mm"},
      {"s-record", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-trace", "line.speed = 30 m/min", "line.speed = 31 m/min"},
      {"s-sources", "head.A.price = 2000 EUR", "head.A.price = 2100 EUR"},
  };
  return all;
}

std::string id_of(const output::Node& node) {
  return node.name == "front" ? "front" : std::string(node.get("id"));
}

void collect_text(const output::Node& node, std::string& text) {
  text += node.text;
  for (const output::Node& child : node.children) collect_text(child, text);
}

/// The words of a section, without its attributes; empty when the document has no such section.
std::string text_of(const output::Node& root, const std::string& id) {
  std::string text;
  for (const output::Node& child : root.children) {
    if (id_of(child) == id) collect_text(child, text);
  }
  return text;
}

output::Node document(const std::string& change) {
  return output::parse_markup(whole::case_of(change).markup());
}

}  // namespace

TEST_CASE("one changed input changes the words of its section") {
  for (const Change& change : changes()) {
    CAPTURE(change.section);
    const std::string before = text_of(document(change.first), change.section);
    const std::string after = text_of(document(change.second), change.section);
    CHECK_FALSE(before.empty());
    CHECK_FALSE(after.empty());
    const bool differs = before != after;
    CHECK(differs);
  }
}

TEST_CASE("every section of a document has its change") {
  const output::Node root = document("substrate.surface_energy = 35 mN/m\n-line.weave\n");
  std::set<std::string> known;
  for (const Change& change : changes()) known.insert(change.section);
  std::size_t sections = 0;
  for (const output::Node& child : root.children) {
    const std::string id = id_of(child);
    CAPTURE(child.name);
    CAPTURE(id);
    std::string text;
    collect_text(child, text);
    const bool is_furniture = child.name == "titleblock" || child.name == "contents";
    if (is_furniture || text.empty()) continue;
    CHECK(known.count(id) == 1);
    ++sections;
  }
  CHECK(sections == known.size());
}

// Source: method.md section 2, a line of n dots is (n - 1) p + D wide, n p nominal.
TEST_CASE("lines along and across the motion grow each by dot less its own pitch") {
  const whole::Case made =
      whole::case_of("image.resolution = 600 x 400 dpi\nsubstrate.dot_diameter = 80 um\n");
  REQUIRE_FALSE(made.specification.chosen.empty());
  const calc::Group& group = made.specification.chosen.front();
  const double dot = group.dots.front().dot_diameter.si();
  const auto grown = [&](calc::Resolution r) {
    return output::number((dot - (1.0 / r).si()) * 1e6, 3);
  };
  REQUIRE(grown(group.resolution_across) != grown(group.resolution_along));
  CHECK(output::without_markup(made.markup())
            .find("along the motion changes by +" + grown(group.resolution_across)) !=
        std::string::npos);
  CHECK(output::without_markup(made.markup())
            .find("across it by +" + grown(group.resolution_along)) != std::string::npos);
}
