/** The steps of building a case, as far as their order matters. */
import type { AssemblyStep } from "../../assembly/index.js";

/** A stretch of the work, as the recipe tells it. */
export type StageName = "pieces" | "flat" | "box" | "inside" | "closing" | "doors" | "joined" | "contents";

/** One step of building a case. */
export interface WorkStep extends AssemblyStep {
  /** In a builder's words, as an order: "put on upper.top". */
  readonly words: string;
  /** The stretch of the work that it belongs to. */
  readonly stage: StageName;
  /** Its section; absent for a step of the whole case. */
  readonly section?: string;
  /** What it puts in place: a content, a shelf, a drawer, a piece of hardware, a bar. */
  readonly subject?: string;
}
