#include "catalogue_maker.h"

#include <array>
#include <utility>

namespace made {
namespace {

using namespace calc;

/// SplitMix64 (Steele, Lea, Flood 2014): whole numbers that are the same everywhere.
class Numbers {
 public:
  explicit Numbers(std::uint64_t state) : state_(state * 0x9E3779B97F4A7C15ULL + 1) {}
  std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
  }
  int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
  bool one_in(int n) { return below(n) == 0; }
  double from(double low, double high) {
    return low + (high - low) * (static_cast<double>(next() >> 11U) / 9007199254740992.0);
  }
  template <class T, std::size_t N>
  T pick(const std::array<T, N>& list) {
    return list[static_cast<std::size_t>(below(static_cast<int>(N)))];
  }

 private:
  std::uint64_t state_;
};

void fill_row(Numbers& n, Row& row, const std::string& element, const std::string& name,
              double price) {
  row.element = element;
  row.name = name;
  row.maker = given(std::string("Invented Works"));
  row.part_number = given("IW-" + name);
  row.designation = given(element + " " + name);
  if (!n.one_in(8)) row.price = euros(price);
  row.price_date = given(std::string("2026-06-01"));
  if (!n.one_in(6)) row.lead_time = given(days(14 + n.below(80)));
}

std::vector<InkFamily> some_families(Numbers& n) {
  constexpr std::array all{InkFamily::uv, InkFamily::aqueous, InkFamily::solvent, InkFamily::oil};
  std::vector<InkFamily> some;
  for (const InkFamily f : all) {
    if (!n.one_in(3)) some.push_back(f);
  }
  if (some.empty()) some.push_back(n.pick(all));
  return some;
}

HeadMode some_mode(Numbers& n, const std::string& name) {
  HeadMode m;
  m.name = name;
  m.colours = given(n.pick(std::array{1, 1, 1, 2, 4}));
  m.row_pitch = given(dpi(n.pick(std::array{50.0, 75.0, 90.0, 150.0, 300.0})));
  const int rows = n.pick(std::array{1, 2, 4, 8});
  std::vector<double> offsets;
  offsets.reserve(static_cast<std::size_t>(rows));
  for (int i = 0; i < rows; ++i) offsets.push_back(static_cast<double>(i) / rows);
  if (n.one_in(9)) offsets.back() += 0.07;
  m.row_offsets = given(offsets);
  m.nozzles = given(rows * (64 + 64 * n.below(8)));
  const int levels = 1 + n.below(4);
  const double least = n.from(3, 30);
  std::vector<Volume> drops;
  std::vector<Frequency> rates;
  const double rate = n.from(10, 90);
  for (int i = 1; i <= levels; ++i) {
    drops.push_back(picolitres(least * i));
    rates.push_back(kilohertz(rate / (1 + 0.3 * (i - 1))));
  }
  if (n.one_in(3)) rates.resize(1);
  m.drops = given(drops);
  m.frequency = given(rates);
  return m;
}

void fill_windows(Numbers& n, Head& h) {
  const double viscosity = n.from(5, 14);
  h.viscosity = given(millipascal_seconds(viscosity));
  h.viscosity_window =
      between(millipascal_seconds(viscosity * 0.7), millipascal_seconds(viscosity * 1.4));
  if (!n.one_in(6)) {
    h.tension_window =
        between(millinewtons_per_metre(n.from(20, 27)), millinewtons_per_metre(n.from(32, 45)));
  }
  h.temperature_most = given(Temperature::celsius(n.from(40, 70)));
  h.throw_least = given(millimetres(n.from(0.3, 0.9)));
  h.throw_nominal = given(millimetres(n.from(1, 2)));
  if (!n.one_in(5)) h.throw_most = given(millimetres(n.from(2, 5)));
}

Head some_head(Numbers& n, const std::string& name) {
  Head h;
  fill_row(n, h, "head", name, n.from(400, 6000));
  h.families = given(some_families(n));
  h.body_width = given(millimetres(n.from(60, 160)));
  h.body_depth = given(millimetres(n.from(20, 80)));
  h.field_depth = given(millimetres(n.from(1, 25)));
  h.joins = given(n.one_in(3));
  if (n.one_in(2)) h.overlap = given(millimetres(n.from(0, 2)));
  h.nozzle_diameter = given(micrometres(n.from(18, 50)));
  h.drop_speed = given(metres_per_second(n.from(5, 9)));
  fill_windows(n, h);
  h.serviceable = given(n.pick(
      std::array{Serviceable::user, Serviceable::parts, Serviceable::returned, Serviceable::none}));
  h.waveform = given(
      n.pick(std::array{WaveformAccess::own, WaveformAccess::limited, WaveformAccess::maker}));
  h.driver_sources = given(1 + n.below(3));
  h.recirculates = given(n.one_in(2));
  h.life = given(seconds(3600 * n.from(3000, 12000)));
  h.purge = given(litres(n.from(0.5e-3, 4e-3)));
  h.board = given(std::string("board"));
  h.supply = given(std::string("supply"));
  for (int m = 0; m <= n.below(2); ++m) h.modes.push_back(some_mode(n, "m" + std::to_string(m)));
  return h;
}

Board a_board(Numbers& n) {
  Board b;
  fill_row(n, b, "board", "board", 900);
  b.heads = given(2);
  b.data_rate = given(hertz(1e9));
  return b;
}
Supply a_supply(Numbers& n) {
  Supply s;
  fill_row(n, s, "supply", "supply", 3200);
  s.families =
      given(std::vector{InkFamily::uv, InkFamily::aqueous, InkFamily::solvent, InkFamily::oil});
  s.flow = given(VolumeFlow::from_si(0.2e-3 / 60));
  s.heads = given(8);
  s.container = given(litres(5));
  return s;
}
Lamp a_lamp(Numbers& n) {
  Lamp l;
  fill_row(n, l, "lamp", "lamp", 7000);
  l.wavelength = given(Length::from_si(395e-9));
  l.irradiance = given(Irradiance::from_si(12e4));
  l.shape = given(0.6);
  l.window_along = given(millimetres(20));
  l.window_across = given(millimetres(225));
  l.electrical = given(Power::from_si(2500));
  l.depth = given(millimetres(120));
  l.mercury = given(false);
  return l;
}
Dryer a_dryer(Numbers& n) {
  Dryer d;
  fill_row(n, d, "dryer", "dryer", 21000);
  d.width = given(millimetres(1800));
  d.length = given(millimetres(2000));
  d.drying_rate = given(MassFlux::from_si(20.0 / 3600));
  d.electrical = given(Power::from_si(30000));
  return d;
}

Ink some_ink(Numbers& n, const std::string& name, InkFamily family) {
  Ink ink;
  ink.name = name;
  ink.family = given(family);
  const double warm = n.from(4, 14);
  if (!n.one_in(6)) {
    ink.viscosity = given(
        std::vector<ViscosityPoint>{{millipascal_seconds(warm * 2.2), Temperature::celsius(25)},
                                    {millipascal_seconds(warm), Temperature::celsius(45)},
                                    {millipascal_seconds(warm * 0.6), Temperature::celsius(65)}});
  }
  if (!n.one_in(6)) ink.surface_tension = given(millinewtons_per_metre(n.from(22, 38)));
  ink.density = given(Density::from_si(n.from(950, 1150)));
  ink.particle_size = given(Length::from_si(n.from(0.1e-6, 0.8e-6)));
  if (family == InkFamily::uv) ink.cure_dose = given(Dose::from_si(n.from(800, 4000)));
  ink.price = euros(n.from(20, 120));
  return ink;
}

void fill_image(Numbers& n, Request& r) {
  r.image.width = given(millimetres(n.from(20, 1600)));
  if (!n.one_in(3)) {
    const double across = n.pick(std::array{150.0, 180.0, 200.0, 300.0, 360.0, 400.0, 600.0});
    r.image.resolution = given(ResolutionPair{dpi(across), dpi(n.one_in(3) ? across * 2 : across)});
  }
  if (n.one_in(3)) r.image.viewing_distance = given(millimetres(n.from(250, 2000)));
  if (n.one_in(3)) r.image.smallest_feature = given(millimetres(n.from(0.1, 0.6)));
  if (n.one_in(5)) {
    r.image.barcode_module = given(millimetres(n.from(0.25, 0.6)));
    r.image.barcode_symbol = given(std::string("ean-13-retail"));
  }
  if (n.one_in(4)) r.image.length = given(millimetres(n.from(50, 900)));
}

void fill_line(Numbers& n, Request& r) {
  const double speed = n.from(1, 90) / 60;
  r.line.speed = n.one_in(4) ? between(metres_per_second(speed / 2), metres_per_second(speed))
                             : given(metres_per_second(speed));
  r.line.mode = given(n.pick(std::array{Mode::single, Mode::single, Mode::either}));
  if (n.one_in(2)) r.line.indexing = given(!n.one_in(4));
  r.line.throw_distance = given(millimetres(n.from(0.8, 2.5)));
}

void fill_limits(Numbers& n, Request& r) {
  if (n.one_in(5)) r.limits.heads = given(4 + n.below(40));
  if (n.one_in(6)) r.limits.budget = euros(n.from(2e4, 4e5));
  if (n.one_in(6)) r.limits.lead_time = given(days(30 + n.below(90)));
  if (n.one_in(6)) r.limits.space = given(millimetres(n.from(900, 5000)));
  if (n.one_in(4)) r.service.serviceable = given(n.one_in(2) ? Wish::must : Wish::prefer);
  if (n.one_in(4)) r.service.waveform = given(n.one_in(2) ? Wish::must : Wish::prefer);
  if (n.one_in(4)) r.service.driver_sources = given(n.one_in(2) ? Wish::must : Wish::prefer);
}

Colour a_colour(const std::string& name, ColourKind kind) {
  Colour c;
  c.name = name;
  c.kind = given(kind);
  return c;
}

}  // namespace

Given<Price> euros(double amount) { return given(Price{to_money(amount), "EUR"}); }

Head plain_head(const std::string& name) {
  Numbers n(1);
  Head h = some_head(n, name);
  h.price = euros(2000);
  h.lead_time = given(days(42));
  h.families = given(std::vector{InkFamily::uv, InkFamily::aqueous});
  h.body_width = given(millimetres(70));
  h.body_depth = given(millimetres(40));
  h.field_depth = given(millimetres(5));
  h.joins = given(false);
  h.overlap = given(millimetres(0.5));
  h.viscosity = given(millipascal_seconds(10));
  h.viscosity_window = between(millipascal_seconds(7), millipascal_seconds(14));
  h.tension_window = between(millinewtons_per_metre(24), millinewtons_per_metre(36));
  h.temperature_most = given(Temperature::celsius(60));
  h.throw_least = given(millimetres(0.5));
  h.throw_nominal = given(millimetres(1));
  h.throw_most = given(millimetres(3));
  h.serviceable = given(Serviceable::user);
  h.waveform = given(WaveformAccess::own);
  h.driver_sources = given(3);
  h.recirculates = given(true);
  HeadMode m;
  m.name = "grey";
  m.colours = given(1);
  m.row_pitch = given(dpi(150));
  m.row_offsets = given(std::vector<double>{0, 0.25, 0.5, 0.75});
  m.nozzles = given(1280);
  m.drops = given(std::vector<Volume>{picolitres(5), picolitres(10), picolitres(15)});
  m.frequency = given(std::vector<Frequency>{kilohertz(40), kilohertz(30), kilohertz(25)});
  h.modes.assign(1, m);
  return h;
}

Catalogue catalogue_of(std::vector<Head> heads) {
  Numbers n(2);
  Catalogue c;
  c.date = given(std::string("2026-06-01"));
  c.heads = std::move(heads);
  c.boards.push_back(a_board(n));
  c.supplies.push_back(a_supply(n));
  c.lamps.push_back(a_lamp(n));
  c.dryers.push_back(a_dryer(n));
  return c;
}

Request plain_request() {
  Request r;
  r.request.id = given(std::string("MADE-1"));
  r.request.title = given(std::string("made request"));
  r.request.currency = given(std::string("EUR"));
  r.product.form = given(Form::flat);
  r.image.width = given(millimetres(200));
  r.image.resolution = given(ResolutionPair{dpi(600), dpi(600)});
  r.colours.push_back(a_colour("black", ColourKind::process));
  Ink ink;
  ink.name = "black";
  ink.family = given(InkFamily::uv);
  ink.viscosity =
      given(std::vector<ViscosityPoint>{{millipascal_seconds(20), Temperature::celsius(25)},
                                        {millipascal_seconds(9), Temperature::celsius(50)}});
  ink.surface_tension = given(millinewtons_per_metre(28));
  ink.density = given(Density::from_si(1060));
  ink.cure_dose = given(Dose::from_si(2000));
  ink.price = euros(60);
  r.inks.push_back(ink);
  r.substrate.material = given(std::string("coated label"));
  r.substrate.absorbency = given(Absorbency::none);
  r.substrate.dot_diameter = given(micrometres(62));
  r.substrate.dot_volume = given(picolitres(10));
  r.substrate.surface_energy = given(millinewtons_per_metre(42));
  r.line.speed = given(metres_per_second(0.5));
  r.line.throw_distance = given(millimetres(1));
  r.line.throw_variation = given(millimetres(0.05));
  r.line.weave = given(Length{});
  r.line.mount_tolerance = given(micrometres(5));
  r.line.wheel_error = given(1e-4);
  r.line.air_temperature = given(Temperature::celsius(25));
  return r;
}

Catalogue catalogue(std::uint64_t number, std::size_t heads) {
  Numbers n(number);
  Catalogue c = catalogue_of({});
  for (std::size_t i = 0; i < heads; ++i) {
    c.heads.push_back(some_head(n, "h" + std::to_string(i)));
  }
  return c;
}

Request request(std::uint64_t number) {
  Numbers n(number + 0x1000);
  Request r = plain_request();
  r.image = {};
  r.line = {};
  r.colours.clear();
  r.inks.clear();
  fill_image(n, r);
  fill_line(n, r);
  fill_limits(n, r);
  const InkFamily family =
      n.pick(std::array{InkFamily::uv, InkFamily::aqueous, InkFamily::solvent, InkFamily::oil});
  constexpr std::array<const char*, 6> names{"black",  "cyan",   "magenta",
                                             "yellow", "orange", "violet"};
  const int colours = n.pick(std::array{1, 1, 2, 4, 6});
  for (int i = 0; i < colours; ++i) {
    const std::string name = names.at(static_cast<std::size_t>(i));
    r.colours.push_back(a_colour(name, ColourKind::process));
    r.inks.push_back(some_ink(n, name, family));
  }
  if (n.one_in(4)) {
    r.colours.push_back(a_colour("white", ColourKind::white));
    r.inks.push_back(some_ink(n, "white", family));
    r.inks.back().settles = given(true);
  }
  r.substrate.absorbency =
      given(n.pick(std::array{Absorbency::none, Absorbency::low, Absorbency::high}));
  if (!n.one_in(2)) r.substrate.dot_diameter.reset();
  if (n.one_in(2)) r.substrate.surface_energy.reset();
  if (n.one_in(5)) {
    r.product.form = given(Form::cylinder);
    r.product.diameter = given(millimetres(n.from(12, 120)));
  }
  return r;
}

}  // namespace made
