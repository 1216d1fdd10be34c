/// Two values for every field that must show in the figures, or on paper where the field table says
/// that it moves none.
#pragma once

#include <string>
#include <vector>

namespace whole {

/// A field's two values. They are put into the plain request and catalogue; `both` changes these
/// first where the field matters only in some situation, `on_second` goes with the second value. An
/// empty first value leaves the field out: a free text in which only its being there counts.
struct FieldRow {
  std::string key;            ///< as the field table has it, NAME for the names of sections
  std::string first, second;  ///< values
  std::string shows;  ///< top-level key of the JSON in which they differ; empty: printed only
  std::string both, on_second;
};

std::vector<FieldRow> request_rows();
std::vector<FieldRow> catalogue_rows();

}  // namespace whole
