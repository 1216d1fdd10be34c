#include "calc/job.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <set>

#include "calc/codes.h"
#include "support/catalogue_maker.h"
#include "support/check.h"

using namespace calc;
using made::given;
using namespace std::string_view_literals;

namespace {

Job job_of(const Request& r) { return resolve(r, made::catalogue_of({}), "2026-11-25"); }

bool has(const std::vector<Question>& questions, const std::string& code) {
  return std::any_of(questions.begin(), questions.end(),
                     [&](const Question& q) { return q.code == code; });
}
const Notice* find(const std::vector<Notice>& notices, const std::string& code) {
  const auto found =
      std::find_if(notices.begin(), notices.end(), [&](const Notice& n) { return n.code == code; });
  return found == notices.end() ? nullptr : &*found;
}
bool assumes(const Job& job, P id) {
  return std::any_of(job.assumptions.begin(), job.assumptions.end(),
                     [&](const Assumption& a) { return a.field == parameter(id).key; });
}

Request bare() {
  Request r = made::plain_request();
  r.image.resolution.reset();
  return r;
}

}  // namespace

TEST_CASE("the table of defaults stands in the order of its list and every range holds its value") {
  std::set<std::string_view> keys;
  for (std::size_t i = 0; i < static_cast<std::size_t>(P::count); ++i) {
    const Parameter& row = parameter(static_cast<P>(i));
    CAPTURE(row.key);
    CHECK(row.id == static_cast<P>(i));
    CHECK(row.low <= row.value);
    CHECK(row.value <= row.high);
    CHECK(!row.effect.empty());
    CHECK(!row.source.empty());
    CHECK(keys.insert(row.key).second);
    CHECK(Parameters()[row.id] == row.value);
  }
}

TEST_CASE("each demand on resolution follows its rule") {
  Request r = bare();
  r.image.smallest_feature = given(millimetres(0.2));
  r.image.smallest_text = given(millimetres(6 * 25.4 / 72));
  r.image.viewing_distance = given(millimetres(300));
  r.image.barcode_module = given(millimetres(0.33));
  const Job job = job_of(r);
  REQUIRE(job.required.demands.size() == 4);
  std::vector<double> values;
  for (const Demand& d : job.required.demands) values.push_back(in_dpi(*d.across));
  support::check_all({
      {"feature", values[0], 254.0, 1e-12, "25.4 x 2 / 0.2, sampling theorem"},
      {"text, 6 pt regular", values[1], 282.3529411764706, 1e-12, "2 x 72 / (0.085 x 6)"},
      {"bar code", values[2], 269.3939393939394, 1e-12, "25.4 x 3.5 / 0.33"},
      {"viewing, 300 mm", values[3], 291.063, 1e-5, "eye at 1 minute of arc, ISO 8596"},
  });
  CHECK(job.required.governed_by == "viewing");
  // Soft demands may fall to 0.90, the hard one of the bar code may not.
  CHECK(in_dpi(job.least_across) == doctest::Approx(269.393939));
}

TEST_CASE("an explicit demand below a derived one wins, with both places shown") {
  Request r = made::plain_request();
  r.image.resolution = given(ResolutionPair{dpi(200), dpi(300)});
  r.image.smallest_feature = given(millimetres(0.1));
  const Job job = job_of(r);
  CHECK(in_dpi(job.required.across) == doctest::Approx(200));
  CHECK(in_dpi(job.required.along) == doctest::Approx(300));
  CHECK(job.required.governed_by == "explicit");
  const Notice* warning = find(job.warnings, "explicit_below_derived");
  REQUIRE(warning != nullptr);
  CHECK(warning->where.size() == 2);
}

TEST_CASE("nothing asked at all: 300 per inch assumed, and asked for") {
  const Job job = job_of(bare());
  CHECK(in_dpi(job.required.across) == doctest::Approx(300));
  CHECK(job.required.governed_by == "assumed");
  CHECK(!job.required_known);
  CHECK(assumes(job, P::fallback_dpi));
  CHECK(has(job.questions, "q_resolution"));
  CHECK(!assumes(job_of(made::plain_request()), P::fallback_dpi));
}

TEST_CASE("a bar code that follows one axis asks nothing of the other, a matrix asks of both") {
  Request r = bare();
  r.image.barcode_module = given(millimetres(0.33));
  r.image.barcode_direction = given(BarcodeDirection::along);
  Job job = job_of(r);
  CHECK(!job.required.demands.front().across);
  CHECK(job.required.demands.front().along);
  CHECK(job.edges_along);
  CHECK(!job.edges_across);
  CHECK(job.required.across == job.required.along);
  const auto symbols = barcode_symbols();
  const auto matrix = std::find_if(symbols.begin(), symbols.end(),
                                   [](const BarcodeSymbol& s) { return s.two_dimensional; });
  REQUIRE(matrix != symbols.end());
  r.image.barcode_symbol = given(std::string(matrix->key));
  job = job_of(r);
  CHECK(job.edges_across);
  CHECK(job.edges_along);
}

TEST_CASE("speed follows from throughput, both ends kept") {
  Request r = made::plain_request();
  r.line.speed.reset();
  r.substrate.width = given(millimetres(500));
  r.line.throughput_area = made::between(AreaRate::from_si(0.1), AreaRate::from_si(0.25));
  Job job = job_of(r);
  REQUIRE(job.speed);
  CHECK(job.speed->low.si() == doctest::Approx(0.2));
  CHECK(job.speed->high.si() == doctest::Approx(0.5));
  CHECK(job.speed->origin.kind == OriginKind::derived);
  r.line.throughput_area.reset();
  r.line.throughput_parts = given(hertz(2));
  r.product.pitch = given(millimetres(120));
  job = job_of(r);
  CHECK(job.speed->high.si() == doctest::Approx(0.24));
  r.line.speed = given(metres_per_second(0.1));
  job = job_of(r);
  CHECK(job.speed->high.si() == doctest::Approx(0.24));
  CHECK(job.speed->low.si() == doctest::Approx(0.1));
  REQUIRE(find(job.warnings, "speed_below_throughput") != nullptr);
  CHECK(find(job.warnings, "speed_below_throughput")->where.size() == 2);
}

TEST_CASE("speed and throughput that agree to 1 % warn of nothing, else the greater is served") {
  Request r = made::plain_request();
  r.product.pitch = given(millimetres(100));
  r.line.speed = given(metres_per_second(0.5));
  r.line.throughput_parts = given(hertz(5.04));
  CHECK(job_of(r).warnings.empty());
  r.line.throughput_parts = given(hertz(4));
  const Job job = job_of(r);
  CHECK(job.speed->high.si() == doctest::Approx(0.5));
  REQUIRE(find(job.warnings, "throughput_below_speed") != nullptr);
  CHECK(find(job.warnings, "throughput_below_speed")->where.size() == 2);
}

TEST_CASE("without a mode a carriage is looked at only where the line is said to index") {
  Request r = made::plain_request();
  Job job = job_of(r);
  CHECK_FALSE(job.scanning);
  const auto of_mode = [](const Assumption& a) { return a.field == "line.mode"; };
  CHECK(std::any_of(job.assumptions.begin(), job.assumptions.end(), of_mode));
  const auto of_indexing = [](const Question& q) { return q.code == "q_indexing"; };
  CHECK(std::any_of(job.questions.begin(), job.questions.end(), of_indexing));
  r.line.indexing = given(true);
  job = job_of(r);
  CHECK(job.scanning);
  CHECK(job.single_pass);
  CHECK(std::none_of(job.assumptions.begin(), job.assumptions.end(), of_mode));
  r.line.indexing = given(false);
  CHECK_FALSE(job_of(r).scanning);
}

TEST_CASE("a cylinder gives its circumference as length and pitch") {
  Request r = made::plain_request();
  r.product.form = given(Form::cylinder);
  r.product.diameter = given(millimetres(40));
  const Job job = job_of(r);
  CHECK(in_mm(job.length.value) == doctest::Approx(125.663706));
  CHECK(in_mm(job.pitch.value) == doctest::Approx(125.663706));
  REQUIRE(job.radius);
  CHECK(in_mm(*job.radius) == doctest::Approx(20));
}

TEST_CASE("the speed of parts a minute leaves to printing its share of the cycle") {
  // 300 a minute, 30 mm printed of 40 mm turned in a cycle: 30 mm in three quarters of 0.2 s.
  Request r = made::plain_request();
  r.product.form = given(Form::cylinder);
  r.product.diameter = given(millimetres(24));
  r.product.pitch = given(millimetres(40));
  r.image.length = given(millimetres(30));
  r.line.speed.reset();
  r.line.throughput_parts = given(Frequency::from_si(5));
  const Job job = job_of(r);
  REQUIRE(job.speed);
  CHECK(job.printed_share == doctest::Approx(0.75));
  CHECK(job.speed->value.si() == doctest::Approx(0.030 / (0.75 * 0.2)));
}

TEST_CASE("channels share a group by family, temperature and settling, white stands alone") {
  Request r = made::plain_request();
  for (const char* name : {"cyan", "white", "orange"}) {
    Colour c;
    c.name = name;
    if (c.name == "white") c.kind = given(ColourKind::white);
    r.colours.push_back(c);
    Ink ink = r.inks.front();
    ink.name = name;
    if (ink.name == "orange") ink.jetting_temperature = given(Temperature::celsius(50));
    r.inks.push_back(ink);
  }
  const Job job = job_of(r);
  REQUIRE(job.groups.size() == 3);
  CHECK(job.groups[0].name == "process");
  CHECK(job.groups[0].channels == std::vector<std::size_t>{0, 1});
  CHECK(job.groups[1].name == "white");
  CHECK(job.groups[2].name == "orange");
  REQUIRE(job.channels[2].film);
  CHECK(in_um(job.channels[2].film->value) == doctest::Approx(10));
  CHECK(!job.channels[0].film);
}

TEST_CASE("without colours one black is assumed, several inks make one channel each") {
  Request r = made::plain_request();
  r.colours.clear();
  r.inks.front().name = "jet";
  Job job = job_of(r);
  REQUIRE(job.channels.size() == 1);
  CHECK(job.channels.front().name == "black");
  CHECK(job.channels.front().ink == &r.inks.front());
  CHECK(has(job.questions, "q_colours"));
  r.inks.push_back(r.inks.front());
  r.inks.back().name = "red";
  job = job_of(r);
  CHECK(job.channels.size() == 2);
}

TEST_CASE("what nothing can be answered without is missing, one key each") {
  const Request plain = made::plain_request();
  CHECK(job_of(plain).missing.empty());
  Request r = plain;
  r.image.width.reset();
  CHECK(job_of(r).missing == std::vector<std::string>{"image.width"});
  r = plain;
  r.line.speed.reset();
  CHECK(job_of(r).missing == std::vector<std::string>{"line.speed"});
  r.line.throughput_parts = given(hertz(1));
  CHECK(job_of(r).missing == std::vector<std::string>{"product.pitch"});
  r = plain;
  r.inks.front().family.reset();
  CHECK(job_of(r).missing == std::vector<std::string>{"ink.NAME.family"});
  r = plain;
  r.product = {};
  r.substrate = {};
  CHECK(job_of(r).missing == std::vector<std::string>{"substrate.material"});
}

TEST_CASE("questions are ranked by weight and name the field they are about") {
  Request r;
  r.request.id = given(std::string("EMPTY"));
  const Job job = job_of(r);
  REQUIRE(job.questions.size() > 8);
  for (std::size_t i = 1; i < job.questions.size(); ++i) {
    CHECK(job.questions[i - 1].weight >= job.questions[i].weight);
  }
  for (const Question& q : job.questions) CHECK(!q.field.empty());
  CHECK(has(job.questions, "q_width"));
  CHECK(has(job.questions, "q_speed"));
}

TEST_CASE("feet and inches give the same job as metres") {
  Request metric = made::plain_request();
  metric.image.width = given(millimetres(304.8));
  metric.line.speed = given(metres_per_second(0.508));
  Request us = made::plain_request();
  us.image.width = given(metres(12 * 0.0254));
  us.line.speed = given(metres_per_second(100 * 0.3048 / 60));
  const Job a = job_of(metric);
  const Job b = job_of(us);
  CHECK(a.width->value.si() == doctest::Approx(b.width->value.si()).epsilon(1e-12));
  CHECK(a.speed->value.si() == doctest::Approx(b.speed->value.si()).epsilon(1e-12));
}

TEST_CASE("each question code of a job is asked by one of a few incomplete requests") {
  std::set<std::string> asked;
  const auto collect = [&](const Request& r) {
    for (const Question& q : job_of(r).questions) asked.insert(q.code);
  };
  Request r;
  collect(r);
  r.line.throughput_parts = given(hertz(1));
  r.line.mode = given(Mode::either);
  r.line.encoder = given(std::string("on the drum"));
  r.image.barcode_module = given(millimetres(0.5));
  r.substrate.absorbency = given(Absorbency::none);
  for (const InkFamily family :
       {InkFamily::uv, InkFamily::aqueous, InkFamily::solvent, InkFamily::oil}) {
    Ink ink;
    ink.name = "ink" + std::to_string(r.inks.size());
    ink.family = given(family);
    r.inks.push_back(ink);
    Colour colour;
    colour.name = ink.name;
    r.colours.push_back(colour);
  }
  r.colours.front().kind = given(ColourKind::white);
  collect(r);
  r.inks.front().family.reset();
  collect(r);
  const auto symbols = barcode_symbols();
  const auto matrix = std::find_if(symbols.begin(), symbols.end(),
                                   [](const BarcodeSymbol& b) { return b.two_dimensional; });
  r.image.barcode_symbol = given(std::string(matrix->key));
  collect(r);
  for (Ink& ink : r.inks) {
    ink.solvent = given(std::string("unheard-of"));
    ink.solvents = {{"unheard-of", 1}};
    ink.flash_point = given(Temperature::celsius(10));
  }
  collect(r);
  r.product.form = given(Form::cylinder);
  r.product.diameter = given(millimetres(40));
  collect(r);
  for (const std::string_view code : question_codes()) {
    // Asked of a head once it is chosen, and of the outcome: gates_test.cpp,
    // later_questions_test.cpp.
    constexpr std::array later{"q_head_data"sv, "q_viscosity_hot"sv, "q_contact"sv,
                               "q_flush"sv,     "q_cosolvent"sv,     "q_zone"sv,
                               "q_drying"sv,    "q_food_face"sv};
    if (std::find(later.begin(), later.end(), code) != later.end()) continue;
    CAPTURE(code);
    CHECK(asked.count(std::string(code)) == 1);
  }
  for (const std::string& code : asked) {
    const auto codes = question_codes();
    CHECK(std::find(codes.begin(), codes.end(), code) != codes.end());
  }
}

TEST_CASE("a symbol as wide as its data asks for its size, one of fixed width does not") {
  Request r = made::plain_request();
  const auto asks = [&](bool fixed) {
    const auto symbols = barcode_symbols();
    const auto found = std::find_if(symbols.begin(), symbols.end(), [&](const BarcodeSymbol& s) {
      return (s.modules > 0) == fixed;
    });
    REQUIRE(found != symbols.end());
    r.image.barcode_symbol = given(std::string(found->key));
    const Job job = job_of(r);
    return std::any_of(job.questions.begin(), job.questions.end(),
                       [](const Question& q) { return q.code == "q_symbol_size"; });
  };
  CHECK(asks(false));
  CHECK_FALSE(asks(true));
}

TEST_CASE("the totals are in the currency of the request's own prices, whatever the catalogue's") {
  Request r = made::plain_request();
  r.request.currency.reset();
  r.limits.budget.reset();
  r.costs.labour.reset();
  for (Ink& ink : r.inks) ink.price.reset();
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  CHECK(resolve(r, c, "2026-11-20").currency == "EUR");
  r.inks.front().price = given(Price{Money{9000}, "CHF"});
  CHECK(resolve(r, c, "2026-11-20").currency == "CHF");
  r.inks.front().price.reset();
  r.costs.energy = given(Price{Money{21}, "USD"});
  CHECK(resolve(r, c, "2026-11-20").currency == "USD");
}

TEST_CASE("a rate of money that is assumed is in the job's currency") {
  Request r = made::plain_request();
  r.costs = {};
  const auto unit = [&](const char* field) {
    const Job job = job_of(r);
    const auto found = std::find_if(job.assumptions.begin(), job.assumptions.end(),
                                    [&](const Assumption& a) { return a.field == field; });
    REQUIRE(found != job.assumptions.end());
    return found->unit;
  };
  r.request.currency = given(std::string("USD"));
  CHECK(unit("costs.labour") == "USD/h");
  CHECK(unit("costs.energy") == "USD/kWh");
  CHECK(unit("costs.discount") == "1/a");
  r.request.currency = given(std::string("CHF"));
  CHECK(unit("costs.labour") == "CHF/h");
}
