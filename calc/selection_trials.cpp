#include "calc/selection_parts.h"

namespace calc {

Trials::Trials(const Search& search, bool scanning, const std::vector<char>* only, When when)
    : search_(&search), scanning_(scanning), tries_(search, scanning) {
  const std::size_t count = search.catalogue->heads.size();
  for (std::size_t h = 0; h < count; ++h) {
    if (only == nullptr || (*only)[h] != 0) heads_.push_back(h);
  }
  for (std::size_t g = 0; g < search.groups.size(); ++g) {
    field_.emplace_back(count);
    tried_.emplace_back(count, 0);
    least_.emplace_back(count);
    for (const std::size_t h : heads_) when == When::at_once ? try_now(g, h) : look_at(g, h);
  }
}

/// What fails by itself, or can close no solid, accepts nothing and need not be tried.
void Trials::look_at(std::size_t group, std::size_t head) {
  const GroupNeed& need = search_->groups[group];
  Findings own;
  check_head(*search_, need, search_->catalogue->heads[head], own);
  if (own.failures.empty()) {
    least_[group][head] = least_of(*search_, need, head, scanning_);
  }
  tried_[group][head] = least_[group][head] ? 0 : 1;
}

void Trials::try_now(std::size_t group, std::size_t head) {
  HeadTry& found = field_[group][head];
  found = tries_.of(search_->groups[group], head);
  tried_[group][head] = 1;
  for (const Candidate& c : found.accepted) {
    lower({c.arrangement.heads, c.arrangement.footprint, c.floor}, least_[group][head]);
  }
}

const HeadTry& Trials::of(std::size_t group, std::size_t head) {
  HeadTry& found = field_[group][head];
  if (tried_[group][head] == 0) {
    found = tries_.of(search_->groups[group], head);
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
