/// The folder of issued specifications: three files a request, never overwritten, always listed.
#pragma once

#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <set>
#include <string>
#include <string_view>

#include "output/archive_sums.h"
#include "output/issue.h"
#include "output/json.h"
#include "output/os.h"

namespace output {

/// Somebody else is issuing into the folder.
struct ArchiveBusy : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// One run's hold on the folder. Threads may work on different stems at the same time. Every call
/// may throw OsError.
class Archive {
 public:
  /// Makes the folder where needed, takes its lock and reads what stands in it. Throws ArchiveBusy
  /// when another run has the lock.
  Archive(Os& os, std::string folder);

  /// The latest date under which this id and revision was issued.
  std::optional<std::string> latest_date(std::string_view id, std::string_view revision) const;
  /// The least revision after every issued one of this id and after `revision`; nullopt when there
  /// is none short enough.
  std::optional<std::string> free_revision(std::string_view id, std::string_view revision) const;

  /// What stands under a stem: nothing that counts as issued (a file is missing), the same
  /// specification with its files as they went out, or something else.
  enum class Found { nothing, same, other };
  /// `content` makes the content to compare with (IssuedJson::content); called only when needed.
  Found find(const std::string& stem, const std::function<std::string()>& content) const;

  /// Writes the three files, the JSON last: only with it the stem counts as issued.
  void store(const Issued& issued);
  /// Copies the three files of an issued stem to superseded/<stem>.<first 8 of the JSON's digest>.*
  /// and takes its JSON away, so that the stem is free.
  void supersede(const std::string& stem);
  /// Brings SHA256SUMS up to date, whole stems that no run has listed included.
  void finish();

 private:
  std::string path(std::string_view name) const { return join_path(folder_, name); }
  bool has(const std::string& name) const;
  bool has_all(const std::string& stem) const;
  void put(const std::string& name, std::string_view bytes);
  void unlist(const std::string& stem);
  void write_sums_file();
  void list_unlisted();

  Os& os_;
  std::string folder_;
  std::shared_ptr<void> lock_;
  mutable std::mutex mutex_;  ///< guards names_ and sums_
  std::set<std::string, std::less<>> names_;
  Sums sums_;
  std::string sums_on_disk_;
};

}  // namespace output
