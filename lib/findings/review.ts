import { keptLast, memoizeLast } from "../kept/index.js";
import {
  type BusinessInput,
  type CaseBox,
  caseBox,
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
import { byDanger, type Finding } from "./finding.js";
import { fitOutQuestions } from "./fit-out/index.js";
import { jointQuestions } from "./joints/index.js";
import { moneyQuestions } from "./money.js";
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
  /** Whether it pays. */
  readonly money: readonly Finding[];
  /** All of them, by danger. */
  readonly findings: readonly Finding[];
  /** The case as joined boxes under its load cases. */
  readonly box: CaseBox;
  /** Everything to buy. */
  readonly purchases: PurchaseList;
  /** Of everything to buy, with price breaks, shipping and tax. */
  readonly bill: Bill;
  /** Everything that weighs something, with its place. */
  readonly masses: readonly MassItem[];
  /** What it costs, saves and earns. */
  readonly business: BusinessReview;
}

/** Reviews a case. What no change of money touches stands from review to review. */
export function reviewCase(input: BusinessInput): Review {
  const once = lazily();
  const bare = (): ReviewInput => once("physical input", () => physicalInput(input));
  const physical = (): PhysicalReview => once("physical", () => physicalReview(bare()));
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
    get money() {
      return once("money", () =>
        moneyQuestions.flatMap((ask) => ask({ ...input, business: () => review.business })),
      );
    },
    get findings() {
      return byDanger([
        ...review.stiffness,
        ...review.strength,
        ...review.joints,
        ...review.travel,
        ...review.fitOut,
        ...review.money,
      ]);
    },
    get box() {
      return physical().box;
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
  "stiffness" | "strength" | "joints" | "travel" | "fitOut" | "box" | "masses"
>;

const physicalReview = memoizeLast(
  (input: ReviewInput) => input,
  () => [],
  newPhysicalReview,
);

function newPhysicalReview(input: ReviewInput): PhysicalReview {
  const once = lazily();
  const boxed = { ...input, box: () => review.box };
  const review: PhysicalReview = {
    get stiffness() {
      return once("stiffness", () => byDanger(stiffnessQuestions.flatMap((ask) => ask(boxed))));
    },
    get strength() {
      return once("strength", () => byDanger(strengthQuestions.flatMap((ask) => ask(input))));
    },
    get joints() {
      return once("joints", () => byDanger(jointQuestions.flatMap((ask) => ask(boxed))));
    },
    get travel() {
      return once("travel", () => byDanger(travelQuestions.flatMap((ask) => ask(input))));
    },
    get fitOut() {
      return once("fit-out", () => byDanger(fitOutQuestions.flatMap((ask) => ask(input))));
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
