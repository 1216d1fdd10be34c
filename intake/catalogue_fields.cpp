/// The table of the fields of a catalogue, in the manner of the table of a request.
#include <deque>
#include <mutex>

#include "intake/table.h"

namespace intake {
namespace {

using namespace calc;  // the rows below name little else

/// `head.NAME.maker` as text that lives as long as the program: keys are views.
std::string_view kept(std::string_view element, std::string_view key) {
  static std::mutex mutex;
  static std::deque<std::string> texts;
  const std::lock_guard lock(mutex);
  return texts.emplace_back(std::string(element) + ".NAME." + std::string(key));
}

/// The fields every row of the catalogue has, then its own.
template <class S>
Table<S> with_common(std::string_view element, std::vector<Row<S>> own,
                     std::vector<Section<S>> sections = {}) {
  using Text = Given<std::string> S::*;
  using Money = Given<Price> S::*;
  using Lead = Given<Time> S::*;
  using Source = Given<Provenance> S::*;
  const Row<S> maker =
      text(kept(element, "maker"), Text{&calc::Row::maker}, check_short, "who makes it");
  std::vector<Row<S>> rows = {
      // The makers of heads tell which of them has no second source.
      element == "head" ? maker : maker.printed_only(),
      text(kept(element, "part_number"), Text{&calc::Row::part_number}, check_short,
           "the maker's number")
          .otherwise("the row's name"),
      text(kept(element, "designation"), Text{&calc::Row::designation}, check_short,
           "what it is, in words")
          .otherwise("the kind of row"),
      text(kept(element, "price_date"), Text{&calc::Row::price_date}, check_date,
           "day the price was given"),
      price(kept(element, "price"), Money{&calc::Row::price}, "price", "EUR", "price of one")
          .within(0, 1e8)
          .otherwise("on request"),
      quantity(kept(element, "lead_time"), Lead{&calc::Row::lead_time}, "time", "day",
               "from order to delivery")
          .within(0, 3650),
      word(kept(element, "provenance"), Source{&calc::Row::provenance},
           "where the figures come from")
          .otherwise("assumed")
          .printed_only(),
  };
  rows.insert(rows.end(), own.begin(), own.end());
  return {std::move(rows), std::move(sections)};
}

Table<HeadMode> mode() {
  using M = HeadMode;
  return {{
              integer("head.NAME.mode.NAME.colours", &M::colours,
                      "colours the head prints in this mode")
                  .within(1, 16)
                  .otherwise("1"),
              quantity("head.NAME.mode.NAME.row_pitch", &M::row_pitch, "resolution", "npi",
                       "nozzles per length of one row")
                  .within(5, 5000)
                  .required(),
              quantity_list("head.NAME.mode.NAME.row_offsets", &M::row_offsets, "fraction", "",
                            "offset of each row of one colour, in nozzle pitches of a row")
                  .within(0, 100)
                  .otherwise("0, one row"),
              quantity_list("head.NAME.mode.NAME.row_places", &M::row_places, "length", "mm",
                            "place of each row of one colour along the motion, from the foremost; "
                            "a head with several rows tilts only with them")
                  .within(0, 500),
              integer("head.NAME.mode.NAME.nozzles", &M::nozzles,
                      "nozzles of one colour, all its rows together")
                  .within(1, 1000000)
                  .required(),
              quantity_list("head.NAME.mode.NAME.drops", &M::drops, "volume", "pL",
                            "drop volume of each level above the empty one, ascending")
                  .within(0.1, 10000)
                  .required(),
              quantity_list("head.NAME.mode.NAME.frequency", &M::frequency, "frequency", "kHz",
                            "rating for each highest level used, or one for the binary use")
                  .within(0.01, 1000)
                  .required(),
              quantity_list("head.NAME.mode.NAME.drop_speed", &M::drop_speed, "speed", "m/s",
                            "speed of a drop of each level, where they differ")
                  .within(0.5, 30)
                  .otherwise("head.NAME.drop_speed, for all levels"),
              word("head.NAME.mode.NAME.grey_method", &M::grey_method,
                   "how grey levels are made; used with one rating only")
                  .otherwise("amplitude with two drops, else subdrops"),
          },
          {}};
}

/// Names of rows, separated by semicolons.
template <class S>
Row<S> names(std::string_view key, Given<std::vector<std::string>> S::*member,
             std::string_view meaning) {
  return {field_info(key, "list", "", "", meaning),
          [member](S& to, const Node& node, const FieldInfo&, Scribe& scribe) {
            if (auto list = take_names(node, scribe)) {
              to.*member = exactly(std::move(*list), scribe.origin(node));
            }
          }};
}

Table<Head> head() {
  using H = Head;
  return with_common<H>(
      "head",
      {
          word_list("head.NAME.families", &H::families, "ink families it takes").required(),
          quantity("head.NAME.body_width", &H::body_width, "length", "mm",
                   "body along the nozzle axis")
              .within(1, 5000)
              .required(),
          quantity("head.NAME.body_depth", &H::body_depth, "length", "mm", "body along the motion")
              .within(1, 1000)
              .required(),
          quantity("head.NAME.body_height", &H::body_height, "length", "mm",
                   "body from the nozzle plate up, connectors included; how far heads round a body "
                   "reach")
              .within(1, 2000),
          quantity("head.NAME.field_depth", &H::field_depth, "length", "mm",
                   "all nozzle rows together, along the motion")
              .within(0, 500)
              .otherwise("0 mm"),
          word("head.NAME.joins", &H::joins,
               "whether nozzle rows run on without a gap when heads stand end to end")
              .otherwise("no"),
          quantity("head.NAME.overlap", &H::overlap, "length", "mm",
                   "overlap of the swaths of neighbours")
              .within(0, 500)
              .otherwise("0 mm for heads that join, else 16 nozzles"),
          word("head.NAME.tilts", &H::tilts,
               "whether it may stand turned, so that its nozzles lie closer together across")
              .otherwise("no"),
          word("head.NAME.nozzle_delay", &H::nozzle_delay,
               "whether it delays each nozzle singly; tilted it then prints at any resolution "
               "along the motion")
              .otherwise("no"),
          quantity("head.NAME.nozzle_diameter", &H::nozzle_diameter, "length", "um",
                   "diameter of a nozzle")
              .within(1, 500),
          quantity("head.NAME.drop_speed", &H::drop_speed, "speed", "m/s", "speed of a drop")
              .within(0.5, 30),
          word("head.NAME.drop_speed_at", &H::drop_speed_at, "where the drop speed was measured")
              .otherwise("one_mm"),
          quantity("head.NAME.straightness", &H::straightness, "angle", "mrad",
                   "angle to the axis within which the jets lie, three standard deviations")
              .within(0.1, 200)
              .otherwise("5 mrad"),
          quantity("head.NAME.speed_spread", &H::speed_spread, "fraction", "%",
                   "how much the speed of drops varies, to each side, two standard deviations")
              .within(0, 50)
              .otherwise("5 %"),
          quantity("head.NAME.throw_least", &H::throw_least, "length", "mm",
                   "least gap to the surface")
              .within(0.05, 100)
              .otherwise("0.5 mm"),
          quantity("head.NAME.throw_nominal", &H::throw_nominal, "length", "mm",
                   "nominal gap to the surface")
              .within(0.05, 100)
              .otherwise("1 mm"),
          quantity("head.NAME.throw_most", &H::throw_most, "length", "mm",
                   "greatest gap to the surface")
              .within(0.05, 200),
          quantity("head.NAME.viscosity", &H::viscosity, "viscosity", "mPa.s",
                   "nominal viscosity at the nozzle")
              .within(0.1, 1000)
              .otherwise("the middle of the window"),
          quantity("head.NAME.viscosity_window", &H::viscosity_window, "viscosity", "mPa.s",
                   "viscosities it jets")
              .within(0.1, 1000)
              .window(),
          quantity("head.NAME.tension_window", &H::tension_window, "surface tension", "mN/m",
                   "surface tensions it jets")
              .within(5, 100)
              .window(),
          quantity("head.NAME.temperature_most", &H::temperature_most, "temperature", "degC",
                   "hottest ink it takes")
              .within(0, 250),
          word("head.NAME.serviceable", &H::serviceable, "who can service it"),
          word("head.NAME.waveform", &H::waveform, "who can change the waveform"),
          integer("head.NAME.driver_sources", &H::driver_sources,
                  "makers of drive electronics for it")
              .within(0, 100),
          word("head.NAME.recirculates", &H::recirculates, "whether ink recirculates through it")
              .otherwise("no"),
          quantity("head.NAME.recirculation", &H::recirculation, "flow", "mL/min",
                   "flow that recirculates through it")
              .within(0.01, 1e5),
          quantity("head.NAME.life", &H::life, "time", "h", "running hours it lasts")
              .within(1, 1e6),
          number("head.NAME.life_drops", &H::life_drops, "", "", "drops a nozzle lasts")
              .within(1, 1e18),
          quantity("head.NAME.purge", &H::purge, "volume", "mL", "ink of one purge")
              .within(0, 1000),
          quantity("head.NAME.avoid", &H::avoid, "frequency", "kHz",
                   "band of frequencies known bad")
              .within(0.01, 1000)
              .window(),
          text("head.NAME.board", &H::board, check_short, "name of the drive board that fits"),
          text("head.NAME.supply", &H::supply, check_short, "name of the ink supply that fits"),
      },
      {repeated("mode", &Head::modes, mode())});
}

Table<Board> board() {
  using B = Board;
  return with_common<B>("board",
                        {
                            integer("board.NAME.heads", &B::heads, "heads one board drives")
                                .within(1, 1000)
                                .otherwise("1"),
                            quantity("board.NAME.data_rate", &B::data_rate, "data rate", "Mbit/s",
                                     "data one board takes")
                                .within(0.001, 1e6),
                        });
}

Table<Supply> supply() {
  using S = Supply;
  return with_common<S>(
      "supply",
      {
          word_list("supply.NAME.families", &S::families, "ink families it takes").otherwise("any"),
          quantity("supply.NAME.flow", &S::flow, "flow", "mL/min", "greatest flow")
              .within(0.01, 1e6),
          quantity("supply.NAME.pump", &S::pump, "flow", "mL/min",
                   "greatest flow of its pump, ink and recirculation together")
              .within(0.01, 1e6),
          integer("supply.NAME.heads", &S::heads, "heads one supply feeds").within(1, 1000),
          quantity("supply.NAME.container", &S::container, "volume", "L", "ink of one container")
              .within(0.001, 10000),
          word("supply.NAME.stirs", &S::stirs, "whether it stirs ink that settles").otherwise("no"),
      });
}

Table<Lamp> lamp() {
  using L = Lamp;
  return with_common<L>(
      "lamp",
      {
          quantity("lamp.NAME.wavelength", &L::wavelength, "length", "nm", "peak wavelength")
              .within(100, 2000),
          quantity("lamp.NAME.irradiance", &L::irradiance, "irradiance", "W/cm2",
                   "peak at the substrate")
              .within(0.001, 1000)
              .required(),
          quantity(
              "lamp.NAME.shape", &L::shape, "fraction", "",
              "mean over peak along the window; 1.0645 of a Gaussian with its width at half height")
              .within(0.05, 1.07)
              .otherwise("0.5, triangular"),
          quantity("lamp.NAME.window_along", &L::window_along, "length", "mm",
                   "window along the motion")
              .within(0.1, 2000)
              .required(),
          quantity("lamp.NAME.window_across", &L::window_across, "length", "mm",
                   "uniform window across the motion")
              .within(1, 10000)
              .required(),
          quantity("lamp.NAME.electrical", &L::electrical, "power", "kW", "electrical power")
              .within(0, 1000),
          quantity("lamp.NAME.depth", &L::depth, "length", "mm", "room along the line")
              .within(1, 5000),
          quantity("lamp.NAME.ozone", &L::ozone, "mass flow", "g/h", "ozone one lamp makes")
              .within(0, 1000),
          word("lamp.NAME.mercury", &L::mercury, "whether it is a mercury arc lamp")
              .otherwise("no"),
      });
}

Table<Dryer> dryer() {
  using D = Dryer;
  return with_common<D>(
      "dryer",
      {
          quantity("dryer.NAME.width", &D::width, "length", "mm", "width it dries")
              .within(1, 20000)
              .required(),
          quantity("dryer.NAME.length", &D::length, "length", "mm", "length along the line")
              .within(1, 100000)
              .required(),
          quantity("dryer.NAME.drying_rate", &D::drying_rate, "drying rate", "kg/(m2 h)",
                   "water it takes off")
              .within(0.01, 10000)
              .otherwise("20 kg/(m2 h)"),
          quantity("dryer.NAME.electrical", &D::electrical, "power", "kW", "electrical power")
              .within(0, 10000),
      });
}

Table<Part> part() {
  using P = Part;
  return with_common<P>(
      "part",
      {
          word("part.NAME.kind", &P::kind, "what it does").required(),
          word("part.NAME.per", &P::per, "what its quantity follows")
              .otherwise("what its kind follows"),
          word_list("part.NAME.families", &P::families, "ink families it is for").otherwise("any"),
          names("part.NAME.fits", &P::fits, "heads it fits").otherwise("any"),
          quantity("part.NAME.air_flow", &P::air_flow, "flow", "m3/h",
                   "air one moves, of exhaust and ventilation")
              .within(0.1, 1e6),
          quantity("part.NAME.life", &P::life, "time", "h", "running hours between replacements")
              .within(1, 1e6),
      });
}

}  // namespace

const Table<Catalogue>& catalogue_table() {
  static const Table<Catalogue> table = {
      {text("catalogue.date", &Catalogue::date, check_date, "day the catalogue was put together")},
      {repeated("head", &Catalogue::heads, head()), repeated("board", &Catalogue::boards, board()),
       repeated("supply", &Catalogue::supplies, supply()),
       repeated("lamp", &Catalogue::lamps, lamp()), repeated("dryer", &Catalogue::dryers, dryer()),
       repeated("part", &Catalogue::parts, part())}};
  return table;
}

}  // namespace intake
