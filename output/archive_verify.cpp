#include "output/archive_verify.h"

#include <array>
#include <cerrno>
#include <utility>

#include "output/archive_shelf.h"
#include "output/archive_sums.h"
#include "output/batch_pool.h"
#include "output/json.h"

namespace output {
namespace {

/// Reads one issue at a time.
class IssueCheck {
 public:
  IssueCheck(Os& os, const std::string& folder, const std::string& stem, const Shelf& shelf)
      : os_(os), folder_(folder), stem_(stem), shelf_(shelf) {}

  std::vector<FileDifference> run() {
    for (const IssueFile file : issue_files) check_listing(file);
    if (json_) check_against_json();
    std::vector<FileDifference> found;
    for (const IssueFile file : issue_files) {
      if (states_.at(file)) found.push_back({issue_file_name(stem_, file), *states_.at(file)});
    }
    return found;
  }

 private:
  void check_listing(IssueFile file) {
    const std::optional<Digest>& line = shelf_.listed.at(file);
    std::optional<std::string> bytes;
    if (shelf_.there.at(file)) bytes = read(issue_file_name(stem_, file));
    if (!bytes) {
      if (line) states_.at(file) = FileState::missing;
      return;
    }
    digests_.at(file) = digest_of(*bytes);
    if (!line) {
      states_.at(file) = FileState::unlisted;
    } else if (*line != digests_.at(file)) {
      states_.at(file) = FileState::altered;
    }
    if (file == json_file) json_ = issued_files(*bytes);
  }

  /// A file whose line was changed with it still differs from what its JSON says.
  void check_against_json() {
    for (const auto& [file, said] :
         {std::pair{pdf_file, json_->pdf}, std::pair{bom_csv_file, json_->bom_csv}}) {
      const std::optional<Digest>& digest = digests_.at(file);
      if (digest && hex(*digest) != said.sha256) states_.at(file) = FileState::altered;
    }
  }

  /// nullopt for a file that went since the folder was listed.
  std::optional<std::string> read(const std::string& name) {
    try {
      return os_.read_file(join_path(folder_, name));
    } catch (const OsError& error) {
      if (error.code != ENOENT) throw;
      return std::nullopt;
    }
  }

  Os& os_;
  const std::string& folder_;
  const std::string& stem_;
  const Shelf& shelf_;
  std::array<std::optional<Digest>, 5> digests_;
  std::array<std::optional<FileState>, 5> states_;
  std::optional<IssuedFiles> json_;
};

/// What is there and what is listed; false when neither names an issue.
bool read_shelves(Os& os, const std::string& folder, Shelves& shelves) {
  bool has_sums = false;
  for (const Entry& entry : os.list_folder(folder)) {
    has_sums = has_sums || entry.name == sums_name;
    if (const auto file = issue_file_of(entry.name)) {
      shelves[std::string(file->stem)].there.at(file->file) = true;
    }
  }
  if (has_sums) {
    each_line(os, join_path(folder, sums_name), [&](std::string_view text) {
      const std::optional<SumLine> line = read_sum_line(text);
      if (!line) return;
      if (const auto file = issue_file_of(line->name)) {
        shelves[std::string(file->stem)].listed.at(file->file) = line->digest;
      }
    });
  }
  return has_sums || !shelves.empty();
}

std::size_t count_files(const Shelf& shelf) {
  std::size_t count = 0;
  for (const IssueFile file : issue_files) {
    if (shelf.there.at(file) || shelf.listed.at(file)) ++count;
  }
  return count;
}

}  // namespace

std::string_view state_word(FileState state) {
  switch (state) {
    case FileState::altered:
      return "altered";
    case FileState::missing:
      return "missing";
    case FileState::unlisted:
      return "unlisted";
  }
  return "altered";
}

std::optional<Verification> verify_archive(Os& os, const std::string& folder, unsigned threads) {
  Shelves shelves;
  if (!read_shelves(os, folder, shelves)) return std::nullopt;
  Verification verification;
  OrderedPool<std::vector<FileDifference>> pool(
      threads, std::size_t{4} * threads, [&](std::vector<FileDifference> found) {
        for (FileDifference& one : found) verification.differences.push_back(std::move(one));
      });
  for (const auto& entry : shelves) {
    verification.files += count_files(entry.second);
    pool.submit(
        [&os, &folder, &entry] { return IssueCheck(os, folder, entry.first, entry.second).run(); });
  }
  pool.drain();
  return verification;
}

}  // namespace output
