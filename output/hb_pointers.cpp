#include "output/hb_pointers.h"

namespace output {

FacePointer open_face(std::string_view file) {
  const BlobPointer blob(hb_blob_create(file.data(), static_cast<unsigned>(file.size()),
                                        HB_MEMORY_MODE_READONLY, nullptr, nullptr));
  return FacePointer(hb_face_create(blob.get(), 0));
}

int per_mille(std::int64_t units, std::int64_t per_em) {
  const std::int64_t half = units < 0 ? -per_em / 2 : per_em / 2;
  return static_cast<int>((units * 1000 + half) / per_em);
}

}  // namespace output
