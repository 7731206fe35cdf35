import { keptLast, memoizeLast } from "../kept/index.js";
import {
  type BusinessInput,
  type CaseBox,
  type CaseSolids,
  caseBox,
  caseSolids,
  type MassItem,
  massItems,
  physicalInput,
  type ReviewInput,
} from "../model/index.js";
import {
  type Bill,
  type BusinessReview,
  billOf,
  businessReview,
  type PurchaseList,
  purchaseList,
} from "../plan/index.js";
import { assemblyQuestions } from "./assembly/index.js";
import { byDanger, type Finding, type Tier } from "./finding.js";
import { fitOutQuestions } from "./fit-out/index.js";
import { jointQuestions } from "./joints/index.js";
import { moneyQuestions } from "./money.js";
import { builtQuestions } from "./money-as-built.js";
import type { Question } from "./question.js";
import { stiffnessQuestions } from "./stiffness/index.js";
import { strengthQuestions } from "./strength/index.js";
import { travelQuestions } from "./travel/index.js";

/** Everything a review says of a case. Each part is worked out when first asked for, and kept. */
export interface Review {
  /** How far panels, shelves, doors and boxes give. */
  readonly stiffness: readonly Finding[];
  /** Whether panels, leaves and shelves break: leant on, stood on, struck. */
  readonly strength: readonly Finding[];
  /** What rivets, screws, hinges, handles and latches hold. */
  readonly joints: readonly Finding[];
  /** Lifting, rolling, standing, riding and falling. */
  readonly travel: readonly Finding[];
  /** What rides inside: held, quiet, cool, powered. */
  readonly fitOut: readonly Finding[];
  /** Whether it goes together: space, reach, order. */
  readonly assembly: readonly Finding[];
  /** Whether it pays. */
  readonly money: readonly Finding[];
  /** All of them, by danger. */
  readonly findings: readonly Finding[];
  /** The same, one declared question at a time, for who wants the quick ones first. */
  readonly steps: readonly ReviewStep[];
  /** The case as joined boxes under its load cases. */
  readonly box: CaseBox;
  /** Every part as it stands in the stacked case, and what moves. */
  readonly solids: CaseSolids;
  /** Everything to buy. */
  readonly purchases: PurchaseList;
  /** Of everything to buy, with price breaks, shipping and tax. */
  readonly bill: Bill;
  /** Everything that weighs something, with its place. */
  readonly masses: readonly MassItem[];
  /** What it costs, saves and earns. */
  readonly business: BusinessReview;
}

/** One declared question, asked of all that it is about. */
export interface ReviewStep {
  /** The question's id, before that of a subject: "travel.wind". */
  readonly id: string;
  /** What is at stake in its answers. */
  readonly tier: Tier;
  /** Its answers, worked out when first asked for, and kept. */
  ask(): readonly Finding[];
}

/** Reviews a case. What no change of money touches stands from review to review. */
export function reviewCase(input: BusinessInput): Review {
  const once = lazily();
  const bare = (): ReviewInput => once("physical input", () => physicalInput(input));
  const physical = (): PhysicalReview => once("physical", () => physicalReview(bare()));
  const costs = { ...input, business: () => review.business, bill: () => review.bill };
  const money = [...stepsOf(once, moneyQuestions, costs), ...stepsOf(once, builtQuestions, costs)];
  const review: Review = {
    get stiffness() {
      return physical().stiffness;
    },
    get strength() {
      return physical().strength;
    },
    get joints() {
      return physical().joints;
    },
    get travel() {
      return physical().travel;
    },
    get fitOut() {
      return physical().fitOut;
    },
    get assembly() {
      return physical().assembly;
    },
    get money() {
      return once("money", () => answered(money));
    },
    get findings() {
      return byDanger([
        ...review.stiffness,
        ...review.strength,
        ...review.joints,
        ...review.travel,
        ...review.fitOut,
        ...review.assembly,
        ...review.money,
      ]);
    },
    get steps() {
      return [...money, ...physical().steps];
    },
    get box() {
      return physical().box;
    },
    get solids() {
      return caseSolids(bare());
    },
    get purchases() {
      return once("purchases", () => keptPurchases(bare().case, input));
    },
    get bill() {
      return once("bill", () => billOf(input, review.purchases));
    },
    get masses() {
      return physical().masses;
    },
    get business() {
      return once("business", () => businessReview(input, review.purchases, review.bill.total));
    },
  };
  return review;
}

/** What a review says whatever things cost. */
type PhysicalReview = Pick<
  Review,
  "stiffness" | "strength" | "joints" | "travel" | "fitOut" | "assembly" | "box" | "masses" | "steps"
>;

const physicalReview = memoizeLast(
  (input: ReviewInput) => input,
  () => [],
  newPhysicalReview,
);

function newPhysicalReview(input: ReviewInput): PhysicalReview {
  const once = lazily();
  const boxed = { ...input, box: () => review.box };
  const [travel, fitOut] = [stepsOf(once, travelQuestions, input), stepsOf(once, fitOutQuestions, input)];
  const assembly = stepsOf(once, assemblyQuestions, input);
  const strength = stepsOf(once, strengthQuestions, input);
  const [joints, stiffness] = [
    stepsOf(once, jointQuestions, boxed),
    stepsOf(once, stiffnessQuestions, boxed),
  ];
  const review: PhysicalReview = {
    steps: [...travel, ...fitOut, ...assembly, ...strength, ...joints, ...stiffness],
    get stiffness() {
      return once("stiffness", () => byDanger(answered(stiffness)));
    },
    get strength() {
      return once("strength", () => byDanger(answered(strength)));
    },
    get joints() {
      return once("joints", () => byDanger(answered(joints)));
    },
    get travel() {
      return once("travel", () => byDanger(answered(travel)));
    },
    get fitOut() {
      return once("fit-out", () => byDanger(answered(fitOut)));
    },
    get assembly() {
      return once("assembly", () => byDanger(answered(assembly)));
    },
    get box() {
      return once("box", () => caseBox(input));
    },
    get masses() {
      return once("masses", () => massItems(input));
    },
  };
  return review;
}

type Once = ReturnType<typeof lazily>;

function stepsOf<Input extends ReviewInput>(
  once: Once,
  questions: readonly Question<Input>[],
  input: Input,
): ReviewStep[] {
  return questions.map((ask) => ({
    id: ask.id,
    tier: ask.tier,
    ask: () => once(`question ${ask.id}`, () => ask(input)),
  }));
}

function answered(steps: readonly ReviewStep[]): Finding[] {
  return steps.flatMap(({ ask }) => ask());
}

/** Purchases rest on everything but what the case earns. */
const purchasesOf = keptLast(
  (
    build: ReviewInput["case"],
    stock: ReviewInput["stock"],
    offers: ReviewInput["offers"],
    measurements: ReviewInput["measurements"],
    parts: ReviewInput["parts"],
  ): PurchaseList => purchaseList({ case: build, stock, ...(offers ? { offers } : {}), measurements, parts }),
);

function keptPurchases(
  build: ReviewInput["case"],
  { stock, offers, measurements, parts }: BusinessInput,
): PurchaseList {
  return purchasesOf(build, stock, offers, measurements, parts);
}

/** Remembers the first answer under each name. */
function lazily(): <T>(name: string, work: () => T) => T {
  const kept = new Map<string, unknown>();
  return <T>(name: string, work: () => T): T => {
    if (!kept.has(name)) kept.set(name, work());
    return kept.get(name) as T;
  };
}
