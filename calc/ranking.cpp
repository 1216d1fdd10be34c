#include "calc/ranking.h"

#include <cmath>

namespace calc {
namespace {

/// Criteria above catalogue order, all ascending.
auto criteria(const RankKey& k) {
  return std::tuple(k.prefers, k.unpriced, k.price_class, k.open, k.joints, -k.margin, k.heads,
                    k.ownership);
}

Reason lost(const char* by, double value, double limit, std::string unit, bool at_least = false) {
  return {"lost", {}, by, value, limit, std::move(unit), at_least};
}

/// The group whose head comes later decides by its place in the catalogue, from 1.
Reason lost_by_order(const RankKey& loser, const RankKey& winner) {
  for (std::size_t i = 0; i < loser.order.size() && i < winner.order.size(); ++i) {
    if (loser.order[i].head <= winner.order[i].head) continue;
    return lost("order", static_cast<double>(loser.order[i].head + 1),
                static_cast<double>(winner.order[i].head + 1), "");
  }
  return lost("order", 1, 0, "");
}

Reason lost_by(const RankKey& loser, const RankKey& winner, const std::string& currency) {
  const auto ownership = [&] {
    return lost("ownership", Money{loser.ownership}.major(), Money{winner.ownership}.major(),
                currency);
  };
  if (loser.prefers != winner.prefers) return lost("prefers", loser.prefers, winner.prefers, "");
  if (loser.unpriced != winner.unpriced) {
    return lost("unpriced", loser.unpriced, winner.unpriced, "");
  }
  if (loser.price_class != winner.price_class) return ownership();
  if (loser.open != winner.open) return lost("open", loser.open, winner.open, "");
  if (loser.joints != winner.joints) return lost("joints", loser.joints, winner.joints, "");
  if (loser.margin != winner.margin) {
    return lost("speed_margin", static_cast<double>(loser.margin) * 1e-6,
                static_cast<double>(winner.margin) * 1e-6, "", true);
  }
  if (loser.heads != winner.heads) return lost("heads", loser.heads, winner.heads, "");
  if (loser.ownership != winner.ownership) return ownership();
  return lost_by_order(loser, winner);
}

}  // namespace

std::int64_t price_class(Money ownership) {
  if (ownership.minor < 1) return -1;
  return static_cast<std::int64_t>(
      std::floor(std::log(static_cast<double>(ownership.minor)) / std::log(1.05)));
}

std::int64_t rank_margin(double margin) {
  constexpr double most = 1e6;
  return std::llround((margin < most ? margin : most) * 1e6);
}

bool before(const RankKey& a, const RankKey& b) {
  const auto first = criteria(a);
  const auto second = criteria(b);
  if (first != second) return first < second;
  return a.order < b.order;
}

Reason lost_reason(const RankKey& loser, const RankKey& winner, const std::string& group,
                   const std::string& currency) {
  Reason reason = lost_by(loser, winner, currency);
  reason.group = group;
  return reason;
}

}  // namespace calc
