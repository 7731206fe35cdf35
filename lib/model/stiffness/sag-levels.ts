/** Where on a panel the sag is how large: lines of equal sag, for a picture of it. */
import {
  bentSheet,
  contourLines,
  formulaElementTarget,
  type HeldEdges,
  meshedPanelProblem,
  type PanelProblem,
  trustedDeflection,
} from "../../fem/index.js";
import { keptByContent } from "../../kept/index.js";
import type { Point2 } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { type SagCase, sagInputs } from "./panel-sag.js";
import { stiffenedSpan } from "./stiffened.js";

/** A place on the panel, m from the lower left corner of its clear span, and how far it sags, m. */
export interface SagPlace {
  /** How far it sags. */
  readonly sag: number;
  /** Where. */
  readonly at: Point2;
}

/** A line of equal sag. */
export interface SagLevel {
  /** How far every place on it sags, m. */
  readonly sag: number;
  /** The line, m from the lower left corner of the clear span. */
  readonly points: readonly Point2[];
}

/** How a panel sags. */
export interface SagLevels {
  /** Where it sags most. */
  readonly most: SagPlace;
  /** Lines at even steps, some steps with several. */
  readonly levels: readonly SagLevel[];
  /** From one level to the next, m. */
  readonly step: number;
}

/** A line of a picture may lie off by this share of the panel. */
const fineness = 0.003;

/** Bent panels kept, which take room: the one that is looked at. */
const mostKept = 1;

/**
 * Lines of equal sag of a panel, at even steps.
 *
 * @param edges how each edge is held
 * @param stepOf the step for the largest sag, m
 */
export function sagLevels(
  sagCase: SagCase,
  edges: HeldEdges,
  input: ReviewInput,
  stepOf: (most: number) => number,
): SagLevels {
  const inputs = { ...sagInputs(sagCase), ...edges };
  const regions = stiffenedSpan(sagCase.panel, bentSheet(inputs), input);
  const { most, lines } = keptLines({ ...meshedPanelProblem(inputs), regions });
  const step = stepOf(most.sag);
  return { most, step, levels: lines(step) };
}

const keptLines: (problem: PanelProblem) => {
  readonly most: SagPlace;
  readonly lines: (step: number) => readonly SagLevel[];
} = keptByContent(mostKept, (problem) => {
  const { value, at, panel } = trustedDeflection(problem, formulaElementTarget);
  const { length, width } = problem.outline;
  const within = fineness * Math.max(length, width);
  return {
    most: { sag: Math.abs(value), at },
    lines: (step) => {
      const count = Math.ceil(Math.abs(value) / step) - 1;
      return Array.from({ length: count }, (_, i) => (i + 1) * step).flatMap((sag) =>
        contourLines(panel, Math.sign(value) * sag, within).map((points) => ({ sag, points })),
      );
    },
  };
});
