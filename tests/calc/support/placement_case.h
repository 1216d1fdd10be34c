// A station whose budgets of placement are looked at, and what is found there.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "calc/calculate.h"
#include "calc/placement.h"
#include "tests/calc/support/catalogue_maker.h"

namespace placed {

using namespace calc;
using made::given;

/// A station of one colour in staggered heads; a second colour if asked.
struct Made {
  Request request = made::plain_request();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});

  Made() {
    catalogue.heads.front().drop_speed = given(metres_per_second(6));
    catalogue.heads.front().drop_speed_at = given(SpeedPoint::nozzle);
    request.image.levels = given(4);  // so that smallest and largest drop are both in use
    request.line.mount_tolerance.reset();
    request.line.wheel_error.reset();
  }
  void second_colour() {
    request.colours.push_back(request.colours.front());
    request.colours.back().name = "cyan";
    request.inks.push_back(request.inks.front());
    request.inks.back().name = "cyan";
  }
  Specification specify() const { return calculate(request, catalogue, "2026-11-25"); }
};

const Budget* find(const Specification& spec, std::string_view name, bool motion);
const BudgetTerm& term(const Budget& budget, std::string_view name);
double shift_um(const Specification& spec, std::string_view budget, bool motion,
                std::string_view name);
bool says(const std::vector<Notice>& list, const std::string& code);
bool rejects(const Specification& spec, const std::string& code, const std::string& subject);

}  // namespace placed
