/** Parts that share space: boards under contents, sections further apart, hardware shifted, shelves that stay. */
import { reachOfSolid } from "../../assembly/index.js";
import { type Content, type HardwarePlace, type PlacedHardware, remove, set } from "../../design/index.js";
import { boardUnder } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type CaseSolid, caseOverlaps, slideStands, stackGaps } from "../../model/index.js";
import { fineLength, lengthAtLeast } from "../figures.js";
import type { Option } from "../option.js";
import { contentOf, moved } from "./contents.js";
import { itemOption, stockOf } from "./hardware.js";
import { type Mending, type Offer, option } from "./offer.js";
import { copiedRow } from "./table-row.js";

/** A board under each content that touches nuts or tails. */
export const boards: Offer = (mending) => {
  const { job } = mending;
  const { names, high } = boardUnder(job);
  const { units } = job.case;
  const up = lengthAtLeast(high, units);
  const lifted = names.flatMap((name): Option[] => {
    const content = contentOf(job, name);
    if (!content) return [];
    return [moved(mending, content, { ...content.at, z: content.at.z + high + 0.0002 }, "")];
  });
  if (lifted.length === 0) return [];
  return [
    option(mending, {
      lever: "boards under contents",
      setting: up,
      words: `Stand ${names.join(", ")} on a board of ${up} with room for the nuts.`,
      changes: lifted.flatMap(({ changes }) => changes),
      unpriced: "offcuts for boards",
    }),
  ];
};

/** Left between a content and what it was moved off, m. */
const besideRoom = 0.0008;

/** Contents moved off the fasteners that they touch, each by the least that clears them. */
export const offFasteners: Offer = (mending) => {
  const { job } = mending;
  const moves = job.case.contents.flatMap((content) => {
    const by = shiftOff(job, content);
    return by ? [{ content, by }] : [];
  });
  if (moves.length === 0) return [];
  const names = moves.map(({ content }) => content.name);
  return [
    option(mending, {
      lever: `contents off fasteners: ${names.join(", ")}`,
      setting: moves.map(({ by }) => by.map((one) => fineLength(one, job.case.units)).join(" ")).join(", "),
      words: `Move ${names.join(", ")} off the nuts and tails that they touch.`,
      changes: moves.flatMap(({ content, by: [x, y, z] }) => {
        const { at } = content;
        return moved(mending, content, { x: at.x + x, y: at.y + y, z: at.z + z }, "").changes;
      }),
    }),
  ];
};

type Shift = readonly [number, number, number];

/** The least moves along the three axes that clear a content of every fastener that it touches, inside its section. */
function shiftOff(job: Job, { name, section, at, size }: Content): Shift | undefined {
  const inside = job.case.sections.find((one) => one.name === section)?.inside;
  const box = job.parts.contents.find((one) => one.content.name === name)?.box;
  if (!inside || !box) return undefined;
  const room = [inside.width - size.x, inside.depth - size.y, inside.height - size.z];
  const [start, low, long] = [at, box.low, size].map(({ x, y, z }) => [x, y, z]);
  const shift = [0, 0, 0];
  for (const met of metBy(job, name)) {
    const ways = [0, 1, 2].flatMap((i): { i: number; by: number }[] => {
      const [from, length, now] = [low?.[i] ?? 0, long?.[i] ?? 0, start?.[i] ?? 0];
      const up = (met.high[i] ?? 0) - from + besideRoom;
      const down = (met.low[i] ?? 0) - from - length - besideRoom;
      return [up, down].filter((by) => now + by >= 0 && now + by <= (room[i] ?? 0)).map((by) => ({ i, by }));
    });
    const done = ways.some(
      ({ i, by }) => Math.sign(shift[i] ?? 0) === Math.sign(by) && Math.abs(shift[i] ?? 0) >= Math.abs(by),
    );
    const free = ways
      .filter(({ i, by }) => (shift[i] ?? 0) * by >= 0)
      .sort((one, other) => Math.abs(one.by) - Math.abs(other.by));
    const [least] = free;
    if (!done && least) shift[least.i] = least.by;
  }
  const [x = 0, y = 0, z = 0] = shift;
  return x === 0 && y === 0 && z === 0 ? undefined : [x, y, z];
}

/** What fasteners take up that a content touches. */
function metBy(job: Job, name: string): readonly ReturnType<typeof reachOfSolid>[] {
  return caseOverlaps(job).contents.flatMap(({ one, other }) => {
    if (one.part === name && one.kind === "content") return [reachOfSolid(other)];
    return other.part === name && other.kind === "content" ? [reachOfSolid(one)] : [];
  });
}

/** Sections as far apart as their metal takes. */
export const standsOff: Offer = (mending) => {
  const { job, subject } = mending;
  const gap = stackGaps(job).find(({ above }) => above === subject);
  if (!gap || gap.needed <= 0) return [];
  const apart = `${(Math.ceil(gap.needed * 10_000) / 10).toFixed(1)} mm`;
  return [
    option(mending, {
      lever: `sections.${subject}.stands off`,
      setting: apart,
      words: `Reckon with ${subject} standing ${apart} above the section below, on the metal of both.`,
      changes: [set(`sections.${subject}.stands off`, apart)],
    }),
  ];
};

/** How far hardware is shifted to clear what it meets, m. */
const shifts = [0.006, 0.012] as const;

/** Hardware whose fasteners meet something, a little elsewhere. */
export const shiftedHardware: Offer = (mending) => {
  const { job } = mending;
  const { heads, inside } = caseOverlaps(job);
  const solids = [...heads, ...inside].flatMap(({ one, other }) => [one, other]);
  return job.case.hardware
    .filter((one) => !("cornersOf" in one.places) && solids.some((solid) => isOf(solid, one)))
    .flatMap((one) => [...shifts, ...shifts.map((by) => -by)].flatMap((by) => shiftedBy(mending, one, by)));
};

function isOf({ part, name, group }: CaseSolid, hardware: PlacedHardware): boolean {
  return [part, name, group ?? ""].some((words) => words.includes(hardware.name));
}

function shiftedBy(mending: Mending, hardware: PlacedHardware, by: number): readonly Option[] {
  const { units } = mending.job.case;
  const places = hardware.places as readonly HardwarePlace[];
  return (["across", "up"] as const).flatMap((way): Option[] => {
    if (places.some((place) => place[way] + by < 0)) return [];
    const written = places.map((place) => {
      const at = { ...place, [way]: place[way] + by };
      const turned = place.turned ? ", turned: true" : "";
      return `{ on: ${place.section}.${place.face}, from: ${place.from}, across: ${fineLength(at.across, units)}, up: ${fineLength(at.up, units)}${turned} }`;
    });
    const far = fineLength(Math.abs(by), units);
    return [
      option(mending, {
        lever: `hardware.${hardware.name}.places`,
        setting: `${way} ${by}`,
        words: `Shift ${hardware.name} by ${far}: ${by > 0 ? "more" : "less"} ${way} from its corner.`,
        changes: [set(`hardware.${hardware.name}.places`, `[${written.join(", ")}]`)],
      }),
    ];
  });
}

/** Hardware whose own fasteners meet each other: one of a wider pattern. */
export const widerPattern: Offer = (mending) => {
  const { job } = mending;
  const meeting = caseOverlaps(job).heads.filter(
    ({ one, other }) => one.group !== undefined && one.group === other.group,
  );
  return job.case.hardware.flatMap((one): readonly Option[] => {
    const stock = stockOf(job, one);
    const depth = Math.max(0, ...meeting.filter((pair) => isOf(pair.one, one)).map((pair) => pair.depth));
    if (!stock || depth === 0) return [];
    return (["width", "height"] as const).flatMap((way) => {
      const wide = way === "width" ? stock.holeWidth : stock.holeHeight;
      const apart = lengthAtLeast(Number(wide) + depth + patternRoom, job.case.units);
      const item = `${stock.name} of ${apart} ${way}`;
      const row = copiedRow(job, "hardware", stock.name, item, { [`hole ${way}`]: apart });
      if (row.length === 0) return [];
      const words = `Take a ${stock.name} for ${one.name} whose holes spread over ${apart} of its ${way}.`;
      return [
        itemOption(
          mending,
          one,
          item,
          words,
          row,
          "hardware of that pattern, priced here as the one in the table",
        ),
      ];
    });
  });
};

/** Left between heads of a wider pattern, m. */
const patternRoom = 0.0005;

/** A shelf that does not slide. */
export const fixedShelf: Offer = (mending) => {
  const { job, subject } = mending;
  const shelf = job.case.shelves.find(({ name }) => name === subject);
  if (!shelf?.sliding) return [];
  return [
    option(mending, {
      lever: `shelves.${subject}.sliding`,
      setting: "false",
      words: `Fix the ${subject}: it does not slide out.`,
      changes: [
        set(`shelves.${subject}.sliding`, "false"),
        ...(shelf.slidesRated === undefined ? [] : [remove(`shelves.${subject}.slides rated`)]),
        ...(shelf.slides === undefined ? [] : [remove(`shelves.${subject}.slides`)]),
      ],
    }),
  ];
};

/** Left between a shelf on slides and what they lie against, m. */
const slipRoom = 0.0001;

/** Slides that lie against nothing: a shelf so wide that they do, or one that does not slide. */
export const slidesAgainstWalls: Offer = (mending) => {
  const { job, subject } = mending;
  const runs = subject.replace(/^slides of /, "");
  const shelf = job.case.shelves.find(({ name }) => name === runs);
  const gaps = slideStands(job).find(({ id }) => id === subject)?.gaps ?? [];
  const [low, high] = gaps;
  if (!shelf || !low || !high) return [];
  const along = /\.(front|back)$/.test(low.wall) ? "y" : "x";
  const { units } = job.case;
  const wider = low.gap + high.gap - 2 * slipRoom;
  const text = (value: number): string => fineLength(value, units);
  const size = [shelf.width + (along === "x" ? wider : 0), shelf.depth + (along === "y" ? wider : 0)];
  const at = { ...shelf.at, [along]: shelf.at[along] - low.gap + slipRoom };
  return [
    option(mending, {
      lever: `shelves.${runs}.size`,
      setting: size.map(text).join(" "),
      words: `Make the ${runs} ${text(wider)} wider, so that its slides lie against their walls.`,
      changes: [
        set(`shelves.${runs}.size`, `[${size.map(text).join(", ")}]`),
        set(`shelves.${runs}.at`, `[${[at.x, at.y, at.z].map(text).join(", ")}]`),
      ],
    }),
    ...fixedShelf({ ...mending, subject: runs }),
  ];
};
