/** The work at the bench as plain data: one step a screen, what is measured at each, clocks for adhesives. */
import type { AsBuiltKey } from "../../recipe/index.js";

/** The whole work, in its order. */
export interface BenchView {
  /** One a screen. */
  readonly steps: readonly BenchStep[];
  /** Drawings and tables of the papers as markup of this library; steps name them by their place here. */
  readonly sheets: readonly string[];
  /** One for each time of each adhesive. */
  readonly clocks: readonly BenchClock[];
}

/** One screen. */
export interface BenchStep {
  /** What it is known by while its words stay the same: a step that changes must be ticked again. */
  readonly id: string;
  /** Heading of the papers that it stands under: "Assembly". */
  readonly section: string;
  /** Heading of its group: "Stage 2. lower: the box without lower.top". */
  readonly heading: string;
  /** What to do, in sentences. */
  readonly words: string;
  /** What the papers print of what is measured or looked at: headings with their cells. */
  readonly about: readonly (readonly [string, string])[];
  /** Short things to tick off. */
  readonly ticks: readonly string[];
  /** What is measured. */
  readonly measures: readonly BenchMeasure[];
  /** Drawing and tables, by their places in the view. */
  readonly sheets: readonly number[];
  /** Clocks that may be started here, by their places in the view. */
  readonly clocks: readonly number[];
  /** Place of the step that made what is measured here; absent where nothing is measured. */
  readonly madeAt?: number;
}

/** A figure to type in. */
export interface BenchMeasure {
  /** What it becomes in as-built.csv. */
  readonly key: AsBuiltKey;
  /** Its name on the papers: "Across". */
  readonly label: string;
  /** Unit of a bare number; empty for money. */
  readonly unit: string;
}

/** A figure that was typed in. */
export interface BenchValue {
  /** What was measured. */
  readonly key: AsBuiltKey;
  /** As it was typed. */
  readonly text: string;
  /** Unit of a bare number; empty for money. */
  readonly unit: string;
}

/** A time that an adhesive takes. */
export interface BenchClock {
  /** The adhesive. */
  readonly adhesive: string;
  /** Which of its times. */
  readonly what: "open" | "press" | "cure";
  /** How long, s. */
  readonly seconds: number;
  /** The same in words. */
  readonly words: string;
}
