#include "output/overview_csv.h"

#include <cmath>

#include "calc/money.h"
#include "output/csv.h"
#include "output/plain_number.h"

namespace output {
namespace {

std::string joined(const std::vector<std::string>& texts) {
  std::string all;
  for (const std::string& text : texts) all.append(all.empty() ? "" : "; ").append(text);
  return all;
}

std::string amount(const std::optional<double>& major) {
  return major ? price_text(calc::Money{std::llround(*major * 100)}) : "";
}

std::string count(const std::optional<int>& value) { return value ? std::to_string(*value) : ""; }

}  // namespace

std::string overview_csv_head() {
  return csv_record({"id", "revision", "date", "title", "customer", "verdict", "head",
                     "heads_total", "capital", "ownership", "currency", "unpriced",
                     "lead_time_days", "open_questions", "pdf"});
}

std::string overview_csv_record(const OverviewRow& row) {
  return csv_record({row.id, row.revision, row.date, row.title, row.customer, row.verdict,
                     joined(row.heads), count(row.heads_total), amount(row.capital),
                     amount(row.ownership), row.currency, count(row.unpriced),
                     row.lead_time_days ? plain(*row.lead_time_days) : "",
                     std::to_string(kinds_of(row.questions).size()), row.stem + ".pdf"});
}

}  // namespace output
