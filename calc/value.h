/// Values that remember where they came from.
#pragma once

#include <optional>
#include <string>

namespace calc {

enum class OriginKind { given, derived, assumed, catalogue };

/// Where a value stands: for `given` and `catalogue` the file, line and column (1-based, column in
/// code points) and the text as written; empty for `derived` and `assumed`.
struct Origin {
  OriginKind kind = OriginKind::given;
  std::string file;
  int line = 0;
  int column = 0;
  std::string raw;
};

/// What the low and high ends mean: none (low = value = high), a demand whose both ends must be
/// served (`30..60 m/min`), or an uncertainty about a nominal value (`2 mm +- 0.3 mm`).
enum class Spread { none, demand, uncertain };

/// A value, its two ends, and its origin. Invariant: low <= value <= high where T is ordered. For a
/// demand, `value` is the end the field table names as governing.
template <class T>
struct Value {
  T value{};
  T low{};
  T high{};
  Spread spread = Spread::none;
  Origin origin;
};

/// A field that may be absent.
template <class T>
using Given = std::optional<Value<T>>;

/// A Value without spread.
template <class T>
Value<T> exactly(T value, Origin origin = {}) {
  return {value, value, value, Spread::none, std::move(origin)};
}

}  // namespace calc
