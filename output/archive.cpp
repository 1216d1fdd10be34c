#include "output/archive.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "output/digest.h"
#include "output/names.h"

namespace output {
namespace {

constexpr std::string_view sums_name = "SHA256SUMS";
constexpr std::string_view work_folder = ".swathspec";
constexpr std::string_view superseded_folder = "superseded";
/// In the order they are written: the JSON commits.
constexpr std::array<std::string_view, 3> extensions{".pdf", ".bom.csv", ".json"};

}  // namespace

Archive::Archive(Os& os, std::string folder) : os_(os), folder_(std::move(folder)) {
  os_.make_folders(path(work_folder));
  lock_ = os_.lock(path(join_path(work_folder, "lock")));
  if (!lock_) throw ArchiveBusy(folder_ + ": another run is issuing into this folder");
  for (Entry& entry : os_.list_folder(folder_)) {
    // With the lock held, a temporary file can only be what a killed run left.
    if (is_temporary(entry.name)) {
      os_.remove_file(path(entry.name));
    } else {
      names_.insert(std::move(entry.name));
    }
  }
  if (has(std::string(sums_name))) sums_on_disk_ = os_.read_file(path(sums_name));
  sums_ = read_sums(sums_on_disk_);
}

bool Archive::has(const std::string& name) const { return names_.contains(name); }

bool Archive::has_all(const std::string& stem) const {
  return std::all_of(extensions.begin(), extensions.end(), [&](std::string_view extension) {
    return has(stem + std::string(extension));
  });
}

std::optional<std::string> Archive::latest_date(std::string_view id,
                                                std::string_view revision) const {
  const std::string prefix = stem_without_date(id, revision);
  const std::lock_guard guard(mutex_);
  std::optional<std::string> latest;
  for (auto it = names_.lower_bound(prefix); it != names_.end() && it->starts_with(prefix); ++it) {
    if (!it->ends_with(".json")) continue;
    const std::string_view stem = std::string_view(*it).substr(0, it->size() - 5);
    const std::optional<StemParts> parts = split_stem(stem);
    if (parts && prefix.size() + parts->date.size() == stem.size()) latest = parts->date;
  }
  return latest;  // dates sort as text, and the names are in order
}

std::optional<std::string> Archive::free_revision(std::string_view id,
                                                  std::string_view revision) const {
  const std::string prefix = name_part(id) + "_r";
  const std::lock_guard guard(mutex_);
  std::string last(revision.empty() ? "A" : revision);
  for (auto it = names_.lower_bound(prefix); it != names_.end() && it->starts_with(prefix); ++it) {
    if (!it->ends_with(".json")) continue;
    const auto parts = split_stem(std::string_view(*it).substr(0, it->size() - 5));
    if (parts && parts->id.size() + 2 == prefix.size() && revision_before(last, parts->revision)) {
      last = parts->revision;
    }
  }
  return next_revision(last);
}

Archive::Found Archive::find(const std::string& stem,
                             const std::function<std::string()>& content) const {
  {
    const std::lock_guard guard(mutex_);
    if (!has_all(stem)) return Found::nothing;
  }
  const std::optional<IssuedJson> issued = read_issued(os_.read_file(path(stem + ".json")));
  if (!issued || issued->content != content() || !issued->pdf || !issued->bom_csv) {
    return Found::other;
  }
  const auto intact = [&](const FileDigest& file, std::string_view extension) {
    return sha256(os_.read_file(path(stem + std::string(extension)))) == file.sha256;
  };
  return intact(*issued->pdf, ".pdf") && intact(*issued->bom_csv, ".bom.csv") ? Found::same
                                                                              : Found::other;
}

void Archive::put(const std::string& name, std::string_view bytes) {
  write_whole(os_, path(name), bytes);
  const std::lock_guard guard(mutex_);
  names_.insert(name);
}

void Archive::store(const Issued& issued) {
  unlist(issued.stem);
  put(issued.stem + ".pdf", issued.pdf);
  put(issued.stem + ".bom.csv", issued.bom_csv);
  os_.flush_folder(folder_);
  put(issued.stem + ".json", issued.json);
  Sums fresh{{issued.stem + ".pdf", sha256(issued.pdf)},
             {issued.stem + ".bom.csv", sha256(issued.bom_csv)},
             {issued.stem + ".json", sha256(issued.json)}};
  const std::lock_guard guard(mutex_);
  sums_.merge(fresh);
}

void Archive::supersede(const std::string& stem) {
  const std::string to = path(superseded_folder);
  os_.make_folders(to);
  const std::string json = os_.read_file(path(stem + ".json"));
  const std::string kept = join_path(to, stem + "." + sha256(json).substr(0, 8));
  for (const std::string_view extension : extensions) {
    const std::string name = stem + std::string(extension);
    write_whole(os_, kept + std::string(extension), os_.read_file(path(name)));
  }
  os_.flush_folder(to);
  unlist(stem);
  const std::string name = stem + ".json";
  if (!os_.remove_file(path(name))) throw OsError("remove", path(name), EACCES);
  const std::lock_guard guard(mutex_);
  names_.erase(name);
}

/// A line must never be wrong, not even for a moment: it goes before the file it speaks of does.
void Archive::unlist(const std::string& stem) {
  const std::lock_guard guard(mutex_);
  std::size_t gone = 0;
  for (const std::string_view extension : extensions) {
    gone += sums_.erase(stem + std::string(extension));
  }
  if (gone != 0) write_sums_file();
}

/// Lines of this run's new files may stand in it: each is added once its file is in place.
void Archive::write_sums_file() {
  std::string text = write_sums(sums_);
  if (text == sums_on_disk_) return;
  write_whole(os_, path(sums_name), text);
  sums_on_disk_ = std::move(text);
}

void Archive::list_unlisted() {
  for (const std::string& name : names_) {
    if (!name.ends_with(".json")) continue;
    const std::string stem = name.substr(0, name.size() - 5);
    if (!split_stem(stem) || !has_all(stem)) continue;
    for (const std::string_view extension : extensions) {
      const std::string file = stem + std::string(extension);
      if (!sums_.contains(file)) sums_[file] = sha256(os_.read_file(path(file)));
    }
  }
}

void Archive::finish() {
  const std::lock_guard guard(mutex_);
  std::erase_if(sums_, [&](const auto& line) { return !names_.contains(line.first); });
  list_unlisted();
  os_.flush_folder(folder_);
  write_sums_file();
  os_.flush_folder(folder_);
}

}  // namespace output
