#include "calc/selection_parts.h"

namespace calc {

Trials::Trials(const Search& search, bool scanning, const std::vector<char>* only)
    : search_(&search), scanning_(scanning) {
  const std::size_t count = search.catalogue->heads.size();
  for (std::size_t h = 0; h < count; ++h) {
    if (only == nullptr || (*only)[h] != 0) heads_.push_back(h);
  }
  for (const GroupNeed& need : search.groups) {
    field_.emplace_back(count);
    tried_.emplace_back(count, 0);
    least_.emplace_back(count);
    Findings own;
    for (const std::size_t h : heads_) {
      own.clear();
      check_head(search, need, search.catalogue->heads[h], own);
      if (own.failures.empty()) least_.back()[h] = least_of(search, need, h, scanning);
      tried_.back()[h] = least_.back()[h] ? 0 : 1;
    }
  }
}

const HeadTry& Trials::of(std::size_t group, std::size_t head) {
  HeadTry& found = field_[group][head];
  if (tried_[group][head] == 0) {
    found = try_head(*search_, search_->groups[group], head, scanning_);
    tried_[group][head] = 1;
  }
  return found;
}

Field Trials::all() {
  for (std::size_t g = 0; g < groups(); ++g) {
    for (const std::size_t h : heads_) of(g, h);
  }
  return std::move(field_);
}

}  // namespace calc
