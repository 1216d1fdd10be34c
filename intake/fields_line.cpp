/// The fields of a request that tell of its line: speed, hours, gaps, encoder, air.
#include "intake/fields_parts.h"

namespace intake {

using namespace calc;  // the rows below name little else

namespace {

/// Area or parts per time, by the unit it is given in.
Row<Line> throughput() {
  FieldInfo area = field_info("line.throughput", "quantity", "area rate", "m2/h",
                              "what the line must print, as area or parts per time");
  FieldInfo parts = area;
  parts.dimension = "part rate";
  parts.unit = "parts/min";
  for (const Unit& unit : units()) {
    if (unit.dimension == parts.dimension) area.units.push_back(unit.text);
  }
  parts.units = area.units;
  parts.spread = "demand";
  parts.governing = "high";
  parts.least = 1e-3;
  parts.most = 1e6;
  return Row<Line>{
      area,
      [parts](Line& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
        const std::string plain = plain_letters(node.value);
        if (plain.find("part") != std::string::npos || plain.find("1/") != std::string::npos) {
          if (const auto span = take_span(node, parts, scribe)) {
            to.throughput_parts = spread_value<Frequency>(*span, scribe.origin(node));
          }
        } else if (const auto span = take_span(node, info, scribe)) {
          to.throughput_area = spread_value<AreaRate>(*span, scribe.origin(node));
        }
      }}
      .within(0.01, 1e6)
      .demand("high");
}

}  // namespace

Table<Line> line() {
  using L = Line;
  return {
      {
          quantity("line.speed", &L::speed, "speed", "m/min",
                   "speed of the product or of the carriage's line")
              .within(0.01, 3000)
              .demand_or_uncertain("high"),
          throughput(),
          word("line.mode", &L::mode, "how heads and product move")
              .otherwise("either if line.indexing is yes, else single"),
          word("line.indexing", &L::indexing,
               "whether the line can stop and index, or has a buffer")
              .otherwise("open: a carriage only on condition"),
          quantity("line.hours_per_day", &L::hours_per_day, "time", "h", "hours of operation a day")
              .within(0.01, 24),
          number("line.days_per_year", &L::days_per_year, "", "", "days of operation a year")
              .within(1, 366),
          quantity("line.throw_distance", &L::throw_distance, "length", "mm",
                   "gap from nozzle plate to the surface of the thickest product")
              .within(0.1, 100)
              .demand_or_uncertain("high")
              .otherwise("the head's nominal, else 1 mm"),
          quantity("line.throw_variation", &L::throw_variation, "length", "mm",
                   "how much the gap flutters, to each side")
              .within(0, 50)
              .otherwise("0.1 mm"),
          quantity("line.weave", &L::weave, "length", "mm",
                   "how far the product wanders sideways, to each side")
              .within(0, 500)
              .otherwise("0 mm"),
          quantity("line.weave_wavelength", &L::weave_wavelength, "length", "m",
                   "way along the line on which the product wanders once to and fro")
              .within(0.01, 1000)
              .otherwise("3 m"),
          quantity("line.mount_tolerance", &L::mount_tolerance, "length", "um",
                   "error to each side left when a head is aligned")
              .within(0.1, 1000)
              .otherwise("10 um"),
          quantity("line.wheel_error", &L::wheel_error, "fraction", "%",
                   "error of the encoder's scale left after calibration")
              .within(0, 10)
              .otherwise("0.02 %"),
          word("line.jetting", &L::jetting, "which way the drops fly").otherwise("down"),
          text("line.encoder", &L::encoder, check_short,
               "encoder the line has already, in words; the bill then has none"),
          quantity("line.encoder_step", &L::encoder_step, "length", "um",
                   "way of the product for one count of the encoder")
              .within(0.01, 10000),
          quantity("line.encoder_wheel", &L::encoder_wheel, "length", "mm",
                   "diameter of the encoder's wheel on the product")
              .within(1, 10000),
          integer("line.encoder_counts", &L::encoder_counts,
                  "counts of a turn of that wheel: pulses times 1, 2 or 4 by the decoding")
              .within(1, 100000000),
          quantity("line.air_temperature", &L::air_temperature, "temperature", "degC",
                   "air at the station")
              .within(-30, 80)
              .demand_or_uncertain("high")
              .otherwise("25 degC"),
          quantity("line.air_humidity", &L::air_humidity, "fraction", "%",
                   "relative humidity of the air at the station")
              .within(0, 100)
              .otherwise("50 %"),
          word("line.enclosed", &L::enclosed,
               "whether an enclosure with exhaust captures the vapour of heads and substrate")
              .otherwise("no: all vapour is in the room"),
          word("line.vapour_monitored", &L::vapour_monitored,
               "whether the vapour in the exhaust is monitored continuously")
              .otherwise("no"),
      },
      {}};
}

}  // namespace intake
