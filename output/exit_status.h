/// The program's exit status; its numbers are public.
#pragma once

namespace output {

enum class Exit {
  success = 0,
  different = 1,  ///< of `compare` and `verify` alone
  usage = 64,
  data = 65,
  no_input = 66,
  software = 70,
  cannot_create = 73,
  io = 74,
  interrupted = 130
};

/// The status that stands for both: interruption beats all, then 70, 74, 73, 66, 65.
constexpr Exit worse(Exit a, Exit b) {
  constexpr auto rank = [](Exit status) {
    switch (status) {
      case Exit::success:
        return 0;
      case Exit::different:
        return 1;
      case Exit::data:
        return 2;
      case Exit::no_input:
        return 3;
      case Exit::cannot_create:
        return 4;
      case Exit::io:
        return 5;
      case Exit::software:
        return 6;
      case Exit::usage:
        return 7;
      case Exit::interrupted:
        return 8;
    }
    return 6;
  };
  return rank(a) >= rank(b) ? a : b;
}

}  // namespace output
