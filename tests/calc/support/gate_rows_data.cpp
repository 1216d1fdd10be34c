#include <algorithm>

#include "calc/barcode.h"
#include "calc/laydown.h"
#include "catalogue_maker.h"
#include "gate_rows.h"

namespace gate_rows {

using namespace calc;
using made::given;

Head& head(Catalogue& catalogue) { return catalogue.heads.front(); }
HeadMode& mode(Catalogue& catalogue) { return head(catalogue).modes.front(); }

namespace {

void scan_two_colours(Request& r) {
  r.line.mode = given(Mode::scanning);
  r.line.speed = given(metres_per_second(0.003));
  r.image.length = given(millimetres(500));
  r.colours.push_back(r.colours.front());
  r.colours.back().name = "second";
}

void print_solvent(Request& r, Catalogue& c) {
  r.inks.front().family = given(InkFamily::solvent);
  head(c).families = given(std::vector{InkFamily::solvent});
}

/// A body that turns under heads side by side, small enough to tell.
void turn_body(Request& r, double diameter_mm) {
  r.product.form = given(Form::cylinder);
  r.product.diameter = given(millimetres(diameter_mm));
  r.image.length = given(millimetres(diameter_mm / 2));
}

}  // namespace

const std::vector<CodeRow>& reasons() {
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
      {"throw", [](Request& r, Catalogue&) { r.line.throw_distance = given(millimetres(0.54)); }},
      {"placement",
       [](Request& r, Catalogue&) { r.line.throw_variation = given(millimetres(0.4)); }},
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

const std::vector<CodeRow>& conditions() {
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
      {"dryer_heat_unknown",
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
         head(c).recirculates.reset();
       }},
      {"no_recirculation",
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
      {"placement",
       [](Request& r, Catalogue&) {
         r.line.mount_tolerance.reset();
         r.line.wheel_error.reset();
       }},
      {"head_data_unknown", [](Request&, Catalogue& c) { head(c).throw_most.reset(); }},
      {"head_data_unknown", [](Request&, Catalogue& c) { head(c).families.reset(); }},
      {"head_data_unknown", [](Request&, Catalogue& c) { head(c).body_depth.reset(); }},
      {"head_data_unknown", [](Request&, Catalogue& c) { head(c).body_width.reset(); }},
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
      {"ink_limit",
       [](Request& r, Catalogue&) {
         r.colours.front().cover_peak = given(0.9);
         r.colours.push_back(r.colours.front());
         r.colours.back().name = "cyan";
         r.inks.front().limit = given(1.5);
       }},
      {"stroke_order",
       [](Request& r, Catalogue&) {
         scan_two_colours(r);
         r.colours.back().kind = given(ColourKind::white);
       }},
      {"several_stations", [](Request& r, Catalogue&) { turn_body(r, 12); }},
      {"turn_travel",
       [](Request& r, Catalogue& c) {
         turn_body(r, 200);
         head(c).body_height = given(millimetres(100));
         r.product.pitch = given(millimetres(101));
       }},
      {"seam",
       [](Request& r, Catalogue&) {
         turn_body(r, 200);
         r.image.length.reset();
         r.product.diameter =
             Value<Length>{millimetres(200), millimetres(199.9), millimetres(200.1),
                           Spread::uncertain, given(millimetres(1))->origin};
       }},
      {"seam_unknown",
       [](Request& r, Catalogue&) {
         turn_body(r, 200);
         r.image.length.reset();
       }},
      {"throw_anew",
       [](Request& r, Catalogue& c) {
         // To and fro over 0.4 mm: a lag that no tolerance assumed makes up for.
         c.heads.front().drop_speed = given(metres_per_second(6));
         r.product.thickness_variation = given(millimetres(0.4));
         r.line.throw_variation.reset();
         r.line.mode = given(Mode::scanning);
         r.line.indexing = given(true);
         r.line.speed = given(metres_per_second(0.005));
       }},
      {"assumption_edge",
       [](Request& r, Catalogue&) {
         r.line.throw_variation.reset();
         r.line.throw_distance = given(millimetres(0.7));
       }},
      {"assumption_condition",
       [](Request& r, Catalogue&) {
         // Known below what the ink jets at in the hottest room of the range, and nowhere else.
         r.line.air_temperature.reset();
         r.inks.front().viscosity = given(
             std::vector<ViscosityPoint>{{millipascal_seconds(10), Temperature::celsius(32)}});
       }},
      {"zone_unclassified",
       [](Request& r, Catalogue&) {
         r.inks.front().flash_point = given(Temperature::celsius(60));
       }},
      {"solvent_drying", [](Request& r, Catalogue& c) { print_solvent(r, c); }},
      {"capture_unproved",
       [](Request& r, Catalogue& c) {
         print_solvent(r, c);
         r.line.enclosed = given(true);
       }},
      {"food_face", [](Request& r, Catalogue&) { r.substrate.food_contact = given(true); }},
  };
  return rows;
}

const std::vector<CodeRow>& warnings() {
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
      {"jetting_windows",
       [](Request&, Catalogue& c) { head(c).nozzle_diameter = given(micrometres(5)); }},
      {"slow_ejection",
       [](Request&, Catalogue& c) { head(c).nozzle_diameter = given(micrometres(0.5)); }},
      {"splash", [](Request&, Catalogue& c) { head(c).drop_speed = given(metres_per_second(30)); }},
      {"settles_by_figures",
       [](Request& r, Catalogue&) {
         r.inks.front().settles = given(false);
         r.inks.front().particle_size = given(micrometres(0.3));
         r.inks.front().particle_density = given(Density::from_si(4200));
       }},
      {"slope",
       [](Request& r, Catalogue& c) {
         r.product.form = given(Form::cylinder);
         r.product.diameter = given(millimetres(60));
         head(c).field_depth = given(millimetres(20));
       }},
      {"impact_speed",
       [](Request& r, Catalogue& c) {
         r.line.speed = given(metres_per_second(0.05));
         r.line.throw_distance = given(millimetres(2.9));
         head(c).drop_speed = given(metres_per_second(3.5));
       }},
      {"web_air_drag",
       [](Request& r, Catalogue& c) {
         r.line.speed = given(metres_per_second(1.6));
         r.line.throw_distance = given(millimetres(2.5));
         r.line.throw_variation = given(Length{});
         head(c).speed_spread = given(0.01);
         mode(c).drop_speed = given(std::vector<Speed>(3, metres_per_second(9)));
         mode(c).drops = given(std::vector<Volume>{picolitres(9), picolitres(10), picolitres(11)});
       }},
      {"stroke_hue", [](Request& r, Catalogue&) { scan_two_colours(r); }},
      {"carriage_pace",
       [](Request& r, Catalogue&) {
         r.line.mode = given(Mode::scanning);
         r.line.speed = given(metres_per_second(0.002));
         r.line.throw_distance = given(millimetres(1.5));
         r.image.length = given(millimetres(300));
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

}  // namespace gate_rows
