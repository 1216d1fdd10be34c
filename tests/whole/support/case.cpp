#include "tests/whole/support/case.h"

#include <set>

#include "output/compose.h"
#include "output/date.h"
#include "tests/output/support/hard_document.h"
#include "tests/whole/support/written.h"

namespace whole {
namespace {

bool is_of_catalogue(std::string_view line) {
  static const std::set<std::string_view> elements{"catalogue", "head",  "board", "supply",
                                                   "lamp",      "dryer", "part"};
  if (line.starts_with("-")) line.remove_prefix(1);
  return elements.count(line.substr(0, line.find_first_of(". "))) == 1;
}

/// The lines of `changes` for the catalogue, or the others.
std::string lines(std::string_view changes, bool of_catalogue) {
  std::string chosen;
  while (!changes.empty()) {
    const std::string_view line = changes.substr(0, changes.find('\n'));
    if (is_of_catalogue(line) == of_catalogue) chosen.append(line) += '\n';
    changes.remove_prefix(std::min(line.size() + 1, changes.size()));
  }
  return chosen;
}

std::string date_of(const calc::Request& request) {
  std::optional<std::string> date;
  if (request.request.date) date = request.request.date->value;
  return output::choose_date({{}, {}, "2026-11-25"}, date).date;
}

}  // namespace

const output::Templates& templates() {
  static const output::Templates shared;
  return shared;
}

const output::Fonts& fonts() {
  static const std::string bytes = support::cjk_face();
  static const output::Fonts shared(bytes);
  return shared;
}

std::string Case::markup() const {
  return output::compose(specification, request.request, templates(),
                         output::matter_of(specification, request));
}

Case case_of(std::string_view changes) {
  Case made{read_request(changed(plain_request(), lines(changes, false))),
            read_catalogue(changed(plain_catalogue(), lines(changes, true))),
            {}};
  made.specification = output::specify(made.request, {made.catalogue, templates(), fonts()},
                                       date_of(made.request.request));
  return made;
}

}  // namespace whole
