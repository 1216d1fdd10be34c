/// overview.html piece by piece: what all rows amount to, then the head, every row, the foot.
#pragma once

#include <array>
#include <map>
#include <string>

#include "output/overview_row.h"
#include "output/templates.h"

namespace output {

/// Call `count` with every row before anything else: the head speaks of all of them. Of each
/// request the latest issue counts, by revision, then by date; earlier ones are marked in their
/// rows.
class OverviewPage {
 public:
  explicit OverviewPage(const Templates& templates) : templates_(templates) {}

  void count(const OverviewRow& row);
  std::string head();
  std::string row(const OverviewRow& row) const;
  std::string foot();

 private:
  struct Latest {
    std::string revision, date, stem, verdict, currency;
    std::vector<std::string> heads, questions;
    double capital = 0, ownership = 0;
    bool priced = false, lacks_prices = false;
  };
  struct Sum {
    double capital = 0, ownership = 0;
    int requests = 0, lacking = 0;
  };
  struct Totals {
    std::map<std::string, int, std::less<>> verdicts, heads, questions;
    std::map<std::string, Sum, std::less<>> sums;
  };
  Totals totals() const;
  const std::pair<std::string, std::string>& frame();
  void set_totals(Values& values) const;
  std::string question_words(const QuestionKind& kind) const;

  const Templates& templates_;
  std::map<std::string, Latest, std::less<>> latest_;  ///< by id
  int issues_ = 0;
  std::pair<std::string, std::string> frame_;  ///< what stands before the rows and after
};

}  // namespace output
