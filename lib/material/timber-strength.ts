/** What a code lets one count on of sawn timber. */
import { type Formula, formula } from "../formula.js";
import { Pressure } from "../quantity/index.js";
import { cite } from "../source.js";
import { classes, durations, modificationFactor, type PlywoodDesign } from "./plywood-strength.js";

/** Solid timber, EN 1995-1-1 table 2.3. */
const materialFactor = 1.3;

/** A characteristic strength of timber under a load, under a roof. */
export type TimberDesign = PlywoodDesign;

/**
 * Design strength of sawn timber: f_d = k_mod f_k / 1.3.
 *
 * @example timberDesign(timberDesign.read({ characteristic: "24 MPa", duration: "short", serviceClass: "class 1" })) // 16.62 MPa
 */
export const timberDesign: Formula<TimberDesign, Pressure> = formula<TimberDesign, Pressure>({
  id: "timber.design.strength",
  title: "Design strength of sawn timber",
  equation: String.raw`f_d=\frac{k_{mod}\,f_k}{\gamma_M},\quad\gamma_M=1.3`,
  inputs: {
    characteristic: { symbol: "f_k", kind: Pressure, meaning: "characteristic strength", min: 0 },
    duration: { symbol: "d", kind: durations, meaning: "how long the load stays in all" },
    serviceClass: { symbol: "c", kind: classes, meaning: "service class" },
  },
  result: { symbol: "f_d", kind: Pressure, meaning: "design strength" },
  source: [cite("en-1995", "2.4.1, tables 2.3 and 3.1")],
  validity:
    "Loads that it is compared with are multiplied by their own partial factor, 1.5 for a load that comes and goes.",
  compute: ({ characteristic, duration, serviceClass }) =>
    (modificationFactor(duration, serviceClass) * characteristic) / materialFactor,
});

/** Bending strength of the lowest softwood class of EN 338, which its name says: C14. */
export const lowestTimber: Pressure = Pressure.of(14, "MPa");
