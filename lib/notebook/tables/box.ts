/** The case as joined boxes, for the notebook on stiffness: a table of its load cases, and a picture of it racked. */
import { meshChange } from "../../fem/index.js";
import { showFine, showMeshError, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  type CaseOutcome,
  type CaseRuns,
  type LoadedCase,
  type MovedOutline,
  movedOutlines,
  type NamedValue,
  runsOf,
} from "../../model/index.js";
import {
  type DrawingMark,
  type DrawingView,
  drawing,
  type Point,
  type TableView,
  tableOf,
} from "../../page/index.js";
import { Force, Length, LineLoad, type ShowStyle } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";

/** A load case on both meshes. */
interface CaseRow {
  readonly fine: CaseOutcome;
  readonly coarse: CaseOutcome;
}

/** Reads a value of a load case; undefined where the case has none. */
type Read = (outcome: CaseOutcome) => NamedValue | undefined;

/** What each load case comes to, each value with what the mesh leaves open about it. Throws RangeError that says why there is none. */
export function loadCaseTable({ review, case: description }: Job): TableView {
  const { fine, coarse }: CaseRuns = runsOf(review.box);
  const style = styleOf(description);
  const rows = fine.outcomes.map((outcome, i): CaseRow => ({ fine: outcome, coarse: coarse.outcomes[i]! }));
  const length = (value: number): string => showFine(Length.si(value), style);
  const force = (value: number): string => Force.show(Force.si(value), style);
  const flow = (value: number): string => LineLoad.show(LineLoad.si(value), style);
  return tableOf(
    rows,
    [
      { heading: "Load case", cell: ({ fine: { title } }) => title },
      { heading: "Moves at most", cell: cellOf(({ movement }) => ({ name: "", value: movement }), length) },
      { heading: "Out of square", cell: cellOf(({ openings }) => openings[0], length) },
      { heading: "Seam", cell: cellOf(({ seams }) => seams[0], flow) },
      { heading: "Latch", cell: cellOf(({ hardware }) => hardware.latch?.[0], force) },
      { heading: "Caster", cell: cellOf(({ hardware }) => hardware.caster?.[0], force) },
    ],
    "Load cases of the joined boxes: the largest of each, in brackets the estimated mesh error",
  );
}

function cellOf(read: Read, show: (value: number) => string): (row: CaseRow) => string {
  return ({ fine, coarse }) => {
    const found = read(fine);
    if (!found) return "";
    const coarser = read(coarse)?.value ?? 0;
    const open = showMeshError(meshChange(found.value, coarser));
    const where = found.name === "" ? "" : `${found.name}: `;
    return `${where}${show(found.value)} (${open})`;
  };
}

/** The pushed case that racks most, seen from the front, left and above, its movements drawn larger. */
export function rackedDrawing({ review, case: description }: Job): DrawingView {
  const { fine } = runsOf(review.box);
  const pushed = fine.cases
    .map((loaded, i) => ({ loaded, outcome: fine.outcomes[i]! }))
    .filter(({ loaded }) => loaded.id.startsWith("pushed"));
  if (pushed.length === 0) throw new Refusal("racked box: give the case casters to stand on");
  const worst = pushed.reduce((most, one) => (one.outcome.movement > most.outcome.movement ? one : most));
  return movedDrawing(worst.loaded, worst.outcome, styleOf(description));
}

/** The faces that can be seen from the front, the left and above. */
const seen = ["x0", "top", "y0"] as const;

function movedDrawing(loaded: LoadedCase, { title, movement }: CaseOutcome, style: ShowStyle): DrawingView {
  const outlines = movedOutlines(loaded, seen);
  const larger = roundFactor((drawnShare * heightOf(outlines)) / movement);
  const roles = { face: "panel", opening: "opening", leaf: "hardware" } as const;
  const marks = [
    ...outlines.map(
      ({ what, places }): DrawingMark => ({
        mark: "polygon",
        role: roles[what],
        points: places.map(({ at, by }) => onPaper(at.map((own, axis) => own + larger * by[axis]!))),
      }),
    ),
    ...outlines
      .filter(({ what }) => what === "face")
      .map(
        ({ places }): DrawingMark => ({
          mark: "line",
          role: "hidden",
          points: [...places, places[0]!].map(({ at }) => onPaper(at)),
        }),
      ),
  ];
  return drawing(
    `The case ${title}: movements drawn ${larger} times as large`,
    `The case from the front, the left and above, ${title}, against its lower corners. Broken lines show it at rest. Its farthest place moves ${showFine(Length.si(movement), style)}; drawn ${larger} times as large.`,
    marks,
  );
}

/** The largest movement is drawn as about this share of the case's height. */
const drawnShare = 0.13;

function heightOf(outlines: readonly MovedOutline[]): number {
  const heights = outlines.flatMap(({ places }) => places.map(({ at }) => at[2]));
  return Math.max(...heights) - Math.min(...heights);
}

/** 1, 2 or 5 times a power of ten, no larger than asked. */
function roundFactor(wanted: number): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([5, 2, 1].find((step) => step * power <= wanted) ?? 1);
}

/** Depth runs to the left and up on the paper, at half its length; mm. */
function onPaper([x = 0, y = 0, z = 0]: readonly number[]): Point {
  return { x: 1000 * (x - 0.42 * y), y: 1000 * (z + 0.28 * y) };
}
