/// Dates of issue: YYYY-MM-DD in the proleptic Gregorian calendar, years 0001 to 9999.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace output {

/// Whether the text is a day that exists.
bool is_date(std::string_view text);

/// The UTC day of a time in seconds since 1970-01-01; nullopt outside the years 1970 to 9999.
std::optional<std::string> date_of(std::int64_t seconds);
/// The same of a text of decimal digits, as SOURCE_DATE_EPOCH holds it.
std::optional<std::string> date_of_epoch(std::string_view text);

/// The day so many days after one that exists; days >= 0, not beyond the year 9999.
std::string date_after(std::string_view date, int days);

/// Where the date of issue comes from, strongest first: the command line, SOURCE_DATE_EPOCH, the
/// request, today.
struct DatePolicy {
  std::optional<std::string> option, epoch;
  std::string today;
};
struct IssueDate {
  std::string date;
  bool fixed = false;  ///< named by the command line or the request: an unchanged specification
                       ///< does not keep an earlier date
};
IssueDate choose_date(const DatePolicy& policy, const std::optional<std::string>& request_date);

}  // namespace output
