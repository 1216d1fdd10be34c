#include "calc/moves.h"

#include <cmath>
#include <stdexcept>
#include <utility>

#include "calc/compare.h"

namespace calc {
namespace {

template <class T>
T scaled(const T& value, double k) {
  return value * k;
}
int scaled(int value, double k) { return static_cast<int>(floor_tolerant(value * k)); }
ResolutionPair scaled(const ResolutionPair& value, double k) {
  return {value.across * k, value.along * k};
}
Price scaled(const Price& value, double k) {
  return {{std::llround(static_cast<double>(value.amount.minor) * k)}, value.currency};
}
std::vector<ViscosityPoint> scaled(const std::vector<ViscosityPoint>& value, double k) {
  std::vector<ViscosityPoint> points = value;
  for (ViscosityPoint& p : points) p.viscosity = p.viscosity * k;
  return points;
}

template <class T>
void scale(const Given<T>& from, double k, Given<T>& to) {
  to->value = scaled(from->value, k);
  to->low = scaled(from->low, k);
  to->high = scaled(from->high, k);
}

/// The width that counts: of the image, else of what it is printed on.
template <class R>
auto& width_field(R& r) {
  if (r.image.width) return r.image.width;
  return r.product.width ? r.product.width : r.substrate.width;
}

class Lister {
 public:
  template <class T, class Number>
  void add(Lever lever, const Given<T>& field, const char* key, std::string unit, Ease ease,
           Number number) {
    if (!field) return;
    Movable m{lever, 0, key, std::move(unit), number(*field), ease, false};
    if (m.now > 0) list_.push_back(std::move(m));
  }
  std::vector<Movable>& list() { return list_; }

 private:
  std::vector<Movable> list_;
};

constexpr double minute = 60, hour = 3600, day = 86400, point_mm = 25.4 / 72;

void list_line(const Request& r, Lister& l) {
  l.add(Lever::speed, r.line.speed, "line.speed", "m/min", Ease::less,
        [](const auto& v) { return v.high.si() * minute; });
  l.add(Lever::throughput_parts, r.line.throughput_parts, "line.throughput", "parts/min",
        Ease::less, [](const auto& v) { return v.high.si() * minute; });
  l.add(Lever::throughput_area, r.line.throughput_area, "line.throughput", "m2/h", Ease::less,
        [](const auto& v) { return v.high.si() * hour; });
}

void list_image(const Request& r, Lister& l) {
  const char* width = r.image.width     ? "image.width"
                      : r.product.width ? "product.width"
                                        : "substrate.width";
  l.add(Lever::width, width_field(r), width, "mm", Ease::less,
        [](const auto& v) { return in_mm(v.high); });
  l.add(Lever::resolution, r.image.resolution, "image.resolution", "dpi", Ease::less,
        [](const auto& v) { return in_dpi(v.high.across); });
  l.add(Lever::feature, r.image.smallest_feature, "image.smallest_feature", "mm", Ease::more,
        [](const auto& v) { return in_mm(v.low); });
  l.add(Lever::text, r.image.smallest_text, "image.smallest_text", "pt", Ease::more,
        [](const auto& v) { return in_mm(v.low) / point_mm; });
}

void list_limits(const Request& r, Lister& l) {
  const Limits& limits = r.limits;
  l.add(Lever::budget, limits.budget, "limits.budget",
        limits.budget ? limits.budget->value.currency : "", Ease::more,
        [](const auto& v) { return v.value.amount.major(); });
  l.add(Lever::space, limits.space, "limits.space", "mm", Ease::more,
        [](const auto& v) { return in_mm(v.value); });
  l.add(Lever::heads, limits.heads, "limits.heads", "", Ease::more,
        [](const auto& v) { return static_cast<double>(v.value); });
  if (!l.list().empty() && l.list().back().lever == Lever::heads) l.list().back().whole = true;
  l.add(Lever::lead_time, limits.lead_time, "limits.lead_time", "day", Ease::more,
        [](const auto& v) { return v.value.si() / day; });
}

void list_inks(const Request& r, Lister& l) {
  for (std::size_t i = 0; i < r.inks.size(); ++i) {
    const Ink& ink = r.inks[i];
    if (!ink.viscosity || ink.viscosity->value.empty()) continue;
    l.list().push_back({Lever::viscosity, i, "ink." + ink.name + ".viscosity", "mPa.s",
                        in_mpas(ink.viscosity->value.front().viscosity), Ease::either, false});
  }
}

}  // namespace

std::vector<Movable> movables(const Request& request) {
  Lister l;
  list_line(request, l);
  list_image(request, l);
  list_limits(request, l);
  l.add(Lever::throw_distance, request.line.throw_distance, "line.throw_distance", "mm",
        Ease::either, [](const auto& v) { return in_mm(v.value); });
  list_inks(request, l);
  return std::move(l.list());
}

void move(const Movable& what, double factor, const Request& from, Request& to) {
  switch (what.lever) {
    case Lever::speed:
      return scale(from.line.speed, factor, to.line.speed);
    case Lever::throughput_parts:
      return scale(from.line.throughput_parts, factor, to.line.throughput_parts);
    case Lever::throughput_area:
      return scale(from.line.throughput_area, factor, to.line.throughput_area);
    case Lever::width:
      return scale(width_field(from), factor, width_field(to));
    case Lever::resolution:
      return scale(from.image.resolution, factor, to.image.resolution);
    case Lever::feature:
      return scale(from.image.smallest_feature, factor, to.image.smallest_feature);
    case Lever::text:
      return scale(from.image.smallest_text, factor, to.image.smallest_text);
    case Lever::budget:
      return scale(from.limits.budget, factor, to.limits.budget);
    case Lever::space:
      return scale(from.limits.space, factor, to.limits.space);
    case Lever::heads:
      return scale(from.limits.heads, factor, to.limits.heads);
    case Lever::lead_time:
      return scale(from.limits.lead_time, factor, to.limits.lead_time);
    case Lever::throw_distance:
      return scale(from.line.throw_distance, factor, to.line.throw_distance);
    case Lever::viscosity:
      return scale(from.inks.at(what.ink).viscosity, factor, to.inks.at(what.ink).viscosity);
  }
  throw std::logic_error("no such lever");
}

}  // namespace calc
