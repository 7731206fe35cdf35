/** Tables, chart rows and the answer of the notebook that asks about lifting, rolling and tipping. */

import { liftSweep } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { liftAxis, type MassGroup } from "../../model/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { mostWanting, tallySentence } from "./tally.js";

/** What a section is made up of, in plain numbers. */
export interface MassPart {
  readonly section: string;
  readonly group: string;
  /** In the case's own unit: lb or kg. */
  readonly mass: number;
}

/** Glue counts with the facing it holds, fasteners with the hardware: a bar of few parts is read at a glance. */
const groupWords: Readonly<Record<MassGroup, string>> = {
  panels: "panels",
  facings: "facings and glue",
  glue: "facings and glue",
  edges: "edges",
  hardware: "hardware and fasteners",
  fasteners: "hardware and fasteners",
  contents: "contents",
};

/** Mass of each section by what it is made of. */
export function massParts({ review: { masses }, case: { units } }: Job): readonly MassPart[] {
  const keys = [...new Set(masses.map(({ section, group }) => `${section}|${groupWords[group]}`))];
  return keys.map((key) => {
    const [section = "", group = ""] = key.split("|");
    const mine = masses.filter((item) => item.section === section && groupWords[item.group] === group);
    const mass = Mass.si(mine.reduce((sum, item) => sum + item.mass, 0));
    return { section, group, mass: Mass.in(mass, massUnit(units)) };
  });
}

/** The unit a case's masses are charted in. */
export function massUnit(units: "inch" | "metric"): "lb" | "kg" {
  return units === "inch" ? "lb" : "kg";
}

/** One point of the lift chart, in plain numbers. */
export interface LiftPoint {
  /** In the case's own unit: in or mm. */
  readonly from: number;
  readonly index: number;
}

/** The heaviest thing of a section, moved from one end to the other: the ends are where the handles are. */
export interface HeaviestMoved {
  readonly content: string;
  /** The wall at the first end. */
  readonly wall: "left" | "front";
  readonly points: readonly LiftPoint[];
}

/** What moving the heaviest thing does to the lift; nothing where nothing rides, or no lift can be judged. */
export function heaviestMoved(job: Job, section: string, steps: number): HeaviestMoved | undefined {
  const inside = job.case.contents.filter((content) => content.section === section);
  const [heaviest] = [...inside].sort((a, b) => b.mass - a.mass);
  const lift = job.review.travel.find(({ id }) => id === `travel.lift.${section}`);
  if (!heaviest || lift?.verdict === "unknown" || job.case.journey.people < 2) return undefined;
  const unit = job.case.units === "inch" ? "in" : "mm";
  const points = liftSweep(job, heaviest.name, steps).map(({ from, index }) => ({
    from: Length.in(from, unit),
    index,
  }));
  if (points.length === 0) return undefined;
  return { content: heaviest.name, wall: liftAxis(job, section) === "x" ? "left" : "front", points };
}

/** What holds and what does not, in one sentence. */
export function movingAnswer({ review: { travel } }: Job): string {
  return mostWanting(travel)
    ? tallySentence(travel)
    : "It can be lifted, rolled and stood by the people of the journey.";
}
