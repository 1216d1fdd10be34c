#include <algorithm>
#include <charconv>
#include <memory>
#include <stdexcept>
#include <thread>
#include <utility>

#include "intake/text.h"
#include "output/archive_findings.h"
#include "output/batch.h"
#include "output/batch_pool.h"
#include "output/batch_printer.h"
#include "output/batch_recall.h"
#include "output/command.h"
#include "output/finding.h"
#include "output/overview.h"

namespace output {
namespace {

unsigned core_count(const Options& options) {
  constexpr unsigned most = 256;
  if (options.jobs != 0) return options.jobs;
  return std::clamp(std::thread::hardware_concurrency(), 1U, most);
}

/// Whether the catalogue that is to serve every request can be read: without it nothing is issued.
bool can_read_catalogue(Catalogues& catalogues, const Options& options) {
  if (!options.catalogue) return true;
  try {
    return catalogues.find("-") != nullptr;
  } catch (const OsError&) {
    return false;  // each request says so
  }
}

/// Every request with what is wrong; nothing is written.
Exit report_all(Os& os, const Options& options, const Walk& paths, JobMaker& maker) {
  Printer printer(os, options, std::nullopt);
  const Exit exit = for_each_job(
      os, paths, [&](SourceText text) { return maker.jobs(read_source(std::move(text))); },
      [&](const BatchJob& job, std::size_t) { printer.print(job.outcome); },
      [&](const Fault& fault) { printer.print_finding(fault.finding); });
  printer.finish();
  return worse(exit, printer.exit());
}

/// The log of a run in the folder of its issues.
std::string log_path(const Archive& archive) {
  return archive.path(archive.part() ? "run." + part_name(*archive.part()) + ".jsonl"
                                     : "run.jsonl");
}

/// A whole run closes with the lists over all issues; a part leaves them to `index`.
void finish(Os& os, Archive& archive, const Templates& templates, Printer& printer) {
  const Doubtful doubtful = archive.finish();
  for (const auto& finding : archive_findings(archive, doubtful, issue_doubtful)) {
    printer.print_finding(finding);
  }
  if (!archive.part()) write_overview(os, archive, templates);
  printer.finish();
  archive.save();
}

/// What the pool hands back.
struct Done {
  BatchJob job;
  Outcome outcome;
};

/// Every file below a folder by its path from there, two levels deep; what is hidden is passed
/// over.
void read_own(Os& os, const std::string& folder, const std::string& prefix, OwnTemplates& own) {
  for (const Entry& entry : os.list_folder(folder)) {
    if (entry.name.starts_with(".") || entry.name == "README.md") continue;
    const std::string path = join_path(folder, entry.name);
    if (entry.kind == EntryKind::file) {
      own.files.emplace(prefix + entry.name, os.read_file(path));
    } else if (prefix.empty()) {
      read_own(os, path, entry.name + "/", own);
    }
  }
}

OwnTemplates own_templates(Os& os, const Options& options) {
  OwnTemplates own;
  if (!options.templates) return own;
  own.folder = *options.templates;
  read_own(os, own.folder, "", own);
  return own;
}

Exit issue_all(Os& os, const Options& options, const Walk& paths, Catalogues& catalogues,
               JobMaker& maker, Archive& archive, const Templates& templates) {
  const Fonts fonts(read_cjk_face(os));
  const unsigned cores = core_count(options);
  std::vector<std::string> folders;
  if (options.previous) folders.push_back(*options.previous);
  folders.push_back(options.folder);
  const EarlierIssues earlier(os, folders);
  const Issuer issuer(os, archive, templates, fonts, options.force, cores, &earlier,
                      {options.summary, options.letters, options.frames.has_value()});
  Recall recall(os, archive, catalogues, maker,
                templates.own_digest() + (options.summary ? " summary" : "") +
                    (options.letters ? " letters" : ""));
  Printer printer(os, options, log_path(archive));
  std::string frames;
  // Threads that wait for the disk share its flushes, so there are more of them than cores.
  OrderedPool<Done> pool(6 * cores, std::size_t{12} * cores, [&](const Done& done) {
    recall.note(done.job, done.outcome);
    printer.print(done.outcome);
    frames += done.outcome.frames;
  });
  std::size_t taken = 0;
  const auto take = [&](BatchJob job, std::size_t sources_left) {
    printer.expect(++taken + sources_left);
    if (job.outcome.status != Status::skipped) {
      Outcome outcome = job.outcome;
      return pool.put({std::move(job), std::move(outcome)});
    }
    pool.submit([&issuer, job = std::move(job)]() mutable {
      Outcome outcome = issuer.issue_one(job);
      return Done{std::move(job), std::move(outcome)};
    });
  };
  const Exit exit = for_each_job(
      os, paths, [&](SourceText text) { return recall.jobs(std::move(text)); }, take,
      [&](const Fault& fault) { printer.print_finding(fault.finding); });
  pool.drain();
  finish(os, archive, templates, printer);
  if (options.frames) write_whole(os, *options.frames, frames);
  return worse(exit, printer.exit());
}

/// Whether a file can stand at a path: its folder is there, and it is no folder itself.
bool can_hold(Os& os, const std::string& path) {
  const std::string parent = folder_of(path);
  const std::optional<EntryKind> folder = parent == "." ? EntryKind::folder : os.look(parent);
  const bool is_folder = folder == EntryKind::folder || folder == EntryKind::linked_folder;
  const std::optional<EntryKind> there = os.look(path);
  return is_folder && there != EntryKind::folder && there != EntryKind::linked_folder;
}

/// The fault of one's own templates, "FILE:LINE: MESSAGE", with the place of the marker it names.
intake::Diagnostic template_finding(std::string_view fault, const OwnTemplates& own) {
  calc::Origin where;
  where.file = own.folder;
  const std::size_t message = fault.find(": ");
  const std::size_t colon = fault.substr(0, message).rfind(':');
  int line = 0;
  if (colon != std::string_view::npos) {
    std::from_chars(fault.data() + colon + 1, fault.data() + message, line);
  }
  if (line > 0) {
    where.file = fault.substr(0, colon);
    where.line = line;
    fault.remove_prefix(message + 2);
  }
  intake::Diagnostic finding =
      finding_at(faulty_templates, where, std::string(fault),
                 "compare with the shipped file of that name; templates/README.md says what one's "
                 "own may hold");
  for (const auto& [name, text] : own.files) {
    if (!where.file.ends_with("/" + name)) continue;
    intake::Diagnostics list{finding};
    add_source_lines(list, where.file, text);
    finding = list.front();
  }
  const std::size_t open = fault.find("{{");
  const std::size_t close = fault.find("}}", open == std::string_view::npos ? 0 : open);
  if (open == std::string_view::npos || close == std::string_view::npos) return finding;
  const std::string_view marker = fault.substr(open, close + 2 - open);
  const std::size_t at = finding.source_line.find(marker);
  if (at == std::string::npos) return finding;
  finding.column = intake::code_points(finding.source_line.substr(0, at)) + 1;
  finding.length = intake::code_points(marker);
  return finding;
}

/// The templates to issue with; none, which is told, when the user's own are faulty.
std::unique_ptr<const Templates> load_templates(Os& os, const Options& options) {
  const OwnTemplates own = own_templates(os, options);
  try {
    return std::make_unique<const Templates>(own);
  } catch (const std::runtime_error& fault) {
    if (!options.templates) throw;  // the shipped ones are the program's fault
    os.write_error(findings_text({template_finding(fault.what(), own)}, options.diagnostics));
    return nullptr;
  }
}

}  // namespace

Exit run_build(Os& os, const Options& options, const DatePolicy& dates) {
  const Walk paths = walk(os, options.paths, options.folder);
  Catalogues catalogues(os, options.catalogue, options.prices);
  JobMaker maker(catalogues, dates, options.part);
  if (paths.sources.empty() || !can_read_catalogue(catalogues, options)) {
    return report_all(os, options, paths, maker);
  }
  for (const auto& folder : {options.previous, options.templates}) {
    if (!folder || os.look(*folder) == EntryKind::folder) continue;
    const auto missing = file_finding(path_missing, *folder, "there is no such folder");
    os.write_error(findings_text({missing}, options.diagnostics));
    return Exit::no_input;
  }
  if (options.frames && !can_hold(os, *options.frames)) {
    const auto refused = file_finding(not_written, *options.frames, "no file can be written there",
                                      "name a file in a folder that exists with --dump-frames");
    os.write_error(findings_text({refused}, options.diagnostics));
    return Exit::cannot_create;
  }
  const std::unique_ptr<const Templates> templates = load_templates(os, options);
  if (!templates) return Exit::data;
  try {
    Archive archive(os, options.folder, options.part);
    return issue_all(os, options, paths, catalogues, maker, archive, *templates);
  } catch (const ArchiveBusy& busy) {
    os.write_error(program_message(busy.what()));
    return Exit::cannot_create;
  }
}

}  // namespace output
