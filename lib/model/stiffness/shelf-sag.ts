import type { Shelf, ShelfPart } from "../../design/index.js";
import { fineAmount, showFine, styleOf } from "../../findings/amount.js";
import type { Finding } from "../../findings/finding.js";
import { guarded, type Reply } from "../../findings/guarded.js";
import { verdictOf } from "../../findings/verdict.js";
import type { WorkedLine } from "../../formula.js";
import { type CreepCase, creepFactor } from "../../material/index.js";
import { edgePlateUniform, longTermSag, type PlateEdges } from "../../mechanics/index.js";
import { Length, Pressure, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { shelfMass } from "../mass/shelf-mass.js";
import type { ReviewInput } from "../review-input.js";
import { panelStiffness } from "./panel-stiffness.js";
import { sheetModuli } from "./sheet-moduli.js";

/** Whether each shelf stays straight under what it carries, after years. */
export function shelfSagFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.shelves.map((part) =>
    guarded(
      {
        id: `stiffness.shelf.${part.shelf.name}`,
        topic: "stiffness",
        subject: part.shelf.name,
        question: `Will the ${part.shelf.name} stay straight under what it carries, after years?`,
      },
      () => shelfReply(part, input),
    ),
  );
}

/** Sag of a shelf when what it carries is put on it, with the worked lines. */
export function firstSag(
  part: ShelfPart,
  input: ReviewInput,
): { readonly sag: Length; readonly because: readonly WorkedLine[] } {
  const { panel, shelf } = part;
  const { stiffness, because } = panelStiffness(panel, sheetModuli(panel.sheet, input.measurements));
  const plate = edgePlateUniform.worked({
    length: panel.width,
    width: panel.height,
    stiffness,
    ...edgesOf(shelf.support),
    pressure: pressureOn(part),
  });
  return { sag: plate.value.largestDeflection, because: [because, plate] };
}

function shelfReply(part: ShelfPart, input: ReviewInput): Reply {
  const { panel, shelf } = part;
  const { demands } = input.case;
  const { sag: first, because } = firstSag(part, input);
  const creep = creepFactor.worked({ material: creepCase(demands.climate) });
  const later = longTermSag.worked({ lasting: first, passing: Length.si(0), creepFactor: creep.value });
  const allowed = Length.si(
    demands.allowedSag * (shelf.support === "back only" ? panel.height : panel.width),
  );
  const used = ratio(later.value / allowed);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used),
    answer: `It sags ${showFine(first, style)} when loaded and ${showFine(later.value, style)} after years; ${showFine(allowed, style)} is allowed.`,
    demand: fineAmount("sag after years", later.value),
    capacity: fineAmount("allowed sag", allowed),
    ratio: used,
    because: [...because, creep, later],
    cautions: [],
    source: [cite("common-practice", "allowed sag as a share of the span")],
  };
}

/** Everything on the shelf spread over it, and its own weight. */
function pressureOn(part: ShelfPart): Pressure {
  return Pressure.si((shelfMass(part) * standardGravity) / part.panel.grossArea);
}

/** Rails and cleats let an edge turn; the back of a bracket shelf is held stiffly. The front is free. */
function edgesOf(support: Shelf["support"]): PlateEdges {
  if (support === "back only") return { left: "free", right: "free", bottom: "free", top: "clamped" };
  return { left: "hinged", right: "hinged", bottom: "free", top: support === "two ends" ? "free" : "hinged" };
}

function creepCase(climate: "dry" | "damp"): CreepCase {
  return climate === "dry" ? "plywood, class 1" : "plywood, class 2";
}
