// What must stay, or move only one way, when a request or a catalogue is changed in a way that says
// the same, less, or more. Each relation is of method.md, sections 3 and 10.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "calc/bom_prices.h"
#include "calc/calculate.h"
#include "calc/compare.h"
#include "calc/selection_parts.h"
#include "output/json.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/whole/support/written.h"

using namespace calc;

namespace {

using Json = nlohmann::json;

constexpr const char* date = "2026-11-20";
constexpr std::size_t heads = 8;

std::uint64_t some_number() { return *rc::gen::inRange<std::uint64_t>(0, 100000); }

/// By half to the whole.
void cheapen(Row& row) {
  if (!row.price) return;
  const double k = *rc::gen::inRange(500, 1001) / 1000.0;
  Money& amount = row.price->value.amount;
  amount.minor = static_cast<std::int64_t>(static_cast<double>(amount.minor) * k);
  row.price->low = row.price->high = row.price->value;
}

void cheapen(Catalogue& c) {
  for (Head& row : c.heads) cheapen(row);
  for (Board& row : c.boards) cheapen(row);
  for (Supply& row : c.supplies) cheapen(row);
  for (Lamp& row : c.lamps) cheapen(row);
  for (Dryer& row : c.dryers) cheapen(row);
  for (Part& row : c.parts) cheapen(row);
}

/// Least heads of an accepted arrangement of one group in one pass; none: nothing is accepted.
std::vector<std::optional<int>> least_heads(const Request& r, const Catalogue& c) {
  const Job job = resolve(r, c, date);
  std::vector<std::optional<int>> least;
  if (!job.missing.empty() || !job.single_pass) return least;
  const PriceBook book(c, job.currency);
  const Search search = prepare(job, c, book);
  for (const auto& tries : Trials(search, false, nullptr, Trials::When::at_once).all()) {
    least.emplace_back();
    for (const HeadTry& t : tries) {
      for (const Candidate& a : t.accepted) {
        const int count = a.arrangement.heads;
        least.back() = least.back() ? std::min(*least.back(), count) : count;
      }
    }
  }
  return least;
}

void slow_down(Line& line, double k) {
  for (Given<Speed>* v : {&line.speed}) {
    if (*v) **v = {(*v)->value * k, (*v)->low * k, (*v)->high * k, (*v)->spread, (*v)->origin};
  }
  for (Given<AreaRate>* v : {&line.throughput_area}) {
    if (*v) **v = {(*v)->value * k, (*v)->low * k, (*v)->high * k, (*v)->spread, (*v)->origin};
  }
  for (Given<Frequency>* v : {&line.throughput_parts}) {
    if (*v) **v = {(*v)->value * k, (*v)->low * k, (*v)->high * k, (*v)->spread, (*v)->origin};
  }
}

void add_names(const Json& groups, std::set<std::string>& names) {
  for (const Json& g : groups) names.insert(g.at("head").get<std::string>());
}

/// Heads that would come in if a demand for service were dropped: the answer tells of them without
/// a name.
void add_kept_out(const Json& spec, std::set<std::string>& names) {
  for (const Json& must : spec.at("musts_in_the_way")) {
    const std::string code = must.get<std::string>().substr(std::string("service.").size());
    for (const Json& row : spec.at("rejected")) {
      for (const Json& reason : row.at("reasons")) {
        if (reason.at("code") == code) names.insert(row.at("head").get<std::string>());
      }
    }
  }
}

/// Heads that a specification speaks of beside their own row of reasons.
std::set<std::string> named(const Json& spec) {
  std::set<std::string> names;
  if (spec.contains("chosen")) add_names(spec.at("chosen").at("groups"), names);
  for (const Json& a : spec.at("alternatives")) add_names(a.at("groups"), names);
  if (spec.contains("edges")) {
    for (const Json& e : spec.at("edges")) add_names(e.at("arrangement"), names);
  }
  if (spec.contains("nearest_miss") && !spec.at("nearest_miss").is_null()) {
    add_names(spec.at("nearest_miss").at("arrangement"), names);
  }
  for (const Json& q : spec.at("questions")) {
    if (!q.contains("lets_pass")) continue;
    for (const Json& head : q.at("lets_pass")) names.insert(head.get<std::string>());
  }
  if (spec.contains("musts_in_the_way")) add_kept_out(spec, names);
  if (spec.contains("speed_steps")) {
    for (const Json& step : spec.at("speed_steps")) {
      if (!step.contains("heads")) continue;
      for (const Json& head : step.at("heads")) names.insert(head.get<std::string>());
    }
  }
  return names;
}

/// The file without a head's own row, steps and catalogue values, and without the place in the
/// catalogue that a loser by nothing else is told.
Json without(Json spec, const std::string& head) {
  spec.at("catalogue").erase("used_sha256");
  const auto drop = [](Json& list, auto is) {
    list.erase(std::remove_if(list.begin(), list.end(), is), list.end());
  };
  drop(spec.at("inputs"), [&](const Json& input) {
    return input.at("key").get<std::string>().starts_with("head." + head + ".");
  });
  drop(spec.at("rejected"), [&](const Json& row) { return row.at("head") == head; });
  drop(spec.at("trace"), [&](const Json& step) {
    return step.at("id").get<std::string>().starts_with("left_out." + head + ".");
  });
  for (Json& row : spec.at("rejected")) {
    for (Json& reason : row.at("reasons")) {
      if (reason.at("code") == "lost" && reason.at("subject") == "order") reason = "order";
    }
  }
  return spec;
}

Json json_of(const Request& r, const Catalogue& c) {
  return Json::parse(output::write_json(calculate(r, c, date), {}));
}

std::vector<std::string> chosen_heads(const Specification& spec) {
  std::vector<std::string> names;
  for (const Group& g : spec.chosen) names.push_back(g.head + "/" + g.mode);
  return names;
}

/// Whether numbers agree to 1e-9 and all else exactly.
bool alike(const Json& a, const Json& b) {
  if (a.is_number() && b.is_number()) {
    const double x = a.get<double>();
    const double y = b.get<double>();
    return std::abs(x - y) <= 1e-9 * std::max({std::abs(x), std::abs(y), 1e-9});
  }
  if (a.type() != b.type() || a.size() != b.size()) return false;
  if (!a.is_structured()) return a == b;
  if (a.is_array()) return std::equal(a.begin(), a.end(), b.begin(), alike);
  const auto items = a.items();
  return std::all_of(items.begin(), items.end(), [&](const auto& item) {
    return b.contains(item.key()) && alike(item.value(), b.at(item.key()));
  });
}

}  // namespace

TEST_CASE("a cheaper catalogue is never more than 5 % dearer") {
  int compared = 0;
  CHECK(rc::check("of requests without wishes and budget", [&] {
    const std::uint64_t number = some_number();
    Request r = made::request(number);
    r.service = {};
    r.limits.budget.reset();
    Catalogue c = made::catalogue(number, heads);
    const Specification before = calculate(r, c, date);
    cheapen(c);
    const Specification after = calculate(r, c, date);
    RC_ASSERT(before.chosen.empty() == after.chosen.empty());
    if (before.chosen.empty()) return;
    ++compared;
    RC_ASSERT(static_cast<double>(after.station->cost.ownership.minor) <=
              1.05 * static_cast<double>(before.station->cost.ownership.minor) + 1);
  }));
  CHECK(compared > 10);
}

TEST_CASE("a slower line never needs more heads at the least") {
  int compared = 0;
  CHECK(rc::check("of heads without a band of bad frequencies", [&] {
    const std::uint64_t number = some_number();
    Request r = made::request(number);
    Catalogue c = made::catalogue(number, heads);
    for (Head& head : c.heads) head.avoid.reset();
    const auto fast = least_heads(r, c);
    slow_down(r.line, *rc::gen::inRange(300, 1000) / 1000.0);
    const auto slow = least_heads(r, c);
    RC_ASSERT(fast.size() == slow.size());
    for (std::size_t g = 0; g < fast.size(); ++g) {
      if (!fast[g]) continue;
      ++compared;
      RC_ASSERT(slow[g].has_value());
      RC_ASSERT(*slow[g] <= *fast[g]);
    }
  }));
  CHECK(compared > 10);
}

TEST_CASE("a head that is named nowhere else leaves only its own row when it goes") {
  int compared = 0;
  CHECK(rc::check("of requests and catalogues made by number", [&] {
    const std::uint64_t number = some_number();
    const Request r = made::request(number);
    Catalogue c = made::catalogue(number, heads);
    const Json before = json_of(r, c);
    const std::set<std::string> names = named(before);
    const auto at = static_cast<std::ptrdiff_t>(*rc::gen::inRange<std::size_t>(0, heads));
    const std::string gone = c.heads[static_cast<std::size_t>(at)].name;
    if (names.count(gone) == 1) return;
    // Where no station fits, the reasons of a head are those of a station with heads of other
    // groups, of which this may be one.
    if (before.at("verdict") == "infeasible" && resolve(r, c, date).groups.size() > 1) return;
    ++compared;
    c.heads.erase(c.heads.begin() + at);
    const Json changes = Json::diff(without(before, gone), without(json_of(r, c), gone));
    RC_LOG() << gone << ": " << changes.dump();
    RC_ASSERT(changes.empty());
  }));
  CHECK(compared > 10);
}

TEST_CASE("feet, inches and their like change nothing") {
  const whole::Entries& metric = whole::plain_request();
  const Catalogue catalogue = whole::read_catalogue(whole::plain_catalogue());
  const std::string customary =
      "image.width = 7.874015748031496 in\nline.speed = 98.4251968503937 ft/min\n"
      "line.throw_distance = 39.37007874015748 mil\nline.throw_variation = 0.3937007874015748 mil\n"
      "substrate.dot_diameter = 2.440944881889764 mil\nline.air_temperature = 77 degF\n"
      "image.registration = 2.362204724409449 mil\nsubstrate.temperature_limit = 176 degF\n"
      "ink.black.viscosity = 20 cP at 77 degF; 9 cP at 122 degF\n"
      "ink.cyan.viscosity = 20 cP at 77 degF; 9 cP at 122 degF\n";
  for (const char* more :
       {"", "image.width = 431.8 mm\n", "line.speed = 121.92 m/min\n", "limits.heads = 1\n"}) {
    CAPTURE(more);
    const auto figures = [&](const std::string& changes) {
      const auto read = whole::read_request(whole::changed(metric, changes));
      Json json = json_of(read.request, catalogue);
      json.erase("inputs");
      json.at("request").erase("source_sha256");
      return json;
    };
    const Json si = figures(more);
    CHECK(alike(si, figures(customary + more)));
    CHECK_FALSE(alike(si, figures(customary + "image.width = 7.9 in\nline.speed = 99 ft/min\n")));
  }
}

TEST_CASE("what is chosen does not hang on the catalogue's order but at the very last") {
  int compared = 0;
  CHECK(rc::check("of catalogues in another order", [&] {
    const std::uint64_t number = some_number();
    const Request r = made::request(number);
    Catalogue c = made::catalogue(number, heads);
    const Specification before = calculate(r, c, date);
    if (before.chosen.size() != 1) return;
    ++compared;
    std::vector<Head> shuffled = c.heads;
    for (std::size_t i = shuffled.size() - 1; i > 0; --i) {
      std::swap(shuffled[i], shuffled[*rc::gen::inRange<std::size_t>(0, i + 1)]);
    }
    c.heads = shuffled;
    const Specification after = calculate(r, c, date);
    if (chosen_heads(before) == chosen_heads(after)) return;
    // Another one only where nothing but the place in the catalogue tells the two apart.
    const auto row =
        std::find_if(after.rejected.begin(), after.rejected.end(),
                     [&](const RejectedHead& h) { return h.head == before.chosen.front().head; });
    RC_ASSERT(row != after.rejected.end());
    RC_ASSERT(row->reasons.size() == 1U);
    RC_ASSERT(row->reasons.front().subject == "order");
  }));
  CHECK(compared > 10);
}
