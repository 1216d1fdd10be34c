/// What is known of one issue in the folder: its three files, their lines, their digests.
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

/// The endings of an issue's files, in the order of their names' bytes, which is also the order of
/// everything below that comes in threes.
inline constexpr std::array<std::string_view, 3> issue_endings{".bom.csv", ".json", ".pdf"};
enum IssueFile : std::size_t { bom_csv_file, json_file, pdf_file };
inline constexpr std::array<IssueFile, 3> issue_files{bom_csv_file, json_file, pdf_file};

/// The endings of what is made beside an issue on demand. Nothing lists it or rests on it.
inline constexpr std::string_view summary_ending = ".summary.pdf";
inline constexpr std::string_view letter_ending = ".letter.txt";

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
  std::array<KnownFile, 3> files;
  Digest content{};  ///< IssuedJson::content
  std::string row;   ///< IssuedJson::row
};

struct Shelf {
  std::array<bool, 3> there{};                    ///< something stands under the file's name
  std::array<std::optional<Digest>, 3> listed{};  ///< its line in SHA256SUMS
  std::optional<KnownIssue> known;
  bool checked = false;  ///< `known` was held against the files in this run

  bool is_whole() const { return there[0] && there[1] && there[2]; }
};

/// By stem.
using Shelves = std::map<std::string, Shelf, std::less<>>;

}  // namespace output
