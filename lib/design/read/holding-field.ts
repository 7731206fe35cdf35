/** How a content is held, as the case file says it. */
import { z } from "zod";
import { Count, choice, Force, Length, Name } from "../../quantity/index.js";
import type { Holding, SecondHold } from "../case.js";
import { type Face, faces } from "../place.js";
import { block, type FileUnits, field, given, lengthIn } from "./fields.js";

const positive = { above: 0 };

const ways = ["shelf", "floor", "strap", "cradle", "screws", "rivets", "hung"] as const;

/** Which further words each way of holding may have. */
const holdingExtras: Partial<Record<(typeof ways)[number], readonly string[]>> = {
  strap: ["rated"],
  cradle: ["shelf", "rated"],
  screws: ["foot"],
};

/** Which further words each way of holding needs. */
const holdingWords: Readonly<Record<(typeof ways)[number], readonly string[]>> = {
  shelf: ["shelf"],
  floor: [],
  strap: ["straps"],
  cradle: ["rim", "lining", "lid"],
  screws: ["to", "fastener", "count"],
  rivets: ["to", "fastener", "count"],
  hung: ["fastener", "count", "second hold"],
};

/** The block "held" of a content. */
export function holdingField(units: FileUnits): z.ZodType<Holding> {
  return block({
    by: field(choice("by", ways)),
    shelf: field(Name).optional(),
    straps: field(Count, positive).optional(),
    rated: field(Force, positive).optional(),
    rim: field(lengthIn(units), positive).optional(),
    lining: block({ kind: field(Name), thickness: field(lengthIn(units), positive) }).optional(),
    lid: z.boolean({ error: "true or false" }).optional(),
    to: field(choice("face", faces)).optional(),
    fastener: field(Name).optional(),
    count: field(Count, positive).optional(),
    foot: field(lengthIn(units), positive).optional(),
    "second hold": secondHoldField(units).optional(),
  }).transform(checkedHolding);
}

function secondHoldField(units: FileUnits): z.ZodType<boolean | SecondHold> {
  const described = block({
    fastener: field(Name),
    count: field(Count, positive),
    rated: field(Force, positive),
    slack: field(lengthIn(units), { min: 0 }),
    give: field(lengthIn(units), positive),
  });
  return z.union([z.boolean(), described], {
    error: "false, true, or a block with fastener, count, rated, slack, give",
  });
}

function checkedHolding(
  { by, ...rest }: HoldingWords & { readonly by: Holding["by"] },
  context: z.RefinementCtx,
): Holding {
  const wanted = holdingWords[by];
  const written = Object.entries(rest).flatMap(([word, value]) => (value === undefined ? [] : [word]));
  const missing = wanted.filter((word) => !written.includes(word));
  const allowed = [...wanted, ...(holdingExtras[by] ?? [])];
  const needless = written.filter((word) => !allowed.includes(word));
  for (const word of [...missing, ...needless]) {
    const words = wanted.length === 0 ? "no further word" : wanted.join(", ");
    context.addIssue({ code: "custom", path: [word], message: `${words} with "by: ${by}"` });
  }
  return missing.length + needless.length > 0 ? z.NEVER : holdingOf(by, rest);
}

interface HoldingWords {
  readonly shelf?: string | undefined;
  readonly straps?: number | undefined;
  readonly rated?: Force | undefined;
  readonly rim?: Length | undefined;
  readonly lining?: { readonly kind: string; readonly thickness: Length } | undefined;
  readonly lid?: boolean | undefined;
  readonly to?: Face | undefined;
  readonly fastener?: string | undefined;
  readonly count?: number | undefined;
  readonly foot?: Length | undefined;
  readonly "second hold"?: boolean | SecondHold | undefined;
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
    case "cradle":
      return cradleOf(words);
    case "hung":
      return { by, fastener, count, secondHold: words["second hold"] ?? false };
    default:
      return { by, to, fastener, count, ...(words.foot === undefined ? {} : { foot: words.foot }) };
  }
}

function cradleOf({ shelf, rim, lining, rated, lid }: HoldingWords): Holding {
  const none = Length.si(0);
  return given<Extract<Holding, { by: "cradle" }>>({
    by: "cradle",
    shelf,
    rim: rim ?? none,
    lining: lining ?? { kind: "", thickness: none },
    rated,
    lid: lid ?? false,
  });
}
