/// The request as it was read: every field optional but id and title, each with its origin.
/// The table intake/fields.cpp maps `section.key` to these members one to one.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "calc/money.h"
#include "calc/quantity.h"
#include "calc/value.h"

namespace calc {

enum class Form { flat, cylinder };
enum class BarcodeDirection { across, along };  ///< the axis the modules follow one another on
enum class Typeface { regular, bold, serif };
enum class TextQuality { legible, good };
enum class ColourKind { process, spot, white, varnish, primer };
enum class InkFamily { uv, aqueous, solvent, oil };
enum class Absorbency { none, low, high };
enum class Mode { single, scanning, either };
enum class Wish { must, prefer };  ///< absent = indifferent
enum class UnitSystem { si, us };
enum class BodyAxis { across, along };  ///< of a cylinder: turning under the heads, or moving along
enum class JetDirection { down, sideways };

struct ResolutionPair {
  Resolution across, along;
};
struct ViscosityPoint {
  Viscosity viscosity;
  Temperature temperature;
};

struct RequestHead {
  Given<std::string> id, title, revision, date, currency, region, language, notes;
  Given<UnitSystem> units;
};
struct Customer {
  Given<std::string> organisation, contact, reference;
};
struct Product {
  Given<std::string> description;
  Given<Form> form;
  Given<Length> diameter, width, thickness, thickness_variation;
  Given<Length> pitch;  ///< from one image to the next along the motion
  Given<BodyAxis> axis;
};
struct Image {
  Given<Length> width, length, smallest_feature, smallest_text, barcode_module, viewing_distance;
  Given<Length> margin;  ///< added on both sides of the image width
  Given<Length> registration;
  Given<Length> placement;  ///< greatest error of the image's place on the product
  Given<ResolutionPair> resolution;
  Given<Typeface> typeface;
  Given<TextQuality> text_quality;
  Given<std::string> barcode_symbol;  ///< a key of the bar-code table
  Given<BarcodeDirection> barcode_direction;
  Given<int> levels;   ///< grey levels, the empty dot counted
  Given<bool> solids;  ///< whether solids must close (default yes)
};
struct Colour {
  std::string name;
  Origin where;  ///< the section itself
  Given<ColourKind> kind;
  Given<std::string>
      ink;  ///< name of an [ink.NAME]; default the only ink, or the one of the same name
  Given<double> cover_mean, cover_peak;
  Given<Length> film;  ///< wet film asked for
};
/// One solvent of an ink and its share of all solvents, by mass.
struct SolventShare {
  std::string name;
  double share = 1;
};
struct Ink {
  std::string name;
  Origin where;
  Given<InkFamily> family;
  Given<std::vector<ViscosityPoint>> viscosity;
  Given<SurfaceTension> surface_tension;
  Given<Density> density;
  Given<double> shear_index;  ///< exponent of the Carreau law, 1 = Newtonian
  Given<Time> shear_time;     ///< its time
  Given<double> shear_share;  ///< viscosity at endless shear over that at rest
  Given<Length> particle_size;
  Given<Density> particle_density;
  Given<double> particle_share;  ///< volume of the particles over that of the ink
  Given<bool> settles;           ///< whether it needs recirculation
  Given<Dose> cure_dose;
  Given<Irradiance> cure_irradiance;  ///< least at the substrate
  Given<Dose> pinning_dose;           ///< of a stage of its own before the final cure
  Given<double> water_share, solvent_share;
  Given<std::string> solvent;          ///< as written
  std::vector<SolventShare> solvents;  ///< the same read; shares add up to 1
  Given<double> explosive_limit;       ///< lower one of the ink's vapour, as a fraction
  Given<Mass> molar_mass;              ///< of the vapour, of one mole
  Given<Temperature> flash_point, boiling_point, jetting_temperature;
  Given<double> exposure_limit;  ///< 8 h limit of the solvent's vapour [ppm]
  Given<Price> price;            ///< per litre
  Given<double> limit;           ///< greatest cover of all process colours together, 1 = one solid
};
struct Substrate {
  Given<std::string> material;
  Given<Absorbency> absorbency;
  Given<double> contact_angle;  ///< [rad]
  Given<Length> dot_diameter, width;
  Given<Volume> dot_volume;  ///< drop volume the measured dot was made with
  Given<double> spread_factor;
  Given<SurfaceTension> surface_energy;
  Given<Temperature> temperature_limit;
  Given<Quantity<-2, 1, 0>> area_mass;
  Given<Quantity<2, 0, -2, -1>> heat_capacity;
  Given<bool> food_contact;
};
struct Line {
  Given<Speed> speed;
  Given<AreaRate> throughput_area;    ///< line.throughput given as an area rate
  Given<Frequency> throughput_parts;  ///< line.throughput given as parts per time
  Given<Mode> mode;
  Given<bool> indexing;  ///< the line can stop and index, or has a buffer (for scanning)
  Given<Time> hours_per_day;
  Given<double> days_per_year;
  Given<Length> throw_distance, throw_variation, weave;
  Given<std::string> encoder;
  Given<Length> encoder_step;   ///< of the product a count
  Given<Length> encoder_wheel;  ///< diameter of the wheel that runs on the product
  Given<int> encoder_counts;    ///< a turn of the wheel, as the controller counts them
  Given<Temperature> air_temperature;
  Given<double> air_humidity;    ///< relative
  Given<bool> enclosed;          ///< solvent vapour is captured by an enclosure with exhaust
  Given<bool> vapour_monitored;  ///< continuously, in the exhaust
  Given<JetDirection> jetting;
  Given<Length> weave_wavelength, mount_tolerance;
  Given<double> wheel_error;  ///< left of the encoder wheel's scale after calibration
};
struct Service {
  Given<Wish> serviceable, waveform, driver_sources;
};
struct Limits {
  Given<int> heads;
  Given<Price> budget;
  Given<Time> lead_time;
  Given<Length> space;  ///< along the line, for the whole station
};
struct Costs {
  Given<Price> labour;           ///< per hour
  Given<Price> energy;           ///< per kilowatt hour
  Given<double> energy_per_kwh;  ///< the same with parts of a cent, in major units
  Given<double> discount;        ///< per year
  Given<int> years;
};

/// One given field, in the form every listing needs (JSON inputs, document, trace references).
struct Input {
  std::string key;   ///< "image.width", "ink.black.viscosity", "head.H-1.price"
  std::string text;  ///< value as text when it is no number; else empty
  double value = 0;  ///< number in `unit`
  std::string unit;  ///< empty for text and bare numbers
  double low = 0, high = 0;
  Spread spread = Spread::none;
  Origin origin;
};

struct Request {
  RequestHead request;
  Customer customer;
  Product product;
  Image image;
  std::vector<Colour> colours;  ///< in order of appearance
  std::vector<Ink> inks;
  Substrate substrate;
  Line line;
  Service service;
  Limits limits;
  Costs costs;
  Origin where;               ///< the request's start
  std::vector<Input> inputs;  ///< every given field in order of appearance
  std::string source_sha256;  ///< of the request's own text, lower-case hex
};

}  // namespace calc
