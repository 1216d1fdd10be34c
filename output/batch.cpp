#include "output/batch.h"

#include <cerrno>
#include <exception>
#include <utility>

#include "output/finding.h"
#include "output/names.h"

namespace output {
namespace {

void fail(Outcome& outcome, intake::Diagnostic finding, Exit exit) {
  outcome.findings.push_back(std::move(finding));
  outcome.status = Status::failed;
  outcome.exit = worse(outcome.exit, exit);
}

std::string text_or(const calc::Given<std::string>& field, const char* fallback) {
  return field ? field->value : fallback;
}

std::string place_of(const calc::Origin& where) {
  return where.file + ":" + std::to_string(where.line) + ":" + std::to_string(where.column);
}

/// Where the identification stands, else the request.
const calc::Origin& id_place(const calc::Request& request) {
  return request.request.id ? request.request.id->origin : request.where;
}

void append(intake::Diagnostics& to, const intake::Diagnostics& more) {
  to.insert(to.end(), more.begin(), more.end());
}

/// Holds one of the cores as long as it lives.
class Permit {
 public:
  explicit Permit(std::counting_semaphore<>& cores) : cores_(cores) { cores_.acquire(); }
  ~Permit() { cores_.release(); }
  Permit(const Permit&) = delete;
  Permit& operator=(const Permit&) = delete;
  Permit(Permit&&) = delete;
  Permit& operator=(Permit&&) = delete;

 private:
  std::counting_semaphore<>& cores_;
};

}  // namespace

Exit exit_of(const OsError& error) {
  if (error.operation == "read" || error.operation == "list") {
    return error.code == ENOENT ? Exit::no_input : Exit::io;
  }
  switch (error.code) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
    case EIO:
    case EPIPE:
      return Exit::io;
    default:
      break;
  }
  return error.operation == "write" || error.operation == "flush" ? Exit::io : Exit::cannot_create;
}

JobHead head_of(const intake::ReadRequest& read) {
  const calc::RequestHead& said = read.request.request;
  JobHead head;
  head.id = text_or(said.id, "");
  head.revision = text_or(said.revision, "A");
  if (said.date) head.own_date = said.date->value;
  head.place = id_place(read.request);
  head.findings = read.findings;
  head.usable = read.usable;
  return head;
}

JobMaker::JobMaker(Catalogues& catalogues, DatePolicy dates, std::optional<Part> part)
    : catalogues_(catalogues), dates_(std::move(dates)), part_(part) {}

SourceJobs JobMaker::jobs(const std::shared_ptr<const ReadSource>& source) {
  SourceJobs made;
  made.is_catalogue = source->file.is_catalogue;
  if (made.is_catalogue) return made;
  made.has_requests = !source->file.requests.empty();
  for (std::size_t i = 0; i < source->file.requests.size(); ++i) {
    JobHead head = head_of(source->file.requests[i]);
    if (takes(head.id)) made.jobs.push_back(make(source, i, std::move(head)));
  }
  return made;
}

BatchJob JobMaker::make(const std::shared_ptr<const ReadSource>& source, std::size_t index,
                        JobHead head) {
  BatchJob job{source, index, nullptr, date_for(head.own_date), {}, nullptr};
  Outcome& outcome = job.outcome;
  outcome.file = source->shown;
  outcome.index = static_cast<int>(index) + 1;
  outcome.id = std::move(head.id);
  outcome.revision = std::move(head.revision);
  outcome.findings = std::move(head.findings);
  outcome.date = job.date.date;
  if (!outcome.id.empty()) outcome.stem = stem_of(outcome.id, outcome.revision, outcome.date);
  if (head.usable) {
    claim_stem(job, std::move(head.place));
    add_catalogue(job);
  } else {
    outcome.status = Status::failed;
    outcome.exit = Exit::data;
  }
  return job;
}

void JobMaker::claim_stem(BatchJob& job, calc::Origin here) {
  const auto [claim, fresh] = claims_.try_emplace(lower_ascii(job.outcome.stem), here);
  if (fresh) return;
  intake::Diagnostic finding =
      finding_at(stem_taken, here,
                 "the name " + job.outcome.stem + " is taken in this run by the request at " +
                     place_of(claim->second),
                 "give one of the two another id or revision");
  finding.field = "request.id";
  fail(job.outcome, std::move(finding), Exit::data);
}

void JobMaker::add_catalogue(BatchJob& job) {
  Outcome& outcome = job.outcome;
  try {
    job.catalogue = catalogues_.find(job.source->path);
  } catch (const OsError& error) {
    return fail(outcome, file_finding(no_catalogue, error.path, error.what()), exit_of(error));
  }
  if (!job.catalogue) {
    return fail(outcome,
                file_finding(no_catalogue, outcome.file, "there is no catalogue for this request",
                             "put a catalogue.xml beside it or one folder up, or name one with -c"),
                Exit::no_input);
  }
  const intake::ReadCatalogue& read = job.catalogue->read;
  outcome.catalogue = job.catalogue->path;
  outcome.catalogue_sha256 = read.catalogue.source_sha256;
  if (told_.insert(job.catalogue->path).second) append(outcome.findings, read.findings);
  if (read.usable) return;
  const LoadedCatalogue& used = *job.catalogue;
  const std::string list = "swathspec heads -c " + used.path;
  fail(outcome,
       used.usable
           ? file_finding(faulty_catalogue, outcome.file,
                          "the price list " + used.prices + " has errors",
                          list + " --prices " + used.prices + " lists them")
           : file_finding(faulty_catalogue, outcome.file,
                          "the catalogue " + used.path + " has errors", list + " lists them"),
       Exit::data);
}

void BatchJob::show_lines(intake::Diagnostics& findings) const {
  add_source_lines(findings, source->shown, source->text);
  if (!catalogue) return;
  add_source_lines(findings, catalogue->path, catalogue->text);
  add_source_lines(findings, catalogue->prices, catalogue->prices_text);
}

Issuer::Issuer(Os& os, Archive& archive, const Templates& templates, const Fonts& fonts, bool force,
               unsigned cores, const EarlierIssues* earlier, Extras extras)
    : os_(os),
      archive_(archive),
      templates_(templates),
      fonts_(fonts),
      force_(force),
      earlier_(earlier),
      extras_(extras),
      cores_(static_cast<std::ptrdiff_t>(cores)) {}

Outcome Issuer::issue_one(const BatchJob& job) const {
  Outcome outcome = job.outcome;
  if (outcome.status != Status::skipped || os_.interrupted()) return outcome;
  const double begin = os_.stopwatch();
  try {
    issue_into(outcome, job);
  } catch (const OsError& error) {
    fail(outcome, file_finding(not_written, outcome.file, error.what()), exit_of(error));
  } catch (const std::exception& error) {
    fail(outcome,
         finding_at(program_fault, job.request().request.where,
                    std::string("a fault of the program: ") + error.what(),
                    "please report it with this request and its catalogue"),
         Exit::software);
  }
  job.show_lines(outcome.findings);
  outcome.seconds = os_.stopwatch() - begin;
  return outcome;
}

bool Issuer::keeps_earlier_date(Outcome& outcome, const BatchJob& job,
                                const Environment& environment) const {
  if (job.date.fixed) return false;
  const auto earlier = archive_.latest_date(outcome.id, outcome.revision);
  if (!earlier || *earlier == outcome.date) return false;
  const std::string stem = stem_of(outcome.id, outcome.revision, *earlier);
  const calc::Specification then = specify(job.request(), environment, *earlier);
  if (archive_.find(stem, [&] { return content_of(then, templates_.own_digest()); }) !=
      Archive::Found::same)
    return false;
  outcome.date = *earlier;
  outcome.stem = stem;
  outcome.verdict = then.verdict;
  outcome.status = Status::unchanged;
  add_extras(outcome, then, job, environment);
  return true;
}

std::optional<Issued> Issuer::make(Outcome& outcome, const BatchJob& job, bool& supersedes) const {
  const Permit permit(cores_);
  const Environment environment{job.catalogue->read.catalogue,
                                templates_,
                                fonts_,
                                job.source->name,
                                extras_.summary,
                                extras_.letters,
                                extras_.frames};
  if (keeps_earlier_date(outcome, job, environment)) return std::nullopt;
  calc::Specification specification = specify(job.request(), environment, outcome.date);
  outcome.verdict = specification.verdict;
  const Archive::Found found = archive_.find(
      outcome.stem, [&] { return content_of(specification, templates_.own_digest()); });
  if (found == Archive::Found::same) {
    outcome.status = Status::unchanged;
    add_extras(outcome, specification, job, environment);
    return std::nullopt;
  }
  supersedes = found == Archive::Found::other;
  if (supersedes && !force_) {
    refuse(outcome, job);
    return std::nullopt;
  }
  return render(std::move(specification), job.request(), environment, replaced(outcome));
}

/// The issue this one replaces; one that cannot be read as ours is told and left out.
std::optional<IssuedText> Issuer::replaced(Outcome& outcome) const {
  if (earlier_ == nullptr) return std::nullopt;
  std::optional<IssuedText> found = earlier_->before(outcome.id, outcome.revision);
  if (!found || read_record(found->json)) return found;
  outcome.findings.push_back(
      file_finding(damaged_issue, outcome.file,
                   "the data file of the issue before is damaged; no changes are listed",
                   "swathspec reads only JSON it wrote itself"));
  return std::nullopt;
}

void Issuer::add_extras(Outcome& outcome, const calc::Specification& specification,
                        const BatchJob& job, const Environment& environment) const {
  const auto lacks = [&](IssueFile extra) {
    return !os_.look(archive_.path(issue_file_name(outcome.stem, extra)));
  };
  const bool wants_summary = extras_.summary && lacks(summary_file);
  const bool wants_letter = extras_.letters && lacks(letter_file);
  if (!wants_summary && !wants_letter) return;
  const Matter matter = matter_of(specification, job.request(), replaced(outcome));
  if (wants_summary) {
    archive_.add(outcome.stem, summary_file,
                 render_summary(specification, job.request(), environment, matter));
  }
  const std::string text =
      wants_letter ? letter_of(specification, job.request(), environment, matter) : std::string();
  if (!text.empty()) archive_.add(outcome.stem, letter_file, text);
}

void Issuer::issue_into(Outcome& outcome, const BatchJob& job) const {
  bool supersedes = false;
  const std::optional<Issued> issued = make(outcome, job, supersedes);
  if (!issued) return;
  append(outcome.findings, issued->findings);
  outcome.frames = issued->frames;
  tell_order(outcome, job);
  if (supersedes) archive_.supersede(issued->stem);
  archive_.store(*issued);
  outcome.status = Status::issued;
}

void Issuer::tell_order(Outcome& outcome, const BatchJob& job) const {
  if (earlier_ == nullptr) return;
  const auto ahead = earlier_->ahead(archive_.folder(), outcome.id, outcome.revision, outcome.date);
  if (!ahead) return;
  const bool revision = revision_before(outcome.revision, split_stem(*ahead).value().revision);
  outcome.findings.push_back(finding_at(
      goes_back, id_place(job.request().request),
      outcome.stem + " is issued after " + *ahead +
          (revision ? ", a higher revision" : ", a later date"),
      "raise the revision and the date above what went out where this issue is to replace it"));
  outcome.findings.back().field = revision ? "request.revision" : "request.date";
}

void Issuer::refuse(Outcome& outcome, const BatchJob& job) const {
  const auto next = archive_.free_revision(outcome.id, outcome.revision);
  intake::Diagnostic finding =
      finding_at(issue_refused, id_place(job.request().request),
                 outcome.stem + " was issued before with another content",
                 next ? "set revision = " + *next + ", or use --force to supersede what went out"
                      : "use another id, or --force to supersede what went out");
  finding.field = "request.revision";
  fail(outcome, std::move(finding), Exit::cannot_create);
  outcome.status = Status::refused;
}

}  // namespace output
