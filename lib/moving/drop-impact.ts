import { type Formula, formula } from "../formula.js";
import { Energy, Length, Mass, Speed, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/**
 * Speed at the end of a fall: sqrt(2 g h).
 *
 * @source dynamics, free fall
 * @throws Refusal for a negative height
 * @example impactSpeed({ height: mm(610) }) // 3.459 m/s
 */
export const impactSpeed: Formula<{ readonly height: Length }, Speed> = formula({
  id: "drop.speed",
  title: "Speed of landing",
  equation: String.raw`v=\sqrt{2 g h}`,
  inputs: { height: { symbol: "h", kind: Length, meaning: "drop height", min: 0 } },
  result: { symbol: "v", kind: Speed, meaning: "speed of landing" },
  source: [cite("dynamics", "free fall")],
  validity: "No air; right to a thousandth for any drop of a case.",
  compute: ({ height }) => Math.sqrt(2 * standardGravity * height),
});

/**
 * Energy that a fall must lose: m g h.
 *
 * @source dynamics, potential energy
 * @throws Refusal for a negative mass or height
 * @example dropEnergy(dropEnergy.read({ mass: "50 lb", height: "2 ft" })) // 135.6 J
 */
export const dropEnergy: Formula<{ readonly mass: Mass; readonly height: Length }, Energy> = formula({
  id: "drop.energy",
  title: "Energy of a fall",
  equation: "E=m g h",
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "mass", min: 0 },
    height: { symbol: "h", kind: Length, meaning: "drop height", min: 0 },
  },
  result: { symbol: "E", kind: Energy, meaning: "energy to be lost" },
  source: [cite("dynamics", "potential energy")],
  validity: "All of it goes into cushion, case and contents.",
  compute: ({ mass, height }) => mass * standardGravity * height,
});
