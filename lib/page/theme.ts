/** Colours of style sheets: light, until the screen of a reader asks for dark; paper is always light. */
import { colours, darkColours, darkVerdictColours, verdictColours } from "./colours.js";

/** Names of the colours of pages. */
export type Names = keyof typeof colours;
/** Verdicts that have a colour. */
export type Verdicts = keyof typeof verdictColours;

/** A colour that a page may darken: the light one where none is set, as in a notebook of another look. */
function themedColour(name: string, light: string): string {
  return `var(--cw-${name}, ${light})`;
}

/** Ink, paper and lines for a style sheet. */
export const themed: Readonly<Record<Names, string>> = {
  ink: themedColour("ink", colours.ink),
  soft: themedColour("soft", colours.soft),
  line: themedColour("line", colours.line),
  paper: themedColour("paper", colours.paper),
  ground: themedColour("ground", colours.ground),
  accent: themedColour("accent", colours.accent),
};

/** Letters and ground of each verdict for a style sheet. */
export const themedVerdicts: Readonly<Record<Verdicts, { readonly ink: string; readonly ground: string }>> = {
  holds: themedVerdict("holds"),
  close: themedVerdict("close"),
  fails: themedVerdict("fails"),
  unknown: themedVerdict("unknown"),
  broken: themedVerdict("broken"),
};

function themedVerdict(name: Verdicts): { readonly ink: string; readonly ground: string } {
  const { ink, ground } = verdictColours[name];
  return { ink: themedColour(name, ink), ground: themedColour(`${name}-ground`, ground) };
}

/** CSS of a whole page in the dark; never in print. Signs of verdicts carry their colours themselves. */
export const darkStyles: string = `@media screen and (prefers-color-scheme: dark) {
  :root { color-scheme: dark; ${Object.entries(darkColours)
    .map(([name, colour]) => `--cw-${name}: ${colour};`)
    .join(" ")} ${Object.entries(darkVerdictColours)
    .map(([name, { ink, ground }]) => `--cw-${name}: ${ink}; --cw-${name}-ground: ${ground};`)
    .join(" ")} }
  .cw-shape [stroke="${colours.paper}"] { stroke: ${themed.paper}; }
  .cw-shape [fill="${colours.paper}"] { fill: ${themed.paper}; }
  .cw-shape [stroke="${verdictColours.unknown.ink}"] { stroke: ${themedVerdicts.unknown.ink}; }
}`;
