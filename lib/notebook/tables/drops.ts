/** From how high the sections and the fragile things are dropped, by who handles them. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { dropOf, handlingsOf, sectionBalance } from "../../model/index.js";
import { type Handling, heaviestTransitCase, transitDrop } from "../../moving/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Length, Mass } from "../../quantity/index.js";

interface Dropped {
  readonly what: string;
  readonly mass: Mass;
  readonly longest: Length;
}

/** Each section with what is in it, and each fragile thing by itself. */
function droppedThings(job: Job): readonly Dropped[] {
  const longest = ({ x, y, z }: { readonly x: Length; readonly y: Length; readonly z: Length }): Length =>
    Length.si(Math.max(x, y, z));
  const sections = job.parts.sections.map(({ name, outside }) => ({
    what: name,
    mass: sectionBalance(job, name).value.mass,
    longest: longest(outside.size),
  }));
  const fragile = job.case.contents
    .filter(({ needs }) => needs.fragility !== undefined)
    .map(({ name, mass, size }) => ({ what: `${name}, by itself`, mass, longest: longest(size) }));
  return [...sections, ...fragile];
}

/** Drop heights by mass and way of handling: three levels of own hands, a parcel, and a military yardstick. */
export function dropHeightsTable(job: Job): TableView {
  const style = styleOf(job.case);
  const by = (handling: Handling) => ({
    heading: handling[0]?.toUpperCase() + handling.slice(1),
    cell: ({ mass }: Dropped): string =>
      handlingsOf(mass).includes(handling) ? Length.show(dropOf(mass, handling).value, style) : "too heavy",
  });
  return tableOf(
    droppedThings(job),
    [
      { heading: "What", cell: ({ what }) => what },
      { heading: "Mass", cell: ({ mass }) => Mass.show(mass, style) },
      by("careful"),
      by("usual"),
      by("rough"),
      by("parcel"),
      {
        heading: "Military transit case",
        cell: ({ mass, longest }) =>
          mass <= heaviestTransitCase ? Length.show(transitDrop({ mass, longest }), style) : "too heavy",
      },
    ],
    "Drop heights: own hands by ASTM D4169 (from memory; over 200 lb one edge falls), a parcel by ISTA 1A, the last column a yardstick by MIL-STD-810",
  );
}
