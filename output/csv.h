/// The parts list as CSV.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/specification.h"

namespace output {

/// One record with its CR LF: fields quoted where they must be; one that starts with = + - @ tab or
/// CR gets an apostrophe before it, so that no spreadsheet takes it for a formula.
std::string csv_record(const std::vector<std::string>& fields);

/// Major units with two decimals; empty for a price nobody named.
std::string price_text(const std::optional<calc::Money>& price);

/// bom.csv: the head and a record a part, UTF-8 without byte order mark; an empty price is on
/// request. Only the head when nothing was chosen.
std::string write_bom_csv(const calc::Specification& specification);

}  // namespace output
