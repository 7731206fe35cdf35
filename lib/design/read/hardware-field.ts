/** Hardware as the case file says it: what, where and what for. */
import { z } from "zod";
import { choice, type Kind, Name } from "../../quantity/index.js";
import type { HardwarePlace, PlacedHardware } from "../case.js";
import { type Face, faces, panelCorners } from "../place.js";
import { block, type FileUnits, field, lengthIn, list, named } from "./fields.js";

const duties = [
  "lift",
  "join-sections",
  "roll",
  "protect",
  "hinge",
  "close",
  "hang",
  "guide",
  "other",
] as const;

/** Every piece of hardware by name. */
export function hardwareField(units: FileUnits): z.ZodType<readonly PlacedHardware[]> {
  const item = block({
    item: field(Name),
    duty: field(choice("duty", duties)),
    places: list(placeField(units), "places, each with on, from, across, up").optional(),
    "corners of": field(Name).optional(),
  }).transform(({ places, "corners of": cornersOf, ...rest }, context) => {
    if ((places === undefined) === (cornersOf === undefined)) {
      context.addIssue({ code: "custom", message: 'either places or "corners of"' });
      return z.NEVER;
    }
    return { ...rest, places: places ?? { cornersOf: cornersOf ?? "" } };
  });
  return named(item, '"carry handle"').transform((items) =>
    items.map(([name, rest]): PlacedHardware => ({ name, ...rest })),
  );
}

function placeField(units: FileUnits): z.ZodType<HardwarePlace> {
  const length = field(lengthIn(units), { min: 0 });
  return block({
    on: field(sectionFace),
    from: field(choice("corner", panelCorners)),
    across: length,
    up: length,
    turned: z.boolean({ error: "true or false" }).default(false),
  }).transform(({ on, ...rest }) => ({ ...on, ...rest }));
}

const sectionFace: Kind<{ readonly section: string; readonly face: Face }> = {
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
