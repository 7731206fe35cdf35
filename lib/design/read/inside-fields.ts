/** Shelves and contents as the case file says them. */
import { z } from "zod";
import { Count, choice, Force, Length, Mass, Name, Power, Ratio } from "../../quantity/index.js";
import type { Content, Holding, Shelf } from "../case.js";
import { type Face, faces, type Point } from "../place.js";
import { block, type FileUnits, field, lengthIn, lengths, named } from "./fields.js";
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
  });
  return named(shelf, '"instrument shelf"').transform((shelves) =>
    shelves.map(
      ([
        name,
        {
          in: section,
          size: [width, depth],
          ...rest
        },
      ]): Shelf => ({
        name,
        section,
        width: width as Length,
        depth: depth as Length,
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
    held: holdingField,
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

const ways = ["shelf", "floor", "strap", "screws", "rivets", "hung"] as const;

/** Which further words each way of holding may have. */
const holdingExtras: Partial<Record<(typeof ways)[number], readonly string[]>> = { strap: ["rated"] };

/** Which further words each way of holding needs. */
const holdingWords: Readonly<Record<(typeof ways)[number], readonly string[]>> = {
  shelf: ["shelf"],
  floor: [],
  strap: ["straps"],
  screws: ["to", "fastener", "count"],
  rivets: ["to", "fastener", "count"],
  hung: ["fastener", "count", "second hold"],
};

const holdingField: z.ZodType<Holding> = block({
  by: field(choice("by", ways)),
  shelf: field(Name).optional(),
  straps: field(Count, positive).optional(),
  rated: field(Force, positive).optional(),
  to: field(choice("face", faces)).optional(),
  fastener: field(Name).optional(),
  count: field(Count, positive).optional(),
  "second hold": z.boolean({ error: "true or false" }).optional(),
}).transform(({ by, ...rest }, context): Holding => {
  const wanted = holdingWords[by];
  const given = Object.entries(rest).flatMap(([word, value]) => (value === undefined ? [] : [word]));
  const missing = wanted.filter((word) => !given.includes(word));
  const allowed = [...wanted, ...(holdingExtras[by] ?? [])];
  const needless = given.filter((word) => !allowed.includes(word));
  for (const word of [...missing, ...needless]) {
    const words = wanted.length === 0 ? "no further word" : wanted.join(", ");
    context.addIssue({ code: "custom", path: [word], message: `${words} with "by: ${by}"` });
  }
  return missing.length + needless.length > 0 ? z.NEVER : holdingOf(by, rest);
});

interface HoldingWords {
  readonly shelf?: string | undefined;
  readonly straps?: number | undefined;
  readonly rated?: Force | undefined;
  readonly to?: Face | undefined;
  readonly fastener?: string | undefined;
  readonly count?: number | undefined;
  readonly "second hold"?: boolean | undefined;
}

/** Every word that the way of holding needs is there; the defaults only satisfy the types. */
function holdingOf(by: Holding["by"], words: HoldingWords): Holding {
  const { shelf = "", straps = 1, to = "bottom", fastener = "", count = 1 } = words;
  switch (by) {
    case "shelf":
      return { by, shelf };
    case "floor":
      return { by };
    case "strap":
      return { by, straps, ...(words.rated === undefined ? {} : { rated: words.rated }) };
    case "hung":
      return { by, fastener, count, secondHold: words["second hold"] ?? false };
    default:
      return { by, to, fastener, count };
  }
}
