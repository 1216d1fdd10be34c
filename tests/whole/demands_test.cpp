// What a request demands beyond figures, and what the document says of prices, margins and files.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "output/compose.h"
#include "output/compose_context.h"
#include "output/format.h"
#include "output/section_list.h"
#include "tests/whole/support/case.h"

namespace {

bool says(const std::string& markup, const std::string& text) {
  return markup.find(text) != std::string::npos;
}

std::string answer_of(const whole::Case& made, const std::string& key) {
  const output::Context context(made.specification, made.request.request, whole::templates());
  return output::requirement_answer(context, key);
}

const calc::Step& step(const whole::Case& made, const std::string& id) {
  const auto& all = made.specification.trace;
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == id; });
  REQUIRE(found != all.end());
  return *found;
}

/// Where the step's input of that symbol comes from.
std::string ref_of(const calc::Step& step, const std::string& symbol) {
  for (const calc::StepInput& input : step.inputs) {
    if (input.symbol == symbol) return input.ref;
  }
  return "no such input";
}

const std::string settles = "ink.black.settles = yes\n";
constexpr const char* of_whole = "the station as a whole is an estimate";

}  // namespace

TEST_CASE("demands and wishes of service are requirements, answered by the catalogue") {
  const whole::Case made = whole::case_of(
      "service.serviceable = must\nservice.waveform = prefer\nservice.driver_sources = must\n");
  const std::string markup = made.markup();
  CHECK(says(markup, "The user shall be able to service the heads on site."));
  CHECK(says(markup, "The waveform of the heads should be open to change (a wish)."));
  CHECK(says(markup, "More than one maker shall have drive electronics for the heads."));
  CHECK(says(answer_of(made, "service.serviceable"), "by the user"));
  CHECK(says(answer_of(made, "service.waveform"), "free to the user"));
  CHECK(says(answer_of(made, "service.driver_sources"), "3 makers"));
  CHECK(says(answer_of(made, "service.driver_sources"), "s-given-head.A"));
}

TEST_CASE("what only says how things are is no requirement") {
  const std::string open = whole::case_of("image.solids = no\n").markup();
  CHECK_FALSE(says(open, "Solids shall close."));
  const std::string closed = whole::case_of("image.solids = yes\nline.mode = single\n").markup();
  CHECK(says(closed, "Solids shall close."));
  CHECK(says(closed, "The system shall print in a single pass."));
}

TEST_CASE("a head that is known not to recirculate is not called unknown") {
  const std::string still =
      whole::case_of(settles + "head.A.recirculates = no\nhead.B.recirculates = no").markup();
  CHECK(says(still, "needed; the head has none"));
  CHECK(says(still, "Head A does not recirculate"));
  const std::string unsaid =
      whole::case_of(settles + "-head.A.recirculates\n-head.B.recirculates").markup();
  CHECK(says(unsaid, "needed; not known of the head"));
  CHECK_FALSE(says(unsaid, "does not recirculate"));
}

TEST_CASE("prices of heads make an estimate, and old ones do not hold") {
  const std::string priced = whole::case_of("").markup();
  CHECK(says(priced, of_whole));
  CHECK_FALSE(says(priced, "Not held are prices"));
  const std::string without = whole::case_of("-head.A.price\n-head.B.price").markup();
  CHECK(says(without, "The prices hold until"));
  CHECK_FALSE(says(without, of_whole));
  CHECK(says(without, "Heads and boards without price that the catalogue lists from one maker"));
  CHECK(says(whole::case_of("board.DB.price_date = 2025-01-05").markup(), "Not held are prices"));
}

TEST_CASE("the margin of a request that gives none is its weave") {
  const whole::Case weaves = whole::case_of("line.weave = 0.02 mm\n");
  CHECK(ref_of(step(weaves, "g1.width"), "w_m") == "line.weave");
  const whole::Case given = whole::case_of("image.margin = 3 mm\n");
  CHECK(ref_of(step(given, "g1.width"), "w_m") == "image.margin");
}

TEST_CASE("the printed share is length over pitch") {
  const whole::Case made = whole::case_of("image.length = 100 mm\nproduct.pitch = 160 mm\n");
  CHECK(step(made, "derived.printed_share").value == doctest::Approx(100.0 / 160).epsilon(1e-12));
  CHECK(ref_of(step(made, "station.images_year"), "s") == "derived.printed_share");
}

TEST_CASE("money stands in the trace in full") {
  const whole::Case made = whole::case_of("");
  const calc::Step& capital = step(made, "station.capital");
  CHECK(
      says(made.markup(), "<b>" + output::money(calc::to_money(capital.value)) + "\u00A0EUR</b>"));
}

TEST_CASE("mean power counts lamps as lit only where there are some") {
  const auto lit = [](const std::string& changes) {
    return says(step(whole::case_of(changes), "station.power_mean").validity, "lamps lit");
  };
  CHECK(lit(""));
  CHECK_FALSE(lit(
      "-ink.black.cure_dose\n-ink.cyan.cure_dose\nink.black.family = aqueous\n"
      "ink.cyan.family = aqueous\nink.black.water_share = 70 %\nink.cyan.water_share = 70 %\n"));
}

TEST_CASE("the record says which lines of a file it prints, and whether a catalogue was used") {
  whole::Case made = whole::case_of("");
  output::Matter matter = output::matter_of(made.specification, made.request);
  const auto document = [&] {
    return output::compose(made.specification, made.request.request, whole::templates(), matter);
  };
  CHECK_FALSE(says(document(), "that of the whole file"));
  CHECK(says(document(), "the catalogue values listed before it"));
  matter.source = "one\r\ntwo\nthree";
  matter.source_line = 31;
  matter.source_sha256 = "of more lines";
  CHECK(says(document(), "lines 31 to 33 of "));
  auto& inputs = made.specification.inputs;
  inputs.erase(std::remove_if(inputs.begin(), inputs.end(),
                              [](const calc::Input& input) {
                                return input.origin.kind == calc::OriginKind::catalogue;
                              }),
               inputs.end());
  CHECK(says(document(), "none used"));
  CHECK_FALSE(says(document(), "the catalogue values listed before it"));
}
