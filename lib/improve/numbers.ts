/** The numbers of a case file: where they stand, and how another value of one is written. */
import { placesOf, type Texts } from "../design/index.js";
import { readNumber } from "../quantity/index.js";

/** A number of the case file. */
export interface CaseNumber {
  /** Its full place: "journey.people". */
  readonly place: string;
  /** As it stands in the file: "14-1/2", "25 psf". */
  readonly text: string;
  /** Its value in the unit that stands behind it. */
  readonly value: number;
  /** The unit behind it; empty where none stands there. */
  readonly unit: string;
  /** Whether it counts things. */
  readonly counts: boolean;
}

/** Blocks whose numbers nothing but money or words rests on. */
const apart = /^(business|keep|build\.facing\.oversize)(\.|$)/;

/** Words whose numbers count things. */
const counting = /\.(count|straps|people|brakes|blocks|sockets|cable gauge|wire gauge|trips per look)$/;

/** Every number of a case file, in its order. */
export function numbersOf(texts: Texts): readonly CaseNumber[] {
  const text = texts["case.yaml"] ?? "";
  return leavesOf(text).flatMap(({ place, value }): CaseNumber[] => {
    if (apart.test(place)) return [];
    const number = numberIn(String(value));
    return number ? [{ place, text: String(value), ...number, counts: counting.test(place) }] : [];
  });
}

interface Leaf {
  readonly place: string;
  readonly value: unknown;
}

function leavesOf(text: string): readonly Leaf[] {
  const top = [...text.matchAll(/^([^\s#:"][^:]*):/gm)].map(([, word = ""]) => word);
  return top.flatMap((word) =>
    placesOf(text, word)
      .slice(0, 1)
      .flatMap(({ value }) => leavesIn(word, value)),
  );
}

function leavesIn(place: string, value: unknown): readonly Leaf[] {
  if (typeof value !== "object" || value === null) return [{ place, value }];
  return Object.entries(value).flatMap(([word, inner]) => leavesIn(`${place}.${word}`, inner));
}

function numberIn(text: string): Pick<CaseNumber, "value" | "unit"> | undefined {
  const [, number = "", unit = ""] = /^\s*(\d[\d./ -]*?)\s*([^\d\s./-].*)?$/.exec(text) ?? [];
  if (number === "") return undefined;
  try {
    return { value: readNumber(number), unit: unit.trim() };
  } catch {
    return undefined;
  }
}

/** Figures to which another value is written. */
const digits = 5;

/** A number with another value, as it is written in the file. */
export function writtenNumber({ unit, counts }: Pick<CaseNumber, "unit" | "counts">, value: number): string {
  const number = counts ? `${Math.round(value)}` : `${Number(value.toPrecision(digits))}`;
  return unit === "" ? number : `${number} ${unit}`;
}
