/** What the joined boxes put on casters, latches, hinges and handles, beside what each of them allows. */
import type { HardwarePart } from "../../design/index.js";
import {
  type CaseBox,
  type CaseOutcome,
  type CaseRun,
  type CaseRuns,
  hardwareStrength,
  isKnown,
  type KnownStrength,
  type LinkKind,
  type NamedValue,
  onBothMeshes,
  type ReviewInput,
  runsOf,
  stackedBalance,
  useInterval,
} from "../../model/index.js";
import { Force, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf, withinMesh } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { boxAssumptions } from "./box-findings.js";

/** Hardware that the boxes load, and what goes wrong when it gives. */
const asked: readonly {
  readonly kind: LinkKind;
  readonly duty: HardwarePart["item"]["duty"];
  readonly plural: string;
  readonly caution: string;
}[] = [
  {
    kind: "caster",
    duty: "roll",
    plural: "casters",
    caution: "A caster that gives way tips the case: lift it over holes and kerbs.",
  },
  {
    kind: "latch",
    duty: "join-sections",
    plural: "section latches",
    caution: "Lift the sections apart where you can; never stand under a joined case.",
  },
  {
    kind: "hinge",
    duty: "hinge",
    plural: "door hinges",
    caution: "A door that comes off its hinges falls on feet: look at its rivets before every trip.",
  },
  {
    kind: "handle",
    duty: "lift",
    plural: "handles",
    caution: "A handle that lets go drops the case on a foot: look at its rivets before every lift.",
  },
];

/** A finding a kind of hardware that some load case loads. */
export function hardwareForceFindings(input: ReviewInput, box: () => CaseBox): readonly Finding[] {
  return asked.flatMap(({ kind, duty, plural, caution }) => {
    const part = input.parts.hardware.find(
      ({ item, stock }) => item.duty === duty && stock.kind !== "keeper",
    );
    if (!part) return [];
    const question: Question = {
      id: `joints.box.${kind}`,
      topic: "joints",
      subject: plural,
      question: `What do the ${plural} carry while the case stands, rolls, is pushed and lifted, and do they allow it?`,
    };
    const cautions = [caution, ...boxAssumptions];
    const own = hardwareStrength(part, input);
    if (!isKnown(own)) return [unknown(question, own, cautions)];
    return [guarded(question, () => forceReply(input, kind, runsOf(box()), own, cautions), cautions)];
  });
}

/** The most loaded of a kind in one load case. */
function mostOf({ hardware }: CaseOutcome, kind: LinkKind): NamedValue | undefined {
  return hardware[kind]?.[0];
}

function forceReply(
  input: ReviewInput,
  kind: LinkKind,
  runs: CaseRuns,
  own: KnownStrength,
  cautions: readonly string[],
): Reply {
  const told = runs.fine.outcomes.filter(({ id }) => !id.startsWith("dropped"));
  const loaded = told.filter((one) => mostOf(one, kind) !== undefined);
  if (loaded.length === 0)
    throw new RangeError(`no load case loads a ${kind}: give the case casters, handles or a door`);
  const worst = loaded.reduce((most, one) =>
    mostOf(one, kind)!.value > mostOf(most, kind)!.value ? one : most,
  );
  const { name } = mostOf(worst, kind)!;
  const force = onBothMeshes(runs, (run: CaseRun) => forceOn(run, worst.id, kind, name));
  const ratio = force.value / own.strength;
  // The moduli of the sheets hardly move these forces; what is open is what the hardware itself holds.
  const interval = useInterval(Force.si(force.value), own, 1);
  const style = styleOf(input.case);
  const others = loaded
    .filter((one) => one !== worst)
    .map((one) => `${one.title} ${Force.show(Force.si(mostOf(one, kind)!.value), style)}`);
  const rest = others.length > 0 ? ` Others: ${others.join("; ")}.` : "";
  return {
    verdict: verdictOf(ratio, interval),
    answer: `Most is on ${name}, ${worst.title}: ${Force.show(Force.si(force.value), style)} (${withinMesh(force.meshError)} by the mesh) of ${Force.show(own.strength, style)} (${Ratio.show(Ratio.si(ratio), { unit: "%", digits: 2 })}).${rest}`,
    demand: amount(Force, `on ${name}`, Force.si(force.value)),
    capacity: amount(Force, "it allows", own.strength),
    ratio,
    ...(interval ? { interval } : {}),
    because: [stackedBalance(input), ...own.because],
    cautions,
    source: [
      cite("common-practice", "the maker's rating, or own tests over the safety factor"),
      cite("statics", "bodies on springs, force method"),
    ],
  };
}

function forceOn({ outcomes }: CaseRun, id: string, kind: LinkKind, name: string): number {
  const outcome = outcomes.find((one) => one.id === id);
  return outcome?.hardware[kind]?.find((one) => one.name === name)?.value ?? 0;
}
