#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

#include "intake/checks.h"
#include "intake/codes.h"
#include "intake/suggest.h"

namespace intake {
namespace {

constexpr double slack = 1e-9;  // as at every limit
constexpr double pi = 3.14159265358979323846;

bool exceeds(double a, double b) {
  return a > b + slack * std::max(1.0, std::abs(b)) * std::min(1.0, std::abs(b));
}

/// `product.width is 250 mm at a.ini:7:9`.
template <class T>
std::string stands(std::string_view key, const calc::Value<T>& value) {
  return std::string(key) + " is " + value.origin.raw + " at " + place_text(value.origin);
}

template <class T>
Diagnostic& fault(Sink& sink, std::string_view code, const calc::Value<T>& value,
                  std::string_view key, const std::string& message) {
  Diagnostic& d = sink.add(code, value.origin, std::string(key) + ": " + message);
  d.field = key;
  return d;
}

/// The greater quantity is given, the lesser too, and the order is the wrong way round.
template <class T>
void check_not_above(Sink& sink, std::string_view code, std::string_view key,
                     const calc::Given<T>& value, std::string_view bound_key,
                     const calc::Given<T>& bound, const std::string& message,
                     const std::string& hint) {
  if (!value || !bound) return;
  double a = 0;
  double b = 0;
  if constexpr (std::is_same_v<T, double>) {
    a = value->value;
    b = bound->value;
  } else {
    a = value->value.si();
    b = bound->value.si();
  }
  if (!exceeds(a, b)) return;
  Diagnostic& d = fault(sink, code, *value, key, message);
  d.notes.push_back(stands(bound_key, *bound));
  d.hint = hint;
}

void check_form(const calc::Request& r, Sink& sink) {
  const auto& form = r.product.form;
  const auto& diameter = r.product.diameter;
  if (form && form->value == calc::Form::cylinder && !diameter) {
    Diagnostic& d = fault(sink, code::cylinder_without_diameter, *form, "product.form",
                          "a cylinder without a diameter");
    d.hint = "add product.diameter, as in 60 mm";
  }
  const bool flat = !form || form->value == calc::Form::flat;
  if (!flat || !diameter) return;
  Diagnostic& d = fault(sink, code::flat_with_diameter, *diameter, "product.diameter",
                        "a flat product has no diameter");
  d.notes.push_back(form ? stands("product.form", *form)
                         : "product.form is not given, so the product is flat");
  d.hint = "set product.form to cylinder or leave the diameter out";
}

void check_sizes(const calc::Request& r, Sink& sink) {
  check_not_above(sink, code::image_wider_than_product, "image.width", r.image.width,
                  "product.width", r.product.width, "the image is wider than the product",
                  "make image.width at most product.width");
  check_not_above(sink, code::pitch_below_image, "image.length", r.image.length, "product.pitch",
                  r.product.pitch, "the image is longer than the pitch of the products",
                  "make product.pitch at least image.length");
  check_not_above(sink, code::variation_above_value, "product.thickness_variation",
                  r.product.thickness_variation, "product.thickness", r.product.thickness,
                  "the thickness varies by more than itself",
                  "make the variation at most product.thickness");
  check_not_above(sink, code::variation_above_value, "line.throw_variation", r.line.throw_variation,
                  "line.throw_distance", r.line.throw_distance,
                  "the gap varies by more than itself",
                  "make the variation at most line.throw_distance");
  const bool round = r.product.form && r.product.form->value == calc::Form::cylinder;
  const bool turns = !r.product.axis || r.product.axis->value == calc::BodyAxis::across;
  if (!round || !turns || !r.product.diameter || !r.image.length) return;
  if (!exceeds(r.image.length->value.si(), pi * r.product.diameter->high.si())) return;
  Diagnostic& d = fault(sink, code::image_around_body, *r.image.length, "image.length",
                        "the image is longer than the way around the cylinder");
  d.notes.push_back(stands("product.diameter", *r.product.diameter));
  d.hint = "make image.length at most pi times product.diameter";
}

void check_bar_code(const calc::Request& r, Sink& sink) {
  if (r.image.barcode_symbol) return;
  const std::string hint = "add image.barcode_symbol, as in ean-13-retail";
  if (r.image.barcode_module) {
    fault(sink, code::symbol_missing, *r.image.barcode_module, "image.barcode_module",
          "without the kind of bar code its range is not checked")
        .hint = hint;
  } else if (r.image.barcode_direction) {
    fault(sink, code::symbol_missing, *r.image.barcode_direction, "image.barcode_direction",
          "moves nothing without a bar code")
        .hint = hint;
  }
}

void check_text(const calc::Request& r, Sink& sink) {
  if (r.image.smallest_text) return;
  const std::string message = "moves nothing without image.smallest_text";
  const std::string hint = "add image.smallest_text, as in 6 pt";
  if (r.image.typeface) {
    fault(sink, code::text_size_missing, *r.image.typeface, "image.typeface", message).hint = hint;
  }
  if (r.image.text_quality) {
    fault(sink, code::text_size_missing, *r.image.text_quality, "image.text_quality", message)
        .hint = hint;
  }
}

void check_dot(const calc::Request& r, Sink& sink) {
  if (!r.substrate.dot_volume || r.substrate.dot_diameter) return;
  fault(sink, code::dot_missing, *r.substrate.dot_volume, "substrate.dot_volume",
        "moves nothing without substrate.dot_diameter")
      .hint = "add substrate.dot_diameter, as in 60 um";
}

/// `value` moves nothing without `needed`.
template <class T, class N>
void check_needs(Sink& sink, std::string_view code, const std::string& key,
                 const calc::Given<T>& value, const std::string& needed_key,
                 const calc::Given<N>& needed, const std::string& example) {
  if (!value || needed) return;
  fault(sink, code, *value, key, "moves nothing without " + needed_key).hint =
      "add " + needed_key + ", as in " + example;
}

void check_encoder(const calc::Request& r, Sink& sink) {
  const calc::Line& line = r.line;
  if (line.encoder_step && (line.encoder_wheel || line.encoder_counts)) {
    Diagnostic& d = fault(sink, code::two_encoder_steps, *line.encoder_step, "line.encoder_step",
                          "the way of a count is given, and the wheel it would follow from");
    d.notes.push_back(line.encoder_wheel ? stands("line.encoder_wheel", *line.encoder_wheel)
                                         : stands("line.encoder_counts", *line.encoder_counts));
    d.hint = "leave out either line.encoder_step or wheel and counts";
    return;
  }
  check_needs(sink, code::half_encoder, "line.encoder_wheel", line.encoder_wheel,
              "line.encoder_counts", line.encoder_counts, "20000");
  check_needs(sink, code::half_encoder, "line.encoder_counts", line.encoder_counts,
              "line.encoder_wheel", line.encoder_wheel, "200 mm");
}

/// A carriage prints while the line stands.
void check_carriage(const calc::Request& r, Sink& sink) {
  const calc::Line& line = r.line;
  const bool carriage = line.mode && line.mode->value == calc::Mode::scanning;
  if (!carriage || !line.indexing || line.indexing->value) return;
  Diagnostic& d = fault(sink, code::scanning_without_stop, *line.mode, "line.mode",
                        "a carriage needs a line that stops and indexes, or a buffer");
  d.notes.push_back(stands("line.indexing", *line.indexing));
  d.hint = "set line.indexing to yes, or line.mode to single";
}

void check_shear(const calc::Request& r, Sink& sink) {
  for (const calc::Ink& ink : r.inks) {
    const std::string at = "ink." + ink.name + ".";
    const std::string index = at + "shear_index";
    const std::string time = at + "shear_time";
    check_needs(sink, code::half_shear_law, index, ink.shear_index, time, ink.shear_time, "0.1 ms");
    check_needs(sink, code::half_shear_law, time, ink.shear_time, index, ink.shear_index, "0.6");
    check_needs(sink, code::half_shear_law, at + "shear_share", ink.shear_share, index,
                ink.shear_index, "0.6");
  }
}

std::string ink_names(const calc::Request& r) {
  std::vector<std::string_view> names;
  for (std::size_t k = 0; k < std::min<std::size_t>(r.inks.size(), 20); ++k) {
    names.push_back(r.inks[k].name);
  }
  return joined(names);
}

/// The name of the ink a colour prints with, empty when it cannot be told.
std::string ink_of(const calc::Request& r, const calc::Colour& colour,
                   const std::set<std::string>& inks) {
  if (colour.ink) return colour.ink->value;
  if (inks.contains(colour.name)) return colour.name;
  return r.inks.size() == 1 ? r.inks.front().name : std::string{};
}

void check_ink_of(const calc::Request& r, const calc::Colour& colour,
                  const std::set<std::string>& inks, Sink& sink) {
  const std::string key = "colour." + colour.name;
  if (colour.ink && !inks.contains(colour.ink->value)) {
    Diagnostic& d = fault(sink, code::ink_not_there, *colour.ink, key + ".ink",
                          "there is no section ink." + colour.ink->value);
    d.hint = r.inks.empty() ? "add the section ink." + colour.ink->value
                            : "name one of: " + ink_names(r);
  } else if (!colour.ink && r.inks.size() > 1 && !inks.contains(colour.name)) {
    Diagnostic& d =
        sink.add(code::ink_not_said, colour.where, key + " does not say which ink it prints with");
    d.field = key + ".ink";
    d.hint = "add " + key + ".ink, one of: " + ink_names(r);
  }
}

void check_colours(const calc::Request& r, Sink& sink) {
  std::set<std::string> inks;
  std::set<std::string> used;
  for (const calc::Ink& ink : r.inks) inks.insert(ink.name);
  for (const calc::Colour& colour : r.colours) {
    const std::string key = "colour." + colour.name;
    check_not_above(sink, code::mean_above_peak, key + ".cover_mean", colour.cover_mean,
                    key + ".cover_peak", colour.cover_peak, "the mean cover is above the greatest",
                    "make cover_mean at most cover_peak");
    check_ink_of(r, colour, inks, sink);
    used.insert(ink_of(r, colour, inks));
  }
  for (const calc::Ink& ink : r.inks) {
    if (r.colours.empty() || used.contains(ink.name)) continue;
    Diagnostic& d = sink.add(code::ink_unused, ink.where, "no colour prints with ink." + ink.name);
    d.field = "ink." + ink.name;
    d.hint = "name it in a colour, as in ink = " + ink.name + ", or leave the section out";
  }
}

void check_shares(const calc::Request& r, Sink& sink) {
  for (const calc::Ink& ink : r.inks) {
    if (!ink.water_share || !ink.solvent_share) continue;
    if (!exceeds(ink.water_share->value + ink.solvent_share->value, 1)) continue;
    const std::string key = "ink." + ink.name;
    Diagnostic& d = fault(sink, code::shares_above_one, *ink.solvent_share, key + ".solvent_share",
                          "water and solvent are more than the whole ink");
    d.notes.push_back(stands(key + ".water_share", *ink.water_share));
    d.hint = "make the two at most 100 % together";
  }
}

/// Every price of a request in one currency: the named one, else that of the first price.
void check_currencies(const calc::Request& r, Sink& sink) {
  std::string currency;
  std::string first;
  if (r.request.currency) {
    currency = r.request.currency->value;
    first = stands("request.currency", *r.request.currency);
  }
  const auto check = [&](const std::string& key, const calc::Given<calc::Price>& price) {
    if (!price) return;
    if (currency.empty()) {
      currency = price->value.currency;
      first = stands(key, *price);
    }
    if (price->value.currency == currency) return;
    Diagnostic& d = fault(sink, code::currencies_differ, *price, key,
                          "not in the currency of the request, " + currency);
    d.notes.push_back(first);
    d.hint = "give every price in " + currency;
  };
  for (const calc::Ink& ink : r.inks) check("ink." + ink.name + ".price", ink.price);
  check("limits.budget", r.limits.budget);
  check("costs.labour", r.costs.labour);
  check("costs.energy", r.costs.energy);
}

}  // namespace

void check_request(const calc::Request& request, Sink& sink) {
  check_form(request, sink);
  check_sizes(request, sink);
  check_bar_code(request, sink);
  check_text(request, sink);
  check_dot(request, sink);
  check_encoder(request, sink);
  check_carriage(request, sink);
  check_shear(request, sink);
  check_colours(request, sink);
  check_shares(request, sink);
  check_currencies(request, sink);
}

}  // namespace intake
