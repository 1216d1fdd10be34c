/// The bill of materials as needs: what is needed, how many, from which row, at which price.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "calc/bom_prices.h"
#include "calc/specification.h"

namespace calc {

/// What a line of the bill is. The order is the bill's; part_codes() has one name for each.
enum class PartCode : std::size_t {
  printhead,
  drive_board,
  cable,
  ink_supply,
  degasser,
  filter,
  heater,
  chiller,
  pretreatment,
  mount,
  alignment_gauge,
  alignment_hours,
  cap,
  wipe,
  spittoon,
  strike_sensor,
  uv_lamp,
  dryer,
  exhaust,
  ventilation,
  encoder,
  product_sensor,
  controller,
  flush,
  first_fill,
  spare_head,
  commissioning,
  training,
  count
};

enum class NeedUnit { piece, litre, hour };

/// One line to be. `item.row` null: the catalogue lacks it. `channel` is that of a first fill,
/// which comes in `containers` where their size is known.
struct Need {
  PartCode code = PartCode::printhead;
  PricedRow item;
  double quantity = 0;
  NeedUnit unit = NeedUnit::piece;
  std::optional<std::size_t> channel;
  int containers = 0;
};

/// Unit price times quantity [money], rounded once; none without a price.
std::optional<Money> extended_price(const Need& need);

/// The needs of one station; the same part asked for twice is one need.
class Needs {
 public:
  Needs() { list_.reserve(32); }
  /// Adds a quantity of a part; `once`: a station has only one whoever asks.
  void add(PartCode code, const PricedRow& item, double quantity, bool once = false);
  void add(const Need& need) {
    asked_.at(static_cast<std::size_t>(need.code)) = true;
    list_.push_back(need);
  }
  void clear() {
    list_.clear();
    asked_.fill(false);
  }
  const std::vector<Need>& list() const { return list_; }

 private:
  std::vector<Need> list_;
  std::array<bool, static_cast<std::size_t>(PartCode::count)> asked_{};  ///< kinds in the list
};

struct BillTotal {
  Money priced;
  int unpriced = 0;
  double lead_days = 0;  ///< longest known, 0 when none is
};
BillTotal total(const std::vector<Need>& needs);

/// A channel and the row of the ink supply that feeds it; null where the catalogue has none.
struct Fed {
  std::size_t channel = 0;
  const Row* supply = nullptr;
};

/// The lines of the bill in order of PartCode, ready to print; a supply serves what it feeds.
std::vector<BomLine> bom_lines(const Job& job, const std::vector<Group>& groups,
                               std::vector<Need> needs, const std::vector<Fed>& fed);

}  // namespace calc
