/// Money in whole minor units (cents), so that totals are exact.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace calc {

/// An amount in minor units of one currency; every currency here has two decimals. The currency's
/// code (ISO 4217) is kept beside it by whoever holds more than one.
struct Money {
  std::int64_t minor = 0;
  friend constexpr Money operator+(Money a, Money b) { return {a.minor + b.minor}; }
  friend constexpr Money operator-(Money a, Money b) { return {a.minor - b.minor}; }
  friend constexpr Money operator*(Money a, std::int64_t n) { return {a.minor * n}; }
  // NOLINTNEXTLINE(modernize-use-nullptr): the check misreads a defaulted <=>.
  friend constexpr auto operator<=>(Money, Money) = default;
  constexpr double major() const { return static_cast<double>(minor) / 100; }
};

/// The nearest whole minor unit of an amount in major units, halves away from zero.
constexpr Money to_money(double major) {
  return {static_cast<std::int64_t>(major * 100 + (major < 0 ? -0.5 : 0.5))};
}

/// An amount with its currency: what a price field holds. `per_litre` prices are amounts per litre.
struct Price {
  Money amount;
  std::string currency;
};

}  // namespace calc
