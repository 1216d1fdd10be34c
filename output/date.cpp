#include "output/date.h"

#include <array>
#include <charconv>

namespace output {
namespace {

int number_of(std::string_view digits) {
  int value = 0;
  for (const char c : digits) {
    if (c < '0' || c > '9') return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}

int days_in(int year, int month) {
  constexpr std::array<int, 12> days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return month == 2 && leap ? 29 : days.at(static_cast<std::size_t>(month - 1));
}

std::string padded(int value, std::size_t width) {
  std::string text = std::to_string(value);
  return text.insert(0, width - text.size(), '0');
}

}  // namespace

bool is_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const int year = number_of(text.substr(0, 4));
  const int month = number_of(text.substr(5, 2));
  const int day = number_of(text.substr(8, 2));
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= days_in(year, month);
}

std::optional<std::string> date_of(std::int64_t seconds) {
  constexpr std::int64_t day_length = 86400;
  constexpr std::int64_t last = 253402300799;  // the last second of the year 9999
  if (seconds < 0 || seconds > last) return std::nullopt;
  std::int64_t days = seconds / day_length;
  int year = 1970;
  const auto days_of = [](int y) { return days_in(y, 2) + 337; };
  while (days >= days_of(year)) days -= days_of(year++);
  int month = 1;
  while (days >= days_in(year, month)) days -= days_in(year, month++);
  return padded(year, 4) + "-" + padded(month, 2) + "-" + padded(static_cast<int>(days) + 1, 2);
}

std::optional<std::string> date_of_epoch(std::string_view text) {
  std::int64_t seconds = 0;
  const char* end = text.data() + text.size();
  const auto [stop, fault] = std::from_chars(text.data(), end, seconds);
  if (fault != std::errc{} || stop != end || text.front() == '-') return std::nullopt;
  return date_of(seconds);
}

std::string date_after(std::string_view date, int days) {
  int year = number_of(date.substr(0, 4));
  int month = number_of(date.substr(5, 2));
  int day = number_of(date.substr(8, 2)) + days;
  while (day > days_in(year, month)) {
    day -= days_in(year, month);
    month = month % 12 + 1;
    if (month == 1) ++year;
  }
  return padded(year, 4) + "-" + padded(month, 2) + "-" + padded(day, 2);
}

IssueDate choose_date(const DatePolicy& policy, const std::optional<std::string>& request_date) {
  if (policy.option) return {*policy.option, true};
  if (policy.epoch) return {*policy.epoch, request_date.has_value()};
  if (request_date) return {*request_date, true};
  return {policy.today, false};
}

}  // namespace output
