/// What an archive knows of its issues without reading them anew.
#include "output/archive_known.h"

#include <algorithm>
#include <utility>

#include "output/archive.h"
#include "output/names.h"

namespace output {
namespace {

constexpr std::string_view known_start = "known.";
constexpr std::string_view known_end = "jsonl";

/// A file changed as late as the work data were noted may have been changed once more since.
void doubt_late(KnownIssue& issue, std::int64_t noted_ns) {
  for (std::optional<KnownFile>& file : issue.files) {
    if (file && file->stamp.changed_ns >= noted_ns) file->stamp = Stamp();
  }
}

}  // namespace

std::string Archive::known_path() const {
  std::string name(known_start);
  if (part_) name += part_name(*part_) + ".";
  return path(join_path(work_folder, name.append(known_end)));
}

/// A part reads what the last whole run knew and what itself did; a whole run what all did.
void Archive::read_known() {
  const std::string work = path(work_folder);
  std::vector<std::string> files;
  for (const Entry& entry : os_.list_folder(work)) {
    const std::string file = join_path(work, entry.name);
    const bool named = entry.name.starts_with(known_start) && entry.name.ends_with(known_end);
    const bool of_whole = entry.name.size() == known_start.size() + known_end.size();
    if (named && (!part_ || of_whole || file == known_path())) files.push_back(file);
  }
  std::sort(files.begin(), files.end());
  for (const std::string& file : files) read_known_file(file);
}

void Archive::read_known_file(const std::string& file) {
  const std::optional<Stamp> noted = os_.stamp(file);
  if (!noted) return;
  const bool own = file == known_path();
  KnownReader reader;
  reader.on_issue = [&](const std::string& stem, KnownIssue issue) {
    const auto shelf = shelves_.find(stem);
    if (shelf == shelves_.end()) return;
    doubt_late(issue, noted->modified_ns);
    shelf->second.known = std::move(issue);
  };
  reader.on_source = [&](std::string path, KnownSource source) {
    const bool complete = source.requests.size() == source.total;
    if (complete || (part_ && own)) sources_[std::move(path)] = std::move(source);
  };
  reader.on_overview = [&](KnownOverview seen) {
    for (KnownFile* page : {&seen.html, &seen.csv}) {
      if (page->stamp.changed_ns >= noted->modified_ns) page->stamp = Stamp();
    }
    overview_ = seen;
  };
  try {
    each_line(os_, file, [&](std::string_view line) { reader.take(line); });
  } catch (const OsError&) {
    return;  // what is not known is looked up
  }
}

bool Archive::is_of_use(const KnownSource& source) const {
  return std::all_of(
      source.requests.begin(), source.requests.end(), [&](const KnownRequest& request) {
        const auto found =
            shelves_.find(stem_of(request.id, request.revision, request.issued_date));
        return found != shelves_.end() && found->second.known &&
               found->second.known->content == request.content;
      });
}

const KnownSource* Archive::source(const std::string& path) const {
  const auto found = sources_.find(path);
  return found == sources_.end() ? nullptr : &found->second;
}

void Archive::remember(const std::string& path, KnownSource source) {
  const std::lock_guard guard(mutex_);
  sources_[path] = std::move(source);
  news_ = true;
}

void Archive::remember(const KnownOverview& overview) {
  const std::lock_guard guard(mutex_);
  overview_ = overview;
  news_ = true;
}

void Archive::save() {
  if (!news_) return;
  WholeFile file(os_, known_path());
  for (const auto& [stem, shelf] : shelves_) {
    const bool ours = !part_ || is_name_in(*part_, split_stem(stem).value().id);
    if (ours && shelf.is_whole() && shelf.known) file.add(known_line(stem, *shelf.known));
  }
  for (const auto& [path, source] : sources_) {
    if (is_of_use(source)) file.add(known_line(path, source));
  }
  if (overview_) file.add(known_line(*overview_));
  file.commit();
  news_ = false;
}

std::optional<KnownIssue> Archive::look(const std::string& stem) {
  Shelf found = shelf(stem);
  if (found.checked) return found.known;
  bool news = false;
  if (!found.known || !holds(stem, *found.known, news)) {
    found.known = learn(stem);
    news = true;
  }
  set_known(stem, found.known, news);
  return found.known;
}

void Archive::set_known(const std::string& stem, std::optional<KnownIssue> known, bool news) {
  const std::lock_guard guard(mutex_);
  Shelf& shelf = shelves_[stem];
  shelf.known = std::move(known);
  shelf.checked = true;
  news_ = news_ || news;
}

/// Whether the files are those known; a file that was touched is read, and its stamp renewed.
bool Archive::holds(const std::string& stem, KnownIssue& known, bool& news) {
  for (const IssueFile file : base_files) {
    KnownFile& seen = known.files.at(file).value();
    const std::string name = issue_file_name(stem, file);
    const Stamp now = stamp_of(name);
    if (now == seen.stamp) continue;
    if (digest_of(os_.read_file(path(name))) != seen.digest) return false;
    seen.stamp = now;
    news = true;
  }
  look_at_extras(stem, known, news);
  return true;
}

KnownFile Archive::read_file(const std::string& name) {
  const Stamp stamp = stamp_of(name);
  return {digest_of(os_.read_file(path(name))), stamp};
}

/// Those that stand now as they are; whether they are what went out their lines say.
void Archive::look_at_extras(const std::string& stem, KnownIssue& known, bool& news) {
  const Shelf found = shelf(stem);
  for (const IssueFile extra : extra_files) {
    std::optional<KnownFile>& seen = known.files.at(extra);
    const std::string name = issue_file_name(stem, extra);
    if (!found.there.at(extra)) {
      news = news || seen;
      seen.reset();
    } else if (!seen || seen->stamp != stamp_of(name)) {
      seen = read_file(name);
      news = true;
    }
  }
}

/// Reads the files; nullopt when the three of the issue do not belong together.
std::optional<KnownIssue> Archive::learn(const std::string& stem) {
  KnownIssue known;
  std::optional<IssuedJson> issued;
  for (const IssueFile file : base_files) {
    const std::string name = issue_file_name(stem, file);
    const Stamp stamp = stamp_of(name);
    const std::string bytes = os_.read_file(path(name));
    known.files.at(file) = KnownFile{digest_of(bytes), stamp};
    if (file == json_file) issued = read_issued(bytes);
  }
  bool news = false;
  look_at_extras(stem, known, news);
  const auto is = [&](const std::optional<FileDigest>& said, IssueFile file) {
    return said && said->sha256 == hex(known.files.at(file)->digest);
  };
  if (!issued || !is(issued->pdf, pdf_file) || !is(issued->bom_csv, bom_csv_file)) {
    return std::nullopt;
  }
  known.content = issued->content;
  known.row = std::move(issued->row);
  return known;
}

}  // namespace output
