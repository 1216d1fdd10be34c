/// What an issued JSON file says that a later issue is compared with.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/notice.h"
#include "calc/request.h"
#include "calc/specification.h"

namespace output {

/// An earlier issue as the revision history names it.
struct EarlierIssue {
  std::string revision, date, verdict;
  std::string sha256;  ///< of its JSON file
};

/// A figure of the answer: a number in `unit`, or a text.
struct IssueFigure {
  std::string key;    ///< "heads_total", "drop_volume"
  std::string group;  ///< of heads; empty for what is of the whole station
  double value = 0;
  std::string unit;  ///< a currency for money
  std::string text;  ///< when it is no number
  bool is_money = false;
};

struct IssueRecord {
  std::string revision, date, verdict;
  std::string program, catalogue_date, catalogue_sha256, source_sha256, currency;
  std::vector<EarlierIssue> revisions;  ///< issues before it, oldest first
  std::vector<calc::Input> inputs;      ///< given ones
  std::vector<calc::Assumption> assumptions;
  std::vector<IssueFigure> figures;
  std::vector<calc::BomLine> parts;
  std::vector<calc::Notice> conditions;
};

/// nullopt when the text is no JSON of ours.
std::optional<IssueRecord> read_record(std::string_view json);

}  // namespace output
