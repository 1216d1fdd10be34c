#include "output/earlier.h"

#include <algorithm>

#include "output/digest.h"
#include "output/names.h"

namespace output {
namespace {

constexpr std::string_view extension = ".json";

std::optional<StemParts> parts_of(std::string_view name) {
  if (!name.ends_with(extension)) return std::nullopt;
  return split_stem(name.substr(0, name.size() - extension.size()));
}

}  // namespace

EarlierIssues::EarlierIssues(Os& os, const std::vector<std::string>& folders) : os_(os) {
  for (const std::string& folder : folders) {
    if (os.look(folder) != EntryKind::folder) continue;
    std::vector<std::string> names;
    for (Entry& entry : os.list_folder(folder)) {
      if (entry.kind == EntryKind::file && parts_of(entry.name)) {
        names.push_back(std::move(entry.name));
      }
    }
    std::sort(names.begin(), names.end());
    for (std::string& name : names) places_.push_back({folder, std::move(name)});
  }
}

const EarlierIssues::Place* EarlierIssues::find(std::string_view id,
                                                std::string_view revision) const {
  const std::string own_id = name_part(id);
  const std::string own_revision = name_part(revision.empty() ? "A" : revision);
  const Place* best = nullptr;
  std::optional<StemParts> best_parts;
  for (const Place& place : places_) {
    const std::optional<StemParts> parts = parts_of(place.name);
    if (parts->id != own_id || !revision_before(parts->revision, own_revision)) continue;
    const bool later = !best_parts || revision_before(best_parts->revision, parts->revision) ||
                       (best_parts->revision == parts->revision && best_parts->date < parts->date);
    if (!later) continue;
    best = &place;
    best_parts = parts;
  }
  return best;
}

std::optional<std::string> EarlierIssues::ahead(std::string_view folder, std::string_view id,
                                                std::string_view revision,
                                                std::string_view date) const {
  const std::string own_id = name_part(id);
  const std::string own_revision = name_part(revision.empty() ? "A" : revision);
  std::optional<StemParts> best;
  std::optional<std::string> stem;
  for (const Place& place : places_) {
    const std::optional<StemParts> parts = parts_of(place.name);
    if (place.folder != folder || parts->id != own_id) continue;
    const bool higher = revision_before(own_revision, parts->revision);
    if (!higher && !(date < parts->date)) continue;
    const bool later = !best || revision_before(best->revision, parts->revision) ||
                       (best->revision == parts->revision && best->date < parts->date);
    if (!later) continue;
    best = parts;
    stem = place.name.substr(0, place.name.size() - extension.size());
  }
  return stem;
}

std::optional<IssuedText> EarlierIssues::before(std::string_view id,
                                                std::string_view revision) const {
  const Place* const place = find(id, revision);
  if (place == nullptr) return std::nullopt;
  std::string json = os_.read_file(join_path(place->folder, place->name));
  std::string digest = sha256(json);
  return IssuedText{std::move(json), std::move(digest)};
}

}  // namespace output
