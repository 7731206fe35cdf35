/** Machine screws, the inserts they go into, and what they clamp. */
import { type Formula, formula } from "../formula.js";
import { Area, choice, Force, Length, Moment, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Height that a thread takes off its nominal diameter for its tensile stress area, in pitches. */
const threadHeights = { metric: 0.9382, unified: 0.9743 };

/** A thread of 60 degrees. */
export interface ThreadInputs {
  /** Nominal diameter. */
  readonly diameter: Length;
  /** The pitch from one turn to the next: an inch over the threads an inch of a unified thread. */
  readonly pitch: Length;
  /** Metric (ISO) or unified (UNC, UNF). */
  readonly form: keyof typeof threadHeights;
}

/**
 * Area of a thread against tension: A = pi/4 (d - 0.9382 p)^2 of a metric one, pi/4 (d - 0.9743 p)^2 of a unified one.
 *
 * @example threadArea(threadArea.read({ diameter: "6 mm", pitch: "1 mm" })) // 20.12 mm2
 */
export const threadArea: Formula<ThreadInputs, Area> = formula({
  id: "thread.area",
  title: "Tensile stress area of a thread",
  equation: String.raw`A_t = \frac{\pi}{4}\,(d - 0.9382\,p)^2\ \text{(metric)},\quad A_t = \frac{\pi}{4}\,(d - 0.9743\,p)^2\ \text{(unified)}`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "nominal diameter", above: 0 },
    pitch: { symbol: "p", kind: Length, meaning: "pitch", above: 0 },
    form: {
      symbol: String.raw`\text{form}`,
      kind: choice("form of thread", ["metric", "unified"]),
      meaning: "metric (ISO) or unified (UNC, UNF)",
      absent: "metric",
    },
  },
  result: { symbol: "A_t", kind: Area, meaning: "tensile stress area" },
  source: [cite("machine-design", "8-1, table 8-1"), cite("asme-b1.1", "appendix B, tensile stress area")],
  validity: "Threads of 60 degrees; the pitch of a unified thread is an inch over its threads an inch.",
  refuse: ({ diameter, pitch }) => (pitch < diameter / 2 ? [] : ["pitch must be below half the diameter"]),
  compute: ({ diameter, pitch, form }) => (Math.PI / 4) * (diameter - threadHeights[form] * pitch) ** 2,
});

/** A thread in a softer part: an insert's outer thread in wood, a screw in aluminium. */
export interface ThreadStripInputs {
  /** The diameter over the thread that strips. */
  readonly diameter: Length;
  /** The length of thread in the part. */
  readonly engaged: Length;
  /** The shear strength of the softer part. */
  readonly shearStrength: Pressure;
}

/**
 * Pull at which a thread strips: half of the cylinder over it shears, F = pi d L tau / 2.
 *
 * @example threadStrip(threadStrip.read({ diameter: "10 mm", engaged: "12 mm", shearStrength: "6 MPa" })) // 1.131 kN
 */
export const threadStrip: Formula<ThreadStripInputs, Force> = formula({
  id: "thread.strip",
  title: "Pull at which a thread strips",
  equation: String.raw`F = \tfrac12\,\pi\,d\,L\,\tau`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter over the thread", above: 0 },
    engaged: { symbol: "L", kind: Length, meaning: "thread in the part", above: 0 },
    shearStrength: {
      symbol: String.raw`\tau`,
      kind: Pressure,
      meaning: "shear strength of the part",
      above: 0,
    },
  },
  result: { symbol: "F", kind: Force, meaning: "pull at which it strips" },
  source: [cite("machine-design", "8-2, stripping of threads; half the cylinder")],
  validity:
    "A nominal figure. Inserts in wood have no code value: pull a few of your own, and keep 20 mm to any edge.",
  compute: ({ diameter, engaged, shearStrength }) => (Math.PI * diameter * engaged * shearStrength) / 2,
});

/** A bolt drawn up with a wrench. */
export interface BoltClampInputs {
  /** The tightening torque. */
  readonly torque: Moment;
  /** The nominal diameter. */
  readonly diameter: Length;
  /** The nut factor: 0.2 dry, 0.15 oiled. */
  readonly nutFactor: Ratio;
}

/**
 * Clamping force of a tightened bolt: N = T / (K d).
 *
 * @example boltClamp(boltClamp.read({ torque: "10 N·m", diameter: "10 mm", nutFactor: 0.2 })) // 5 kN
 */
export const boltClamp: Formula<BoltClampInputs, Force> = formula({
  id: "bolt.clamp",
  title: "Clamping force of a tightened bolt",
  equation: String.raw`N = \frac{T}{K\,d}`,
  inputs: {
    torque: { symbol: "T", kind: Moment, meaning: "tightening torque", above: 0 },
    diameter: { symbol: "d", kind: Length, meaning: "nominal diameter", above: 0 },
    nutFactor: { symbol: "K", kind: Ratio, meaning: "nut factor", min: 0.05, max: 0.5 },
  },
  result: { symbol: "N", kind: Force, meaning: "clamping force" },
  source: [cite("machine-design", "8-8, eq. 8-27, table 8-15")],
  validity: "Scatters by 30 %; wood under the washer relaxes within weeks, so draw it up again.",
  compute: ({ torque, diameter, nutFactor }) => torque / (nutFactor * diameter),
});

/** A clamp held by friction in a track. */
export interface TrackClampInputs {
  /** The clamping force. */
  readonly clampForce: Force;
  /** The friction at rest, from a tilted board of these very surfaces. */
  readonly friction: Ratio;
  /** Faces that rub: 2 for a clamp that grips a track on both sides. */
  readonly faces: Ratio;
}

/**
 * Load at which a clamp slides along its track: F = mu N m.
 *
 * @example trackClamp(trackClamp.read({ clampForce: "1200 N", friction: 0.3, faces: 2 })) // 720 N
 */
export const trackClamp: Formula<TrackClampInputs, Force> = formula({
  id: "track.clamp",
  title: "Load at which a clamp slides in its track",
  equation: String.raw`F = \mu\,N\,m`,
  inputs: {
    clampForce: { symbol: "N", kind: Force, meaning: "clamping force", above: 0 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction at rest", above: 0, max: 1.5 },
    faces: { symbol: "m", kind: Ratio, meaning: "faces that rub", min: 1, max: 2 },
  },
  result: { symbol: "F", kind: Force, meaning: "load at which it slides" },
  source: [cite("statics", "dry friction")],
  validity: "Dry and clean; shaken, count on half. Nothing overhead hangs on friction alone.",
  warn: () => ["friction alone slips when it is shaken: add a stop behind the clamp"],
  compute: ({ clampForce, friction, faces }) => friction * clampForce * faces,
});
