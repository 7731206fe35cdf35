import { type Formula, formula } from "../formula.js";
import { inch, Length, Mass, pound } from "../quantity/index.js";
import { cite } from "../source.js";
import { OwnHandling } from "./drop-height.js";

/** A case that a machine handles or that tips over its lower edge. */
export interface HandledByMachine {
  /** As it is handled. */
  readonly mass: Mass;
  /** How rough. */
  readonly handling: OwnHandling;
}

/**
 * How high one edge of a heavy case is likely to be let fall, the other on the floor.
 *
 * @source ASTM D4169 schedule A, mechanical handling, rotational drop
 * @throws Refusal unless the mass is positive
 * @example rotationalDrop(rotationalDrop.read({ mass: "400 lb", handling: "rough" })) // 304.8 mm
 */
export const rotationalDrop: Formula<HandledByMachine, Length> = formula({
  id: "drop.rotation.height",
  title: "Drop of one edge, the other on the floor",
  equation: String.raw`h=h(m,\ \text{level})`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    handling: { symbol: "k", kind: OwnHandling, meaning: "how rough" },
  },
  result: { symbol: "h", kind: Length, meaning: "drop height of the edge" },
  source: [cite("astm-d4169", "schedule A, mechanical handling, rotational drop")],
  validity: "A case on a lift gate, a dolly or its own wheels.",
  compute: ({ mass, handling }) => {
    const light = { rough: 12, usual: 9, careful: 6 };
    const heavy = { rough: 9, usual: 6, careful: 3 };
    return inch((mass <= pound(500) ? light : heavy)[handling]);
  },
});
