#include "calc/uncertainty.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "calc/calculate.h"
#include "calc/judge.h"
#include "calc/placement.h"
#include "calc/selection.h"
#include "calc/verdict.h"
#include "support/catalogue_maker.h"
#include "support/check.h"

using namespace calc;
using made::given;

namespace {

constexpr const char* date = "2026-11-25";

Headlines figures(double heads, double ownership) {
  Headlines list;
  list.at(static_cast<std::size_t>(Headline::heads)) = heads;
  list.at(static_cast<std::size_t>(Headline::ownership)) = ownership;
  return list;
}

const Uncertainty& of(const std::vector<Uncertainty>& list, Headline figure) {
  const auto found = std::find_if(list.begin(), list.end(), [&](const Uncertainty& u) {
    return u.figure == headline_key(figure);
  });
  REQUIRE(found != list.end());
  return *found;
}

Specification plain(void (*change)(Request&)) {
  Request request = made::plain_request();
  change(request);
  return calculate(request, made::catalogue_of({made::plain_head("A")}), date);
}

/// An uncertain value, as `value +- half` reads.
template <class T>
Given<T> about(T value, T half) {
  return Value<T>{value, value - half, value + half, Spread::uncertain, {}};
}

/// The figures of the chosen arrangement when a default has another value.
Headlines moved(const Job& job, const Catalogue& catalogue, const std::vector<Group>& groups, P id,
                double to) {
  Parameters parameters;
  parameters.set(id, to);
  const Job other = resolve(*job.request, catalogue, date, parameters);
  Judge judge(catalogue, job.currency, groups);
  const Judged& judged = judge.of(other);
  return headlines(other, judged.groups, judged.sizing);
}

std::optional<P> default_of(const std::string& field) {
  for (std::size_t i = 0; i < static_cast<std::size_t>(P::count); ++i) {
    if (parameter(static_cast<P>(i)).key == field) return static_cast<P>(i);
  }
  return std::nullopt;
}

}  // namespace

TEST_CASE("low and high are the outermost of all inputs, the mover the one of the longest way") {
  Spreads spreads(figures(4, 100), "EUR");
  spreads.add({"a", "h", 8, 24}, {{8, figures(4, 95)}, {24, figures(4, 130)}});
  spreads.add({"b", "1", 0.1, 0.2}, {{0.2, figures(6, 80)}});
  spreads.add({"c", "1", 0.3, 0.4},
              {{0.3, Headlines{}}, {0.4, figures(4, 65)}});  // as long a way as a's
  const std::vector<Uncertainty> list = spreads.take();
  REQUIRE(list.size() == 2);  // no entry for figures that do not apply
  const Uncertainty& heads = list.front();
  CHECK(heads.figure == "heads_total");
  CHECK(heads.unit.empty());
  CHECK(heads.mover == "b");
  support::check_all({{"heads, low", heads.low, 4, 0, "by hand"},
                      {"heads, high", heads.high, 6, 0, "by hand"},
                      {"ownership, value", list[1].value, 100, 0, "by hand"},
                      {"ownership, low", list[1].low, 65, 0, "by hand"},
                      {"ownership, high", list[1].high, 130, 0, "by hand"},
                      {"its mover's low end", list[1].mover_low, 8, 0, "by hand"},
                      {"its mover's high end", list[1].mover_high, 24, 0, "by hand"}});
  CHECK_FALSE(heads.low_by.has_value());
  REQUIRE(heads.high_by.has_value());
  CHECK(heads.high_by->field == "b");
  REQUIRE(list[1].low_by.has_value());
  CHECK(list[1].low_by->field == "c");
  CHECK(list[1].low_by->at == 0.4);
  REQUIRE(list[1].high_by.has_value());
  CHECK(list[1].high_by->field == "a");
  CHECK(list[1].high_by->at == 24);
  CHECK(list[1].unit == "EUR");
  CHECK(list[1].mover == "a");
  CHECK(list[1].mover_unit == "h");
}

TEST_CASE("a speed given as uncertain moves the jetting frequency in proportion") {
  // 600 dots per inch at 30 m/min: 0.5 m/s x 600 / 25.4 mm = 11.811 kHz; a tenth up and down.
  // Open solids are allowed, else the lattice is finer along the motion.
  const Specification spec = plain([](Request& r) {
    r.line.speed = about(metres_per_second(0.5), metres_per_second(0.05));
    r.image.solids = given(false);
  });
  const Uncertainty& f = of(spec.uncertainty, Headline::frequency);
  CHECK(f.mover == "line.speed");
  support::check_all({{"value", f.value, 11.811023622, 1e-9, "by hand"},
                      {"low", f.low, 10.629921260, 1e-9, "by hand"},
                      {"high", f.high, 12.992125984, 1e-9, "by hand"}});
}

TEST_CASE("what nothing moves has equal ends and no mover") {
  const Specification spec = plain([](Request&) {});
  const Uncertainty& f = of(spec.uncertainty, Headline::frequency);
  CHECK(f.mover.empty());
  support::check_all(
      {{"low", f.low, f.value, 0, "identity"}, {"high", f.high, f.value, 0, "identity"}});
}

TEST_CASE("the moisture of the air that leaves moves the exhaust of a dryer most") {
  // A room given as 25 degC, 30 % holds 0.00593 kg/kg [C]; the air leaves with 0.030, range 0.020
  // to 0.060 kg/kg. Nearly as water over the rise: 1 / 0.0241 against 1 / 0.0141 and 1 / 0.0541.
  const Specification spec = plain([](Request& r) {
    r.inks.front().family = given(InkFamily::aqueous);
    r.line.air_temperature = given(Temperature::celsius(25));
    r.line.air_humidity = given(0.3);
  });
  const Uncertainty& exhaust = of(spec.uncertainty, Headline::exhaust);
  CHECK(exhaust.mover == "assume.exhaust_humidity");
  support::check_all(
      {{"high over value", exhaust.high / exhaust.value, 0.0241 / 0.0141 * 1.0322 / 1.0482, 5e-3,
        "by hand, volume with 1 + 1.607858 x"}});
  CHECK(exhaust.low < exhaust.value);
}

TEST_CASE("room to serve the heads moves the length of the station by its own range") {
  // 600 mm, range 500 to 800 mm: common practice, no source; the gap between rows, 10 mm with
  // range 5 to 20 mm, moves less.
  const Specification spec = plain([](Request&) {});
  const Uncertainty& length = of(spec.uncertainty, Headline::footprint);
  CHECK(length.mover == "assume.service_access");
  support::check_all({{"low", length.low, length.value - 100, 1e-12, "by hand"},
                      {"high", length.high, length.value + 200, 1e-12, "by hand"}});
}

TEST_CASE("an uncertain dose moves the rows of lamps, and they the length of the station") {
  // One row gives 12 W/cm2 x 0.6 x 20 mm x 0.8 / (0.5 m/s) = 230.4 mJ/cm2: two rows for 400, one
  // for 10, four for 790; each is 120 mm deep.
  const Specification spec = plain([](Request& r) {
    r.inks.front().cure_dose = about(Dose::from_si(4000), Dose::from_si(3900));
  });
  const Uncertainty& length = of(spec.uncertainty, Headline::footprint);
  CHECK(length.mover == "ink." + made::plain_request().inks.front().name + ".cure_dose");
  CHECK(length.mover_unit == "mJ/cm2");
  support::check_all({{"low", length.low, length.value - 120, 1e-12, "by hand"},
                      {"high", length.high, length.value + 240, 1e-12, "by hand"},
                      {"mover's low end", length.mover_low, 10, 1e-12, "by hand"},
                      {"mover's high end", length.mover_high, 790, 1e-12, "by hand"}});
}

TEST_CASE("an uncertain density of the ink moves the placement of dots") {
  const Specification spec = plain([](Request& r) {
    r.inks.front().density = about(Density::from_si(1050), Density::from_si(700));
  });
  const Specification heavy =
      plain([](Request& r) { r.inks.front().density = given(Density::from_si(1750)); });
  const Uncertainty& dot = of(spec.uncertainty, Headline::dot);
  const double of_heavy = of(heavy.uncertainty, Headline::dot).value;
  CHECK(of_heavy > dot.value);
  CHECK(dot.high >= of_heavy);
}

TEST_CASE("the nominal figures are those of the specification, within their ends") {
  int chosen = 0;
  for (std::uint64_t i = 0; i < 40; ++i) {
    CAPTURE(i);
    const Specification spec = calculate(made::request(i), made::catalogue(i, 20), date);
    if (spec.chosen.empty()) {
      CHECK(spec.uncertainty.empty());
      continue;
    }
    ++chosen;
    for (const Uncertainty& u : spec.uncertainty) {
      CAPTURE(u.figure);
      CHECK(u.low <= u.value);
      CHECK(u.value <= u.high);
      const bool still = !(u.low < u.high);
      CHECK(u.mover.empty() == still);
      CHECK(u.mover_low <= u.mover_high);
    }
    double ink = 0;
    for (const Consumption& use : spec.station->consumption) ink += use.l_per_year;
    const std::vector<Uncertainty>& all = spec.uncertainty;
    const Station& station = *spec.station;
    support::check_all(
        {{"heads", of(all, Headline::heads).value, 1.0 * spec.heads_total, 0, "identity"},
         {"ink", of(all, Headline::ink).value, ink, 1e-12, "identity"},
         {"length", of(all, Headline::footprint).value, in_mm(station.footprint), 1e-12,
          "identity"}});
    if (station.cost.ownership.minor > 0) {
      support::check_all({{"ownership", of(all, Headline::ownership).value,
                           station.cost.ownership.major(), 0, "identity"}});
    }
    for (const Budget& b : spec.placement) {
      if (b.name == "dot") CHECK(in_um(b.expanded) <= of(all, Headline::dot).value * (1 + 1e-12));
    }
  }
  CHECK(chosen > 10);
}

TEST_CASE("the ends and the mover are what moving every assumption by itself gives") {
  int compared = 0;
  for (std::uint64_t i = 0; i < 12; ++i) {
    CAPTURE(i);
    const Request request = made::request(i);
    const Catalogue catalogue = made::catalogue(i, 20);
    const Specification spec = calculate(request, catalogue, date);
    const Job job = resolve(request, catalogue, date);
    for (std::size_t f = 0; f < headlines_count && !spec.chosen.empty(); ++f) {
      const auto found = std::find_if(
          spec.uncertainty.begin(), spec.uncertainty.end(),
          [&](const Uncertainty& u) { return u.figure == headline_key(static_cast<Headline>(f)); });
      if (found == spec.uncertainty.end()) continue;
      CAPTURE(found->figure);
      double low = found->value, high = found->value, longest = 0, of_mover = 0;
      for (const Assumption& a : spec.assumptions) {
        const std::optional<P> id = default_of(a.field);
        if (!id) continue;
        double least = found->value, most = found->value;
        for (const double to : {parameter(*id).low, parameter(*id).high}) {
          const Headlines there = moved(job, catalogue, spec.chosen, *id, to);
          least = std::min(least, there.at(f).value_or(least));
          most = std::max(most, there.at(f).value_or(most));
        }
        low = std::min(low, least);
        high = std::max(high, most);
        longest = std::max(longest, most - least);
        if (a.field == found->mover) of_mover = most - least;
      }
      support::check_all({{"low", found->low, low, 1e-12, "moved again"},
                          {"high", found->high, high, 1e-12, "moved again"}});
      CHECK(of_mover >= longest - 1e-9 * found->high);
      ++compared;
    }
  }
  CHECK(compared > 40);
}

TEST_CASE("a mover that is a field of the request moves the same figure when it is given so") {
  const auto station_of = [](double hours) {
    Request r = made::plain_request();
    if (hours > 0)
      r.line.hours_per_day = given(seconds(hours * 3600));
    else
      r.line.hours_per_day.reset();
    r.limits = {};
    return calculate(r, made::catalogue_of({made::plain_head("A")}), date);
  };
  const Specification assumed = station_of(0);
  const Uncertainty& ink = of(assumed.uncertainty, Headline::ink);
  REQUIRE(ink.mover == "line.hours_per_day");
  const Specification most = station_of(ink.mover_high);
  REQUIRE(most.heads_total == assumed.heads_total);
  support::check_all({{"ink at the mover's high end", ink.high,
                       of(most.uncertainty, Headline::ink).value, 1e-12, "calculated anew"}});
}
