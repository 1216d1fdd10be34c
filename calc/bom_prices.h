/// The catalogue seen through one currency: each row with its price or none, and the parts that
/// fit.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "calc/job.h"

namespace calc {

/// A row with its price in the job's currency; no price: on request. Row null: the catalogue lacks
/// it.
struct PricedRow {
  const Row* row = nullptr;
  std::optional<Money> price;
  std::optional<double> lead_days;
  std::optional<Time> life;  ///< of a part that wears, running time
};

template <class T>
struct Priced {
  const T* item = nullptr;
  PricedRow row;
};

/// Whether a sum is to be preferred: priced before unpriced, then the lower one; a tie is none.
bool cheaper(const std::optional<Money>& a, const std::optional<Money>& b);

/// Price in `currency`; none when absent or in another currency (no rate is known here).
std::optional<Money> price_in(const Given<Price>& price, const std::string& currency);

inline constexpr std::size_t part_kinds = static_cast<std::size_t>(PartKind::training) + 1;

/// Prices and fits, worked out once for a search. The catalogue must outlive it.
class PriceBook {
 public:
  PriceBook(const Catalogue& catalogue, const std::string& currency);

  /// Index of a head by name, none when unknown.
  std::optional<std::size_t> find_head(std::string_view name) const;
  std::size_t head_count() const { return heads_.size(); }
  const Priced<Head>& head(std::size_t index) const { return heads_[index]; }
  /// The board a head names, or null.
  const Priced<Board>* board_of(std::size_t head) const;
  const std::vector<Priced<Supply>>& supplies() const { return supplies_; }
  const std::vector<Priced<Lamp>>& lamps() const { return lamps_; }
  const std::vector<Priced<Dryer>>& dryers() const { return dryers_; }
  /// The cheapest part of a kind that fits a head and a family, or null. Ties go by the catalogue.
  const Priced<Part>* part(PartKind kind, std::size_t head, std::optional<InkFamily> family) const;

 private:
  struct FittedPart {
    Priced<Part> priced;
    std::vector<bool> fits;  ///< by head index; empty = any
    bool admits(std::size_t head, std::optional<InkFamily> family) const;
  };
  void read_parts(const Catalogue& catalogue, const std::string& currency);

  std::vector<Priced<Head>> heads_;
  std::vector<Priced<Board>> boards_;
  std::vector<Priced<Supply>> supplies_;
  std::vector<Priced<Lamp>> lamps_;
  std::vector<Priced<Dryer>> dryers_;
  std::array<std::vector<FittedPart>, part_kinds> parts_;
  std::unordered_map<std::string_view, std::size_t> head_index_;
  std::vector<std::optional<std::size_t>> board_index_;  ///< by head
};

}  // namespace calc
