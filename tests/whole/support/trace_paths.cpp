#include "tests/whole/support/trace_paths.h"

namespace whole {
namespace {

const std::string carriage =
    "line.mode = scanning\nimage.length = 500 mm\nline.speed = 0.2 m/min\n";
const std::string two_lattices =
    carriage +
    "colour.white.kind = white\ncolour.white.ink = white\nink.white.family = aqueous\n"
    "ink.white.viscosity = 10 mPa.s at 25 degC\nink.white.surface_tension = 28 mN/m\n"
    "head.A.families = uv\nhead.B.families = aqueous\nhead.B.mode.grey.row_pitch = 112.5 npi\n"
    "head.B.mode.grey.nozzles = 1284\nimage.registration = 400 um\n";

/// Two rows that stand apart print unevenly when the head is tilted.
const std::string tilted =
    "image.resolution = 400 x 600 dpi\nhead.A.tilts = yes\nhead.A.mode.grey.row_pitch = 180 npi\n"
    "head.A.mode.grey.row_offsets = 0; 0.5\nhead.A.mode.grey.row_places = 0 mm; 0.57 mm\n"
    "head.A.nozzle_delay = yes\nhead.A.field_depth = 0.2 mm\nsubstrate.dot_diameter = 90 um\n";

/// At 36.87 degrees the nozzles of one row of 360 per inch print a line of 600 apart.
const std::string tilted_by_lines =
    "image.resolution = 440 x 600 dpi\nhead.A.tilts = yes\nhead.A.mode.grey.row_pitch = 360 npi\n"
    "head.A.mode.grey.row_offsets = 0\nsubstrate.dot_diameter = 90 um\n";

const std::string pinned =
    "ink.black.pinning_dose = 20 mJ/cm2\nink.cyan.pinning_dose = 20 mJ/cm2\n";
const std::string aqueous =
    "ink.black.family = aqueous\nink.cyan.family = aqueous\nsubstrate.absorbency = low\n";

const std::string third_colour =
    "colour.magenta.kind = process\ncolour.magenta.ink = magenta\nink.magenta.family = uv\n"
    "ink.magenta.viscosity = 20 mPa.s at 25 degC; 9 mPa.s at 50 degC\n"
    "ink.magenta.surface_tension = 28 mN/m\nink.magenta.pinning_dose = 20 mJ/cm2\n";

/// Two rows of heads stand round it.
const std::string round_body =
    "product.form = cylinder\nproduct.diameter = 300 mm\nimage.length = 100 mm\n"
    "product.pitch = 101 mm\n-line.throw_distance\n";

}  // namespace

std::vector<TracePath> trace_paths() {
  return {
      {two_lattices, "g1.carriage_advance", "gcd with s_i = 1"},
      {carriage + "head.A.avoid = 25..35 kHz\nhead.B.families = aqueous\n", "g1.carriage_speed",
       "b*f_b*25.4/R_b"},
      {"product.form = cylinder\nproduct.diameter = 600 mm\nproduct.axis = along\n",
       "g1.sagitta_across", "(c/2)^2"},
      {"line.encoder_step = 5 um\nimage.length = 300 mm\n", "g1.encoder_residue", "1000*L*y"},
      {"-ink.black.density\n-ink.cyan.density\n", "g1.small.tau", "rho"},
      {tilted, "g1.tilt_widest", "max(u_1+100-u_2,u_2-u_1)*254/R_row*cos(t*pi/180)"},
      {tilted, "g1.tilt", "acos(k*R_0/R_q)"},
      {tilted, "g1.widest_n", "p_n+max(0,x_w-k*p_n)"},
      {tilted, "g1.row2.along", "(y-y_1)*cos(t*pi/180)"},
      {tilted + "image.width = 160 mm\n", "g1.joint_apart", "l"},
      {two_lattices, "placement.colours_apart", "L_2*n_2-L_2"},
      {"image.placement = 5 mm\n", "placement.reach", "s+L_1*n_1"},
      {tilted, "g1.tilt_tolerance", "dx/(1000*S_0*sin(abs(t)*pi/180))"},
      {tilted, "g1.dot.nozzle.tilt", "max(x_w-1000*p,1000*p-x_n)"},
      {tilted_by_lines, "g1.tilt", "asin(j*R_0/R_m)"},
      {tilted_by_lines + "-head.A.overlap\n", "g1.overlap", "n_o*p_0"},
      {"head.A.life_drops = 100000000000\n", "g1.head_life", "min(t,D/(3600000*f*c))"},
      {"-head.A.life\nhead.A.life_drops = 100000000000\n", "g1.head_life", "D/(3600000*f*c)"},
      {pinned, "station.pinning.sets", "p_1-1"},
      {pinned, "station.pinning.rise", "a*10*H/(m*c)"},
      {pinned + third_colour, "station.pinning.rise", "s*a*10*H/(m*c)"},
      {"-lamp.LED.shape\n", "station.lamp_rows", "k*E*a*w"},
      {round_body, "g1.round_reach", "r+H"},
      {round_body + "-head.A.throw_nominal\n-head.B.throw_nominal\n", "g1.round_reach", "r+H"},
      {aqueous + "-dryer.DR.electrical\n", "station.drying.units", "ceil(l/l_d)"},
      {"-ink.black.price\n-ink.cyan.price\n", "station.running", "Y_h"},
      {aqueous, "station.drying.units", "ceil(l/l_d)"},
      {aqueous, "station.drying.air", "min(T_u,T_s)"},
      {"-supply.IS.container\n", "station.black.first_fill", "ceil((M+M_p)*t/1000)"},
      {tilted, "g1.footprint", "N_r*(d+gap)"},
      {round_body, "g1.footprint", "z*L"},
      {pinned, "station.footprint", "n_pinning*d_pinning"},
      {aqueous, "station.footprint", "1000*l_d"},
      {"", "station.spares.IW-A.needed", "exp(-x)"},
      {round_body, "station.spares.IW-A.count", "k+1"},
      {round_body + "part.FL.kind = encoder\n", "station.count.FL", "n_1"},
      {round_body + third_colour +
           "part.FL.kind = encoder\npart.FL.per = station\nproduct.diameter = 60 mm\n",
       "station.count.FL", "n_1"},
      {aqueous + "part.FL.kind = exhaust\npart.FL.air_flow = 5 m3/h\n", "station.count.FL",
       "max(1,ceil(Q/q))"},
      {"part.FL.kind = flush\nhead.A.mode.grey.colours = 3\n", "station.count.FL", "n_1+n_2"},
      {"head.B.families = aqueous\ncolour.cyan.ink = cyan\n", "station.count.A", "n_1"},
      {"image.width = 160 mm\n", "station.alignment", "J*t_a"},
      {two_lattices, "station.joints", "J_1"},
      {carriage, "g1.speed_limit", "max(p,L)/(1000*t*n_s)"},
      {"-head.B.price\n", "g1.replace_cost", "round(100*t_a*l)/100"},
      {"-substrate.dot_diameter\n-substrate.dot_volume\n", "g1.motion", "sqrt((D-p)*(D+p))"},
      {"-image.width\nproduct.width = 210 mm\n", "derived.image.width", "W_p"},
      {"-line.speed\nline.throughput = 300 m2/h\n", "derived.line.speed", "q_a/(3.6*W)"},
      {"-line.speed\nline.throughput = 300 m2/h\n", "derived.width", "W_i+2*w_m"},
      {"-line.speed\nline.throughput = 6000 1/h\nproduct.pitch = 300 mm\n", "derived.line.speed",
       "n*p/3600000"},
      {"line.jetting = sideways\nimage.levels = 3\n", "g1.sag", "g_n/2*t_1^2"},
      {round_body + "-image.length\n-product.pitch\n", "derived.image.length", "pi*D"},
  };
}

}  // namespace whole
