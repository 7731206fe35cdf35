/** Whether panels, leaves and shelves break under what they have to bear. */
import type { PanelPart, ShelfPart } from "../../design/index.js";
import {
  faceLoads,
  holdOf,
  type LoadOnPanel,
  momentsUnder,
  type PanelHold,
  type PanelUse,
  panelUse,
  type ReviewInput,
  type SheetStrength,
  sheetStrength,
  shelfHold,
  shelfLoads,
} from "../../model/index.js";
import { Pressure, Ratio, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf, withinMesh } from "../amount.js";
import type { Verdict } from "../finding.js";
import { type Answer, type Question, question } from "../question.js";
import { each, eachShelf, known, mostOf } from "../subjects.js";

/** What every answer about the strength of a sheet takes for granted. */
export const sheetAssumptions: readonly string[] = [
  "A facing is not counted on: the sheet bears all. Loads count 1.5 times, as EN 1990 has it for loads that come and go.",
  "Stress at an opening is that of its rim. Within one thickness of a sharp inside corner the stress just outside counts (common practice).",
];

/** A face or a leaf with what presses on it. */
interface LoadedPanel {
  /** The panel. */
  readonly panel: PanelPart;
  /** What presses on it, at least one. */
  readonly loads: readonly LoadOnPanel[];
}

/** Whether a face or the leaf of a door breaks. */
export const panelsBend: Question = question({
  id: "strength.panel",
  about: each(
    (input): readonly LoadedPanel[] =>
      input.parts.panels
        .map((panel) => ({ panel, loads: faceLoads(panel, input) }))
        .filter(({ loads }) => loads.length > 0),
    ({ panel }) => panel.id,
  ),
  ask: ({ panel, loads }, input) => {
    const most = Math.max(...loads.map(({ pressure }) => pressure));
    return `Does ${panel.id} bear ${Pressure.show(Pressure.si(most), styleOf(input.case))} without breaking?`;
  },
  tier: "strength",
  cautions: ["A shelf that gives way drops what it carries on hands and feet: look at it after each season."],
  assumes: sheetAssumptions,
  needs: {
    strength: known((input, { panel }: LoadedPanel) => sheetStrength(panel.sheet, input.measurements)),
  },
  answer: (input, { strength }, { panel, loads }) =>
    broken(input, panel, holdOf(panel, input), loads, strength),
});

/** Whether a shelf breaks, in bending or by rolling of its veneers. */
export const shelvesBend: Question = question({
  id: "strength.shelf",
  about: eachShelf,
  ask: ({ shelf }) =>
    `Does the ${shelf.name} bear what it carries, with a jolt and for years, without breaking?`,
  tier: "strength",
  cautions: ["A shelf that gives way drops what it carries on hands and feet: look at it after each season."],
  assumes: sheetAssumptions,
  needs: {
    strength: known((input, { panel }: ShelfPart) => sheetStrength(panel.sheet, input.measurements)),
  },
  answer: (input, { strength }, part) =>
    broken(input, part.panel, shelfHold(part), shelfLoads(part, input), strength),
});

function broken(
  input: ReviewInput,
  panel: PanelPart,
  hold: PanelHold,
  loads: readonly LoadOnPanel[],
  strength: SheetStrength,
): Answer {
  const tried = loads.map((load) => {
    const line = momentsUnder(panel, hold, load.pressure, input);
    const use = panelUse({ panel, strength, moments: line.value, duration: load.duration }, input);
    return { load, line, use };
  });
  const worst = mostOf(tried, ({ use }) => use.worst.stress / use.worst.allowed, `${panel.id}: no load`);
  const { use, line, load } = worst;
  const style = styleOf(input.case);
  const verdict = disputed(strength, use);
  return {
    ...(verdict ? { verdict } : {}),
    demand: amount(Pressure, `stress in ${use.worst.what}, counted 1.5 times`, use.worst.stress),
    capacity: amount(Pressure, "design strength", use.worst.allowed),
    facts: `Nearest to breaking is ${use.worst.what}, under ${load.what}: ${stressWords(use, style)} (${withinMesh(line.value.meshError)} by the mesh). ${strengthWords(strength, use)}`,
    remedies: [{ words: "A thicker sheet, a batten under it, or a smaller opening." }],
    because: [line, ...use.worst.because, ...use.usBecause],
    limit: cite("en-1995", "2.4.1 and table 3.1, strength of plywood"),
    sources: [
      cite("finnish-plywood", "tables 3-1 and 3-2"),
      cite("formwork", "tables 4-4 and 4-10, US plywood"),
      cite("en-1990", "A1.3, factor 1.5"),
    ],
  };
}

/** The codes differ by what each knows of the sheet: where they disagree and nobody broke strips, it is close. */
export function disputed(strength: SheetStrength, { worst, usUse }: PanelUse): Verdict | undefined {
  return worst.stress <= worst.allowed && usUse > 1 && stripsOf(strength) === 0 ? "close" : undefined;
}

/** Strips broken in the direction in which fewer were. */
function stripsOf({ bending: { along, across } }: SheetStrength): number {
  return Math.min(along.strips, across.strips);
}

/** "4.2 MPa of 34.2 MPa". */
export function stressWords({ worst }: PanelUse, style: ShowStyle): string {
  return `${Pressure.show(worst.stress, style)} of ${Pressure.show(worst.allowed, style)}`;
}

/** Where the strength comes from, and what the other code makes of it. */
export function strengthWords(strength: SheetStrength, { usUse }: PanelUse): string {
  const { bending, handbook } = strength;
  const us = `US allowable stresses, for any plywood of its group, put it at ${Ratio.show(usUse, { unit: "%", digits: 2 })}.`;
  if (!handbook)
    return `The strength is that of your broken strips; shear and twisting were not looked at. ${us}`;
  if (stripsOf(strength) === 0)
    return `The strength is a handbook's for birch throughout, from memory: break strips of your own sheet. ${us}`;
  const { from } = bending.along.from === "tests" ? bending.along : bending.across;
  const which =
    from === "tests"
      ? "your broken strips' where they are the lower"
      : "a handbook's, lower than your broken strips'";
  return `The strength is ${which}. ${us}`;
}
