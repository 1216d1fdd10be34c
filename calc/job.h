/// The job: the request with every gap derived or assumed, mapped to the axes of the calculation.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/barcode.h"
#include "calc/catalogue.h"
#include "calc/parameter.h"
#include "calc/specification.h"

namespace calc {

/// The ends of a value that must be served: both of a demand (`30..60 m/min`), the nominal value
/// alone of an uncertainty (`2 mm +- 0.3 mm`), whose ends only the verdict tries.
template <class T>
T served_low(const Value<T>& value) {
  return value.spread == Spread::uncertain ? value.value : value.low;
}
template <class T>
T served_high(const Value<T>& value) {
  return value.spread == Spread::uncertain ? value.value : value.high;
}

/// One colour with the ink it prints. `ink` points into the request; null when the request has
/// none.
struct Channel {
  std::string name;
  ColourKind kind = ColourKind::process;
  const Ink* ink = nullptr;
  std::optional<InkFamily> family;
  Value<double> cover_mean, cover_peak;
  std::optional<Value<Length>> film;
};

/// Channels that may share a head: same family, one jetting temperature, same recirculation need;
/// white, varnish and primer always alone.
struct ChannelGroup {
  std::string name;
  std::vector<std::size_t> channels;  ///< indices into Job::channels
  std::optional<InkFamily> family;
};

/// Every value the stages after it need, each with its origin. Pointers lead into the request the
/// job was made from, which must outlive it.
struct Job {
  const Request* request = nullptr;
  Parameters parameters;
  std::string date;      ///< date of issue, YYYY-MM-DD
  std::string currency;  ///< of all sums

  bool single_pass = true, scanning = false;  ///< which modes of motion are to be searched
  std::optional<Value<Length>> width;         ///< of the image
  Value<Length> margin, length, pitch;        ///< length, pitch: zero when not applicable
  std::optional<Value<Speed>> speed;          ///< low..high demand; of the line
  std::optional<Value<AreaRate>> throughput;  ///< substrate area per time, of scanning
  std::optional<Frequency> parts_rate;
  Required required;
  bool required_known = false;            ///< at least one demand came from the request
  Resolution least_across, least_along;   ///< least delivered that passes: hard demands whole,
                                          ///< soft ones at the soft share
  const BarcodeSymbol* symbol = nullptr;  ///< null: none asked, or not in the table
  std::optional<Value<Length>> module;    ///< of the bar code; absent: no bar code
  bool edges_across = false, edges_along = false;  ///< axes that carry its edges
  int levels = 2;
  bool solids = true;
  std::optional<Value<double>> contact_angle;
  Absorbency absorbency = Absorbency::low;
  std::optional<Value<Length>> throw_distance;  ///< given nominal
  Value<Length> throw_variation;
  Length thickness_variation;           ///< of the product, zero when not given
  std::optional<Length> radius;         ///< of a cylinder, which turns under the heads
  std::optional<Length> radius_across;  ///< of a cylinder that moves along its axis
  Value<Temperature> room;              ///< air where the heads stand
  Value<Time> hours_per_day;
  Value<double> days_per_year;
  double printed_share = 1;  ///< image length over product pitch
  Value<double> discount;
  int years = 5;
  Value<double> labour, energy;  ///< major units per hour and per kWh

  std::vector<Channel> channels;
  std::vector<ChannelGroup> groups;
  std::vector<Notice> warnings;
  std::vector<Assumption> assumptions;
  std::vector<Question> questions;
  std::vector<std::string> missing;  ///< keys without which nothing can be answered
};

/// Unit of a default as it is written; of a rate of money in the job's currency.
std::string unit_of(const Job& job, P id);
/// One row of the table of defaults as an assumption, with the value in force.
Assumption to_assumption(const Job& job, P id);
/// What a default moves in this job: the limit of process colours water, vapour or their film.
std::string_view effect_of(const Job& job, P id);

/// Key of the request whose demand governs the resolution; empty where it is assumed.
std::string governing_field(const Job& job);

/// Most that the process colours lay together [1, of one solid]: the least limit that an ink of
/// theirs states, else the default.
double process_limit(const Job& job);
/// The ink that states it; null where none does.
const Ink* limiting_ink(const Job& job);

/// The job of a request under given parameters. Never fails: what is missing stands in `missing`.
Job resolve(const Request& request, const Catalogue& catalogue, const std::string& date,
            const Parameters& parameters = {});

}  // namespace calc
