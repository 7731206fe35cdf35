/** What panels and edges are made of, as the case file says it: in a block for all, or in parts that override it. */
import { choice, Length, Name } from "../../quantity/index.js";
import type { Face } from "../place.js";
import {
  type BlockOf,
  block,
  checked,
  type Form,
  listOfForm,
  mapped,
  needed,
  noneOr,
  optional,
  type Partly,
  partly,
  preset,
  value,
} from "./form.js";

const positive = { above: 0 };
const zeroOrMore = { min: 0 };

/** The fields of a facing. */
export const facingFields = {
  facing: needed("laminate", Name, "A name of facings.csv."),
  adhesive: needed("adhesive", Name, "A name of adhesives.csv."),
  sides: preset(
    "sides",
    choice("sides", ["outside", "both"]),
    "outside",
    "Sides of the panel that it covers.",
  ),
  oversize: needed(
    "oversize",
    Length,
    "Added to each dimension of the piece and trimmed off after gluing.",
    zeroOrMore,
  ),
};

/** Laminate bonded to a panel. */
export interface Facing extends BlockOf<typeof facingFields> {}

/** The fields of an extrusion. */
export const extrusionFields = {
  bar: needed("bar", Name, "A name of bar-stock.csv."),
  rivet: needed("rivet", Name, "A name of fasteners.csv."),
  pitch: needed("pitch", Length, "Largest spacing of the rivets along each leg.", { min: 0.002 }),
  endDistance: needed("end distance", Length, "From the bar's end to the first rivet.", positive),
  setBack: needed("set back", Length, "Cut off at each end, to make room for a corner.", zeroOrMore),
  ends: preset("ends", choice("ends", ["square", "mitred"]), "square", "How its ends are cut."),
};

/** An extrusion riveted along an edge. */
export interface EdgeExtrusion extends BlockOf<typeof extrusionFields> {}

/** Some fields of a thing, or "none" for no such thing. */
export type Override<All> = BlockOf<Partly<All>> | "none";

const grain = choice("grain", ["across", "up"]);
const facingForm: Form<Override<typeof facingFields>> = noneOr(block(partly(facingFields)));
const extrusionForm: Form<Override<typeof extrusionFields>> = noneOr(block(partly(extrusionFields)));

/** What a panel may say of itself, and a build for all panels. */
export const panelFields = {
  sheet: optional("sheet", Name, "A name of sheet-stock.csv."),
  grain: optional(
    "grain",
    grain,
    "Direction of the face grain on the panel, seen from outside: across = along u, up = along v.",
  ),
  facing: optional("facing", facingForm, "Laminate glued on, or none."),
};

const pairs = ["top-bottom", "front-back", "left-right"] as const;
const order = `the three pairs ${pairs.join(", ")}, the one that runs past the others first`;
const facesOf: Readonly<Record<(typeof pairs)[number], readonly [Face, Face]>> = {
  "top-bottom": ["top", "bottom"],
  "front-back": ["front", "back"],
  "left-right": ["left", "right"],
};

/** Pairs of opposite faces, the one that runs past all others first. */
export type RunsThrough = readonly (readonly [Face, Face])[];

const runsThrough: Form<RunsThrough> = mapped(
  checked(
    listOfForm(value(choice("pair", pairs)), order),
    (given) => new Set(given).size === pairs.length && given.length === pairs.length,
    `a list of ${order}`,
  ),
  (given) => given.map((pair) => facesOf[pair]),
);

const buildFields = {
  ...panelFields,
  runsThrough: optional("runs through", runsThrough, "Which panels run past the others at the corners."),
  edges: optional("edges", extrusionForm, "The extrusion over every edge, or none."),
};

/** What a block "build" says; a section's own one overrides the case's. */
export interface Build extends BlockOf<typeof buildFields> {}

/** A block "build". */
export const buildForm: Form<Build> = block(buildFields);

/** What one edge says beside its build. */
export interface EdgeOverride {
  /** The face whose panel runs past the other; "neither" when both stop in the extrusion's seat. */
  readonly through?: Face | "neither";
  /** Extrusion over the edge, in part. */
  readonly extrusion: Override<typeof extrusionFields>;
}

/** One edge: who runs through, and what differs from the build's extrusion; "bar: none" for none. */
export function edgeForm(one: Face, other: Face): Form<EdgeOverride> {
  const through = choice("through", [one, other, "neither"]);
  const fields = {
    through: optional("through", through, "The face whose panel runs past the other, or neither."),
    ...partly(extrusionFields),
  };
  return mapped(
    block(fields),
    ({ through: runs, ...rest }): EdgeOverride => ({
      ...(runs ? { through: runs } : {}),
      extrusion: rest.bar === "none" ? "none" : rest,
    }),
  );
}
