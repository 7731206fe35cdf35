/** What panels and edges are made of, as the case file says it: in a block for all, or in parts that override it. */
import { z } from "zod";
import { choice, Name } from "../../quantity/index.js";
import type { EdgeExtrusion, Facing, Panel } from "../case.js";
import type { Face } from "../place.js";
import { block, type FileUnits, field, lengthIn, list } from "./fields.js";

/** Some fields of a thing, or "none" for no such thing. */
export type Override<T> = { readonly [Field in keyof T]?: T[Field] | undefined } | "none";

/** Pairs of opposite faces, the one that runs past all others first. */
export type RunsThrough = readonly (readonly [Face, Face])[];

/** What a block "build" says; a section's own one overrides the case's. */
export interface Build {
  readonly sheet?: string | undefined;
  readonly grain?: Panel["grain"] | undefined;
  readonly facing?: Override<Facing> | undefined;
  readonly runsThrough?: RunsThrough | undefined;
  readonly edges?: Override<EdgeExtrusion> | undefined;
}

/** What one edge says beside its build. */
export interface EdgeOverride {
  readonly through?: Face | "neither" | undefined;
  readonly extrusion: Override<EdgeExtrusion>;
}

const positive = { above: 0 };
const zeroOrMore = { min: 0 };

/** A block "build". */
export function buildField(units: FileUnits): z.ZodType<Build> {
  return block({
    sheet: field(Name).optional(),
    grain: grainField.optional(),
    facing: facingField(units).optional(),
    "runs through": runsThroughField.optional(),
    edges: extrusionField(units).optional(),
  }).transform(({ "runs through": runsThrough, ...rest }) => ({ ...rest, runsThrough }));
}

/** Direction of the face grain. */
export const grainField: z.ZodType<Panel["grain"]> = field(choice("grain", ["across", "up"]));

/** A facing, or part of one, or "none". */
export function facingField(units: FileUnits): z.ZodType<Override<Facing>> {
  return noneOr(
    block({
      laminate: field(Name).optional(),
      adhesive: field(Name).optional(),
      sides: field(choice("sides", ["outside", "both"])).optional(),
      oversize: field(lengthIn(units), zeroOrMore).optional(),
    }).transform(({ laminate, ...rest }) => ({ ...rest, facing: laminate })),
  );
}

function extrusionShape(units: FileUnits) {
  const length = lengthIn(units);
  return {
    bar: field(Name).optional(),
    rivet: field(Name).optional(),
    pitch: field(length, positive).optional(),
    "end distance": field(length, positive).optional(),
    "set back": field(length, zeroOrMore).optional(),
    ends: field(choice("ends", ["square", "mitred"])).optional(),
  };
}

/** An extrusion, or part of one, or "none". */
export function extrusionField(units: FileUnits): z.ZodType<Override<EdgeExtrusion>> {
  return noneOr(
    block(extrusionShape(units)).transform(
      ({ "end distance": endDistance, "set back": setBack, ...rest }) => ({
        ...rest,
        endDistance,
        setBack,
      }),
    ),
  );
}

/** One edge: who runs through, and what differs from the build's extrusion; "bar: none" for none. */
export function edgeField(units: FileUnits, one: Face, other: Face): z.ZodType<EdgeOverride> {
  return block({
    through: field(choice("through", [one, other, "neither"])).optional(),
    ...extrusionShape(units),
  }).transform(({ through, "end distance": endDistance, "set back": setBack, ...rest }) => ({
    through,
    extrusion: rest.bar === "none" ? "none" : { ...rest, endDistance, setBack },
  }));
}

/** "none" itself, or the block; anything else is answered as the block answers it. */
function noneOr<T>(item: z.ZodType<T>): z.ZodType<T | "none"> {
  return z.unknown().transform((input, context): T | "none" => {
    if (input === "none") return "none";
    const read = item.safeParse(input);
    if (read.success) return read.data;
    const issues = read.error.issues.map((issue) => ({ ...issue, path: [...issue.path], input }));
    context.issues.push(...(issues as unknown as typeof context.issues));
    return z.NEVER;
  });
}

const pairs = ["top-bottom", "front-back", "left-right"] as const;
const order = `the three pairs ${pairs.join(", ")}, the one that runs past the others first`;

const runsThroughField: z.ZodType<RunsThrough> = list(field(choice("pair", pairs)), order)
  .refine(
    (given) => new Set(given).size === pairs.length && given.length === pairs.length,
    `a list of ${order}`,
  )
  .transform((given) => given.map((pair) => pair.split("-") as [Face, Face]));
