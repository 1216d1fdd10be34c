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
    text.append(stem).append(" ").append(hex(issue.files.at(json_file).digest)).append("\n");
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

void write_html(Os& os, const Archive& archive, OverviewPage& page, const std::string& path) {
  each_row(archive, [&](const OverviewRow& row) { page.count(row); });
  WholeFile file(os, path);
  file.add(page.head());
  each_row(archive, [&](const OverviewRow& row) { file.add(page.row(row)); });
  file.add(page.foot());
  file.commit();
}

void write_csv(Os& os, const Archive& archive, const std::string& path) {
  WholeFile file(os, path);
  file.add(overview_csv_head());
  each_row(archive, [&](const OverviewRow& row) { file.add(overview_csv_record(row)); });
  file.commit();
}

}  // namespace

void write_overview(Os& os, Archive& archive, const Templates& templates) {
  const std::string html = archive.path(html_name), csv = archive.path(csv_name);
  OverviewPage page(templates);
  const Digest key = key_of(archive, templates);
  const std::optional<KnownOverview>& known = archive.overview();
  if (known && known->key == key && os.stamp(html) == known->html && os.stamp(csv) == known->csv) {
    return;
  }
  write_html(os, archive, page, html);
  write_csv(os, archive, csv);
  os.flush_folder(folder_of(html));
  archive.remember({key, os.stamp(html).value_or(Stamp()), os.stamp(csv).value_or(Stamp())});
}

}  // namespace output
