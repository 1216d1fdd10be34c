#include "calc/viscosity.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "calc/compare.h"

namespace calc {

namespace {

/// One point as the fit sees it.
struct LogPoint {
  double t = 0;    ///< [K]
  double log = 0;  ///< ln(eta / 1 Pa s)
};

LogPoint log_point(const ViscosityPoint& point) {
  return {point.temperature.in_kelvin(), std::log(point.viscosity.si())};
}

ViscosityCurve arrhenius(const LogPoint& p, const LogPoint& q) {
  ViscosityCurve curve;
  curve.kind = ViscosityKind::arrhenius;
  curve.b = (p.log - q.log) / (1 / p.t - 1 / q.t);
  curve.a = p.log - curve.b / p.t;
  return curve;
}

/// Through three points, ascending in t and falling in log. None where the curve has its pole above
/// them, as no liquid has, or lies straight.
std::optional<ViscosityCurve> vogel(const LogPoint& p, const LogPoint& q, const LogPoint& r) {
  const double first = q.t - p.t;
  const double second = (r.t - q.t) * (p.log - q.log) / (q.log - r.log);
  if (std::abs(second - first) <= tolerance * first) return std::nullopt;
  ViscosityCurve curve;
  curve.kind = ViscosityKind::vogel;
  curve.c = p.t - first * (r.t - p.t) / (second - first);
  if (curve.c > p.t) return std::nullopt;
  curve.b = (p.log - r.log) * (p.t - curve.c) * (r.t - curve.c) / (r.t - p.t);
  curve.a = p.log - curve.b / (p.t - curve.c);
  return curve;
}

bool falls(const std::vector<ViscosityPoint>& points) {
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (points[i].viscosity.si() <= 0) return false;
    if (i == 0) continue;
    if (points[i].temperature <= points[i - 1].temperature) return false;
    if (points[i].viscosity >= points[i - 1].viscosity) return false;
  }
  return !points.empty();
}

/// Curve between points i and i + 1, with the third point nearest to the pair.
ViscosityCurve between(const std::vector<ViscosityPoint>& points, std::size_t i) {
  const LogPoint p = log_point(points[i]);
  const LogPoint q = log_point(points[i + 1]);
  std::optional<ViscosityCurve> curve;
  if (points.size() > 2) {
    const bool below = i > 0 && (i + 2 == points.size() ||
                                 points[i].temperature - points[i - 1].temperature <=
                                     points[i + 2].temperature - points[i + 1].temperature);
    curve = below ? vogel(log_point(points[i - 1]), p, q) : vogel(p, q, log_point(points[i + 2]));
  }
  if (!curve) curve = arrhenius(p, q);
  curve->from = points[i].temperature;
  curve->to = points[i + 1].temperature;
  return *curve;
}

ViscosityCurve single_point(const ViscosityPoint& point) {
  ViscosityCurve curve;
  curve.a = std::log(point.viscosity.si());
  curve.from = curve.to = point.temperature;
  return curve;
}

}  // namespace

std::optional<ViscosityModel> fit_viscosity(std::vector<ViscosityPoint> points) {
  std::sort(points.begin(), points.end(), [](const ViscosityPoint& a, const ViscosityPoint& b) {
    return a.temperature < b.temperature;
  });
  if (!falls(points)) return std::nullopt;
  ViscosityModel model;
  if (points.size() == 1) model.curves.push_back(single_point(points.front()));
  for (std::size_t i = 0; i + 1 < points.size(); ++i) model.curves.push_back(between(points, i));
  return model;
}

const ViscosityCurve* curve_at(const ViscosityModel& model, Temperature temperature) {
  const double t = temperature.si();
  if (!at_least(t, model.low().si()) || !at_most(t, model.high().si())) return nullptr;
  const auto past_end = [&](const ViscosityCurve& curve) { return temperature <= curve.to; };
  const auto curve = std::find_if(model.curves.begin(), model.curves.end(), past_end);
  return curve == model.curves.end() ? &model.curves.back() : &*curve;
}

Viscosity curve_viscosity(const ViscosityCurve& curve, Temperature temperature) {
  return Viscosity::from_si(std::exp(curve.a + curve.b / (temperature.in_kelvin() - curve.c)));
}

std::optional<Viscosity> viscosity_at(const ViscosityModel& model, Temperature temperature) {
  const ViscosityCurve* curve = curve_at(model, temperature);
  if (curve == nullptr) return std::nullopt;
  return curve_viscosity(*curve, temperature);
}

std::optional<Viscosity> viscosity_target(const ViscosityNeed& need) {
  if (need.nominal) return need.nominal;
  if (need.least && need.most) return (*need.least + *need.most) / 2;
  return std::nullopt;
}

bool within_window(Viscosity viscosity, const ViscosityNeed& need) {
  return (!need.least || at_least(viscosity, *need.least)) &&
         (!need.most || at_most(viscosity, *need.most));
}

namespace {

/// Viscosity at a temperature within the model's span.
Viscosity inside(const ViscosityModel& model, Temperature temperature) {
  return curve_viscosity(*curve_at(model, temperature), temperature);
}

/// Temperature in [low, high] at which the viscosity is the target, given that it is above target
/// at low and not above it at high: T = c + b/(ln eta - a) of the first curve that falls so far.
Temperature solved(const ViscosityModel& model, Viscosity target, Temperature low,
                   Temperature high) {
  const double log = std::log(target.si());
  const auto falls_so_far = [log](const ViscosityCurve& curve) {
    return curve.a + curve.b / (curve.to.in_kelvin() - curve.c) <= log;
  };
  const auto found = std::find_if(model.curves.begin(), model.curves.end(), falls_so_far);
  const ViscosityCurve& curve = found == model.curves.end() ? model.curves.back() : *found;
  const Temperature t = Temperature::from_si(curve.c + curve.b / (log - curve.a));
  return std::clamp(t, std::max(low, curve.from), std::max(low, std::min(high, curve.to)));
}

JettingTemperature nearest(const ViscosityModel& model, Temperature temperature,
                           const ViscosityNeed& need) {
  const Viscosity viscosity = inside(model, temperature);
  const bool accepted = within_window(viscosity, need);
  return {accepted ? JettingChoice::nearest : JettingChoice::outside_window, temperature,
          viscosity};
}

}  // namespace

JettingTemperature find_jetting_temperature(const ViscosityModel& model, Temperature low,
                                            Temperature high, const ViscosityNeed& need) {
  if (!at_most(low.si(), model.high().si()) || !at_most(model.low().si(), high.si()) ||
      !at_most(low.si(), high.si())) {
    return {};
  }
  low = std::clamp(low, model.low(), model.high());
  high = std::clamp(high, low, std::max(low, model.high()));
  const auto target = viscosity_target(need);
  if (!target) return nearest(model, low, need);
  if (at_most(inside(model, low), *target)) {
    const bool met = at_least(inside(model, low), *target);
    JettingTemperature found = nearest(model, low, need);
    if (met) found.choice = JettingChoice::nominal;
    return found;
  }
  if (!at_most(inside(model, high), *target)) return nearest(model, high, need);
  const Temperature found = solved(model, *target, low, high);
  return {JettingChoice::nominal, found, inside(model, found)};
}

Temperature least_jetting_temperature(Temperature highest_room) {
  return highest_room + TemperatureDifference::from_si(5);
}

}  // namespace calc
