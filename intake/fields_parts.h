/// Sections of a request whose rows stand in a file of their own; internal to fields*.cpp.
#pragma once

#include "intake/table.h"

namespace intake {

Table<calc::Line> line();        ///< fields_line.cpp
Table<calc::Service> service();  ///< fields_terms.cpp
Table<calc::Limits> limits();    ///< fields_terms.cpp
Table<calc::Costs> costs();      ///< fields_terms.cpp

}  // namespace intake
