/**
 * The quantities of this trade, SI inside. Factors: NIST Special Publication 811 (2008), appendix B.8,
 * exact where that table is bold; each unit is built from an earlier one, so few raw factors exist.
 */
import type { Quantity } from "./kind.js";
import { type QuantityKind, quantityKind } from "./quantity-kind.js";

const millimetre = 0.001;
const inch = 25.4 * millimetre;
const foot = 12 * inch;
const mil = inch / 1000;
const litre = 0.001;
const gallon = 231 * inch ** 3;
const pound = 0.45359237;
const ounce = pound / 16;
/** Standard acceleration of gravity, m/s2 (exact, CGPM 1901). */
export const standardGravity = 9.80665;
const poundForce = pound * standardGravity;
const psi = poundForce / inch ** 2;
const minute = 60;
const hour = 60 * minute;
const degree = Math.PI / 180;

/** m */
export type Length = Quantity<"length">;
export const Length: QuantityKind<"length"> = quantityKind({
  name: "length",
  units: { m: 1, mm: millimetre, cm: 0.01, µm: 1e-6, in: inch, '"': inch, ft: foot, "'": foot, mil },
  metric: ["mm"],
  inch: ["in"],
  example: "12 mm, 3/8 in, 1 ft 2-1/2 in or 40 mil",
});

/** m2 */
export type Area = Quantity<"area">;
export const Area: QuantityKind<"area"> = quantityKind({
  name: "area",
  units: { m2: 1, "m²": 1, cm2: 1e-4, mm2: millimetre ** 2, in2: inch ** 2, ft2: foot ** 2 },
  metric: ["mm2", "cm2", "m2"],
  inch: ["in2", "ft2"],
  example: "2.5 m2 or 27 ft2",
});

/** m3 */
export type Volume = Quantity<"volume">;
export const Volume: QuantityKind<"volume"> = quantityKind({
  name: "volume",
  units: {
    m3: 1,
    L: litre,
    mL: litre / 1000,
    mm3: millimetre ** 3,
    gal: gallon,
    qt: gallon / 4,
    floz: gallon / 128,
    in3: inch ** 3,
    ft3: foot ** 3,
  },
  metric: ["mL", "L", "m3"],
  inch: ["floz", "gal"],
  example: "750 mL or 1 gal",
});

/** kg */
export type Mass = Quantity<"mass">;
export const Mass: QuantityKind<"mass"> = quantityKind({
  name: "mass",
  units: { kg: 1, g: 0.001, t: 1000, lb: pound, oz: ounce },
  metric: ["g", "kg"],
  inch: ["oz", "lb"],
  example: "6 kg or 12 lb",
});

/** N */
export type Force = Quantity<"force">;
export const Force: QuantityKind<"force"> = quantityKind({
  name: "force",
  units: { N: 1, kN: 1000, kgf: standardGravity, gf: standardGravity / 1000, lbf: poundForce },
  metric: ["N", "kN"],
  inch: ["lbf"],
  example: "250 N, 3 kgf or 50 lbf",
});

/** N m */
export type Moment = Quantity<"moment">;
export const Moment: QuantityKind<"moment"> = quantityKind({
  name: "moment",
  units: { N·m: 1, Nm: 1, Nmm: millimetre, kN·m: 1000, lbf·in: poundForce * inch, lbf·ft: poundForce * foot },
  metric: ["N·m", "kN·m"],
  inch: ["lbf·in", "lbf·ft"],
  example: "12 N·m",
});

/** Pa; also stress and modulus of elasticity */
export type Pressure = Quantity<"pressure">;
export const Pressure: QuantityKind<"pressure"> = quantityKind({
  name: "pressure",
  units: {
    Pa: 1,
    kPa: 1e3,
    MPa: 1e6,
    GPa: 1e9,
    "N/mm2": 1e6,
    psi,
    ksi: 1000 * psi,
    psf: poundForce / foot ** 2,
  },
  metric: ["Pa", "kPa", "MPa", "GPa"],
  inch: ["psf", "psi"],
  example: "9000 MPa or 1.3e6 psi",
});

/** kg/m3 */
export type Density = Quantity<"density">;
export const Density: QuantityKind<"density"> = quantityKind({
  name: "density",
  units: { "kg/m3": 1, "g/cm3": 1000, "lb/ft3": pound / foot ** 3 },
  metric: ["kg/m3"],
  inch: ["lb/ft3"],
  example: "680 kg/m3",
});

/** kg/m2; a spread rate or the weight of a sheet */
export type AreaDensity = Quantity<"mass per area">;
export const AreaDensity: QuantityKind<"mass per area"> = quantityKind({
  name: "mass per area",
  units: { "kg/m2": 1, "g/m2": 0.001, "lb/ft2": pound / foot ** 2, "oz/ft2": ounce / foot ** 2 },
  metric: ["g/m2", "kg/m2"],
  inch: ["oz/ft2", "lb/ft2"],
  example: "130 g/m2",
});

/** kg/m; the weight of a bar */
export type LinearDensity = Quantity<"mass per length">;
export const LinearDensity: QuantityKind<"mass per length"> = quantityKind({
  name: "mass per length",
  units: { "kg/m": 1, "g/m": 0.001, "lb/ft": pound / foot },
  metric: ["g/m", "kg/m"],
  inch: ["lb/ft"],
  example: "0.42 kg/m",
});

/** N/m; a spring's rate */
export type SpringRate = Quantity<"spring rate">;
export const SpringRate: QuantityKind<"spring rate"> = quantityKind({
  name: "spring rate",
  units: { "N/m": 1, "N/mm": 1000, "lbf/in": poundForce / inch },
  metric: ["N/m", "N/mm"],
  inch: ["lbf/in"],
  example: "20 N/mm",
});

/** N/m; load along a line, shear flow along a seam */
export type LineLoad = Quantity<"line load">;
export const LineLoad: QuantityKind<"line load"> = quantityKind({
  name: "line load",
  units: {
    "N/m": 1,
    "N/mm": 1000,
    "kgf/m": standardGravity,
    "lbf/in": poundForce / inch,
    "lbf/ft": poundForce / foot,
  },
  metric: ["N/m", "N/mm"],
  inch: ["lbf/ft", "lbf/in"],
  example: "120 N/m",
});

/** N m per m of width; a plate's bending stiffness D */
export type PlateStiffness = Quantity<"plate stiffness">;
export const PlateStiffness: QuantityKind<"plate stiffness"> = quantityKind({
  name: "plate stiffness",
  units: { N·m: 1, N·mm: millimetre, lbf·in: poundForce * inch },
  metric: ["N·m"],
  inch: ["lbf·in"],
  example: "480 N·m",
});

/** N m per m of width; a plate's bending moment */
export type PlateMoment = Quantity<"moment per width">;
export const PlateMoment: QuantityKind<"moment per width"> = quantityKind({
  name: "moment per width",
  units: { N: 1, "N·m/m": 1, "N·mm/mm": 1, "lbf·in/in": poundForce },
  metric: ["N·m/m"],
  inch: ["lbf·in/in"],
  example: "17 N·m/m",
});

/** N/m; membrane stiffness of a plate per width */
export type MembraneStiffness = Quantity<"membrane stiffness">;
export const MembraneStiffness: QuantityKind<"membrane stiffness"> = quantityKind({
  name: "membrane stiffness",
  units: { "N/m": 1, "N/mm": 1000, "MN/m": 1e6, "lbf/in": poundForce / inch },
  metric: ["N/m", "N/mm", "MN/m"],
  inch: ["lbf/in"],
  example: "60 MN/m",
});

/** m4 */
export type SecondMoment = Quantity<"second moment of area">;
export const SecondMoment: QuantityKind<"second moment of area"> = quantityKind({
  name: "second moment of area",
  units: { m4: 1, mm4: millimetre ** 4, cm4: 1e-8, in4: inch ** 4 },
  metric: ["mm4", "cm4"],
  inch: ["in4"],
  example: "12 cm4",
});

/** N m2; bending stiffness EI of a beam or strip */
export type BeamStiffness = Quantity<"beam stiffness">;
export const BeamStiffness: QuantityKind<"beam stiffness"> = quantityKind({
  name: "beam stiffness",
  units: { N·m2: 1, N·mm2: millimetre ** 2, kN·m2: 1000, lbf·in2: poundForce * inch ** 2 },
  metric: ["N·m2"],
  inch: ["lbf·in2"],
  example: "35 N·m2",
});

/** s */
export type Time = Quantity<"time">;
export const Time: QuantityKind<"time"> = quantityKind({
  name: "time",
  units: { s: 1, min: minute, h: hour, d: 24 * hour },
  metric: ["s", "min", "h"],
  inch: ["s", "min", "h"],
  example: "20 min",
});

/** K above absolute zero */
export type Temperature = Quantity<"temperature">;
export const Temperature: QuantityKind<"temperature"> = quantityKind({
  name: "temperature",
  units: {
    K: 1,
    "°C": { scale: 1, zero: 273.15 },
    degC: { scale: 1, zero: 273.15 },
    "°F": { scale: 5 / 9, zero: 459.67 },
    degF: { scale: 5 / 9, zero: 459.67 },
  },
  metric: ["°C"],
  inch: ["°F"],
  example: "21 °C or 70 °F",
});

/** W */
export type Power = Quantity<"power">;
export const Power: QuantityKind<"power"> = quantityKind({
  name: "power",
  units: { W: 1, kW: 1000 },
  metric: ["W", "kW"],
  inch: ["W", "kW"],
  example: "45 W",
});

/** V */
export type Voltage = Quantity<"voltage">;
export const Voltage: QuantityKind<"voltage"> = quantityKind({
  name: "voltage",
  units: { V: 1, mV: 0.001 },
  metric: ["mV", "V"],
  inch: ["mV", "V"],
  example: "12 V",
});

/** A */
export type Current = Quantity<"current">;
export const Current: QuantityKind<"current"> = quantityKind({
  name: "current",
  units: { A: 1, mA: 0.001 },
  metric: ["mA", "A"],
  inch: ["mA", "A"],
  example: "3.5 A",
});

/** C; a battery's capacity */
export type Charge = Quantity<"charge">;
export const Charge: QuantityKind<"charge"> = quantityKind({
  name: "charge",
  units: { C: 1, Ah: hour, mAh: hour / 1000 },
  metric: ["mAh", "Ah"],
  inch: ["mAh", "Ah"],
  example: "50 Ah",
});

/** J */
export type Energy = Quantity<"energy">;
export const Energy: QuantityKind<"energy"> = quantityKind({
  name: "energy",
  units: { J: 1, kJ: 1000, Wh: hour, kWh: 1000 * hour, ft·lbf: foot * poundForce },
  metric: ["J", "Wh", "kWh"],
  inch: ["J", "Wh", "kWh"],
  example: "640 Wh",
});

/** rad */
export type Angle = Quantity<"angle">;
export const Angle: QuantityKind<"angle"> = quantityKind({
  name: "angle",
  units: { rad: 1, deg: degree, "°": degree },
  metric: ["°"],
  inch: ["°"],
  example: "10 deg",
});

/** m/s */
export type Speed = Quantity<"speed">;
export const Speed: QuantityKind<"speed"> = quantityKind({
  name: "speed",
  units: { "m/s": 1, "ft/s": foot, "km/h": 1 / 3.6, mph: (5280 * foot) / hour },
  metric: ["m/s"],
  inch: ["ft/s"],
  example: "3.5 m/s",
});

/** m/s2 */
export type Acceleration = Quantity<"acceleration">;
export const Acceleration: QuantityKind<"acceleration"> = quantityKind({
  name: "acceleration",
  units: { "m/s2": 1, gn: standardGravity },
  metric: ["m/s2"],
  inch: ["gn"],
  example: "9.81 m/s2",
});

/** A plain number: a ratio, a factor, a share; "35 %" reads as 0.35 */
export type Ratio = Quantity<"ratio">;
export const Ratio: QuantityKind<"ratio"> = quantityKind({
  name: "ratio",
  units: { "": 1, "%": 0.01 },
  metric: [""],
  inch: [""],
  example: "0.35 or 35 %",
});
