/** How doors, lids, drawers and shelves move. */
import { vector3 } from "../../algebra/matrix3.js";
import {
  type DrawerPart,
  frameOf,
  type HungLeaf,
  outwards,
  type PanelPart,
  pointIn,
  type ShelfPart,
} from "../../design/index.js";
import { pulledOut } from "../fit-out/slides.js";
import type { ReviewInput } from "../review-input.js";
import type { CaseMovement, CaseSolid } from "./case-solid.js";
import { facingId } from "./sheet-solids.js";

/** How far a leaf opens where nobody says: until it stands square to its panel. */
const opensTo = Math.PI / 2;

/** Every leaf, drawer and sliding shelf with all that moves along. */
export function movementsOf(input: ReviewInput, solids: readonly CaseSolid[]): readonly CaseMovement[] {
  const { parts } = input;
  return [
    ...parts.panels.flatMap((panel) => (panel.leaf ? [leafSwing(panel, panel.leaf, input, solids)] : [])),
    ...parts.drawers.map((drawer) => drawerOut(drawer, input, solids)),
    ...parts.shelves.filter(({ shelf }) => shelf.sliding).map((shelf) => shelfOut(shelf, input, solids)),
  ];
}

/** Some sheets with their laminate, what stiffens them and every fastener in one of them. */
function withFasteners(
  sheets: readonly string[],
  input: ReviewInput,
  solids: readonly CaseSolid[],
): Set<string> {
  const panels = new Set(sheets);
  const stiffeners = input.parts.stiffeners.filter(({ panel }) => panels.has(panel));
  const groups = new Set(input.parts.fastenings.flatMap(({ id, panel }) => (panels.has(panel) ? [id] : [])));
  return new Set([
    ...sheets.flatMap((id) => [id, facingId(id, "outside"), facingId(id, "inside")]),
    ...stiffeners.flatMap(({ id, zones }) => [id, ...zones.map((_, i) => `${id} ${i + 1}`)]),
    ...solids.flatMap(({ part, group }) => (group !== undefined && groups.has(group) ? [part] : [])),
  ]);
}

function leafSwing(
  panel: PanelPart,
  leaf: HungLeaf,
  input: ReviewInput,
  solids: readonly CaseSolid[],
): CaseMovement {
  const frame = frameOf(panel);
  const { hinge, stay } = leaf;
  const outside = panel.sheet.thickness + (panel.facing?.stock.thickness ?? 0);
  const upright = hinge === "left" || hinge === "right";
  const at = {
    x: hinge === "right" ? panel.width : 0,
    y: hinge === "top" ? panel.height : 0,
  };
  // Right-handed about it, the far side of the leaf turns outwards.
  const way = hinge === "left" || hinge === "top" ? -1 : 1;
  const along = upright ? frame.y : frame.x;
  const only = input.parts.hardware.flatMap(({ id, panels }) =>
    panels.length === 1 && panels[0] === panel.id ? [id] : [],
  );
  return {
    id: panel.id,
    words: `opening ${panel.id}`,
    parts: new Set([...withFasteners([panel.id], input, solids), ...only]),
    hinges: new Set(
      input.parts.hardware.flatMap(({ id, panels }) =>
        panels.length > 1 && panels.includes(panel.id) ? [id] : [],
      ),
    ),
    movement: {
      kind: "turn",
      about: pointIn(frame, at, outside),
      axis: vector3((i) => way * along[i]),
      angle: stay?.opensTo ?? opensTo,
    },
  };
}

function drawerOut(
  { drawer, face, panels }: DrawerPart,
  input: ReviewInput,
  solids: readonly CaseSolid[],
): CaseMovement {
  const far = pulledOut(input, drawer);
  const out = outwards(face);
  return {
    id: drawer.name,
    words: `pulling out the ${drawer.name}`,
    parts: withFasteners(
      panels.map(({ id }) => id),
      input,
      solids,
    ),
    hinges: new Set(),
    movement: { kind: "slide", by: vector3((i) => far * out[i]) },
  };
}

function shelfOut(
  { shelf, panel, carries }: ShelfPart,
  input: ReviewInput,
  solids: readonly CaseSolid[],
): CaseMovement {
  const far = pulledOut(input, shelf);
  const out = outwards("front");
  return {
    id: shelf.name,
    words: `pulling out the ${shelf.name}`,
    parts: new Set([
      ...withFasteners([panel.id], input, solids),
      ...carries.map(({ content }) => content.name),
    ]),
    hinges: new Set(),
    movement: { kind: "slide", by: vector3((i) => far * out[i]) },
  };
}
