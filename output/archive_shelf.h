/// What is known of one issue in the folder: its files, their lines, their digests.
#pragma once

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "output/digest.h"
#include "output/os.h"

namespace output {

/// The endings of what goes out under a stem, in the order of their names' bytes, which is also the
/// order of everything below that there is one of a file.
inline constexpr std::array<std::string_view, 5> issue_endings{".bom.csv", ".json", ".letter.txt",
                                                               ".pdf", ".summary.pdf"};
enum IssueFile : std::size_t { bom_csv_file, json_file, letter_file, pdf_file, summary_file };
inline constexpr std::array<IssueFile, 5> issue_files{bom_csv_file, json_file, letter_file,
                                                      pdf_file, summary_file};
/// The three that make an issue, and what is made beside it on demand: it is listed, but whether
/// the issue stands does not rest on it.
inline constexpr std::array<IssueFile, 3> base_files{bom_csv_file, json_file, pdf_file};
inline constexpr std::array<IssueFile, 2> extra_files{letter_file, summary_file};

/// Which file of which issue a name means; nullopt for a name that is none of ours.
struct IssueFileName {
  std::string_view stem;
  IssueFile file;
};
std::optional<IssueFileName> issue_file_of(std::string_view name);
std::string issue_file_name(std::string_view stem, IssueFile file);

struct KnownFile {
  Digest digest{};
  Stamp stamp;
};

/// An issue whose files were seen to be those its JSON speaks of.
struct KnownIssue {
  std::array<std::optional<KnownFile>, 5> files;  ///< the base files, and the extras that there are
  Digest content{};                               ///< IssuedJson::content
  std::string row;                                ///< IssuedJson::row
};

struct Shelf {
  std::array<bool, 5> there{};                    ///< something stands under the file's name
  std::array<std::optional<Digest>, 5> listed{};  ///< its line in SHA256SUMS
  std::optional<KnownIssue> known;
  bool checked = false;  ///< `known` was held against the files in this run

  bool is_whole() const { return there[bom_csv_file] && there[json_file] && there[pdf_file]; }
};

/// By stem.
using Shelves = std::map<std::string, Shelf, std::less<>>;

}  // namespace output
