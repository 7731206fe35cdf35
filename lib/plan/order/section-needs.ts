/** What the order of a section's steps must meet: glue, gravity, the ways in, the ways of hands and tools. */
import type { OrderNeed } from "../../assembly/index.js";
import type { ContentPart, Fastening, Parts, StiffenerPart } from "../../design/index.js";
import { memoizeLast } from "../../kept/index.js";
import { type FastenerReach, fastenerReach, type ReviewInput, waysIn } from "../../model/index.js";
import { isKeeper } from "./hardware-stage.js";
import { groupStep, keyOf, type SectionChoice, type StepOfPart, shared, wheelsOf } from "./section-steps.js";

/** Needs that hold whatever the section: the pieces before all else, in their order. */
export function sharedNeeds(keys: readonly string[]): readonly OrderNeed[] {
  const why: Readonly<Record<string, string>> = {
    [shared.saw]: "the pieces are sawn first",
    [shared.laminate]: "the glue takes its time",
    [shared.cure]: "laminate is trimmed when its glue holds",
    [shared.trim]: "openings are cut through trimmed panels",
    [shared.open]: "holes are measured from finished openings",
  };
  const pieces = keys.filter((key) => key in why || key === shared.drill);
  return pieces.slice(1).map((key, i) => {
    const before = pieces[i] ?? key;
    return { step: before, before: [[key]], why: why[before] ?? "the pieces are made first" };
  });
}

/** Everything that the steps of a section must meet. */
export function sectionNeeds(
  section: string,
  choice: SectionChoice,
  stepOf: StepOfPart,
  input: ReviewInput,
): readonly OrderNeed[] {
  return withoutTwins([
    ...madeNeeds(section, choice, input.parts),
    ...standingNeeds(section, choice, input.parts),
    ...(choice.gluedFlat ? glueNeeds(section, choice, input.parts) : []),
    ...contentNeeds(section, choice, input.parts),
    ...wayNeeds(section, stepOf, input),
    ...reachNeeds(section, choice, stepOf, input),
  ]);
}

function withoutTwins(needs: readonly OrderNeed[]): readonly OrderNeed[] {
  const seen = new Map<string, OrderNeed>();
  for (const need of needs) {
    const key = JSON.stringify([need.step, need.before]);
    if (!seen.has(key)) seen.set(key, need);
  }
  return [...seen.values()];
}

function before(step: string, later: string, why: string): OrderNeed {
  return { step, before: [[later]], why };
}

/** Holes are drilled before anything is fixed, and nothing is loaded before its glue holds. */
function madeNeeds(section: string, { last }: SectionChoice, parts: Parts): readonly OrderNeed[] {
  const drilled = [
    ...parts.stiffeners.filter((one) => one.section === section).map(({ id }) => keyOf.stiffen(id)),
    ...parts.panes.filter((one) => one.section === section).map(({ id }) => keyOf.pane(id)),
    ...parts.hardware.filter((one) => one.section === section).map(({ id }) => keyOf.fit(id)),
    ...(last
      ? parts.bars
          .filter((bar) => bar.section === section && bar.covers.includes(last))
          .map(({ id }) => keyOf.leg(id, last))
      : []),
    keyOf.box(section),
  ];
  return drilled.map((step) => before(shared.drill, step, "its panel is drilled while it lies flat"));
}

/** What stands on what. */
function standingNeeds(section: string, { last }: SectionChoice, parts: Parts): readonly OrderNeed[] {
  const here = <Part extends { readonly section: string }>(list: readonly Part[]): readonly Part[] =>
    list.filter((part) => part.section === section);
  const box = keyOf.box(section);
  const closed = last ? keyOf.close(section) : box;
  const framed = [
    ...here(parts.bars).flatMap(({ id, covers }) =>
      last && covers.includes(last)
        ? covers
            .filter((panel) => panel !== last)
            .map((panel) => ({ step: keyOf.leg(id, panel), on: closed }))
        : [{ step: keyOf.bar(id), on: box }],
    ),
    ...here(parts.joints).map(({ id, panels }) => ({
      step: keyOf.joint(id),
      on: last && panels.includes(last) ? closed : box,
    })),
  ];
  const leaves = here(parts.panels).filter(({ role }) => role === "leaf");
  return [
    ...framed.map(({ step, on }) => before(on, step, "its panels must stand")),
    ...(last ? [before(box, keyOf.close(section), `${last} lies on the others`)] : []),
    ...parts.stiffeners
      .filter(({ panel }) => panel === last)
      .map(({ id }) =>
        before(keyOf.stiffen(id), keyOf.close(section), `it goes on ${last} while that lies on the bench`),
      ),
    ...leaves.map(({ id }) => before(box, keyOf.hang(id), "a door is hung in its frame")),
    ...parts.hardware
      .filter(({ panels }) => leaves.some(({ id }) => panels.includes(id)))
      .map(({ id, panels }) =>
        before(
          keyOf.hang(leaves.find((leaf) => panels.includes(leaf.id))?.id ?? ""),
          keyOf.fit(id),
          "it goes on with the door in its opening",
        ),
      ),
    ...loadNeeds(section, last, parts),
    ...cornerNeeds(section, last, parts),
    ...cureNeeds(section, parts),
    ...stackNeeds(
      section,
      last,
      framed.map(({ step }) => step),
      parts,
    ),
  ];
}

/** What is glued on a panel is pressed while that lies flat; on the one that closes it lies flat longer. */
function glueNeeds(section: string, { last }: SectionChoice, parts: Parts): readonly OrderNeed[] {
  return gluedOn(section, parts)
    .filter(({ panel }) => panel !== last)
    .map(({ id }) => before(keyOf.stiffen(id), keyOf.box(section), "it is glued while its panel lies flat"));
}

/** The stiffeners of a section that are glued. */
export function gluedOn(section: string, { stiffeners }: Parts): readonly StiffenerPart[] {
  return stiffeners.filter((one) => one.section === section && one.adhesive !== undefined);
}

/** A box that is only clamped bears nothing. */
function loadNeeds(section: string, last: string | undefined, parts: Parts): readonly OrderNeed[] {
  const frame = [
    ...parts.bars
      .filter(({ section: own, covers }) => own === section && !(last && covers.includes(last)))
      .map(({ id }) => keyOf.bar(id)),
    ...parts.joints
      .filter(({ section: own, panels }) => own === section && !(last && panels.includes(last)))
      .map(({ id }) => keyOf.joint(id)),
  ];
  const load = [
    ...parts.shelves
      .filter(({ shelf }) => shelf.section === section)
      .map(({ panel }) => keyOf.shelf(panel.id)),
    ...parts.contents
      .filter((part) => part.content.section === section && carriedBy(part, parts) === undefined)
      .map(({ content }) => keyOf.content(content.name)),
  ];
  return frame.flatMap((step) =>
    load.map((later) => before(step, later, "a box that is only clamped bears nothing")),
  );
}

/** Hardware over a corner or between sections goes on once its panels stand. */
function cornerNeeds(section: string, last: string | undefined, parts: Parts): readonly OrderNeed[] {
  return parts.hardware
    .filter((part) => part.section === section && part.panels.length > 2)
    .map(({ id, panels }) =>
      before(
        last && panels.includes(last) ? keyOf.close(section) : keyOf.box(section),
        keyOf.fit(id),
        "its panels must stand",
      ),
    );
}

function cureNeeds(section: string, parts: Parts): readonly OrderNeed[] {
  const glued = parts.joints.filter((one) => one.section === section && one.adhesive !== undefined);
  if (glued.length === 0) return [];
  const cure = keyOf.cure(section);
  return [
    ...glued.map(({ id }) => before(keyOf.joint(id), cure, "the glue takes its time")),
    ...[
      ...wheelsOf(section, parts).map(({ id }) => keyOf.fit(id)),
      ...parts.contents
        .filter(({ content }) => content.section === section)
        .map(({ content }) => keyOf.content(content.name)),
    ].map((step) => before(cure, step, "glue is loaded when it holds")),
  ];
}

/**
 * Sections are stacked whole. Before that they stand on each other once, so that latches are marked where they meet
 * their keepers: what bears the other is closed by then, the topmost may still be open.
 */
function stackNeeds(
  section: string,
  last: string | undefined,
  framed: readonly string[],
  parts: Parts,
): readonly OrderNeed[] {
  const joining = parts.hardware.filter(({ item }) => item.duty === "join-sections");
  if (parts.sections.length < 2 && joining.length === 0) return [];
  const bears = parts.sections.at(-1)?.name !== section;
  const here = joining.filter((part) => part.section === section);
  const [keepers, latches] = [here.filter(isKeeper), here.filter((part) => !isKeeper(part))];
  const own = keepers.map(({ id }) => keyOf.fit(id));
  const wheels = wheelsOf(section, parts).map(({ id }) => keyOf.fit(id));
  const stands = [keyOf.box(section), ...wheels, ...own];
  const whole = [...(last ? [keyOf.close(section)] : []), ...framed];
  const marked = joining.length > 0 ? [...stands, ...(bears ? whole : [])] : [];
  return [
    ...marked.map((step) => before(step, shared.mark, "latches are marked on sections that bear each other")),
    ...latches.flatMap(({ id }) => [
      before(shared.mark, keyOf.fit(id), "a latch goes where it meets its keeper"),
      before(keyOf.fit(id), shared.stack, "a section is whole before it is stacked"),
    ]),
    ...[...stands, ...whole].map((step) =>
      before(step, shared.stack, "a section is whole before it is stacked"),
    ),
  ];
}

/** The panel that a content is fastened to, where it is one of the section's. */
export function carriedBy({ content }: ContentPart, parts: Parts): string | undefined {
  return parts.fastenings.find(
    ({ why, holds, panel }) =>
      why === "content" && holds === content.name && parts.panels.some(({ id }) => id === panel),
  )?.panel;
}

/** A content goes in when what it stands on is there, and after the wheels, since the box lies on its back for them. */
function contentNeeds(section: string, { last, onBench }: SectionChoice, parts: Parts): readonly OrderNeed[] {
  const inside = [
    ...parts.shelves
      .filter(({ shelf }) => shelf.section === section)
      .map(({ panel }) => keyOf.shelf(panel.id)),
    ...parts.drawers
      .filter(({ drawer }) => drawer.section === section)
      .map(({ drawer }) => keyOf.drawer(drawer.name)),
  ];
  const slides = parts.hardware.filter((part) => part.section === section && part.item.duty === "slide");
  return [
    ...inside.map((step) => before(keyOf.box(section), step, "it is carried by the walls")),
    ...slides.map(({ id }) => {
      const runs = id.replace(/^slides of /, "");
      const drawer = parts.drawers.find((one) => one.drawer.name === runs && one.drawer.section === section);
      const shelf = parts.shelves.find((one) => one.shelf.name === runs && one.shelf.section === section);
      const later = drawer ? keyOf.drawer(runs) : keyOf.shelf(shelf?.panel.id ?? runs);
      return before(keyOf.fit(id), later, "it runs on its slides");
    }),
    ...parts.contents
      .filter(({ content }) => content.section === section)
      .flatMap((part) => oneContent(part, section, last, onBench, parts)),
  ];
}

function oneContent(
  part: ContentPart,
  section: string,
  last: string | undefined,
  onBench: boolean,
  parts: Parts,
): readonly OrderNeed[] {
  const step = keyOf.content(part.content.name);
  const carrier = carriedBy(part, parts);
  const { held } = part.content;
  const named = "shelf" in held ? held.shelf : undefined;
  const shelf = parts.shelves.find((one) => one.shelf.name === named && one.shelf.section === section);
  const hangs = carrier !== undefined && carrier === last;
  return [
    ...(hangs && onBench
      ? [before(step, keyOf.close(section), `it goes on ${last} while that lies on the bench`)]
      : [before(keyOf.box(section), step, "its section must stand")]),
    ...(hangs && !onBench ? [before(keyOf.close(section), step, `it hangs from ${last}`)] : []),
    ...(shelf ? [before(keyOf.shelf(shelf.panel.id), step, "it stands on the shelf")] : []),
    ...wheelsOf(section, parts).map(({ id }) =>
      before(keyOf.fit(id), step, "the box lies on its back, empty, for its wheels"),
    ),
  ];
}

/** Contents and shelves pass nothing that stands in their way. */
function wayNeeds(section: string, stepOf: StepOfPart, input: ReviewInput): readonly OrderNeed[] {
  return waysIn(input)
    .filter((thing) => thing.section === section && thing.ways.length > 0)
    .map(({ id, ways }) => {
      const step = stepOf(id) ?? id;
      return {
        step,
        before: listsOf(step, ways, stepOf),
        why: `${id} gets in only while its way is free`,
      };
    });
}

/** Steps that come later, a list a way, each list once. */
function listsOf(
  step: string,
  ways: readonly { readonly later: readonly string[] }[],
  stepOf: StepOfPart,
): readonly (readonly string[])[] {
  const lists = ways.map(({ later }) =>
    [...new Set(later.flatMap((part) => stepOf(part) ?? []))].filter((one) => one !== step).sort(),
  );
  const seen = new Set<string>();
  return lists.filter((list) => {
    const name = list.join("\n");
    if (seen.has(name)) return false;
    seen.add(name);
    return true;
  });
}

/** Whether a fastener is set while its piece lies on the bench: one in a drawer's own sides. */
export function isSetOnBench({ panel }: Fastening, { drawers }: Parts): boolean {
  return drawers.some(({ panels }) => panels.some(({ id }) => id === panel));
}

/** Fasteners of a section that need a hand or a tool where the case stands. */
export function reachOf(section: string, input: ReviewInput): readonly FastenerReach[] {
  return fastenerReach(input).filter(
    (one) => one.section === section && !isSetOnBench(one.group, input.parts),
  );
}

/** Of fasteners that are set alike, which need the same, the first. */
const kindsOfReach = memoizeLast(
  fastenerReach,
  ({ parts }) => [parts],
  (input): readonly FastenerReach[] => {
    const first = new Map<string, FastenerReach>();
    for (const one of fastenerReach(input)) {
      if (isSetOnBench(one.group, input.parts)) continue;
      const ways = one.handInside ? one.ways.map(({ later }) => later) : [];
      const kind = JSON.stringify([one.group.id, ways, one.toolHits]);
      if (!first.has(kind)) first.set(kind, one);
    }
    return [...first.values()];
  },
);

/** Hands and tools get to every fastener. One that no hand reaches at all is told by itself. */
function reachNeeds(
  section: string,
  choice: SectionChoice,
  stepOf: StepOfPart,
  input: ReviewInput,
): readonly OrderNeed[] {
  const steps = new Map<Fastening, string>();
  const stepFor = (group: Fastening): string => {
    const step = steps.get(group) ?? groupStep(group, choice, input.parts);
    steps.set(group, step);
    return step;
  };
  return kindsOfReach(input).flatMap(({ group, section: own, handInside, ways, toolHits, name }) => {
    if (own !== section) return [];
    const step = stepFor(group);
    const hits = listsOf(step, [{ later: toolHits }], stepOf);
    return [
      ...(handInside && ways.length > 0
        ? [{ step, before: listsOf(step, ways, stepOf), why: `a hand must get to ${name}` }]
        : []),
      ...(toolHits.length > 0 ? [{ step, before: hits, why: `the tool for ${name} needs its room` }] : []),
    ];
  });
}
