/// Owners of HarfBuzz's objects; each kind has a destroy function of its own.
#pragma once

#include <hb.h>

#include <cstdint>
#include <memory>
#include <string_view>

namespace output {

template <auto destroy>
struct Destroy {
  template <class T>
  void operator()(T* object) const {
    destroy(object);
  }
};
using BlobPointer = std::unique_ptr<hb_blob_t, Destroy<hb_blob_destroy>>;
using FacePointer = std::unique_ptr<hb_face_t, Destroy<hb_face_destroy>>;
using FontPointer = std::unique_ptr<hb_font_t, Destroy<hb_font_destroy>>;
using SetPointer = std::unique_ptr<hb_set_t, Destroy<hb_set_destroy>>;

/// The face of a font file, whose bytes are not copied.
FacePointer open_face(std::string_view file);

/// Font units as thousandths of an em, to the nearest.
int per_mille(std::int64_t units, std::int64_t per_em);

}  // namespace output
