#include "output/batch_recall.h"

#include <algorithm>
#include <utility>

#include "output/names.h"
#include "output/version.h"

namespace output {
namespace {

/// The program's own file: its bytes stand for calculation, templates and text faces at once.
constexpr const char* program_file = "/proc/self/exe";

KnownRequest known_request(const JobHead& head) {
  KnownRequest known;
  known.id = head.id;
  known.revision = head.revision;
  known.own_date = head.own_date;
  known.line = head.place.line;
  known.column = head.place.column;
  known.findings = head.findings;
  return known;
}

JobHead head_of(const KnownRequest& known, const std::string& file) {
  JobHead head{known.id, known.revision, known.own_date, {}, known.findings, true};
  head.place.file = file;
  head.place.line = known.line;
  head.place.column = known.column;
  return head;
}

}  // namespace

Recall::Recall(Os& os, Archive& archive, Catalogues& catalogues, JobMaker& maker,
               std::string settings)
    : os_(os),
      archive_(archive),
      catalogues_(catalogues),
      maker_(maker),
      settings_(std::move(settings)) {}

const std::optional<Digest>& Recall::program() {
  if (program_read_) return program_;
  program_read_ = true;
  try {
    Hasher hasher;
    os_.read_pieces(program_file, [&](std::string_view piece) { hasher.add(piece); });
    hasher.add(version);
    program_ = hasher.finish();
  } catch (const OsError&) {
    program_.reset();  // a program that cannot tell itself from another remembers nothing
  }
  return program_;
}

std::optional<std::string> Recall::circumstances_of(const SourceText& source) try {
  const std::shared_ptr<const LoadedCatalogue> catalogue = catalogues_.find(source.path);
  if (!catalogue) return std::nullopt;
  return hex(source.digest) + catalogue->read.catalogue.source_sha256 + source.shown + "\n" +
         source.name + "\n" + catalogue->path + "\n" + settings_;
} catch (const OsError&) {
  return std::nullopt;  // the job itself will say so
}

/// Asked only for a source that is known or has been issued: reading the program takes as long as
/// half a document, and the first one need not wait for it.
std::optional<Digest> Recall::key_of(const std::string& circumstances) {
  if (!program()) return std::nullopt;
  return digest_of(hex(*program()) + circumstances);
}

SourceJobs Recall::jobs(SourceText source) {
  std::optional<std::string> circumstances = circumstances_of(source);
  const KnownSource* known = circumstances ? archive_.source(source.path) : nullptr;
  if (known != nullptr && key_of(*circumstances) == known->key && stands(*known)) {
    return recalled(std::move(source), *known);
  }
  return read(std::move(source), std::move(circumstances));
}

bool Recall::stands(const KnownSource& known) {
  return std::all_of(known.requests.begin(), known.requests.end(),
                     [&](const KnownRequest& request) {
                       if (!maker_.takes(request.id)) return true;
                       const IssueDate date = maker_.date_for(request.own_date);
                       const auto earlier = archive_.latest_date(request.id, request.revision);
                       const std::string& effective = !date.fixed && earlier ? *earlier : date.date;
                       if (effective != request.issued_date) return false;
                       const std::string stem = stem_of(request.id, request.revision, effective);
                       return archive_.remembered(stem) == request.content;
                     });
}

SourceJobs Recall::recalled(SourceText source, const KnownSource& known) {
  const std::shared_ptr<const ReadSource> unread = unread_source(std::move(source));
  SourceJobs made;
  made.has_requests = known.total != 0;
  for (const KnownRequest& request : known.requests) {
    if (!maker_.takes(request.id)) continue;
    made.jobs.push_back(maker_.make(unread, request.index, head_of(request, unread->shown)));
    Outcome& outcome = made.jobs.back().outcome;
    if (outcome.status == Status::failed) continue;
    outcome.status = Status::unchanged;
    outcome.date = request.issued_date;
    outcome.stem = stem_of(request.id, request.revision, request.issued_date);
    outcome.verdict = request.verdict;
  }
  return made;
}

SourceJobs Recall::read(SourceText source, std::optional<std::string> circumstances) {
  const std::shared_ptr<const ReadSource> read = read_source(std::move(source));
  SourceJobs made = maker_.jobs(read);
  if (!circumstances || read->file.is_catalogue) return made;
  auto memo = std::make_shared<SourceMemo>();
  memo->path = read->path;
  memo->circumstances = std::move(*circumstances);
  memo->known.total = read->file.requests.size();
  memo->left = made.jobs.size();
  for (BatchJob& job : made.jobs) {
    memo->known.requests.push_back(known_request(head_of(job.request())));
    memo->known.requests.back().index = job.index;
    job.memo = memo;
  }
  if (made.jobs.empty()) remember(*memo);
  return made;
}

void Recall::remember(SourceMemo& memo) {
  const std::optional<Digest> key = key_of(memo.circumstances);
  if (!key) return;
  memo.known.key = *key;
  archive_.remember(memo.path, std::move(memo.known));
}

void Recall::note(const BatchJob& job, const Outcome& outcome) {
  if (!job.memo) return;
  SourceMemo& memo = *job.memo;
  const bool stands = outcome.status == Status::issued || outcome.status == Status::unchanged;
  const std::optional<Digest> content = stands ? archive_.remembered(outcome.stem) : std::nullopt;
  const auto found = std::lower_bound(
      memo.known.requests.begin(), memo.known.requests.end(), job.index,
      [](const KnownRequest& request, std::size_t index) { return request.index < index; });
  if (content && outcome.verdict) {
    found->verdict = *outcome.verdict;
    found->issued_date = outcome.date;
    found->content = *content;
  } else {
    memo.good = false;
  }
  if (--memo.left == 0 && memo.good) remember(memo);
}

}  // namespace output
