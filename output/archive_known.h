/// The work data of a folder of issues: what was seen of sources and issues, so that the next run
/// need not look again. It may be deleted at any time and never changes what a run puts out.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/specification.h"
#include "intake/diagnostic.h"
#include "output/archive_shelf.h"

namespace output {

/// One request of a source and the issue it led to.
struct KnownRequest {
  std::size_t index = 0;  ///< in its source, from 0
  std::string id, revision;
  std::optional<std::string> own_date;  ///< the request's own
  int line = 0, column = 0;             ///< where its id stands
  calc::Verdict verdict = calc::Verdict::incomplete;
  std::string issued_date;
  Digest content{};              ///< of that issue
  intake::Diagnostics findings;  ///< of reading
};

struct KnownSource {
  Digest key{};           ///< of everything that decides on the outcome (batch_recall.h)
  std::size_t total = 0;  ///< requests in it; of a part, more than stand below
  std::vector<KnownRequest> requests;
};

/// The pages over all issues as they were written last.
struct KnownOverview {
  Digest key{};
  KnownFile html, csv;
};

using KnownSources = std::map<std::string, KnownSource, std::less<>>;

/// Lines of the file of work data; empty for what cannot be noted to the byte.
std::string known_line(std::string_view stem, const KnownIssue& issue);
std::string known_line(std::string_view path, const KnownSource& source);
std::string known_line(const KnownOverview& overview);

/// Takes what a line says; a line it does not understand says nothing.
struct KnownReader {
  std::function<void(std::string stem, KnownIssue issue)> on_issue;
  std::function<void(std::string path, KnownSource source)> on_source;
  std::function<void(KnownOverview overview)> on_overview;
  void take(std::string_view line) const;
};

}  // namespace output
