/** Tables, chart rows and the answer of the notebook that asks about lifting, rolling and tipping. */
import type { Job } from "../../job/index.js";
import { type TableView, tableOf, verdictWords } from "../../page/index.js";
import { Length, Mass } from "../../quantity/index.js";
import {
  liftAxis,
  liftSweep,
  type MassGroup,
  sectionBalance,
  stackedBalance,
  standingHeight,
  styleOf,
} from "../../review/index.js";

/** What a section is made up of, in plain numbers. */
export interface MassPart {
  readonly section: string;
  readonly group: MassGroup;
  /** In the case's own unit: lb or kg. */
  readonly mass: number;
}

/** Mass of each section by what it is made of. */
export function massParts({ review: { masses }, case: { units } }: Job): readonly MassPart[] {
  const keys = [...new Set(masses.map(({ section, group }) => `${section}|${group}`))];
  return keys.map((key) => {
    const [section = "", group] = key.split("|") as [string, MassGroup];
    const mine = masses.filter((item) => item.section === section && item.group === group);
    const mass = Mass.si(mine.reduce((sum, item) => sum + item.mass, 0));
    return { section, group, mass: Mass.in(mass, massUnit(units)) };
  });
}

/** The unit a case's masses are charted in. */
export function massUnit(units: "inch" | "metric"): "lb" | "kg" {
  return units === "inch" ? "lb" : "kg";
}

/** Mass of each section and of the stack, and where they balance. */
export function balanceTable(job: Job): TableView {
  const style = styleOf(job.case);
  const lines = [
    ...job.parts.sections.map(({ name }) => ({ name, line: sectionBalance(job, name) })),
    { name: "stacked", line: stackedBalance(job) },
  ];
  return tableOf(
    lines,
    [
      { heading: "What", cell: ({ name }) => name },
      { heading: "Mass, loaded", cell: ({ line }) => Mass.show(line.value.mass, style) },
      { heading: "From the left", cell: ({ line }) => Length.show(line.value.x, style) },
      { heading: "From the front", cell: ({ line }) => Length.show(line.value.y, style) },
      {
        heading: "Above the floor",
        cell: ({ line }) => Length.show(Length.si(line.value.z + standingHeight(job)), style),
      },
    ],
    "Mass and centre of gravity, measured from the outside of the stacked case",
  );
}

/** One point of the lift chart, in plain numbers. */
export interface LiftPoint {
  /** In the case's own unit: in or mm. */
  readonly from: number;
  readonly index: number;
}

/** What moving one heavy thing does to the lift. */
export function liftPoints(job: Job, content: string, steps: number): readonly LiftPoint[] {
  const unit = job.case.units === "inch" ? "in" : "mm";
  return liftSweep(job, content, steps).map(({ from, index }) => ({ from: Length.in(from, unit), index }));
}

/** The wall that a section's first end is at, as a reader would say it. */
export function firstWall(job: Job, section: string): "left" | "front" {
  return liftAxis(job, section) === "x" ? "left" : "front";
}

/** The heaviest thing inside a section: the one worth moving. */
export function heaviestContent({ parts }: Job, section: string): string {
  const inside = parts.contents.filter(({ content }) => content.section === section);
  const [heaviest] = [...inside].sort((a, b) => b.content.mass - a.content.mass);
  if (!heaviest) throw new RangeError(`nothing rides in ${section}`);
  return heaviest.content.name;
}

/** What holds and what does not, in one sentence. */
export function movingAnswer({ review: { travel } }: Job): string {
  const not = travel.filter(({ verdict }) => verdict !== "holds");
  if (not.length === 0) return "It can be lifted, rolled and stood by the people of the journey.";
  return `${travel.length - not.length} of ${travel.length} questions are settled. Not yet: ${not.map(({ question, verdict }) => `${question} ${verdictWords[verdict]}.`).join(" ")}`;
}
