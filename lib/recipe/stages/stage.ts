/** A stage of the assembly: a picture of what is there, what is added and where the hand is; its steps; what to measure. */
import type { Vector3 } from "../../algebra/matrix3.js";
import type { CaseSolid } from "../../model/index.js";
import { type PictureView, pictureOf, type Sight, steps } from "../../page/index.js";
import { type GroupBlock, group, type RecipeBlock } from "../recipe.js";
import type { ShopStep } from "../supplies.js";
import type { Workshop } from "../workshop.js";

/** One stage. */
export interface Stage {
  /** What comes of it: "lower: the box without its top". */
  readonly title: string;
  /** In their order. */
  readonly steps: readonly ShopStep[];
  /** Whether a part is added in this stage. */
  readonly adds: (solid: CaseSolid) => boolean;
  /** Whether a part that stands already is left out of the picture, since it hides the work. */
  readonly hides?: (solid: CaseSolid) => boolean;
  /** Section whose earlier parts are shown; all of them where absent. */
  readonly section?: string;
  /** Way of the hand or the tool, m. */
  readonly hand?: { readonly from: Vector3; readonly to: Vector3 };
  /** Where things stand, before the steps. */
  readonly places?: readonly RecipeBlock[];
  /** What is measured: at its end, or after one of its steps. */
  readonly checks?: readonly GroupBlock[];
}

/** No more steps than these stand under one picture. */
export const mostSteps = 6;

/** A corner that a stage may be seen from. */
interface Corner {
  /** Where the eye stands. */
  readonly sight: Sight;
  /** Said beside the picture; nothing for the usual corner. */
  readonly words: string;
}

const above = 32;
/** The front right corner. */
const usual: Corner = { sight: { around: 33, above }, words: "" };
/** One of these is taken where more of what is added is seen from it, and no wall was left out for the usual one. */
const others: readonly Corner[] = [
  { sight: { around: -33, above }, words: " From the front left." },
  { sight: { around: 147, above }, words: " From the back right." },
  { sight: { around: 213, above }, words: " From the back left." },
];

/** The stages as blocks, each with its picture; one of too many steps goes on in a further one. */
export function stageBlocks(stages: readonly Stage[], workshop: Workshop): GroupBlock[] {
  const worth = stages.filter((stage) => stage.steps.length > 0);
  return worth.flatMap((stage, i) => oneStage(stage, worth.slice(0, i), i + 1, workshop));
}

function oneStage(stage: Stage, before: readonly Stage[], number: number, workshop: Workshop): GroupBlock[] {
  const picture = stagePicture(stage, before, workshop);
  const chunks = Array.from({ length: Math.ceil(stage.steps.length / mostSteps) }, (_, i) =>
    stage.steps.slice(i * mostSteps, (i + 1) * mostSteps),
  );
  return chunks.map((some, i) => ({
    ...group(
      `Stage ${number}${i > 0 ? ", going on" : ""}. ${stage.title}`,
      ...(i === 0 ? [...picture, ...(stage.places ?? [])] : []),
      steps(some.map(({ text }) => text)),
      ...checksIn(stage.checks ?? [], i * mostSteps, i === chunks.length - 1),
    ),
    pictureBeside: true,
  }));
}

/** Checks that belong to the steps under one picture, those of the whole stage under the last. */
function checksIn(checks: readonly GroupBlock[], before: number, isLast: boolean): readonly GroupBlock[] {
  return checks.flatMap((check) => {
    const { afterStep } = check;
    if (afterStep === undefined) return isLast ? [check] : [];
    const step = afterStep - before;
    return step >= 1 && step <= mostSteps ? [{ ...check, afterStep: step }] : [];
  });
}

/** Never drawn in a stage: too thin to see. */
const tooThin: readonly CaseSolid["kind"][] = ["laminate", "fastener"];

function stagePicture(stage: Stage, before: readonly Stage[], { solids }: Workshop): RecipeBlock[] {
  const drawn = (solids?.solids ?? []).filter(({ kind }) => !tooThin.includes(kind));
  const stands = (solid: CaseSolid): boolean =>
    before.some(({ adds }) => adds(solid)) &&
    (stage.section === undefined || solid.section === stage.section);
  const look = (solid: CaseSolid) => {
    if (tooThin.includes(solid.kind)) return undefined;
    if (stage.adds(solid)) return "added" as const;
    return stands(solid) && !stage.hides?.(solid) ? ("there" as const) : undefined;
  };
  if (!drawn.some(stage.adds)) return [];
  const without = stage.hides === undefined ? "" : " Front and right left out.";
  const pictureFrom = ({ sight, words }: Corner): PictureView =>
    pictureOf(solids?.solids ?? [], {
      description: `Dark: added here. Light: there already.${without}${words}${stage.hand ? " Arrow: way of the hand." : ""}`,
      from: sight,
      look,
      ...(stage.hand ? { arrows: [stage.hand] } : {}),
    });
  const first = pictureFrom(usual);
  if (stage.hides !== undefined || first.added > plenty) return [first];
  const pictures = others.map(pictureFrom);
  const most = Math.max(...pictures.map(({ added }) => added));
  const best = pictures.find(({ added }) => added === most);
  return [best && most > farMore * first.added ? best : first];
}

/** Share of a picture that shows enough of what is added. */
const plenty = 0.2;
/** The usual corner is left for one from which this many times as much of what is added is seen. */
const farMore = 1.5;
