/** What every thing of a case that can be asked leans on: its job, the units of its answers, its findings. */
import { type Finding, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  Area,
  Length,
  Mass,
  missingNumber,
  type Quantity,
  type QuantityKind,
  Ratio,
  type ShowStyle,
  type UnitNumber,
  unitNumber,
} from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { printed } from "./named.js";

/** Width, depth and height, or as many of them as a thing has. */
export interface AskedSize {
  /** Left to right. */
  readonly width: UnitNumber<"length">;
  /** Front to back; absent for what is flat. */
  readonly depth?: UnitNumber<"length">;
  /** Up. */
  readonly height: UnitNumber<"length">;
}

/** A thing of a case. */
export abstract class Asked {
  /** Its name, as the case file and the pages say it. */
  readonly name: string;
  readonly #job: Job;

  constructor(job: Job, name: string) {
    this.#job = job;
    this.name = name;
  }

  /** Every finding about it, the most dangerous first. The first call reviews the whole case, which takes seconds. */
  get findings(): readonly Finding[] {
    return findingsAbout(this.#job, this.name);
  }

  /** Its name. */
  toString(): string {
    return this.name;
  }

  [printed](): string {
    return this.name;
  }
}

/** Findings whose subject is a thing or a part of it: "upper.front", "shelf.supply shelf". */
export function findingsAbout({ review }: Job, name: string): readonly Finding[] {
  return review.findings.filter(({ id, subject }) => subject === name || `${id}.`.includes(`.${name}.`));
}

/** Lists of a review by the first word of the ids in them. */
export const topics = {
  stiffness: "stiffness",
  strength: "strength",
  joints: "joints",
  travel: "travel",
  "fit-out": "fitOut",
  money: "money",
  assembly: "assembly",
} as const;

/** What findings are about. */
export type Topic = keyof typeof topics;

/** The findings of the topic that an id begins with; all of them for another word. */
export function findingsOfTopic({ review }: Job, id: string): readonly Finding[] {
  const topic = id.split(".")[0] ?? "";
  return topic in topics ? review[topics[topic as keyof typeof topics]] : review.findings;
}

/**
 * The finding of an id.
 *
 * @throws Refusal where nothing of the kind was asked of the thing
 */
export function findingOf(job: Job, id: string): Finding {
  const found = findingsOfTopic(job, id).find((one) => one.id === id);
  if (!found) throw new Refusal(`no finding "${id}": this is not asked of it`);
  return found;
}

/** Quantities in the units of a job. */
export interface Units {
  /** A size, as a rule reads it. */
  length(value: Length): UnitNumber<"length">;
  /** A sag or a thickness, finer than a rule. */
  fine(value: Length): UnitNumber<"length">;
  /** A mass. */
  mass(value: number): UnitNumber<"mass">;
  /** An area. */
  area(value: number): UnitNumber<"area">;
  /** A share, in percent. */
  share(value: number): UnitNumber<"ratio">;
  /** Any other quantity. */
  of<Name extends string>(kind: QuantityKind<Name>, value: Quantity<Name>): UnitNumber<Name>;
}

/** The units of a job's answers. */
export function unitsOf(job: Pick<Job, "case">): Units {
  const style = styleOf(job.case);
  const fineStyle: ShowStyle =
    job.case.units === "inch" ? { unit: "in", exact: true, digits: 3 } : { unit: "mm", digits: 3 };
  return {
    length: (value) => unitNumber(Length, value, style),
    fine: (value) => unitNumber(Length, value, fineStyle),
    mass: (value) => unitNumber(Mass, value, style),
    area: (value) => unitNumber(Area, value, style),
    share: (value) => unitNumber(Ratio, value, { unit: "%", digits: 3 }),
    of: (kind, value) => unitNumber(kind, value, style),
  };
}

/**
 * An answer, or what stands in its place where it cannot be given: it prints why, and refuses to be reckoned with. So
 * one panel that has no sag does not take along the list of all of them.
 */
export function orWhyNot<Name extends string>(
  kind: QuantityKind<Name>,
  answer: () => UnitNumber<Name>,
): UnitNumber<Name> {
  try {
    return answer();
  } catch (error) {
    if (error instanceof Refusal) return missingNumber(kind, error);
    throw error;
  }
}
