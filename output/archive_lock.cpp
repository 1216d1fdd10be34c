#include "output/archive_lock.h"

namespace output {
namespace {

constexpr std::string_view prefix = "lock.";

[[noreturn]] void fail_busy(const std::string& folder, const std::string& who) {
  throw ArchiveBusy(folder + ": " + who +
                    " is issuing into this folder; wait for its end or name another with -o");
}

/// Two runs that start at the same moment hold their own locks before they look at each other's, so
/// that at least one sees the other.
void refuse_other_divisions(Os& os, const std::string& folder, Part part) {
  const std::string work = join_path(folder, work_folder);
  const std::string ours = "-of-" + std::to_string(part.count);
  for (const Entry& entry : os.list_folder(work)) {
    if (!entry.name.starts_with(prefix) || entry.name.ends_with(ours)) continue;
    if (!os.lock(join_path(work, entry.name), Hold::shared)) {
      fail_busy(folder, "part " + entry.name.substr(prefix.size()));
    }
  }
}

}  // namespace

std::vector<std::shared_ptr<void>> hold_archive(Os& os, const std::string& folder,
                                                std::optional<Part> part) {
  const std::string work = join_path(folder, work_folder);
  std::vector<std::shared_ptr<void>> held;
  held.push_back(os.lock(join_path(work, "lock"), part ? Hold::shared : Hold::exclusive));
  if (!held.back()) fail_busy(folder, "another run");
  if (!part) return held;
  const std::string own = std::string(prefix) + part_name(*part);
  held.push_back(os.lock(join_path(work, own), Hold::exclusive));
  if (!held.back()) fail_busy(folder, "another run of part " + part_name(*part));
  refuse_other_divisions(os, folder, *part);
  return held;
}

}  // namespace output
