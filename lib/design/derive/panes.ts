/** Panes over openings, and what fastens them. */
import { Length } from "../../quantity/index.js";
import type { Fastening, PanePart } from "../parts.js";
import { faces } from "../place.js";
import { type Stock, stockNamed } from "../stock.js";
import { fasten } from "./fastenings.js";
import { boxOn, middleOf } from "./in-case.js";
import type { SectionLayout } from "./layout.js";
import { placeOpening } from "./openings.js";
import { panelPoint } from "./outline.js";
import { type CasePlan, pieceNamed } from "./plan.js";

/** Every pane of a section: the rectangle around its opening, larger by its overlap on every side. */
export function paneParts({ panels, section }: SectionLayout, stock: Stock): PanePart[] {
  return faces
    .flatMap((face) => panels[face] ?? [])
    .flatMap((layout) =>
      layout.panel.openings.flatMap((opening): PanePart[] => {
        const { pane } = opening;
        if (!pane) return [];
        const { low, width, height } = placeOpening(opening, layout);
        const { overlap, side } = pane;
        const sheet = stockNamed(stock, "panes", pane.sheet);
        const corner = panelPoint(low.x - overlap, low.y - overlap);
        const far = panelPoint(low.x + width + overlap, low.y + height + overlap);
        const { thickness } = layout;
        const depth = side === "inside" ? [-sheet.thickness, 0] : [thickness, thickness + sheet.thickness];
        const box = boxOn(layout, corner, far, [depth[0] ?? 0, depth[1] ?? 0]);
        return [
          {
            id: `${layout.id}.${opening.name} pane`,
            section: section.name,
            panel: layout.id,
            pane,
            stock: sheet,
            width: Length.si(width + 2 * overlap),
            height: Length.si(height + 2 * overlap),
            clearWidth: width,
            clearHeight: height,
            box,
            centroid: middleOf(box),
          },
        ];
      }),
    );
}

/** What fastens a pane's clips, clamps or bead, placed by hand. */
export function paneFastenings({ id, panel, pane }: PanePart, stock: Stock, plan: CasePlan): Fastening[] {
  const { fastener, count } = pane;
  if (fastener === undefined || count === undefined) return [];
  const own = stockNamed(stock, "fasteners", fastener);
  return [
    fasten({ holds: id, why: "pane", fastener: own, count, at: [], metal: 0 }, pieceNamed(plan, panel)),
  ];
}
