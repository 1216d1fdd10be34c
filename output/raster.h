/// A picture as rows of RGB bytes.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace output {

struct Raster {
  std::uint32_t width = 0, height = 0;  ///< [pixels]
  std::string rgb;                      ///< 3 bytes a pixel, row by row from the top
};

/// The picture of a PNG file, what is transparent laid on white; at most 4096 pixels a side. Throws
/// std::runtime_error saying what is wrong with it.
Raster read_png(std::string_view bytes);

}  // namespace output
