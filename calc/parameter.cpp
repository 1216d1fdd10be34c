#include "calc/parameter.h"

namespace calc {

Parameters::Parameters() {
  for (std::size_t i = 0; i < values_.size(); ++i) {
    values_.at(i) = parameter(static_cast<P>(i)).value;
  }
}

}  // namespace calc
