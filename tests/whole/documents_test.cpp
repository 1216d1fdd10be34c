// Every sample as a document, in every shipped language and in both systems of units.
#include <doctest/doctest.h>

#include <algorithm>

#include "output/compose.h"
#include "output/layout.h"
#include "output/markup.h"
#include "output/paint.h"
#include "tests/output/layout_support.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/samples.h"

namespace {

struct Variant {
  std::string language;
  calc::UnitSystem units;
};

const std::vector<Variant>& variants() {
  static const std::vector<Variant> all{{"en", calc::UnitSystem::si},
                                        {"en", calc::UnitSystem::us},
                                        {"de", calc::UnitSystem::si},
                                        {"de", calc::UnitSystem::us}};
  return all;
}

intake::ReadRequest in_variant(intake::ReadRequest request, const Variant& variant) {
  request.request.request.language = calc::exactly(variant.language);
  request.request.request.units = calc::exactly(variant.units);
  return request;
}

output::Environment environment() {
  return {whole::sample_catalogue(), whole::templates(), whole::fonts()};
}

std::string markup_of(const intake::ReadRequest& request) {
  const calc::Specification made = output::specify(request, environment(), "2026-11-25");
  return output::compose(made, request.request, whole::templates(),
                         output::matter_of(made, request));
}

output::DisplayList pages_of(const std::string& markup) {
  std::vector<char32_t> unprintable;
  output::DisplayList list = output::lay_out(output::parse_markup(markup), whole::fonts(),
                                             whole::templates().style(), unprintable);
  CHECK(unprintable.empty());
  return list;
}

/// The page an anchor leads to.
const output::Page& page_at(const output::DisplayList& list, const std::string& name) {
  const auto found = std::find_if(list.anchors.begin(), list.anchors.end(),
                                  [&](const output::Anchor& a) { return a.name == name; });
  REQUIRE(found != list.anchors.end());
  return list.pages.at(static_cast<std::size_t>(found->page));
}

}  // namespace

TEST_CASE("layout invariants hold on every page of every sample in every variant") {
  for (const intake::ReadRequest& sample : whole::sample_requests()) {
    for (const Variant& variant : variants()) {
      CAPTURE(sample.request.request.id->value);
      CAPTURE(variant.language);
      const output::DisplayList list = pages_of(markup_of(in_variant(sample, variant)));
      CHECK(layout_test::faults(list) == "");
      CHECK(layout_test::nearly_empty(list) == "");
      CHECK(list.info.language == variant.language);
      // All sign under one heading.
      for (const char* role : {"sign.checker", "sign.approver", "sign.customer"}) {
        const std::string words = whole::templates().words(variant.language, role, {});
        CHECK(layout_test::has_run(page_at(list, "s-signoff"), words));
      }
    }
  }
}

TEST_CASE("the parts list stands on pages that are turned on their side") {
  const output::DisplayList list =
      pages_of(markup_of(in_variant(whole::sample_requests().front(), variants().front())));
  std::size_t turned = 0;
  for (const output::Page& page : list.pages) {
    if (page.width < page.height) continue;
    ++turned;
    CHECK(page.width == doctest::Approx(whole::templates().style().page_height));
  }
  CHECK(turned > 0);
  const output::Page& page = page_at(list, "s-parts");
  CHECK(page.width > page.height);
}

TEST_CASE("the notes on safety say no long sentence twice, nor what zones are classified after") {
  constexpr std::size_t long_from = 60;
  const std::string standard = "60079-10-1";
  std::size_t named = 0;
  for (const intake::ReadRequest& sample : whole::sample_requests()) {
    for (const char* language : {"en", "de"}) {
      CAPTURE(sample.request.request.id->value);
      const std::string markup = markup_of(in_variant(sample, {language, calc::UnitSystem::si}));
      const std::size_t first = markup.find("id=\"s-safety\"");
      if (first == std::string::npos) continue;
      const std::string safety = markup.substr(first, markup.find("</section>", first) - first);
      const std::size_t at = safety.find(standard);
      named += at == std::string::npos ? 0 : 1;
      CHECK(at == safety.rfind(standard));
      for (std::size_t from = 0, to = 0; from < safety.size(); from = to + 2) {
        to = std::min(safety.find(". ", from), safety.size());
        const std::string sentence = safety.substr(from, to - from);
        if (sentence.size() >= long_from) CHECK(safety.rfind(sentence) == from);
      }
    }
  }
  CHECK(named >= 2);
}

TEST_CASE("the lines of a request are anchors that the margin leads to") {
  const std::string markup =
      markup_of(in_variant(whole::sample_requests().front(), variants().front()));
  const output::DisplayList list = pages_of(markup);
  std::size_t links = 0;
  for (const output::Page& page : list.pages) {
    for (const output::Item& item : page.items) {
      const auto* const link = std::get_if<output::Link>(&item);
      if (link != nullptr && link->anchor.find(".xml:") != std::string::npos) ++links;
    }
  }
  CHECK(links > 20);
}

TEST_CASE("a summary is one page and leads nowhere, in every variant") {
  for (const intake::ReadRequest& sample : whole::sample_requests()) {
    for (const Variant& variant : variants()) {
      const intake::ReadRequest request = in_variant(sample, variant);
      CAPTURE(request.request.request.id->value);
      CAPTURE(variant.language);
      const calc::Specification made = output::specify(request, environment(), "2026-11-25");
      const output::DisplayList list = pages_of(output::compose_summary(
          made, request.request, whole::templates(), output::matter_of(made, request)));
      CHECK(list.pages.size() == 1);
      CHECK(layout_test::faults(list) == "");
      for (const output::Item& item : list.pages.front().items) {
        CHECK(std::get_if<output::Link>(&item) == nullptr);
      }
    }
  }
}
