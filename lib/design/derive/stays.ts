/** The stays that hold leaves open: bought by the piece, fastened half to the panel and half to the leaf. */

import { boundsOf } from "../../shape/index.js";
import type { Stay } from "../case.js";
import type { Fastening, HardwarePart } from "../parts.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { byHandOn } from "./fastenings.js";
import { inCase } from "./in-case.js";
import { panelPoint } from "./outline.js";
import type { CasePlan, Piece } from "./plan.js";

/** One stay of a leaf. */
interface LeafStay {
  /** "stay 1 of box.top.lid". */
  readonly id: string;
  /** As the case file describes it. */
  readonly stay: Stay;
  /** The leaf. */
  readonly piece: Piece;
}

function staysOf({ pieces }: CasePlan): readonly LeafStay[] {
  return pieces.flatMap((piece) => {
    const { id, leaf } = piece.surface;
    const stay = leaf?.stay;
    if (!stay) return [];
    return Array.from({ length: stay.count }, (_, i) => ({ id: `stay ${i + 1} of ${id}`, stay, piece }));
  });
}

/** Every stay as a piece of hardware at the middle of its leaf. */
export function stayParts(plan: CasePlan, stock: Stock): readonly HardwarePart[] {
  return staysOf(plan).map(({ id, stay, piece: { surface } }) => {
    const { layout } = surface;
    const { left, bottom, width, height } = boundsOf(surface.outline);
    return {
      id,
      item: { name: id, item: stay.item, duty: "stay", places: [] },
      stock: stockNamed(stock, "hardware", stay.item),
      section: layout.section.section.name,
      panels: [layout.id, surface.id],
      centre: inCase(layout, panelPoint(left + width / 2, bottom + height / 2), 0),
    };
  });
}

/** The fasteners of every stay. */
export function stayFastenings(plan: CasePlan, stock: Stock): readonly Fastening[] {
  return staysOf(plan).flatMap(({ id, stay, piece: { surface } }) => {
    const { fastener, fasteners, flange } = stockNamed(stock, "hardware", stay.item);
    return [surface.layout.id, surface.id].map((panel, i) =>
      byHandOn(
        panel,
        {
          holds: id,
          why: "hardware",
          fastener: stockNamed(stock, "fasteners", fastener),
          count: i === 0 ? Math.ceil(fasteners / 2) : Math.floor(fasteners / 2),
          metal: flange,
        },
        plan,
      ),
    );
  });
}
