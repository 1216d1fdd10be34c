/// The command line, read.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "output/exit_status.h"
#include "output/part.h"
#include "output/report.h"

namespace output {

enum class Command { build, check, explain, heads, fields, verify, index, compare };

struct Options {
  Command command = Command::build;
  std::vector<std::string> paths;  ///< requests; of `explain` one, of `compare` two issues
  std::string folder = "specifications";
  std::optional<std::string> catalogue, date;
  std::optional<std::string> prices;     ///< a price list laid over the catalogue
  std::optional<std::string> templates;  ///< folder of the user's own
  std::optional<std::string> frames;     ///< file for the display lists
  bool summary = false, letters = false;
  std::optional<std::string> previous;  ///< folder of earlier issues beside the output folder
  unsigned jobs = 0;                    ///< 0: as many as there are cores
  bool force = false, json = false, codes = false;
  std::optional<Part> part;  ///< of `build`: only this share of the requests
  std::string name;          ///< of `fields`: a key or a part of one
  DiagnosticsMode diagnostics = DiagnosticsMode::human;
};

/// Options, or what to print and with which status to end: help and version on standard output, a
/// fault of usage on standard error.
struct ParsedOptions {
  std::optional<Options> options;
  Exit exit = Exit::success;
  std::string output, error;
};

/// `arguments` without the program's name.
ParsedOptions parse_options(std::vector<std::string> arguments);

}  // namespace output
