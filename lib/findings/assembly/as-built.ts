/** Whether the case came out as it was planned, of every line of as-built.csv that has a plan, and what to do now. */
import {
  type AsBuiltMeasure,
  type AsBuiltRow,
  type FacingStock,
  type SheetStock,
  sheetPieces,
} from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import {
  diagonalDifference,
  gripCases,
  massOfAll,
  openingTolerance,
  plannedMasses,
  type ReviewInput,
  thicknessTolerance,
  tolerance,
  weighedAs,
} from "../../model/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, fineAmount, offPlan, showFine, styleOf } from "../amount.js";
import type { Remedy } from "../finding.js";
import { type Question, question } from "../question.js";
import { each } from "../subjects.js";

const practice = cite("common-practice", "how far off a part may be");

type Measured = (SheetStock | FacingStock) & { readonly planned: Length };

const measuredStock = ({ stock }: ReviewInput): readonly Measured[] =>
  [...stock.sheets, ...stock.facings].filter((one): one is Measured => one.planned !== undefined);

/** Whether sheets and laminates are as thick as their tables say; all other answers use what was measured. */
export const thicknessAsBuilt: Question = question({
  id: "assembly.as-built-thickness",
  about: each(measuredStock, ({ name }) => name),
  ask: ({ name }) => `Is ${name} as thick as planned?`,
  tier: "handling",
  cautions: [],
  answer: (input, _, { thickness, planned }) => {
    const { over, under } = thicknessTolerance(planned);
    const off = thickness - planned;
    const style = styleOf(input.case);
    return {
      demand: fineAmount("off the plan", Length.si(Math.abs(off))),
      capacity: fineAmount("usual", off < 0 ? under : over),
      facts: `It measures ${showFine(thickness, style)}; ${showFine(planned, style)} was planned. Sizes, stacks and masses are worked out anew with it.`,
      remedies: rivetsFor(input),
      because: [],
      limit: practice,
    };
  },
});

/** Fasteners that no longer close their stack, each with what to set instead. */
function rivetsFor(input: ReviewInput): readonly Remedy[] {
  const style = styleOf(input.case);
  const wrong = gripCases(input).filter(
    ({ fastener, fits }) => !fits && fastenerTraits[fastener.kind].chosenByGrip,
  );
  if (wrong.length === 0) return [{ words: "Every rivet still closes its stack: go on." }];
  return wrong.map(({ fastener, grip, better }) => ({
    words: `In place of ${fastener.name}, set ${better ?? "a longer one"} where the stack is ${showFine(grip.value, style)}.`,
  }));
}

/** A length of as-built.csv with its plan and what it may be off. */
interface SizeCheck {
  /** The line of the table. */
  readonly row: AsBuiltRow;
  /** What was measured. */
  readonly real: Length;
  /** What it should be. */
  readonly planned: Length;
  /** How far off it may be. */
  readonly allowed: Length;
}

function sizeChecks(input: ReviewInput): readonly SizeCheck[] {
  return input.measurements.asBuilt.flatMap((row): SizeCheck[] => {
    if (row.length === undefined) return [];
    const plan = planOf(row.what, row.of, row.at, input);
    return plan === undefined ? [] : [{ row, real: row.length, ...plan }];
  });
}

type Plan = Pick<SizeCheck, "planned" | "allowed">;

function planOf(
  what: AsBuiltMeasure,
  of: string,
  at: string | undefined,
  { parts }: ReviewInput,
): Plan | undefined {
  const piece = sheetPieces(parts).find(({ id }) => id === of);
  const opened = sheetPieces(parts)
    .flatMap(({ id, openings }) => openings.map((one) => ({ id: `${id}.${one.name}`, one })))
    .find(({ id }) => id === of)?.one;
  const sawn = piece?.role === "leaf" ? tolerance.doorway : tolerance.sawn;
  const size = parts.sections.find(({ name }) => name === of)?.outside.size;
  const face = { front: [size?.x, size?.z], side: [size?.y, size?.z], top: [size?.x, size?.y] }[at ?? ""];
  const [one, other] = face ?? [piece?.width, piece?.height];
  const plan = (planned: Length | undefined, allowed: Length): Plan | undefined =>
    planned === undefined ? undefined : { planned, allowed };
  switch (what) {
    case "width":
      return plan(piece?.width, sawn);
    case "height":
      return plan(piece?.height, sawn);
    case "diagonals apart":
      return one === undefined || other === undefined
        ? undefined
        : { planned: Length.si(0), allowed: diagonalDifference(one, other) };
    case "bar length":
      return plan(parts.bars.find(({ id }) => id === of)?.length, tolerance.bar);
    case "opening width":
      return plan(opened?.width, openingTolerance(of, parts));
    case "opening height":
      return plan(opened?.height, openingTolerance(of, parts));
    case "outside width":
      return plan(size?.x, tolerance.box);
    case "outside depth":
      return plan(size?.y, tolerance.box);
    case "outside height":
      return plan(size?.z, tolerance.box);
    case "gap":
      return plan(parts.panels.find(({ id }) => id === of)?.leaf?.clearance, tolerance.gap);
    default:
      return undefined;
  }
}

/** What to do about a length that is out, by how far. */
function mend({ row: { what, of, at }, real, planned }: SizeCheck, show: (length: Length) => string): string {
  const off = show(Length.si(Math.abs(real - planned)));
  const over = real > planned;
  switch (what) {
    case "width":
    case "height":
      return over ? `Plane ${off} off ${of}.` : `Cut ${of} anew from an offcut, or shim it by ${off}.`;
    case "bar length":
      return over ? `Cut ${off} off ${of}.` : `Cut ${of} anew, or leave the gap under its corner.`;
    case "opening width":
    case "opening height":
      return over ? `Cover ${of} with a frame, or saw its panel anew.` : `File ${off} out of ${of}.`;
    case "gap":
      return over
        ? `Shim the hinges of ${of}, or the latch side, by ${off}.`
        : `Plane ${off} off ${of}${at === undefined ? "" : ` at the ${at}`}.`;
    case "diagonals apart":
      return `Loosen the clamps of ${of}, push the longer diagonal shorter, and measure again.`;
    default:
      return over
        ? `Look for a panel of ${of} that stands off its neighbour.`
        : `Look for a panel of ${of} that runs past.`;
  }
}

const sizeName = ({ row: { what, of, at } }: SizeCheck): string =>
  `${what} of ${of}${at === undefined ? "" : ` (${at})`}`;

/** Whether a part came out as long or wide as planned. */
export const sizeAsBuilt: Question = question({
  id: "assembly.as-built-size",
  about: each(
    sizeChecks,
    ({ row: { what, of, at } }) =>
      [what.replaceAll(" ", "-"), of, ...(at === undefined ? [] : [at])].join("."),
    sizeName,
  ),
  ask: (one) => `Is the ${sizeName(one)} as planned?`,
  tier: "handling",
  cautions: [],
  answer: (input, _, check) => {
    const style = styleOf(input.case);
    const show = (length: Length): string => showFine(length, style);
    const { real, planned, allowed } = check;
    return {
      demand: fineAmount("off the plan", Length.si(Math.abs(real - planned))),
      capacity: fineAmount("allowed", allowed),
      facts: `It measures ${show(real)}; ${show(planned)} was planned.`,
      remedies: [{ words: mend(check, show) }],
      because: [],
      limit: practice,
    };
  },
});

/** A section that was on the scale. */
interface Weighing {
  /** Its name. */
  readonly section: string;
  /** Whether what rides in it was in it. */
  readonly which: "weight empty" | "weight loaded";
  /** What the scale said. */
  readonly real: Mass;
  /** What was worked out before. */
  readonly planned: number;
}

function weighings(input: ReviewInput): readonly Weighing[] {
  const items = plannedMasses(input);
  return input.parts.sections.flatMap(({ name }) =>
    (["weight empty", "weight loaded"] as const).flatMap((which) => {
      const real = weighedAs(input.measurements.asBuilt, name, which);
      const mine = items.filter(
        ({ section, group }) => section === name && (which === "weight loaded" || group !== "contents"),
      );
      return real === undefined ? [] : [{ section: name, which, real, planned: massOfAll(mine) }];
    }),
  );
}

/** Whether a section weighs what was worked out; all other answers use what the scale said. */
export const weightAsBuilt: Question = question({
  id: "assembly.as-built-weight",
  about: each(
    weighings,
    ({ section, which }) => `${section}.${which.replace("weight ", "")}`,
    ({ section, which }) => `${section}, ${which.replace("weight ", "")}`,
  ),
  ask: ({ section, which }) => `Does ${section}, ${which.replace("weight ", "")}, weigh what was planned?`,
  tier: "handling",
  cautions: [],
  answer: (input, _, { real, planned }) => {
    const style = styleOf(input.case);
    return {
      demand: amount(Mass, "off the plan", Mass.si(Math.abs(real - planned))),
      capacity: amount(Mass, "allowed", Mass.si(tolerance.mass * planned)),
      facts: `It weighs ${Mass.show(real, style)}, which is ${offPlan(real, planned)} than the ${Mass.show(Mass.si(planned), style)} that was planned. Lifting, rolling, tipping and falling are answered with the scale's figure.`,
      remedies: [
        { words: "Read the answers about lifting, stairs and tipping again before the first lift." },
      ],
      because: [],
      limit: practice,
    };
  },
});
