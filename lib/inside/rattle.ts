/** What hums, rattles and shakes loose: natural frequencies against the vehicle's. */
import { type Formula, formula } from "../formula.js";
import { OrthotropicStiffness } from "../material/index.js";
import { AreaDensity, Length, Mass, Ratio, SpringRate, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";
import { Frequency } from "./kinds.js";

/**
 * Natural frequency of a thing on a springy mount: sqrt(k/m) / 2 pi.
 *
 * @source vibration, one mass on a spring
 * @throws RangeError unless both are positive
 * @example mountFrequency(mountFrequency.read({ mass: "10 kg", stiffness: "10 N/mm" })) // 5.033 Hz
 */
export const mountFrequency: Formula<{ readonly mass: Mass; readonly stiffness: SpringRate }, Frequency> =
  formula({
    id: "rattle.mount",
    title: "Natural frequency on a mount",
    equation: String.raw`f=\frac{1}{2\pi}\sqrt{\frac{k}{m}}`,
    inputs: {
      mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
      stiffness: { symbol: "k", kind: SpringRate, meaning: "spring rate of all mounts", above: 0 },
    },
    result: { symbol: "f", kind: Frequency, meaning: "natural frequency" },
    source: [cite("vibration", "one mass on a spring")],
    validity: "One mass, one direction, a stiff base.",
    compute: ({ mass, stiffness }) => Math.sqrt(stiffness / mass) / (2 * Math.PI),
  });

/**
 * Natural frequency from the sag at rest: sqrt(g / sag) / 2 pi.
 *
 * @source vibration, static deflection
 * @throws RangeError unless the sag is positive
 * @example sagFrequency({ sag: mm(25) }) // 3.152 Hz
 */
export const sagFrequency: Formula<{ readonly sag: Length }, Frequency> = formula({
  id: "rattle.sag",
  title: "Natural frequency from the sag at rest",
  equation: String.raw`f=\frac{1}{2\pi}\sqrt{\frac{g}{\delta}}`,
  inputs: { sag: { symbol: String.raw`\delta`, kind: Length, meaning: "sag at rest", above: 0 } },
  result: { symbol: "f", kind: Frequency, meaning: "natural frequency" },
  source: [cite("vibration", "natural frequency from static deflection")],
  validity: "A shelf whose load sits in its middle; a spread load is some 10 % faster.",
  compute: ({ sag }) => Math.sqrt(standardGravity / sag) / (2 * Math.PI),
});

/** A panel hinged at its edges. */
export interface HummingPanel {
  /** Side along x. */
  readonly length: Length;
  /** Side along y. */
  readonly width: Length;
  /** The result of plywood.lamination fits. */
  readonly stiffness: OrthotropicStiffness;
  /** Sheet, facing and what is fixed to it. */
  readonly areaMass: AreaDensity;
}

/**
 * Lowest natural frequency of a panel hinged on four edges: (pi/2) sqrt((Dx/a4 + 2 (D1 + 2 Dxy)/(a2 b2) + Dy/b4) / m).
 *
 * @source vibration of plates; Lekhnitskii for plywood
 * @throws RangeError unless sides and mass are positive
 * @example panelFrequency(panelFrequency.read({ length: "1 m", width: "1 m", stiffness: { alongX: "1000 N·m",
 *   alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" }, areaMass: "10 kg/m2" })) // 31.42 Hz
 */
export const panelFrequency: Formula<HummingPanel, Frequency> = formula({
  id: "rattle.panel",
  title: "Natural frequency of a panel",
  equation: String.raw`f=\frac{\pi}{2}\sqrt{\frac{1}{m''}\left(\frac{D_x}{a^4}+\frac{2(D_1+2D_{xy})}{a^2b^2}+\frac{D_y}{b^4}\right)}`,
  inputs: {
    length: { symbol: "a", kind: Length, meaning: "side along x", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "side along y", above: 0 },
    stiffness: { symbol: "D_x, D_y, D_1, D_{xy}", kind: OrthotropicStiffness, meaning: "bending stiffness" },
    areaMass: { symbol: "m''", kind: AreaDensity, meaning: "mass per area", above: 0 },
  },
  result: { symbol: "f", kind: Frequency, meaning: "lowest natural frequency" },
  source: [cite("anisotropic-plates", "free vibration of a hinged plate"), cite("vibration", "plates")],
  validity: "No openings, edges free to turn: a riveted edge is stiffer, up to nearly twice as fast.",
  compute: ({ length: a, width: b, stiffness: { alongX, alongY, coupling, twist }, areaMass }) =>
    (Math.PI / 2) *
    Math.sqrt((alongX / a ** 4 + (2 * (coupling + 2 * twist)) / (a * b) ** 2 + alongY / b ** 4) / areaMass),
});

/** A mount shaken from below. */
export interface ShakenMount {
  /** Shaking over natural frequency. */
  readonly frequencyRatio: Ratio;
  /** Share of critical damping: 0.05 to 0.15 for foam and rubber. */
  readonly damping: Ratio;
}

/**
 * How much of a shake reaches a thing on its mount. Above 1.414 times its natural frequency a mount helps, below it hurts.
 *
 * @source vibration, transmissibility
 * @throws RangeError for a negative ratio, or damping that is not above 0
 * @example transmissibility(transmissibility.read({ frequencyRatio: 1, damping: 0.5 })) // 1.414
 */
export const transmissibility: Formula<ShakenMount, Ratio> = formula({
  id: "rattle.passed.on",
  title: "Share of a shake passed on",
  equation: String.raw`T=\sqrt{\frac{1+(2\zeta r)^2}{(1-r^2)^2+(2\zeta r)^2}}`,
  inputs: {
    frequencyRatio: { symbol: "r", kind: Ratio, meaning: "shaking over natural frequency", min: 0 },
    damping: { symbol: String.raw`\zeta`, kind: Ratio, meaning: "damping", above: 0 },
  },
  result: { symbol: "T", kind: Ratio, meaning: "share passed on" },
  source: [cite("vibration", "transmissibility of a damped mount")],
  validity: "A steady shake of one frequency; bumps are drops.",
  compute: ({ frequencyRatio: r, damping }) => {
    const damped = (2 * damping * r) ** 2;
    return Math.sqrt((1 + damped) / ((1 - r ** 2) ** 2 + damped));
  },
});

/** A floor that goes up and down. */
export interface BouncingFloor {
  /** How many times a second. */
  readonly frequency: Frequency;
  /** From its lowest place to its highest. */
  readonly travel: Length;
}

/**
 * Greatest acceleration of a floor that goes up and down, in gravities: (2 pi f)2 s / (2 g). Above 1 what stands loose
 * leaves the floor.
 *
 * @source dynamics, harmonic motion
 * @throws Refusal for a negative frequency or travel
 * @example floorBounce(floorBounce.read({ frequency: "5 Hz", travel: "1 in" })) // 1.278
 */
export const floorBounce: Formula<BouncingFloor, Ratio> = formula({
  id: "ride.bounce",
  title: "Greatest acceleration of a bouncing floor, in gravities",
  equation: String.raw`a=\frac{(2\pi f)^2\,s}{2g}`,
  inputs: {
    frequency: { symbol: "f", kind: Frequency, meaning: "bounces a second", min: 0 },
    travel: { symbol: "s", kind: Length, meaning: "lowest to highest", min: 0 },
  },
  result: { symbol: "a", kind: Ratio, meaning: "acceleration over gravity" },
  source: [
    cite("dynamics", "harmonic motion"),
    cite("mil-std-810-514", "loose cargo transportation, as a test house runs it"),
  ],
  validity: "A floor that swings evenly; potholes strike harder and pass sooner.",
  compute: ({ frequency, travel }) => ((2 * Math.PI * frequency) ** 2 * travel) / (2 * standardGravity),
});
