/// Materials known by their names, in English and German; common names, no source.
#pragma once

#include <string>

namespace calc {

/// Plastics, which charge as they move.
bool names_plastic(const std::string& material);
/// Paper, board and what is made of them.
bool names_paper(const std::string& material);
/// Cork, wood and pulp, whose dust may explode; not paper that is only free of wood.
bool names_dusty(const std::string& material);
/// Nitrocellulose, which is highly flammable.
bool names_nitrocellulose(const std::string& material);

}  // namespace calc
