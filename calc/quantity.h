/// Quantities: numbers that know their dimension, kept in SI units.
#pragma once

#include <compare>

namespace calc {

/// A number of dimension length^L mass^M time^T temperature^K, stored in SI base units. Adding
/// metres to seconds does not compile. Products that lose every dimension are plain doubles.
template <int L, int M, int T, int K = 0>
class Quantity {
 public:
  constexpr Quantity() = default;
  static constexpr Quantity from_si(double value) { return Quantity(value); }
  /// The number in SI base units.
  constexpr double si() const { return value_; }

  constexpr Quantity operator-() const { return Quantity(-value_); }
  constexpr Quantity& operator+=(Quantity other) { return value_ += other.value_, *this; }
  constexpr Quantity& operator-=(Quantity other) { return value_ -= other.value_, *this; }
  friend constexpr Quantity operator+(Quantity a, Quantity b) {
    return Quantity(a.value_ + b.value_);
  }
  friend constexpr Quantity operator-(Quantity a, Quantity b) {
    return Quantity(a.value_ - b.value_);
  }
  friend constexpr Quantity operator*(Quantity a, double k) { return Quantity(a.value_ * k); }
  friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(k * a.value_); }
  friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.value_ / k); }
  // NOLINTNEXTLINE(modernize-use-nullptr): the check misreads a defaulted <=>.
  friend constexpr auto operator<=>(Quantity, Quantity) = default;

 private:
  explicit constexpr Quantity(double value) : value_(value) {}
  double value_ = 0;
};

/// Collapses a dimensionless result to double.
template <int L, int M, int T, int K>
constexpr auto make_quantity(double si) {
  if constexpr (L == 0 && M == 0 && T == 0 && K == 0) {
    return si;
  } else {
    return Quantity<L, M, T, K>::from_si(si);
  }
}

template <int L1, int M1, int T1, int K1, int L2, int M2, int T2, int K2>
constexpr auto operator*(Quantity<L1, M1, T1, K1> a, Quantity<L2, M2, T2, K2> b) {
  return make_quantity<L1 + L2, M1 + M2, T1 + T2, K1 + K2>(a.si() * b.si());
}
template <int L1, int M1, int T1, int K1, int L2, int M2, int T2, int K2>
constexpr auto operator/(Quantity<L1, M1, T1, K1> a, Quantity<L2, M2, T2, K2> b) {
  return make_quantity<L1 - L2, M1 - M2, T1 - T2, K1 - K2>(a.si() / b.si());
}
template <int L, int M, int T, int K>
constexpr auto operator/(double a, Quantity<L, M, T, K> b) {
  return make_quantity<-L, -M, -T, -K>(a / b.si());
}

using Length = Quantity<1, 0, 0>;
using Area = Quantity<2, 0, 0>;
using Volume = Quantity<3, 0, 0>;
using Mass = Quantity<0, 1, 0>;
using Time = Quantity<0, 0, 1>;
using TemperatureDifference = Quantity<0, 0, 0, 1>;
using Speed = Quantity<1, 0, -1>;
using Acceleration = Quantity<1, 0, -2>;
using Frequency = Quantity<0, 0, -1>;   ///< also parts, dots or bits per second
using Resolution = Quantity<-1, 0, 0>;  ///< dots or nozzles per length
using AreaRate = Quantity<2, 0, -1>;
using VolumeFlow = Quantity<3, 0, -1>;
using MassFlow = Quantity<0, 1, -1>;
using Viscosity = Quantity<-1, 1, -1>;
using SurfaceTension = Quantity<0, 1, -2>;
using Dose = Quantity<0, 1, -2>;  ///< radiant exposure, energy per area
using Irradiance = Quantity<0, 1, -3>;
using Density = Quantity<-3, 1, 0>;
using MassFlux = Quantity<-2, 1, -1>;  ///< drying rate
using Power = Quantity<2, 1, -3>;
using Energy = Quantity<2, 1, -2>;
using SpecificEnergy = Quantity<2, 0, -2>;

/// An absolute temperature; two of them differ by a TemperatureDifference and do not add.
class Temperature {
 public:
  constexpr Temperature() = default;
  static constexpr Temperature kelvin(double k) { return Temperature(k); }
  static constexpr Temperature celsius(double c) { return Temperature(c + 273.15); }
  constexpr double in_kelvin() const { return kelvin_; }
  constexpr double in_celsius() const { return kelvin_ - 273.15; }
  /// The number in kelvin, as Quantity::si.
  constexpr double si() const { return kelvin_; }
  static constexpr Temperature from_si(double k) { return Temperature(k); }
  friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return TemperatureDifference::from_si(a.kelvin_ - b.kelvin_);
  }
  friend constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
    return Temperature(a.kelvin_ + d.si());
  }
  // NOLINTNEXTLINE(modernize-use-nullptr): the check misreads a defaulted <=>.
  friend constexpr auto operator<=>(Temperature, Temperature) = default;

 private:
  explicit constexpr Temperature(double kelvin) : kelvin_(kelvin) {}
  double kelvin_ = 293.15;
};

constexpr Length metres(double v) { return Length::from_si(v); }
constexpr Length millimetres(double v) { return Length::from_si(v * 1e-3); }
constexpr Length micrometres(double v) { return Length::from_si(v * 1e-6); }
constexpr Resolution dpi(double v) { return Resolution::from_si(v / 0.0254); }
constexpr Speed metres_per_second(double v) { return Speed::from_si(v); }
constexpr Frequency hertz(double v) { return Frequency::from_si(v); }
constexpr Frequency kilohertz(double v) { return Frequency::from_si(v * 1e3); }
constexpr Volume picolitres(double v) { return Volume::from_si(v * 1e-15); }
constexpr Volume litres(double v) { return Volume::from_si(v * 1e-3); }
constexpr Time seconds(double v) { return Time::from_si(v); }
constexpr Time days(double v) { return Time::from_si(v * 86400); }
constexpr Viscosity millipascal_seconds(double v) { return Viscosity::from_si(v * 1e-3); }
constexpr SurfaceTension millinewtons_per_metre(double v) {
  return SurfaceTension::from_si(v * 1e-3);
}

constexpr double in_mm(Length v) { return v.si() * 1e3; }
constexpr double in_um(Length v) { return v.si() * 1e6; }
constexpr double in_dpi(Resolution v) { return v.si() * 0.0254; }
constexpr double in_pl(Volume v) { return v.si() * 1e15; }
constexpr double in_khz(Frequency v) { return v.si() * 1e-3; }
constexpr double in_mpas(Viscosity v) { return v.si() * 1e3; }
constexpr double in_mn_per_m(SurfaceTension v) { return v.si() * 1e3; }

}  // namespace calc
