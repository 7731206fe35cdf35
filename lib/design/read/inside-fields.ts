/** Shelves and contents as the case file says them. */
import { z } from "zod";
import { Count, choice, Force, Length, Mass, Name, Power, Ratio } from "../../quantity/index.js";
import type { Content, Shelf } from "../case.js";
import type { Point } from "../place.js";
import { block, type FileUnits, field, given, lengthIn, lengths, named } from "./fields.js";
import { holdingField } from "./holding-field.js";
import { needsField } from "./needs-field.js";

const positive = { above: 0 };
const fromZero = { min: 0 };

function pointField(
  units: FileUnits,
  rules: { min: number } | { above: number },
  what: string,
): z.ZodType<Point> {
  return lengths(3, lengthIn(units), rules, what).transform(
    ([x = Length.si(0), y = Length.si(0), z = Length.si(0)]): Point => ({ x, y, z }),
  );
}

function atField(units: FileUnits): z.ZodType<Point> {
  return pointField(units, fromZero, "right, back and up from the section's inside lower left front corner");
}

/** Every shelf by name. */
export function shelvesField(units: FileUnits): z.ZodType<readonly Shelf[]> {
  const shelf = block({
    in: field(Name),
    sheet: field(Name),
    size: lengths(2, lengthIn(units), positive, "width, depth"),
    at: atField(units),
    support: field(choice("support", ["two ends", "ends and back", "back only"])),
    sliding: z.boolean({ error: "true or false" }),
    joint: block({ fastener: field(Name), count: field(Count, positive) }),
    bracket: field(lengthIn(units), positive).optional(),
    "slides rated": field(Force, positive).optional(),
  });
  return named(shelf, '"instrument shelf"').transform((shelves) =>
    shelves.map(
      ([
        name,
        {
          in: section,
          size: [width, depth],
          "slides rated": slidesRated,
          ...rest
        },
      ]) =>
        given<Shelf>({
          name,
          section,
          width: width as Length,
          depth: depth as Length,
          slidesRated,
          ...rest,
        }),
    ),
  );
}

/** Everything that rides in the case, by name. */
export function contentsField(units: FileUnits): z.ZodType<readonly Content[]> {
  const content = block({
    in: field(Name),
    mass: field(Mass, positive),
    at: atField(units),
    size: pointField(units, positive, "width, depth, height"),
    held: holdingField(units),
    power: field(Power, fromZero).optional(),
    "power on": field(Ratio, { min: 0, max: 1 }).optional(),
    needs: needsField(units).default({}),
  });
  return named(content, '"microscope"').transform((contents) =>
    contents.map(
      ([name, { in: section, mass, at, size, held, power, "power on": duty, needs }]): Content => ({
        name,
        section,
        mass,
        at,
        size,
        held,
        needs,
        ...(power === undefined ? {} : { power }),
        ...(duty === undefined ? {} : { duty }),
      }),
    ),
  );
}
