/// The table that closes a run: how many of each kind, and where to look first.
#pragma once

#include <array>
#include <string>

#include "output/batch_outcome.h"
#include "output/batch_progress.h"

namespace output {

class Tally {
 public:
  /// `folder` of the issues.
  explicit Tally(std::string folder) : folder_(std::move(folder)) {}

  void count(const Outcome& outcome);
  std::size_t total() const { return total_; }
  /// Kinds in order of how much they ask for attention, each with the first request of it: its
  /// place for one that got no document, else its document.
  std::string table(TerminalStyle style) const;

 private:
  struct Kind {
    std::size_t count = 0;
    std::string first;
  };
  enum { failed, refused, incomplete, infeasible, conditional, feasible, kinds };
  static std::size_t kind_of(const Outcome& outcome);
  std::string first_look(const Outcome& outcome) const;

  std::string folder_;
  std::size_t total_ = 0, issued_ = 0, unchanged_ = 0;
  std::array<Kind, kinds> kinds_;
};

}  // namespace output
