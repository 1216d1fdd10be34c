// What the reasons of heads left out, and conditions, say beside their figures.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "output/compose_context.h"
#include "output/issue.h"
#include "tests/whole/support/case.h"

namespace {

/// The first reason with that code; null for none.
const calc::Reason* reason_of(const whole::Case& made, const std::string& code) {
  for (const calc::RejectedHead& head : made.specification.rejected) {
    for (const calc::Reason& reason : head.reasons) {
      if (reason.code == code) return &reason;
    }
  }
  return nullptr;
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a placement that no head keeps names the term to be improved first, in both languages") {
  whole::Case made = whole::case_of("line.mount_tolerance = 90 um\n");
  REQUIRE(made.specification.verdict == calc::Verdict::infeasible);
  const calc::Reason* const found = reason_of(made, "placement");
  REQUIRE(found != nullptr);
  calc::Reason reason = *found;
  CHECK(reason.field == "line.mount_tolerance");
  for (const std::string language : {"en", "de"}) {
    CAPTURE(language);
    const std::string first =
        language == "en" ? "First to be improved: " : "Zuerst zu verbessern: ";
    made.specification.language = language;
    const output::Context context(made.specification, made.request.request, whole::templates());
    const std::string text = context.reason(reason);
    CHECK(holds(text, first + context.field("line.mount_tolerance") + "."));
    const std::string field = std::exchange(reason.field, {});
    CHECK_FALSE(holds(context.reason(reason), first));
    CHECK_FALSE(holds(context.reason(reason), "{{"));
    reason.field = field;
  }
  CHECK(holds(output::figures_of(made.specification, made.request),
              R"("field":"line.mount_tolerance")"));
}

TEST_CASE("a condition that an assumption brings reads as that condition does, with the value") {
  const whole::Case made = whole::case_of(
      "-line.air_temperature\nink.black.viscosity = 10 mPa.s at 32 degC\n"
      "ink.cyan.viscosity = 10 mPa.s at 32 degC\n");
  const auto& all = made.specification.conditions;
  const auto arising = std::find_if(all.begin(), all.end(), [](const auto& n) {
    return n.code == "assumption_condition" && n.field == "line.air_temperature";
  });
  REQUIRE(arising != all.end());
  const output::Context context(made.specification, made.request.request, whole::templates());
  const std::string text = context.notice("condition", *arising);
  CHECK(holds(text, "with the value 32\u00A0\u00B0C"));
  CHECK(holds(text, "The viscosity of ink black is known only away from the jetting temperature"));
}
