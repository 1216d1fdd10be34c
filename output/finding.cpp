#include "output/finding.h"

#include <algorithm>
#include <deque>
#include <optional>
#include <stdexcept>
#include <utility>
#include <vector>

#include "calc/codes.h"

namespace output {
namespace {

constexpr int first_warning = 401;
constexpr int first_station_warning = 501;

std::optional<std::string> number_in(std::span<const std::string_view> codes, int first,
                                     std::string_view code) {
  const auto place = std::find(codes.begin(), codes.end(), code);
  if (place == codes.end()) return std::nullopt;
  return "W0" + std::to_string(first + (place - codes.begin()));
}

std::vector<intake::CodeInfo> make_codes() {
  std::vector<intake::CodeInfo> codes{
      {path_missing, "a path on the command line does not exist"},
      {without_request, "a file or folder on the command line holds no request"},
      {unreadable, "a file cannot be read"},
      {no_catalogue, "there is no catalogue for the request"},
      {faulty_catalogue, "the catalogue, or the price list laid over it, has errors of its own"},
      {stem_taken, "two requests of one run would be issued under one name"},
      {issue_refused, "the name was issued before with another content"},
      {not_written, "a file of the issue cannot be written"},
      {program_fault, "a fault of the program itself"},
      {issue_altered, "an issued file is gone or not the one its JSON speaks of"},
      {faulty_templates, "a file of one's own templates has a fault"},
      {unprintable_character, "a character that no text face can print"},
      {unknown_language, "a language that there are no texts in"},
      {issue_doubtful,
       "an issue left out of the lists: a file is gone or not the one its JSON speaks of"},
      {damaged_issue, "the data file of the issue before is damaged"},
      {named_twice, "a path on the command line is there already"},
      {goes_back, "an issue of a lower revision or an earlier date than one that went out before"}};
  static std::deque<std::string> numbers;  // keeps the texts the views point at
  for (const auto list : {calc::warning_codes(), calc::station_warning_codes()}) {
    for (const std::string_view code : list) {
      numbers.push_back(calculation_warning(code));
      codes.push_back({numbers.back(), code});
    }
  }
  return codes;
}

}  // namespace

std::string calculation_warning(std::string_view code) {
  const auto number = number_in(calc::warning_codes(), first_warning, code);
  if (number) return *number;
  const auto of_station = number_in(calc::station_warning_codes(), first_station_warning, code);
  if (of_station) return *of_station;
  throw std::logic_error("unknown warning " + std::string(code));
}

std::span<const intake::CodeInfo> finding_codes() {
  static const std::vector<intake::CodeInfo> codes = make_codes();
  return codes;
}

intake::Diagnostic file_finding(std::string_view code, std::string file, std::string message,
                                std::string hint) {
  calc::Origin where;
  where.file = std::move(file);
  return finding_at(code, where, std::move(message), std::move(hint));
}

intake::Diagnostic finding_at(std::string_view code, const calc::Origin& where, std::string message,
                              std::string hint) {
  intake::Diagnostic finding;
  finding.file = where.file;
  finding.line = std::max(where.line, 1);
  finding.column = std::max(where.column, 1);
  finding.severity = code.starts_with('W') ? intake::Severity::warning : intake::Severity::error;
  finding.code = code;
  finding.message = std::move(message);
  finding.hint = std::move(hint);
  return finding;
}

}  // namespace output
