/// The folder of issued specifications: three files a request and what is made beside them, never
/// overwritten, always listed.
#pragma once

#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "output/archive_known.h"
#include "output/archive_lock.h"
#include "output/archive_shelf.h"
#include "output/issue.h"
#include "output/os.h"
#include "output/part.h"

namespace output {

/// What is wrong with the issues of a folder.
struct Doubtful {
  std::vector<std::string> altered;  ///< stems whose files are not those their JSON speaks of
  std::vector<std::string> lost;     ///< files that are listed and not there
  std::vector<std::string> changed;  ///< letters and summaries that are not those listed
  bool none() const { return altered.empty() && lost.empty() && changed.empty(); }
};

/// One run's hold on the folder. Threads may work on different stems at the same time. Every call
/// may throw OsError.
class Archive {
 public:
  /// Makes the folder where needed, takes its lock and reads what stands in it. Throws ArchiveBusy
  /// when another run is in the way. A part issues only what `is_in` gives it.
  Archive(Os& os, std::string folder, std::optional<Part> part = std::nullopt);

  /// The latest date under which this id and revision was issued.
  std::optional<std::string> latest_date(std::string_view id, std::string_view revision) const;
  /// The least revision after every issued one of this id and after `revision`; nullopt when there
  /// is none short enough.
  std::optional<std::string> free_revision(std::string_view id, std::string_view revision) const;

  /// What stands under a stem: nothing that counts as issued (a file is missing), the same
  /// specification with its files as they went out, or something else.
  enum class Found { nothing, same, other };
  /// `content` makes the content to compare with (IssuedJson::content); called only when needed.
  Found find(const std::string& stem, const std::function<Digest()>& content);
  /// The content of the issue under a stem when its files stand as they were seen before; nullopt
  /// for an issue never seen, which `find` would read.
  std::optional<Digest> remembered(const std::string& stem);

  /// Writes summary and letter where there are any, then the three files, the JSON last: only with
  /// it the stem counts as issued.
  void store(const Issued& issued);
  /// Adds a letter or summary to an issue that stands.
  void add(const std::string& stem, IssueFile extra, std::string_view bytes);
  /// Copies the files of an issued stem to superseded/<stem>.<first 8 of the JSON's digest>.* and
  /// takes its JSON, summary and letter away, so that the stem is free.
  void supersede(const std::string& stem);
  /// Brings SHA256SUMS up to date, whole stems that no run has listed included; a part leaves that
  /// to `index`. What is doubtful gets no new line, and the line of a file that is gone stays.
  Doubtful finish();
  /// Forgets what earlier runs knew, so that `check`, which threads may share, and `finish` read
  /// every file anew.
  void forget();
  std::vector<std::string> whole_stems() const;
  void check(const std::string& stem);
  /// Every issue that `finish` found good, in order of the stems.
  void each_issue(
      const std::function<void(const std::string& stem, const KnownIssue& issue)>& take) const;

  /// What earlier runs knew of a source and of the overview, and what the next shall know; for one
  /// thread. Null when they knew nothing.
  const KnownSource* source(const std::string& path) const;
  const std::optional<KnownOverview>& overview() const { return overview_; }
  void remember(const std::string& path, KnownSource source);
  void remember(const KnownOverview& overview);
  /// Writes the work data when they changed; sources whose issues are no longer there go.
  void save();

  const std::string& folder() const { return folder_; }
  std::string path(std::string_view name) const { return join_path(folder_, name); }
  std::optional<Part> part() const { return part_; }

 private:
  void take_folder();
  void clean(const std::string& folder);
  bool is_own_temporary(std::string_view name) const;
  void read_sums_file();
  void read_known();
  void read_known_file(const std::string& file);
  std::string known_path() const;
  bool is_of_use(const KnownSource& source) const;

  std::optional<KnownIssue> look(const std::string& stem);
  bool holds(const std::string& stem, KnownIssue& known, bool& news);
  KnownFile read_file(const std::string& name);
  void look_at_extras(const std::string& stem, KnownIssue& known, bool& news);
  std::optional<KnownIssue> learn(const std::string& stem);
  void set_known(const std::string& stem, std::optional<KnownIssue> known, bool news);
  Shelf shelf(const std::string& stem) const;

  void put(const std::string& stem, IssueFile file, std::string_view bytes);
  Stamp stamp_of(const std::string& name);
  void unlist(const std::string& stem);
  void unlist_beside_others(const std::string& stem);
  bool list(const std::string& stem);
  void list_extras(const std::string& stem, Doubtful& doubtful);
  void write_sums_file();

  Os& os_;
  std::string folder_;
  std::optional<Part> part_;
  std::vector<std::shared_ptr<void>> held_;
  mutable std::mutex mutex_;  ///< guards shelves_, news_ and what stands of SHA256SUMS
  Shelves shelves_;
  std::optional<Digest> sums_on_disk_;
  KnownSources sources_;
  std::optional<KnownOverview> overview_;
  bool news_ = false;  ///< the work data on disk are no longer all that is known
};

}  // namespace output
