/** What panels and edges are made of, as the case file says it: in a block for all, or in parts that override it. */
import { Count, choice, Length, Name } from "../../quantity/index.js";
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
  yesOrNo,
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
  stagger: preset(
    "stagger",
    yesOrNo,
    false,
    "Whether the rivets of one leg stand half a pitch off those of the other, so that they pass inside the corner.",
  ),
};

/** An extrusion riveted along an edge. */
export interface EdgeExtrusion extends BlockOf<typeof extrusionFields> {}

/** How an edge without an extrusion is held together. */
export const edgeJointKinds = ["glued", "screwed", "cleat", "corner block"] as const;
/** A way to join two panels without an extrusion. */
export type EdgeJointKind = (typeof edgeJointKinds)[number];

/** The fields of an edge without an extrusion; `joint` says which of them it needs. */
export const jointFields = {
  joint: needed(
    "joint",
    choice("joint", edgeJointKinds),
    "glued or screwed panel to panel, or both panels to a cleat or to corner blocks inside the corner.",
  ),
  adhesive: optional("adhesive", Name, "A name of adhesives.csv."),
  screw: optional("screw", Name, "A name of fasteners.csv: through a panel into what it meets."),
  pitch: optional("pitch", Length, "Largest spacing of the screws.", positive),
  endDistance: optional(
    "end distance",
    Length,
    "From the end of the row's piece to its first screw.",
    positive,
  ),
  strip: optional("strip", Name, "A name of strip-stock.csv: what a cleat or a block is cut from."),
  setBack: preset(
    "set back",
    Length,
    Length.si(0),
    "Left free at each end of a cleat or of a row of blocks.",
    zeroOrMore,
  ),
  blocks: optional("blocks", Count, "How many corner blocks stand along the edge.", { min: 1 }),
  blockLength: optional("block length", Length, "Length of a block along the edge.", positive),
};

/** An edge that is glued, screwed, or held by wood inside the corner. */
export interface EdgeJoint extends BlockOf<typeof jointFields> {}

/** Some fields of a thing, or "none" for no such thing. */
export type Override<All> = BlockOf<Partly<All>> | "none";

const grain = choice("grain", ["across", "up"]);
const facingForm: Form<Override<typeof facingFields>> = noneOr(block(partly(facingFields)));

/** What an edge, or all edges, may say: the words of an extrusion and of a joint without one. */
const edgeFields = { ...partly(jointFields), ...partly(extrusionFields) };

/** Words about what holds an edge, or "none" for nothing that the case names. */
export type EdgeWords = BlockOf<typeof edgeFields> | "none";
const edgeWordsForm: Form<EdgeWords> = noneOr(block(edgeFields));

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
  edges: optional(
    "edges",
    edgeWordsForm,
    "What holds every edge: an extrusion, a joint without one, or none.",
  ),
};

/** What a block "build" says; a section's own one overrides the case's. */
export interface Build extends BlockOf<typeof buildFields> {}

/** A block "build". */
export const buildForm: Form<Build> = block(buildFields);

/** What one edge says beside its build. */
export interface EdgeOverride {
  /** The face whose panel runs past the other; "neither" when both stop in the extrusion's seat. */
  readonly through?: Face | "neither";
  /** What holds the edge, in part. */
  readonly held: EdgeWords;
}

/** One edge: who runs through, and what differs from what holds the build's edges; "bar: none" for nothing. */
export function edgeForm(one: Face, other: Face): Form<EdgeOverride> {
  const through = choice("through", [one, other, "neither"]);
  const fields = {
    through: optional("through", through, "The face whose panel runs past the other, or neither."),
    ...edgeFields,
  };
  return mapped(
    block(fields),
    ({ through: runs, ...rest }): EdgeOverride => ({
      ...(runs ? { through: runs } : {}),
      held: rest.bar === "none" ? "none" : rest,
    }),
  );
}
