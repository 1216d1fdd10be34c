#include "calc/trace_writer.h"

#include <doctest/doctest.h>

#include <stdexcept>

#include "calc/judge.h"
#include "calc/selection.h"
#include "support/catalogue_maker.h"

using namespace calc;

namespace {

const Basis known{"definition"};

}  // namespace

TEST_CASE("a step has an id of its own and refers to earlier ones only") {
  const Request request = made::plain_request();
  const Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(request, catalogue, "2026-11-25");
  const Specification spec;
  TraceWriter writer(job, catalogue, spec);
  CHECK_THROWS_AS(writer.step("a", "one"), std::logic_error);
  CHECK(writer.step_or_chosen("a", "one", 2, "mm").origin == chosen("a", 2, "mm").origin);
  writer.formula("one", "a", "b", {chosen("b", 3, "mm")}, 3, "mm", known);
  CHECK_THROWS_AS(writer.formula("one", "a", "b", {chosen("b", 3, "mm")}, 3, "mm", known),
                  std::logic_error);
  CHECK(writer.step("a", "one").value == 3);
  CHECK(writer.step_or_chosen("a", "one", 2, "mm").ref == "one");
  CHECK(writer.step_or_chosen("a", "", 2, "mm").value == 2);
  CHECK(writer.step_of_value("a", {"none", "one"}, 3, "mm").ref == "one");
  CHECK(writer.step_of_value("a", {"one"}, 3 * (1 + 1e-14), "mm").value == 3);
  const std::string figure = chosen("a", 2, "mm").origin;
  CHECK(writer.step_of_value("a", {"one"}, 3.001, "mm").origin == figure);
  CHECK(writer.step_of_value("a", {"one"}, 3, "um").origin == figure);
}

TEST_CASE("a step says once what it assumes, whichever end of the range its inputs take") {
  const Request request = made::plain_request();
  const Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(request, catalogue, "2026-11-25");
  const Specification spec;
  TraceWriter writer(job, catalogue, spec);
  const StepInput most = from_range(job, "m", P::stray_share, 0.9);
  CHECK(most.value == 0.9);
  writer.formula("one", "a", "m/r", {most, from_parameter(job, "r", P::stray_share)}, 3, "", known);
  const std::vector<Step> steps = writer.take();
  REQUIRE(steps.size() == 1);
  CHECK(steps.front().assumptions == std::vector<std::string>{"assume.stray_share"});
}

TEST_CASE("a judge knows the head and mode of every group it is given") {
  const Request request = made::plain_request();
  const Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(request, catalogue, "2026-11-25");
  std::vector<Group> groups = select(job, catalogue).chosen;
  REQUIRE(groups.size() == 1);
  CHECK_NOTHROW(Judge(catalogue, job.currency, groups));
  groups.front().mode = "none such";
  CHECK_THROWS_AS(Judge(catalogue, job.currency, groups), std::logic_error);
  groups.front().head = "none such";
  CHECK_THROWS_AS(Judge(catalogue, job.currency, groups), std::logic_error);
}
