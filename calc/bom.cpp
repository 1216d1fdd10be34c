#include "calc/bom.h"

#include <algorithm>
#include <cmath>

namespace calc {

std::optional<Money> extended_price(const Need& need) {
  if (!need.item.price) return std::nullopt;
  if (need.unit == NeedUnit::piece) return *need.item.price * std::llround(need.quantity);
  return to_money(need.item.price->major() * need.quantity);
}

void Needs::add(PartCode code, const PricedRow& item, double quantity, bool once) {
  if (quantity <= 0) return;
  bool& asked = asked_.at(static_cast<std::size_t>(code));
  for (std::size_t i = 0; asked && i < list_.size(); ++i) {
    if (list_[i].code != code || list_[i].item.row != item.row) continue;
    if (!once) list_[i].quantity += quantity;
    return;
  }
  asked = true;
  list_.push_back({code, item, quantity, NeedUnit::piece, std::nullopt, 0});
}

BillTotal total(const std::vector<Need>& needs) {
  BillTotal sum;
  for (const Need& need : needs) {
    const std::optional<Money> extended = extended_price(need);
    if (extended) sum.priced = sum.priced + *extended;
    if (!extended) ++sum.unpriced;
    sum.lead_days = std::max(sum.lead_days, need.item.lead_days.value_or(0));
  }
  return sum;
}

}  // namespace calc
