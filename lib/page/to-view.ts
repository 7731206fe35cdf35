/** Makes views out of what the formula and review rooms return. */

import { type Amount, byDanger, type Finding } from "../findings/index.js";
import type { WorkedLine, WorkedValue } from "../formula.js";
import { isMoney, isUnitNumber, Money, type ShowStyle, type UnitNumber } from "../quantity/index.js";
import { showCitation } from "../source.js";
import { figureDrawing } from "./figures/figure-drawing.js";
import { type PutIn, substitute } from "./substitute.js";
import type { AmountView, FindingView, SymbolView, View, WorkedView } from "./view.js";

/** A place or a size: what it says, in the words that it is shown with. */
const measureWords = {
  x: "to the right",
  y: "to the back",
  z: "up",
  width: "wide",
  depth: "deep",
  height: "high",
} as const;

/** A place by its x, y and z, or a size by its width, depth and height, each with its unit. */
export type Measures = { readonly [Name in keyof typeof measureWords]?: UnitNumber<string> };

/**
 * What can be turned into views: a worked line, a finding, a sentence, a quantity with its unit, money, a place or a size,
 * a view, or a list of such.
 */
export type Showable =
  | WorkedLine
  | Finding
  | View
  | string
  | UnitNumber<string>
  | Money
  | Measures
  | readonly Showable[];

/** The findings that are shown with their pictures among others: the worst of each question. */
export function pictured(things: readonly unknown[]): ReadonlySet<Finding> {
  const worst = new Map<string, Finding>();
  for (const finding of byDanger(things.filter(isFinding)))
    worst.set(finding.asks, worst.get(finding.asks) ?? finding);
  return new Set(worst.values());
}

function isFinding(thing: unknown): thing is Finding {
  return typeof thing === "object" && thing !== null && "verdict" in thing && "question" in thing;
}

/**
 * Views of anything showable, in order; text is a sentence.
 *
 * @param drawn the findings that are shown with their pictures; the worst of each question of a list unless said
 * @throws TypeError for anything else, with what it got
 */
export function toViews(
  thing: Showable,
  style?: ShowStyle,
  drawn: ReadonlySet<Finding> = pictured([thing].flat(9)),
): View[] {
  if (isUnitNumber(thing)) return [{ kind: "sentence", text: thing.show() }];
  if (isMoney(thing)) return [{ kind: "sentence", text: Money.show(thing) }];
  if (typeof thing === "string") return [{ kind: "sentence", text: thing }];
  if (Array.isArray(thing))
    return (thing as readonly Showable[]).flatMap((one) => toViews(one, style, drawn));
  if (typeof thing === "object" && thing !== null) {
    if ("kind" in thing) return [thing];
    if ("verdict" in thing)
      return [drawn.has(thing) ? picturedView(thing, style) : findingView(thing, style)];
    if ("equation" in thing) return [workedView(thing, style)];
    const text = measuresInWords(thing as Measures);
    if (text !== undefined) return [{ kind: "sentence", text }];
  }
  throw new TypeError(
    `show: expected a worked line, a finding, a table, a chart, a drawing, a sentence or a list of those, got ${described(thing)}`,
  );
}

/** "11-3/4 in wide, 13-3/4 in high"; undefined for anything but a place or a size. */
function measuresInWords(thing: Measures): string | undefined {
  const said = Object.entries(measureWords).flatMap(([name, words]) => {
    const value = thing[name as keyof Measures];
    return isUnitNumber(value) ? [`${value.show()} ${words}`] : [];
  });
  return said.length > 0 && said.length === Object.keys(thing).length ? said.join(", ") : undefined;
}

function described(thing: unknown): string {
  return typeof thing === "object" && thing !== null
    ? `an object with ${Object.keys(thing).slice(0, 6).join(", ") || "nothing in it"}`
    : `${String(thing)} (${typeof thing})`;
}

/** A worked line in the reader's units, with its numbers put into the equation where they fit. */
export function workedView(line: WorkedLine, readers?: ShowStyle): WorkedView {
  // Decimals, so that a reader with a pocket calculator gets the same result.
  const style: ShowStyle = { ...readers, exact: true, digits: 4 };
  const { id, title, equation, source, validity, warnings } = line;
  const inputs = line.inputs.map((input) => symbolView(input, style));
  const results = line.results.map((result) => symbolView(result, style));
  return {
    kind: "worked",
    id,
    title,
    equation,
    substituted: substitute(equation, line.inputs.map(putIn(style)), line.results.map(putIn(style))),
    inputs,
    results,
    source: source.map(showCitation),
    validity,
    warnings,
  };
}

/** A value as it goes into the equation: in the symbol's own unit where it has one. */
function putIn(style: ShowStyle): (worked: WorkedValue) => PutIn {
  const one = ({ symbol, number, unit, fields, items, show }: WorkedValue): PutIn => ({
    symbol,
    value: show(unit === undefined ? style : { ...style, unit }),
    ...(number === undefined ? {} : { number }),
    ...(fields ? { fields: fields.map(one) } : {}),
    ...(items ? { items: items.map((item) => item.map(one)) } : {}),
  });
  return one;
}

function symbolView(worked: WorkedValue, style: ShowStyle | undefined): SymbolView {
  return { symbol: worked.symbol, meaning: worked.meaning, value: worked.show(style) };
}

/** A finding in the reader's units, with its picture where it has one. */
export function picturedView(finding: Finding, style?: ShowStyle): FindingView {
  const figure = finding.figure?.();
  const view = findingView(finding, style);
  return figure ? { ...view, drawing: figureDrawing(figure) } : view;
}

/** A finding in the reader's units, without its picture. */
export function findingView(finding: Finding, style?: ShowStyle): FindingView {
  const { demand, capacity, because, source, remedies, figure: _, ...plain } = finding;
  return {
    kind: "finding",
    ...plain,
    ...(demand ? { demand: amountView(demand, style) } : {}),
    ...(capacity ? { capacity: amountView(capacity, style) } : {}),
    because: because.map((line) => workedView(line, style)),
    remedies: remedies.map(({ words, gives = [] }) => ({
      words,
      gives: gives.map((one) => amountView(one, style)),
    })),
    source: source.map(showCitation),
  };
}

function amountView(amount: Amount, style: ShowStyle | undefined): AmountView {
  return { meaning: amount.meaning, value: amount.show(style) };
}
