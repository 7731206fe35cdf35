/** Shelves, drawers, bars, hardware and what rides in a case, asked by name. */
import type { BarPart, ContentPart, DrawerPart, HardwarePart, ShelfPart } from "../../design/index.js";
import type { Finding } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { drawerMass, shelfMass, shelfSag } from "../../model/index.js";
import { Length, type UnitNumber } from "../../quantity/index.js";
import { Asked, type AskedSize, findingOf, orWhyNot, unitsOf } from "./asking.js";

/** A shelf: `job.shelf("instrument shelf")`. */
export class AskedShelf extends Asked {
  readonly #job: Job;
  readonly #part: ShelfPart;

  constructor(job: Job, part: ShelfPart) {
    super(job, part.shelf.name);
    this.#job = job;
    this.#part = part;
  }

  /** How far it sags when what it carries is put on it. */
  sag(): UnitNumber<"length"> {
    return this.#bent("first");
  }

  /** How far it sags after years under what it carries. */
  laterSag(): UnitNumber<"length"> {
    return this.#bent("later");
  }

  /** How far it may sag. */
  allowedSag(): UnitNumber<"length"> {
    return this.#bent("allowed");
  }

  #bent(what: "first" | "later" | "allowed"): UnitNumber<"length"> {
    return orWhyNot(Length, () => unitsOf(this.#job).fine(shelfSag(this.#part, this.#job)[what]));
  }

  /** Whether it breaks under what it carries, with a jolt and for years: the finding. */
  strength(): Finding {
    return findingOf(this.#job, `strength.shelf.${this.name}`);
  }

  /** What it weighs with all it carries. */
  mass(): UnitNumber<"mass"> {
    return unitsOf(this.#job).mass(shelfMass(this.#part));
  }

  /** Its size as cut. */
  get size(): AskedSize {
    const { length } = unitsOf(this.#job);
    return { width: length(this.#part.panel.width), height: length(this.#part.panel.height) };
  }

  /** The names of what it carries. */
  get carries(): readonly string[] {
    return this.#part.carries.map(({ content }) => content.name);
  }
}

/** A drawer: `job.drawer("tool drawer")`. */
export class AskedDrawer extends Asked {
  readonly #job: Job;
  readonly #part: DrawerPart;

  constructor(job: Job, part: DrawerPart) {
    super(job, part.drawer.name);
    this.#job = job;
    this.#part = part;
  }

  /** What it weighs with what lies in it. */
  mass(): UnitNumber<"mass"> {
    return unitsOf(this.#job).mass(drawerMass(this.#job, this.#part));
  }

  /** What lies in it, by the case file. */
  load(): UnitNumber<"mass"> {
    return unitsOf(this.#job).mass(this.#part.drawer.load);
  }

  /** The room that it takes behind the panel. */
  get size(): AskedSize {
    const { length } = unitsOf(this.#job);
    const { x, y, z } = this.#part.box.size;
    return { width: length(x), depth: length(y), height: length(z) };
  }
}

/** A thing that rides in the case: `job.content("microscope")`. */
export class AskedContent extends Asked {
  readonly #job: Job;
  readonly #part: ContentPart;

  constructor(job: Job, part: ContentPart) {
    super(job, part.content.name);
    this.#job = job;
    this.#part = part;
  }

  /** What it weighs. */
  mass(): UnitNumber<"mass"> {
    return unitsOf(this.#job).mass(this.#part.content.mass);
  }

  /** The room that it takes. */
  get size(): AskedSize {
    const { length } = unitsOf(this.#job);
    const { x, y, z } = this.#part.box.size;
    return { width: length(x), depth: length(y), height: length(z) };
  }

  /** The section that it rides in. */
  get section(): string {
    return this.#part.content.section;
  }
}

/** A bar over an edge: `job.bar("upper.front-left")`. */
export class AskedBar extends Asked {
  readonly #job: Job;
  readonly #part: BarPart;

  constructor(job: Job, part: BarPart) {
    super(job, part.id);
    this.#job = job;
    this.#part = part;
  }

  /** As cut, over its longer side where it is mitred. */
  length(): UnitNumber<"length"> {
    return unitsOf(this.#job).length(this.#part.length);
  }

  /** What it weighs. */
  mass(): UnitNumber<"mass"> {
    return unitsOf(this.#job).mass(this.#part.stock.massPerLength * this.#part.length);
  }

  /** What it is cut from, a name in bar-stock.csv. */
  get stock(): string {
    return this.#part.stock.name;
  }

  /** How many rivets or screws hold it. */
  get fasteners(): number {
    return fastenersOf(this.#job, this.name);
  }
}

/** A piece of hardware in its place: `job.hardware("carry handle 1")`. */
export class AskedHardware extends Asked {
  readonly #job: Job;
  readonly #part: HardwarePart;

  constructor(job: Job, part: HardwarePart) {
    super(job, part.id);
    this.#job = job;
    this.#part = part;
  }

  /** What it weighs, without what fastens it. */
  mass(): UnitNumber<"mass"> {
    return unitsOf(this.#job).mass(this.#part.stock.mass);
  }

  /** What is bought, a name in hardware.csv. */
  get item(): string {
    return this.#part.stock.name;
  }

  /** The section that it is on. */
  get section(): string {
    return this.#part.section;
  }

  /** How many rivets, screws or bolts hold it. */
  get fasteners(): number {
    return fastenersOf(this.#job, this.name);
  }

  /** Every finding about what it is there for, in its section or in the whole case. */
  override get findings(): readonly Finding[] {
    const { item, stock, section } = this.#part;
    const what = dutyWords[item.duty] ?? item.name;
    const sections = this.#job.parts.sections.map(({ name }) => name).filter((name) => name !== section);
    return this.#job.review.findings.filter(
      ({ id, subject }) =>
        (id.includes(what) || [item.name, stock.name].some((name) => subject.includes(name))) &&
        !sections.some((other) => id.includes(`.${other}`)),
    );
  }
}

/** What ids of findings call hardware of a duty. */
const dutyWords: Readonly<Record<string, string>> = {
  lift: ".handle",
  roll: ".caster",
  "join-sections": ".latch",
  hinge: ".hinge",
  protect: "corner",
};

function fastenersOf({ parts }: Job, holds: string): number {
  return parts.fastenings.reduce((sum, one) => (one.holds === holds ? sum + one.count : sum), 0);
}
