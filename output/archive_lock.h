/// Who may issue into a folder: one whole run, or any parts of one division.
#pragma once

#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "output/os.h"
#include "output/part.h"

namespace output {

inline constexpr std::string_view work_folder = ".swathspec";

/// Somebody else is issuing into the folder.
struct ArchiveBusy : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// The hold on a folder whose work folder is there: of the folder as a whole, or of a part, beside
/// which other parts of the same count may work, but neither a whole run nor parts of another
/// count. Held as long as the handles live. Throws ArchiveBusy, OsError.
std::vector<std::shared_ptr<void>> hold_archive(Os& os, const std::string& folder,
                                                std::optional<Part> part);

}  // namespace output
