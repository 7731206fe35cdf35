/** What hardware can sit on: the panel of a face, and the leaves of doors in it. */
import { Length } from "../../quantity/index.js";
import type { Leaf } from "../case.js";
import type { PanelPoint } from "../place.js";
import type { PanelLayout } from "./layout.js";
import { placeOpening } from "./openings.js";
import { distanceTo, type Form, panelPoint } from "./outline.js";

/** One flat piece in the plane of a face. */
export interface Surface {
  /** Id of the panel part it becomes. */
  readonly id: string;
  readonly layout: PanelLayout;
  /** Its outline in the axes of the face's panel. */
  readonly form: Form & { readonly outline: { readonly kind: "rectangle"; readonly cornerRadius: Length } };
  readonly leaf?: Leaf;
}

/** The panel of a face first, then its leaves. */
export function surfacesOf(layout: PanelLayout): readonly [Surface, ...Surface[]] {
  const { id, width, height, panel } = layout;
  const outline = { kind: "rectangle", cornerRadius: Length.si(0) } as const;
  const whole: Surface = { id, layout, form: { low: panelPoint(0, 0), width, height, outline } };
  const leaves = panel.openings.flatMap((opening) =>
    opening.leaf ? [leafSurface(layout, placeOpening(opening, layout), opening.name, opening.leaf)] : [],
  );
  return [whole, ...leaves];
}

function leafSurface(layout: PanelLayout, hole: Form, name: string, leaf: Leaf): Surface {
  const gap = leaf.clearance;
  const radius = hole.outline.kind === "rectangle" ? hole.outline.cornerRadius : hole.width / 2;
  const cornerRadius = Length.si(Math.max(radius - gap, 0));
  return {
    id: `${layout.id}.${name}`,
    layout,
    leaf,
    form: {
      low: panelPoint(hole.low.u + gap, hole.low.v + gap),
      width: Length.si(hole.width - 2 * gap),
      height: Length.si(hole.height - 2 * gap),
      outline: { kind: "rectangle", cornerRadius },
    },
  };
}

/** The leaf that a point of a face lies on, or else the face's panel. */
export function surfaceAt(layout: PanelLayout, point: PanelPoint): Surface {
  const [whole, ...leaves] = surfacesOf(layout);
  return leaves.find(({ form }) => distanceTo(form, point) <= 0) ?? whole;
}

/** A point of a face in the axes of one of its surfaces. */
export function onSurface({ form }: Surface, { u, v }: PanelPoint): PanelPoint {
  return panelPoint(u - form.low.u, v - form.low.v);
}
