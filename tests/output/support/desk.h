/// Whole runs of the program in memory.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "output/command.h"
#include "tests/output/support/memory_os.h"

namespace support {

/// A system with the sample catalogue and a program file of its own.
class Desk : public MemoryOs {
 public:
  std::string date = "2026-01-02";
  Desk();
  /// A short request: nothing but id, title and `more` lines.
  void request(const std::string& file, const std::string& id, const std::string& more = "");
  output::Exit run(std::vector<std::string> arguments);
  /// Issues the folder `in` into `out` on `date`.
  output::Exit build(const std::vector<std::string>& more = {});
  /// What stands in `out` but logs and work data.
  std::map<std::string, std::string> issued() const;
};

/// Checks that every line of SHA256SUMS is true and every issue whole.
void check_archive(const MemoryOs& os, bool all_listed);

}  // namespace support
