/** Everything of a case that is drawn at true scale: its panels, its cut sheets and its templates. */
import {
  goodFaces,
  letteredGroups,
  panelHolesDrawing,
  sheetCutsDrawing,
  trueRoom,
  type Workpieces,
} from "../recipe/index.js";
import type { Box2 } from "../shape/index.js";
import { type Plot, plotOf, roomOf } from "./plot.js";
import { cross, templatesOf } from "./templates.js";

/** One drawing at true scale. */
export interface TrueDrawing {
  /** Name of its files, without an ending. */
  readonly name: string;
  /** What it is. */
  readonly kind: "panel" | "sheet" | "template";
  /** What is drawn. */
  readonly plot: Plot;
  /** What of it is printed on small sheets of paper, mm; absent for what only a print shop prints. */
  readonly window?: Box2;
}

/** The drawings: panels first, then sheets, then templates. */
export function trueDrawings(workshop: Workpieces): readonly TrueDrawing[] {
  return [...panelDrawings(workshop), ...sheetDrawings(workshop), ...templateDrawings(workshop)];
}

/** Height of the letters on a panel and its template, mm. */
const letter = 5;

/** White round what is printed on small sheets, mm. */
const round = 4;

function panelDrawings({ pieces, parts, rule }: Workpieces): readonly TrueDrawing[] {
  return pieces.panels.map(({ code, part }) => {
    const view = panelHolesDrawing(part, letteredGroups(part.id, parts), rule, parts, trueRoom(part, letter));
    const { marks } = plotOf(view);
    const crosses = marks.flatMap((mark) =>
      mark.kind === "circle" && mark.layer === "DRILL" ? cross(mark.centre, 3) : [],
    );
    const plot: Plot = { title: `${code} ${part.id}`, marks: [...marks, ...crosses] };
    const edge = marks.filter((mark) => mark.kind === "path" && mark.layer === "OUTLINE");
    return { name: fileName(`${code} ${part.id}`), kind: "panel", plot, window: widened(roomOf(edge)) };
  });
}

function widened({ left, bottom, width, height }: Box2): Box2 {
  return { left: left - round, bottom: bottom - round, width: width + 2 * round, height: height + 2 * round };
}

function sheetDrawings({ sheets, laminates, panes, pieces, rule }: Workpieces): readonly TrueDrawing[] {
  const drawn = [
    ...sheets.map((sheet) => ({
      sheet,
      view: sheetCutsDrawing(sheet, pieces.panels, rule, goodFaces(pieces.panels)),
    })),
    ...laminates.map((sheet) => ({ sheet, view: sheetCutsDrawing(sheet, pieces.facings, rule) })),
    ...panes.map((sheet) => ({ sheet, view: sheetCutsDrawing(sheet, pieces.panes, rule) })),
  ];
  return drawn.map(({ sheet: { label }, view }) => ({
    name: fileName(label),
    kind: "sheet",
    plot: plotOf(view),
  }));
}

function templateDrawings(workshop: Workpieces): readonly TrueDrawing[] {
  return templatesOf(workshop).map(({ name, plot }) => ({
    name: fileName(`template ${name}`),
    kind: "template",
    plot,
    window: widened(roomOf(plot.marks)),
  }));
}

/** A name that any disk takes. */
export function fileName(words: string): string {
  return words
    .normalize("NFKD")
    .replace(/[^\w.]+/g, "-")
    .replace(/^-+|-+$/g, "");
}
