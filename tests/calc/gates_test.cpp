#include "calc/gates.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <set>

#include "calc/codes.h"
#include "calc/compare.h"
#include "calc/laydown.h"
#include "calc/selection.h"
#include "calc/verdict.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

using Change = std::function<void(Request&, Catalogue&)>;

struct Answer {
  Job job;
  Selection selection;
  Decision decision;
};

/// Everything about a plain job after one change. The request must outlive the answer.
struct Case {
  Request request = made::plain_request();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  Answer answer;

  explicit Case(const Change& change) {
    change(request, catalogue);
    answer.job = resolve(request, catalogue, "2026-11-25");
    answer.selection = select(answer.job, catalogue);
    answer.decision = decide(answer.job, catalogue, answer.selection);
  }
};

std::set<std::string> reasons_of(const Selection& s) {
  std::set<std::string> codes;
  for (const RejectedHead& row : s.rejected) {
    for (const Reason& r : row.reasons) codes.insert(r.code);
  }
  return codes;
}
std::set<std::string> codes_of(const std::vector<Notice>& notices) {
  std::set<std::string> codes;
  for (const Notice& n : notices) codes.insert(n.code);
  return codes;
}

Head& head(Catalogue& c) { return c.heads.front(); }
HeadMode& mode(Catalogue& c) { return head(c).modes.front(); }

struct CodeRow {
  std::string code;
  Change change;
};

const std::vector<CodeRow>& reason_rows() {
  static const std::vector<CodeRow> rows{
      {"head_data", [](Request&, Catalogue& c) { mode(c).drops.reset(); }},
      {"ink_family",
       [](Request&, Catalogue& c) { head(c).families = given(std::vector{InkFamily::oil}); }},
      {"ink_substrate",
       [](Request& r, Catalogue& c) {
         r.inks.front().family = given(InkFamily::oil);
         head(c).families = given(std::vector{InkFamily::oil});
       }},
      {"temperature",
       [](Request& r, Catalogue&) {
         r.inks.front().jetting_temperature = given(Temperature::celsius(75));
       }},
      {"viscosity",
       [](Request&, Catalogue& c) {
         head(c).viscosity = given(millipascal_seconds(4));
         head(c).viscosity_window = made::between(millipascal_seconds(3), millipascal_seconds(5));
       }},
      {"tension",
       [](Request& r, Catalogue&) {
         r.inks.front().surface_tension = given(millinewtons_per_metre(20));
       }},
      {"throw", [](Request& r, Catalogue&) { r.line.throw_distance = given(millimetres(0.6)); }},
      {"slope",
       [](Request& r, Catalogue& c) {
         r.product.form = given(Form::cylinder);
         r.product.diameter = given(millimetres(30));
         head(c).field_depth = given(millimetres(20));
       }},
      {"serviceable",
       [](Request& r, Catalogue& c) {
         r.service.serviceable = given(Wish::must);
         head(c).serviceable = given(Serviceable::none);
       }},
      {"waveform",
       [](Request& r, Catalogue& c) {
         r.service.waveform = given(Wish::must);
         head(c).waveform = given(WaveformAccess::maker);
       }},
      {"driver_sources",
       [](Request& r, Catalogue& c) {
         r.service.driver_sources = given(Wish::must);
         head(c).driver_sources = given(1);
       }},
      {"levels", [](Request& r, Catalogue&) { r.image.levels = given(8); }},
      {"resolution",
       [](Request& r, Catalogue&) {
         r.image.resolution = given(ResolutionPair{dpi(3000), dpi(600)});
       }},
      {"cover", [](Request& r, Catalogue&) { r.substrate.dot_diameter = given(micrometres(5)); }},
      {"feature",
       [](Request& r, Catalogue&) { r.image.smallest_feature = given(millimetres(0.03)); }},
      {"film", [](Request& r, Catalogue&) { r.colours.front().film = given(micrometres(900)); }},
      {"bar_code",
       [](Request& r, Catalogue&) {
         r.image.barcode_symbol = given(std::string(barcode_symbols().front().key));
         r.image.barcode_module = given(barcode_symbols().front().most * 4);
       }},
      {"frequency", [](Request& r, Catalogue&) { r.line.speed = given(metres_per_second(30)); }},
      {"indexing",
       [](Request& r, Catalogue&) {
         r.line.mode = given(Mode::scanning);
         r.line.indexing = given(false);
         r.line.speed = given(metres_per_second(0.01));
       }},
      {"heads", [](Request& r, Catalogue&) { r.limits.heads = given(1); }},
      {"space", [](Request& r, Catalogue&) { r.limits.space = given(millimetres(50)); }},
      {"cure",
       [](Request& r, Catalogue&) {
         r.inks.front().cure_irradiance = given(Irradiance::from_si(1e7));
       }},
      {"cure",
       [](Request& r, Catalogue&) {
         r.substrate.temperature_limit = given(Temperature::celsius(26));
         r.substrate.area_mass = given(AreaMass::from_si(0.05));
       }},
      {"cure",
       [](Request& r, Catalogue&) { r.inks.front().cure_dose = given(Dose::from_si(1e9)); }},
      {"drying",
       [](Request& r, Catalogue&) {
         r.inks.front().family = given(InkFamily::aqueous);
         r.substrate.temperature_limit = given(Temperature::celsius(30));
       }},
      {"drying",
       [](Request& r, Catalogue&) {
         r.inks.front().family = given(InkFamily::aqueous);
         r.line.air_temperature = given(Temperature::celsius(40));
         r.line.air_humidity = given(0.9);
       }},
      {"budget", [](Request& r, Catalogue&) { r.limits.budget = made::euros(100); }},
      {"lead_time", [](Request& r, Catalogue&) { r.limits.lead_time = given(days(2)); }},
      {"lost",
       [](Request&, Catalogue& c) {
         for (const char* name : {"B", "C", "D", "E"}) {
           c.heads.push_back(made::plain_head(name));
           c.heads.back().price = made::euros(9000);
         }
       }},
  };
  return rows;
}

const std::vector<CodeRow>& condition_rows() {
  static const std::vector<CodeRow> rows{
      {"soft_demand",
       [](Request& r, Catalogue&) {
         r.image.resolution.reset();
         r.image.smallest_feature = given(millimetres(25.4 * 2 / 640));
         r.substrate.dot_diameter = given(micrometres(64));
       }},
      {"high_use",
       [](Request& r, Catalogue& c) {
         mode(c).drops = given(std::vector<Volume>{picolitres(10)});
         mode(c).frequency = given(std::vector<Frequency>{kilohertz(25)});
         r.line.speed = given(metres_per_second(24.9e3 * 0.0254 / 600));
       }},
      {"rating_from_binary",
       [](Request& r, Catalogue& c) {
         mode(c).frequency = given(std::vector<Frequency>{kilohertz(40)});
         r.image.levels = given(3);
       }},
      {"measure_dot",
       [](Request& r, Catalogue& c) {
         r.substrate.dot_diameter.reset();
         r.substrate.dot_volume.reset();
         mode(c).drops = given(std::vector<Volume>{picolitres(10)});
         mode(c).frequency = given(std::vector<Frequency>{kilohertz(30)});
       }},
      {"aqueous_on_none",
       [](Request& r, Catalogue&) { r.inks.front().family = given(InkFamily::aqueous); }},
      {"pretreatment",
       [](Request& r, Catalogue&) {
         r.substrate.surface_energy = given(millinewtons_per_metre(30));
       }},
      {"viscosity_unknown", [](Request& r, Catalogue&) { r.inks.front().viscosity.reset(); }},
      {"viscosity_span",
       [](Request& r, Catalogue&) {
         r.inks.front().viscosity = given(
             std::vector<ViscosityPoint>{{millipascal_seconds(20), Temperature::celsius(20)}});
       }},
      {"tension_unknown", [](Request& r, Catalogue&) { r.inks.front().surface_tension.reset(); }},
      {"surface_energy_unknown",
       [](Request& r, Catalogue&) { r.substrate.surface_energy.reset(); }},
      {"family_unknown",
       [](Request& r, Catalogue& c) {
         Ink second = r.inks.front();
         second.name = "red";
         second.family = given(InkFamily::aqueous);
         Ink third = r.inks.front();
         third.name = "blue";
         third.family.reset();
         r.inks.insert(r.inks.end(), {second, third});
         Colour blue;
         blue.name = "blue";
         r.colours.push_back(blue);
         head(c).families = given(std::vector{InkFamily::uv, InkFamily::aqueous});
       }},
      {"resolution_assumed",
       [](Request& r, Catalogue&) {
         r.image.resolution.reset();
         r.substrate.dot_diameter = given(micrometres(130));
       }},
      {"colours_assumed", [](Request& r, Catalogue&) { r.colours.clear(); }},
      {"absorbency_assumed",
       [](Request& r, Catalogue&) {
         r.substrate.absorbency.reset();
         r.substrate.dot_diameter.reset();
       }},
      {"symbol_unknown",
       [](Request& r, Catalogue&) { r.image.barcode_module = given(millimetres(0.5)); }},
      {"recirculation",
       [](Request& r, Catalogue& c) {
         r.inks.front().settles = given(true);
         head(c).recirculates = given(false);
       }},
      {"waveform_limited",
       [](Request& r, Catalogue& c) {
         r.service.waveform = given(Wish::must);
         head(c).waveform = given(WaveformAccess::limited);
       }},
      {"indexing_unknown",
       [](Request& r, Catalogue&) {
         r.line.mode = given(Mode::scanning);
         r.line.speed = given(metres_per_second(0.01));
       }},
      {"head_data_unknown", [](Request&, Catalogue& c) { head(c).throw_most.reset(); }},
      {"web_heat_unknown",
       [](Request& r, Catalogue&) {
         r.substrate.temperature_limit = given(Temperature::celsius(60));
       }},
      {"unpriced_budget",
       [](Request& r, Catalogue& c) {
         r.limits.budget = made::euros(1e7);
         head(c).price.reset();
       }},
      {"currency_budget",
       [](Request& r, Catalogue&) {
         r.limits.budget = given(Price{to_money(1e7), "CHF"});
       }},
      {"lead_time_unknown",
       [](Request& r, Catalogue& c) {
         r.limits.lead_time = given(days(100));
         head(c).lead_time.reset();
         c.boards.front().lead_time.reset();
         c.supplies.front().lead_time.reset();
         c.lamps.front().lead_time.reset();
       }},
      {"assumption_edge",
       [](Request& r, Catalogue&) {
         r.line.throw_variation.reset();
         r.line.throw_distance = given(millimetres(0.7));
       }},
  };
  return rows;
}

const std::vector<CodeRow>& warning_rows() {
  static const std::vector<CodeRow> rows{
      {"explicit_below_derived",
       [](Request& r, Catalogue&) { r.image.smallest_feature = given(millimetres(0.08)); }},
      {"finer_than_eye",
       [](Request& r, Catalogue&) { r.image.viewing_distance = given(metres(2)); }},
      {"finer_than_dot",
       [](Request& r, Catalogue&) { r.substrate.dot_diameter = given(micrometres(120)); }},
      {"line_deviation",
       [](Request& r, Catalogue&) { r.image.smallest_feature = given(millimetres(0.06)); }},
      {"closed_gap",
       [](Request& r, Catalogue&) {
         r.image.levels = given(4);
         r.substrate.dot_diameter = given(micrometres(74.4));
         r.image.smallest_feature = given(millimetres(0.06));
       }},
      {"angle_capped",
       [](Request& r, Catalogue&) {
         r.substrate.dot_diameter.reset();
         r.substrate.contact_angle = given(0.1);
       }},
      {"overspray", [](Request& r, Catalogue&) { r.substrate.width = given(millimetres(190)); }},
      {"particle_size",
       [](Request& r, Catalogue& c) {
         head(c).nozzle_diameter = given(micrometres(20));
         r.inks.front().particle_size = given(micrometres(0.9));
       }},
      {"slope",
       [](Request& r, Catalogue& c) {
         r.product.form = given(Form::cylinder);
         r.product.diameter = given(millimetres(60));
         head(c).field_depth = given(millimetres(20));
       }},
      {"speed_below_throughput",
       [](Request& r, Catalogue&) { r.line.throughput_area = given(AreaRate::from_si(10)); }},
      {"throughput_below_speed",
       [](Request& r, Catalogue&) { r.line.throughput_area = given(AreaRate::from_si(0.05)); }},
      {"symbol_too_wide",
       [](Request& r, Catalogue&) {
         const auto symbols = barcode_symbols();
         const auto wide = std::find_if(symbols.begin(), symbols.end(),
                                        [](const BarcodeSymbol& s) { return s.modules > 0; });
         r.image.barcode_symbol = given(std::string(wide->key));
         r.image.width = given(millimetres(10));
       }},
  };
  return rows;
}

/// A reason's figures say by themselves that its gate failed.
bool fails_by_its_figures(const Reason& r) {
  return r.at_least ? !at_least(r.value, r.limit) : !at_most(r.value, r.limit);
}

}  // namespace

TEST_CASE("the plain job passes every gate without a condition") {
  const Case plain([](Request&, Catalogue&) {});
  CHECK(plain.answer.selection.chosen.size() == 1);
  CHECK(plain.answer.selection.rejected.empty());
  for (const Notice& n : plain.answer.selection.conditions) FAIL_CHECK(n.code << " " << n.field);
}

TEST_CASE("each reason code is produced by one change to the plain job") {
  std::set<std::string> produced;
  for (const CodeRow& row : reason_rows()) {
    CAPTURE(row.code);
    const Case c(row.change);
    CHECK(reasons_of(c.answer.selection).count(row.code) == 1);
    for (const RejectedHead& rejected : c.answer.selection.rejected) {
      for (const Reason& r : rejected.reasons) {
        CAPTURE(r.code);
        CHECK(fails_by_its_figures(r));
      }
    }
    produced.insert(row.code);
  }
  for (const std::string_view code : reason_codes()) {
    CAPTURE(code);
    CHECK(produced.count(std::string(code)) == 1);
  }
}

TEST_CASE("each condition code is produced by one change to the plain job") {
  std::set<std::string> produced;
  for (const CodeRow& row : condition_rows()) {
    CAPTURE(row.code);
    const Case c(row.change);
    REQUIRE(!c.answer.selection.chosen.empty());
    CHECK(codes_of(c.answer.decision.conditions).count(row.code) == 1);
    CHECK(c.answer.decision.verdict == Verdict::conditional);
    produced.insert(row.code);
  }
  for (const std::string_view code : condition_codes()) {
    CAPTURE(code);
    CHECK(produced.count(std::string(code)) == 1);
  }
}

TEST_CASE("each warning code is produced by one change to the plain job") {
  std::set<std::string> produced;
  for (const CodeRow& row : warning_rows()) {
    CAPTURE(row.code);
    const Case c(row.change);
    std::set<std::string> codes = codes_of(c.answer.job.warnings);
    codes.merge(codes_of(c.answer.selection.warnings));
    CHECK(codes.count(row.code) == 1);
    produced.insert(row.code);
  }
  for (const std::string_view code : warning_codes()) {
    CAPTURE(code);
    CHECK(produced.count(std::string(code)) == 1);
  }
  const Case plain([](Request&, Catalogue&) {});
  CHECK(plain.answer.job.warnings.empty());
  CHECK(plain.answer.selection.warnings.empty());
}

TEST_CASE("what the catalogue does not say of the chosen head is asked") {
  const Case c([](Request&, Catalogue& cat) { head(cat).throw_most.reset(); });
  REQUIRE(c.answer.selection.questions.size() == 1);
  CHECK(c.answer.selection.questions.front().code == "q_head_data");
  CHECK(c.answer.selection.questions.front().field == "head.A.throw_most");
}

TEST_CASE("all failing gates of a head stand together") {
  const Case c([](Request& r, Catalogue& cat) {
    r.inks.front().surface_tension = given(millinewtons_per_metre(20));
    r.line.throw_distance = given(millimetres(9));
    head(cat).families = given(std::vector{InkFamily::oil});
    r.image.levels = given(9);
  });
  const std::set<std::string> codes = reasons_of(c.answer.selection);
  CHECK(codes == std::set<std::string>{"ink_family", "levels", "tension", "throw"});
  CHECK(c.answer.decision.verdict == Verdict::infeasible);
  CHECK(c.answer.selection.nearest_head == "A");
}

TEST_CASE("an unfit band of frequencies is stepped over by one more head in line") {
  const auto one_drop = [](Catalogue& c) {
    mode(c).drops = given(std::vector<Volume>{picolitres(10)});
    mode(c).frequency = given(std::vector<Frequency>{kilohertz(30)});
  };
  const Case before([&](Request&, Catalogue& c) { one_drop(c); });
  const Case after([&](Request&, Catalogue& c) {
    one_drop(c);
    head(c).avoid = made::between(kilohertz(11), kilohertz(12.5));
  });
  CHECK(before.answer.selection.chosen.front().stack == 1);
  CHECK(after.answer.selection.chosen.front().stack == 2);
}

TEST_CASE("an uncertainty is no demand: the nominal is gated, the ends alone are a condition") {
  const auto throw_of = [](Spread spread) {
    return [spread](Request& r, Catalogue&) {
      Value<Length> v = exactly(millimetres(1.5), r.line.throw_distance->origin);
      v.low = millimetres(0.6);
      v.high = millimetres(2.4);
      v.spread = spread;
      r.line.throw_distance = v;
    };
  };
  const Case demand(throw_of(Spread::demand));
  CHECK(reasons_of(demand.answer.selection).count("throw") == 1);
  const Case uncertain(throw_of(Spread::uncertain));
  REQUIRE(!uncertain.answer.selection.chosen.empty());
  CHECK(uncertain.answer.decision.verdict == Verdict::conditional);
  const std::vector<Notice>& all = uncertain.answer.decision.conditions;
  const auto edge = std::find_if(all.begin(), all.end(), [](const Notice& n) {
    return n.code == "assumption_edge" && n.field == "line.throw_distance";
  });
  REQUIRE(edge != all.end());
  CHECK(std::get<double>(edge->args.front().value) == doctest::Approx(0.6));
  CHECK(edge->where.size() == 1);
}

TEST_CASE("thickness narrows the least gap always, the greatest grows by it on a cylinder only") {
  const auto job = [](Form form) {
    return [form](Request& r, Catalogue& c) {
      r.product.form = given(form);
      r.product.diameter = given(millimetres(400));
      r.product.thickness_variation = given(millimetres(0.4));
      r.line.throw_distance = given(millimetres(1.5));
      head(c).throw_most = given(millimetres(2));
      mode(c).drops = given(std::vector<Volume>{picolitres(10)});
      mode(c).frequency = given(std::vector<Frequency>{kilohertz(30)});
    };
  };
  CHECK(!Case(job(Form::flat)).answer.selection.chosen.empty());  // 1.5 + 0.2 = 1.7 mm
  const Case body(job(Form::cylinder));                           // 1.5 + 0.4 + 0.2 = 2.1 mm
  CHECK(reasons_of(body.answer.selection).count("throw") == 1);
  const Case near([&](Request& r, Catalogue& c) {
    job(Form::flat)(r, c);
    r.line.throw_distance = given(millimetres(1));  // 1 - 0.4 - 0.2 = 0.4 mm
  });
  CHECK(reasons_of(near.answer.selection).count("throw") == 1);
}

TEST_CASE("a rate that no stack reaches names the stack tried") {
  const Case c([](Request& r, Catalogue&) { r.line.speed = given(metres_per_second(30)); });
  const RejectedHead& row = c.answer.selection.rejected.front();
  const auto of_rate = [](const Reason& r) { return r.code == "frequency"; };
  const auto reason = std::find_if(row.reasons.begin(), row.reasons.end(), of_rate);
  REQUIRE(reason != row.reasons.end());
  CHECK(reason->subject == "6 stacked");
}

TEST_CASE("groups on like lattices warn once") {
  const Case c([](Request& r, Catalogue&) {
    r.substrate.dot_diameter = given(micrometres(120));
    r.image.smallest_feature = given(millimetres(0.13));
    Colour white;
    white.name = "white";
    white.kind = given(ColourKind::white);
    white.film = given(micrometres(5));
    r.colours.push_back(white);
    r.inks.push_back(r.inks.front());
    r.inks.back().name = "white";
  });
  REQUIRE(c.answer.selection.chosen.size() == 2);
  const std::vector<Notice>& all = c.answer.selection.warnings;
  const auto across = std::count_if(all.begin(), all.end(), [](const Notice& n) {
    return n.code == "line_deviation" && std::get<std::string>(n.args.front().value) == "across";
  });
  CHECK(across == 1);
}

TEST_CASE("fixed groups pass their own job again, and say what a moved one breaks") {
  const Case c([](Request&, Catalogue&) {});
  const std::vector<Group>& chosen = c.answer.selection.chosen;
  CHECK(failing_gates(c.answer.job, c.catalogue, chosen).empty());
  Request faster = c.request;
  faster.line.speed = given(metres_per_second(3));
  const Job job = resolve(faster, c.catalogue, "2026-11-25");
  const std::vector<Reason> reasons = failing_gates(job, c.catalogue, chosen);
  REQUIRE(reasons.size() == 1);
  CHECK(reasons.front().code == "frequency");
}

TEST_CASE("a request without width is incomplete, whatever the catalogue holds") {
  const Case c([](Request& r, Catalogue&) { r.image.width.reset(); });
  CHECK(c.answer.decision.verdict == Verdict::incomplete);
  CHECK(c.answer.selection.chosen.empty());
}
