/** A job as a notebook asks it: by the names of its things, for answers that print with their units. */
import type { Change } from "../../design/index.js";
import { byDanger, type Finding, keepsFromRelease } from "../../findings/index.js";
import { type Job, openJob } from "../../job/index.js";
import { footprint, stackedBalance, standingHeight } from "../../model/index.js";
import { tipWays } from "../../moving/index.js";
import { Angle, Length, Money, type Quantity, Time, type UnitNumber } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { type AskedOpening, AskedPanel } from "./asked-panel.js";
import { AskedSection, type Loaded, massIn, type Spot, spotOf } from "./asked-section.js";
import { AskedBar, AskedContent, AskedDrawer, AskedHardware, AskedShelf } from "./asked-things.js";
import {
  type AskedSize,
  findingsAbout,
  findingsOfTopic,
  orWhyNot,
  type Topic,
  topics,
  unitsOf,
} from "./asking.js";
import { named, printed } from "./named.js";

/** Things of a case by their names. */
export interface NamedThings {
  /** A panel: `job.panel("upper.front")`; of a door too: "lower.left.side door". */
  panel(name: string): AskedPanel;
  /** An opening: `job.opening("upper.front.stage")`. */
  opening(name: string): AskedOpening;
  /** A section: `job.section("upper")`. */
  section(name: string): AskedSection;
  /** A shelf by its name in the case file. */
  shelf(name: string): AskedShelf;
  /** A drawer by its name in the case file. */
  drawer(name: string): AskedDrawer;
  /** A thing that rides in the case, by its name in the case file. */
  content(name: string): AskedContent;
  /** A bar over an edge: `job.bar("upper.front-left")`. */
  bar(name: string): AskedBar;
  /** A piece of hardware: `job.hardware("carry handle 1")`. */
  hardware(name: string): AskedHardware;
  /** Its panels, the leaves of doors included. */
  readonly panels: readonly AskedPanel[];
  /** Its openings. */
  readonly openings: readonly AskedOpening[];
  /** Its sections, from the ground up. */
  readonly sections: readonly AskedSection[];
  /** Its shelves. */
  readonly shelves: readonly AskedShelf[];
  /** Its drawers. */
  readonly drawers: readonly AskedDrawer[];
  /** What rides in it. */
  readonly contents: readonly AskedContent[];
  /** Its bars. */
  readonly bars: readonly AskedBar[];
  /** Names of its hardware, each in its place. */
  readonly hardwareNames: readonly string[];
}

/** What is asked of a whole case. */
export interface WholeCase {
  /** What the stacked case weighs, with what rides in it unless "empty" is said. */
  mass(state?: Loaded): UnitNumber<"mass">;
  /** Its size, stacked, over laminate; with what it stands on. */
  readonly size: AskedSize;
  /** Where the stacked case balances, loaded. */
  balance(): Spot;
  /** How far it leans before it tips, the worst way. For a case that falls as it stands it prints that. */
  tip(): UnitNumber<"angle">;
  /** What its material costs, price breaks, shipping and tax included. */
  cost(): Money;
  /** How long it takes to build. Where no file says it, it prints what to write. */
  hours(): UnitNumber<"time">;
  /** Every finding, the most dangerous first. The first call reviews the whole case, which takes seconds. */
  readonly findings: readonly Finding[];
  /** One finding by its id: `job.finding("travel.wind")`. Only its topic is reviewed. */
  finding(id: string): Finding;
  /** Findings of a topic: `job.topic("travel")`. Only that is reviewed. */
  topic(name: Topic): readonly Finding[];
  /** Findings about a thing: `job.about("lamp")`. */
  about(name: string): readonly Finding[];
  /** The findings to settle first: not yes, the most dangerous first; three unless said. */
  worst(count?: number): readonly Finding[];
  /** Whether nothing of safety or strength fails or is unknown. */
  readonly released: boolean;
}

/** A job that can be asked by name. Flat functions of the library take it as any other. */
export interface AskedJob extends Omit<Job, "with">, NamedThings, WholeCase {
  /**
   * The job with changes, in memory: nothing is written.
   *
   * @example job.with(set("upper.front.stage.width", mm(600))).panel("upper.front").sag()
   * @throws ProblemsError with every problem that the changed files have
   */
  with(...changes: readonly Change[]): AskedJob;
}

/**
 * Opens a job to be asked by name.
 *
 * @param name a folder of data/, or a path to a folder (anything with a slash in it); the job of this book unless said
 * @throws ProblemsError with every problem of its files
 * @example openJob("soil-lab").panel("upper.front").sag()
 */
export function openAskedJob(name?: string): AskedJob {
  return askedJob(openJob(name));
}

const asked = new WeakMap<Job, AskedJob>();

/** A job as a notebook asks it, the same each time. */
export function askedJob(job: Job): AskedJob {
  const before = asked.get(job);
  if (before) return before;
  const made = withAnswers(job);
  asked.set(job, made);
  return made;
}

/** Getters stay getters, and a copy leaves them out, so that nothing is worked out before it is asked. */
function withAnswers(job: Job): AskedJob {
  const own: Pick<AskedJob, "with"> = { with: (...changes) => askedJob(job.with(...changes)) };
  const answers = [namedThings(job), wholeCase(job), own].map((part) =>
    Object.fromEntries(
      Object.entries(Object.getOwnPropertyDescriptors(part)).map(([name, property]) => [
        name,
        { ...property, enumerable: property.get === undefined },
      ]),
    ),
  );
  const properties = [Object.getOwnPropertyDescriptors(job), ...answers];
  const print = { [printed]: { value: () => `job ${job.name}: ${job.case.name}` } };
  return Object.defineProperties({}, Object.assign({}, ...properties, print)) as AskedJob;
}

function namedThings(job: Job): NamedThings {
  const { panels, shelves, drawers, contents, bars, hardware, sections } = job.parts;
  const partOf = <Part>(what: string, list: readonly Part[], nameOf: (part: Part) => string) => {
    return (name: string): Part => named(what, list, nameOf, name);
  };
  const panel = partOf("panel", panels, ({ id }) => id);
  const section = partOf("section", sections, (one) => one.name);
  const shelf = partOf("shelf", shelves, (one) => one.shelf.name);
  const drawer = partOf("drawer", drawers, (one) => one.drawer.name);
  const content = partOf("content", contents, (one) => one.content.name);
  const bar = partOf("bar", bars, ({ id }) => id);
  const piece = partOf("hardware", hardware, ({ id }) => id);
  const things: NamedThings = {
    panel: (name) => new AskedPanel(job, panel(name)),
    opening: (name) => named("opening", things.openings, (one) => one.name, name),
    section: (name) => new AskedSection(job, section(name)),
    shelf: (name) => new AskedShelf(job, shelf(name)),
    drawer: (name) => new AskedDrawer(job, drawer(name)),
    content: (name) => new AskedContent(job, content(name)),
    bar: (name) => new AskedBar(job, bar(name)),
    hardware: (name) => new AskedHardware(job, piece(name)),
    panels: panels.map((part) => new AskedPanel(job, part)),
    get openings() {
      return things.panels.flatMap((one) => one.openings);
    },
    sections: sections.map((part) => new AskedSection(job, part)),
    shelves: shelves.map((part) => new AskedShelf(job, part)),
    drawers: drawers.map((part) => new AskedDrawer(job, part)),
    contents: contents.map((part) => new AskedContent(job, part)),
    bars: bars.map((part) => new AskedBar(job, part)),
    hardwareNames: hardware.map(({ id }) => id),
  };
  return things;
}

function wholeCase(job: Job): WholeCase {
  return {
    mass: (state = "loaded") => massIn(job, "stacked", state),
    get size() {
      return stackedSize(job);
    },
    balance: () => spotOf(job, stackedBalance(job).value),
    tip: () => orWhyNot(Angle, () => leanAtTip(job)),
    cost: () => printedMoney(job.review.bill.total),
    hours: () => orWhyNot(Time, () => buildingHours(job)),
    get findings() {
      return job.review.findings;
    },
    finding: (id) => named("finding", findingsOfTopic(job, id), (one) => one.id, id),
    topic: (name) => job.review[topics[name]],
    about: (name) => findingsAbout(job, name),
    worst: (count = 3) =>
      byDanger(job.review.findings.filter(({ verdict }) => verdict !== "holds")).slice(0, count),
    get released() {
      return !job.review.findings.some(keepsFromRelease);
    },
  };
}

function stackedSize(job: Job): AskedSize {
  const { length } = unitsOf(job);
  const boxes = job.parts.sections.map(({ outside }) => outside);
  const over = (axis: "x" | "y" | "z"): Length => {
    const low = Math.min(...boxes.map((box) => box.low[axis]));
    return Length.si(Math.max(...boxes.map((box) => box.low[axis] + box.size[axis])) - low);
  };
  const height = Length.si(over("z") + standingHeight(job));
  return { width: length(over("x")), depth: length(over("y")), height: length(height) };
}

function leanAtTip(job: Job): UnitNumber<"angle"> {
  const standing = footprint(job);
  const [first] = tipWays(standing);
  if (!first || !((standing.edges[0]?.arm ?? 0) > 0)) {
    throw new Refusal("tip: it falls as it stands, its centre of gravity is not above its base");
  }
  return unitsOf(job).of(Angle, first.worked.value);
}

function buildingHours(job: Job): UnitNumber<"time"> {
  const { time, timeFrom } = job.review.business;
  if (timeFrom === "case file" && job.case.leftOut.includes("business")) {
    throw new Refusal("hours: time some work in timings.csv, or write `building time` under business");
  }
  return unitsOf(job).of(Time, time as Quantity<"time">);
}

/** Money that a cell prints as it is said. */
function printedMoney(value: Money): Money {
  return Object.defineProperty({ ...value }, printed, { value: () => Money.show(value) });
}
