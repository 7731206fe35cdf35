/** What stands on the bench before and after every cut, in words a builder can follow, and the order of the cuts. */
import { Angle, Length } from "../quantity/index.js";
import type { CutBar, EndCuts } from "./bar-plan.js";
import type { CutSheet, SheetArea, ThroughCut } from "./sheet-plan.js";

/** One cut of a sheet. */
export interface SawStep {
  /** From 1 on, through the sheet. */ readonly number: number;
  /** From 1 on; cuts that share a fence setting have the same. */ readonly setting: number;
  /** A rip along the sheet's length, or a crosscut. */ readonly direction: ThroughCut["direction"];
  /** Between fence and blade. */ readonly fence: Length;
  /** What is cut. */ readonly part: SheetArea;
  /** What stays at the fence: a piece, an offcut, or a part that is cut further. */
  readonly keeps: BenchPart;
  /** What falls off; missing where the blade takes it all. */ readonly fallsOff?: BenchPart;
}

/** Something on the bench. */
export interface BenchPart extends SheetArea {
  /** Name of the piece; missing for an offcut and for a part that is cut further. */
  readonly piece?: string;
  /** Whether it is cut further, done as a piece, or left over. */
  readonly is: "cut further" | "piece" | "offcut";
}

/** The cuts of a sheet with their settings and what each leaves, in the order they are made. */
export function sawSteps(sheet: CutSheet, kerf: Length): SawStep[] {
  let setting = 0;
  return sheet.cuts.map((cut, i) => {
    const before = sheet.cuts[i - 1];
    if (!before || !sameSetting(before, cut)) setting++;
    const [near, far] = sides(cut, kerf);
    return {
      number: i + 1,
      setting,
      direction: cut.direction,
      fence: Length.si(fenceOf(cut)),
      part: cut.part,
      keeps: named(near, sheet),
      ...(far ? { fallsOff: named(far, sheet) } : {}),
    };
  });
}

function sides({ part, direction, at }: ThroughCut, kerf: number): [SheetArea, SheetArea?] {
  const along = direction === "along";
  const [from, extent] = along ? [part.y, part.width] : [part.x, part.length];
  const kept = at - from;
  const rest = extent - kept - kerf;
  const side = (start: number, size: number): SheetArea =>
    along
      ? { ...part, y: Length.si(start), width: Length.si(size) }
      : { ...part, x: Length.si(start), length: Length.si(size) };
  return rest > 1e-9 ? [side(from, kept), side(at + kerf, rest)] : [side(from, kept)];
}

function named(area: SheetArea, { pieces, offcuts }: CutSheet): BenchPart {
  const piece = pieces.find((one) => sameArea(one, area));
  if (piece) return { ...area, piece: piece.name, is: "piece" };
  return { ...area, is: offcuts.some((one) => sameArea(one, area)) ? "offcut" : "cut further" };
}

/** Whether two areas are the same, to a tenth of a micrometre: sums of sizes round differently. */
function sameArea(one: SheetArea, other: SheetArea): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-7;
  return (
    near(one.x, other.x) &&
    near(one.y, other.y) &&
    near(one.length, other.length) &&
    near(one.width, other.width)
  );
}

/** All pieces of one length and one pair of mitres: one setting of stop and saw. */
export interface StopSetting {
  /** From the stop to the blade. */ readonly length: Length;
  /** Angles off square. */ readonly mitre: EndCuts;
  /** Which bars are cut with it, by their place in the list, and what comes off. */
  readonly cuts: readonly { readonly bar: number; readonly pieces: readonly string[] }[];
}

const square: EndCuts = { left: Angle.si(0), right: Angle.si(0) };

/** The settings for a list of bars, the longest first, so that every bar is cut from one end on. */
export function stopSettings(bars: readonly CutBar[]): StopSetting[] {
  const settings = new Map<string, { length: Length; mitre: EndCuts; cuts: Map<number, string[]> }>();
  for (const [bar, { pieces }] of bars.entries()) {
    for (const { name, length, mitre = square } of pieces) {
      const key = `${Math.round(length * 1e7)}|${mitre.left}|${mitre.right}`;
      const one = settings.get(key) ?? { length, mitre, cuts: new Map<number, string[]>() };
      one.cuts.set(bar, [...(one.cuts.get(bar) ?? []), name]);
      settings.set(key, one);
    }
  }
  return [...settings.values()]
    .sort((a, b) => b.length - a.length || b.mitre.left - a.mitre.left || b.mitre.right - a.mitre.right)
    .map(({ length, mitre, cuts }) => ({
      length,
      mitre,
      cuts: [...cuts].map(([bar, pieces]) => ({ bar, pieces })),
    }));
}

/** Width of what stays between fence and blade. */
function fenceOf({ direction, at, part }: ThroughCut): number {
  return at - (direction === "along" ? part.y : part.x);
}

/** Whether two cuts need the same setting, to a micrometre. */
function sameSetting(one: ThroughCut, other: ThroughCut): boolean {
  return one.direction === other.direction && Math.abs(fenceOf(one) - fenceOf(other)) < 1e-6;
}

/**
 * The same cuts in an order with fewer changes of setting. A cut can be made once its part lies on the bench;
 * of those, one with the setting at hand is taken, or else one whose setting most others share.
 */
export function groupedCuts(cuts: readonly ThroughCut[]): ThroughCut[] {
  const waiting = [...cuts];
  const done: ThroughCut[] = [];
  while (waiting.length > 0) {
    const ready = waiting.filter((cut) => !waiting.some((other) => other !== cut && makes(other, cut.part)));
    const last = done.at(-1);
    const next = ready.find((cut) => last && sameSetting(cut, last)) ?? mostShared(ready);
    if (!next) break;
    waiting.splice(waiting.indexOf(next), 1);
    done.push(next);
  }
  return done;
}

/** Whether a cut goes through something a part is still a piece of. */
function makes({ part }: ThroughCut, smaller: SheetArea): boolean {
  const hair = 1e-9;
  const inside =
    smaller.x >= part.x - hair &&
    smaller.y >= part.y - hair &&
    smaller.x + smaller.length <= part.x + part.length + hair &&
    smaller.y + smaller.width <= part.y + part.width + hair;
  return inside && smaller.length * smaller.width < part.length * part.width - hair;
}

function mostShared(ready: readonly ThroughCut[]): ThroughCut | undefined {
  const shared = ready.map((cut) => ready.filter((other) => sameSetting(cut, other)).length);
  return ready[shared.indexOf(Math.max(...shared))];
}

/** Everything on the bench after a cut. */
export interface BenchState {
  /** The cut just made. */ readonly step: SawStep;
  /** Pieces, offcuts and parts that are cut further. */ readonly parts: readonly BenchPart[];
}

/**
 * What lies on the bench after each cut of a sheet: the part that was cut is gone, and what stays at the
 * fence and what falls off lie in its place.
 *
 * @param steps of one sheet, as `sawSteps` gives them
 */
export function benchStates(steps: readonly SawStep[]): BenchState[] {
  let parts: readonly BenchPart[] = [];
  return steps.map((step) => {
    const { part, keeps, fallsOff } = step;
    const rest = parts.filter((one) => !sameArea(one, part));
    parts = [...rest, keeps, ...(fallsOff ? [fallsOff] : [])];
    return { step, parts };
  });
}
