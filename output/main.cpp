#include <exception>
#include <string>
#include <vector>

#include "output/command.h"
#include "output/os.h"

int main(int count, char** values) try {
  output::Os os;
  os.watch_signals();
  std::vector<std::string> arguments;
  if (count > 1) arguments.assign(values + 1, values + count);
  return static_cast<int>(output::run_program(os, std::move(arguments)));
} catch (const std::exception&) {
  // Only memory for the arguments can fail here, before there is anything to report with.
  return static_cast<int>(output::Exit::software);
}
