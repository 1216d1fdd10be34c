/// The region whose limits apply.
#pragma once

#include <string>

namespace calc {

/// `other`: another region, or none stated; then the strictest of what is known counts.
enum class Region { us, eu, other };

/// The region of its name in any case: "us", "usa", "united states", "eu", "european union".
Region region_named(std::string name);

}  // namespace calc
