// No dead field: two values of every field give different figures, or the field table says that
// the field is printed only, and then they give different pages and the same figures.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <stdexcept>

#include "intake/field.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/field_rows.h"
#include "tests/whole/support/figures.h"

namespace {

using whole::Case;
using whole::FieldRow;

/// The key with the names that the plain request and catalogue have.
std::string named(std::string key) {
  static const std::map<std::string, std::string> names{
      {"head.NAME.mode.NAME.", "head.A.mode.grey."},
      {"head.NAME.", "head.A."},
      {"board.NAME.", "board.DB."},
      {"supply.NAME.", "supply.IS."},
      {"lamp.NAME.", "lamp.LED."},
      {"dryer.NAME.", "dryer.DR."},
      {"part.NAME.", "part.FL."},
      {"colour.NAME.", "colour.black."},
      {"ink.NAME.", "ink.black."}};
  const std::size_t last = key.rfind("NAME.");
  if (last == std::string::npos) return key;
  const std::string prefix = key.substr(0, last + 5);
  return names.at(prefix) + key.substr(last + 5);
}

Case with(const FieldRow& row, const std::string& value, const std::string& more) {
  const std::string key = named(row.key);
  return whole::case_of(row.both + more + (value.empty() ? "-" + key : key + " = " + value) + "\n");
}

/// The given and catalogue values, as the page and the JSON list them.
std::string listed(const calc::Specification& spec, const std::string& key) {
  std::string text;
  for (const calc::Input& input : spec.inputs) {
    if (input.key == key) text += input.origin.raw + ";";
  }
  return text;
}

void check_printed(const FieldRow& row, const Case& first, const Case& second) {
  CHECK(row.shows.empty());
  const std::string moved =
      whole::differences(whole::figures(first.specification), whole::figures(second.specification));
  CHECK_MESSAGE(moved.empty(), row.key << " is marked printed only, but moves " << moved);
  const std::string key = named(row.key);
  const bool in_list = listed(first.specification, key) != listed(second.specification, key);
  CHECK_MESSAGE((in_list || first.markup() != second.markup()),
                row.key << " is printed only, but is not printed");
}

void check_moves(const FieldRow& row, const Case& first, const Case& second) {
  const std::string a = whole::figures(first.specification);
  const std::string b = whole::figures(second.specification);
  const bool moves = a != b;
  CHECK_MESSAGE(moves, row.key << " moves no figure");
  if (!moves) return;
  const bool shows = whole::differing_keys(a, b).count(row.shows) == 1;
  CHECK_MESSAGE(shows,
                row.key << " does not show in " << row.shows << ": " << whole::differences(a, b));
}

void check_row(const FieldRow& row, const intake::FieldInfo& field) {
  CAPTURE(row.key);
  CHECK(row.first != row.second);
  const Case first = with(row, row.first, "");
  const Case second = with(row, row.second, row.on_second);
  if (field.printed_only) {
    check_printed(row, first, second);
  } else {
    check_moves(row, first, second);
  }
}

void check_all(std::span<const intake::FieldInfo> fields, const std::vector<FieldRow>& rows) {
  for (const intake::FieldInfo& field : fields) {
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [&](const FieldRow& r) { return r.key == field.key; });
    CHECK_MESSAGE(row != rows.end(), field.key << " has no row of two values");
    if (row == rows.end()) continue;
    try {
      check_row(*row, field);
    } catch (const std::runtime_error& fault) {
      FAIL_CHECK(field.key << ": " << fault.what());
    }
  }
  CHECK(rows.size() == fields.size());
}

}  // namespace

TEST_CASE("two values of every request field differ in the figures or on the page") {
  check_all(intake::request_fields(), whole::request_rows());
}

TEST_CASE("two values of every catalogue field differ in the figures or on the page") {
  check_all(intake::catalogue_fields(), whole::catalogue_rows());
}

TEST_CASE("the case the rows change is feasible, so that its figures are there to change") {
  const Case plain = whole::case_of("");
  CHECK(plain.specification.verdict == calc::Verdict::feasible);
  REQUIRE(plain.specification.chosen.size() == 1);
  CHECK(plain.specification.chosen.front().head == "A");
}
