/// Findings about files and issues, where no line of a request is at fault; and the codes of all
/// findings of the output side.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "calc/value.h"
#include "intake/diagnostic.h"
#include "intake/field.h"
#include "output/exit_status.h"

namespace output {

// The codes, append-only.
inline constexpr std::string_view path_missing = "E0301";
inline constexpr std::string_view without_request = "E0302";
inline constexpr std::string_view unreadable = "E0303";
inline constexpr std::string_view no_catalogue = "E0304";
inline constexpr std::string_view faulty_catalogue = "E0305";
inline constexpr std::string_view stem_taken = "E0306";
inline constexpr std::string_view issue_refused = "E0307";
inline constexpr std::string_view not_written = "E0308";
inline constexpr std::string_view program_fault = "E0309";
inline constexpr std::string_view issue_altered = "E0310";
inline constexpr std::string_view faulty_templates = "E0311";
inline constexpr std::string_view unprintable_character = "W0301";
inline constexpr std::string_view unknown_language = "W0302";
inline constexpr std::string_view issue_doubtful = "W0303";
inline constexpr std::string_view damaged_issue = "W0304";
inline constexpr std::string_view named_twice = "W0305";
inline constexpr std::string_view goes_back = "W0306";
/// Warnings of the calculation are W0401 onwards in the order of calc::warning_codes(), those of
/// the station W0501 onwards in the order of calc::station_warning_codes(). Throws std::logic_error
/// for a code of neither list.
std::string calculation_warning(std::string_view code);

/// Every code above with its meaning, the calculation's warnings included.
std::span<const intake::CodeInfo> finding_codes();

/// A finding that has a file but no line.
intake::Diagnostic file_finding(std::string_view code, std::string file, std::string message,
                                std::string hint = {});
/// A finding at a place.
intake::Diagnostic finding_at(std::string_view code, const calc::Origin& where, std::string message,
                              std::string hint = {});

/// Findings with the exit status they ask for.
struct Fault {
  intake::Diagnostic finding;
  Exit exit = Exit::success;
};

}  // namespace output
