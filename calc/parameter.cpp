#include "calc/parameter.h"

namespace calc {

std::optional<P> parameter_of(std::string_view key) {
  for (std::size_t i = 0; i < static_cast<std::size_t>(P::count); ++i) {
    if (parameter(static_cast<P>(i)).key == key) return static_cast<P>(i);
  }
  return std::nullopt;
}

Parameters::Parameters() {
  for (std::size_t i = 0; i < values_.size(); ++i) {
    values_.at(i) = parameter(static_cast<P>(i)).value;
  }
}

}  // namespace calc
