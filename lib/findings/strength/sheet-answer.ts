/** How a sheet's stress is told against its strength, for all questions that ask whether one breaks. */
import type { PanelPart } from "../../design/index.js";
import type { LargestMoments } from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import type { EnDuration } from "../../material/index.js";
import { type PanelUse, panelUse, type ReviewInput, type SheetStrength } from "../../model/index.js";
import { Pressure, Ratio, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, capitalised, shownPair, styleOf, withinMesh } from "../amount.js";
import type { Verdict } from "../finding.js";
import type { Compared } from "../question.js";
import { mostOf } from "../subjects.js";

/** What every answer about the strength of a sheet takes for granted. */
export const sheetAssumptions: readonly string[] = [
  "A facing is not counted on: the sheet bears all. Loads count 1.5 times, as EN 1990 has it for loads that come and go.",
  "A stiffener is taken to hold here; whether it does is asked by itself.",
  "Stress at an opening is that of its rim. Within one thickness of a sharp inside corner the stress just outside counts (common practice).",
];

/** A panel and what its sheet stands. */
export interface JudgedSheet {
  /** The panel. */
  readonly panel: PanelPart;
  /** What its sheet stands. */
  readonly strength: SheetStrength;
}

/** A load case with the moments it makes. */
export interface TriedLoad {
  /** "under what it carries, with a jolt". */
  readonly what: string;
  /** The largest moments. */
  readonly moments: LargestMoments;
  /** The worked lines behind them. */
  readonly because: readonly WorkedLine[];
  /** How long it stays. */
  readonly duration: EnDuration;
}

/** A load case with what it comes to. */
export interface JudgedLoad extends TriedLoad {
  /** What breaks first. */
  readonly use: PanelUse;
}

/** Of several load cases the one nearest to breaking. */
export function worstOf(
  input: ReviewInput,
  { panel, strength }: JudgedSheet,
  tried: readonly TriedLoad[],
): JudgedLoad {
  const judged = tried.map((load): JudgedLoad => {
    const { moments, duration } = load;
    return { ...load, use: panelUse({ panel, strength, moments, duration }, input) };
  });
  return mostOf(judged, ({ use }) => use.worst.stress / use.worst.allowed, `${panel.id}: no load`);
}

/** Stress against strength, with where each comes from. */
export function sheetAnswer(
  input: ReviewInput,
  { strength }: JudgedSheet,
  { use, moments, what, because }: JudgedLoad,
): Compared {
  const verdict = disputed(strength, use);
  return {
    ...(verdict ? { verdict } : {}),
    demand: amount(Pressure, `stress in ${use.worst.what}, counted 1.5 times`, use.worst.stress),
    capacity: amount(Pressure, "design strength", use.worst.allowed),
    facts: `${capitalised(use.worst.what)} comes to ${stressWords(use, styleOf(input.case))}, ${what}. That is nearest to breaking, ${withinMesh(moments.meshError)} by the mesh. ${strengthWords(strength, use)}`,
    because: [...because, ...use.worst.because, ...use.usBecause],
    limit: cite("en-1995", "2.4.1 and table 3.1, strength of plywood"),
    sources: [
      cite("finnish-plywood", "tables 3-1 and 3-2"),
      cite("formwork", "tables 4-4 and 4-10, US plywood"),
      cite("en-1990", "A1.3, factor 1.5"),
    ],
  };
}

/** The codes differ by what each knows of the sheet: where they disagree and nobody broke strips, it is close. */
function disputed(strength: SheetStrength, { worst, usUse }: PanelUse): Verdict | undefined {
  return worst.stress <= worst.allowed && usUse > 1 && stripsOf(strength) === 0 ? "close" : undefined;
}

/** Strips broken in the direction in which fewer were. */
function stripsOf({ bending: { along, across } }: SheetStrength): number {
  return Math.min(along.strips, across.strips);
}

/** "4.2 MPa of 34.2 MPa". */
function stressWords({ worst }: PanelUse, style: ShowStyle): string {
  return shownPair(Pressure, worst.stress, worst.allowed, style).join(" of ");
}

/** Where the strength comes from, and what the other code makes of it. */
function strengthWords(strength: SheetStrength, { usUse }: PanelUse): string {
  const { bending, handbook } = strength;
  const us = `US allowable stresses, for any plywood of its group, put it at ${Ratio.show(usUse, { unit: "%", digits: 2 })}.`;
  if (!handbook)
    return `The strength is that of your broken strips; shear and twisting were not looked at. ${us}`;
  if (stripsOf(strength) === 0)
    return `The strength is a handbook's for birch throughout, its shear figures from memory: break strips of your own sheet. ${us}`;
  const { from } = bending.along.from === "tests" ? bending.along : bending.across;
  const which =
    from === "tests"
      ? "your broken strips' where they are the lower"
      : "a handbook's, lower than your broken strips'";
  return `The strength is ${which}. ${us}`;
}
