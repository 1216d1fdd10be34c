/// The lists of codes the calculation can say. Every code has its words in templates/LANGUAGE/ and
/// a test that produces it.
#pragma once

#include <span>
#include <string_view>

namespace calc {

std::span<const std::string_view> reason_codes();  ///< gates (selection_codes.cpp)
std::span<const std::string_view>
condition_codes();  ///< of a conditional verdict (selection_codes.cpp)
std::span<const std::string_view> warning_codes();   ///< beside a number (job_codes.cpp)
std::span<const std::string_view> question_codes();  ///< to the customer (job_codes.cpp)
std::span<const std::string_view> check_codes();   ///< checks before commitment (station_codes.cpp)
std::span<const std::string_view> safety_codes();  ///< safety notes (station_codes.cpp)
std::span<const std::string_view>
part_codes();  ///< parts the catalogue may lack (station_codes.cpp)
std::span<const std::string_view>
station_warning_codes();  ///< beside the bill and the costs (station_codes.cpp)

}  // namespace calc
