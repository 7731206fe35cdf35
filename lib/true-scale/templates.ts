/** Templates to lay on a panel: what one kind of hardware has cut and drilled, and every opening that is no plain rectangle. */
import type { Fastening, HardwarePart, PanelPart, Parts, PlacedOpening } from "../design/index.js";
import { drawing } from "../page/index.js";
import { Length } from "../quantity/index.js";
import { drillFor, type Rule, type Workpieces } from "../recipe/index.js";
import { moved, type Point2, rectangle, roundedBoxOf, type Shape, scaled } from "../shape/index.js";
import { openPath, outline, type Plot, type PlotMark, plotOf, roomOf, words } from "./plot.js";

/** A template under its name. */
export interface Template {
  /** What it is for. */
  readonly name: string;
  /** Its marks, the middle of what it is for at 0. */
  readonly plot: Plot;
}

/** Height of the letters, mm; 9 points are 3.2 mm. */
const letter = 3.6;

/** Every template of a case. */
export function templatesOf({ parts, rule, case: { units } }: Workpieces): readonly Template[] {
  const drill = (fastening: Fastening) => drillFor(fastening, units);
  return [...hardwareTemplates(parts, drill), ...openingTemplates(parts, rule)];
}

/** How a group of holes is drilled. */
type Drill = (fastening: Fastening) => ReturnType<typeof drillFor>;

/** One of each kind of hardware that is drilled or cut for, as it lies on the first panel that it is on. */
function hardwareTemplates(parts: Parts, drill: Drill): readonly Template[] {
  const first = new Map<string, HardwarePart>();
  for (const part of parts.hardware) if (!first.has(part.stock.name)) first.set(part.stock.name, part);
  return [...first].flatMap(([name, part]) => {
    const plot = hardwarePlot(name, part, parts, drill);
    return plot ? [{ name, plot }] : [];
  });
}

function hardwarePlot(name: string, part: HardwarePart, parts: Parts, drill: Drill): Plot | undefined {
  const panel = parts.panels.find(({ id }) => id === part.panels[0]);
  const rows = parts.fastenings.filter(({ holds, panel: id }) => holds === part.id && id === panel?.id);
  const openings = panel?.openings.filter((one) => one.why === "hardware" && one.name === part.id) ?? [];
  const holes = rows.flatMap(({ at }) => at);
  if (!panel || holes.length + openings.length === 0) return undefined;
  const origin = part.on ?? nearestCorner(panel, holes);
  const put = ({ x, y }: Point2): Point2 => ({ x: 1000 * (x - origin.x), y: 1000 * (y - origin.y) });
  const marks: readonly PlotMark[] = [
    ...openings.map((opening) => outline(cutOut(opening, origin), "CUT")),
    ...rows.flatMap((row) =>
      row.at.map(
        (hole): PlotMark => ({
          kind: "circle",
          layer: "DRILL",
          centre: put(hole),
          radius: 500 * (drill(row).bits[0]?.diameter ?? row.fastener.diameter),
        }),
      ),
    ),
    ...holes.flatMap((hole) => cross(put(hole), 4)),
    ...(part.size ? [bodyMark(part.size)] : cornerMarks(part, origin)),
  ];
  const bits = [...new Set(rows.map((row) => drill(row).words))].join("; ");
  const where = part.on ? "The cross is its middle" : "The long lines are the edges of the panel";
  return withWords(name, [`${where}. Shown as on ${panel.id}.`, ...(bits ? [`Drill: ${bits}.`] : [])], marks);
}

/** The corner of a panel that its holes are nearest to. */
function nearestCorner({ width, height }: PanelPart, holes: readonly Point2[]): Point2 {
  const mean = (axis: "x" | "y"): number =>
    holes.reduce((sum, hole) => sum + hole[axis], 0) / (holes.length || 1);
  return { x: mean("x") > width / 2 ? width : 0, y: mean("y") > height / 2 ? height : 0 };
}

function cutOut({ outline: shape }: PlacedOpening, origin: Point2): Shape {
  return scaled(moved(shape, { x: -origin.x, y: -origin.y }), 1000, { x: 0, y: 0 });
}

function bodyMark({ width, height }: { readonly width: Length; readonly height: Length }): PlotMark {
  const [across, up] = [1000 * width, 1000 * height];
  return outline(rectangle({ left: -across / 2, bottom: -up / 2, width: across, height: up }), "LATER");
}

/** The two edges of the panel, for what sits at its corner. */
function cornerMarks({ stock: { width, height } }: HardwarePart, corner: Point2): readonly PlotMark[] {
  const [across, up] = [
    corner.x > 0 ? -1000 * width : 1000 * width,
    corner.y > 0 ? -1000 * height : 1000 * height,
  ];
  return [
    openPath(
      [
        { x: across, y: 0 },
        { x: 0, y: 0 },
        { x: 0, y: up },
      ],
      "OUTLINE",
    ),
  ];
}

/** Openings of the case with round or slanting sides, one of each shape. */
function openingTemplates({ panels }: Parts, rule: Rule): readonly Template[] {
  const seen = new Map<string, Template>();
  for (const { id, openings } of panels)
    for (const opening of openings.filter(isShaped)) {
      const centre = { x: opening.low.x + opening.width / 2, y: opening.low.y + opening.height / 2 };
      const shape = cutOut(opening, centre);
      const key = JSON.stringify(shape.sides.map(({ from }) => [from.x.toFixed(3), from.y.toFixed(3)]));
      if (seen.has(key)) continue;
      const name = `${id} ${opening.name}`;
      const said = `The cross is its middle: ${rule.marks([Length.si(centre.x), Length.si(centre.y)])} from 0.`;
      seen.set(key, { name, plot: withWords(name, [said], [outline(shape, "CUT")]) });
    }
  return [...seen.values()];
}

function isShaped({ why, outline: shape }: PlacedOpening): boolean {
  return why === "case" && roundedBoxOf(shape)?.radius !== 0;
}

/** The marks with a cross in their middle, their name and what is said of them below. */
function withWords(name: string, said: readonly string[], marks: readonly PlotMark[]): Plot {
  const { left, bottom, width, height } = roomOf(marks);
  const reach = Math.min(30, 0.2 * Math.max(width, height) + 5);
  const lines = said.map((text, i) => words(text, { x: left, y: bottom - (2 + 1.5 * i) * letter }, letter));
  const arrow = plotOf(
    drawing("up", "", [
      {
        mark: "arrow",
        from: { x: left + width + 8, y: -12 },
        to: { x: left + width + 8, y: 12 },
        text: "up",
      },
    ]),
  );
  return { title: name, marks: [...marks, ...cross({ x: 0, y: 0 }, reach), ...arrow.marks, ...lines] };
}

/** Two short lines that cross at a place. */
export function cross({ x, y }: Point2, reach: number): readonly PlotMark[] {
  return [
    openPath(
      [
        { x: x - reach, y },
        { x: x + reach, y },
      ],
      "NOTES",
    ),
    openPath(
      [
        { x, y: y - reach },
        { x, y: y + reach },
      ],
      "NOTES",
    ),
  ];
}
