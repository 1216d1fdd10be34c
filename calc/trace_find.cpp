#include "calc/trace_find.h"

#include <stdexcept>

namespace calc {

const Head& trace_head(const Catalogue& catalogue, const Group& group) {
  for (const Head& head : catalogue.heads) {
    if (head.name == group.head) return head;
  }
  throw std::logic_error("no head called " + group.head);
}

const HeadMode& trace_mode(const Catalogue& catalogue, const Group& group) {
  for (const HeadMode& mode : trace_head(catalogue, group).modes) {
    if (mode.name == group.mode) return mode;
  }
  throw std::logic_error("no mode called " + group.mode);
}

std::vector<double> trace_offsets(const HeadMode& mode) {
  return mode.row_offsets ? mode.row_offsets->value : std::vector<double>{0.0};
}

}  // namespace calc
