/// SHA256SUMS of an archive, and the end of a run.
#include <algorithm>
#include <utility>

#include "output/archive.h"
#include "output/archive_sums.h"

namespace output {
namespace {

std::string text_of(const Shelves& shelves) {
  std::string text;
  for (const auto& [stem, shelf] : shelves) {
    for (const IssueFile file : issue_files) {
      const std::optional<Digest>& digest = shelf.listed.at(file);
      if (digest) text += sum_line(issue_file_name(stem, file), *digest);
    }
  }
  return text;
}

bool has_lines(const Shelf& shelf) {
  return std::any_of(shelf.listed.begin(), shelf.listed.end(),
                     [](const std::optional<Digest>& line) { return line.has_value(); });
}

}  // namespace

void Archive::read_sums_file() {
  const std::string file = path(sums_name);
  if (os_.look(file) != EntryKind::file) return;
  const std::string text = os_.read_file(file);
  sums_on_disk_ = digest_of(text);
  each_sum_line(text, [&](const SumLine& line) {
    if (const auto place = issue_file_of(line.name)) {
      shelves_[std::string(place->stem)].listed.at(place->file) = line.digest;
    }
  });
}

/// A line must never be wrong, not even for a moment: it goes before the file it speaks of does.
void Archive::unlist(const std::string& stem) {
  const std::lock_guard guard(mutex_);
  Shelf& shelf = shelves_[stem];
  if (!has_lines(shelf)) return;
  shelf.listed = {};
  if (part_) {
    unlist_beside_others(stem);
  } else {
    write_sums_file();
  }
}

/// Other parts may take lines away at the same time, each its own.
void Archive::unlist_beside_others(const std::string& stem) {
  const auto turn = os_.lock(path(join_path(work_folder, "sums_lock")), Hold::waiting);
  const std::string file = path(sums_name);
  if (os_.look(file) != EntryKind::file) return;
  std::string text;
  each_sum_line(os_.read_file(file), [&](const SumLine& line) {
    const auto place = issue_file_of(line.name);
    if (place && place->stem != stem) text += sum_line(line.name, line.digest);
  });
  write_whole(os_, file, text);
}

/// Lines of this run's new files may stand in it: each is added once its file is in place.
void Archive::write_sums_file() {
  const std::string text = text_of(shelves_);
  const Digest digest = digest_of(text);
  if (digest == sums_on_disk_) return;
  write_whole(os_, path(sums_name), text);
  sums_on_disk_ = digest;
}

std::vector<std::string> Archive::whole_stems() const {
  std::vector<std::string> stems;
  for (const auto& [stem, shelf] : shelves_) {
    if (shelf.is_whole()) stems.push_back(stem);
  }
  return stems;
}

/// Lists what is not listed yet of a good issue; false for one that is not good.
bool Archive::list(const std::string& stem) {
  const std::optional<KnownIssue> known = look(stem);
  if (!known) return false;
  Shelf& shelf = shelves_.at(stem);
  for (const IssueFile file : base_files) {
    std::optional<Digest>& line = shelf.listed.at(file);
    const Digest& digest = known->files.at(file)->digest;
    if (line && *line != digest) return false;
    line = digest;
  }
  return true;
}

/// A letter or summary that is not the one listed keeps its line.
void Archive::list_extras(const std::string& stem, Doubtful& doubtful) {
  Shelf& shelf = shelves_.at(stem);
  for (const IssueFile extra : extra_files) {
    const std::optional<KnownFile>& known = shelf.known->files.at(extra);
    std::optional<Digest>& line = shelf.listed.at(extra);
    if (!known) continue;
    if (line && *line != known->digest) {
      doubtful.changed.push_back(issue_file_name(stem, extra));
    } else {
      line = known->digest;
    }
  }
}

Doubtful Archive::finish() {
  Doubtful doubtful;
  os_.flush_folder(folder_);
  if (part_) return doubtful;
  for (const auto& [stem, shelf] : shelves_) {
    for (const IssueFile file : issue_files) {
      const bool is_lost = shelf.listed.at(file) && !shelf.there.at(file);
      if (is_lost) doubtful.lost.push_back(issue_file_name(stem, file));
    }
  }
  for (const std::string& stem : whole_stems()) {
    if (list(stem)) {
      list_extras(stem, doubtful);
      continue;
    }
    doubtful.altered.push_back(stem);
    shelves_.at(stem).known.reset();
  }
  const std::lock_guard guard(mutex_);
  write_sums_file();
  os_.flush_folder(folder_);
  return doubtful;
}

void Archive::forget() {
  for (auto& [stem, shelf] : shelves_) shelf.known.reset();
  overview_.reset();
  news_ = true;
}

void Archive::check(const std::string& stem) { look(stem); }

void Archive::each_issue(
    const std::function<void(const std::string& stem, const KnownIssue& issue)>& take) const {
  for (const auto& [stem, shelf] : shelves_) {
    if (shelf.is_whole() && shelf.known) take(stem, *shelf.known);
  }
}

}  // namespace output
