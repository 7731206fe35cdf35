/** Swivel casters turned inward under a push: their wheels bear where the case tips first. */
import { at } from "../../algebra/lists.js";
import { actedOnAt, withOtherLinks } from "../../fem/index.js";
import type { TipWay } from "../../moving/index.js";
import { edgeUnderPush, footprint, supportsOf, touchesOf } from "../travel/footprint.js";
import { type CaseSystem, linkOf, type Subsystem } from "./case-system.js";
import type { CaseLink } from "./hardware-links.js";
import { minus } from "./places.js";

/**
 * The bodies of a load case with every caster turned as it tips the case soonest under a level push to a side: all
 * wheels inward, square to the edge that the push reaches first. The same bodies where no caster swivels.
 */
export function swivelledUnder(system: CaseSystem, bodies: Subsystem, side: TipWay): Subsystem {
  const edge = edgeUnderPush(footprint(system.input), side);
  if (!edge) return bodies;
  const inward = [Math.cos(edge.heading), Math.sin(edge.heading)] as const;
  const offsets = new Map<string, number>(
    supportsOf(system.input).map((part) => [part.id, at(touchesOf(part), 0).offset]),
  );
  const turned = bodies.links.flatMap((prepared, i): [number, CaseLink][] => {
    const link = linkOf(prepared);
    const offset = link.kind === "caster" ? (offsets.get(link.name) ?? 0) : 0;
    const [end] = prepared.ends;
    if (offset === 0 || !end) return [];
    const { part, fitting } = end;
    const wheel = minus(fitting.at, [offset * inward[0], offset * inward[1], 0]);
    return [[i, { ...link, from: { part, fitting: actedOnAt(fitting, wheel) } }]];
  });
  return turned.length === 0 ? bodies : { ...bodies, ...withOtherLinks(bodies, new Map(turned)) };
}
