/// The table of the fields of a request: one row a field, all there is to say of it.
#include "calc/barcode.h"
#include "intake/fields_parts.h"

namespace intake {
namespace {

using namespace calc;  // the rows below name little else

std::vector<Row<RequestHead>> head_rows() {
  using H = RequestHead;
  return {
      text("request.id", &H::id, check_short, "your number for this request; names the files")
          .required(),
      text("request.title", &H::title, check_short, "what the station is for, in one line")
          .required(),
      text("request.revision", &H::revision, check_revision, "revision of the specification")
          .otherwise("A"),
      text("request.date", &H::date, check_date, "date of issue").otherwise("today (UTC)"),
      text("request.currency", &H::currency, check_currency, "currency of the totals")
          .otherwise("the catalogue's"),
      text("request.region", &H::region, check_short, "region whose limits and codes apply"),
      word("request.units", &H::units, "units the document prints lengths and speeds in")
          .otherwise("si")
          .printed_only(),
      text("request.language", &H::language, check_language, "language of the document")
          .otherwise("en")
          .printed_only(),
      text("request.notes", &H::notes, check_any, "remarks, printed as they stand").printed_only(),
  };
}

Table<Customer> customer() {
  using C = Customer;
  return {
      {
          text("customer.organisation", &C::organisation, check_short, "who asks").printed_only(),
          text("customer.contact", &C::contact, check_short, "person to write to").printed_only(),
          text("customer.reference", &C::reference, check_short, "the customer's own number")
              .printed_only(),
      },
      {}};
}

Table<Product> product() {
  using P = Product;
  return {
      {
          text("product.description", &P::description, check_any, "what is printed on")
              .printed_only(),
          word("product.form", &P::form, "shape of the printed face").otherwise("flat"),
          word("product.axis", &P::axis,
               "axis of a cylinder: across the line, where it turns under the heads, or along it")
              .otherwise("across"),
          quantity("product.diameter", &P::diameter, "length", "mm", "diameter of a cylinder")
              .within(1, 5000)
              .demand_or_uncertain("low"),
          quantity("product.width", &P::width, "length", "mm", "width across the line")
              .within(1, 20000)
              .demand("high"),
          quantity("product.thickness", &P::thickness, "length", "mm", "thickness of the product")
              .within(0.001, 2000)
              .demand_or_uncertain("high")
              .printed_only(),
          quantity("product.thickness_variation", &P::thickness_variation, "length", "mm",
                   "how much the thickness varies, from least to greatest; "
                   "taken off the least gap, and on a cylinder added to the greatest")
              .within(0, 100)
              .otherwise("0 mm"),
          quantity("product.pitch", &P::pitch, "length", "mm",
                   "from one image to the next along the motion")
              .within(1, 100000)
              .otherwise("image.length, a closed row of images"),
      },
      {}};
}

/// One of the keys of calc's table of bar codes.
Row<Image> barcode_symbol() {
  FieldInfo symbols =
      field_info("image.barcode_symbol", "word", "", "", "kind of the bar code and its use");
  for (const BarcodeSymbol& symbol : barcode_symbols()) symbols.words.push_back(symbol.key);
  return {symbols, [](Image& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            if (const auto k = take_word(node, info, scribe)) {
              to.barcode_symbol = exactly(std::string(info.words[*k]), scribe.origin(node));
            }
          }};
}

Table<Image> image() {
  using I = Image;
  return {
      {
          quantity("image.width", &I::width, "length", "mm",
                   "width of the printed image across the line")
              .within(0.1, 20000)
              .demand("high"),
          quantity("image.length", &I::length, "length", "mm",
                   "length of the printed image along the motion")
              .within(0.1, 100000)
              .demand("high"),
          Row<I>{field_info("image.resolution", "quantity", "resolution", "dpi",
                            "resolution asked for, across x along"),
                 [](I& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
                   if (const auto pair = take_pair(node, info, scribe)) {
                     to.resolution = exactly(*pair, scribe.origin(node));
                   }
                 }}
              .within(10, 10000)
              .otherwise("the largest demand of what is printed"),
          quantity("image.smallest_feature", &I::smallest_feature, "length", "mm",
                   "smallest line or gap that must be seen")
              .within(0.005, 100),
          quantity("image.smallest_text", &I::smallest_text, "length", "pt",
                   "size of the smallest type")
              .within(0.5, 500),
          word("image.typeface", &I::typeface, "cut of the smallest type").otherwise("regular"),
          word("image.text_quality", &I::text_quality, "how well the smallest type must come out")
              .otherwise("legible"),
          barcode_symbol(),
          quantity("image.barcode_module", &I::barcode_module, "length", "mm",
                   "module (X dimension) of the bar code")
              .within(0.05, 20),
          word("image.barcode_direction", &I::barcode_direction,
               "axis the modules follow one another on")
              .otherwise("both axes"),
          quantity("image.viewing_distance", &I::viewing_distance, "length", "mm",
                   "distance the image is looked at from")
              .within(50, 1000000)
              .demand("low"),
          integer("image.levels", &I::levels, "grey levels, the empty dot counted")
              .within(2, 256)
              .otherwise("2"),
          word("image.solids", &I::solids, "whether solids must close").otherwise("yes"),
          quantity("image.registration", &I::registration, "length", "um",
                   "greatest error from colour to colour")
              .within(1, 10000)
              .otherwise("one pitch of the dots"),
          quantity("image.placement", &I::placement, "length", "um",
                   "greatest error of the image's place on the product")
              .within(1, 100000),
          quantity("image.margin", &I::margin, "length", "mm",
                   "printed beyond the image on both sides")
              .within(0, 1000)
              .otherwise("line.weave"),
      },
      {}};
}

Table<Colour> colour() {
  using C = Colour;
  return {{
              word("colour.NAME.kind", &C::kind, "what the colour is for").otherwise("process"),
              text("colour.NAME.ink", &C::ink, check_short, "name of its ink")
                  .otherwise("the ink of the same name, or the only ink"),
              quantity("colour.NAME.cover_mean", &C::cover_mean, "fraction", "%",
                       "mean cover of the image area")
                  .within(0, 100)
                  .otherwise(
                      "by kind: 15 % process, 10 % spot, 70 % white, 90 % varnish, 100 % primer"),
              quantity("colour.NAME.cover_peak", &C::cover_peak, "fraction", "%",
                       "greatest cover over an image")
                  .within(0, 100)
                  .otherwise("100 %"),
              quantity("colour.NAME.film", &C::film, "length", "um", "wet film asked for")
                  .within(0.1, 1000),
          },
          {}};
}

/// The text as it stands, and the same read.
Row<Ink> solvents() {
  return {field_info("ink.NAME.solvent", "text", "", "",
                     "its solvents; of several each with its share of them by mass, as in "
                     "ethanol 60 %; ethyl acetate 40 %"),
          [](Ink& to, const Node& node, const FieldInfo&, Scribe& scribe) {
            auto list = take_solvents(node, scribe);
            if (!list) return;
            to.solvent = exactly(node.value, scribe.origin(node));
            to.solvents = std::move(*list);
          }};
}

Table<Ink> ink() {
  using K = Ink;
  return {{
              word("ink.NAME.family", &K::family, "family of the ink"),
              Row<K>{field_info("ink.NAME.viscosity", "points", "viscosity", "mPa.s",
                                "viscosity at one or more temperatures"),
                     [](K& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
                       if (auto points = take_points(node, info, scribe)) {
                         to.viscosity = exactly(std::move(*points), scribe.origin(node));
                       }
                     }}
                  .within(0.1, 10000),
              quantity("ink.NAME.surface_tension", &K::surface_tension, "surface tension", "mN/m",
                       "static surface tension")
                  .within(5, 100)
                  .demand_or_uncertain("high"),
              quantity("ink.NAME.density", &K::density, "density", "kg/m3", "density")
                  .within(300, 5000)
                  .uncertain(),
              number("ink.NAME.shear_index", &K::shear_index, "", "",
                     "exponent of its shear thinning (Carreau), 1 for none")
                  .within(0.05, 1)
                  .otherwise("not known: its viscosity is taken as at rest"),
              quantity("ink.NAME.shear_time", &K::shear_time, "time", "ms",
                       "time of its shear thinning (Carreau)")
                  .within(1e-6, 1e6),
              quantity("ink.NAME.shear_share", &K::shear_share, "fraction", "%",
                       "viscosity at endless shear over that at rest")
                  .within(0, 100)
                  .otherwise("0 %, a power law"),
              quantity("ink.NAME.particle_size", &K::particle_size, "length", "um",
                       "greatest particles")
                  .within(0.001, 100),
              quantity("ink.NAME.particle_density", &K::particle_density, "density", "kg/m3",
                       "density of the particles")
                  .within(300, 20000),
              quantity("ink.NAME.particle_share", &K::particle_share, "fraction", "%",
                       "share of the particles by volume")
                  .within(0, 60)
                  .otherwise("0 %, none hinders another"),
              word("ink.NAME.settles", &K::settles, "whether it settles and needs recirculation")
                  .otherwise("by size and density of the particles, else no"),
              quantity("ink.NAME.cure_dose", &K::cure_dose, "dose", "mJ/cm2",
                       "radiant exposure it cures at")
                  .within(1, 100000)
                  .demand_or_uncertain("high"),
              quantity("ink.NAME.cure_irradiance", &K::cure_irradiance, "irradiance", "W/cm2",
                       "least irradiance it cures at")
                  .within(0.001, 1000)
                  .otherwise("any"),
              quantity("ink.NAME.pinning_dose", &K::pinning_dose, "dose", "mJ/cm2",
                       "radiant exposure that pins it before the final cure")
                  .within(0.1, 100000)
                  .otherwise("no pinning"),
              quantity("ink.NAME.water_share", &K::water_share, "fraction", "%",
                       "share of water by mass")
                  .within(0, 100),
              solvents(),
              quantity("ink.NAME.explosive_limit", &K::explosive_limit, "fraction", "%",
                       "lower explosive limit of its vapour in air")
                  .within(0.1, 30)
                  .otherwise("by its solvents"),
              quantity("ink.NAME.molar_mass", &K::molar_mass, "molar mass", "g/mol",
                       "mean molar mass of its vapour")
                  .within(10, 1000)
                  .otherwise("by its solvents"),
              quantity("ink.NAME.boiling_point", &K::boiling_point, "temperature", "degC",
                       "initial boiling point")
                  .within(-20, 500)
                  .otherwise("the lowest of its solvents"),
              quantity("ink.NAME.solvent_share", &K::solvent_share, "fraction", "%",
                       "share of solvents by mass")
                  .within(0, 100),
              quantity("ink.NAME.flash_point", &K::flash_point, "temperature", "degC",
                       "flash point, closed cup")
                  .within(-60, 400),
              number("ink.NAME.exposure_limit", &K::exposure_limit, "concentration", "ppm",
                     "8 h limit of the solvent's vapour")
                  .within(0.001, 10000),
              price("ink.NAME.price", &K::price, "price per litre", "EUR/L", "price of the ink")
                  .within(0, 1e6),
              quantity("ink.NAME.jetting_temperature", &K::jetting_temperature, "temperature",
                       "degC", "temperature it is jetted at")
                  .within(0, 200)
                  .demand_or_uncertain("low")
                  .otherwise("where its viscosity is the head's nominal"),
              quantity("ink.NAME.limit", &K::limit, "fraction", "%",
                       "greatest cover of all process colours together")
                  .within(1, 1000)
                  .otherwise("240 %"),
          },
          {}};
}

Table<Substrate> substrate() {
  using S = Substrate;
  return {
      {
          text("substrate.material", &S::material, check_short, "what it is made of"),
          word("substrate.absorbency", &S::absorbency, "how much ink it takes in"),
          quantity("substrate.contact_angle", &S::contact_angle, "angle", "deg",
                   "contact angle of the ink")
              .within(0.1, 175)
              .uncertain(),
          quantity("substrate.dot_diameter", &S::dot_diameter, "length", "um", "measured dot")
              .within(1, 2000)
              .uncertain(),
          quantity("substrate.dot_volume", &S::dot_volume, "volume", "pL",
                   "drop volume the measured dot was made with")
              .within(0.1, 10000),
          quantity("substrate.spread_factor", &S::spread_factor, "fraction", "",
                   "measured dot over drop diameter")
              .within(0.5, 10)
              .uncertain(),
          quantity("substrate.surface_energy", &S::surface_energy, "surface tension", "mN/m",
                   "surface energy")
              .within(5, 500)
              .demand_or_uncertain("low"),
          quantity("substrate.temperature_limit", &S::temperature_limit, "temperature", "degC",
                   "hottest it may get")
              .within(0, 500),
          quantity("substrate.area_mass", &S::area_mass, "area mass", "g/m2",
                   "mass per area through its thickness, of a web or film that warms as a whole")
              .within(1, 100000),
          quantity("substrate.heat_capacity", &S::heat_capacity, "heat capacity", "kJ/(kg K)",
                   "heat it takes to warm it")
              .within(0.1, 5)
              .otherwise("1.3 kJ/(kg K)"),
          word("substrate.food_contact", &S::food_contact, "whether it touches food")
              .otherwise("no"),
          quantity("substrate.width", &S::width, "length", "mm", "width of the web or sheet")
              .within(1, 20000),
      },
      {}};
}

}  // namespace

const Table<Request>& request_table() {
  static const Table<Request> table = {
      lifted(&Request::request, head_rows()),
      {section("customer", &Request::customer, customer()),
       section("product", &Request::product, product()), section("image", &Request::image, image()),
       repeated("colour", &Request::colours, colour()), repeated("ink", &Request::inks, ink()),
       section("substrate", &Request::substrate, substrate()),
       section("line", &Request::line, line()), section("service", &Request::service, service()),
       section("limits", &Request::limits, limits()), section("costs", &Request::costs, costs())}};
  return table;
}

}  // namespace intake
