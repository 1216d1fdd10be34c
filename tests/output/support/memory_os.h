/// An operating system in memory, with faults on demand.
#pragma once

#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "output/os.h"

namespace support {

class MemoryOs : public output::Os {
 public:
  std::map<std::string, std::string> files;
  std::set<std::string> folders{"."};
  std::map<std::string, std::string> variables;
  std::string standard_input, standard_output, standard_error;
  std::vector<std::string> calls;   ///< "write NAME", "rename NAME", ... in order
  std::int64_t clock = 1795564800;  ///< 2026-11-25
  bool interrupt = false;
  bool locked_by_another = false;
  bool noted_late = false;  ///< stamps are as late as the work data that hold them

  /// From now on the n-th call (from 1) of an operation fails with this errno.
  void fail(const std::string& operation, int nth, int code);
  /// As if the process ended at the n-th call: that one and all after it fail, removals included.
  void end_at(int nth_call) { last_call_ = nth_call; }
  int call_count() const { return count_; }
  int faults() const { return faults_; }                           ///< calls that failed as planned
  const std::string& failed_path() const { return failed_path_; }  ///< of the last of them

  std::string read_file(const std::string& path) override;
  std::string read_input() override { return standard_input; }
  void read_pieces(const std::string& path,
                   const std::function<void(std::string_view)>& take) override;
  std::unique_ptr<output::FileWriter> open_new(const std::string& path) override;
  void create_file(const std::string& path, std::string_view bytes) override;
  void rename_file(const std::string& from, const std::string& to) override;
  bool remove_file(const std::string& path) noexcept override;
  void flush_folder(const std::string& path) override;
  void make_folders(const std::string& path) override;
  std::vector<output::Entry> list_folder(const std::string& path) override;
  std::optional<output::EntryKind> look(const std::string& path) override;
  std::optional<std::string> real_path(const std::string& path) override;
  /// By size and content: whoever changes `files` changes the stamp.
  std::optional<output::Stamp> stamp(const std::string& path) override;
  std::shared_ptr<void> lock(const std::string& path, output::Hold hold) override;
  void write_output(std::string_view text) override;
  void write_error(std::string_view text) override;
  std::optional<std::string> environment(const std::string& name) override;
  std::optional<unsigned> columns(output::Stream) override { return std::nullopt; }
  std::int64_t now() override { return clock; }
  void watch_signals() override {}
  bool interrupted() override { return interrupt; }

 private:
  class Writer;
  void step(const std::string& operation, const std::string& path);
  struct Planned {
    int nth = 0, code = 0;
  };
  std::map<std::string, Planned> planned_;
  int count_ = 0;
  int faults_ = 0;
  std::string failed_path_;
  std::optional<int> last_call_;
  mutable std::recursive_mutex mutex_;  ///< threads of a batch share the system
};

}  // namespace support
