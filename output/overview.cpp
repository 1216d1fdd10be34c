#include "output/overview.h"

#include <functional>

#include "output/overview_csv.h"
#include "output/overview_page.h"
#include "output/version.h"

namespace output {
namespace {

constexpr std::string_view html_name = "overview.html";
constexpr std::string_view csv_name = "overview.csv";

/// Counts up with every change of what the pages look like that the templates do not show.
constexpr std::string_view form = "1";

/// Stands for the rows and for the templates, so that pages of one key are the same bytes.
Digest key_of(const Archive& archive, const Templates& templates) {
  std::string text = hex(templates.digest()) + std::string(form) + std::string(version) + "\n";
  archive.each_issue([&](const std::string& stem, const KnownIssue& issue) {
    text.append(stem).append(" ").append(hex(issue.files.at(json_file)->digest)).append("\n");
  });
  return digest_of(text);
}

/// Rows are made from their texts twice rather than all held at once.
void each_row(const Archive& archive, const std::function<void(const OverviewRow& row)>& take) {
  archive.each_issue([&](const std::string& stem, const KnownIssue& issue) {
    OverviewRow row = overview_row(issue.row);
    row.stem = stem;
    take(row);
  });
}

/// A page being written, and what will be known of it.
class Page {
 public:
  Page(Os& os, const std::string& path) : os_(os), path_(path), file_(os, path) {}
  void add(std::string_view text) {
    file_.add(text);
    hasher_.add(text);
  }
  KnownFile commit() {
    file_.commit();
    return {hasher_.finish(), os_.stamp(path_).value_or(Stamp())};
  }

 private:
  Os& os_;
  const std::string& path_;
  WholeFile file_;
  Hasher hasher_;
};

KnownFile write_html(Os& os, const Archive& archive, const Templates& templates,
                     const std::string& path) {
  OverviewPage page(templates);
  each_row(archive, [&](const OverviewRow& row) { page.count(row); });
  Page file(os, path);
  file.add(page.head());
  each_row(archive, [&](const OverviewRow& row) { file.add(page.row(row)); });
  file.add(page.foot());
  return file.commit();
}

KnownFile write_csv(Os& os, const Archive& archive, const std::string& path) {
  Page file(os, path);
  file.add(overview_csv_head());
  each_row(archive, [&](const OverviewRow& row) { file.add(overview_csv_record(row)); });
  return file.commit();
}

/// Whether the page stands as known; one that was touched is read, and its stamp renewed.
bool stands(Os& os, const std::string& path, KnownFile& known, bool& news) {
  const std::optional<Stamp> now = os.stamp(path);
  if (!now) return false;
  if (*now == known.stamp) return true;
  Hasher hasher;
  os.read_pieces(path, [&](std::string_view piece) { hasher.add(piece); });
  if (hasher.finish() != known.digest) return false;
  known.stamp = *now;
  news = true;
  return true;
}

}  // namespace

void write_overview(Os& os, Archive& archive, const Templates& templates) {
  const std::string html = archive.path(html_name), csv = archive.path(csv_name);
  const Digest key = key_of(archive, templates);
  KnownOverview known = archive.overview().value_or(KnownOverview());
  bool news = false;
  const bool stand =
      known.key == key && stands(os, html, known.html, news) && stands(os, csv, known.csv, news);
  if (!stand) {
    known = {key, write_html(os, archive, templates, html), write_csv(os, archive, csv)};
    os.flush_folder(folder_of(html));
  }
  if (!stand || news) archive.remember(known);
}

}  // namespace output
