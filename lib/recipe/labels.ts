/** A label for every piece: what it is, which way is up, which face is outside, what it meets. */
import type { BarPart, PanelPart } from "../design/index.js";
import { listed } from "../findings/index.js";
import { type Html, html, trusted } from "../page/index.js";
import { paperPage } from "./paper-page.js";
import { type CodedPiece, codeOf, goodFaceOf } from "./pieces.js";
import { unbreakableHyphen } from "./rule.js";
import type { Workshop } from "./workshop.js";

/** What stands on the label of one piece. */
export interface PartLabel {
  /** The code: "P1". */
  readonly code: string;
  /** What the piece is: "lower.front". */
  readonly name: string;
  /** Its size, as it is cut. */
  readonly size: string;
  /** Which way is up. */
  readonly up: string;
  /** Which face is outside. */
  readonly outside: string;
  /** What it meets. */
  readonly mates: string;
}

/** A label for every piece of sheet, laminate, bar, strip and clear sheet, in the order of their codes. */
export function labelsOf(workshop: Workshop): readonly PartLabel[] {
  const { pieces, rule } = workshop;
  return [
    ...pieces.panels.map((piece) => panelLabel(piece, workshop)),
    ...pieces.facings.map(({ code, part: { panel, side, width, height } }) => ({
      code,
      name: `laminate for ${panel}`,
      size: rule.size(width, height),
      up: "the length of the laminate as its cut list has it",
      outside: "the face with the pattern",
      mates: `${codeOf(pieces.panels, panel)} ${panel}, on its ${side}`,
    })),
    ...pieces.bars.map((piece) => barLabel(piece, workshop)),
    ...pieces.strips.map(({ code, name, part: { length } }) => ({
      code,
      name,
      size: rule.length(length),
      up: "either way",
      outside: "either face",
      mates: "where its marks are",
    })),
    ...pieces.panes.map(({ code, name, part: { panel, pane, width, height } }) => ({
      code,
      name,
      size: rule.size(width, height),
      up: "top edge",
      outside: `it lies on the ${pane.side} of the panel`,
      mates: `${codeOf(pieces.panels, panel)} ${panel}`,
    })),
  ];
}

function panelLabel({ code, part: panel }: CodedPiece<PanelPart>, workshop: Workshop): PartLabel {
  const { rule } = workshop;
  const outside = panel.facing
    ? `laminate on ${panel.facing.sides === "both" ? "both sides" : "the outside"}`
    : `good face ${goodFaceOf(panel)}`;
  return {
    code,
    name: panel.id,
    size: rule.size(panel.width, panel.height),
    up: upOf(panel),
    outside: `${outside}; 0 is its bottom left corner`,
    mates: matesOf(panel, workshop),
  };
}

/** Which way the drawn panel points in the case. */
function upOf({ role, face }: PanelPart): string {
  if (role === "shelf") return "good face up, arrow to the back";
  if (role === "drawer" || role === "stiffener") return "arrow as drawn";
  return face === "top" || face === "bottom" ? "arrow to the back" : "arrow to the top";
}

function matesOf({ id, section, role, leaf }: PanelPart, workshop: Workshop): string {
  const { parts, pieces } = workshop;
  const coded = (panel: string): string => `${codeOf(pieces.panels, panel)} ${panel}`;
  if (leaf) return `its opening "${leaf.opening}", hinged at the ${leaf.hinge}`;
  if (role === "shelf") return `inside ${section}`;
  if (role === "drawer") {
    const mine = parts.drawers.find(({ panels }) => panels.some((panel) => panel.id === id));
    return mine ? mine.drawer.name : `inside ${section}`;
  }
  const bars = pieces.bars.filter(({ part }) => part.covers.includes(id));
  const beside = bars.map(({ part }) => part.covers.find((panel) => panel !== id) ?? id);
  if (bars.length === 0) return `the panels of ${section} beside it`;
  return `${listed(beside.map(coded))}, under ${listed(bars.map((bar) => bar.code))}`;
}

/** A bar has a leg on each of its two panels, and its corner points outwards. */
function barLabel({ code, name, part }: CodedPiece<BarPart>, { pieces, rule }: Workshop): PartLabel {
  const [one, other] = part.covers.map((panel) => `${codeOf(pieces.panels, panel)} ${panel}`);
  return {
    code,
    name,
    size: rule.length(part.length),
    up: upOfBar(part),
    outside: "the corner of the bar points outwards",
    mates: `one leg on ${one}, the other on ${other}`,
  };
}

/** A bar along the bottom has one leg under the box, one along the top has one leg on it. */
function upOfBar({ edge }: BarPart): string {
  if (edge.includes("bottom")) return "one leg down, under the bottom";
  return edge.includes("top") ? "one leg up, on the top" : "arrow to the top";
}

/** Labels as text, a paragraph a piece. */
export function labelsText(title: string, labels: readonly PartLabel[]): string {
  const paragraphs = labels.map(({ code, name, size, up, outside, mates }) =>
    [`${code} ${name}`, size, `Up: ${up}`, `Outside: ${outside}`, `Meets: ${mates}`]
      .join("\n")
      .replaceAll("\u00a0", " ")
      .replaceAll(unbreakableHyphen, "-"),
  );
  return `${title}: labels of its pieces\n\n${paragraphs.join("\n\n")}\n`;
}

const labelStyles: string = `
@page { margin: 10mm; }
body { margin: 0; padding: 1rem; background: #fff; color: #000; font: 9pt/1.25 Arial, "Liberation Sans", Helvetica, sans-serif; }
main { display: grid; grid-template-columns: repeat(auto-fill, 62mm); gap: 0; }
article { box-sizing: border-box; width: 62mm; min-height: 40mm; padding: 2.5mm; border: .3mm dashed #000; break-inside: avoid; overflow-wrap: anywhere; }
h1 { font-size: 12pt; margin: 0 0 2mm; } h2 { font-size: 11pt; margin: 0 0 1mm; } h2 b { font-size: 20pt; margin-right: 1.5mm; }
p { margin: 0; }
@media print { body { padding: 0; } }`;

/** Labels as a page to print and cut up: it loads nothing and runs nothing. */
export function labelsPage(title: string, labels: readonly PartLabel[]): string {
  const label = ({ code, name, size, up, outside, mates }: PartLabel): Html =>
    html`<article><h2><b>${code}</b>${name}</h2><p>${size}</p><p>Up: ${up}</p><p>Outside: ${outside}</p><p>Meets: ${mates}</p></article>`;
  return paperPage({
    title: `${title}: labels`,
    styles: trusted(labelStyles),
    body: html`<body>
<header><h1>${title}: a label for each piece, to cut out and stick on</h1></header>
<main>${labels.map(label)}</main>
</body>`,
  });
}
