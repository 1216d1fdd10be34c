/// Which head is named where nothing passes.
#include "calc/nearest_head.h"

#include <doctest/doctest.h>

using namespace calc;

namespace {

Reason reason(double value, double limit, bool at_least) {
  Reason r;
  r.code = "space";
  r.value = value;
  r.limit = limit;
  r.at_least = at_least;
  return r;
}

RejectedHead head(const char* name, std::vector<Reason> reasons) {
  return {name, std::move(reasons)};
}

std::string nearest(const std::vector<RejectedHead>& heads) {
  const RejectedHead* const found = nearest_head(heads);
  return found == nullptr ? "" : found->head;
}

}  // namespace

TEST_CASE("the nearest head misses the fewest limits, of as few the least far") {
  const Reason by_half = reason(150, 100, false);  // 1.5 times what is allowed
  const Reason by_tenth = reason(100, 110, true);  // 1.1 times too little
  const Reason yes_or_no = reason(0, 1, true);     // no ratio at all
  const RejectedHead far = head("FAR", {by_half}), near = head("NEAR", {by_tenth});
  const RejectedHead never = head("NEVER", {yes_or_no});
  const RejectedHead two = head("TWO", {by_tenth, by_tenth});
  CHECK(nearest({far, near}) == "NEAR");
  CHECK(nearest({near, far}) == "NEAR");
  CHECK(nearest({never, far}) == "FAR");
  CHECK(nearest({two, never}) == "NEVER");
  CHECK(nearest({two, head("WORSE", {by_tenth, by_half})}) == "TWO");  // the worst miss decides
  CHECK(nearest({near, head("SAME", {by_tenth})}) == "NEAR");
  CHECK(nearest({}).empty());
}
