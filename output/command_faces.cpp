#include <array>

#include "output/command.h"

namespace output {
namespace {

/// Faces for Han and kana, in order of preference, where the usual packages put them.
constexpr std::array<const char*, 3> cjk_faces{
    "/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf",
    "/usr/share/fonts/truetype/droid/DroidSansFallback.ttf",
    "/usr/share/fonts/opentype/ipafont-gothic/ipag.ttf"};

}  // namespace

std::string read_cjk_face(Os& os) {
  for (const char* path : cjk_faces) {
    if (os.look(path) == EntryKind::file) return os.read_file(path);
  }
  return {};
}

}  // namespace output
