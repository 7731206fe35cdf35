/** What the page and its workers say to each other. Every message carries the number of the edit that it belongs to. */
import type { Change, Texts } from "../design/index.js";
import type { Verdict } from "../findings/index.js";
import type { Mending } from "../improve/index.js";
import type { HandedAnswer } from "../kept/index.js";
import type { CaseSolid } from "../model/index.js";
import type { FindingView } from "../page/view.js";
import type { Problem } from "../problem.js";
import type { BenchValue, BenchView } from "./bench/view.js";
import type { FormEntry } from "./case-form.js";
import type { MeasuringView } from "./measuring/view.js";
import type { RackView } from "./rack.js";

/** One worker answers at once what is quick, then works on single panels; the other works on the joined boxes. */
export type Share = "quick" | "deep";

/** From the page to a worker. */
export type Asked =
  | {
      /** The first message: which share is this worker's, and the job's name. */
      readonly kind: "begin";
      /** Which share is this worker's. */
      readonly share: Share;
      /** The job's name. */
      readonly job: string;
    }
  | {
      /** The files as they are now. */
      readonly kind: "files";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** The files, by name. */
      readonly texts: Texts;
    }
  | {
      /** A change of the files that the worker has. */
      readonly kind: "change";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** In order. */
      readonly changes: readonly Change[];
    }
  | {
      /** One more question, for who is done with its share. */
      readonly kind: "also";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** The question's id. */
      readonly question: string;
    }
  | {
      /** How far a panel would sag with an opening held elsewhere. */
      readonly kind: "held";
      /** Which opening, and how far from where it is. */
      readonly opening: HeldOpening;
    }
  | {
      /** The working of one answer. */
      readonly kind: "working";
      /** Id of the answer. */
      readonly id: string;
    }
  | {
      /** What would mend an answer. */
      readonly kind: "mend";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** Id of the answer. */
      readonly id: string;
    }
  | {
      /** A place of the case file to be locked. */
      readonly kind: "lock";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** The place. */
      readonly place: string;
    }
  | {
      /** What the other worker has worked out. */
      readonly kind: "taken";
      /** To be kept. */
      readonly answers: readonly HandedAnswer[];
    }
  | {
      /** The recipe, to print. */
      readonly kind: "papers";
    }
  | {
      /** The work at the bench, a step a screen. */
      readonly kind: "bench";
    }
  | {
      /** What was measured, row by row, with what comes of it. */
      readonly kind: "measuring";
    }
  | {
      /** A figure from the bench, to be judged. */
      readonly kind: "judge";
      /** What it is known by. */
      readonly name: string;
      /** The figure, and what it is read together with. */
      readonly values: readonly BenchValue[];
    }
  | {
      /** All figures from the bench, as as-built.csv. */
      readonly kind: "as-built";
      /** All of them. */
      readonly values: readonly BenchValue[];
      /** The edit that puts the table among the files; the text alone is told where absent. */
      readonly edit?: number;
    };

/** An opening in the hand, not let go of yet. */
export interface HeldOpening {
  /** The panel. */
  readonly panel: string;
  /** The opening's name. */
  readonly name: string;
  /** How far to the right of where it is, m. */
  readonly right: number;
  /** How far above where it is, m. */
  readonly up: number;
}

/** An answer without its working. */
export interface AnswerView extends Omit<FindingView, "because" | "source"> {
  /** Its verdict. */
  readonly verdict: Verdict;
}

/** What a section weighs, in words. */
export interface SectionMass {
  /** The section. */
  readonly name: string;
  /** Loaded. */
  readonly mass: string;
}

/** Stands between the three sizes of a case. */
export const betweenSizes = " × ";

/** Figures of the whole case, in words. */
export interface Totals {
  /** Over metal: width, depth and height, with `betweenSizes` between. */
  readonly size: string;
  /** What it weighs, ready to go, and without what rides inside. */
  readonly mass: string;
  /** Of the sections by themselves, loaded. */
  readonly sections: readonly SectionMass[];
  /** The bill for its material. */
  readonly cost: string;
  /** Bench time. */
  readonly hours: string;
  /** What has no answer, and why: a sentence each. */
  readonly lacking: readonly string[];
}

/** Something on a face that can be moved by hand. */
export interface MovableThing {
  /** Its name in words. */
  readonly name: string;
  /** Where it stands in case.yaml: "across" and "up" are beside each other there. */
  readonly place: string;
  /** The corner that its distances are measured from. */
  readonly from: "bottom-left" | "bottom-right" | "top-left" | "top-right";
  /** From that corner's upright edge, m. */
  readonly across: number;
  /** From that corner's level edge, m. */
  readonly up: number;
  /** Its outline on the face, as the data of an SVG path, mm, y up. */
  readonly path: string;
  /** Box of the outline: left, bottom, width, height, mm. */
  readonly box: readonly [number, number, number, number];
  /** What it is. */
  readonly kind: "opening" | "hardware";
}

/** One face of a section, seen from outside. */
export interface FaceView {
  /** "upper.front". */
  readonly id: string;
  /** Cut size, mm. */
  readonly width: number;
  /** Cut size, mm. */
  readonly height: number;
  /** What can be moved on it. */
  readonly things: readonly MovableThing[];
  /** Cut-outs that follow from hardware, as paths. */
  readonly cuts: readonly string[];
}

/** The case as the page draws and edits it. */
export interface CaseView {
  /** Its name. */
  readonly name: string;
  /** Units of the pages. */
  readonly system: "inch" | "metric";
  /** The unit of bare lengths in the file. */
  readonly lengths: "in" | "mm";
  /** Its faces. */
  readonly faces: readonly FaceView[];
}

/** From a worker to the page. */
export type Told =
  | {
      /** Files after a change. */
      readonly kind: "texts";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** The files, by name. */
      readonly texts: Texts;
    }
  | {
      /** A change that could not be made, and why. */
      readonly kind: "refused";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** Why, in a sentence. */
      readonly words: string;
    }
  | {
      /** What is wrong with the files; the answers stay those of the last files that were right. */
      readonly kind: "problems";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** All of them. */
      readonly problems: readonly Problem[];
    }
  | {
      /** The case, read. */
      readonly kind: "case";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** As the page needs it. */
      readonly case: CaseView;
    }
  | {
      /** Every field of the case file. */
      readonly kind: "form";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** In the order of the file. */
      readonly form: readonly FormEntry[];
    }
  | {
      /** What lies on the rack, and the cutting plan. */
      readonly kind: "rack";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** As the page shows it. */
      readonly rack: RackView;
    }
  | {
      /** What fills space, fasteners and laminate left out. */
      readonly kind: "solids";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** Each as it stands in the stacked case. */
      readonly solids: readonly CaseSolid[];
    }
  | {
      /** Figures of the whole case. */
      readonly kind: "totals";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** In words. */
      readonly totals: Totals;
    }
  | {
      /** Answers to one question, all that it is asked of. */
      readonly kind: "answers";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** The question's id. */
      readonly question: string;
      /** Without their working. */
      readonly answers: readonly AnswerView[];
    }
  | {
      /** Answers to one question from less than it rests on in the end: better ones follow. */
      readonly kind: "first";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** The question's id. */
      readonly question: string;
      /** Without their working. */
      readonly answers: readonly AnswerView[];
    }
  | {
      /** Questions that belong to no share, to be handed out. */
      readonly kind: "spare";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** Their ids. */
      readonly questions: readonly string[];
    }
  | {
      /** Changes with which an answer holds, as far as they are tried, the cheapest first. */
      readonly kind: "mended";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** Id of the answer. */
      readonly id: string;
      /** The changes. */
      readonly mendings: readonly Mending[];
      /** Whether all that is known was tried. */
      readonly isWhole: boolean;
    }
  | {
      /** What was worked out and the other worker needs too. */
      readonly kind: "handed";
      /** Which share is this worker's. */
      readonly share: Share;
      /** To be kept there. */
      readonly answers: readonly HandedAnswer[];
    }
  | {
      /** How far a panel would sag with an opening where it is held. */
      readonly kind: "held";
      /** In a sentence, which says how rough it is. */
      readonly words: string;
    }
  | {
      /** Nothing is left to do for an edit. */
      readonly kind: "done";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** Which share is this worker's. */
      readonly share: Share;
      /** Every question of this share, so that those that are asked no more go. */
      readonly questions: readonly string[];
    }
  | {
      /** The working of an answer, as markup of this library. */
      readonly kind: "working";
      /** Id of the answer. */
      readonly id: string;
      /** Markup of this library. */
      readonly html: string;
    }
  | {
      /** The recipe as a page of its own; or why there is none. */
      readonly kind: "papers";
      /** Markup of this library. */
      readonly html: string;
    }
  | {
      /** The work at the bench. */
      readonly kind: "bench";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** As the page shows it; or why there is none. */
      readonly bench: BenchView | { readonly refused: string };
    }
  | {
      /** What was measured, as the files say it now. */
      readonly kind: "measuring";
      /** The edit that it belongs to. */
      readonly edit: number;
      /** As the page shows it. */
      readonly measuring: MeasuringView;
    }
  | {
      /** What becomes of a figure from the bench. */
      readonly kind: "judged";
      /** What it is known by. */
      readonly name: string;
      /** Answers about it. */
      readonly answers: readonly AnswerView[];
      /** Why it cannot be read; empty where it can. */
      readonly trouble: string;
    }
  | {
      /** The figures from the bench as a table. */
      readonly kind: "as-built";
      /** The text of as-built.csv. */
      readonly text: string;
      /** Why there is none; empty where there is. */
      readonly trouble: string;
    };
