/** A case and its answers as the page needs them: plain data, in the units of the case. */
import type { Case, Design, HardwarePart, PanelPart, Texts } from "../design/index.js";
import { caseFile, rulerOf } from "../design/index.js";
import type { Finding, Review } from "../findings/index.js";
import type { CaseSolid } from "../model/index.js";
import { findingView, sizeOfSolids, usualLook } from "../page/index.js";
import { Mass, Money, type ShowStyle, Time } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { boundsOf, moved, pathData, rectangle, type Shape } from "../shape/index.js";
import {
  type AnswerView,
  betweenSizes,
  type CaseView,
  type FaceView,
  type MovableThing,
  type Totals,
} from "./messages.js";

/** An answer without its working, which is sent when somebody opens it. */
export function answerView(finding: Finding, style: ShowStyle): AnswerView {
  const { because: _, source: __, ...rest } = findingView({ ...finding, because: [] }, style);
  return rest;
}

/** The case as the page draws and edits it. */
export function caseView(design: Design, texts: Texts): CaseView {
  const text = texts[caseFile] ?? "";
  return {
    name: design.case.name,
    system: design.case.units,
    lengths: /^lengths:\s*mm\b/m.test(text) ? "mm" : "in",
    faces: design.parts.panels.filter(({ role }) => role === "face").map((panel) => faceView(panel, design)),
  };
}

/** What is drawn: all but fasteners and laminate, which are too thin to see. */
export function drawnSolids({ solids }: Review): readonly CaseSolid[] {
  return solids.solids.filter((one) => one.kind === "content" || usualLook(one) !== undefined);
}

const millimetres = (metres: number): number => Math.round(metres * 1e5) / 100;
const pathOf = (shape: Shape): string => pathData(shape, (value) => String(millimetres(value)));

function faceView(panel: PanelPart, { case: build, parts }: Design): FaceView {
  const { id, width, height } = panel;
  const fromHardware = panel.openings.filter(({ why }) => why === "hardware");
  return {
    id,
    width: millimetres(width),
    height: millimetres(height),
    things: [
      ...openingsOn(panel, build),
      ...parts.hardware.flatMap((part) => hardwareOn(panel, part, parts.hardware)),
    ],
    cuts: fromHardware.map(({ outline }) => pathOf(outline)),
  };
}

function openingsOn({ section, face, openings }: PanelPart, { sections }: Case): MovableThing[] {
  const said = sections.find(({ name }) => name === section)?.panels[face ?? "front"]?.openings ?? [];
  return said.flatMap(({ name, from, across, up }): MovableThing[] => {
    const placed = openings.find((one) => one.name === name && one.why === "case");
    if (!placed) return [];
    const place = `sections.${section}.panels.${face}.openings.${name}`;
    return [thing({ name, place, from, across, up, kind: "opening" }, placed.outline)];
  });
}

function hardwareOn(
  { id }: PanelPart,
  { item, on, size, panels, id: own }: HardwarePart,
  all: readonly HardwarePart[],
): MovableThing[] {
  const { places } = item;
  if (!on || !size || panels[0] !== id || "cornersOf" in places) return [];
  const nth = all.filter((one) => one.item === item).findIndex((one) => one.id === own);
  const spot = places[nth];
  if (!spot) return [];
  const box = rectangle({
    left: on.x - size.width / 2,
    bottom: on.y - size.height / 2,
    width: size.width,
    height: size.height,
  });
  const { from, across, up } = spot;
  return [
    thing(
      { name: own, place: `hardware.${item.name}.places.${nth}`, from, across, up, kind: "hardware" },
      box,
    ),
  ];
}

function thing(told: Omit<MovableThing, "path" | "box">, outline: Shape): MovableThing {
  const { left, bottom, width, height } = boundsOf(outline);
  return {
    ...told,
    path: pathOf(moved(outline, { x: 0, y: 0 })),
    box: [millimetres(left), millimetres(bottom), millimetres(width), millimetres(height)],
  };
}

/** Figures of the whole case. What cannot be told is left out, with the reason. */
export function totalsOf(design: Design, review: Review): Totals {
  const ruler = rulerOf(design.case);
  const style: ShowStyle = { system: design.case.units, digits: 3 };
  const lacking: string[] = [];
  const told = (what: string, say: () => string): string => {
    try {
      return say();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      lacking.push(`${what}: ${error.message}.`);
      return "not known yet";
    }
  };
  const weight = (wanted: (item: Review["masses"][number]) => boolean): string =>
    Mass.show(Mass.si(review.masses.filter(wanted).reduce((sum, { mass }) => sum + mass, 0)), style);
  return {
    size: told("Size", () => sizeOfSolids(review.solids.solids).map(ruler).join(betweenSizes)),
    mass: told("Weight", () => `${weight(() => true)}, empty ${weight(({ group }) => group !== "contents")}`),
    sections: design.parts.sections.map(({ name }) => ({
      name,
      mass: told(`Weight of ${name}`, () => weight((item) => item.section === name)),
    })),
    cost: told("Cost", () => Money.show(review.bill.total)),
    hours: told("Bench time", () => Time.show(review.business.time, { unit: "h", digits: 3 })),
    lacking,
  };
}
