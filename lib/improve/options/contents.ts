/** What keeps a thing inside where it is: straps, lids, other fasteners, another place. */
import { type Content, set } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import { fineLength, massText, roundForce } from "../figures.js";
import type { Option } from "../option.js";
import { type Mending, type Offer, option, setting } from "./offer.js";

const gravity = 9.80665;

/** A strap and its anchors bear this many times the thing's weight at least, before a review asks for more. */
const strapShares = [1, 2] as const;

/** A content by its name. */
export function contentOf(job: Job, name: string): Content | undefined {
  return job.case.contents.find((one) => one.name === name);
}

/** Straps of one rating or another, in place of what holds it now. */
function straps(mending: Mending, content: Content): readonly Option[] {
  const { units } = mending.job.case;
  const at = `contents.${content.name}.held`;
  return strapShares.map((share) => {
    const rated = roundForce(share * content.mass * gravity, units);
    return option(mending, {
      lever: at,
      setting: `strap ${rated}`,
      words: `Strap the ${content.name} down with a strap whose anchors stand ${rated}.`,
      changes: [set(at, `{ by: strap, straps: 1, rated: ${rated} }`)],
      unpriced: "a strap with its anchors",
    });
  });
}

/** What a cradle lacks: a rating of its own, and a strap or lid that is rated. */
function liddedCradle(mending: Mending, content: Content): readonly Option[] {
  const { held, name, mass } = content;
  if (held.by !== "cradle") return [];
  const { units } = mending.job.case;
  const at = `contents.${name}.held`;
  return strapShares.map((share) => {
    const rated = roundForce(share * mass * gravity, units);
    const walls = held.rated === undefined ? [set(`${at}.rated`, rated)] : [];
    return option(mending, {
      lever: at,
      setting: `lid ${rated}`,
      words: `Close the cradle of the ${name} with a strap or lid that stands ${rated}.`,
      changes: [set(`${at}.lid`, "true"), set(`${at}.lid rated`, rated), ...walls],
      unpriced: "a strap or lid",
    });
  });
}

/** Other fasteners of the table, or more of the same. */
function otherFasteners(mending: Mending, content: Content): readonly Option[] {
  const { held, name } = content;
  if (!("fastener" in held)) return [];
  const { job, over } = mending;
  const at = `contents.${name}.held`;
  const others = job.stock.fasteners.filter((one) => one.name !== held.fastener);
  const more = Math.ceil(held.count * Math.min(over, 4));
  return [
    ...others.map((one) =>
      option(mending, {
        lever: at,
        setting: one.name,
        words: `Fasten the ${name} with ${one.name} in place of ${held.fastener}.`,
        changes: [set(`${at}.fastener`, one.name)],
      }),
    ),
    option(mending, {
      lever: at,
      setting: `${more}`,
      words: `Fasten the ${name} with ${more} ${held.fastener} in place of ${held.count}.`,
      changes: [set(`${at}.count`, `${more}`)],
    }),
  ];
}

function holdsFor(mending: Mending, content: Content): readonly Option[] {
  const { by } = content.held;
  if (by === "cradle") return liddedCradle(mending, content);
  if (by === "screws" || by === "rivets")
    return [...otherFasteners(mending, content), ...straps(mending, content)];
  if (by === "hung") return otherFasteners(mending, content);
  return straps(mending, content);
}

/** Options for a finding about one content. */
export const holdIt: Offer = (mending) => {
  const content = contentOf(mending.job, mending.subject);
  return content ? holdsFor(mending, content) : [];
};

/** Straps for everything loose in a section that something is thrown about in. */
export const holdAllLoose: Offer = (mending) => {
  const { job, subject } = mending;
  const section = job.case.sections.find(({ name }) => subject === name || subject.startsWith(`${name}.`));
  return job.case.contents
    .filter((one) => one.section === section?.name && (one.held.by === "floor" || one.held.by === "shelf"))
    .flatMap((one) => straps(mending, one));
};

/** Left between a thing and a wall, for tails and nuts, m. */
const wallRoom = 0.02;

/** Other places of a thing on what it stands on: against each side of its section. */
export const standElsewhere: Offer = (mending) => {
  const content = contentOf(mending.job, mending.subject);
  const section = mending.job.case.sections.find(({ name }) => name === content?.section);
  if (!content || !section) return [];
  const { at, size, name } = content;
  const { inside } = section;
  const places = [
    ["against the front", { ...at, y: wallRoom }],
    ["against the back", { ...at, y: inside.depth - size.y - wallRoom }],
    ["against the left", { ...at, x: wallRoom }],
    ["against the right", { ...at, x: inside.width - size.x - wallRoom }],
  ] as const;
  return places
    .filter(([, place]) => place.x >= 0 && place.y >= 0 && Math.hypot(place.x - at.x, place.y - at.y) > 1e-6)
    .map(([where, place]) => moved(mending, content, place, `Move the ${name} ${where} of ${section.name}.`));
};

/** A content at another place, as its own lever. */
export function moved(
  mending: Mending,
  { name }: Content,
  place: { readonly x: number; readonly y: number; readonly z: number },
  words: string,
): Option {
  const { units } = mending.job.case;
  const to = `[${[place.x, place.y, place.z].map((one) => fineLength(one, units)).join(", ")}]`;
  return setting(mending, `contents.${name}.at`, to, words);
}

/** Something hot that needs less free way, or stands elsewhere. */
export const keepClear: Offer = (mending) => {
  const { job, subject, over } = mending;
  const free = contentOf(job, subject)?.needs.keepClear;
  if (free === undefined) return [];
  const less = fineLength(0.98 * (free / over), job.case.units);
  return [
    ...standElsewhere(mending),
    setting(
      mending,
      `contents.${subject}.needs.keep clear`,
      less,
      `Take a cooler ${subject}, one whose label asks for a free way of ${less} at most.`,
      { unpriced: `a cooler ${subject}` },
    ),
  ];
};

/** A drawer or door of a thing that comes out less far. */
export const openLess: Offer = (mending) => {
  const { job, subject, over } = mending;
  const out = contentOf(job, subject)?.needs.opensBy;
  if (out === undefined) return [];
  return [0.95, 0.6, 0.4].map((share) => {
    const by = fineLength((share * out) / over, job.case.units);
    return setting(
      mending,
      `contents.${subject}.needs.opens by`,
      by,
      `Stop the ${subject} after ${by} of its way out.`,
      { unpriced: "a stop" },
    );
  });
};

/** Contents that are carried apart: the way without them. */
export const carryApart: Offer = (mending) => {
  const { job, subject } = mending;
  const inIt = job.case.contents.filter(({ section }) => subject === "" || section === subject);
  return [...inIt]
    .sort((one, other) => other.mass - one.mass)
    .slice(0, 3)
    .map((one) =>
      option(mending, {
        lever: `contents.${one.name}`,
        setting: "carried apart",
        words: `Carry the ${one.name} (${massText(one.mass, job.case.units)}) apart from the case.`,
        changes: [{ kind: "remove", at: `contents.${one.name}` }],
        rule: true,
      }),
    );
};

/** A small plug with its cable, as many lamps and meters have it, m and times the cable; common practice, no source. */
const smallPlug = { length: 0.032, width: 0.025, cable: 0.0064, bend: 6 } as const;

/** A plug that has room: small and at one side or another, or angled. */
export const plugWithRoom: Offer = (mending) => {
  const content = contentOf(mending.job, mending.subject);
  if (!content) return [];
  const { units } = mending.job.case;
  const { plug } = content.needs;
  const [length, cable] = [plug?.length ?? smallPlug.length, plug?.cable ?? smallPlug.cable];
  return (["back", "left", "right", "front", "top"] as const).flatMap((side) =>
    [length, 0.6 * length].map((far) => {
      const size = [`length: ${fineLength(far, units)}`, `cable: ${fineLength(cable, units)}`];
      const width = `width: ${fineLength(plug?.width ?? smallPlug.width, units)}`;
      return setting(
        mending,
        `contents.${content.name}.needs.plug`,
        `{ at: ${side}, ${size.join(", ")}, ${width}, bend factor: ${plug?.bendFactor ?? smallPlug.bend} }`,
        `Take a plug for the ${content.name} that reaches out ${fineLength(far, units)} at most, at its ${side}.`,
        { unpriced: "a plug of that size, straight or angled" },
      );
    }),
  );
};
