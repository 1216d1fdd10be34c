#include "output/raster.h"

#include <png.h>

#include <stdexcept>

namespace output {
namespace {

constexpr png_uint_32 longest_side = 4096;

/// Frees what libpng holds, however the reading ends.
class Image {
 public:
  Image() { image_.version = PNG_IMAGE_VERSION; }
  ~Image() { png_image_free(&image_); }
  Image(const Image&) = delete;
  Image& operator=(const Image&) = delete;
  Image(Image&&) = delete;
  Image& operator=(Image&&) = delete;

  png_image* get() { return &image_; }
  [[noreturn]] void fail() const {
    throw std::runtime_error(std::string("not a PNG picture: ") + &image_.message[0]);
  }

 private:
  png_image image_{};
};

}  // namespace

Raster read_png(std::string_view bytes) {
  Image image;
  if (png_image_begin_read_from_memory(image.get(), bytes.data(), bytes.size()) == 0) image.fail();
  const png_uint_32 width = image.get()->width;
  const png_uint_32 height = image.get()->height;
  if (width > longest_side || height > longest_side) {
    throw std::runtime_error("the picture is more than 4096 pixels wide or high");
  }
  image.get()->format = PNG_FORMAT_RGB;
  Raster raster{width, height, std::string(std::size_t{3} * width * height, '\0')};
  const png_color white{255, 255, 255};
  if (png_image_finish_read(image.get(), &white, raster.rgb.data(), 0, nullptr) == 0) image.fail();
  return raster;
}

}  // namespace output
