/** What can hurt, and what to do about it, as far as this case has it. */
import { byDanger, type Finding, listed } from "../../findings/index.js";
import { type CautionsView, cautions } from "../../page/index.js";
import { hardwareAt } from "../../plan/index.js";
import { flowingSection, type RecipeSection, sentence, when } from "../recipe.js";
import { distinct } from "../words.js";
import type { Workshop } from "../workshop.js";

/** No reader takes in more than these. */
const mostCautions = 25;

/** The section of cautions, what hurts first, each said once; no more than a reader takes in. */
export function cautionsSection(workshop: Workshop): RecipeSection {
  const own = [...bench(workshop), ...unasked(workshop)];
  const told = cautionsOf(workshop.findings).map(withSubjects);
  const room = mostCautions - own.length;
  return flowingSection(
    "Cautions",
    sentence(
      "This is a plan computed from measurements and the rules of the trade. Local codes, makers' instructions and your own judgement come first.",
    ),
    cautions(...own, ...told.slice(0, room)),
    ...when(told.length > room, () =>
      sentence("What can hurt stands here by danger. The book has what else to mind in use."),
    ),
  );
}

/** A caution of the review, said once. */
interface ToldCaution {
  /** What is said. */
  readonly words: string;
  /** What is at stake where it is said first, the gravest. */
  readonly tier: Finding["tier"];
  /** What it is said about. */
  readonly subjects: readonly string[];
}

/** Every caution once, by danger. */
function cautionsOf(findings: readonly Finding[]): readonly ToldCaution[] {
  const told = new Map<string, ToldCaution>();
  for (const { cautions: said, tier, subject } of byDanger(findings))
    for (const words of said) {
      const before = told.get(words) ?? { words, tier, subjects: [] };
      told.set(words, { ...before, subjects: distinct([...before.subjects, subject]) });
    }
  return [...told.values()];
}

/** More names than this tell nobody where to look. */
const mostNames = 2;

function subjectWords(subjects: readonly string[]): string {
  const more = subjects.length - mostNames;
  return more > 0 ? `${subjects.slice(0, mostNames).join(", ")} and ${more} more` : listed(subjects);
}

function withSubjects({ words, subjects }: ToldCaution): string {
  return `${words} This goes for ${subjectWords(subjects)}.`;
}

function bench(workshop: Workshop): CautionsView["items"] {
  const { parts } = workshop;
  return [
    "At saws and routers protect eyes and ears, keep guards in place, clamp the work, and wear no gloves near a blade. Unplug before changing a blade or bit. Use extraction and a fitted dust mask; clean up with a vacuum, not with compressed air.",
    ...when(parts.fastenings.length > 0, () =>
      parts.fastenings.some(({ fastener }) => fastener.kind === "rivet")
        ? "Protect eyes and ears when you drill and rivet. Rivet stems fly when they snap: point the tool away from faces. Clamp thin metal: it grabs and spins."
        : "Protect eyes and ears when you drill and drive screws. Clamp the work, and keep hands clear of where the point comes out.",
    ),
    ...(parts.bars.length > 0
      ? [
          "Cut aluminium has edges like knives: wear gloves, and deburr every end and hole at once. Keep its chips out of the dust bag of the wood saw.",
        ]
      : []),
    ...adhesiveCautions(workshop),
  ];
}

/** What the plan itself says where no question of the review said it. */
function unasked(workshop: Workshop): readonly string[] {
  const asked = (topic: string): boolean =>
    workshop.findings.some(({ id, cautions: said }) => id.startsWith(topic) && said.length > 0);
  return [
    ...when(!asked("travel.lift"), () => lifting(workshop)),
    ...when(!asked("travel.tip"), () => tipping(workshop)),
    ...when(!asked("joints.hung"), () => hanging(workshop)).flat(),
    ...when(!asked("joints.latches"), () => stacking(workshop)).flat(),
    ...when(!asked("fit-out.power"), () => electric(workshop)).flat(),
  ];
}

const rags =
  "Glue-wet rags heat up by themselves: spread them out in the open air, or keep them under water in a metal bin.";

function adhesiveCautions({ purchases }: Workshop): string[] {
  const named = (solvent: "flammable" | "non-flammable"): string =>
    listed(
      purchases.adhesives.filter(({ stock }) => stock.solvent === solvent).map(({ stock }) => stock.name),
    );
  const [burning, other] = [named("flammable"), named("non-flammable")];
  return [
    ...(burning
      ? [
          `The vapour of ${burning} burns and is heavier than air. Work outdoors or with strong fresh air at floor level. Allow no flame, spark, heater, pilot light, switch or smoking nearby until it has dried. Wear respirator and gloves as the safety data sheet says. ${rags}`,
        ]
      : []),
    ...(other
      ? [
          `The vapour of ${other} is harmful though it does not burn easily. Have fresh air, and wear respirator and gloves as the safety data sheet says. ${rags}`,
        ]
      : []),
  ];
}

function lifting({ case: { journey, leftOut } }: Workshop): string {
  const people = journey.people === 1 ? "one person" : `${journey.people} people`;
  return `Lifting: ${leftOut.includes("journey") ? "" : `the plan is for ${people}. `}Weigh each section before the first lift. Lift with straight backs and a clear way, never alone what needs two.`;
}

function tipping({ parts }: Workshop): string {
  return hardwareAt("wheels", parts).length > 0
    ? "Tipping: a tall case on wheels goes over easily. Brake the casters when it stands. Push low, from behind, on the level only. Nobody stands below it on a ramp."
    : "Tipping: keep clear of the side it could fall to, and steady it while you work on it standing.";
}

function hanging({ case: { contents } }: Workshop): string[] {
  const hung = contents.filter(({ held }) => held.by === "hung");
  return hung.length > 0
    ? [
        `What hangs (${listed(hung.map(({ name }) => name))}) needs a second hold each, which catches it if the first fails. Nobody stands under it while it is fixed.`,
      ]
    : [];
}

function stacking({ parts }: Workshop): string[] {
  return parts.sections.length > 1
    ? ["Stacking: two people, fingers out of the joint; the latches must be shut before the stack is moved."]
    : [];
}

function electric({ case: { contents } }: Workshop): string[] {
  if (!contents.some(({ power }) => power !== undefined && power > 0)) return [];
  return [
    "Mains wiring is licensed work: have it done and tested by someone allowed to do it where you live. Metal edges need bonding as that person says.",
    "Batteries: a fuse at the terminal, covers over bare terminals, held against falling, ventilated and charged as the maker says.",
  ];
}
