/** A section of a case, asked by name. */
import type { SectionPart } from "../../design/index.js";
import type { Finding } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { sectionBalance, statesOfMass } from "../../model/index.js";
import type { DrawingView } from "../../page/index.js";
import type { UnitNumber } from "../../quantity/index.js";
import { ruleOf, sectionFacesDrawing } from "../../recipe/index.js";
import { AskedPanel } from "./asked-panel.js";
import { Asked, type AskedSize, findingOf, unitsOf } from "./asking.js";

/** A place in the stacked case, from the outside lower left front corner of its lowest section. */
export interface Spot {
  /** To the right. */
  readonly x: UnitNumber<"length">;
  /** To the back. */
  readonly y: UnitNumber<"length">;
  /** Up. */
  readonly z: UnitNumber<"length">;
}

/** Whether what rides inside counts. */
export type Loaded = "loaded" | "empty";

/** A section of the case: `job.section("upper")`. */
export class AskedSection extends Asked {
  readonly #job: Job;
  readonly #part: SectionPart;

  constructor(job: Job, part: SectionPart) {
    super(job, part.name);
    this.#job = job;
    this.#part = part;
  }

  /** What it weighs, with what rides in it unless "empty" is said. */
  mass(state: Loaded = "loaded"): UnitNumber<"mass"> {
    return massIn(this.#job, this.name, state);
  }

  /** Its size over laminate, without hardware. */
  get size(): AskedSize {
    const { length } = unitsOf(this.#job);
    const { x, y, z } = this.#part.outside.size;
    return { width: length(x), depth: length(y), height: length(z) };
  }

  /** Where it balances, loaded. */
  balance(): Spot {
    return spotOf(this.#job, sectionBalance(this.#job, this.name).value);
  }

  /** Whether two people may lift it by its handles: the finding. */
  lift(): Finding {
    return findingOf(this.#job, `travel.lift.${this.name}`);
  }

  /** Its panels, the leaves of its doors included. */
  get panels(): readonly AskedPanel[] {
    return this.#job.parts.panels
      .filter(({ section }) => section === this.name)
      .map((part) => new AskedPanel(this.#job, part));
  }

  /** Every face of it to scale, unfolded. */
  drawing(): DrawingView {
    return sectionFacesDrawing(this.#part, this.#job.parts, ruleOf(this.#job.case.units));
  }
}

/** What a section, or the stacked case, weighs. */
export function massIn(job: Job, what: string, state: Loaded): UnitNumber<"mass"> {
  const found = statesOfMass(job).find((one) => one.what === what && one.state === state);
  return unitsOf(job).mass(found?.balance.value.mass ?? 0);
}

/** A place in the units of a job. */
export function spotOf(job: Job, { x, y, z }: Record<"x" | "y" | "z", Spot["x"]["si"]>): Spot {
  const { length } = unitsOf(job);
  return { x: length(x), y: length(y), z: length(z) };
}
