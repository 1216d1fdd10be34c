/// What makes a PDF file an archive file after ISO 19005-1, level B.
#pragma once

#include <string>
#include <string_view>

#include "output/display_list.h"

namespace output {

class Pdf;

/// The date as the information dictionary has it, for example D:20261125000000+00'00'.
/// Throws std::invalid_argument when it is not a day that exists, written
/// YYYY-MM-DD.
std::string pdf_date(std::string_view date);

/// The XMP packet: says the same as the information dictionary, and part 1, conformance B.
/// Throws std::invalid_argument as pdf_date and text_string().
std::string xmp_packet(const Info& info, std::string_view producer);

/// Adds information dictionary, XMP, language, output intent and title display; `icc` is an sRGB
/// profile of ICC version 2. Throws as xmp_packet, and std::runtime_error on libharu's faults.
void add_archive_data(const Pdf& pdf, const Info& info, std::string_view icc);

/// Adds a file identifier of zeros, to be filled by seal().
void add_identifier(const Pdf& pdf);

/// Fills the identifier of a finished file: half of the SHA-256 of the file with its zeros.
/// Throws std::runtime_error when there is no such identifier in it.
void seal(std::string& file);

}  // namespace output
