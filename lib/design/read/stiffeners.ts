/** Stiffeners of panels, leaves and shelves as the case file says them: battens, ribs, ledges, doublers, frames round openings. */
import { choice, type Kind, Length, Name } from "../../quantity/index.js";
import { type Face, faces, panelCorners } from "../place.js";
import {
  type BlockOf,
  block,
  byName,
  checked,
  type Form,
  mapped,
  needed,
  optional,
  preset,
  yesOrNo,
} from "./form.js";

/** A panel, a leaf or a shelf of a section, by their names. */
export interface StiffenedPlace {
  /** The section that it is in. */
  readonly section: string;
  /** The face that its panel is, or is in; absent for a shelf. */
  readonly face?: Face;
  /** The opening of a leaf, and where several share it the leaf's own name after a dot; absent for a panel. */
  readonly leaf?: string;
  /** The name of a shelf; absent for a panel or a leaf. */
  readonly shelf?: string;
}

const stiffenedPlace: Kind<StiffenedPlace> = {
  name: "panel, leaf or shelf",
  expected: `a panel such as "lower.front" (faces: ${faces.join(", ")}), a leaf in it such as "lower.front.door", or a shelf such as "lower.shelf.board"`,
  read: (text) => {
    const [section = "", word, ...rest] = String(text).split(".");
    const face = faces.find((candidate) => candidate === word);
    const [first, ...more] = rest;
    if (section && word === "shelf" && first && more.length === 0) return { section, shelf: first };
    if (!section || !face || rest.length > 2) throw new RangeError(`not a piece: ${String(text)}`);
    return rest.length > 0 ? { section, face, leaf: rest.join(".") } : { section, face };
  },
  show: ({ section, face, leaf, shelf }) =>
    [section, face ?? "shelf", leaf ?? shelf].filter((word) => word !== undefined).join("."),
};

const positive = { above: 0 };
const zeroOrMore = { min: 0 };

/** What a builder calls a stiffener. */
const kinds = choice("kind", ["batten", "rib", "ledge", "cleat", "doubler", "frame"]);

const stiffenerFields = {
  on: needed("on", stiffenedPlace, "The panel, the leaf in a panel, or the shelf that it is on."),
  kind: preset("kind", kinds, "batten", "What it is called."),
  strip: optional("strip", Name, "A name of strip-stock.csv; or a sheet."),
  sheet: optional("sheet", Name, "A name of sheet-stock.csv; or a strip."),
  round: optional("round", Name, "An opening of the panel that it frames; or a place of its own."),
  from: preset(
    "from",
    choice("corner", panelCorners),
    "bottom-left",
    "The corner that its place is measured from.",
  ),
  across: optional("across", Length, "From that corner's upright cut edge to its near side.", zeroOrMore),
  up: optional("up", Length, "From that corner's level cut edge to its near side.", zeroOrMore),
  length: optional("length", Length, "Its length.", positive),
  width: optional("width", Length, "Width of a piece of sheet, or of a frame of sheet.", positive),
  runs: preset(
    "runs",
    choice("runs", ["across", "up"]),
    "across",
    "The way its length runs, and the grain of a sheet.",
  ),
  standing: preset("standing", yesOrNo, false, "Whether a strip stands on its narrow side."),
  side: preset(
    "side",
    choice("side", ["inside", "outside"]),
    "inside",
    "The side of the panel that it is on; of a shelf its inside is below and its outside above.",
  ),
  adhesive: optional("adhesive", Name, "A name of adhesives.csv."),
  fastener: optional("fastener", Name, "A name of fasteners.csv: a row through the panel along its middle."),
  pitch: optional("pitch", Length, "Largest spacing of the fasteners.", positive),
  endDistance: optional("end distance", Length, "From its end to the first fastener.", positive),
};

/** A piece of wood on a panel, a leaf or a shelf that makes it stiffer, or that something rests on. */
export interface Stiffener extends Omit<BlockOf<typeof stiffenerFields>, "on">, StiffenedPlace {
  /** What the builder calls it. */
  readonly name: string;
}

type Written = BlockOf<typeof stiffenerFields>;

const rules: readonly (readonly [(one: Written) => boolean, string])[] = [
  [({ strip, sheet }) => (strip === undefined) !== (sheet === undefined), "either a strip or a sheet"],
  [
    ({ adhesive, fastener }) => adhesive !== undefined || fastener !== undefined,
    "an adhesive, a fastener or both",
  ],
  [
    ({ fastener, pitch, endDistance }) =>
      fastener === undefined || (pitch !== undefined && endDistance !== undefined),
    'a pitch and an "end distance" beside its fastener',
  ],
  [
    ({ round, across, up, length }) =>
      round !== undefined || (across !== undefined && up !== undefined && length !== undefined),
    "across, up and length, or the opening that it is round",
  ],
  [({ sheet, width }) => sheet === undefined || width !== undefined, "a width of its sheet"],
];

const stiffenerForm: Form<Written> = rules.reduce<Form<Written>>(
  (form, [keeps, expected]) => checked(form, keeps, expected),
  block(stiffenerFields),
);

/** Every stiffener by name. */
export const stiffenersForm: Form<readonly Stiffener[]> = byName(
  mapped(stiffenerForm, ({ on, ...rest }) => ({ ...on, ...rest })),
  '"floor batten"',
);
