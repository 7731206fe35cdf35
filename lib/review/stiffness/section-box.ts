/** A section of the case as one box: its six faces, glued and riveted along their edges, each as stiff as it is. */
import type { Face, PanelPart } from "../../design/index.js";
import {
  type BoxFace,
  type BoxProblem,
  type BoxStructure,
  boxStructure,
  type Cutout,
  type FaceName,
  type FactoredBox,
  factoredBox,
  frames,
  moved,
  overPatch,
  type Sheet,
  sagBetweenCorners,
  usualBoxSize,
} from "../../fem/index.js";
import { Length, type Pressure, Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { panelStiffness, throughShearOf } from "./panel-stiffness.js";
import { sheetModuli } from "./sheet-moduli.js";

/** A section's box on two meshes, to tell how far the mesh may have a result wrong. */
export interface SectionBox {
  readonly fine: FactoredBox;
  readonly rough: FactoredBox;
}

/** Sag of a panel that its neighbours hold. */
export interface LockedSag {
  readonly sag: Length;
  /** Change from a rougher mesh. */
  readonly meshError: Ratio;
}

/** Which face of the box each face is, and whether its u runs against the box's axis. */
const boxFaces: Readonly<Record<Face, readonly [FaceName, boolean]>> = {
  front: ["y0", false],
  back: ["y1", true],
  left: ["x0", true],
  right: ["x1", false],
  top: ["top", false],
  bottom: ["bottom", true],
};

/** Times the usual size of a box's elements: sags within 1 %, in a moment. */
const meshes = { fine: 1.75, rough: 3.3 };

/**
 * The box of a section, standing on its four lower corners. Seams are as stiff as the panels; doors and panes in
 * openings are left out, and so are the edge extrusions: both make the real box stiffer, slip in riveted seams softer.
 *
 * @returns undefined when the section has no bottom to stand on
 */
export function sectionBox(input: ReviewInput, section: string): SectionBox | undefined {
  const panels = input.parts.panels.filter((panel) => panel.section === section && panel.role === "face");
  if (!panels.some(({ face }) => face === "bottom")) return undefined;
  const problem = boxOf(section, panels, input);
  const size = usualBoxSize(problem);
  return {
    fine: standing(boxStructure(problem, meshes.fine * size)),
    rough: standing(boxStructure(problem, meshes.rough * size)),
  };
}

/**
 * Sag of a face under a pressure on its material, measured from its own corners.
 *
 * @param box of its section
 * @param panel one of the section's faces
 * @param pressure on what is left of it
 */
export function lockedSag({ fine, rough }: SectionBox, panel: PanelPart, pressure: Pressure): LockedSag {
  const [name] = boxFaces[panel.face as Face];
  const force = pressure * (panel.clearWidth * panel.clearHeight - (panel.grossArea - panel.netArea));
  const sagOf = (box: FactoredBox): number => {
    const on = overPatch(box.structure, name, everywhere);
    const axis = frames[name].axes[2];
    const load = [0, 1, 2].map((one) => (one === axis ? force : 0)) as [number, number, number];
    return sagBetweenCorners(moved(box, [{ on, force: load }]), name);
  };
  const sag = sagOf(fine);
  return { sag: Length.si(sag), meshError: Ratio.si(Math.abs(1 - sagOf(rough) / sag)) };
}

const everywhere = { left: -1, bottom: -1, width: 1e3, height: 1e3 };

function standing(structure: BoxStructure): FactoredBox {
  const { length, width } = structure.problem;
  const atCorner = (at: number, extent: number): boolean => at < 1e-9 || at > extent - 1e-9;
  const where = ([x, y, z]: readonly [number, number, number]): boolean =>
    z < 1e-9 && atCorner(x, length) && atCorner(y, width);
  return factoredBox(structure, [{ where, freedoms: [0, 1, 2] }]);
}

/** Middle planes lie half a sheet outside the inside. */
function boxOf(section: string, panels: readonly PanelPart[], input: ReviewInput): BoxProblem {
  const thick = (face: Face): number => panels.find((panel) => panel.face === face)?.sheet.thickness ?? 0;
  const inside = insideOf(panels);
  const margins = [thick("left"), thick("front"), thick("bottom")].map((thickness) => thickness / 2);
  const far = [thick("right"), thick("back"), thick("top")].map((thickness) => thickness / 2);
  const [length = 0, width = 0, height = 0] = inside.map(
    (clear, axis) => clear + margins[axis]! + far[axis]!,
  );
  const faces = panels.map((panel) => [
    boxFaces[panel.face as Face][0],
    boxFace(panel, margins, inside, input),
  ]);
  return { name: `the ${section} section`, length, width, height, faces: Object.fromEntries(faces) };
}

function insideOf(panels: readonly PanelPart[]): readonly number[] {
  const clear = [0, 0, 0];
  for (const { face, clearWidth, clearHeight } of panels) {
    const { axes } = frames[boxFaces[face as Face][0]];
    clear[axes[0]] = clearWidth;
    clear[axes[1]] = clearHeight;
  }
  return clear;
}

function boxFace(
  panel: PanelPart,
  margins: readonly number[],
  inside: readonly number[],
  input: ReviewInput,
): BoxFace {
  const [name, reversed] = boxFaces[panel.face as Face];
  const [along, across] = frames[name].axes;
  const place = (u: number, v: number): readonly [number, number] => {
    const fromLow = u - panel.clearLow.u;
    return [
      margins[along]! + (reversed ? inside[along]! - fromLow : fromLow),
      margins[across]! + v - panel.clearLow.v,
    ];
  };
  return {
    sheet: panelSheet(panel, input),
    regions: [],
    cutouts: panel.openings.map((opening) => cutoutOf(opening, place)),
  };
}

function cutoutOf(
  { name, low, width, height, outline }: PanelPart["openings"][number],
  place: (u: number, v: number) => readonly [number, number],
): Cutout {
  if (outline.kind === "polygon")
    return { kind: "polygon", name, points: outline.points.map(({ u, v }) => place(u, v)) };
  const [x, y] = place(low.u + width / 2, low.v + height / 2);
  if (outline.kind === "circle") return { kind: "circle", name, x, y, radius: width / 2 };
  return {
    kind: "rectangle",
    name,
    left: x - width / 2,
    bottom: y - height / 2,
    width,
    height,
    radius: outline.cornerRadius,
  };
}

/** The panel's stiffness along its own u and v, in its plane too. */
export function panelSheet(panel: PanelPart, input: ReviewInput): Sheet {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const { stiffness } = panelStiffness(panel, moduli);
  const { membraneX, membraneY, membraneCoupling, membraneShear, thickness } = stiffness;
  const [alongU, alongV] = panel.grain === "across" ? [membraneX, membraneY] : [membraneY, membraneX];
  const through = throughShearOf(panel, moduli);
  return {
    membrane: [
      [alongU, membraneCoupling, 0],
      [membraneCoupling, alongV, 0],
      [0, 0, membraneShear],
    ],
    coupling: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ],
    bending: [
      [stiffness.alongX, stiffness.coupling, 0],
      [stiffness.coupling, stiffness.alongY, 0],
      [0, 0, stiffness.twist],
    ],
    shear: [through, 0, through],
    mass: [stiffness.massPerArea, 0, 0],
    faces: [thickness / 2, -thickness / 2],
  };
}
