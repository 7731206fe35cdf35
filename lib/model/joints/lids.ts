/** Leaves that open upwards or drop down: what they weigh, where they are open, and how they stand. */
import type { Leaf, PanelPart, Point } from "../../design/index.js";
import { Angle, degree, Length, Mass } from "../../quantity/index.js";
import type { MassItem } from "../mass/masses.js";
import { massItems, stiffenerNames } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";

/** A leaf that its weight shuts or throws open: a lid in a top, or a flap hinged at its bottom. */
export interface Lid {
  /** The leaf. */
  readonly panel: PanelPart;
  /** How it hangs. */
  readonly leaf: Leaf;
  /** Whether it lies level when it is shut. */
  readonly isTop: boolean;
  /** From its hinges to its free edge. */
  readonly width: Length;
  /** Open, against the level. */
  readonly level: Angle;
}

/** Lids without a stay are taken to open upright. */
const upright: Angle = degree(90);

/** The lids and flaps of a case. */
export function lidsOf({ parts }: ReviewInput): readonly Lid[] {
  return parts.panels.flatMap((panel): Lid[] => {
    const { leaf, face } = panel;
    const isTop = face === "top";
    if (!leaf || !(isTop || (face !== "bottom" && leaf.hinge === "bottom"))) return [];
    const opened = leaf.stay?.opensTo ?? upright;
    const level = Angle.si(isTop ? opened : Math.abs(upright - opened));
    const across = leaf.hinge === "left" || leaf.hinge === "right";
    return [{ panel, leaf, isTop, width: across ? panel.width : panel.height, level }];
  });
}

/** Whether a thing is a leaf, or on one. */
function belongsTo({ panel }: Lid, input: ReviewInput): (item: MassItem) => boolean {
  const stiffeners = stiffenerNames(input, panel.id);
  return ({ name }) => name === panel.id || name.endsWith(` of ${panel.id}`) || stiffeners.has(name);
}

/** A lid with its facing, its glue and its stiffeners. */
export function lidMass(input: ReviewInput, lid: Lid): Mass {
  const mine = massItems(input).filter(belongsTo(lid, input));
  return Mass.si(mine.reduce((sum, { mass }) => sum + mass, 0));
}

/** Which way the free edge of a lid lies from its hinges while it is shut, seen from above. */
const towardsFree: Readonly<Record<Leaf["hinge"], readonly [number, number]>> = {
  left: [1, 0],
  right: [-1, 0],
  top: [0, -1],
  bottom: [0, 1],
};

/** Where things are with a lid of the top open: it has turned up about its hinges. */
export function placedWithOpen(lid: Lid, input: ReviewInput): (item: MassItem) => Point {
  const belongs = belongsTo(lid, input);
  const { leaf, width, level } = lid;
  const [x, y] = towardsFree[leaf.hinge];
  const half = width / 2;
  const back = half * (1 - Math.cos(level));
  return (item) => {
    if (!belongs(item)) return item.centre;
    const { centre } = item;
    return {
      x: Length.si(centre.x - x * back),
      y: Length.si(centre.y - y * back),
      z: Length.si(centre.z + half * Math.sin(level)),
    };
  };
}
