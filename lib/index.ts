/** The face of the library: everything a notebook may import. */
export * from "./bonding/index.js";
export * from "./cutting/index.js";
// Names that two rooms use: the formulas keep theirs, the case's own get a longer one.
export type {
  Layer as FastenedLayer,
  Opening as CaseOpening,
  Section as CaseSection,
} from "./design/index.js";
export * from "./design/index.js";
export * from "./fastening/index.js";
export * from "./fem/index.js";
export * from "./findings/index.js";
export * from "./formula.js";
export * from "./inside/index.js";
export * from "./job/index.js";
export * from "./material/index.js";
export { Layer } from "./material/index.js";
export type { Column as TableFileColumn } from "./measure/index.js";
export * from "./measure/index.js";
export * from "./mechanics/index.js";
export { Opening, type Section } from "./mechanics/index.js";
export * from "./model/index.js";
export * from "./money/index.js";
export * from "./moving/index.js";
export * from "./notebook/index.js";
export type { Column } from "./page/index.js";
export * from "./page/index.js";
export * from "./plan/index.js";
export * from "./problem.js";
export * from "./published-check.js";
export * from "./quantity/index.js";
export * from "./recipe/index.js";
export * from "./refusal.js";
export type { Point2, Shape } from "./shape/index.js";
export { circle, ellipse, notch, polygon, rectangle, slot } from "./shape/index.js";
export * from "./source.js";
