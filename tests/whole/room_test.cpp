// The smallest change that lets something fit, and the edges of what fits, tried from outside: the
// request is changed by the tests, and the whole calculation run again.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <iterator>
#include <nlohmann/json.hpp>
#include <set>

#include "calc/calculate.h"
#include "calc/judge.h"
#include "calc/selection_parts.h"
#include "output/json.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/eased.h"
#include "tests/whole/support/samples.h"

namespace {

using Json = nlohmann::json;

constexpr const char* date = "2026-11-20";
constexpr double beyond = 1e-6;  // method.md, edges

Json json_of(const calc::Specification& spec) { return Json::parse(output::write_json(spec, {})); }

std::string digits(double value) {
  std::array<char, 32> text{};
  const char* const end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
  return {text.begin(), std::next(text.begin(), end - text.data())};
}

bool fits(const calc::Request& request, const calc::Catalogue& catalogue) {
  return !calc::calculate(request, catalogue, date).chosen.empty();
}

/// Heads, modes, and how many of them, of each group.
std::string hardware(const std::vector<calc::Group>& groups) {
  std::string text;
  for (const calc::Group& g : groups) {
    text += g.head + "/" + g.mode + "/" + std::to_string(g.interleave) + "/" +
            std::to_string(g.stack) + "/" + std::to_string(g.film_heads) + "/" +
            std::to_string(g.heads_total) + ";";
  }
  return text;
}

/// Whether an edge's claim holds for a request: `recommended` claims what `passes` does and more.
bool holds(const std::string& kind, const calc::Request& request, const calc::Catalogue& catalogue,
           const std::vector<calc::Group>& chosen) {
  const auto& printed = request.image.width;
  const auto& product = request.product.width;
  if (printed && product && printed->high > product->low * (1 + 1e-9)) return false;  // refused
  const calc::Job job = calc::resolve(request, catalogue, date);
  calc::Judge judge(catalogue, job.currency, chosen, calc::Judge::Heads::built);
  if (!judge.of(job).failing.empty()) return false;
  return kind == "passes" ||
         hardware(calc::calculate(request, catalogue, date).chosen) == hardware(chosen);
}

/// The factor just beyond an edge: 1e-6 of it, and at least one of what is counted.
double outside(const Json& edge) {
  const double value = edge.at("value");
  double step = value * beyond;
  if (edge.at("quantity") == "limits.heads") step = 1;
  if (edge.at("quantity") == "limits.budget") step = std::max(step, 0.01);
  const bool up = edge.at("direction") == "up";
  return (up ? value + step : value - step) / edge.at("now").get<double>();
}

void check_edge(const Json& edge, const calc::Request& request, const calc::Catalogue& catalogue,
                const std::vector<calc::Group>& chosen) {
  const std::string key = edge.at("quantity");
  const std::string kind = edge.at("kind");
  const double now = edge.at("now");
  const bool up = edge.at("direction") == "up";
  CAPTURE(key);
  CAPTURE(kind);
  CAPTURE(up);
  if (edge.at("value").is_null()) {
    CHECK(edge.at("printed").is_null());
    CHECK(holds(kind, whole::moved(request, key, up ? 2 : 0.5), catalogue, chosen));
    return;
  }
  const double value = edge.at("value");
  const double printed = edge.at("printed");
  CAPTURE(value);
  CAPTURE(printed);
  CHECK((up ? value >= now : value <= now));
  CHECK((up ? printed <= value * (1 + 1e-9) : printed >= value * (1 - 1e-9)));
  CHECK((up ? printed >= now : printed <= now));
  CHECK(holds(kind, whole::moved(request, key, value / now), catalogue, chosen));
  CHECK(holds(kind, whole::moved(request, key, printed / now), catalogue, chosen));
  CHECK_FALSE(holds(kind, whole::moved(request, key, outside(edge)), catalogue, chosen));
}

std::size_t check_edges(const calc::Request& request, const calc::Catalogue& catalogue) {
  const calc::Specification spec = calc::calculate(request, catalogue, date);
  const Json json = json_of(spec);
  CAPTURE(spec.id);
  CHECK(json.contains("edges") == !spec.chosen.empty());
  CHECK(json.contains("nearest_miss") == (spec.verdict == calc::Verdict::infeasible));
  if (!json.contains("edges")) return 0;
  for (const Json& edge : json.at("edges")) check_edge(edge, request, catalogue, spec.chosen);
  return json.at("edges").size();
}

const Json* find(const Json& edges, const std::string& quantity, const std::string& kind) {
  for (const Json& edge : edges) {
    if (edge.at("quantity") == quantity && edge.at("kind") == kind) return &edge;
  }
  return nullptr;
}

/// `key = value unit` that sets the moved number in a request of case_of().
std::string setting(const Json& miss, const calc::Request& request) {
  const std::string key = miss.at("field");
  const double to = miss.at("to");
  if (!key.ends_with(".viscosity")) {
    return key + " = " + digits(to) + " " + miss.at("unit").get<std::string>() + "\n";
  }
  const double factor = to / miss.at("from").get<double>();
  std::string text;
  for (const calc::Ink& ink : request.inks) {
    if (key != "ink." + ink.name + ".viscosity") continue;
    for (const calc::ViscosityPoint& p : ink.viscosity->value) {
      text += (text.empty() ? "" : "; ") + digits(calc::in_mpas(p.viscosity) * factor) +
              " mPa.s at " + digits(p.temperature.in_celsius()) + " degC";
    }
  }
  return key + " = " + text + "\n";
}

/// No number eased by a ratio of that logarithm, one at a time, lets anything fit.
void check_none_nearer(const whole::Case& made, double distance) {
  const calc::Request& request = made.request.request;
  for (const std::string& key : whole::movable_keys(request)) {
    CAPTURE(key);
    CAPTURE(distance);
    const int way = whole::easing(key);
    if (way != 1)
      CHECK_FALSE(fits(whole::moved(request, key, std::exp(-distance)), made.catalogue));
    if (way != -1)
      CHECK_FALSE(fits(whole::moved(request, key, std::exp(distance)), made.catalogue));
  }
}

/// How far it was before it was rounded, at the least: three digits to the far side; a
/// count is not rounded.
double least_distance(const Json& miss) {
  const double from = miss.at("from");
  const double to = miss.at("to");
  const double step = miss.at("unit").get_ref<const std::string&>().empty()
                          ? 0
                          : std::pow(10.0, std::floor(std::log10(to)) - 2);
  const double nearer = to > from ? std::max(from, to - step) : std::min(from, to + step);
  return std::abs(std::log(nearer / from)) * (1 - 1e-5);
}

/// Requests that the plain catalogue is asked too much with, made by number.
std::string too_much(unsigned number) {
  unsigned state = number * 2654435761U + 12345U;
  const auto pick = [&](unsigned count) {
    state = state * 1664525U + 1013904223U;
    return (state >> 16U) % count;
  };
  std::string changes;
  const unsigned count = 1 + pick(2);
  for (unsigned i = 0; i < count; ++i) {
    switch (pick(9)) {
      case 0:
        changes += "line.speed = " + std::to_string(150 + 50 * pick(10)) + " m/min\n";
        break;
      case 1:
        changes += "limits.heads = " + std::to_string(1 + pick(7)) + "\n";
        break;
      case 2:
        changes += "limits.budget = " + std::to_string(20000 + 9000 * pick(10)) + " EUR\n";
        break;
      case 3:
        changes += "image.width = " + std::to_string(200 + 50 * pick(20)) + " mm\n";
        break;
      case 4:
        changes += "image.resolution = " + std::to_string(700 + 200 * pick(9)) + " dpi\n";
        break;
      case 5:
        changes += "line.throw_distance = " + std::to_string(2 + pick(5)) + " mm\n";
        break;
      case 6:
        changes += "ink.black.viscosity = " + std::to_string(25 + 8 * pick(9)) +
                   " mPa.s at 25 degC; " + std::to_string(14 + 2 * pick(9)) + " mPa.s at 50 degC\n";
        break;
      case 7:
        changes += "limits.space = " + std::to_string(200 + 90 * pick(9)) + " mm\n";
        break;
      default:
        changes += "limits.lead_time = " + std::to_string(10 + 9 * pick(9)) + " day\n";
    }
  }
  return changes;
}

}  // namespace

TEST_CASE("every edge of every sample passes, and just beyond it does not") {
  std::size_t edges = 0;
  for (const auto& sample : whole::sample_requests()) {
    edges += check_edges(sample.request, whole::sample_catalogue());
  }
  CHECK(edges > 100);
}

TEST_CASE("an edge that a closed form knows is that") {
  const whole::Case made = whole::case_of("");
  const Json json = json_of(made.specification);
  const calc::Group& g = made.specification.chosen.front();
  const Json* const speed = find(json.at("edges"), "line.speed", "passes");
  REQUIRE(speed != nullptr);
  const Json* const width = find(json.at("edges"), "image.width", "passes");
  REQUIRE(width != nullptr);
  // Source: method.md section 3, speed limit = m f_allowed 25.4/R_m; S + (n - 1) P covers the
  // width.
  if (speed->value("beyond", "") == "frequency") {
    CHECK(speed->at("value").get<double>() ==
          doctest::Approx(g.speed_limit.si() * 60).epsilon(1e-6));
  }
  CHECK(width->value("beyond", "") == "width");
  const double reach = calc::in_mm(g.swath + g.head_pitch * (g.heads_across - 1));
  CHECK(width->at("value").get<double>() == doctest::Approx(reach).epsilon(1e-6));
}

TEST_CASE("an image widens as far as its product") {
  for (const double wide : {214.0, 210.0}) {
    const whole::Case made = whole::case_of("product.width = " + digits(wide) +
                                            " mm\nimage.width = 210 mm\nimage.margin = 0 mm\n");
    REQUIRE_FALSE(made.specification.chosen.empty());
    const Json json = json_of(made.specification);
    const Json* const width = find(json.at("edges"), "image.width", "passes");
    REQUIRE(width != nullptr);
    CHECK(width->at("value") == doctest::Approx(wide));
    CHECK(width->at("beyond") == "product");
  }
}

TEST_CASE("the nearest miss of requests that ask too much is accepted, and nothing nearer is") {
  int infeasible = 0, helped = 0;
  std::set<std::string> fields;
  for (unsigned i = 0; infeasible < 60 && i < 600; ++i) {
    const std::string changes = too_much(i);
    CAPTURE(changes);
    const whole::Case made = whole::case_of(changes);
    if (made.specification.verdict != calc::Verdict::infeasible) continue;
    ++infeasible;
    const Json miss = json_of(made.specification).at("nearest_miss");
    if (miss.is_null()) {
      check_none_nearer(made, std::log(2.0));
      continue;
    }
    ++helped;
    CAPTURE(miss.dump());
    fields.insert(miss.at("field"));
    const whole::Case again = whole::case_of(changes + setting(miss, made.request.request));
    CHECK_FALSE(again.specification.chosen.empty());
    const double distance = least_distance(miss);
    CHECK(distance <= std::log(2.0));
    if (distance > 0) check_none_nearer(made, distance);
    CHECK(made.markup().find("Smallest change that helps") != std::string::npos);
  }
  CHECK(infeasible == 60);
  CHECK(helped >= 20);
  CHECK(fields.size() >= 4);
}

TEST_CASE("the nearest miss of every infeasible sample is accepted, or nothing is near") {
  int infeasible = 0;
  for (const auto& sample : whole::sample_requests()) {
    whole::Case made{sample, whole::sample_catalogue(), {}};
    made.specification = calc::calculate(sample.request, made.catalogue, date);
    if (made.specification.verdict != calc::Verdict::infeasible) continue;
    ++infeasible;
    const Json miss = json_of(made.specification).at("nearest_miss");
    if (miss.is_null()) {
      check_none_nearer(made, std::log(2.0));
      continue;
    }
    const double factor = miss.at("to").get<double>() / miss.at("from").get<double>();
    CHECK(fits(whole::moved(sample.request, miss.at("field"), factor), made.catalogue));
  }
  CHECK(infeasible > 0);
}

TEST_CASE("a must that alone keeps everything out is named") {
  const std::string closed = "head.A.serviceable = none\nhead.B.serviceable = none\n";
  const whole::Case made = whole::case_of(closed + "service.serviceable = must\n");
  REQUIRE(made.specification.verdict == calc::Verdict::infeasible);
  CHECK(made.specification.musts_in_the_way == std::vector<std::string>{"service.serviceable"});
  CHECK(made.markup().find("without the demand for") != std::string::npos);
}
