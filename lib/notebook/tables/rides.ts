/** What the road asks of the straps over each section: forward, rearward, sideways, sliding and tipping. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type LashingWay, lashingWays } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Angle, Force, Ratio, standardGravity } from "../../quantity/index.js";

interface Ride extends LashingWay {
  readonly section: string;
}

/** A row a section and way; nothing where the journey has no straps. */
export function ridesTable(job: Job): TableView | undefined {
  const { lashing } = job.case.journey;
  if (!lashing) return undefined;
  const style = styleOf(job.case);
  const rows = job.parts.sections.flatMap(({ name }) =>
    lashingWays(job, name, lashing).map((way): Ride => ({ section: name, ...way })),
  );
  return tableOf(
    rows,
    [
      { heading: "Section", cell: ({ section }) => section },
      { heading: "The road pushes it", cell: ({ way }) => way },
      { heading: "Tension against sliding", cell: ({ slide }) => Force.show(slide.value, style) },
      { heading: "Against tipping", cell: ({ tilt }) => Force.show(tilt.value, style) },
      { heading: "Straps", cell: ({ straps }) => String(straps.value) },
      {
        heading: "Loose, it tips at",
        cell: ({ loose }) => `${Ratio.show(Ratio.si(loose.value / standardGravity), { digits: 2 })} g`,
      },
    ],
    `Straps of ${Force.show(lashing.tension, style)} at ${Angle.show(lashing.angle, { digits: 2 })} over each section, friction ${Ratio.show(lashing.friction)}; none at all where friction holds it, though one keeps it from wandering`,
  );
}
