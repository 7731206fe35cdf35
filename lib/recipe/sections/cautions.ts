/** What can hurt, and what to do about it, as far as this case has it. */
import { type CautionsView, cautions } from "../../page/index.js";
import { hardwareAt } from "../hardware-stage.js";
import { flowingSection, type RecipeSection, sentence, when } from "../recipe.js";
import { distinct, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section of cautions. */
export function cautionsSection(workshop: Workshop): RecipeSection {
  const fromReview = distinct(
    workshop.findings.filter(({ verdict }) => verdict === "holds").flatMap((finding) => finding.cautions),
  );
  return flowingSection(
    "Cautions",
    sentence(
      "This recipe is a plan computed from measurements and the rules of the trade. Local codes, the makers' instructions and your own judgement come before it.",
    ),
    cautions(...bench(workshop), ...moving(workshop), ...electric(workshop)),
    ...(fromReview.length > 0 ? [sentence("The review adds:"), cautions(...fromReview)] : []),
  );
}

function bench(workshop: Workshop): CautionsView["items"] {
  const { parts } = workshop;
  return [
    "Saws and routers: eye and hearing protection, guards in place, work clamped, no gloves near a spinning blade, hands and sleeves clear, unplug before changing a blade or bit.",
    ...when(
      parts.fastenings.length > 0,
      () =>
        "Drilling and riveting: eye and hearing protection; rivet stems fly when they snap, so point the tool away from faces. Clamp thin metal, it grabs and spins.",
    ),
    ...(parts.bars.length > 0
      ? [
          "Cut aluminium has edges like knives: gloves when handling, deburr every end and hole at once, and keep its chips out of the wood saw's dust bag.",
        ]
      : []),
    "Dust: extraction at the tool and a fitted dust mask. Clean up with a vacuum, not with compressed air.",
    ...adhesiveCautions(workshop),
    "Store oily or glue-wet rags spread out in the open air or under water in a metal bin; they can heat up by themselves.",
  ];
}

function adhesiveCautions({ purchases }: Workshop): string[] {
  const named = (solvent: "flammable" | "non-flammable"): string =>
    listed(
      purchases.adhesives.filter(({ stock }) => stock.solvent === solvent).map(({ stock }) => stock.name),
    );
  const [burning, other] = [named("flammable"), named("non-flammable")];
  return [
    ...(burning
      ? [
          `${burning}: flammable vapour, heavier than air. Work outdoors or with strong fresh air at floor level; no flame, spark, heater, pilot light, switch or smoking nearby until it has dried. Respirator and gloves as the safety data sheet says.`,
        ]
      : []),
    ...(other
      ? [
          `${other}: solvent vapour is harmful though it does not burn easily. Fresh air, respirator and gloves as the safety data sheet says.`,
        ]
      : []),
  ];
}

function moving({ case: { contents, journey, leftOut }, parts }: Workshop): string[] {
  const hung = contents.filter(({ held }) => held.by === "hung");
  const people = journey.people === 1 ? "one person" : `${journey.people} people`;
  return [
    `Lifting: ${leftOut.includes("journey") ? "" : `the plan is for ${people}. `}Weigh each section before the first lift, lift with straight backs and a clear way, and never alone what needs two.`,
    hardwareAt("wheels", parts).length > 0
      ? "Tipping: a tall case on wheels goes over easily. Brake the casters when it stands, push low and from behind, never up a ramp or over a gap alone, and keep clear of the downhill side."
      : "Tipping: keep clear of the side it could fall to, and steady it while you work on it standing.",
    ...(hung.length > 0
      ? [
          `Hung things (${listed(hung.map(({ name }) => name))}): each needs a second hold that catches it if the first fails, and nobody stands under it while it is being fixed.`,
        ]
      : []),
    ...(parts.sections.length > 1
      ? [
          "Stacking: two people, fingers out of the joint; the latches must be shut before the stack is moved.",
        ]
      : []),
  ];
}

function electric({ case: { contents } }: Workshop): string[] {
  if (!contents.some(({ power }) => power !== undefined && power > 0)) return [];
  return [
    "Mains wiring is licensed work: have it done and tested by someone allowed to do it where you live. Metal edges need bonding as that person says.",
    "Batteries: a fuse at the terminal, covers over bare terminals, held against falling, ventilated and charged as the maker says.",
  ];
}
