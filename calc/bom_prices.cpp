#include "calc/bom_prices.h"

#include <algorithm>

namespace calc {
namespace {

template <class T>
std::vector<Priced<T>> priced(const std::vector<T>& rows, const std::string& currency) {
  std::vector<Priced<T>> result;
  result.reserve(rows.size());
  for (const T& row : rows) {
    std::optional<double> lead;
    if (row.lead_time) lead = row.lead_time->value / days(1);
    result.push_back({&row, {&row, price_in(row.price, currency), lead, std::nullopt}});
  }
  return result;
}

}  // namespace

bool cheaper(const std::optional<Money>& a, const std::optional<Money>& b) {
  if (a.has_value() != b.has_value()) return a.has_value();
  return a && *a < *b;
}

std::optional<Money> price_in(const Given<Price>& price, const std::string& currency) {
  if (!price || price->value.currency != currency) return std::nullopt;
  return price->value.amount;
}

PriceBook::PriceBook(const Catalogue& catalogue, const std::string& currency)
    : heads_(priced(catalogue.heads, currency)),
      boards_(priced(catalogue.boards, currency)),
      supplies_(priced(catalogue.supplies, currency)),
      lamps_(priced(catalogue.lamps, currency)),
      dryers_(priced(catalogue.dryers, currency)),
      board_index_(catalogue.heads.size()) {
  std::unordered_map<std::string_view, std::size_t> boards;
  for (std::size_t i = 0; i < boards_.size(); ++i) boards.emplace(boards_[i].item->name, i);
  for (std::size_t i = 0; i < heads_.size(); ++i) {
    const Head& head = *heads_[i].item;
    head_index_.emplace(head.name, i);
    if (!head.board) continue;
    const auto found = boards.find(head.board->value);
    if (found != boards.end()) board_index_[i] = found->second;
  }
  read_parts(catalogue, currency);
}

void PriceBook::read_parts(const Catalogue& catalogue, const std::string& currency) {
  for (const Priced<Part>& part : priced(catalogue.parts, currency)) {
    if (!part.item->kind) continue;
    FittedPart fitted{part, {}};
    if (part.item->life) fitted.priced.row.life = part.item->life->value;
    if (part.item->fits) {
      fitted.fits.resize(heads_.size());
      for (const std::string& name : part.item->fits->value) {
        if (const auto head = find_head(name)) fitted.fits[*head] = true;
      }
    }
    parts_.at(static_cast<std::size_t>(part.item->kind->value)).push_back(std::move(fitted));
  }
  for (std::vector<FittedPart>& list : parts_) {
    std::stable_sort(list.begin(), list.end(), [](const FittedPart& a, const FittedPart& b) {
      return cheaper(a.priced.row.price, b.priced.row.price);
    });
  }
}

bool PriceBook::FittedPart::admits(std::size_t head, std::optional<InkFamily> family) const {
  if (priced.item->fits && (head >= fits.size() || !fits[head])) return false;
  if (!priced.item->families) return true;
  const std::vector<InkFamily>& families = priced.item->families->value;
  return family && std::find(families.begin(), families.end(), *family) != families.end();
}

std::optional<std::size_t> PriceBook::find_head(std::string_view name) const {
  const auto found = head_index_.find(name);
  if (found == head_index_.end()) return std::nullopt;
  return found->second;
}

const Priced<Board>* PriceBook::board_of(std::size_t head) const {
  return board_index_[head] ? &boards_[*board_index_[head]] : nullptr;
}

const Priced<Part>* PriceBook::part(PartKind kind, std::size_t head,
                                    std::optional<InkFamily> family) const {
  for (const FittedPart& part : parts_.at(static_cast<std::size_t>(kind))) {
    if (part.admits(head, family)) return &part.priced;
  }
  return nullptr;
}

}  // namespace calc
