/** What is cut out of a panel, as the case file says it. */
import { z } from "zod";
import { choice, Length } from "../../quantity/index.js";
import type { Leaf, Opening, OpeningShape } from "../case.js";
import { panelCorners } from "../place.js";
import { block, type FileUnits, field, lengthIn, lengths, list, named } from "./fields.js";

const positive = { above: 0 };
const zeroOrMore = { min: 0 };
const shapes = ["rectangle", "circle", "slot", "notch", "polygon"] as const;
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
  }).transform(({ from, across, up, to, leaf, ...shape }, context) => {
    const given = shapes.flatMap((kind) => (shape[kind] === undefined ? [] : [shape[kind]]));
    const [only] = given;
    if (!only || given.length > 1) {
      context.addIssue({ code: "custom", message: oneShape });
      return z.NEVER;
    }
    const reference = to ?? (only.kind === "circle" ? "centre" : "edge");
    return { shape: only, from, across, up, to: reference, ...(leaf ? { leaf } : {}) };
  });
}

type ShapeFields = { readonly [Kind in (typeof shapes)[number]]: z.ZodOptional<z.ZodType<OpeningShape>> };

function shapeFields(units: FileUnits): ShapeFields {
  const length = lengthIn(units);
  const size = { width: field(length, positive), height: field(length, positive) };
  const radius = field(length, zeroOrMore).default(Length.si(0));
  const point = lengths(2, length, {}, "to the right, up");
  return {
    rectangle: block({ ...size, "corner radius": radius })
      .transform(
        ({ width, height, "corner radius": cornerRadius }): OpeningShape => ({
          kind: "rectangle",
          width,
          height,
          cornerRadius,
        }),
      )
      .optional(),
    circle: block({ diameter: field(length, positive) })
      .transform(({ diameter }): OpeningShape => ({ kind: "circle", diameter }))
      .optional(),
    slot: block(size)
      .transform((slot): OpeningShape => ({ kind: "slot", ...slot }))
      .optional(),
    notch: block(size)
      .transform((notch): OpeningShape => ({ kind: "notch", ...notch }))
      .optional(),
    polygon: list(point, "at least three points, each [to the right, up]")
      .transform(
        (points): OpeningShape => ({
          kind: "polygon",
          points: points.map(([across, up]) => ({ across: across as Length, up: up as Length })),
        }),
      )
      .optional(),
  };
}

function leafField(units: FileUnits): z.ZodType<Leaf> {
  return block({
    hinge: field(choice("hinge", ["left", "right", "top", "bottom"])),
    clearance: field(lengthIn(units), zeroOrMore),
  });
}
