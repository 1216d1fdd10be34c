/// The terms of the budgets of placement, one function a cause of error. Internal to
/// placement*.cpp.
#pragma once

#include "calc/placement.h"

namespace calc {

/// Pitch of the dots [m] along the nozzle rows, and along the motion while jetting.
Length nozzle_pitch(const Group& group);
Length motion_pitch(const Group& group);

/// Heads of a colour position that stand one after the other along the motion [1].
int rows_of_colour(const Group& group);
/// From one row of heads to the next [m], along the surface of a body that turns under them.
Length row_step(const Group& group);
/// Under all rows of a group [m], measured like row_step().
Length way_under(const Group& group);
/// From nozzle to nozzle along the motion [m] where heads of one colour meet, the worst of its
/// joints: the rows they stand in, less or more what the tilt puts the two ends of a joint apart.
/// With P from head to head and nozzles that print at one place of the line that is P tan t,
/// wherever in the overlap they meet.
Length joint_apart(const Group& group);
/// What a lag that all drops share counts between strokes: twice to and fro, for what is late one
/// way is early the other.
double to_and_fro(const Group& group);
/// Whether heads join in one colour; on a carriage its strokes do.
bool has_joints(const Group& group);

/// A tolerance in its own unit, with the key that says it.
struct Tolerance {
  double value = 0;
  std::string_view field;
};

/// Makes the terms of one station. Groups have flights.
class PlacementTerms {
 public:
  PlacementTerms(const Job& job, Assumed assumed) : job_(job), assumed_(assumed) {}

  BudgetTerm straightness(const Group& group) const;
  /// A drop's own deviation: going to and fro turns its sign, and so never doubles it.
  BudgetTerm drop_speed(const Group& group) const;
  /// `ways` as of to_and_fro() between strokes, 1 against the product, off which a stroke is once.
  BudgetTerm gap(const Group& group, double ways) const;
  /// The product's own variation of thickness. It is one and the same to all heads that pass a
  /// place, so it parts only what is printed to and fro, and the image from the product. At the
  /// kind end it is none, for the throw may be set anew for every product; that this be done is a
  /// condition of its own (`throw_anew`).
  BudgetTerm thickness(const Group& group, double ways) const;
  /// Whether the thickness is known to vary.
  static bool is_uneven(const Group& group);
  /// Of the line's own encoder where the request says its count; a carriage has another.
  BudgetTerm count(const Group& group) const;
  /// The trigger is timed to the middle of smallest and largest drop, to and fro: each is off by
  /// half either way.
  BudgetTerm levels(const Group& group) const;
  static BudgetTerm sag(const Group& group);
  /// Nozzles of a tilted head that its rows' places put off the pitch.
  static BudgetTerm uneven(const Group& group);
  BudgetTerm mount() const;
  BudgetTerm wheel(Length distance) const;
  BudgetTerm thermal(Length distance) const;
  /// The product wanders A sin: between two rows 2 A sin(pi L / wavelength), from half a wavelength
  /// on the whole 2 A.
  BudgetTerm weave(Length distance) const;
  BudgetTerm whole_weave() const;
  BudgetTerm sensor() const;
  /// From the product sensor to the first head [m].
  Length sensor_distance() const;

 private:
  double of(P id) const;
  Tolerance amplitude() const;
  Speed speed(const Group& group) const;
  BudgetTerm late(std::string_view name, const Tolerance& by, std::string_view unit, Time delay,
                  double share, const Group& group, double ways = 1) const;

  const Job& job_;
  Assumed assumed_;
};

}  // namespace calc
