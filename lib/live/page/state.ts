/** What the page knows: the files, their history, and the answers with the edit that each belongs to. */
import type { Mending } from "../../improve/index.js";
import type { CaseSolid } from "../../model/index.js";
import type { Problem } from "../../problem.js";
import type { FormEntry } from "../case-form.js";
import type { Answers, ChangeTold } from "../changed.js";
import type { AnswerView, CaseView, Share, Totals } from "../messages.js";
import type { RackView } from "../rack.js";

/** Texts of the job's files, by name. */
export type Texts = Readonly<Record<string, string>>;

/** An answer, and the edit that it belongs to. */
export interface KeptAnswer {
  /** Without its working. */
  readonly answer: AnswerView;
  /** The edit. */
  readonly edit: number;
  /** The question it answers. */
  readonly question: string;
  /** Whether it rests on less than it will in the end. */
  readonly isFirst?: boolean;
}

/** What mends an answer, as far as it is tried. */
export interface Mendings {
  /** The cheapest first. */
  readonly found: readonly Mending[];
  /** Whether all that is known was tried. */
  readonly isWhole: boolean;
}

/** All that is shown. */
export interface State {
  /** The job's name. */
  job: string;
  /** Number of the newest edit. */
  edit: number;
  /** The files as they are now. */
  texts: Texts;
  /** The files before each edit. */
  readonly past: Texts[];
  /** The files after each edit that was undone. */
  readonly future: Texts[];
  /** The case as last read; undefined at first. */
  view: CaseView | undefined;
  /** Every field of the case file, as last read. */
  form: readonly FormEntry[];
  /** What lies on the rack, as last read. */
  rack: RackView | undefined;
  /** The edit that the rack belongs to. */
  rackEdit: number;
  /** What fills space. */
  solids: readonly CaseSolid[];
  /** Answers by their id. */
  readonly answers: Map<string, KeptAnswer>;
  /** Figures of the whole case. */
  totals: Totals | undefined;
  /** The edit that the figures belong to. */
  totalsEdit: number;
  /** What is wrong with the files; empty for nothing. */
  problems: readonly Problem[];
  /** Answers and totals before the last edit. */
  before: { readonly answers: Answers; readonly totals: Totals | undefined };
  /** What the last edit changed, so far. */
  changes: readonly ChangeTold[];
  /** Workers that have nothing to do for the newest edit. */
  readonly done: Set<Share>;
  /** Questions that are still to be handed out. */
  spare: readonly string[];
  /** The question that each worker was handed last. */
  readonly lent: Map<Share, string>;
  /** When the newest edit was made, ms. */
  since: number;
  /** What mends an answer of the newest edit, by its id. */
  readonly mendings: Map<string, Mendings>;
  /** Answers whose working is open, with it. */
  readonly workings: Map<string, string>;
}

/** The state before anything is read. */
export function newState(job: string, texts: Texts): State {
  return {
    job,
    edit: 0,
    texts,
    past: [],
    future: [],
    view: undefined,
    form: [],
    rack: undefined,
    rackEdit: -1,
    solids: [],
    answers: new Map(),
    totals: undefined,
    totalsEdit: -1,
    problems: [],
    before: { answers: new Map(), totals: undefined },
    changes: [],
    done: new Set(),
    spare: [],
    lent: new Map(),
    since: performance.now(),
    mendings: new Map(),
    workings: new Map(),
  };
}

/** The answers alone. */
export function answersOf({ answers }: State): Answers {
  return new Map([...answers].map(([id, { answer }]) => [id, answer]));
}

/** Whether everything is answered for the newest edit. */
export function isSettled({ done, problems, spare }: State): boolean {
  return problems.length > 0 || (done.size === 2 && spare.length === 0);
}
