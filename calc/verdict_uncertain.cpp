#include "calc/verdict_uncertain.h"

#include "calc/eye.h"

namespace calc {
namespace {

/// How a field is written: its unit, and a number in it from one in SI.
struct Unit {
  const char* name = "";
  double per_si = 1;
  double offset = 0;
};

double si_of(double value) { return value; }
template <class T>
double si_of(const T& value) {
  return value.si();
}

class Mover {
 public:
  explicit Mover(const Request& request) : request_(request) {}

  /// `field(request)` is the field of a copy as of the original.
  template <class Field>
  void move(const std::string& key, const Unit& unit, Field field) {
    const auto& given = field(request_);
    if (!given || given->spread != Spread::uncertain) return;
    for (const auto& end : {given->low, given->high}) {
      MovedInput moved{key, unit.name, si_of(end) * unit.per_si + unit.offset, given->origin,
                       request_};
      *field(moved.request) = exactly(end, given->origin);
      moved_.push_back(std::move(moved));
    }
  }

  std::vector<MovedInput> take() { return std::move(moved_); }

 private:
  const Request& request_;
  std::vector<MovedInput> moved_;
};

constexpr Unit in_mm_unit{"mm", 1e3};
constexpr Unit in_um_unit{"um", 1e6};
constexpr Unit in_mn_unit{"mN/m", 1e3};
constexpr Unit in_dose_unit{"mJ/cm2", 0.1};
constexpr Unit in_celsius_unit{"degC", 1, -273.15};

void move_ink(Mover& m, const Request& request, std::size_t i) {
  const std::string at = "ink." + request.inks[i].name + ".";
  m.move(
      at + "surface_tension",
      in_mn_unit, [i](auto& r) -> auto& { return r.inks[i].surface_tension; });
  m.move(
      at + "density", {"kg/m3"}, [i](auto& r) -> auto& { return r.inks[i].density; });
  m.move(
      at + "cure_dose", in_dose_unit, [i](auto& r) -> auto& { return r.inks[i].cure_dose; });
  m.move(
      at + "jetting_temperature",
      in_celsius_unit, [i](auto& r) -> auto& { return r.inks[i].jetting_temperature; });
}

}  // namespace

std::vector<MovedInput> moved_inputs(const Request& request) {
  Mover m(request);
  m.move(
      "product.diameter", in_mm_unit, [](auto& r) -> auto& { return r.product.diameter; });
  for (std::size_t i = 0; i < request.inks.size(); ++i) move_ink(m, request, i);
  m.move(
      "substrate.contact_angle", {"deg", 180 / pi},
      [](auto& r) -> auto& { return r.substrate.contact_angle; });
  m.move(
      "substrate.dot_diameter", in_um_unit,
      [](auto& r) -> auto& { return r.substrate.dot_diameter; });
  m.move(
      "substrate.spread_factor", {"1"}, [](auto& r) -> auto& { return r.substrate.spread_factor; });
  m.move(
      "substrate.surface_energy", in_mn_unit,
      [](auto& r) -> auto& { return r.substrate.surface_energy; });
  m.move(
      "line.speed", {"m/s"}, [](auto& r) -> auto& { return r.line.speed; });
  m.move(
      "line.throw_distance", in_mm_unit, [](auto& r) -> auto& { return r.line.throw_distance; });
  m.move(
      "line.air_temperature", in_celsius_unit,
      [](auto& r) -> auto& { return r.line.air_temperature; });
  return m.take();
}

}  // namespace calc
