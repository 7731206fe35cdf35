/** What an order is made of: steps, and what it must meet. */

/** One step of the work. */
export interface AssemblyStep {
  /** Its name among the steps, each once: "close upper". */
  readonly key: string;
  /** Of two steps that may both come next, the one with the lower number does; equal ones as they stand in the list. */
  readonly rank: number;
}

/** What an order must meet. */
export interface OrderNeed {
  /** The step that must be early enough. */
  readonly step: string;
  /**
   * The step comes before all the steps of at least one of these lists. An empty list is met by any order; no list at
   * all by none.
   */
  readonly before: readonly (readonly string[])[];
  /** Why, in a builder's words: "the washers are held from the open side". */
  readonly why: string;
}
