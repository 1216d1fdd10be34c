#include "output/compose.h"

#include <doctest/doctest.h>

#include <functional>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "output/markup.h"
#include "tests/output/support/hand_made.h"

namespace {

using hand_made::Case;
using hand_made::templates;

std::string markup(const Case& made) {
  return output::compose(made.spec, made.request, templates());
}

void collect_text(const output::Node& node, std::string& text) {
  text += node.text;
  for (const auto& [name, value] : node.attributes) text += ' ' + value + ' ';
  for (const output::Node& child : node.children) collect_text(child, text);
}

/// The section of that anchor, text and attributes, empty when the document has none.
std::string section(const output::Node& root, const std::string& id) {
  std::string text;
  for (const output::Node& child : root.children) {
    const bool is_front = id == "front" && child.name == "front";
    if (is_front || child.get("id") == id) collect_text(child, text);
  }
  return text;
}

void collect_ids(const output::Node& node, std::multiset<std::string>& ids,
                 std::set<std::string>& targets) {
  if (!node.get("id").empty() && node.name != "document") ids.insert(std::string(node.get("id")));
  std::istringstream also{std::string(node.get("also"))};
  for (std::string id; also >> id;) ids.insert(id);
  if (node.name == "a") targets.insert(std::string(node.get("to")));
  for (const output::Node& child : node.children) collect_ids(child, ids, targets);
}

}  // namespace

TEST_CASE("every kind of verdict gives well-formed markup whose links arrive") {
  for (const auto& make : {hand_made::feasible, hand_made::conditional, hand_made::scanning,
                           hand_made::infeasible, hand_made::incomplete, hand_made::hostile}) {
    const Case made = make();
    CAPTURE(made.spec.title);
    CAPTURE(static_cast<int>(made.spec.verdict));
    const output::Node root = output::parse_markup(markup(made));
    std::multiset<std::string> ids;
    std::set<std::string> targets;
    collect_ids(root, ids, targets);
    for (const std::string& id : ids) {
      CAPTURE(id);
      CHECK(ids.count(id) == 1);
    }
    for (const std::string& target : targets) {
      CAPTURE(target);
      CHECK(ids.count(target) == 1);
    }
  }
}

TEST_CASE("the document of a request that can be met has every section") {
  const output::Node root = output::parse_markup(markup(hand_made::conditional()));
  for (const std::string id : {"s-requirement", "s-conditions", "s-resolution", "s-arrangement",
                               "s-frequency", "s-dots", "s-ink", "s-stages", "s-safety", "s-parts",
                               "s-heads", "s-questions", "s-checks", "s-trace", "s-sources"}) {
    CAPTURE(id);
    CHECK_FALSE(section(root, id).empty());
  }
}

TEST_CASE("an infeasible request is told what fails and by how much, and gets no figures") {
  const output::Node root = output::parse_markup(markup(hand_made::infeasible()));
  const std::string front = section(root, "front");
  CHECK(front.find("Not feasible as asked") != std::string::npos);
  CHECK(front.find("Z-10") != std::string::npos);  // one reason against two
  CHECK(front.find("180\xC2\xA0"
                   "dpi against at least 254\xC2\xA0"
                   "dpi") != std::string::npos);
  CHECK(front.find("74\xC2\xA0"
                   "dpi too coarse") != std::string::npos);
  for (const std::string id : {"s-arrangement", "s-frequency", "s-dots", "s-ink", "s-parts"}) {
    CAPTURE(id);
    CHECK(section(root, id).empty());
  }
}

TEST_CASE("an incomplete request is told the least needed") {
  const output::Node root = output::parse_markup(markup(hand_made::incomplete()));
  const std::string front = section(root, "front");
  CHECK(front.find("How wide is the printed image?") != std::string::npos);
  CHECK(front.find("How many hours a day") == std::string::npos);  // that one can be assumed
  CHECK(section(root, "s-safety").empty());
}

TEST_CASE("names full of markup come out as text") {
  const output::Node root = output::parse_markup(markup(hand_made::hostile()));
  CHECK(root.get("title") == "<b a=\"'\">&amp; {{X}} \\x01\\x7f \xEF\xBF\xBD\xEF\xBF\xBD ]]>");
}

TEST_CASE("margin keys name the place of the request and the step of the trace") {
  const std::string text = markup(hand_made::feasible());
  CHECK(text.find("key=\"cork\xC2\xA0line.ini:8\"") != std::string::npos);
  CHECK(text.find("key=\"g1.column\"") != std::string::npos);
  CHECK(text.find("id=\"g1.column\"") != std::string::npos);
  CHECK(text.find("<a to=\"s-given-line.speed\">line.speed</a>") != std::string::npos);
  CHECK(text.find("<a to=\"required.feature\">required.feature</a>") != std::string::npos);
}

TEST_CASE("a language without templates falls back to English and says so") {
  Case made = hand_made::feasible();
  made.spec.language = "xx";
  CHECK(output::parse_markup(markup(made)).get("language") == "en");
}

TEST_CASE("United States units stand before the metric ones") {
  Case made = hand_made::feasible();
  made.request.request.units = calc::exactly(calc::UnitSystem::us);
  // 1.27 m/s is 76.2 m/min and 250 ft/min: 76.2 / 0.3048, exactly.
  CHECK(markup(made).find("250\xC2\xA0"
                          "ft/min (76.2\xC2\xA0m/min)") != std::string::npos);
}

TEST_CASE("one changed input changes the text of its section") {
  struct Change {
    std::string section;
    std::function<void(Case&)> apply;
  };
  const std::vector<Change> changes{
      {"front", [](Case& c) { c.spec.heads_total = 33; }},
      {"front", [](Case& c) { c.spec.station->cost.capital = {100}; }},
      {"front", [](Case& c) { c.spec.questions.clear(); }},
      {"front", [](Case& c) { c.spec.conditions.pop_back(); }},
      {"s-requirement", [](Case& c) { c.spec.inputs[1].value = 260; }},
      {"s-requirement", [](Case& c) { c.spec.assumptions[0].value = 3; }},
      {"s-control", [](Case& c) { c.request.request.notes.reset(); }},
      {"s-control", [](Case& c) { c.spec.revision = "Z"; }},
      {"s-conditions", [](Case& c) { c.spec.conditions[0].args[1].value = 56.0; }},
      {"s-conditions", [](Case& c) { c.spec.warnings.clear(); }},
      {"s-resolution", [](Case& c) { c.spec.required->governed_by = "text"; }},
      {"s-resolution", [](Case& c) { c.spec.required->demands[0].hard = true; }},
      {"s-resolution", [](Case& c) { c.spec.chosen[0].barcodes[0].dots = 9; }},
      {"s-arrangement", [](Case& c) { c.spec.chosen[1].stack = 3; }},
      {"s-arrangement", [](Case& c) { c.spec.chosen[0].places[3].y += calc::millimetres(5); }},
      {"s-frequency", [](Case& c) { c.spec.chosen[0].frequency_use = 0.7; }},
      {"s-frequency", [](Case& c) { c.spec.chosen[0].speed_limit = calc::metres_per_second(1); }},
      {"s-dots", [](Case& c) { c.spec.chosen[0].dots[3].cover_fraction = 0.9; }},
      {"s-dots", [](Case& c) { c.spec.chosen[0].dots[3].spread_from = "measured_dot"; }},
      {"s-ink", [](Case& c) { c.spec.station->consumption[0].l_per_year = 500; }},
      {"s-ink", [](Case& c) { c.spec.station->spares[0].quantity = 9; }},
      {"s-stages", [](Case& c) { c.spec.station->stages[0].dose_mj_per_cm2 = 250; }},
      {"s-services", [](Case& c) { c.spec.station->stages[0].electrical_kw = 99; }},
      {"s-services", [](Case& c) { c.spec.station->stages[0].electrical_kw.reset(); }},
      {"s-services", [](Case& c) { c.spec.station->consumption[0].waste_ml_per_hour = 99; }},
      {"s-safety", [](Case& c) { c.spec.safety[0].args[1].value = 9.0; }},
      {"s-parts", [](Case& c) { c.spec.station->bom[0].quantity = 31; }},
      {"s-cost", [](Case& c) { c.spec.station->cost.years = 6; }},
      {"s-flexibility", [](Case& c) { c.spec.flexibility[0].free_colours = 2; }},
      {"s-uncertainty", [](Case& c) { c.spec.uncertainty[1].high = 340000; }},
      {"s-uncertainty", [](Case& c) { c.spec.uncertainty[1].mover = "line.days_per_year"; }},
      {"s-uncertainty", [](Case& c) { c.spec.uncertainty[0].mover = "assume.overlap"; }},
      {"s-parts", [](Case& c) { c.spec.station->bom_unpriced = 2; }},
      {"s-heads", [](Case& c) { c.spec.rejected[0].reasons[0].value = 20; }},
      {"s-heads", [](Case& c) { c.spec.alternatives[0].differs.pop_back(); }},
      {"s-questions", [](Case& c) { c.spec.questions[0].assumed = 1.7; }},
      {"s-checks", [](Case& c) { c.spec.tests[0].acceptance = 61; }},
      {"s-trace", [](Case& c) { c.spec.trace[1].value = 17717; }},
      {"s-trace", [](Case& c) { c.spec.trace[1].inputs[0].value = 751; }},
      {"s-sources", [](Case& c) { c.spec.trace[2].source = "another"; }},
      {"s-sources", [](Case& c) { c.spec.inputs.back().value = 7; }},
  };
  const Case base = hand_made::conditional();
  const output::Node before = output::parse_markup(markup(base));
  for (std::size_t i = 0; i < changes.size(); ++i) {
    CAPTURE(i);
    CAPTURE(changes[i].section);
    Case changed = base;
    changes[i].apply(changed);
    const output::Node after = output::parse_markup(markup(changed));
    CHECK(section(before, changes[i].section) != section(after, changes[i].section));
  }
}

TEST_CASE("a code without words is a fault, not a blank") {
  Case made = hand_made::feasible();
  made.spec.questions[0].code = "none_such";
  CHECK_THROWS_AS(markup(made), std::out_of_range);
}

TEST_CASE("no document claims what no arrangement shows") {
  const std::string none =
      section(output::parse_markup(markup(hand_made::infeasible())), "s-requirement");
  CHECK(none.find("Where the answer is a dash, nothing shows") != std::string::npos);
  CHECK(none.find("Where the answer is a dash") == none.rfind("Where the answer is a dash"));
  CHECK(none.find("\xE2\x80\x93") != std::string::npos);
  CHECK(none.find("the heads allow") == std::string::npos);
  Case slow = hand_made::infeasible();
  slow.spec.rejected.back().reasons = {{"frequency", "process", "rating", 17.5, 12, "kHz", false}};
  const std::string missed = section(output::parse_markup(markup(slow)), "s-requirement");
  CHECK(missed.find("not met: 17.5\xC2\xA0kHz against 12\xC2\xA0kHz") != std::string::npos);
  Case open = hand_made::infeasible();
  open.spec.verdict = calc::Verdict::incomplete;
  CHECK(section(output::parse_markup(markup(open)), "s-requirement").find("not answered") !=
        std::string::npos);
}

TEST_CASE("without a price of the heads page one prints no band") {
  Case made = hand_made::feasible();
  made.spec.station->heads_unpriced = true;
  const std::string front = section(output::parse_markup(markup(made)), "front");
  CHECK(front.find("Price of the printheads on request") != std::string::npos);
  CHECK(front.find("between") == std::string::npos);
  CHECK(front.find("Drive board") != std::string::npos);
}

TEST_CASE("the cost names every line that has no price as what it stands without") {
  Case made = hand_made::feasible();
  const auto cost = [&made] { return section(output::parse_markup(markup(made)), "s-cost"); };
  const std::string bound = "Capital and cost of ownership are lower bounds";
  CHECK(cost().find(bound + "; on request, and so not in them: Drive board.") != std::string::npos);
  made.spec.station->bom.front().unit_price.reset();
  made.spec.station->bom.front().extended_price.reset();
  CHECK(cost().find("in them: Printhead Q-64 and Drive board.") != std::string::npos);
  for (calc::BomLine& line : made.spec.station->bom) line.extended_price = calc::Money{100};
  CHECK(cost().find(bound) == std::string::npos);
}

TEST_CASE("what two groups fail alike is said once") {
  Case made = hand_made::infeasible();
  calc::Reason reason{"resolution", "process", "across", 180, 254, "dpi", true};
  made.spec.rejected.back().reasons = {reason, reason};
  made.spec.rejected.back().reasons.back().group = "white";
  const std::string heads = section(output::parse_markup(markup(made)), "s-heads");
  CHECK(heads.find("(both groups)") != std::string::npos);
  CHECK(heads.find("(group white)") == std::string::npos);
}
