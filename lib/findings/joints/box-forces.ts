/** What the joined boxes put on casters, latches, hinges and handles, beside what each of them allows. */
import type { HardwarePart, Parts } from "../../design/index.js";
import {
  type CaseRun,
  castersOf,
  hardwareStrength,
  type KnownStrength,
  type LinkKind,
  onBothMeshes,
  runsOf,
  stackedBalance,
  useInterval,
} from "../../model/index.js";
import { Force, Ratio, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, capitalised, styleOf, withinMesh } from "../amount.js";
import { besideOutcomes, withoutOutcomes } from "../box-cases.js";
import { casterCaution, doorCaution, handleCaution, joinedCaution } from "../cautions.js";
import { type Answer, type Question, question } from "../question.js";
import { type BoxedInput, boxAssumptions, each, known, mostOf } from "../subjects.js";

/** Hardware that the boxes load, and what goes wrong when it gives. */
interface LoadedKind {
  /** As the boxes name it. */
  readonly kind: LinkKind;
  /** What the case file has it for. */
  readonly duty: HardwarePart["item"]["duty"];
  /** All of it, in words. */
  readonly plural: string;
  /** What somebody must be told. */
  readonly caution: string;
}

const loadedKinds: readonly LoadedKind[] = [
  {
    kind: "caster",
    duty: "roll",
    plural: "casters",
    caution: casterCaution,
  },
  {
    kind: "latch",
    duty: "join-sections",
    plural: "section latches",
    caution: joinedCaution,
  },
  {
    kind: "hinge",
    duty: "hinge",
    plural: "door hinges",
    caution: doorCaution,
  },
  {
    kind: "handle",
    duty: "lift",
    plural: "handles",
    caution: handleCaution,
  },
];

/** A kind with one piece of it. */
interface LoadedPart extends LoadedKind {
  /** One of them. */
  readonly part: HardwarePart;
}

/** Whether a kind of hardware allows what some load case puts on it. */
export const boxForces: Question<BoxedInput> = question({
  id: "joints.box",
  about: each(
    ({ parts }): readonly LoadedPart[] =>
      loadedKinds
        .filter(({ kind }) => kind !== "latch" || parts.sections.length > 1)
        .filter(({ kind }) => kind !== "handle" || liftedByTwo(parts))
        .flatMap((kind) => {
          const part = parts.hardware.find(
            ({ item, stock }) => item.duty === kind.duty && stock.kind !== "keeper",
          );
          return part ? [{ ...kind, part }] : [];
        }),
    ({ kind }) => kind,
    ({ plural }) => plural,
  ),
  ask: ({ plural }, input) =>
    `What do the ${plural} carry while the case stands,${castersOf(input).length > 0 ? " rolls," : ""} is pushed and lifted, and do they allow it?`,
  tier: "safety",
  cautions: ({ caution }) => [caution],
  assumes: boxAssumptions,
  needs: { own: known((input, { part }: LoadedPart) => hardwareStrength(part, input)) },
  answer: (input: BoxedInput, { own }, { kind }) => carried(input, kind, own),
});

/** Whether a section has handles to share it: one handle by itself bears all of what it lifts, and is asked about so. */
function liftedByTwo({ sections, hardware }: Parts): boolean {
  return sections.some(
    ({ name }) => hardware.filter(({ item, section }) => item.duty === "lift" && section === name).length > 1,
  );
}

/** The most loaded of a kind in one load case. */
interface OnKind {
  /** The load case. */
  readonly id: string;
  /** The load case in words. */
  readonly title: string;
  /** The piece that carries most. */
  readonly name: string;
  /** What it carries, in newtons. */
  readonly value: number;
}

const criterion = cite("common-practice", "the maker's rating, or own tests over the safety factor");

/**
 * What the boxes put on one kind of hardware.
 *
 * @throws Refusal where no load case loads it
 */
function carried(input: BoxedInput, kind: LinkKind, own: KnownStrength): Answer {
  const runs = runsOf(input.box());
  const chosen = ({ id }: { readonly id: string }): boolean =>
    kind === "handle" ? /^(carried|lifted)/.test(id) : !id.startsWith("dropped");
  const told = runs.fine.outcomes.filter(chosen);
  const loaded = told.flatMap(({ id, title, hardware }): OnKind[] => {
    const most = hardware[kind]?.[0];
    return most ? [{ id, title, name: most.name, value: most.value }] : [];
  });
  const none = `no load case loads a ${kind}: give the case casters, handles or a door`;
  if (loaded.length === 0) return withoutOutcomes(runs.fine, chosen, none, criterion);
  const worst = mostOf(loaded, ({ value }) => value, kind);
  const force = onBothMeshes(runs, (run: CaseRun) => forceOn(run, kind, worst));
  const demand = Force.si(force.value);
  const style = styleOf(input.case);
  const others = loaded.filter((one) => one !== worst);
  const used = Ratio.show(Ratio.si(demand / own.strength), { unit: "%", digits: 2 });
  return {
    demand: amount(Force, `on ${worst.name}`, demand),
    capacity: amount(Force, "it allows", own.strength),
    facts: `${capitalised(worst.name)} carries most: ${Force.show(demand, style)} (${withinMesh(force.meshError)} by the mesh) of the ${Force.show(own.strength, style)} that it allows (${used}). The load case is this: ${worst.title}.${nextWords(others, style)}${besideOutcomes(runs.fine, chosen, style)}`,
    // The moduli of the sheets hardly move these forces; what is open is what the hardware itself holds.
    interval: useInterval(demand, own, 1),
    rests: "what its maker rates it for, and on how rivets and screws give, which is EN 1995's",
    because: [stackedBalance(input), ...own.because],
    limit: criterion,
    sources: [cite("statics", "bodies on springs, force method")],
  };
}

/** The load case that comes next, and how many there are besides. */
function nextWords(others: readonly OnKind[], style: ShowStyle): string {
  if (others.length === 0) return "";
  const { title, value } = mostOf(others, (one) => one.value, "hardware");
  const most =
    others.length === 1
      ? "In the other load case it is"
      : `In ${others.length} other load cases it is at most`;
  return ` ${most} ${Force.show(Force.si(value), style)}: ${title}.`;
}

function forceOn({ outcomes }: CaseRun, kind: LinkKind, { id, name }: OnKind): number {
  const outcome = outcomes.find((one) => one.id === id);
  return outcome?.hardware[kind]?.find((one) => one.name === name)?.value ?? 0;
}
