/// The catalogue as it was read. The table intake/catalogue_fields.cpp maps keys to members.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "calc/request.h"

namespace calc {

enum class Serviceable { user, parts, returned, none };
enum class WaveformAccess { own, limited, maker };
enum class GreyMethod { amplitude, subdrops };
enum class SpeedPoint { nozzle, one_mm };  ///< where the drop speed was measured
enum class Provenance { measured, data_sheet, mail, assumed };
/// What a quantity of a part follows: one a station, a head, a row of heads, a channel, a supply.
enum class Per { station, head, row, channel, supply };
enum class PartKind {
  cable,
  mount,
  heater,
  chiller,
  degasser,
  filter,
  flush,
  cap,
  wipe,
  spittoon,
  strike_sensor,
  pretreatment,
  exhaust,
  ventilation,
  encoder,
  product_sensor,
  controller,
  alignment,
  commissioning,
  training
};

/// What every row of the catalogue has.
struct Row {
  std::string element;  ///< "head", "board", "supply", "lamp", "dryer", "part"
  std::string name;     ///< unique within its element
  Origin where;
  Given<std::string> maker, part_number, designation, price_date;
  Given<Price> price;  ///< absent = on request
  Given<Time> lead_time;
  Given<Provenance> provenance;
  std::vector<Input> inputs;  ///< every field given, key "head.NAME.field"
};

/// One way of driving a head: which rows print which colour, at which levels and rates.
struct HeadMode {
  std::string name;
  Origin where;
  Given<int> colours;           ///< colours the head prints in this mode
  Given<Resolution> row_pitch;  ///< nozzles per inch of one row
  Given<std::vector<double>>
      row_offsets;  ///< of each row of one colour, in nozzle pitches of a row, from 0
  Given<std::vector<Length>> row_places;  ///< of the same rows along the motion, from the first
  Given<int> nozzles;                     ///< per colour, all its rows together
  Given<std::vector<Volume>> drops;       ///< volume of each level above the empty one, ascending
  Given<std::vector<Frequency>>
      frequency;  ///< rating for each highest level used; or one binary rating
  Given<std::vector<Speed>> drop_speed;  ///< of each level, where they differ
  Given<GreyMethod> grey_method;  ///< used only when the rating is binary and drops are several
};

struct Head : Row {
  Given<std::vector<InkFamily>> families;
  Given<Length> body_width, body_depth;  ///< along the nozzle axis, along the motion
  Given<Length> body_height;             ///< from the nozzle plate up, connectors included
  Given<Length> field_depth;             ///< of all nozzle rows together, along the motion
  Given<bool> joins;         ///< nozzle rows run on without a gap when heads stand end to end
  Given<Length> overlap;     ///< of the swaths of neighbours
  Given<bool> tilts;         ///< may be turned about the normal of its nozzle plate
  Given<bool> nozzle_delay;  ///< each nozzle fires at its own time, not all by one clock
  Given<Length> nozzle_diameter;
  Given<Speed> drop_speed;
  Given<SpeedPoint> drop_speed_at;
  Given<double> straightness;  ///< angle [rad] within which three deviations of the jets lie
  Given<double> speed_spread;  ///< share within which two deviations of the drops' speeds lie
  Given<Length> throw_least, throw_nominal, throw_most;
  Given<Viscosity> viscosity;         ///< nominal
  Given<Viscosity> viscosity_window;  ///< low..high of the window (Spread::demand)
  Given<SurfaceTension> tension_window;
  Given<Temperature> temperature_most;
  Given<Serviceable> serviceable;
  Given<WaveformAccess> waveform;
  Given<int> driver_sources;
  Given<bool> recirculates;
  Given<VolumeFlow> recirculation;   ///< flow through the head, jetting apart
  Given<Time> life;                  ///< running hours
  Given<double> life_drops;          ///< per nozzle
  Given<Volume> purge;               ///< per head and purge
  Given<Frequency> avoid;            ///< a band of frequencies known bad (Spread::demand)
  Given<std::string> board, supply;  ///< names of rows that fit it
  std::vector<HeadMode> modes;
};
struct Board : Row {
  Given<int> heads;            ///< heads one board drives
  Given<Frequency> data_rate;  ///< bits per second one board takes
};
struct Supply : Row {
  Given<std::vector<InkFamily>> families;
  Given<VolumeFlow> flow;
  Given<VolumeFlow> pump;  ///< ink and recirculation together
  Given<int> heads;
  Given<Volume> container;
  Given<bool> stirs;  ///< keeps ink that settles moving in its container
};
struct Lamp : Row {
  Given<Length> wavelength;
  Given<Irradiance> irradiance;  ///< peak at the substrate
  Given<double> shape;           ///< mean over peak along the window (1 flat, 0.5 triangular)
  Given<Length> window_along, window_across;
  Given<Power> electrical;
  Given<Length> depth;    ///< along the line
  Given<bool> mercury;    ///< arc lamp: ozone, warm-up, mercury waste
  Given<MassFlow> ozone;  ///< one lamp makes
};
struct Dryer : Row {
  Given<Length> width, length;
  Given<MassFlux> drying_rate;
  Given<Power> electrical;
};
struct Part : Row {
  Given<PartKind> kind;
  Given<Per> per;
  Given<std::vector<InkFamily>> families;  ///< absent = any
  Given<std::vector<std::string>> fits;    ///< head names; absent = any
  Given<Time> life;                        ///< running hours between replacements
  Given<VolumeFlow> air_flow;              ///< one moves, of exhaust and ventilation
};

struct Catalogue {
  Given<std::string> date;
  std::vector<Head> heads;
  std::vector<Board> boards;
  std::vector<Supply> supplies;
  std::vector<Lamp> lamps;
  std::vector<Dryer> dryers;
  std::vector<Part> parts;
  std::string source_sha256;
};

}  // namespace calc
