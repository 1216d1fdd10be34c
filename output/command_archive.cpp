/// The commands on a folder of issues: verify and index.
#include <algorithm>
#include <thread>

#include "output/archive.h"
#include "output/archive_findings.h"
#include "output/archive_verify.h"
#include "output/batch_pool.h"
#include "output/command.h"
#include "output/finding.h"
#include "output/json_lines.h"
#include "output/overview.h"
#include "output/report_text.h"

namespace output {
namespace {

unsigned thread_count() { return std::clamp(std::thread::hardware_concurrency(), 1U, 64U); }

std::string difference_line(const FileDifference& difference, bool json) {
  const std::string_view word = state_word(difference.state);
  if (!json) return std::string(word) + " " + terminal_safe(difference.name) + "\n";
  return object_json({{"file", text_json(difference.name)}, {"state", text_json(word)}}) + "\n";
}

std::string counted(std::size_t count, const std::string& thing) {
  return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

Exit nothing_there(Os& os, const std::string& folder) {
  os.write_error(program_message(folder + ": there is no issued specification in it"));
  return Exit::no_input;
}

/// Reads every issue anew, with all cores.
void check_all(Archive& archive) {
  OrderedPool<int> pool(thread_count(), std::size_t{4} * thread_count(), [](int) {});
  for (const std::string& stem : archive.whole_stems()) {
    pool.submit([&archive, stem] {
      archive.check(stem);
      return 0;
    });
  }
  pool.drain();
}

Exit index_held(Os& os, const Options& options, Archive& archive) {
  archive.forget();
  check_all(archive);
  const std::size_t issues = archive.whole_stems().size();
  if (issues == 0) return nothing_there(os, options.folder);
  const Doubtful doubtful = archive.finish();
  os.write_error(
      findings_text(archive_findings(archive, doubtful, issue_altered), options.diagnostics));
  write_overview(os, archive, Templates());
  archive.save();
  const std::size_t good = issues - doubtful.altered.size();
  os.write_output(options.json ? object_json({{"issues", std::to_string(good)},
                                              {"altered", std::to_string(doubtful.altered.size() +
                                                                         doubtful.changed.size())},
                                              {"missing", std::to_string(doubtful.lost.size())}}) +
                                     "\n"
                               : counted(good, "issue") + " listed in " +
                                     terminal_safe(archive.path("overview.html")) + "\n");
  return doubtful.none() ? Exit::success : Exit::data;
}

}  // namespace

Exit run_verify(Os& os, const Options& options) {
  const std::optional<Verification> found = verify_archive(os, options.folder, thread_count());
  if (!found) return nothing_there(os, options.folder);
  for (const FileDifference& difference : found->differences) {
    os.write_output(difference_line(difference, options.json));
  }
  const std::size_t count = found->differences.size();
  if (!options.json) {
    os.write_output(count == 0 ? counted(found->files, "file") + " as they went out\n"
                               : std::to_string(count) + " of " + counted(found->files, "file") +
                                     " not as they went out\n");
  }
  return count == 0 ? Exit::success : Exit::different;
}

Exit run_index(Os& os, const Options& options) {
  if (os.look(options.folder) != EntryKind::folder) return nothing_there(os, options.folder);
  try {
    Archive archive(os, options.folder);
    return index_held(os, options, archive);
  } catch (const ArchiveBusy& busy) {
    os.write_error(program_message(busy.what()));
    return Exit::cannot_create;
  }
}

}  // namespace output
