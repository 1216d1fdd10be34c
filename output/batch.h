/// From sources to outcomes: what each request is issued with, and its issue.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <semaphore>
#include <set>
#include <string>
#include <vector>

#include "output/archive.h"
#include "output/batch_catalogue.h"
#include "output/batch_outcome.h"
#include "output/batch_read.h"
#include "output/date.h"
#include "output/earlier.h"
#include "output/fonts.h"
#include "output/part.h"
#include "output/templates.h"

namespace output {

/// What a run learns of one source, for the next (batch_recall.h).
struct SourceMemo;

/// One request with everything its issue needs. `outcome` has its head filled in; when its status
/// is failed or unchanged, there is nothing more to do.
struct BatchJob {
  std::shared_ptr<const ReadSource> source;
  std::size_t index = 0;  ///< of the request in its file, from 0
  std::shared_ptr<const LoadedCatalogue> catalogue;
  IssueDate date;
  Outcome outcome;
  std::shared_ptr<SourceMemo> memo;

  /// Fills in the source lines of findings about the request's or its catalogue's file.
  void show_lines(intake::Diagnostics& findings) const;
  /// Not of a job that is unchanged from the start: its source was not read.
  const intake::ReadRequest& request() const { return source->file.requests.at(index); }
};

/// The jobs of a source; a part takes only its own, so that there may be requests and no job.
struct SourceJobs {
  bool has_requests = false, is_catalogue = false;
  std::vector<BatchJob> jobs;
};

/// What a job is made of, whether just read or known from an earlier run.
struct JobHead {
  std::string id, revision;
  std::optional<std::string> own_date;
  calc::Origin place;  ///< of the id, else of the request
  intake::Diagnostics findings;
  bool usable = false;
};
JobHead head_of(const intake::ReadRequest& read);

/// Turns read sources into jobs, in input order.
class JobMaker {
 public:
  JobMaker(Catalogues& catalogues, DatePolicy dates, std::optional<Part> part = std::nullopt);

  /// A job for each request of the source; none for a catalogue. Faults of the request, of its
  /// catalogue (told once) and of a name taken before make the outcome failed.
  SourceJobs jobs(const std::shared_ptr<const ReadSource>& source);
  BatchJob make(const std::shared_ptr<const ReadSource>& source, std::size_t index, JobHead head);
  bool takes(std::string_view id) const { return !part_ || is_in(*part_, id); }
  IssueDate date_for(const std::optional<std::string>& own_date) const {
    return choose_date(dates_, own_date);
  }

 private:
  void add_catalogue(BatchJob& job);
  void claim_stem(BatchJob& job, calc::Origin here);

  Catalogues& catalogues_;
  DatePolicy dates_;
  std::optional<Part> part_;
  std::set<std::string> told_;                  ///< catalogues whose findings went out
  std::map<std::string, calc::Origin> claims_;  ///< stems in lower case, by whom
};

/// What is made beside the three files.
struct Extras {
  bool summary = false, letters = false, frames = false;
};

/// Issues jobs into an archive; any number of threads at the same time.
class Issuer {
 public:
  /// At most `cores` documents are calculated and laid out at the same time; threads beyond that
  /// wait for the disk. `earlier`: where the issues replaced are looked for. All references must
  /// outlive the issuer.
  Issuer(Os& os, Archive& archive, const Templates& templates, const Fonts& fonts, bool force,
         unsigned cores, const EarlierIssues* earlier = nullptr, Extras extras = {});

  /// The outcome with its status, verdict and findings. Never throws: faults of the system and of
  /// the program become the outcome's.
  Outcome issue_one(const BatchJob& job) const;

 private:
  void issue_into(Outcome& outcome, const BatchJob& job) const;
  /// The files to store; nothing when unchanged or refused, which the outcome then says.
  std::optional<Issued> make(Outcome& outcome, const BatchJob& job, bool& supersedes) const;
  bool keeps_earlier_date(Outcome& outcome, const BatchJob& job,
                          const Environment& environment) const;
  std::optional<IssuedText> replaced(Outcome& outcome) const;
  /// Makes summary and letter of an issue that stands, where they are asked for and not there.
  void add_extras(Outcome& outcome, const calc::Specification& specification, const BatchJob& job,
                  const Environment& environment) const;
  void refuse(Outcome& outcome, const BatchJob& job) const;
  /// Warns of an issue that goes back behind one that went out before this run.
  void tell_order(Outcome& outcome, const BatchJob& job) const;

  Os& os_;
  Archive& archive_;
  const Templates& templates_;
  const Fonts& fonts_;
  bool force_;
  const EarlierIssues* earlier_;
  Extras extras_;
  mutable std::counting_semaphore<> cores_;
};

/// The exit status a failed call asks for.
Exit exit_of(const OsError& error);

}  // namespace output
