#include "calc/laydown.h"

#include "calc/compare.h"

namespace calc {

DotDensity dot_density(Resolution nozzle_axis, Resolution motion_axis) {
  return nozzle_axis * motion_axis;
}

Length laydown(Volume drop, Resolution nozzle_axis, Resolution motion_axis, int heads) {
  return heads * (drop * dot_density(nozzle_axis, motion_axis));
}

int heads_for_film(Length film, Length one_head) {
  return static_cast<int>(ceil_tolerant(film / one_head));
}

Length process_film(Length solid, double limit) { return limit * solid; }

Length dry_film(Length wet, double solids_share) { return solids_share * wet; }

AreaMass area_mass(Length wet, Density density) { return wet * density; }

VolumeFlow printed_flow(Length width, Speed speed, Length laydown, double cover) {
  return width * speed * laydown * cover;
}

VolumeFlow jetted_flow(double nozzles, Frequency per_nozzle, Volume drop) {
  return nozzles * per_nozzle * drop;
}

Volume printed_volume(Area area, Length laydown, double cover) { return area * laydown * cover; }

}  // namespace calc
