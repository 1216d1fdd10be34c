/// The sections of the document by the names the style file orders them with.
#pragma once

#include <array>
#include <string_view>

namespace output {

/// In the order of the shipped style. `terms` must come after what it explains.
inline constexpr std::array<std::string_view, 27> section_names{
    "changes", "requirement", "conditions", "resolution",  "arrangement", "layout", "frequency",
    "dots",    "placement",   "jetting",    "drive",       "ink",         "stages", "services",
    "safety",  "parts",       "heads",      "flexibility", "uncertainty", "edges",  "questions",
    "checks",  "control",     "terms",      "trace",       "sources",     "record"};

}  // namespace output
