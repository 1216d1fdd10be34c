/// A share of the requests, for runs on several machines.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace output {

/// The number-th of count shares, from 1.
struct Part {
  unsigned number = 1, count = 1;
};

/// "3/8"; nullopt for any other text, a number beyond the count, and a count beyond 9999.
std::optional<Part> part_from(std::string_view text);
/// "3-of-8", as file names have it.
std::string part_name(Part part);
/// Whether a request belongs to the part: the SHA-256 of its id as file names have it, capitals or
/// not, read as a whole number, modulo the count. Every id has one part, and ids that would be
/// issued under one name have the same.
bool is_in(Part part, std::string_view id);
/// The same of the part of a file name that stands for the id.
bool is_name_in(Part part, std::string_view name);

}  // namespace output
