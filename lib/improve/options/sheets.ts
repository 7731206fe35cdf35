/** Panels, shelves and edges: other sheets, battens and doublers, rivets closer together or others. */
import { type PanelPart, type SheetStock, set } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import { fineLength } from "../figures.js";
import type { Option } from "../option.js";
import { type Mending, type Offer, option, setting } from "./offer.js";

function panelsAbout({ job, subject }: Mending): readonly PanelPart[] {
  const exact = job.parts.panels.filter(({ id }) => id === subject);
  if (exact.length > 0) return exact;
  return job.parts.panels.filter(({ id, role }) => role === "face" && id.startsWith(`${subject}.`));
}

/** Where the case file says a panel's sheet: a face's own, a leaf's is that of its face. */
function placeOf({ section, face }: PanelPart): string | undefined {
  return face === undefined ? undefined : `sections.${section}.panels.${face}`;
}

/** Sheets that are thicker than one, the thinnest first. */
function thickerThan(job: Job, { name, thickness }: SheetStock): readonly SheetStock[] {
  return job.stock.sheets
    .filter((one) => one.name !== name && one.thickness > thickness)
    .sort((one, other) => one.thickness - other.thickness);
}

/** Another sheet for a panel. */
const thickerSheet: Offer = (mending) =>
  panelsAbout(mending).flatMap((panel) => {
    const at = placeOf(panel);
    if (at === undefined) return [];
    return thickerThan(mending.job, panel.sheet).map(({ name }) =>
      setting(mending, `${at}.sheet`, name, `Make ${panel.section}.${panel.face} of ${name}.`),
    );
  });

/** A batten and a thicker sheet by turns, as each mends what the other cannot, and each gets in another's way. */
export const stiffer: Offer = (mending) => {
  const [strips, sheets] = [battens(mending), thickerSheet(mending)];
  return strips.flatMap((strip, i) => [strip, ...sheets.slice(i, i + 1)]).concat(sheets.slice(strips.length));
};

/** Another sheet for every panel and leaf of the case. */
export const thickerSheetForAll: Offer = (mending) => {
  const { job } = mending;
  const [first] = job.parts.panels;
  if (!first) return [];
  return thickerThan(job, first.sheet).map(({ name }) =>
    setting(mending, "build.sheet", name, `Make all panels that say no other of ${name}.`),
  );
};

/** Another sheet for a shelf. */
export const thickerShelf: Offer = (mending) => {
  const { job, subject } = mending;
  const shelf = job.parts.shelves.find((one) => one.shelf.name === subject);
  const sheet = job.stock.sheets.find(({ name }) => name === shelf?.shelf.sheet);
  if (!sheet) return [];
  return thickerThan(job, sheet).map(({ name }) =>
    setting(mending, `shelves.${subject}.sheet`, name, `Make the ${subject} of ${name}.`),
  );
};

/** Other fasteners of a shelf, or more of them. */
export const shelfFasteners: Offer = (mending) => {
  const { job, subject, over } = mending;
  const joint = job.case.shelves.find(({ name }) => name === subject)?.joint;
  if (!joint) return [];
  const more = 2 * Math.ceil((joint.count * Math.min(over, 4)) / 2);
  const at = `shelves.${subject}.joint`;
  const others = job.stock.fasteners.filter(({ name }) => name !== joint.fastener);
  return [
    setting(mending, `${at}.count`, `${more}`, `Hold the ${subject} with ${more} ${joint.fastener}.`),
    ...others.map(({ name }) =>
      setting(
        mending,
        `${at}.fastener`,
        name,
        `Hold the ${subject} with ${name} in place of ${joint.fastener}.`,
      ),
    ),
  ];
};

/** Widths of boards and battens cut from sheet, m, those that help most first. */
const boardWidths = [0.15, 0.25, 0.06] as const;
/** Left free at each end of a batten, for bars, corners and the tails of their rivets, m. */
const endRoom = 0.045;
/** Room between a batten and an opening, m. */
const openingRoom = 0.01;

/** A strip of a panel, from its lower left cut corner, m. */
interface Strip {
  readonly across: number;
  readonly up: number;
  readonly length: number;
  readonly wide: number;
  readonly runs: "across" | "up";
}

/** What a batten is made of. */
interface Wood {
  /** What it is cut from. */
  readonly name: string;
  /** In the words of the case file. */
  readonly of: string;
  /** Across its length, m. */
  readonly wide: number;
  /** How far it stands into the section, m. */
  readonly deep: number;
}

/** Places along the middle of the clear span, each way, and beside it where openings or things inside are in the way. */
function stripsOf(job: Job, panel: PanelPart, { wide, deep }: Wood): readonly Strip[] {
  return (["up", "across"] as const).flatMap((runs) => {
    const [along, over] =
      runs === "across" ? [panel.clearWidth, panel.clearHeight] : [panel.clearHeight, panel.clearWidth];
    const places = [0.5, 0.35, 0.65, 0.25, 0.75].map((share) => share * over - wide / 2);
    const clear = places
      .filter((at) => at >= 0 && at + wide <= over)
      .map((at) => stripAt(panel, { runs, wide, length: along - 2 * endRoom }, at))
      .find((strip) => isClear(panel, strip) && !meetsContent(job, panel, strip, deep));
    return clear ? [clear] : [];
  });
}

function stripAt({ clearLow }: PanelPart, strip: Omit<Strip, "across" | "up">, at: number): Strip {
  return strip.runs === "across"
    ? { ...strip, across: clearLow.x + endRoom, up: clearLow.y + at }
    : { ...strip, across: clearLow.x + at, up: clearLow.y + endRoom };
}

function isClear({ openings }: PanelPart, { runs, across, up, length, wide }: Strip): boolean {
  const [width, height] = runs === "across" ? [length, wide] : [wide, length];
  return (
    length > wide &&
    openings.every(
      (one) =>
        one.low.x > across + width + openingRoom ||
        one.low.x + one.width < across - openingRoom ||
        one.low.y > up + height + openingRoom ||
        one.low.y + one.height < up - openingRoom,
    )
  );
}

/** Whether something inside stands so near to a face that a strip of it would meet it, seen from either side. */
function meetsContent(job: Job, { section, face, clearLow }: PanelPart, strip: Strip, deep: number): boolean {
  const inside = job.case.sections.find(({ name }) => name === section)?.inside;
  if (face === undefined || !inside) return false;
  const whole = { x: inside.width, y: inside.depth, z: inside.height };
  const [u, v, out] = axesOf[face];
  const isHigh = face === "right" || face === "back" || face === "top";
  const [axis, at] = strip.runs === "up" ? [u, strip.across - clearLow.x] : [v, strip.up - clearLow.y];
  return job.case.contents.some((one) => {
    if (one.section !== section) return false;
    const away = isHigh ? whole[out] - one.at[out] - one.size[out] : one.at[out];
    const [low, high] = [one.at[axis], one.at[axis] + one.size[axis]];
    const sides = [at, whole[axis] - at - strip.wide];
    return away < deep && sides.some((side) => side < high && side + strip.wide > low);
  });
}

/** The axes of a section that a face lies in, across and up, and the one that it looks along. */
const axesOf = {
  left: ["y", "z", "x"],
  right: ["y", "z", "x"],
  front: ["x", "z", "y"],
  back: ["x", "z", "y"],
  top: ["x", "y", "z"],
  bottom: ["x", "y", "z"],
} as const;

/** Glue that bonds wood to wood, the cheapest first. */
function woodGlue(job: Job): string | undefined {
  const kinds = ["wood glue", "construction", "epoxy"];
  const found = kinds.map((kind) => job.stock.adhesives.find((one) => one.kind === kind));
  return found.find((one) => one !== undefined)?.name;
}

/** Battens and boards on the inside of a panel, one way or the other: a strip of the table, or cut from sheet. */
const battens: Offer = (mending) => {
  const { job } = mending;
  const glue = woodGlue(job);
  if (glue === undefined) return [];
  return panelsAbout(mending)
    .filter(({ role }) => role === "face")
    .flatMap((panel) =>
      woodsFor(job, panel).flatMap((wood) =>
        stripsOf(job, panel, wood).map((strip) => battenOf(mending, panel, strip, glue, wood)),
      ),
    );
};

/** Strips of the table, and boards of the panel's sheet and of thicker ones, those that help most first. */
function woodsFor(job: Job, { sheet }: PanelPart): readonly Wood[] {
  const sheets = [sheet, ...thickerThan(job, sheet)].reverse();
  const strips = job.stock.strips.map(
    ({ name, width, thickness }): Wood => ({ name, of: `strip: ${name}`, wide: width, deep: thickness }),
  );
  const boards = boardWidths.flatMap((wide) =>
    sheets.map(({ name, thickness }): Wood => {
      const width = fineLength(wide, job.case.units);
      return { name: `${name}, ${width} wide`, of: `sheet: ${name}, width: ${width}`, wide, deep: thickness };
    }),
  );
  return [...strips, ...boards];
}

function battenOf(mending: Mending, panel: PanelPart, strip: Strip, glue: string, wood: Wood): Option {
  const { job } = mending;
  const text = (value: number): string => fineLength(value, job.case.units);
  const name = `${panel.section} ${panel.face} batten ${strip.runs}`;
  const place = `across: ${text(strip.across)}, up: ${text(strip.up)}, length: ${text(strip.length)}`;
  const what = `{ on: ${panel.section}.${panel.face}, ${wood.of}, runs: ${strip.runs}, ${place}, adhesive: ${JSON.stringify(glue)} }`;
  return option(mending, {
    lever: `stiffeners.${name}`,
    setting: `${wood.name}, ${place}`,
    words: `Glue a batten of ${wood.name}, ${text(strip.length)} long, inside ${panel.id}, running ${strip.runs}.`,
    changes: [set(`stiffeners.${name}`, what)],
  });
}

/** A batten that breaks: another in its place. */
export const otherBatten: Offer = (mending) => {
  const { job, subject } = mending;
  const panel = job.parts.panels.find(({ id, role }) => role === "face" && subject.startsWith(`${id}.`));
  if (!panel) return [];
  const lever = `stiffeners.${subject.slice(panel.id.length + 1)}`;
  return battens({ ...mending, subject: panel.id }).filter((one) => one.lever === lever);
};

/** Rivets of the edges closer together. */
export const closerRivets: Offer = (mending) => {
  const { job, over } = mending;
  const pitch = edgePitch(job);
  if (pitch === undefined) return [];
  return [1, 1.3].map((more) => {
    const now = fineLength(pitch / (over * more), job.case.units);
    return setting(mending, "build.edges.pitch", now, `Set the rivets of the edges ${now} apart at most.`);
  });
};

function edgePitch({ case: { sections } }: Job): number | undefined {
  return sections
    .flatMap(({ edges }) => Object.values(edges))
    .map(({ extrusion }) => extrusion?.pitch)
    .find((pitch) => pitch !== undefined);
}

/** Rivets of another length or kind along the edges. */
export const otherRivets: Offer = (mending) => {
  const { job } = mending;
  const used = job.case.sections
    .flatMap(({ edges }) => Object.values(edges))
    .find(({ extrusion }) => extrusion)?.extrusion;
  if (!used) return [];
  return job.stock.fasteners
    .filter(({ kind, name }) => kind === "rivet" && name !== used.rivet)
    .map(({ name }) => setting(mending, "build.edges.rivet", name, `Rivet the edges with ${name}.`));
};

/** Rivets of one leg half a pitch off those of the other. */
export const staggered: Offer = (mending) =>
  edgePitch(mending.job) === undefined
    ? []
    : [
        option(mending, {
          lever: "build.edges.stagger",
          setting: "true",
          words: "Shift the rivets of one leg of every bar by half a pitch.",
          changes: [set("build.edges.stagger", "true")],
        }),
      ];

/** A vent, window or door opening made smaller, or rounder. */
export const smallerOpening: Offer = (mending) =>
  panelsAbout(mending).flatMap(({ section, face, openings }) =>
    openings
      .filter(({ why, kind }) => why === "case" && (kind === "rectangle" || kind === "slot"))
      .flatMap((one) => {
        const at = `sections.${section}.panels.${face}.openings.${one.name}.${one.kind}.width`;
        return [0.85, 0.7].map((share) => {
          const width = fineLength(share * one.width, mending.job.case.units);
          return setting(mending, at, width, `Make ${one.name} ${width} wide.`);
        });
      }),
  );
