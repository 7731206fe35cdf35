/** Hardware: another of the table, one rated at least so much, with other fasteners, or elsewhere. */
import {
  type Change,
  type Hardware,
  type HardwarePlace,
  type PlacedHardware,
  set,
} from "../../design/index.js";
import type { Job } from "../../job/index.js";
import { fineLength, roundForce } from "../figures.js";
import type { Option } from "../option.js";
import { type Mending, type Offer, option } from "./offer.js";
import { copiedRow } from "./table-row.js";

type Duty = PlacedHardware["duty"];

/** The row of the table that hardware is bought from. */
export function stockOf(job: Job, { item }: PlacedHardware): Hardware | undefined {
  return job.stock.hardware.find(({ name }) => name === item);
}

/** Takes an item for hardware, a row that is added with it where the table has none such. */
export function itemOption(
  mending: Mending,
  hardware: PlacedHardware,
  item: string,
  words: string,
  row: ReturnType<typeof copiedRow> = [],
  unpriced?: string,
): Option {
  return option(mending, {
    lever: `hardware.${hardware.name}.item`,
    setting: item,
    words,
    changes: [...row, set(`hardware.${hardware.name}.item`, item)],
    ...(unpriced === undefined ? {} : { unpriced }),
  });
}

/** How far above what is asked a rating is looked for, one after another. */
const ratingSteps = [1, 1.4] as const;
/** Ratings tried where the table states none, N. */
const unratedSteps = [1000, 2000] as const;

/** The same thing with a rating of at least so much. */
function ratedAtLeast(mending: Mending, hardware: PlacedHardware): readonly Option[] {
  const { job, over } = mending;
  const stock = stockOf(job, hardware);
  if (!stock) return [];
  const base = unrated(stock.name);
  const loads =
    stock.rated === undefined ? unratedSteps : ratingSteps.map((step) => step * over * Number(stock.rated));
  return loads.flatMap((newton) => {
    const rated = roundForce(newton, job.case.units);
    const item = `${base} rated ${rated}`;
    const row = copiedRow(job, "hardware", stock.name, item, { rated });
    if (row.length === 0) return [];
    const words = `Take a ${base} that its maker rates at ${rated} or more for ${hardware.name}.`;
    return [
      itemOption(
        mending,
        hardware,
        item,
        words,
        row,
        `a ${base} of that rating, priced here as the one in the table`,
      ),
    ];
  });
}

/** A name without what an earlier proposal said of its rating. */
function unrated(name: string): string {
  return name.replace(/ rated [\d.]+ (lbf|N)/, "");
}

/** A name without what an earlier proposal said of its fasteners. */
function unfastened(name: string): string {
  return name.replace(/ with \d+ (?!.* rated ).*$/, "");
}

/** Other hardware of the same kind in the table. */
function othersOfTable(mending: Mending, hardware: PlacedHardware): readonly Option[] {
  const { job } = mending;
  const stock = stockOf(job, hardware);
  return job.stock.hardware
    .filter(({ name, kind }) => kind === stock?.kind && name !== stock.name)
    .map(({ name }) => itemOption(mending, hardware, name, `Take ${name} for ${hardware.name}.`));
}

/** The same thing held by other fasteners of the table. */
function otherFasteners(mending: Mending, hardware: PlacedHardware): readonly Option[] {
  const { job } = mending;
  const stock = stockOf(job, hardware);
  if (!stock) return [];
  const kind = job.stock.fasteners.find(({ name }) => name === stock.fastener)?.kind;
  return job.stock.fasteners
    .filter((one) => one.name !== stock.fastener && one.kind === kind)
    .flatMap((one) => {
      const { item, row } = copyWith(job, stock, one.name);
      const words = `Fasten ${hardware.name} with ${one.name} in place of ${stock.fastener}.`;
      return row.length === 0 ? [] : [itemOption(mending, hardware, item, words, row)];
    });
}

/** A row for a thing that is held by other fasteners. */
function copyWith(job: Job, stock: Hardware, fastener: string) {
  const item = `${unfastened(stock.name)} with ${stock.fasteners} ${fastener}`;
  return { item, row: copiedRow(job, "hardware", stock.name, item, { fastener }) };
}

/** The changes that hold hardware by other fasteners. */
export function fastenedWith(job: Job, hardware: PlacedHardware, fastener: string): readonly Change[] {
  const stock = stockOf(job, hardware);
  if (!stock) return [];
  const { item, row } = copyWith(job, stock, fastener);
  return [...row, set(`hardware.${hardware.name}.item`, item)];
}

/** Hardware of a duty, on a section where the subject names one. */
function ofDuty({ job, subject }: Mending, ...duties: readonly Duty[]): readonly PlacedHardware[] {
  const all = job.case.hardware.filter(({ duty }) => duties.includes(duty));
  const named = all.filter(({ item, name }) => subject.includes(item) || subject.includes(name));
  const there = named.filter((one) => !("cornersOf" in one.places) || isOn(subject, one.places.cornersOf));
  return there.length > 0 ? there : named.length > 0 ? named : all;
}

/** Whether a subject is of a section, or of none: "lower.ball corner". */
function isOn(subject: string, section: string): boolean {
  return subject === section || subject.startsWith(`${section}.`);
}

function strongerOf(...duties: readonly Duty[]): Offer {
  return (mending) =>
    ofDuty(mending, ...duties).flatMap((one) => [
      ...othersOfTable(mending, one),
      ...ratedAtLeast(mending, one),
      ...otherFasteners(mending, one),
    ]);
}

/** Stronger handles. */
export const strongerHandles: Offer = strongerOf("lift");
/** Stronger latches of doors. */
export const strongerDoors: Offer = strongerOf("close");
/** Stronger hinges. */
export const strongerHinges: Offer = strongerOf("hinge");
/** Stronger casters and feet. */
export const strongerCasters: Offer = strongerOf("roll", "stand");
/** Corners of the table, with more fasteners, or with others. */
export const strongerCorners: Offer = (mending) =>
  ofDuty(mending, "protect").flatMap((one) => [
    ...othersOfTable(mending, one),
    ...moreInCorner(mending, one),
    ...otherFasteners(mending, one),
  ]);

/** Faces that a corner lies on. */
const cornerFaces = 3;

/** The same corner with another row or column of fasteners on each of its faces. */
function moreInCorner(mending: Mending, hardware: PlacedHardware): readonly Option[] {
  const stock = stockOf(mending.job, hardware);
  if (!stock) return [];
  const { holeColumns: columns, holeRows: rows } = stock;
  return [
    [columns + 1, rows],
    [columns, rows + 1],
  ].flatMap(([across = 1, up = 1]) => {
    const count = cornerFaces * across * up;
    const item = `${unfastened(stock.name)} with ${count} ${stock.fastener}`;
    const cells = { fasteners: `${count}`, "hole columns": `${across}`, "hole rows": `${up}` };
    const row = copiedRow(mending.job, "hardware", stock.name, item, cells);
    const words = `Take a ${unfastened(stock.name)} for ${hardware.name} that ${count} ${stock.fastener} hold.`;
    const unpriced = "corners with more holes, priced here as those in the table";
    return row.length === 0 ? [] : [itemOption(mending, hardware, item, words, row, unpriced)];
  });
}

/** What the joined boxes pull at most: handles, or latches with their keepers. */
export const strongerInBox: Offer = (mending) =>
  mending.subject.startsWith("handle") ? strongerHandles(mending) : ratedPairs(mending);

/** Both latches and their keepers at once, which is what joins two sections. */
export const ratedPairs: Offer = (mending) => {
  const pair = ofDuty({ ...mending, subject: "" }, "join-sections");
  const ways = pair.map((one) => ratedAtLeast(mending, one));
  return ratingSteps.flatMap((_, i) => {
    const options = ways.flatMap((way) => way[i] ?? []);
    const [first] = options;
    if (!first || options.length < 2) return [];
    return [
      option(mending, {
        lever: first.lever,
        setting: `both, ${options.map(({ id }) => id).join("; ")}`,
        words: options.map(({ words }) => words).join(" "),
        changes: options.flatMap(({ changes }) => changes),
        unpriced: "latches and keepers of that rating, priced here as those in the table",
      }),
    ];
  });
};

/** Casters nearer to the corners of the bottom, as far as what stands there lets them. */
export const castersFurtherOut: Offer = (mending) => {
  return ofDuty({ ...mending, subject: "" }, "roll", "stand")
    .flatMap((hardware) =>
      [0.88, 0.77, 0.68].flatMap((share) =>
        (["up", "across"] as const).map((way) => placedNearer(mending, hardware, way, share)),
      ),
    )
    .filter((one) => one !== undefined);
};

function placedNearer(
  mending: Mending,
  hardware: PlacedHardware,
  way: "across" | "up",
  share: number,
): Option | undefined {
  if ("cornersOf" in hardware.places) return undefined;
  const at = `hardware.${hardware.name}.places`;
  const { units } = mending.job.case;
  const places = (hardware.places as readonly HardwarePlace[]).map((place) => {
    const near = { ...place, [way]: share * place[way] };
    const [across, up] = [near.across, near.up].map((one) => fineLength(one, units));
    const turned = place.turned ? ", turned: true" : "";
    return `{ on: ${place.section}.${place.face}, from: ${place.from}, across: ${across}, up: ${up}${turned} }`;
  });
  const [first] = hardware.places as readonly HardwarePlace[];
  const where = first ? `: the first one ${fineLength(share * first[way], units)} ${way}` : "";
  return option(mending, {
    lever: at,
    setting: `${way}, ${places.join(", ")}`,
    words: `Set each ${hardware.name} nearer to its corner${where}.`,
    changes: [set(at, `[${places.join(", ")}]`)],
  });
}

/** Shares by which a case is made deeper. */
const deeper = [1.1, 1.2] as const;

/** Every section deeper, and what is fastened to the back moved along with it. */
export const deeperCase: Offer = (mending) => {
  const { case: whole } = mending.job;
  const { units, sections, contents } = whole;
  const [first] = sections;
  if (!first) return [];
  return deeper.map((times) => {
    const more = (times - 1) * first.inside.depth;
    const onBack = contents.filter(({ held }) => "to" in held && held.to === "back");
    return option(mending, {
      lever: "sections deeper",
      setting: `${times}`,
      words: `Make every section ${fineLength(more, units)} deeper inside.`,
      changes: [
        ...sections.map(({ name, inside }) =>
          set(`sections.${name}.inside.depth`, fineLength(inside.depth + more, units)),
        ),
        ...onBack.map(({ name, at }) =>
          set(
            `contents.${name}.at`,
            `[${[at.x, at.y + more, at.z].map((one) => fineLength(one, units)).join(", ")}]`,
          ),
        ),
      ],
    });
  });
};

/** Fasteners of another grip length, in hardware and along the edges. */
export const otherGrip: Offer = (mending) => {
  const { job, subject } = mending;
  const of = job.case.hardware.filter((one) => {
    const fastener = stockOf(job, one)?.fastener;
    return fastener !== undefined && subject.includes(fastener);
  });
  return of.flatMap((one) => otherFasteners(mending, one));
};
