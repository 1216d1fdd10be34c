// Every head left out has its reasons, and every arrangement chosen holds, both checked with rules
// of the tests' own, on the samples and on catalogues made by number.
#include <doctest/doctest.h>

#include "calc/calculate.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/code_cases.h"
#include "tests/whole/support/samples.h"
#include "tests/whole/support/verify.h"

namespace {

constexpr const char* date = "2026-11-20";
constexpr std::uint64_t runs = 40;

/// What was looked at, so that a test of nothing fails.
struct Seen {
  int chosen = 0, rejected = 0, alternatives = 0;
  int interleaved = 0, stacked = 0, scanning = 0, staggered = 0, joined = 0, tilted = 0;
};

void count(const calc::Group& group, Seen& seen) {
  seen.interleaved += group.interleave > 1 ? 1 : 0;
  seen.stacked += group.stack > 1 ? 1 : 0;
  seen.scanning += group.scan ? 1 : 0;
  seen.staggered += group.family == calc::Family::staggered ? 1 : 0;
  seen.joined += group.family == calc::Family::joined ? 1 : 0;
  seen.tilted += group.family == calc::Family::tilted ? 1 : 0;
}

void verify(const calc::Request& request, const calc::Catalogue& catalogue, Seen& seen) {
  const calc::Specification spec = calc::calculate(request, catalogue, date);
  CAPTURE(spec.id);
  if (spec.verdict == calc::Verdict::incomplete) {
    CHECK(spec.chosen.empty());
    CHECK(spec.rejected.empty());
    return;
  }
  whole::verify_rejected(spec, catalogue);
  if (!spec.chosen.empty()) whole::verify_chosen(spec, request, catalogue);
  for (const calc::Group& group : spec.chosen) count(group, seen);
  seen.chosen += spec.chosen.empty() ? 0 : 1;
  seen.rejected += static_cast<int>(spec.rejected.size());
  seen.alternatives += static_cast<int>(spec.alternatives.size());
}

/// The catalogue with one head only.
calc::Catalogue only(const calc::Head& head) {
  calc::Catalogue catalogue = whole::sample_catalogue();
  catalogue.heads = {head};
  return catalogue;
}

/// Whether a head is left out for another reason than being beaten.
bool fails_a_gate(const calc::Specification& spec, const std::string& head) {
  for (const calc::RejectedHead& row : spec.rejected) {
    if (row.head != head) continue;
    for (const calc::Reason& reason : row.reasons) {
      if (reason.code != "lost") return true;
    }
  }
  return false;
}

}  // namespace

TEST_CASE("a head that makes a station by itself is at most beaten among the others") {
  int alone = 0;
  for (const intake::ReadRequest& read : whole::sample_requests()) {
    const calc::Catalogue& all = whole::sample_catalogue();
    const calc::Specification spec = calc::calculate(read.request, all, date);
    for (const calc::Head& head : all.heads) {
      if (calc::calculate(read.request, only(head), date).chosen.empty()) continue;
      CAPTURE(spec.id);
      CAPTURE(head.name);
      CHECK_FALSE(fails_a_gate(spec, head.name));
      ++alone;
    }
  }
  CHECK(alone > 30);
}

TEST_CASE("heads left out and arrangements chosen for the samples hold by the tests' own rules") {
  Seen seen;
  for (const auto& request : whole::sample_requests()) {
    verify(request.request, whole::sample_catalogue(), seen);
  }
  CHECK(seen.chosen > 8);
  CHECK(seen.rejected > 50);
  CHECK(seen.alternatives > 5);
  CHECK(seen.scanning > 0);
  CHECK(seen.staggered > 0);
  CHECK(seen.joined > 0);
  CHECK(seen.tilted > 0);
}

TEST_CASE("heads left out and arrangements chosen hold on catalogues made by number") {
  Seen seen;
  for (std::uint64_t i = 0; i < runs; ++i) {
    CAPTURE(i);
    verify(made::request(i), made::catalogue(i, 12), seen);
  }
  CHECK(seen.chosen > 8);
  CHECK(seen.rejected > 200);
  CHECK(seen.interleaved > 0);
}

TEST_CASE("heads left out and arrangements chosen hold in every situation of the codes") {
  Seen seen;
  for (const std::string& changes : whole::code_cases()) {
    CAPTURE(changes);
    const whole::Case made = whole::case_of(changes);
    verify(made.request.request, made.catalogue, seen);
  }
  for (const char* speed : {"60 m/min", "120 m/min", "200 m/min", "90..180 m/min"}) {
    CAPTURE(speed);
    const whole::Case made = whole::case_of(std::string("line.speed = ") + speed);
    verify(made.request.request, made.catalogue, seen);
  }
  CHECK(seen.chosen > 30);
  CHECK(seen.stacked > 0);
  CHECK(seen.scanning > 0);
}
