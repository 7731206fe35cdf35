import {
  type BoxProblem,
  bent,
  boxStructure,
  elementCount,
  faceNames,
  factoredBox,
  factoredPanel,
  largestDeflection,
  meshedPanelProblem,
  type PanelProblem,
  usualBoxSize,
  usualFineness,
} from "../../fem/index.js";
import { Length, MembraneStiffness, PlateStiffness, Pressure } from "../../quantity/index.js";
import { type Timed, timed } from "./stopwatch.js";

const stiffness = {
  alongX: PlateStiffness.si(519),
  alongY: PlateStiffness.si(256),
  coupling: PlateStiffness.si(25.6),
  twist: PlateStiffness.si(39.5),
};

/** 9 mm ply, 800 by 500 mm, one window, hinged all round. */
const panel: PanelProblem = meshedPanelProblem({
  length: Length.of(800, "mm"),
  width: Length.of(500, "mm"),
  thickness: Length.of(9, "mm"),
  stiffness,
  throughShear: MembraneStiffness.of(5850, "N/mm"),
  left: "hinged",
  right: "hinged",
  bottom: "hinged",
  top: "hinged",
  openings: [
    {
      left: Length.of(150, "mm"),
      bottom: Length.of(160, "mm"),
      width: Length.of(300, "mm"),
      height: Length.of(200, "mm"),
      cornerRadius: Length.si(0),
    },
  ],
  pressure: Pressure.of(1, "kPa"),
});

/** Six faces of that ply. */
const box: BoxProblem = {
  name: "bench box",
  length: 0.6,
  width: 0.5,
  height: 0.4,
  faces: Object.fromEntries(
    faceNames.map((name) => [name, { sheet: panel.sheet, regions: [], cutouts: [] }]),
  ),
};

/** Times the finite-element core: the usual panel and box, and how the cost grows with the unknowns. */
export function stiffnessBench(): readonly Timed[] {
  return [
    ...[usualFineness, 1200, 4500, 11000].map((fineness) =>
      timed(
        `panel by finite elements, fineness ${fineness}`,
        () => bentPanel(fineness),
        fineness > 1000 ? 1 : 5,
      ),
    ),
    timed("box by finite elements, held and factored", heldBox, 3),
  ];
}

function bentPanel(fineness: number): string {
  const solved = bent(factoredPanel(panel, fineness));
  const elements = elementCount(solved.structure.mesh);
  return `${unknowns(solved.factors.held)} unknowns, ${elements} elements, ${(1e3 * largestDeflection(solved).value).toFixed(4)} mm`;
}

function heldBox(): string {
  const held = { where: ([, , z]: readonly [number, number, number]) => z < 1e-9, freedoms: [0, 1, 2] };
  const { factors } = factoredBox(boxStructure(box, usualBoxSize(box)), [held]);
  return `${unknowns(factors.held)} unknowns`;
}

function unknowns(held: Uint8Array): number {
  return held.reduce((sum, each) => sum + 1 - each, 0);
}
