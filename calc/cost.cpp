#include "calc/cost.h"

#include <algorithm>
#include <charconv>

#include "calc/present_value.h"

namespace calc {
namespace {

std::optional<int> number(std::string_view text) {
  int value = 0;
  const char* end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, value);
  if (error != std::errc() || stop != end || text.empty()) return std::nullopt;
  return value;
}

/// Days since 1 March of year 0, proleptic Gregorian: years begin in March, so that the leap day
/// is the last one.
int day_number(int year, int month, int day) {
  const int y = month <= 2 ? year - 1 : year;
  const int m = (month + 9) % 12;
  return 365 * y + y / 4 - y / 100 + y / 400 + (153 * m + 2) / 5 + day - 1;
}

int days_in(int year, int month) {
  const int next = month == 12 ? day_number(year + 1, 1, 1) : day_number(year, month + 1, 1);
  return next - day_number(year, month, 1);
}

std::optional<int> day_number(std::string_view date) {
  if (date.size() != 10 || date[4] != '-' || date[7] != '-') return std::nullopt;
  const auto year = number(date.substr(0, 4));
  const auto month = number(date.substr(5, 2));
  const auto day = number(date.substr(8, 2));
  if (!year || !month || !day || *year < 1 || *month < 1 || *month > 12) return std::nullopt;
  if (*day < 1 || *day > days_in(*year, *month)) return std::nullopt;
  return day_number(*year, *month, *day);
}

}  // namespace

double printed_area_per_year(const Job& job, const std::vector<Group>& groups) {
  return (area_rates(job, groups).nominal * running_time(job)).si() * job.printed_share;
}

Cost cost(const Job& job, const std::vector<Group>& groups, const Sizing& sizing) {
  Cost result;
  result.capital = sizing.bill.priced;
  result.running_per_year = sizing.running.sum();
  result.ownership = sizing.ownership;
  result.discount = job.discount.value;
  result.years = job.years;
  result.ink_per_year = sizing.running.ink;
  result.heads_per_year = sizing.running.heads;
  result.energy_per_year = sizing.running.energy;
  result.labour_per_year = sizing.running.labour;
  result.cleaning_per_year = sizing.running.cleaning;
  result.ink_unpriced = sizing.running.ink_unpriced;
  result.heads_unpriced = sizing.running.heads_unpriced;
  result.power_unknown = sizing.running.power_unknown;
  result.flush_unpriced = sizing.running.flush_unpriced;
  result.terms = cost_terms(result);
  if (job.years < 1) return result;
  const double area = printed_area_per_year(job, groups);
  if (area > 0) {
    result.images_m2_per_year = area;
    result.per_m2 = cost_per_square_metre(result.ownership, result.discount, job.years, area);
  }
  const auto parts = parts_rate(job);
  const double yearly = parts ? *parts * running_time(job) : 0;
  if (yearly > 0) {
    result.parts_per_year = yearly;
    result.per_thousand =
        1000 * result.ownership.major() / (annuity_factor(result.discount, job.years) * yearly);
  }
  return result;
}

std::vector<CostTerm> cost_terms(const Cost& cost) {
  constexpr std::size_t most = 5;
  if (cost.years < 1) return {};
  const double factor = annuity_factor(cost.discount, cost.years);
  std::vector<CostTerm> terms;
  const auto add = [&terms](const char* name, double major) {
    if (major > 0) terms.push_back({name, to_money(major), to_money(cost_swing * major)});
  };
  add("capital", cost.capital.major());
  add("ink", cost.ink_per_year.major() * factor);
  add("heads", cost.heads_per_year.major() * factor);
  add("energy", cost.energy_per_year.major() * factor);
  add("labour", cost.labour_per_year.major() * factor);
  add("cleaning", cost.cleaning_per_year.major() * factor);
  std::stable_sort(terms.begin(), terms.end(), [](const CostTerm& a, const CostTerm& b) {
    return a.value.minor > b.value.minor;
  });
  terms.resize(std::min(terms.size(), most));
  return terms;
}

std::optional<int> days_between(std::string_view from, std::string_view to) {
  const auto first = day_number(from);
  const auto last = day_number(to);
  if (!first || !last) return std::nullopt;
  return *last - *first;
}

namespace {

/// One warning a currency: the first price in it, and how many there are.
void currency_warning(const Job& job, const Row& row, std::vector<Notice>& to) {
  const std::string name = row.element + "." + row.name;
  const std::string& currency = row.price->value.currency;
  for (Notice& known : to) {
    if (known.code != "price_currency") continue;
    if (std::get<std::string>(known.args.at(1).value) != currency) continue;
    const double prices = std::get<double>(known.args.at(3).value);
    known.args.at(3).value = prices + 1;
    if (prices < 2) known.args.push_back({"subject", "several", ""});
    return;
  }
  to.push_back({"price_currency",
                {{"row", name, ""},
                 {"currency", currency, ""},
                 {"wanted", job.currency, ""},
                 {"prices", 1.0, ""}},
                name + ".price",
                {row.price->origin}});
}

}  // namespace

void price_warnings(const Job& job, const Row& row, std::vector<Notice>& to) {
  if (!row.price) return;
  const std::string name = row.element + "." + row.name;
  if (row.price->value.currency != job.currency) {
    currency_warning(job, row, to);
    return;
  }
  if (!row.price_date) return;
  const auto age = days_between(row.price_date->value, job.date);
  if (!age || *age <= job.parameters[P::stale_price_days]) return;
  to.push_back({"price_stale",
                {{"row", name, ""},
                 {"price_date", row.price_date->value, ""},
                 {"age", static_cast<double>(*age), "d"}},
                name + ".price_date",
                {row.price_date->origin}});
}

}  // namespace calc
