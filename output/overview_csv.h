/// overview.csv: a record an issue, in order of their names; empty where unknown or not applicable.
#pragma once

#include <string>

#include "output/overview_row.h"

namespace output {

std::string overview_csv_head();
std::string overview_csv_record(const OverviewRow& row);

}  // namespace output
