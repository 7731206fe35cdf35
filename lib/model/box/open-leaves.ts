/** Doors and lids stood open: what their weight does to the frame through their hinges, by statics. */
import { at, sumOf } from "../../algebra/lists.js";
import { crossProduct, scalarProduct } from "../../algebra/matrix3.js";
import {
  type BoxSpot,
  extents,
  type FaceName,
  frames,
  type LinkEnd,
  placeOfEnd,
  pullAt,
} from "../../fem/index.js";
import { isBeside } from "./box-body.js";
import { type CaseSystem, linkOf } from "./case-system.js";
import { atNode, minus, perAxis, plus } from "./places.js";

/** Leaves that open together: a door, or all that share its opening. */
export interface OpenLeaves {
  /** Numbers of the leaves. */
  readonly leaves: readonly number[];
  /** What they are called, in words. */
  readonly name: string;
}

/** A hinge under the weight of its open leaf. */
export interface HingePull {
  /** Its name. */
  readonly name: string;
  /** Its size, N. */
  readonly value: number;
}

/** One hinge of a leaf, on the frame's side. */
interface Hinge {
  /** The piece of hardware. */
  readonly name: string;
  /** On the frame. */
  readonly end: LinkEnd;
  /** In the stacked case. */
  readonly place: BoxSpot;
}

/** Every door and lid on hinges, whether or not anything holds it shut. */
export function openLeaves(system: CaseSystem): readonly OpenLeaves[] {
  const { bodies } = system.model;
  const leaves = bodies.flatMap(({ name, section }, number) =>
    name !== section && hingesOf(system, number).length > 0 ? [number] : [],
  );
  const groups = leaves.map((number) => {
    const own = at(bodies, number);
    return leaves.filter((other) => other === number || isBeside(at(bodies, other), own));
  });
  return groups
    .filter((group, i) => at(group, 0) === at(leaves, i))
    .map((group) => ({
      leaves: group,
      name: group.map((number) => at(bodies, number).name).join(" and "),
    }));
}

/** The hinges of a leaf, each once. */
function hingesOf({ joined }: CaseSystem, leaf: number): readonly Hinge[] {
  const found = new Map<string, Hinge>();
  for (const link of joined.links) {
    const { kind, name } = linkOf(link);
    const end = link.ends.find(({ part }) => part !== leaf);
    if (kind !== "hinge" || !end || !link.ends.some(({ part }) => part === leaf)) continue;
    found.set(name, { name, end, place: placeOfEnd(joined.parts, end) });
  }
  return [...found.values()];
}

/** Which way a face looks. */
function outwardOf(face: FaceName): BoxSpot {
  const [, , through] = frames[face].axes;
  const far = face === "x1" || face === "y1" || face === "top";
  return perAxis((axis) => (axis === through ? (far ? 1 : -1) : 0));
}

/**
 * Adds the weight of an open leaf to the loads of the bodies that bear it: turned about its hinges as far as its stay
 * lets it, by a right angle without one, or hanging where that is a flap hinged below. Its hinges share the weight, and those apart from each other hold what
 * it turns them by as a pair of forces; what is left, about the line of the hinges, its stay brings to the frame.
 *
 * @param loads by number of the body
 * @returns what each hinge bears
 */
export function hangOpen(
  system: CaseSystem,
  leaf: number,
  weight: Float64Array,
  loads: ReadonlyMap<number, Float64Array>,
): readonly HingePull[] {
  const hinges = hingesOf(system, leaf);
  const { structure, at: origin } = at(system.joined.parts, leaf);
  const own = structure.nodes.reduce<BoxSpot>((sum, _, node) => plus(sum, atNode(weight, node)), [0, 0, 0]);
  const middle = perAxis((axis) => sumOf(hinges, ({ place }) => place[axis]) / hinges.length);
  const line = hingeLine(system, leaf);
  const arm = openArm(system, leaf, minus(centreOf(origin, extents(structure.problem)), middle), line);
  const moment = crossProduct(arm, own);
  const along = scalarProduct(moment, line);
  const across = minus(moment, scaled(line, along));
  const offs = hinges.map(({ place }) => scalarProduct(minus(place, middle), line));
  const spread = sumOf(offs, (off) => off * off);
  const pair = spread > 0 ? scaled(crossProduct(across, line), 1 / spread) : ([0, 0, 0] as BoxSpot);
  // One hinge alone twists; several leave only what their stay bears.
  const twist = scaled(spread > 0 ? scaled(line, along) : moment, 1 / hinges.length);
  return hinges.map(({ name, end }, i) => {
    const force = plus(scaled(own, 1 / hinges.length), scaled(pair, at(offs, i)));
    const load = loads.get(end.part);
    if (load) pullAt(load, end.fitting, force, twist);
    return { name, value: Math.hypot(...force) };
  });
}

function scaled(vector: BoxSpot, by: number): BoxSpot {
  return perAxis((axis) => by * vector[axis]);
}

function centreOf(origin: BoxSpot, size: BoxSpot): BoxSpot {
  return perAxis((axis) => origin[axis] + size[axis] / 2);
}

function panelOf({ input, model }: CaseSystem, leaf: number) {
  return input.parts.panels.find(({ id }) => id === at(model.bodies, leaf).name)?.leaf;
}

/** Along the hinges: across the side that the leaf turns about, in its face. */
function hingeLine(system: CaseSystem, leaf: number): BoxSpot {
  const face = at(at(system.joined.parts, leaf).structure.faces, 0).name;
  const [across, up] = frames[face].axes;
  const hinge = panelOf(system, leaf)?.hinge;
  const line = hinge === "left" || hinge === "right" ? up : across;
  return perAxis((axis) => (axis === line ? 1 : 0));
}

/** From the middle of the hinges to the centre of the open leaf. */
function openArm(system: CaseSystem, leaf: number, shut: BoxSpot, line: BoxSpot): BoxSpot {
  const along = scaled(line, scalarProduct(shut, line));
  const out = minus(shut, along);
  const face = at(at(system.joined.parts, leaf).structure.faces, 0).name;
  const opens = outwardOf(face);
  const panel = panelOf(system, leaf);
  const hangs = panel?.hinge === "bottom" && opens[2] === 0;
  const angle = panel?.stay?.opensTo ?? (hangs ? Math.PI : Math.PI / 2);
  // In the plane of the shut leaf, and off it where the knuckle of the hinge stands out.
  const off = scalarProduct(out, opens);
  const flat = minus(out, scaled(opens, off));
  const back = scaled(flat, -1 / Math.hypot(...flat));
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const turned = plus(
    plus(scaled(flat, cosine), scaled(opens, Math.hypot(...flat) * sine)),
    plus(scaled(back, off * sine), scaled(opens, off * cosine)),
  );
  return plus(along, turned);
}
