/// The least a head can come to for a group, told without trying how it may stand: a head whose
/// least already comes after a station that passes need not be tried. Internal to selection*.cpp.
#pragma once

#include <optional>

#include "calc/floor.h"

namespace calc {

/// No arrangement of the head that is accepted lies below any of these.
struct Least {
  int heads = 1;
  Length footprint;  ///< zero where only an arrangement tells
  Floor floor;
};
/// Takes over what is less in `to`.
void lower(const Least& to, std::optional<Least>& least);
/// Of a head that takes the group's inks, in one way of motion. None: no arrangement is accepted.
std::optional<Least> least_of(const Search& search, const GroupNeed& need, std::size_t head,
                              bool scanning);

}  // namespace calc
