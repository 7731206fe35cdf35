import {
  alongLine,
  type BoxForce,
  type BoxHold,
  type BoxProblem,
  bent,
  boxStructure,
  faceNames,
  factoredBox,
  factoredPanel,
  largestDeflection,
  meshedPanelProblem,
  moved,
  type PanelProblem,
  usualBoxSize,
  usualElementTarget,
  wayOfForce,
} from "../../fem/index.js";
import { Length, MembraneStiffness, PlateStiffness, Pressure, showNumber } from "../../quantity/index.js";
import { rectangle } from "../../shape/index.js";
import { textTable } from "../text-table.js";
import { growthPower } from "./solvers/equal-accuracy.js";
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
  openings: [rectangle({ left: 0.15, bottom: 0.16, width: 0.3, height: 0.2 })],
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

/** Element targets of the panel from the usual mesh to some 150 000 unknowns. */
const elementTargets = [usualElementTarget, 900, 4000, 11_500];
/** Sizes of the box's elements in usual ones, to some 150 000 unknowns. */
const boxSizes = [1, 0.5, 0.3, 0.2];

/** Times the finite-element core after a warm-up: the usual panel and box. */
export function stiffnessBench(): readonly Timed[] {
  const [panelRun, boxRun] = [timedPanel(usualElementTarget), timedBox(1)];
  return [panelRun, boxRun].map(({ time }) => time);
}

/** How the time grows with the unknowns, as text. */
export function costGrowth(): string {
  const rows = [...elementTargets.map(timedPanel), ...boxSizes.map(timedBox)];
  const power = (kind: string): string =>
    showNumber(
      growthPower(
        rows
          .filter(({ time }) => time.work.startsWith(kind))
          .map(({ unknowns, time }) => [unknowns, time.fastest] as const),
      ),
      2,
    );
  return [
    textTable(
      ["finite elements", "unknowns", "fastest ms", "unknowns a ms"],
      rows.map(({ unknowns, time }) => [
        time.work,
        String(unknowns),
        showNumber(time.fastest, 3),
        showNumber(unknowns / time.fastest, 2),
      ]),
    ),
    `time grows with the unknowns to the power ${power("panel")} for the panel, ${power("box")} for the box`,
  ].join("\n");
}

/** A timed solution and its unknowns. */
interface Sized {
  /** How long it took. */
  readonly time: Timed;
  /** Number of degrees of freedom. */
  readonly unknowns: number;
}

function timedPanel(elementTarget: number): Sized {
  let unknowns = 0;
  const run = (): string => {
    const solved = bent(factoredPanel(panel, elementTarget));
    unknowns = unknownsOf(solved.factors.held);
    return `${unknowns} unknowns, ${(1e3 * largestDeflection(solved).value).toFixed(4)} mm`;
  };
  const work = `panel by finite elements, fineness ${elementTarget}`;
  return { time: timed(work, run, elementTarget > 1000 ? 2 : 9), unknowns };
}

function timedBox(size: number): Sized {
  let unknowns = 0;
  const run = (): string => {
    const standing: BoxHold = { where: ([, , z]) => z < 1e-9, dofs: [0, 1, 2] };
    const factored = factoredBox(boxStructure(box, size * usualBoxSize(box)), [standing]);
    const push: BoxForce = {
      on: alongLine(factored.structure, [0, 0, 0.4], [0, 0.5, 0.4]),
      force: [500, 0, 0],
    };
    unknowns = unknownsOf(factored.factors.held);
    return `${unknowns} unknowns, ${(1e3 * wayOfForce(moved(factored, [push]), push)).toFixed(4)} mm`;
  };
  const work = `box by finite elements, size ${size}`;
  return { time: timed(work, run, size < 1 ? 2 : 5), unknowns };
}

function unknownsOf(held: Uint8Array): number {
  return held.reduce((sum, each) => sum + 1 - each, 0);
}
