/** A panel of a case and the openings in it, asked by name. */
import type { PanelPart, PlacedOpening } from "../../design/index.js";
import type { Finding } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  allowedSag,
  facePressure,
  facingNames,
  massItems,
  panelSag,
  sagCaseOf,
  sagSpan,
} from "../../model/index.js";
import type { DrawingView } from "../../page/index.js";
import { Length, type UnitNumber } from "../../quantity/index.js";
import { panelHolesDrawing, ruleOf } from "../../recipe/index.js";
import { Refusal } from "../../refusal.js";
import { bendingDrawing } from "../tables/bending.js";
import { Asked, type AskedSize, findingOf, orWhyNot, unitsOf } from "./asking.js";
import { named } from "./named.js";

/** Of a list that is sorted or added up, such a panel has to be left out. */
function nothingPresses(name: string): Refusal {
  return new Refusal(`nothing presses on ${name}, so it has no sag`, {
    measure: "a panel that something presses on",
    how: "Leave this one out: job.panels.filter((one) => one.sag().whyNone === undefined)",
  });
}

/** How the edges of a panel are held: free to turn, as alone on the bench, or stiffly. */
export type EdgesHeld = "free to turn" | "stiffly";

/** A panel of the case: `job.panel("upper.front")`. */
export class AskedPanel extends Asked {
  readonly #job: Job;
  readonly #part: PanelPart;

  constructor(job: Job, part: PanelPart) {
    super(job, part.id);
    this.#job = job;
    this.#part = part;
  }

  /**
   * How far it sags under what presses on it, its openings cut out. Where nothing presses on it, the answer prints
   * that, and refuses to be reckoned with.
   *
   * @param edges how its edges are held; free to turn unless said
   */
  sag(edges: EdgesHeld = "free to turn"): UnitNumber<"length"> {
    return orWhyNot(Length, () => {
      const pressure = facePressure(this.#part, this.#job);
      if (!(pressure > 0)) throw nothingPresses(this.name);
      const held = edges === "stiffly" ? "clamped" : "hinged";
      return unitsOf(this.#job).fine(panelSag(sagCaseOf(this.#part, pressure, held, this.#job)).sag);
    });
  }

  /** How far it may sag: the share of its span that the case file allows. */
  allowedSag(): UnitNumber<"length"> {
    return unitsOf(this.#job).fine(allowedSag(this.#job, sagSpan(this.#part)));
  }

  /** Whether it stays stiff, alone and locked into its box: the finding, with its working. */
  stiffness(): Finding {
    return findingOf(this.#job, `stiffness.${this.name}`);
  }

  /** Whether it breaks under what it has to bear: the finding, with its working. */
  strength(): Finding {
    return findingOf(this.#job, `strength.panel.${this.name}`);
  }

  /** What it weighs, with its laminate and glue, its openings cut out. */
  mass(): UnitNumber<"mass"> {
    const names = new Set([this.name, ...facingNames(this.name)]);
    const mine = massItems(this.#job).filter(({ name }) => names.has(name));
    return unitsOf(this.#job).mass(mine.reduce((sum, { mass }) => sum + mass, 0));
  }

  /** Its size as cut. */
  get size(): AskedSize {
    const { length } = unitsOf(this.#job);
    return { width: length(this.#part.width), height: length(this.#part.height) };
  }

  /** How thick its sheet is, without laminate. */
  get thickness(): UnitNumber<"length"> {
    return unitsOf(this.#job).fine(this.#part.sheet.thickness);
  }

  /** What it is cut from, a name in sheet-stock.csv. */
  get sheet(): string {
    return this.#part.sheet.name;
  }

  /** The share of it that openings cut away. */
  cutAway(): UnitNumber<"ratio"> {
    return unitsOf(this.#job).share(1 - this.#part.netArea / this.#part.grossArea);
  }

  /** What the case file cuts out of it; holes for hardware are not among them. */
  get openings(): readonly AskedOpening[] {
    return this.#drawn().map((opening) => new AskedOpening(this.#job, this.#part, opening));
  }

  #drawn(): readonly PlacedOpening[] {
    return this.#part.openings.filter(({ why }) => why === "case");
  }

  /**
   * One of its openings.
   *
   * @throws Refusal where it has none of that name
   */
  opening(name: string): AskedOpening {
    const found = named(`opening in ${this.name}`, this.#drawn(), (one) => one.name, name);
    return new AskedOpening(this.#job, this.#part, found);
  }

  /** Where it sags, alone on the bench: lines of equal sag on the panel, and what presses on it. */
  sagDrawing(): DrawingView {
    return bendingDrawing(this.#job, this.name);
  }

  /** The panel to scale, with its openings. */
  drawing(): DrawingView {
    return panelHolesDrawing(this.#part, [], ruleOf(this.#job.case.units), this.#job.parts);
  }
}

/** An opening: `job.opening("upper.front.stage")`. */
export class AskedOpening extends Asked {
  readonly #job: Job;
  readonly #panel: PanelPart;
  readonly #opening: PlacedOpening;

  constructor(job: Job, panel: PanelPart, opening: PlacedOpening) {
    super(job, `${panel.id}.${opening.name}`);
    this.#job = job;
    this.#panel = panel;
    this.#opening = opening;
  }

  /** Its width and height, over all. */
  get size(): AskedSize {
    const { length } = unitsOf(this.#job);
    return { width: length(this.#opening.width), height: length(this.#opening.height) };
  }

  /**
   * Where the case file says how wide it is, for `set` and `sweep`.
   *
   * @throws Refusal for an outline without a width of its own
   */
  widthPlace(): string {
    const { kind } = this.#opening;
    if (kind === "polygon" || kind === "notch") {
      throw new Refusal(`${this.name}: the case file gives it no width of its own`);
    }
    return `${this.name}.${kind === "circle" ? "diameter" : "width"}`;
  }

  /** What it cuts away. */
  area(): UnitNumber<"area"> {
    return unitsOf(this.#job).area(this.#opening.area);
  }

  /** How long the cut is. */
  cutLength(): UnitNumber<"length"> {
    return unitsOf(this.#job).length(this.#opening.perimeter);
  }

  /** What is left of the panel between it and the nearest edge of the panel. */
  toEdge(): UnitNumber<"length"> {
    const { low, width, height } = this.#opening;
    const panel = this.#panel;
    const rims = [low.x, low.y, panel.width - low.x - width, panel.height - low.y - height];
    return unitsOf(this.#job).length(Length.si(Math.min(...rims)));
  }

  /** The panel that it is in. */
  get panel(): AskedPanel {
    return new AskedPanel(this.#job, this.#panel);
  }
}
