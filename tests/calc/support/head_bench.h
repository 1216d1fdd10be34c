/// One head tried for a plain request, both to be changed before.
#pragma once

#include <doctest/doctest.h>

#include <optional>

#include "calc/bom_prices.h"
#include "calc/selection_parts.h"
#include "tests/calc/support/catalogue_maker.h"

namespace support {

struct HeadBench {
  calc::Request request = made::plain_request();
  calc::Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  calc::Job job;
  std::optional<calc::PriceBook> book;
  calc::Search search;

  calc::Head& head() { return catalogue.heads.front(); }
  calc::HeadMode& mode() { return head().modes.front(); }
  void prepare_search() {
    job = calc::resolve(request, catalogue, "2026-11-25");
    REQUIRE(job.missing.empty());
    book.emplace(catalogue, job.currency);
    search = calc::prepare(job, catalogue, *book);
  }
  /// The head's accepted arrangements with their groups.
  calc::HeadTry run(bool scanning = false) {
    prepare_search();
    calc::HeadTry result = calc::Tries(search, scanning).of(search.groups.front(), 0);
    for (const calc::Candidate& c : result.accepted) {
      calc::write(search, c);
      calc::fly(search, c);
    }
    return result;
  }
};

}  // namespace support
