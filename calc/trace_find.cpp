#include "calc/trace_find.h"

#include <stdexcept>

#include "calc/named.h"

namespace calc {

const Head& trace_head(const Catalogue& catalogue, const Group& group) {
  if (const Head* const head = named(catalogue.heads, group.head)) return *head;
  throw std::logic_error("no head called " + group.head);
}

const HeadMode& trace_mode(const Catalogue& catalogue, const Group& group) {
  if (const HeadMode* const mode = named(trace_head(catalogue, group).modes, group.mode)) {
    return *mode;
  }
  throw std::logic_error("no mode called " + group.mode);
}

std::vector<double> trace_offsets(const HeadMode& mode) {
  return mode.row_offsets ? mode.row_offsets->value : std::vector<double>{0.0};
}

}  // namespace calc
