/** What is cut out of a panel, as the case file says it. */
import { z } from "zod";
import { Angle, Count, choice, degree, Length, Name, Ratio, ratio } from "../../quantity/index.js";
import { circle, ellipse, notch, polygon, rectangle, type Shape, slot } from "../../shape/index.js";
import type { Leaf, Opening, OpeningShape, Pane, SharedLeaves } from "../case.js";
import { panelCorners, panelSides } from "../place.js";
import { rulerOf } from "../ruler.js";
import { block, type FileUnits, field, lengthIn, lengths, list, named } from "./fields.js";
import { block as blockForm, needed, preset } from "./form.js";

const positive = { above: 0 };
const zeroOrMore = { min: 0 };
const shapes = ["rectangle", "circle", "slot", "notch", "polygon", "ellipse"] as const;
/** What a corner radius may be beyond half the shorter side, m: a rounding of the file's figures. */
const roundingSlip = 1e-5;
const oneShape = `exactly one of ${shapes.join(", ")}`;

/** The openings of a panel, by name. */
export function openingsField(units: FileUnits): z.ZodType<readonly Opening[]> {
  return named(openingField(units), '"window"').transform((openings) =>
    openings.map(([name, opening]) => ({ name, ...opening })),
  );
}

function openingField(units: FileUnits): z.ZodType<Omit<Opening, "name">> {
  const length = lengthIn(units);
  return block({
    ...shapeFields(units),
    from: field(choice("corner", panelCorners)),
    across: field(length, zeroOrMore),
    up: field(length, zeroOrMore),
    to: field(choice("to", ["edge", "centre"])).optional(),
    leaf: leafField(units).optional(),
    leaves: leavesField(units).optional(),
    pane: paneField(units).optional(),
  }).transform(({ from, across, up, to, leaf, leaves, pane, ...shape }, context) => {
    const given = shapes.flatMap((kind) => (shape[kind] === undefined ? [] : [shape[kind]]));
    const [only] = given;
    if (!only || given.length > 1) {
      context.addIssue({ code: "custom", message: oneShape });
      return z.NEVER;
    }
    const reference = to ?? (only.kind === "circle" ? "centre" : "edge");
    if ((leaf || leaves) && pane) {
      context.addIssue({ code: "custom", message: "a leaf or a pane, not both", path: ["pane"] });
      return z.NEVER;
    }
    if (leaf && leaves) {
      context.addIssue({ code: "custom", message: "one leaf or several, not both", path: ["leaves"] });
      return z.NEVER;
    }
    const closed = { ...(leaf ? { leaf } : {}), ...(leaves ? { leaves } : {}), ...(pane ? { pane } : {}) };
    return { shape: only, from, across, up, to: reference, ...closed };
  });
}

type ShapeFields = { readonly [Kind in (typeof shapes)[number]]: z.ZodOptional<z.ZodType<OpeningShape>> };

/** What each shape asks for, and its maker. */
function shapeFields(units: FileUnits): ShapeFields {
  const length = lengthIn(units);
  const size = { width: field(length, positive), height: field(length, positive) };
  const radius = field(length, zeroOrMore).default(Length.si(0));
  const point = lengths(2, length, {}, "to the right, up");
  const at = { left: 0, bottom: 0 };
  const made = (kind: string, outline: Shape): OpeningShape => ({ kind, outline });
  return {
    rectangle: block({ ...size, "corner radius": radius })
      .transform(({ "corner radius": cornerRadius, ...sides }, context) => {
        const most = Math.min(sides.width, sides.height) / 2;
        if (cornerRadius <= most + roundingSlip)
          return made("rectangle", rectangle({ ...at, ...sides }, Math.min(cornerRadius, most)));
        const ruler = rulerOf({ units: units.length === "in" ? "inch" : "metric" });
        const message = `at most ${ruler(most)}, half the opening's shorter side`;
        context.addIssue({ code: "custom", message, path: ["corner radius"] });
        return z.NEVER;
      })
      .optional(),
    circle: block({ diameter: field(length, positive) })
      .transform(({ diameter }) => made("circle", circle({ x: diameter / 2, y: diameter / 2 }, diameter / 2)))
      .optional(),
    slot: block(size)
      .transform((sides) => made("slot", slot({ ...at, ...sides })))
      .optional(),
    notch: block(size)
      .transform((sides) => made("notch", notch({ ...at, ...sides })))
      .optional(),
    ellipse: block(size)
      .transform((sides) => made("ellipse", ellipse({ ...at, ...sides })))
      .optional(),
    polygon: list(point, "at least three points, each [to the right, up]")
      .transform((points, context) => {
        const corners = points.flatMap(([x, y]) => (x === undefined || y === undefined ? [] : [{ x, y }]));
        if (corners.length >= 3) return made("polygon", polygon(corners));
        context.addIssue({ code: "custom", message: "at least three points" });
        return z.NEVER;
      })
      .optional(),
  };
}

/** What holds a leaf open. */
const stayForm = blockForm({
  item: needed("item", Name, "A name of hardware.csv."),
  count: preset("count", Count, 1, "How many there are.", positive),
  arm: needed("arm", Length, "From the hinges to where they are fixed on the leaf.", positive),
  opensTo: preset("opens to", Angle, degree(90), "How far the leaf opens, from shut.", {
    above: 0,
    max: degree(180),
  }),
  pull: preset("pulls at", Angle, degree(45), "Between a stay and the open leaf.", {
    above: 0,
    max: degree(90),
  }),
});

function leafWords(units: FileUnits) {
  return {
    hinge: field(choice("hinge", panelSides)),
    clearance: field(lengthIn(units), zeroOrMore),
    stay: stayForm.schema(units).optional(),
  };
}

function leafField(units: FileUnits): z.ZodType<Leaf> {
  return block(leafWords(units)).transform(({ stay, ...leaf }) => ({ ...leaf, ...(stay ? { stay } : {}) }));
}

function leavesField(units: FileUnits): z.ZodType<SharedLeaves> {
  const one = block({ share: field(Ratio, positive).default(ratio(1)), ...leafWords(units) });
  return block({
    runs: field(choice("runs", ["across", "up"])),
    gap: field(lengthIn(units), positive),
    each: named(one, '"left door"'),
  }).transform(({ each, ...leaves }, context): SharedLeaves => {
    if (each.length < 2)
      context.addIssue({ code: "custom", message: "two leaves or more; for one write leaf", path: ["each"] });
    return {
      ...leaves,
      each: each.map(([name, { stay, ...leaf }]) => ({ name, ...leaf, ...(stay ? { stay } : {}) })),
    };
  });
}

function paneField(units: FileUnits): z.ZodType<Pane> {
  return block({
    sheet: field(Name),
    overlap: field(lengthIn(units), positive),
    side: field(choice("side", ["inside", "outside"])).optional(),
    held: field(choice("held", ["clips", "gasket", "clamps", "bead"])),
    fastener: field(Name).optional(),
    count: field(Count, { min: 1 }).optional(),
  }).transform(({ side, fastener, count, ...pane }, context): Pane => {
    if ((fastener === undefined) !== (count === undefined))
      context.addIssue({
        code: "custom",
        message: "a fastener and how many of it, or neither",
        path: ["count"],
      });
    return {
      ...pane,
      side: side ?? "inside",
      ...(fastener === undefined ? {} : { fastener }),
      ...(count === undefined ? {} : { count }),
    };
  });
}
