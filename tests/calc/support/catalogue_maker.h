/// Catalogues and requests made by number: the same number gives the same one on every machine.
/// Everything in them is invented. Also one plain head and one plain request to vary by hand.
#pragma once

#include <cstdint>
#include <string>

#include "calc/catalogue.h"
#include "calc/request.h"

namespace made {

/// A field with this value, as if a file had said so.
template <class T>
calc::Given<T> given(T value) {
  return calc::exactly(value, calc::Origin{calc::OriginKind::given, "made", 1, 1, {}});
}
/// A demand from low to high, the high end governing.
template <class T>
calc::Given<T> between(T low, T high) {
  return calc::Value<T>{high, low, high, calc::Spread::demand,
                        calc::Origin{calc::OriginKind::given, "made", 1, 1, {}}};
}
/// A price in EUR.
calc::Given<calc::Price> euros(double amount);

/// 600 per inch, 5/10/15 pL, 40/30/25 kHz, swath 54.2 mm, staggered; takes UV and aqueous ink;
/// every field is given.
calc::Head plain_head(const std::string& name);
/// Nothing but these heads, and one board, supply, lamp and dryer that fit them all.
calc::Catalogue catalogue_of(std::vector<calc::Head> heads);
/// 200 mm, 600 x 600 per inch, 30 m/min, one UV black on a coated label; every gate's data given.
calc::Request plain_request();

/// A catalogue of `heads` heads over the trade's range, some fields and prices missing.
calc::Catalogue catalogue(std::uint64_t number, std::size_t heads);
/// A request over the trade's range; width, speed, ink and substrate always given.
calc::Request request(std::uint64_t number);

}  // namespace made
