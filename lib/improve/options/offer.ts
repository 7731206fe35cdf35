/** What an offer of options is asked with, and the pieces that offers are made of. */
import { type CasePlace, set } from "../../design/index.js";
import type { Finding } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import type { Option } from "../option.js";
import { overBy } from "../standing.js";

/** A finding that should be mended, and the case that it is of. */
export interface Mending {
  /** The case with its tables and review. */
  readonly job: Job;
  /** What does not hold. */
  readonly finding: Finding;
  /** What the finding is about: its id behind the question's own, such as "lower.left.side door". */
  readonly subject: string;
  /** How many times too much is asked; 2 where nothing is compared. */
  readonly over: number;
}

/** Options that may mend a finding. */
export type Offer = (mending: Mending) => readonly Option[];

/** Readies a finding for the offers of its question. */
export function mendingOf(job: Job, finding: Finding, question: string): Mending {
  const over = overBy(finding);
  return {
    job,
    finding,
    subject: finding.id.slice(question.length + 1),
    over: over !== undefined && over > 1 ? over : 2,
  };
}

/** What an option is, beside the finding that it is offered for. */
export type Offered = Omit<Option, "helps" | "rule" | "id"> & {
  /** What tells it from others of its lever. */
  readonly setting: string;
  /** Whether people must keep it; not unless said. */
  readonly rule?: boolean;
};

/** An option for a finding. */
export function option({ finding }: Mending, { setting, rule = false, ...told }: Offered): Option {
  return { ...told, rule, id: `${told.lever}: ${setting}`, helps: [finding.id] };
}

/** A value put at a place that is its own lever. */
export function setting(
  mending: Mending,
  at: CasePlace,
  to: string,
  words: string,
  more: Partial<Pick<Offered, "rule" | "unpriced">> = {},
): Option {
  return option(mending, { lever: at, setting: to, words, changes: [set(at, to)], ...more });
}
