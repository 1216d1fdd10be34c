/// Skips sources that nothing has touched since they were issued, without reading them.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "output/archive.h"
#include "output/batch.h"

namespace output {

struct SourceMemo {
  std::string path;
  std::string circumstances;  ///< what the key is made of beside the program
  KnownSource known;
  std::size_t left = 0;  ///< requests whose outcome is not in yet
  bool good = true;      ///< all so far are issued or unchanged
};

/// The first of two levels: equal bytes of source, catalogue and program, the same settings and
/// effective dates and the issued files intact make a request unchanged. All else is read,
/// calculated and compared (Archive::find). For one thread.
class Recall {
 public:
  /// `settings`: what else decides on the files, as text. All references must outlive it.
  Recall(Os& os, Archive& archive, Catalogues& catalogues, JobMaker& maker,
         std::string settings = {});

  /// The jobs of a source, read only when it must be.
  SourceJobs jobs(SourceText source);
  /// Takes note of a job's outcome; a source whose requests all went well is remembered.
  void note(const BatchJob& job, const Outcome& outcome);

 private:
  /// Everything but the program that decides on a source's files; nullopt without a catalogue.
  std::optional<std::string> circumstances_of(const SourceText& source);
  /// Nullopt when the program cannot read itself.
  std::optional<Digest> key_of(const std::string& circumstances);
  const std::optional<Digest>& program();
  void remember(SourceMemo& memo);
  bool stands(const KnownSource& known);
  SourceJobs recalled(SourceText source, const KnownSource& known);
  SourceJobs read(SourceText source, std::optional<std::string> circumstances);

  Os& os_;
  Archive& archive_;
  Catalogues& catalogues_;
  JobMaker& maker_;
  std::string settings_;
  bool program_read_ = false;
  std::optional<Digest> program_;
};

}  // namespace output
