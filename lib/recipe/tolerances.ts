import { Length } from "../quantity/index.js";

/** How far off a thing may be. Common practice, no source. */
export const tolerance: {
  /** Of a sheet piece's width and height. */
  readonly sawn: Length;
  /** Of a bar's length. */
  readonly bar: Length;
  /** Of an opening's size and place. */
  readonly opening: Length;
  /** Of a door's gap. */
  readonly gap: Length;
  /** Of a section's outside. */
  readonly box: Length;
  /** Share of the planned adhesive. */
  readonly adhesive: number;
  /** Share of a reckoned mass. */
  readonly mass: number;
} = {
  sawn: Length.of(1, "mm"),
  bar: Length.of(0.5, "mm"),
  opening: Length.of(1, "mm"),
  gap: Length.of(0.5, "mm"),
  box: Length.of(2, "mm"),
  adhesive: 0.15,
  mass: 0.05,
};
