/** What can hurt, and what to do about it, as far as this case has it. */
import { byDanger, type Finding } from "../../findings/index.js";
import { type CautionsView, cautions, tableOf } from "../../page/index.js";
import { hardwareAt } from "../hardware-stage.js";
import { flowingSection, type RecipeSection, sentence, when } from "../recipe.js";
import { distinct, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section of cautions: what hurts first, each said once with what it is about; the rest in a table. */
export function cautionsSection(workshop: Workshop): RecipeSection {
  const told = cautionsOf(workshop.findings);
  const grave = told.filter(({ tier }) => tier === "safety");
  const rest = told.filter(({ tier }) => tier !== "safety");
  return flowingSection(
    "Cautions",
    sentence(
      "This recipe is a plan computed from measurements and the rules of the trade. Local codes, the makers' instructions and your own judgement come before it.",
    ),
    cautions(...bench(workshop), ...unasked(workshop), ...grave.map(withSubjects)),
    ...when(rest.length > 0, () =>
      tableOf(
        rest,
        [
          { heading: "About", cell: ({ subjects }) => subjectWords(subjects) },
          { heading: "Mind", cell: ({ words }) => words },
        ],
        "To mind in use",
      ),
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
const mostNames = 3;

function subjectWords(subjects: readonly string[]): string {
  const more = subjects.length - mostNames;
  return more > 0 ? `${subjects.slice(0, mostNames).join(", ")} and ${more} more` : listed(subjects);
}

function withSubjects({ words, subjects }: ToldCaution): string {
  return `${words} (${subjectWords(subjects)})`;
}

function bench(workshop: Workshop): CautionsView["items"] {
  const { parts } = workshop;
  return [
    "Saws and routers: eye and hearing protection, guards in place, work clamped, no gloves near a spinning blade, unplug before changing a blade or bit; extraction at the tool, a fitted dust mask, and a vacuum, not compressed air, to clean up.",
    ...when(parts.fastenings.length > 0, () =>
      parts.fastenings.some(({ fastener }) => fastener.kind === "rivet")
        ? "Drilling and riveting: eye and hearing protection; rivet stems fly when they snap, so point the tool away from faces. Clamp thin metal, it grabs and spins."
        : "Drilling and driving screws: eye and hearing protection, the work clamped, hands clear of where the point comes out.",
    ),
    ...(parts.bars.length > 0
      ? [
          "Cut aluminium has edges like knives: gloves when handling, deburr every end and hole at once, and keep its chips out of the wood saw's dust bag.",
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
          `${burning}: flammable vapour, heavier than air. Work outdoors or with strong fresh air at floor level; no flame, spark, heater, pilot light, switch or smoking nearby until it has dried. Respirator and gloves as the safety data sheet says. ${rags}`,
        ]
      : []),
    ...(other
      ? [
          `${other}: solvent vapour is harmful though it does not burn easily. Fresh air, respirator and gloves as the safety data sheet says. ${rags}`,
        ]
      : []),
  ];
}

function lifting({ case: { journey, leftOut } }: Workshop): string {
  const people = journey.people === 1 ? "one person" : `${journey.people} people`;
  return `Lifting: ${leftOut.includes("journey") ? "" : `the plan is for ${people}. `}Weigh each section before the first lift, lift with straight backs and a clear way, and never alone what needs two.`;
}

function tipping({ parts }: Workshop): string {
  return hardwareAt("wheels", parts).length > 0
    ? "Tipping: a tall case on wheels goes over easily. Brake the casters when it stands, push low and from behind on the level only, and nobody below it on a ramp."
    : "Tipping: keep clear of the side it could fall to, and steady it while you work on it standing.";
}

function hanging({ case: { contents } }: Workshop): string[] {
  const hung = contents.filter(({ held }) => held.by === "hung");
  return hung.length > 0
    ? [
        `Hung things (${listed(hung.map(({ name }) => name))}): each needs a second hold that catches it if the first fails, and nobody stands under it while it is being fixed.`,
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
