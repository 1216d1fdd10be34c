#include "output/archive.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <utility>

#include "output/archive_sums.h"
#include "output/names.h"

namespace output {
namespace {

constexpr std::string_view superseded_folder = "superseded";
/// In the order they are written: the JSON commits.
constexpr std::array<IssueFile, 5> writing_order{summary_file, letter_file, pdf_file, bom_csv_file,
                                                 json_file};

}  // namespace

Archive::Archive(Os& os, std::string folder, std::optional<Part> part)
    : os_(os), folder_(std::move(folder)), part_(part) {
  os_.make_folders(path(work_folder));
  held_ = hold_archive(os_, folder_, part_);
  take_folder();
  read_sums_file();
  read_known();
}

void Archive::take_folder() {
  clean(path(work_folder));
  for (const Entry& entry : os_.list_folder(folder_)) {
    if (is_temporary(entry.name)) {
      if (is_own_temporary(entry.name)) os_.remove_file(path(entry.name));
    } else if (const auto file = issue_file_of(entry.name)) {
      shelves_[std::string(file->stem)].there.at(file->file) = true;
    } else if (entry.name == superseded_folder && entry.kind == EntryKind::folder) {
      clean(path(entry.name));
    }
  }
}

void Archive::clean(const std::string& folder) {
  for (const Entry& entry : os_.list_folder(folder)) {
    if (is_own_temporary(entry.name)) os_.remove_file(join_path(folder, entry.name));
  }
}

/// With the lock held, a temporary file can only be what a killed run left, or one that another
/// part is writing.
bool Archive::is_own_temporary(std::string_view name) const {
  if (!is_temporary(name)) return false;
  if (!part_) return true;
  const std::string_view core = name.substr(1);
  const std::size_t end = core.find("_r");
  if (end != std::string_view::npos) return is_name_in(*part_, core.substr(0, end));
  return core.find("." + part_name(*part_) + ".jsonl") != std::string_view::npos;
}

Shelf Archive::shelf(const std::string& stem) const {
  const std::lock_guard guard(mutex_);
  const auto found = shelves_.find(stem);
  return found == shelves_.end() ? Shelf() : found->second;
}

std::optional<std::string> Archive::latest_date(std::string_view id,
                                                std::string_view revision) const {
  const std::string prefix = stem_without_date(id, revision);
  const std::lock_guard guard(mutex_);
  std::optional<std::string> latest;
  for (auto it = shelves_.lower_bound(prefix);
       it != shelves_.end() && it->first.starts_with(prefix); ++it) {
    if (!it->second.there.at(json_file)) continue;
    const std::optional<StemParts> parts = split_stem(it->first);
    if (parts && prefix.size() + parts->date.size() == it->first.size()) latest = parts->date;
  }
  return latest;  // dates sort as text, and the stems are in order
}

std::optional<std::string> Archive::free_revision(std::string_view id,
                                                  std::string_view revision) const {
  const std::string prefix = name_part(id) + "_r";
  const std::lock_guard guard(mutex_);
  std::string last(revision.empty() ? "A" : revision);
  for (auto it = shelves_.lower_bound(prefix);
       it != shelves_.end() && it->first.starts_with(prefix); ++it) {
    if (!it->second.there.at(json_file)) continue;
    const auto parts = split_stem(it->first);
    if (parts && parts->id.size() + 2 == prefix.size() && revision_before(last, parts->revision)) {
      last = parts->revision;
    }
  }
  return next_revision(last);
}

Archive::Found Archive::find(const std::string& stem, const std::function<Digest()>& content) {
  if (!shelf(stem).is_whole()) return Found::nothing;
  const std::optional<KnownIssue> known = look(stem);
  return known && known->content == content() ? Found::same : Found::other;
}

std::optional<Digest> Archive::remembered(const std::string& stem) {
  const Shelf found = shelf(stem);
  if (!found.is_whole() || !found.known) return std::nullopt;
  const std::optional<KnownIssue> known = look(stem);
  if (!known) return std::nullopt;
  return known->content;
}

Stamp Archive::stamp_of(const std::string& name) {
  const std::optional<Stamp> stamp = os_.stamp(path(name));
  if (!stamp) throw OsError("read", path(name), ENOENT);
  return *stamp;
}

void Archive::put(const std::string& stem, IssueFile file, std::string_view bytes) {
  write_whole(os_, path(issue_file_name(stem, file)), bytes);
  const std::lock_guard guard(mutex_);
  Shelf& shelf = shelves_[stem];
  shelf.there.at(file) = true;
  shelf.known.reset();
  shelf.checked = false;
}

void Archive::store(const Issued& issued) {
  const std::array<std::string_view, 5> bytes{issued.bom_csv, issued.json, issued.letter,
                                              issued.pdf, issued.summary_pdf};
  unlist(issued.stem);
  KnownIssue known;
  for (const IssueFile file : writing_order) {
    const bool is_extra = file == letter_file || file == summary_file;
    if (is_extra && bytes.at(file).empty()) continue;
    if (file == json_file) os_.flush_folder(folder_);
    put(issued.stem, file, bytes.at(file));
    known.files.at(file) =
        KnownFile{digest_of(bytes.at(file)), stamp_of(issue_file_name(issued.stem, file))};
  }
  known.content = issued.facts.content;
  known.row = issued.facts.row;
  const std::lock_guard guard(mutex_);
  Shelf& shelf = shelves_[issued.stem];
  for (const IssueFile file : issue_files) {
    if (known.files.at(file)) shelf.listed.at(file) = known.files.at(file)->digest;
  }
  shelf.known = std::move(known);
  shelf.checked = true;
  news_ = true;
}

void Archive::add(const std::string& stem, IssueFile extra, std::string_view bytes) {
  const std::string name = issue_file_name(stem, extra);
  const Digest digest = digest_of(bytes);
  const std::optional<Digest> line = shelf(stem).listed.at(extra);
  if (line && *line != digest) unlist(stem);
  write_whole(os_, path(name), bytes);
  const KnownFile file{digest, stamp_of(name)};
  const std::lock_guard guard(mutex_);
  Shelf& shelf = shelves_[stem];
  shelf.there.at(extra) = true;
  shelf.listed.at(extra) = file.digest;
  if (shelf.known) shelf.known->files.at(extra) = file;
  news_ = true;
}

void Archive::supersede(const std::string& stem) {
  const std::string to = path(superseded_folder);
  os_.make_folders(to);
  const std::string json = os_.read_file(path(issue_file_name(stem, json_file)));
  const std::string kept = stem + "." + sha256(json).substr(0, 8);
  for (const IssueFile file : base_files) {
    write_whole(os_, join_path(to, issue_file_name(kept, file)),
                os_.read_file(path(issue_file_name(stem, file))));
  }
  std::vector<std::string> going{issue_file_name(stem, json_file)};
  for (const IssueFile extra : extra_files) {
    const std::string name = issue_file_name(stem, extra);
    if (!os_.look(path(name))) continue;
    write_whole(os_, join_path(to, issue_file_name(kept, extra)), os_.read_file(path(name)));
    going.push_back(name);
  }
  os_.flush_folder(to);
  unlist(stem);
  for (const std::string& name : going) {
    if (!os_.remove_file(path(name))) throw OsError("remove", path(name), EACCES);
  }
  const std::lock_guard guard(mutex_);
  Shelf& shelf = shelves_[stem];
  for (const IssueFile file : {json_file, letter_file, summary_file}) shelf.there.at(file) = false;
  shelf.known.reset();
  shelf.checked = false;
}

}  // namespace output
