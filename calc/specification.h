/// The specification: every figure and code of one document, the one source of PDF, CSV and JSON.
/// Members mirror the JSON keys of the public interface; absent = std::nullopt or empty.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "calc/budget.h"
#include "calc/catalogue.h"
#include "calc/money.h"
#include "calc/notice.h"
#include "calc/quantity.h"
#include "calc/request.h"
#include "calc/specification_group.h"
#include "calc/specification_station.h"
#include "calc/step.h"

namespace calc {

enum class Verdict { feasible, conditional, infeasible, incomplete };

struct Demand {
  std::string name;  ///< explicit, feature, text, bar_code, viewing, assumed
  bool hard = false;
  std::optional<Resolution> across, along;  ///< absent: no demand on that axis
};

struct Required {
  Resolution across, along;
  std::string governed_by;
  std::vector<Demand> demands;
  std::optional<Resolution> substrate_ceiling;  ///< finest the dots on this substrate can show
};

/// What else the station of one group could do, computed from the catalogue and the arrangement.
struct Flexibility {
  std::string group, head;
  std::optional<Speed> spare_speed;          ///< by which the line could run faster, by frequency
  std::optional<Length> spare_width;         ///< printed by the mounted heads beyond what is asked
  std::vector<std::string> families;         ///< ink families the head takes beside its own
  int free_colours = 0;                      ///< colour places of the mounted heads left over
  std::vector<std::string> interchangeable;  ///< other heads of the same body, board and swath
  double replace_hours = 0;                  ///< of one head, aligned
  std::optional<Money> replace_cost;         ///< with its labour; none where the head is unpriced
  std::optional<Serviceable> serviceable;
  std::optional<WaveformAccess> waveform;
  std::optional<int> driver_sources;
};

struct Alternative {
  std::vector<Group> groups;
  Station station;
  std::vector<std::string> differs;  ///< "head", "family", "stack", ...
  std::vector<Budget> placement;
  std::vector<Flexibility> flexibility;
  bool on_front = false;  ///< no other station compared betters it in everything
};

/// The best station at one line speed; no heads where none is feasible.
struct SpeedStep {
  Speed speed;
  int heads = 0;
  std::vector<std::string> kinds;  ///< head of each group
  Money capital, ownership;        ///< priced items only
  std::vector<std::string> rows;   ///< of the catalogue that it rests on, "head.H-1"
};

struct RejectedHead {
  std::string head;
  std::vector<Reason> reasons;
};

/// Heads of one group in an arrangement that is only named.
struct HeadsOf {
  std::string group, head, mode;
  Family family = Family::straight;
  int heads_total = 0;
};

/// The smallest change of one number of the request after which something fits.
struct NearestMiss {
  std::string field, unit;
  double from = 0, to = 0;  ///< in `unit`; `to` rounded to the side that fits
  double relative = 0;      ///< to over from, less 1
  std::vector<HeadsOf> arrangement;
};

/// passes: the chosen heads as they stand fit. recommended: they are also still the ones chosen.
enum class EdgeKind { passes, recommended };

/// How far one number of the request may move, all else as it is.
struct Edge {
  std::string quantity, unit;  ///< key of the request
  EdgeKind kind = EdgeKind::passes;
  bool up = true;
  double now = 0;               ///< in `unit`, as the next two
  std::optional<double> value;  ///< the last that fits; absent: fits as far as was looked
  std::optional<double> printed;
  std::string beyond;                ///< passes: the gate that fails there; product: its width ends
  std::vector<HeadsOf> arrangement;  ///< recommended: what is chosen there in place of what passes
};

struct Assumption {
  std::string field;
  double value = 0;
  std::string text;  ///< when it is no number
  std::string unit;
  std::optional<double> low, high;
  std::string effect;  ///< key of the figure it moves most, "cover_fraction", "capital" ...
  std::string source;  ///< "common practice, no source", or a standard
};

struct Question {
  std::string code;
  std::string field;
  std::optional<double> assumed, low, high;
  std::string unit;
  std::string effect;
  double weight = 0;  ///< how far the answer could move the result; ranks, not printed
  std::optional<double> up_to_degc = {};  ///< of q_viscosity_hot: greatest temperature of a head
  std::string parameter = {};  ///< key of the default that stands in for the answer, if one does
  /// Where nothing passes: heads that pass at an end of its range; empty where none do.
  std::vector<std::string> lets_pass = {};
};

/// A headline figure of the station (calc/headline.h), and how far it moves while one input alone
/// runs over its range and the chosen arrangement stays.
struct Uncertainty {
  std::string figure, unit;
  double value = 0, low = 0, high = 0;  ///< low, high: over every such input, each by itself
  std::string mover;  ///< key of the input that moves it furthest; empty: none moves it
  std::string mover_unit;
  double mover_low = 0, mover_high = 0;  ///< its range, in mover_unit
  /// The input that brings the figure to an end, and its value there.
  struct End {
    std::string field, unit;
    double at = 0;
  };
  std::optional<End> low_by = {},
                     high_by = {};  ///< absent: the figure stays at its value on that side
};

/// A check before commitment, with its acceptance figure from the calculation.
struct Check {
  std::string code;
  std::optional<double> acceptance;
  std::string unit;
  std::string subject;
  std::string axis = {};  ///< "across", "along" or "both" where it is of an axis, else empty
};

/// A scanning carriage at the speed that just serves the line, below the one it runs at.
struct CarriagePace {
  Speed speed;
  Time stroke_time;
  std::vector<Budget> placement;  ///< as Specification::placement, at this speed
};

struct Specification {
  std::string id, revision, date, title, language, catalogue_date;
  Verdict verdict = Verdict::incomplete;
  std::vector<Notice> conditions, warnings;
  std::vector<Input> inputs;  ///< given, derived, assumed and the catalogue values used
  std::optional<Required> required;
  std::vector<Group> chosen;  ///< empty when infeasible or incomplete
  int heads_total = 0;
  std::vector<InkInHead> inks;  ///< one a channel of the chosen groups
  std::optional<Station> station;
  std::vector<Budget> placement;  ///< of dots, joints, colours and image; empty without flights
  std::optional<CarriagePace> carriage_pace;
  std::vector<Flexibility> flexibility;       ///< one a group of the chosen arrangement
  std::optional<double> single_source_share;  ///< of the priced capital
  /// Part numbers without price that only one maker of the catalogue offers: in no share.
  std::vector<std::string> single_source_unpriced;
  std::vector<Alternative> alternatives;
  bool chosen_on_front = false;        ///< as Alternative::on_front
  std::vector<SpeedStep> speed_steps;  ///< rising; empty without a line speed, and for a carriage
  std::vector<RejectedHead> rejected;
  std::vector<Assumption> assumptions;
  std::vector<Question> questions;
  std::vector<Uncertainty> uncertainty;  ///< empty where nothing is chosen
  std::vector<Check> tests;
  std::vector<Notice> safety;
  std::vector<Step> trace;
  std::optional<NearestMiss> nearest_miss;    ///< only when infeasible, and one change helps
  std::vector<std::string> musts_in_the_way;  ///< when infeasible: without which it would fit
  std::vector<Edge> edges;                    ///< of the chosen arrangement
};

}  // namespace calc
