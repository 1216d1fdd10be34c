// Every figure of the text leads to the step that worked it out, or to where it was given.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "output/compose_context.h"
#include "tests/whole/support/blocks.h"
#include "tests/whole/support/samples.h"

namespace {

using whole::Block;
using whole::Document;

/// Sections whose rows are where links end, and those without figures of the calculation.
constexpr std::array<std::string_view, 10> ends{
    "s-trace",        // the steps
    "s-sources",      // of the steps
    "s-catalogue",    // values as the catalogue has them
    "s-record",       // the request, line by line
    "s-given",        // values as the request has them
    "s-assumptions",  // the assumptions, which have a source or none
    "s-terms",        // what words mean
    "s-control",      // dates of issues
    "s-changes",      // figures of another issue beside those of this
    "s-signoff"};

/// Blocks with figures that no step has, by the start of their section and a part of their text.
struct Plain {
  std::string_view section, part;
};
constexpr std::array<Plain, 20> plain{{
    // Limits and numbers of standards and sources cited.
    {"s-jetting", "Fromm, IBM"},
    {"s-jetting", "Reis and Derby, MRS"},
    {"s-jetting", "Jang, Kim and Moon"},
    {"s-jetting", "Lee et al."},
    {"s-stage-", "EN 1539, NFPA 86"},
    {"s-stage-", "Figures of "},
    {"s-safety", "Fans, blowers and pumps"},
    {"s-safety", "with continuous monitoring"},
    {"s-checks", "ISO 2409"},
    {"s-checks", "Grade the printed "},
    {"s-questions", "safety data sheet, section"},
    {"front", "safety data sheet, section"},
    // Numbers of a rule or a name, in the words of the document itself.
    {"s-stage-", "over 15 min"},
    {"s-checks", "double strokes"},
    {"s-checks", "sum of the shares of the limits"},
    {"s-alternatives", "Stations are ranked by"},
    {"s-requirement", "The request restated as"},
    // Of heads that the document does not list.
    {"s-questions", "greatest temperature among the heads"},
    {"front", "greatest temperature among the heads"},
    {"front", "heads were tried in every arrangement"},
}};

/// Blocks in which some figures are of a rule or of a standard cited, or count what stands there.
constexpr std::array<Plain, 21> of_rules{{
    {"front", "conditions of this specification are met"},
    {"front", "more in the specification"},
    {"front", "closes solids"},
    {"s-edges", "on sheet 1"},
    {"s-conditions", "Regulation (EC) No 1935/2004"},
    {"s-conditions", "dates from"},  // from the dates beside it
    {"s-placement-budgets", "Guide to the Expression of Uncertainty"},
    // Standard uncertainties, by the kind that stands beside the shift.
    {"s-placement-budgets", "rectangular"},
    {"s-placement-budgets", "| normal |"},
    {"s-placement-budgets", "| sinusoid |"},
    {"s-placement-budgets", "| resolution |"},
    {"s-placement-budgets", "| systematic |"},
    {"s-placement", "Schiller and Naumann"},
    {"s-jetting", "drops splash"},
    {"s-stage-", "ICNIRP 2004"},
    {"s-stage-", "the last stroke that prints"},
    // Ends of a range of which the step has the one that counts, and terms of a sum.
    {"front", "capital for the bill of materials"},
    {"s-derived", " to "},
    {"s-services", "room for service"},
    {"s-resolution", "wished, met at"},
    // Ranges of a standard.
    {"s-barcode", " to "},
}};

/// Sections of notices, whose figures places_test.cpp holds one by one; others there are of rules.
constexpr std::array<std::string_view, 3> of_notices{"s-warnings", "s-safety", "s-checks"};

/// Every sample's document, made once.
const std::vector<Document>& documents() {
  static const std::vector<Document> all = [] {
    std::vector<Document> made;
    for (const intake::ReadRequest& sample : whole::sample_requests()) {
      made.push_back(whole::document(sample));
    }
    return made;
  }();
  return all;
}

bool is_end(const Block& block) {
  return std::find(ends.begin(), ends.end(), block.section) != ends.end();
}

template <class List>
bool is_among(const List& list, const Block& block) {
  return std::any_of(list.begin(), list.end(), [&](const Plain& p) {
    return block.section.starts_with(p.section) && block.text.find(p.part) != std::string::npos;
  });
}

bool is_of_notices(const Block& block) {
  return std::find(of_notices.begin(), of_notices.end(), block.section) != of_notices.end();
}

/// Whether a note on safety tells a number of the station or the request.
bool has_number(const calc::Notice& notice) {
  return std::any_of(notice.args.begin(), notice.args.end(), [](const calc::Arg& arg) {
    return std::holds_alternative<double>(arg.value);
  });
}

/// The blocks with figures that should lead somewhere. Note i on safety is that of the
/// specification: one without a number of its own cites standards alone. Without a station nothing
/// is worked out with what would be assumed, nor is it listed.
std::vector<Block> to_lead(const Document& d) {
  std::vector<Block> list;
  std::size_t note = 0;
  for (const Block& block : d.blocks) {
    const bool of_safety = block.section == "s-safety" && block.name == "note";
    if (of_safety && !has_number(d.made.safety.at(note++))) continue;
    if (block.section == "s-questions" && d.made.chosen.empty()) continue;
    if (is_end(block) || is_among(plain, block) || whole::figures(block.text).empty()) continue;
    list.push_back(block);
  }
  return list;
}

/// Whether the answer to a requirement, the third cell of its row, has a figure but no link.
bool lacks_answer(const Block& block) {
  if (block.section != "s-requirement" || block.name != "row" || !block.links.empty()) {
    return false;
  }
  const std::vector<std::string> row = whole::cells(block);
  constexpr std::size_t answer = 2;
  return row.size() > answer && !whole::figures(row[answer]).empty();
}

/// Values of the steps that keys name.
std::vector<double> values_of(const calc::Specification& made, const std::string& keys) {
  std::vector<double> values;
  std::istringstream words(keys);
  for (std::string key; words >> key;) {
    for (const calc::Step& step : made.trace) {
      if (step.id == key) values.push_back(step.value);
    }
  }
  return values;
}

/// Value and inputs of the step of an id: what the search chose, a step has as an input.
std::vector<double> all_of(const calc::Specification& made, const std::string& id) {
  std::vector<double> values;
  for (const calc::Step& step : made.trace) {
    if (step.id != id) continue;
    values.push_back(step.value);
    for (const calc::StepInput& input : step.inputs) values.push_back(input.value);
  }
  return values;
}

/// The values of inputs that stand on the lines that keys name ("request.ini:7").
std::vector<double> given_at(const calc::Specification& made, const std::string& keys) {
  std::vector<double> values;
  for (const calc::Input& input : made.inputs) {
    const std::string key = output::place_key(input.origin);
    if (key.empty() || keys.find(key) == std::string::npos) continue;
    values.insert(values.end(), {input.value, input.low, input.high});
  }
  return values;
}

/// The text of a block without what names it, the first cell of a row, and without the margin of a
/// requirement, which is that of the figures beside it.
std::string told_of(const Block& block) {
  if (block.name != "row") return block.text;
  std::vector<std::string> row = whole::cells(block);
  if (row.size() < 2) return block.text;
  constexpr std::size_t margin = 3;
  if (block.section == "s-requirement" && row.size() > margin) row[margin].clear();
  std::string text = "-";
  for (std::size_t i = 1; i < row.size(); ++i) text += " | " + row[i];
  return text;
}

/// All that a block leads to: values and inputs of its steps, values of the lines of the request,
/// figures that are links, and those of the rows these lead to.
struct Reached {
  std::vector<double> values;
  std::vector<whole::Figure> figures;

  void add(const std::vector<double>& more) {
    values.insert(values.end(), more.begin(), more.end());
  }
  void add(const std::string& text) {
    const std::vector<whole::Figure> more = whole::figures("- " + text);  // no row's number
    figures.insert(figures.end(), more.begin(), more.end());
  }
  bool has(const whole::Figure& figure) const {
    return std::any_of(values.begin(), values.end(),
                       [&](double value) { return whole::shows({figure}, value); }) ||
           std::any_of(figures.begin(), figures.end(), [&](const whole::Figure& other) {
             return whole::shows({figure}, other.value);
           });
  }
};

Reached reached_by(const Document& d, const Block& block) {
  Reached reached;
  std::istringstream words(block.keys);
  for (std::string key; words >> key;) reached.add(all_of(d.made, key));
  reached.add(given_at(d.made, block.keys));
  for (const whole::TextLink& link : block.links) {
    reached.add(link.text);
    reached.add(all_of(d.made, link.to));
    const auto row = d.anchors.find(link.to);
    if (row != d.anchors.end()) reached.add(row->second);
  }
  return reached;
}

/// Whether a block of sheet 1 says why the nearest head is left out.
bool is_reason(const Block& block) {
  return block.section == "front" && block.text.find(" against at ") != std::string::npos;
}

/// Whether what is linked is the name of the step itself.
bool is_name(const whole::TextLink& link) {
  const std::size_t dot = link.text.find('.');
  return dot != std::string::npos && link.to.starts_with(link.text.substr(0, dot));
}

/// Whether a figure is the difference of two that are reached, as by how much a head falls short.
bool is_difference(const Reached& reached, const std::vector<whole::Figure>& all,
                   const whole::Figure& figure) {
  for (const whole::Figure& a : all) {
    for (const whole::Figure& b : all) {
      if (reached.has(a) && reached.has(b) && whole::shows({figure}, a.value - b.value))
        return true;
    }
  }
  return false;
}

/// Whether what is linked is told in another way: what the cost comes to with a term moved, beside
/// by how much it moves; a fraction by its terms.
bool is_of_it(std::string_view id) {
  return id.starts_with("station.swing.") || id.ends_with(".encoder_fraction");
}

}  // namespace

TEST_CASE("every figure of the text leads to its step or to where it was given") {
  for (const Document& d : documents()) {
    for (const Block& block : to_lead(d)) {
      CAPTURE(d.made.id);
      CAPTURE(block.section);
      CAPTURE(block.text);
      CHECK((!block.links.empty() || !block.keys.empty()));
      CHECK_FALSE(lacks_answer(block));
    }
  }
}

TEST_CASE("each figure of a block is one that the block leads to") {
  std::size_t seen = 0;
  for (const Document& d : documents()) {
    for (const Block& block : to_lead(d)) {
      if (is_of_notices(block) || is_among(of_rules, block)) continue;
      const Reached reached = reached_by(d, block);
      CAPTURE(d.made.id);
      CAPTURE(block.section);
      CAPTURE(block.text);
      CAPTURE(block.keys);
      const std::vector<whole::Figure> all = whole::figures(told_of(block));
      for (const whole::Figure& figure : all) {
        ++seen;
        CAPTURE(figure.value);
        const bool falls_short = block.section == "s-rejected" || is_reason(block);
        CHECK((reached.has(figure) || (falls_short && is_difference(reached, all, figure))));
      }
    }
  }
  CHECK(seen > 5000);
}

TEST_CASE("a block that leads to steps shows the figure of one of them") {
  std::size_t seen = 0;
  for (const Document& d : documents()) {
    for (const Block& block : d.blocks) {
      const std::vector<double> values = values_of(d.made, block.keys);
      const std::vector<whole::Figure> told = whole::figures(block.text);
      if (values.empty() || told.empty() || is_end(block)) continue;
      ++seen;
      CAPTURE(d.made.id);
      CAPTURE(block.section);
      CAPTURE(block.text);
      CAPTURE(block.keys);
      CHECK(std::any_of(values.begin(), values.end(),
                        [&](double value) { return whole::shows(told, value); }));
    }
  }
  CHECK(seen > 1000);
}

TEST_CASE("a figure that is a link to a step is the step's, or one it takes") {
  std::size_t seen = 0;
  for (const Document& d : documents()) {
    for (const whole::TextLink& link : d.links) {
      const std::vector<double> values = all_of(d.made, link.to);
      const std::vector<whole::Figure> told = whole::figures(link.text);
      if (values.empty() || told.empty() || is_of_it(link.to) || is_name(link)) continue;
      ++seen;
      CAPTURE(d.made.id);
      CAPTURE(link.text);
      CAPTURE(link.to);
      CHECK(std::any_of(values.begin(), values.end(),
                        [&](double value) { return whole::shows(told, value); }));
    }
  }
  CHECK(seen > 100);
}

TEST_CASE("no link of a text leads nowhere") {
  for (const Document& d : documents()) {
    CAPTURE(d.made.id);
    CHECK(d.links.size() > 5);
    for (const whole::TextLink& link : d.links) {
      CAPTURE(link.text);
      CAPTURE(link.to);
      CHECK(d.anchors.contains(link.to));
    }
  }
}

TEST_CASE("every line of the parts list serves at least one requirement") {
  constexpr std::size_t cells = 10, serves = 6;
  std::size_t seen = 0;
  for (const Document& d : documents()) {
    for (const Block& block : d.blocks) {
      if (block.section != "s-parts" || block.name != "row") continue;
      const std::vector<std::string> row = whole::cells(block);
      if (row.size() != cells || row.front().empty() || row.front() == "Item") continue;
      ++seen;
      CAPTURE(d.made.id);
      CAPTURE(block.text);
      CHECK_FALSE(row[serves].empty());
    }
  }
  CHECK(seen > 200);
}
