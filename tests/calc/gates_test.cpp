#include "calc/gates.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "calc/calculate.h"
#include "calc/codes.h"
#include "calc/compare.h"
#include "calc/laydown.h"
#include "calc/selection.h"
#include "calc/verdict.h"
#include "support/catalogue_maker.h"
#include "support/gate_rows.h"

using namespace calc;
using gate_rows::Change;
using gate_rows::CodeRow;
using gate_rows::head;
using gate_rows::mode;
using made::given;

namespace {

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

const Change& find(const std::vector<CodeRow>& rows, const std::string& code) {
  const auto row =
      std::find_if(rows.begin(), rows.end(), [&](const CodeRow& r) { return r.code == code; });
  REQUIRE(row != rows.end());
  return row->change;
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
  for (const CodeRow& row : gate_rows::reasons()) {
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
  for (const CodeRow& row : gate_rows::conditions()) {
    CAPTURE(row.code);
    const Case c(row.change);
    REQUIRE(!c.answer.selection.chosen.empty());
    CHECK(codes_of(c.answer.decision.conditions).count(row.code) == 1);
    // A decision adds only what moving an input brings about.
    const bool moved = row.code == "assumption_edge" || row.code == "assumption_condition";
    CHECK(codes_of(c.answer.selection.conditions).contains(row.code) == !moved);
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
  for (const CodeRow& row : gate_rows::warnings()) {
    CAPTURE(row.code);
    const Case c(row.change);
    std::set<std::string> codes = codes_of(c.answer.job.warnings);
    codes.merge(codes_of(c.answer.selection.warnings));
    if (!codes.contains(row.code)) {  // told of the whole specification
      codes.merge(codes_of(calculate(c.request, c.catalogue, "2026-11-25").warnings));
    }
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
      v.low = millimetres(0.54);
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
  CHECK(std::get<double>(edge->args.front().value) == doctest::Approx(0.54));
  CHECK(edge->where.size() == 1);
}

TEST_CASE("a condition that only the end of an assumption brings is told with that end") {
  const auto brings_span = [](const Notice& n) {
    return n.code == "assumption_condition" &&
           std::get<std::string>(n.args.at(1).value) == "viscosity_span";
  };
  const Case made(find(gate_rows::conditions(), "assumption_condition"));
  for (const Notice& n : made.answer.selection.conditions) CHECK(n.code != "viscosity_span");
  const std::vector<Notice>& all = made.answer.decision.conditions;
  const auto arising = std::find_if(all.begin(), all.end(), brings_span);
  REQUIRE(arising != all.end());
  CHECK(arising->field == "line.air_temperature");
  CHECK(std::get<double>(arising->args.at(0).value) == doctest::Approx(32));
  CHECK(std::get<std::string>(arising->args.at(2).value).ends_with(".viscosity"));
  // Where the condition stands anyway no end of an assumption brings it.
  const Case known(find(gate_rows::conditions(), "viscosity_span"));
  const std::vector<Notice>& of_known = known.answer.decision.conditions;
  CHECK(std::none_of(of_known.begin(), of_known.end(), brings_span));
}

TEST_CASE("a condition on an assumption says up to which value it holds, and not beyond") {
  // By its own definition: the arrangement is judged anew at that value and a little farther on.
  const Case made([](Request& r, Catalogue&) {
    r.line.throw_variation.reset();
    r.line.throw_distance = given(millimetres(0.7));
  });
  const std::vector<Notice>& all = made.answer.decision.conditions;
  const auto edge = std::find_if(all.begin(), all.end(), [](const Notice& n) {
    return n.code == "assumption_edge" && n.field == "line.throw_variation";
  });
  REQUIRE(edge != all.end());
  const auto holds = std::find_if(edge->args.begin(), edge->args.end(),
                                  [](const Arg& arg) { return arg.name == "holds"; });
  REQUIRE(holds != edge->args.end());
  const auto failing = [&](double mm) {
    Parameters moved = made.answer.job.parameters;
    moved.set(P::throw_variation_mm, mm);
    const Job job = resolve(made.request, made.catalogue, "2026-11-25", moved);
    return failing_gates(job, made.catalogue, made.answer.selection.chosen).size();
  };
  const double last = std::get<double>(holds->value);
  CHECK(last < 0.3);
  CHECK(failing(last) == 0);
  CHECK(failing(last + 0.002) > 0);
}

TEST_CASE("the limit of process colours moves what the job has: film, water or vapour") {
  for (const auto& [family, effect] :
       {std::pair(InkFamily::uv, "wet_film_um"), std::pair(InkFamily::aqueous, "water_kg_per_h"),
        std::pair(InkFamily::solvent, "vapour_kg_per_h")}) {
    Job job;
    Channel channel;
    channel.family = family;
    job.channels.push_back(channel);
    CHECK(effect_of(job, P::process_limit) == effect);
    CHECK(effect_of(job, P::mount_um) == "placement");
  }
}

TEST_CASE("thickness narrows the least gap and widens the greatest, of every form") {
  const auto job = [](Form form) {
    return [form](Request& r, Catalogue& c) {
      r.product.form = given(form);
      r.product.diameter = given(millimetres(400));
      r.product.thickness_variation = given(millimetres(0.48));
      r.line.throw_distance = given(millimetres(1.5));
      head(c).throw_most = given(millimetres(2));
      mode(c).drops = given(std::vector<Volume>{picolitres(10)});
      mode(c).frequency = given(std::vector<Frequency>{kilohertz(30)});
    };
  };
  for (const Form form : {Form::flat, Form::cylinder}) {
    const Case far(job(form));  // 1.5 + 0.48 + 0.05 = 2.03 mm
    CHECK(reasons_of(far.answer.selection).count("throw") == 1);
  }
  const Case within([&](Request& r, Catalogue& c) {
    job(Form::flat)(r, c);
    r.line.throw_distance = given(millimetres(1.4));  // 1.93 mm
  });
  CHECK(!within.answer.selection.chosen.empty());
  const Case near([&](Request& r, Catalogue& c) {
    job(Form::flat)(r, c);
    r.line.throw_distance = given(millimetres(1));  // 1 - 0.48 - 0.05 = 0.47 mm
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
  REQUIRE(reasons.size() == 2);
  CHECK(reasons.front().code == "frequency");
  CHECK(reasons.back().code == "placement");  // every delay shifts dots six times as far
}

TEST_CASE("a request without width is incomplete, whatever the catalogue holds") {
  const Case c([](Request& r, Catalogue&) { r.image.width.reset(); });
  CHECK(c.answer.decision.verdict == Verdict::incomplete);
  CHECK(c.answer.selection.chosen.empty());
}
