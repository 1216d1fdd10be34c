#include "tests/output/support/hand_made.h"

#include <utility>

#include "tests/output/support/hand_made_parts.h"

namespace hand_made {
namespace {

using namespace calc;  // the structs below are all its own

Origin at(int line, std::string raw) {
  return {OriginKind::given, "requests/cork line.ini", line, 9, std::move(raw)};
}

Input number(std::string key, double value, std::string unit, int line) {
  Input input;
  input.key = std::move(key);
  input.value = input.low = input.high = value;
  input.unit = std::move(unit);
  input.origin = at(line, "as written");
  return input;
}

Input text(std::string key, std::string value, int line) {
  Input input;
  input.key = std::move(key);
  input.text = value;
  input.origin = at(line, std::move(value));
  return input;
}

Input from(OriginKind kind, Input input) {
  input.origin.kind = kind;
  return input;
}

ChannelDots dots(std::string channel, double dot_um, double cover) {
  ChannelDots d;
  d.channel = std::move(channel);
  d.levels_used = 3;
  d.drop = picolitres(7);
  d.drop_diameter = micrometres(23.7);
  d.dot_diameter = micrometres(dot_um);
  d.cover_fraction = cover;
  d.laydown = 7.8e-6;
  d.edge_gain = micrometres(17.8);
  d.spread_from = "class";
  return d;
}

void place_heads(Group& group, double y) {
  for (int position = 0; position < group.positions; ++position) {
    for (int i = 0; i < group.heads_across; ++i) {
      const int row = i % group.rows_staggered;
      const double line = y + 80.0 * position + 40.0 * row;
      group.places.push_back({group.head_pitch * i + group.swath * 0.5, millimetres(line), 0,
                              group.channels.at(static_cast<std::size_t>(position)), position,
                              row});
    }
  }
}

Group process_group() {
  Group g;
  g.name = "process";
  g.channels = {"cyan", "magenta", "yellow", "black"};
  g.head = "Q-64";
  g.mode = "grey";
  g.family = Family::staggered;
  g.heads_across = 4;
  g.positions = 4;
  g.rows_staggered = 2;
  g.heads_total = 16;
  g.joints = 12;
  g.idle_nozzle_share = 0.043;
  g.native = g.resolution_across = dpi(600);
  g.resolution_along = dpi(600);
  g.frequency_needed = g.frequency_per_nozzle = kilohertz(17.7165);
  g.frequency_allowed = kilohertz(30);
  g.frequency_use = 0.5906;
  g.speed_limit = metres_per_second(1.27);
  g.swath = millimetres(64.98);
  g.pitch = micrometres(42.333);
  g.head_pitch = millimetres(64.31);
  g.overlap = millimetres(0.677);
  g.nozzles = 1535;
  g.bits = 2;
  g.footprint = millimetres(320);
  g.jetting_temperature = Temperature::celsius(45);
  g.viscosity = millipascal_seconds(9.8);
  for (const std::string& channel : g.channels) g.dots.push_back(dots(channel, 60.1, 1));
  g.dots.back() = dots("black", 55.0, 0.973);
  g.barcodes = {{"code-128", true, 8, millimetres(0.33), millimetres(0.3387), millimetres(0.25),
                 millimetres(1.0), true}};
  place_heads(g, 0);
  return g;
}

Group white_group() {
  Group g = process_group();
  g.name = "white";
  g.channels = {"white"};
  g.positions = 1;
  g.stack = 2;
  g.film_heads = 2;
  g.heads_total = 16;
  g.barcodes.clear();
  g.dots = {dots("white", 74.5, 1)};
  g.places.clear();
  place_heads(g, 340);
  return g;
}

Request request() {
  Request r;
  r.request.id = exactly<std::string>("CS-17");
  r.request.title = exactly<std::string>("Cork stopper marking line");
  r.request.notes = exactly<std::string>("Trial prints wanted in spring.", at(31, ""));
  r.customer.organisation = exactly<std::string>("Invented Cork Works");
  r.customer.contact = exactly<std::string>("A. Nobody");
  r.product.description = exactly<std::string>("cork stoppers on trays");
  r.line.speed = exactly(metres_per_second(0.75), at(12, "45 m/min"));
  r.limits.heads = exactly(40, at(20, "40"));
  return r;
}

void fill_inputs(Specification& s) {
  s.inputs = {text("request.title", "Cork stopper marking line", 2),
              number("image.width", 250, "mm", 8),
              number("image.smallest_feature", 0.2, "mm", 9),
              number("line.speed", 45, "m/min", 12),
              number("limits.heads", 40, "", 20),
              text("ink.black.family", "uv", 15),
              number("line.throughput", 30, "", 13),
              from(OriginKind::derived, number("line.throughput", 675, "m2/h", 0)),
              from(OriginKind::derived, number("product.pitch", 0, "mm", 0)),
              from(OriginKind::catalogue, number("head.Q-64.body_width", 82, "mm", 7)),
              from(OriginKind::catalogue, number("head.Q-64.body_depth", 34, "mm", 8)),
              from(OriginKind::catalogue, number("head.Q-64.field_depth", 6, "mm", 9))};
  s.inputs[3].low = 30;
  s.inputs[3].high = 45;
  s.inputs[3].spread = Spread::demand;
}

void fill_answers(Specification& s) {
  s.assumptions = {
      {"assume.feature_dots", 2, "", "dots", 2, 3, "resolution_across_dpi", "sampling theorem"},
      {"assume.spread_low", 1.8, "", "", 1.5, 2.2, "cover_fraction", "common practice, no source"}};
  s.questions = {{"q_dot", "substrate.dot_diameter", 1.8, 1.5, 2.2, "", "cover_fraction", 48},
                 {"q_cure_dose", "ink.black.cure_dose", std::nullopt, std::nullopt, std::nullopt,
                  "", "lamps", 32}};
  s.tests = {{"dot_diameter", 60.1, "um", "cyan"}, {"migration", std::nullopt, "", "cork"}};
  s.safety = {
      {"uv_led", {{"lamp", std::string("L-395"), ""}, {"lamps", 8.0, ""}}, "lamp.L-395", {}},
      {"moving_machinery", {}, "line.speed", {at(12, "45 m/min")}}};
  s.rejected = {{"Z-20",
                 {{"frequency", "process", "rating", 17.7165, 12, "kHz", false},
                  {"ink_family", "process", "uv", 0, 1, "", true}}},
                {"Z-10", {{"resolution", "process", "across", 180, 254, "dpi", true}}}};
}

}  // namespace

Case feasible() {
  Case c{{}, request()};
  Specification& s = c.spec;
  s.id = "CS-17";
  s.revision = "A";
  s.date = "2026-11-25";
  s.title = "Cork stopper marking line";
  s.language = "en";
  s.catalogue_date = "2026-10-01";
  s.verdict = Verdict::feasible;
  fill_inputs(s);
  s.required =
      Required{dpi(254), dpi(254), "feature", {{"feature", false, dpi(254), dpi(254)}}, dpi(900)};
  s.chosen = {process_group(), white_group()};
  s.heads_total = 32;
  s.station = station();
  Alternative other;
  other.groups = {process_group()};
  other.groups.front().head = "Q-33";
  other.station = station();
  other.differs = {"head", "stack"};
  s.alternatives = {other};
  Flexibility flexible;
  flexible.group = "process";
  flexible.head = "Q-64";
  flexible.spare_speed = metres_per_second(0.52);
  flexible.spare_width = millimetres(7.9);
  flexible.families = {"uv", "oil"};
  flexible.replace_hours = 1.5;
  flexible.replace_cost = Money{246000};
  flexible.serviceable = Serviceable::parts;
  flexible.waveform = WaveformAccess::limited;
  flexible.driver_sources = 2;
  s.flexibility = {flexible};
  s.single_source_share = 0.42;
  s.uncertainty = {{"heads_total", "", 30, 30, 30, {}, {}, 0, 0},
                   {"ownership", "EUR", 250000, 210000, 330000, "line.hours_per_day", "h", 8, 24}};
  fill_answers(s);
  s.trace = trace();
  return c;
}

Case conditional() {
  Case c = feasible();
  c.spec.verdict = Verdict::conditional;
  c.spec.conditions = {
      {"measure_dot",
       {{"subject", std::string("cover"), ""}, {"value", 55.0, "um"}, {"limit", 59.9, "um"}},
       "substrate.dot_diameter",
       {at(18, "low")}},
      {"high_use", {{"value", 0.95, "1"}, {"limit", 0.9, "1"}}, "", {}},
      {"head_data_unknown", {{"subject", std::string("Q-64"), ""}}, "head.Q-64.throw_most", {}}};
  c.spec.warnings = {{"explicit_below_derived",
                      {{"demand", std::string("feature"), ""},
                       {"explicit", 200.0, "dpi"},
                       {"derived", 254.0, "dpi"}},
                      "image.smallest_feature",
                      {at(9, "0.2 mm"), at(10, "200 dpi")}}};
  return c;
}

Case scanning() {
  Case c = feasible();
  Group g = white_group();
  g.family = Family::scanning;
  g.stack = g.film_heads = g.rows_staggered = 1;
  g.heads_across = 1;
  Scan scan;
  scan.heads_per_colour = 2;
  scan.interlace_steps = 2;
  scan.quality_passes = 2;
  scan.advance_nozzles = 1533;
  scan.strokes = 74;
  scan.advance = millimetres(32.45);
  scan.machine_width = millimetres(2600);
  scan.carriage_speed = metres_per_second(1.27);
  scan.stroke_time = seconds(1.9);
  scan.throughput = AreaRate::from_si(41.5 / 3600);
  g.scan = scan;
  g.places = {{millimetres(32), millimetres(0), 0, "white", 0, 0},
              {millimetres(96), millimetres(0), 0, "white", 0, 0}};
  c.spec.chosen = {g};
  Stage drying;
  drying.kind = "drying";
  drying.electrical_kw = 8.1;
  drying.water_kg_per_h = 4.2;
  drying.heat_kw = 2.2;
  drying.length_m = 1.4;
  c.spec.station->stages = {drying};
  return c;
}

Case infeasible() {
  Case c = feasible();
  c.spec.verdict = Verdict::infeasible;
  c.spec.chosen.clear();
  c.spec.alternatives.clear();
  c.spec.station.reset();
  c.spec.flexibility.clear();
  c.spec.uncertainty.clear();
  c.spec.single_source_share.reset();
  c.spec.heads_total = 0;
  c.spec.tests.clear();
  c.spec.trace.erase(c.spec.trace.begin() + 1, c.spec.trace.end());
  return c;
}

Case incomplete() {
  Case c;
  c.spec.id = c.spec.title = "x";
  c.spec.revision = "A";
  c.spec.date = "2026-11-25";
  c.spec.language = "en";
  c.spec.verdict = Verdict::incomplete;
  c.spec.inputs = {text("request.title", "x", 1)};
  c.spec.questions = {
      {"q_width", "image.width", std::nullopt, std::nullopt, std::nullopt, "", "heads_total", 100},
      {"q_hours", "line.hours_per_day", 8, 8, 24, "h", "ownership", 10}};
  return c;
}

Case hostile() {
  Case c = conditional();
  const std::string name = "<b a=\"'\">&amp; {{X}} \x01\x7F \xFF\xC0 ]]>";
  c.spec.id = c.spec.title = name;
  c.request.customer.organisation = exactly(name);
  c.request.request.notes = exactly(name, at(3, name));
  for (Group& group : c.spec.chosen) {
    group.name = group.head = group.mode = name;
    for (std::string& channel : group.channels) channel.insert(0, name);
    for (HeadPlace& place : group.places) place.channel = name;
    for (ChannelDots& d : group.dots) d.channel = name;
  }
  for (BomLine& l : c.spec.station->bom) l.designation = l.part_number = l.reference = name;
  for (RejectedHead& head : c.spec.rejected) head.head = name;
  c.spec.rejected.front().reasons.front().subject = name;
  c.spec.station->stages.front().equipment = name;
  c.spec.inputs.push_back(text("ink." + name + ".family", name, 4));
  c.spec.conditions.back().field = "head." + name + ".throw_most";
  c.spec.conditions.back().where = {{OriginKind::given, "dir/" + name, 4, 1, name}};
  c.spec.tests.front().subject = name;
  c.spec.trace.front().id = name;
  c.spec.trace.front().source = name;
  c.spec.trace.front().inputs.front().ref = name;
  return c;
}

const output::Templates& templates() {
  static const output::Templates shared;
  return shared;
}

output::Context context(const Case& made) { return {made.spec, made.request, templates()}; }

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace hand_made
