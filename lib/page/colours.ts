/** The few colours of every page, chart and drawing. Letters on their ground pass WCAG AA (tested). */

/** Ink, paper and lines. */
export const colours = {
  ink: "#1d2429",
  soft: "#4a5660",
  line: "#b9c1c7",
  paper: "#ffffff",
  ground: "#f4f5f2",
  accent: "#1a557f",
} as const;

/** Letters and ground of each verdict. */
export const verdictColours = {
  holds: { ink: "#17633a", ground: "#eaf4ed" },
  close: { ink: "#7a4f00", ground: "#fbf2de" },
  fails: { ink: "#a3211b", ground: "#fbeceb" },
  unknown: { ink: "#4a5360", ground: "#eef0f2" },
  broken: { ink: "#6b2f75", ground: "#f6eef7" },
} as const;

/** The same in the dark, for a reader whose screen asks for it. */
export const darkColours: Readonly<Record<keyof typeof colours, string>> = {
  ink: "#e7ebee",
  soft: "#b5c0c8",
  line: "#4b565e",
  paper: "#1f272c",
  ground: "#151b1f",
  accent: "#8cc4ee",
};

/** Letters and ground of each verdict in the dark. */
export const darkVerdictColours: Readonly<
  Record<keyof typeof verdictColours, { readonly ink: string; readonly ground: string }>
> = {
  holds: { ink: "#7fd3a2", ground: "#17301f" },
  close: { ink: "#ecc06a", ground: "#352a12" },
  fails: { ink: "#f5a09a", ground: "#3b1a18" },
  unknown: { ink: "#b9c4cc", ground: "#2b3338" },
  broken: { ink: "#dcaae5", ground: "#331d38" },
};

/** Series of a chart, told apart by readers with any colour sight, in this order. */
export const seriesColours: readonly string[] = [
  "#1a557f",
  "#b8510d",
  "#2f7d4f",
  "#8a3f7c",
  "#6b5b1e",
  "#4a5660",
];
