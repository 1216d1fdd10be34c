/// What the table of fields says of each: one table drives reader, checks, `fields` and documents.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace intake {

/// A row of the table as everybody but the reader sees it. Sections that repeat have NAME in
/// their key (`ink.NAME.viscosity`, `head.NAME.mode.NAME.drops`).
struct FieldInfo {
  std::string_view key;
  std::string_view type;  ///< "text", "number", "integer", "yes/no", "quantity", "word", "list",
                          ///< "points", "price", "date"
  std::string_view dimension;  ///< "length", "speed", ... empty when none
  std::string_view unit;       ///< the unit of its number in `inputs`, JSON and the document
  std::vector<std::string_view> units;  ///< every unit text it takes
  std::vector<std::string_view> words;  ///< the words of a word field
  std::string_view fallback;            ///< what holds when it is absent, in words; may be empty
  bool repeats = false;                 ///< its section repeats
  bool required = false;                ///< an error when it is absent
  std::string_view spread;  ///< "none", "demand", "uncertain", "both", "window" (must be a range)
  std::string_view governing;  ///< of a demand: "low" or "high"
  double least = 0, most = 0;  ///< accepted numbers in `unit`; equal = no bound
  bool printed_only = false;   ///< stands in the document but moves no figure
  std::string_view since;      ///< version
  std::string_view meaning;    ///< one sentence
};

std::span<const FieldInfo> request_fields();
std::span<const FieldInfo> catalogue_fields();

/// One code and what it means, for `fields --codes` and the test that every code is produced.
struct CodeInfo {
  std::string_view code;
  std::string_view meaning;
};
std::span<const CodeInfo> diagnostic_codes();

}  // namespace intake
