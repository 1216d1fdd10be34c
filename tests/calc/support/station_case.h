/// A small catalogue and job to work stations out by hand, for the tests of the station.
#pragma once

#include <string>
#include <vector>

#include "calc/job.h"
#include "calc/station.h"

namespace support {

/// 100 mm at 1 m/s in one colour; 4 heads in 2 rows; 4000 h a year; head 1000 EUR, 8 weeks, 6000 h;
/// UV ink of 50 EUR/L. The job points into the request, so a case stays where it is.
struct StationCase {
  StationCase();
  StationCase(const StationCase&) = delete;
  StationCase& operator=(const StationCase&) = delete;
  StationCase(StationCase&&) = delete;
  StationCase& operator=(StationCase&&) = delete;
  ~StationCase() = default;

  calc::Request request;
  calc::Catalogue catalogue;
  calc::Job job;
  std::vector<calc::Group> groups;

  /// Makes ink and channel 0 of a family.
  void set_family(calc::InkFamily family);
  /// Turns the one group into a carriage.
  void set_scanning();
};

calc::Given<calc::Price> euro(double major);
template <class T>
calc::Given<T> given(T value) {
  return calc::exactly(std::move(value));
}
calc::Part part(const std::string& name, calc::PartKind kind, calc::Per per, double price);

/// Its station, sized.
calc::Station station_of(const StationCase& c);
bool warned(const calc::Station& station, const std::string& code);

}  // namespace support
