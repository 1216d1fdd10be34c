// Properties of whole requests: conservation of ink, and one meaning in both forms.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "calc/calculate.h"
#include "calc/job.h"
#include "calc/running.h"
#include "calc/station_load.h"
#include "output/json.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/property/between.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/field_rows.h"
#include "tests/whole/support/figures.h"
#include "tests/whole/support/written.h"

using property::near;

namespace {

constexpr const char* date = "2026-11-20";

/// Purged ink is at least what a purge of every head takes, and at least the maintenance share.
void check_channel(const calc::Job& job, const calc::Catalogue& catalogue, const calc::Group& group,
                   const calc::ChannelLoad& load, const calc::Consumption& use) {
  const calc::Head* head = nullptr;
  for (const calc::Head& h : catalogue.heads) {
    if (h.name == group.head) head = &h;
  }
  const calc::ChannelFlow flow = calc::channel_flow(job, load, head);
  const double ml = 1e6 * 3600;
  RC_ASSERT(near(use.ml_per_hour, use.printed_ml_per_hour + use.waste_ml_per_hour));
  RC_ASSERT(near(use.printed_ml_per_hour, load.printed.si() * ml));
  RC_ASSERT(near(use.waste_ml_per_hour, (flow.purged + flow.flush).si() * ml));
  RC_ASSERT(use.waste_ml_per_hour >= use.flush_ml_per_hour);
  RC_ASSERT(near(use.l_per_month * 12, use.l_per_year));
  RC_ASSERT(
      near(use.l_per_year, use.ml_per_hour * 1e-3 * calc::running_time(job).si() / 3600, 1e-11));
}

/// Ink on the substrate: area passed times laydown, cover and share printed.
void check_printed(const calc::Job& job, const std::vector<calc::Group>& groups,
                   const calc::ChannelLoad& load) {
  const calc::Channel& channel = job.channels[load.channel];
  for (const calc::ChannelDots& dots : groups[load.group].dots) {
    if (dots.channel != channel.name) continue;
    const double area = calc::area_rates(job, groups).nominal.si();
    RC_ASSERT(near(load.printed.si(),
                   area * dots.laydown * channel.cover_mean.value * job.printed_share));
  }
}

/// One to four of the rows that the tests of fields have, each with one of its values.
std::string some_changes() {
  static const std::vector<whole::FieldRow> rows = whole::request_rows();
  std::string changes;
  const int count = *rc::gen::inRange(1, 5);
  for (int i = 0; i < count; ++i) {
    const auto& row = rows[*rc::gen::inRange<std::size_t>(0, rows.size())];
    std::string key = row.key;
    for (const auto& [pattern, name] :
         {std::pair<std::string, std::string>{"colour.NAME.", "colour.black."},
          {"ink.NAME.", "ink.black."}}) {
      if (key.starts_with(pattern)) key.replace(0, pattern.size(), name);
    }
    const std::string& value = *rc::gen::arbitrary<bool>() ? row.first : row.second;
    changes += row.both;
    if (value.empty()) {
      changes.append("-").append(key).append("\n");
    } else {
      changes.append(key).append(" = ").append(value).append("\n");
    }
  }
  return changes;
}

}  // namespace

TEST_CASE("ink in is ink on the substrate, purged and flushed") {
  int chosen = 0;
  CHECK(rc::check("of requests and catalogues made by number", [&] {
    const auto number = *rc::gen::inRange<std::uint64_t>(0, 100000);
    const calc::Request request = made::request(number);
    const calc::Catalogue catalogue = made::catalogue(number, 8);
    const auto spec = calc::calculate(request, catalogue, date);
    if (!spec.station || spec.chosen.empty()) return;
    ++chosen;
    const calc::Job job = calc::resolve(request, catalogue, date);
    const auto loads = calc::channel_loads(job, spec.chosen);
    RC_ASSERT(loads.size() == spec.station->consumption.size());
    for (std::size_t i = 0; i < loads.size(); ++i) {
      check_channel(job, catalogue, spec.chosen[loads[i].group], loads[i],
                    spec.station->consumption[i]);
      check_printed(job, spec.chosen, loads[i]);
    }
  }));
  CHECK(chosen > 10);
}

TEST_CASE("a request says the same in INI and in XML") {
  int compared = 0;
  CHECK(rc::check("of fields and values drawn at random", [&] {
    const whole::Entries entries = whole::changed(whole::plain_request(), some_changes());
    const auto ini = intake::read_requests("r.ini", whole::as_ini(entries));
    const auto xml = intake::read_requests("r.xml", whole::as_xml(entries, "request"));
    RC_ASSERT(ini.requests.size() == 1);
    RC_ASSERT(xml.requests.size() == 1);
    const auto& a = ini.requests.front();
    const auto& b = xml.requests.front();
    RC_ASSERT(a.usable == b.usable);
    RC_ASSERT(a.findings.size() == b.findings.size());
    if (!a.usable) return;
    ++compared;
    static const calc::Catalogue catalogue = whole::read_catalogue(whole::plain_catalogue());
    const std::string one =
        whole::without_places(output::write_json(calc::calculate(a.request, catalogue, date), {}));
    const std::string other =
        whole::without_places(output::write_json(calc::calculate(b.request, catalogue, date), {}));
    RC_ASSERT(one == other);
  }));
  CHECK(compared > 10);
}
