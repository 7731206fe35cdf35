/** Hardware as the case file says it: what, where and what for. */
import { choice, type Kind, Length, Name } from "../../quantity/index.js";
import { type Face, faces, panelCorners } from "../place.js";
import {
  type BlockOf,
  block,
  byName,
  checked,
  type Form,
  listOfForm,
  mapped,
  needed,
  optional,
  preset,
  quarterTurn,
} from "./form.js";

const duties = choice("duty", [
  "lift",
  "join-sections",
  "roll",
  "stand",
  "protect",
  "hinge",
  "close",
  "hang",
  "guide",
  "slide",
  "stay",
  "other",
]);

/** A face of a section, by both their names. */
export const sectionFace: Kind<{ readonly section: string; readonly face: Face }> = {
  name: "face of a section",
  expected: `a section and a face such as "lower.front" (faces: ${faces.join(", ")})`,
  read: (text) => {
    const [section = "", word, ...rest] = String(text).split(".");
    const face = faces.find((candidate) => candidate === word);
    if (!section || !face || rest.length > 0) throw new RangeError(`not a face: ${String(text)}`);
    return { section, face };
  },
  show: ({ section, face }) => `${section}.${face}`,
};

const placeFields = {
  on: needed("on", sectionFace, "The panel it is on."),
  from: needed(
    "from",
    choice("corner", panelCorners),
    "The corner of the panel that its place is measured from.",
  ),
  across: needed("across", Length, "From that corner's upright cut edge to its centre.", { min: 0 }),
  up: needed("up", Length, "From that corner's level cut edge to its centre.", { min: 0 }),
  turned: preset(
    "turned",
    quarterTurn,
    false,
    "Turned by a quarter, or by 90 or 270 degrees, so that its pattern's width runs along v.",
  ),
};

/** The centre of a piece of hardware on a panel. */
export interface HardwarePlace extends Omit<BlockOf<typeof placeFields>, "on"> {
  /** The section of its panel. */
  readonly section: string;
  /** The face that its panel is. */
  readonly face: Face;
}

const placeForm = mapped(block(placeFields), ({ on, ...rest }): HardwarePlace => ({ ...on, ...rest }));

const hardwareFields = {
  item: needed("item", Name, "A name of hardware.csv."),
  duty: needed("duty", duties, "What it must carry."),
  places: optional(
    "places",
    listOfForm(placeForm, "places, each with on, from, across, up"),
    "Where it is on panels.",
  ),
  cornersOf: optional("corners of", Name, "The section at whose eight corners it is."),
};

/** A piece of hardware on a panel, at one or more places. */
export interface PlacedHardware extends Omit<BlockOf<typeof hardwareFields>, "places" | "cornersOf"> {
  /** What the hardware is called. */
  readonly name: string;
  /** Where: places on a panel, or the eight corners of a section. */
  readonly places: readonly HardwarePlace[] | { readonly cornersOf: string };
}

const eitherPlace = checked(
  block(hardwareFields),
  ({ places, cornersOf }) => (places === undefined) !== (cornersOf === undefined),
  'either places or "corners of"',
);

/** Every piece of hardware by name. */
export const hardwareForm: Form<readonly PlacedHardware[]> = byName(
  eitherPlace,
  '"carry handle"',
  (name, { places, cornersOf = "", ...rest }): PlacedHardware => ({
    name,
    ...rest,
    places: places ?? { cornersOf },
  }),
);
