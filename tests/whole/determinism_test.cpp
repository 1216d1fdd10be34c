// The same inputs and date give the same bytes, and the catalogue's order decides only ties.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "calc/calculate.h"
#include "tests/output/support/hard_document.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/samples.h"

namespace {

constexpr const char* date = "2026-11-20";

std::multiset<std::string> heads_of(const calc::Specification& spec) {
  std::multiset<std::string> heads;
  for (const calc::Group& group : spec.chosen) heads.insert(group.head);
  return heads;
}

/// Whether a head lost by its place in the catalogue alone.
bool has_tie(const calc::Specification& spec) {
  return std::any_of(spec.rejected.begin(), spec.rejected.end(), [](const auto& rejected) {
    return std::any_of(rejected.reasons.begin(), rejected.reasons.end(),
                       [](const calc::Reason& r) { return r.subject == "order"; });
  });
}

calc::Catalogue reversed(calc::Catalogue catalogue) {
  std::reverse(catalogue.heads.begin(), catalogue.heads.end());
  std::reverse(catalogue.boards.begin(), catalogue.boards.end());
  std::reverse(catalogue.supplies.begin(), catalogue.supplies.end());
  std::reverse(catalogue.lamps.begin(), catalogue.lamps.end());
  std::reverse(catalogue.dryers.begin(), catalogue.dryers.end());
  std::reverse(catalogue.parts.begin(), catalogue.parts.end());
  return catalogue;
}

}  // namespace

TEST_CASE("every sample issued twice on one date gives the same bytes") {
  const output::Templates again;
  const output::Fonts faces(support::cjk_face());
  const output::Environment first{whole::sample_catalogue(), whole::templates(), whole::fonts()};
  const output::Environment second{whole::sample_catalogue(), again, faces};
  for (const auto& request : whole::sample_requests()) {
    const output::Issued one = output::issue(request, first, date);
    const output::Issued other = output::issue(request, second, date);
    CAPTURE(one.stem);
    CHECK(one.stem == other.stem);
    CHECK(one.pdf.starts_with("%PDF"));
    const bool same_pdf = one.pdf == other.pdf;
    CHECK(same_pdf);
    const bool same_csv = one.bom_csv == other.bom_csv;
    CHECK(same_csv);
    const bool same_json = one.json == other.json;
    CHECK(same_json);
  }
}

TEST_CASE("a catalogue in the other order gives the same choice unless heads tie") {
  const calc::Catalogue backward = reversed(whole::sample_catalogue());
  int compared = 0;
  for (const auto& request : whole::sample_requests()) {
    const auto one = calc::calculate(request.request, whole::sample_catalogue(), date);
    const auto other = calc::calculate(request.request, backward, date);
    CAPTURE(one.id);
    CHECK(one.verdict == other.verdict);
    if (has_tie(one)) continue;
    CHECK(heads_of(one) == heads_of(other));
    CHECK(one.heads_total == other.heads_total);
    ++compared;
  }
  CHECK(compared > 10);
}
