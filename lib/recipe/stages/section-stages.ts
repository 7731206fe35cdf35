/** The stages of one section: its flat panels, the open box, what stands inside, the last panel, the doors. */
import type { Vector3 } from "../../algebra/matrix3.js";
import {
  accessOf,
  type HardwarePart,
  type JointPart,
  lastPanel,
  openFaces,
  type PanelPart,
  type Parts,
  type SectionPart,
} from "../../design/index.js";
import { capitalised, listed } from "../../findings/index.js";
import type { CaseSolid } from "../../model/index.js";
import { hardwareAt, reachWords, stageOf } from "../../plan/index.js";
import { Time } from "../../quantity/index.js";
import { type CodedPiece, codeOf } from "../pieces.js";
import { when } from "../recipe.js";
import { needed, type ShopStep, step, supplies, using } from "../supplies.js";
import { codeRanges, counted, grouped } from "../words.js";
import type { Workshop } from "../workshop.js";
import { boxChecks, doorChecks, fastenerChecks } from "./checks.js";
import { contentStep, earlyContents, placesTable } from "./contents.js";
import { gapsBeside } from "./doors.js";
import { edgeRules } from "./edge-rules.js";
import { closedBy, goesInOpen, isHeldBack, placeOf } from "./found-order.js";
import type { Stage } from "./stage.js";

/** The stages of a section, in their order; empty ones are left out later. */
export function sectionStages(one: SectionPart, workshop: Workshop): readonly Stage[] {
  const last = lastOf(one, workshop);
  return [
    flatStage(one, workshop),
    boxStage(one, last, workshop),
    insideStage(one, workshop),
    ...(last ? [closingStage(one, last, workshop)] : []),
    doorStage(one, workshop),
  ];
}

/** The panel that closes the box; none where a face is open. */
function lastOf({ name }: SectionPart, workshop: Workshop): string | undefined {
  const { parts } = workshop;
  const found = closedBy(name, workshop);
  if (found !== undefined) return found;
  return openFaces(name, parts).length > 0 ? undefined : lastPanel(name, accessOf(name, parts));
}

function isOf({ name }: SectionPart, test: (solid: CaseSolid) => boolean): (solid: CaseSolid) => boolean {
  return (solid) => solid.section === name && test(solid);
}

function hardwareIds(hardware: readonly HardwarePart[]): ReadonlySet<string> {
  return new Set(hardware.map(({ id }) => id));
}

function flatStage(one: SectionPart, workshop: Workshop): Stage {
  const { parts } = workshop;
  const bench = hardwareIds(
    hardwareAt("bench", parts, one.name).filter((part) => !isHeldBack(part, workshop)),
  );
  return {
    title: `${one.name}: the flat panels`,
    section: one.name,
    steps: [...stiffenerSteps(one, workshop), ...benchSteps(one, workshop), ...paneSteps(one, workshop)],
    adds: isOf(one, ({ kind, part }) => kind === "stiffener" || kind === "pane" || bench.has(part)),
  };
}

/** A step a stiffener, on the flat panel. */
function stiffenerSteps({ name }: SectionPart, { parts, pieces }: Workshop): ShopStep[] {
  const here = parts.stiffeners.filter(({ section }) => section === name);
  return here.map((stiffener) => {
    const { id, kind, panel, side, adhesive, piece } = stiffener;
    const strips = pieces.strips.filter(({ name: strip }) => strip === id || strip.startsWith(`${id} `));
    const codes = piece ? codeOf(pieces.panels, piece.id) : listed(strips.map(({ code }) => code));
    const row = parts.fastenings.find(({ why, holds }) => why === "stiffener" && holds === id);
    const ways = [
      ...(adhesive ? [adhesive.name] : []),
      ...(row ? [`${counted(row.count, "fastener")} (${row.fastener.name}) through ${panel}`] : []),
    ];
    const isShelf = parts.shelves.some((shelf) => shelf.panel.id === panel);
    const where = isShelf ? { inside: "underside", outside: "top" }[side] : side;
    return step`Put the ${kind} ${codes} on the ${where} of ${panel} while it lies flat, where the marks are. Fix it with ${listed(ways)}.`;
  });
}

function paneSteps({ name }: SectionPart, { pieces }: Workshop): ShopStep[] {
  const here = pieces.panes.filter(({ part }) => part.section === name);
  return here.map(({ code, part: { panel, pane } }) => {
    const row = pane.count === undefined ? "" : `, ${counted(pane.count, "fastener")} (${pane.fastener})`;
    const strip = needed("glazing tape or silicone, as the pane's maker says", "panes", "1 roll");
    return step`Lay the pane ${code} over its opening on the ${pane.side} of ${panel}, on ${strip}. It overlaps alike all round, held by ${pane.held}${row}. It sits snug and is never forced.`;
  });
}

function benchSteps({ name }: SectionPart, workshop: Workshop): ShopStep[] {
  const { parts } = workshop;
  const bench = hardwareAt("bench", parts, name).filter((part) => !isHeldBack(part, workshop));
  const wheels = hardwareAt("wheels", parts, name);
  const setters = settersOf(bench, parts);
  return [
    ...when(bench.length > 0, () =>
      using(step`${fitWords(bench)} The panels lie flat, and your hands reach the inside.`, ...setters),
    ),
    ...when(
      wheels.length > 0,
      () => step`Drill the holes of ${hardwareWords(wheels)} while the panel lies flat.`,
    ),
  ];
}

/** Tools and small parts that the fasteners of some hardware take. */
export function settersOf(hardware: readonly { readonly id: string }[], { fastenings }: Parts) {
  const rows = fastenings.filter(({ holds }) => hardware.some(({ id }) => id === holds));
  const bolts = rows.filter(({ fastener }) => fastener.kind === "bolt");
  const has = (kind: string): boolean => rows.some(({ fastener }) => fastener.kind === kind);
  return [
    ...when(has("rivet"), () => supplies.riveter),
    ...when(has("screw") || has("insert"), () => supplies.jScrew),
    ...when(has("insert"), () => supplies.insertDriver),
    ...(bolts.length > 0 ? [supplies.wrenches, ...nutsOf({ fastenings } as Parts)] : []),
  ];
}

/** Nuts for every bolt of the case, one kind a bolt. */
export function nutsOf({ fastenings }: Pick<Parts, "fastenings">) {
  const bolts = fastenings.filter(({ fastener }) => fastener.kind === "bolt");
  return grouped(bolts, ({ fastener }) => fastener.name).map(([name, some]) =>
    needed(`lock nuts for ${name}`, "bolts", String(some.reduce((sum, { count }) => sum + count, 0))),
  );
}

/** "carry handle (4) on upper.left and upper.right" */
export function hardwareWords(hardware: readonly HardwarePart[]): string {
  const items = grouped(hardware, ({ item }) => item.name).map(([name, some]) => {
    const panels = [...new Set(some.flatMap((part) => part.panels))];
    return `${name} (${some.length}) on ${listed(panels)}`;
  });
  return items.join("; ");
}

/** The same as orders, one for each kind: "Fit carry handle (2) on lower.left and lower.right." */
function fitWords(hardware: readonly HardwarePart[]): string {
  return hardwareWords(hardware)
    .split("; ")
    .map((words) => `Fit ${words}.`)
    .join(" ");
}

/** The box, all but its last panel. */
function boxStage(one: SectionPart, last: string | undefined, workshop: Workshop): Stage {
  const { parts } = workshop;
  const far = hardwareIds(cornersOf(one, parts, (panels) => last === undefined || !panels.includes(last)));
  const wheels = hardwareIds(last ? hardwareAt("wheels", parts, one.name) : []);
  const bars = barsOf(one, last, workshop).first;
  const steps = boxSteps(one, last, workshop);
  return {
    title: last ? `${one.name}: the box without ${last}` : `${one.name}: the box`,
    section: one.name,
    steps,
    adds: isOf(
      one,
      ({ kind, part }) =>
        (kind === "sheet" && part !== last) ||
        kind === "strip" ||
        (kind === "bar" && bars.some(({ name }) => name === part)) ||
        far.has(part) ||
        wheels.has(part),
    ),
    ...(last ? { hand: handInto(one, last) } : {}),
    checks: [{ ...boxChecks(workshop, one.name), afterStep: steps.indexOf(compareDiagonals) + 1 }],
  };
}

/** From outside the side that is still open to the middle. */
function handInto({ outside: { low, size } }: SectionPart, last: string): { from: Vector3; to: Vector3 } {
  const middle: Vector3 = [low.x + size.x / 2, low.y + size.y / 2, low.z + 0.6 * size.z];
  const top: Vector3 = [middle[0], middle[1], low.z + 1.5 * size.z];
  const back: Vector3 = [middle[0], low.y + 1.6 * size.y, middle[2]];
  return { from: last.endsWith(".back") ? back : top, to: middle };
}

function cornersOf(
  { name }: SectionPart,
  parts: Parts,
  test: (panels: readonly string[]) => boolean,
): readonly HardwarePart[] {
  return hardwareAt("corners", parts, name).filter(({ panels }) => test(panels));
}

function barsOf({ name }: SectionPart, last: string | undefined, { pieces }: Workshop) {
  const bars = pieces.bars.filter(({ part }) => part.section === name);
  const closing = bars.filter(({ part }) => last !== undefined && part.covers.includes(last));
  return { closing, first: bars.filter((bar) => !closing.includes(bar)) };
}

const compareDiagonals = step`Compare the two diagonals of every face and shift the clamps until they agree. A box fixed crooked stays crooked.`;

function boxSteps(one: SectionPart, last: string | undefined, workshop: Workshop): ShopStep[] {
  const { parts, pieces } = workshop;
  const described = workshop.case.sections.find(({ name }) => name === one.name);
  const faces = pieces.panels.filter(({ part }) => part.section === one.name && part.role === "face");
  const { first } = barsOf(one, last, workshop);
  const far = cornersOf(one, parts, (panels) => last === undefined || !panels.includes(last));
  const wheels = last ? hardwareAt("wheels", parts, one.name) : [];
  return [
    step`Dry fit without glue or fasteners, with ${supplies.clamps}. Stand ${listed(faces.map(({ code, part }) => `${code} ${part.face}`))} together.`,
    ...(described ? edgeRules(described).map((words) => step`${words}`) : []),
    compareDiagonals,
    ...when(first.length > 0, () =>
      using(
        step`${last ? `Take ${last} off. ` : ""}Put on the bars ${codes(first)}. Each lies outside, a leg on each of its two panels. Clamp, drill through and rivet them. ${last ? "From the open side you reach every washer." : ""}`,
        supplies.drill,
        supplies.riveter,
        supplies.deburr,
        supplies.eyes,
      ),
    ),
    ...jointSteps(one.name, workshop),
    ...when(far.length > 0, () =>
      using(step`Set ${cornerWords(far)} away from the open side now, after their bars.`, supplies.riveter),
    ),
    ...when(wheels.length > 0, () =>
      using(
        step`Lay the box on its back on a ${supplies.blanket}, two people. Bolt on ${hardwareWords(wheels)}, heads outside; the nuts go on from the open side.`,
        ...settersOf(wheels, parts),
      ),
    ),
  ];
}

/** A step for each way in which edges are joined without a bar. */
function jointSteps(name: string, { parts, pieces }: Workshop): ShopStep[] {
  const joints = parts.joints.filter(({ section }) => section === name);
  const alike = ({ kind, adhesive, strip, id }: JointPart): string =>
    [kind, adhesive?.name, strip?.name, screwOf(id, parts)].join("|");
  return grouped(joints, alike).map(([, some]) => {
    const [{ kind, adhesive, id }] = some;
    const screw = screwOf(id, parts);
    const ways = [
      ...(adhesive ? [`glue with ${adhesive.name}`] : []),
      ...(screw ? [`screw with ${screw} through the holes that are drilled`] : []),
    ];
    const edges = listed(some.map(({ edge }) => edge));
    const strips = pieces.strips.filter(({ part }) => some.some((one) => part.id.startsWith(`${one.id} `)));
    const wait = adhesive
      ? ` Clamp it, wipe off what squeezes out, and leave it for ${Time.show(adhesive.cureTime)}.`
      : "";
    if (kind === "glued" || kind === "screwed")
      return using(
        step`Join the panels at ${edges}. ${capitalised(listed(ways))}.${wait}`,
        supplies.clamps,
        supplies.cloths,
      );
    return using(
      step`Take the ${kind}s ${codeRanges(strips.map(({ code }) => code))}. Set them into the corners at ${edges}. Begin on one panel, then do the other: ${listed(ways)}.${wait}`,
      supplies.clamps,
      supplies.cloths,
    );
  });
}

/** The screw of an edge. */
function screwOf(joint: string, { fastenings }: Parts): string | undefined {
  return fastenings.find(({ why, holds }) => why === "edge" && holds === joint)?.fastener.name;
}

function codes(bars: readonly CodedPiece<unknown>[]): string {
  return listed(bars.map(({ code }) => code));
}

function cornerWords(corners: readonly HardwarePart[]): string {
  return listed(grouped(corners, ({ item }) => item.name).map(([name, some]) => `${name} (${some.length})`));
}

/** What goes in while one side is still open, from below upwards. */
function insideStage(one: SectionPart, workshop: Workshop): Stage {
  const { parts } = workshop;
  const shelves = parts.shelves.filter(({ shelf }) => shelf.section === one.name);
  const early = earlyContents(one.name, workshop);
  const names = new Set(early.map(({ content }) => content.name));
  const ordered = [
    ...early.map((part) => ({
      at: placeOf(part.content.name, one.name, workshop) ?? part.box.low.z,
      step: contentStep(part, workshop),
    })),
    ...shelves.map((part) => ({
      at: placeOf(part.panel.id, one.name, workshop) ?? part.panel.box.low.z,
      step: shelfStep(part, workshop),
    })),
    ...drawerSteps(one.name, workshop),
  ].sort((a, b) => a.at - b.at);
  const late = hardwareWhileOpen(one, workshop);
  const ids = hardwareIds(late);
  const things = [
    ...shelves.map(({ shelf: { name, at } }) => ({ name, at })),
    ...early.map(({ content: { name, at } }) => ({ name, at })),
  ];
  return {
    title: `${one.name}: what stands inside`,
    section: one.name,
    steps: [...ordered.map(({ step: words }) => words), ...openSteps(late, workshop)],
    adds: isOf(
      one,
      ({ kind, part }) =>
        kind === "shelf" || kind === "drawer" || kind === "runner" || names.has(part) || ids.has(part),
    ),
    hides: ({ part, kind }) =>
      kind === "hardware" ||
      (part.startsWith(`${one.name}.`) && /front|right/.test(part.slice(one.name.length))),
    ...(things.length > 0 ? { places: [placesTable(things, workshop)] } : {}),
  };
}

/** Hardware that goes on while the section is open, when something is inside. */
function hardwareWhileOpen({ name }: SectionPart, workshop: Workshop): readonly HardwarePart[] {
  const { parts } = workshop;
  return [
    ...hardwareAt("bench", parts, name).filter(
      (part) => part.item.duty !== "slide" && isHeldBack(part, workshop),
    ),
    ...hardwareAt("joining", parts, name).filter(({ id }) => goesInOpen(id, name, workshop) === true),
  ];
}

function openSteps(late: readonly HardwarePart[], { parts }: Workshop): ShopStep[] {
  const [joining, rest] = [true, false].map((joins) =>
    late.filter((part) => (stageOf(part, parts) === "joining") === joins),
  );
  return [
    ...when((rest?.length ?? 0) > 0, () =>
      using(
        step`${fitWords(rest ?? [])} It goes on now, from the open side: it was in the way.`,
        ...settersOf(rest ?? [], parts),
      ),
    ),
    ...when((joining?.length ?? 0) > 0, () =>
      using(
        step`Stack the sections, two people. Mark ${hardwareWords(joining ?? [])} at the keepers. Lift them off, drill, and fit while it is open.`,
        ...settersOf(joining ?? [], parts),
      ),
    ),
  ];
}

function shelfStep(part: Parts["shelves"][number], { pieces, parts }: Workshop): ShopStep {
  const { shelf, panel, ledges } = part;
  const borne = {
    "two ends": "its two ends",
    "ends and back": "its ends and the back",
    "back only": "the back",
  }[shelf.support];
  const code = codeOf(pieces.panels, panel.id);
  if (ledges.length > 0) {
    const under = listed(ledges.map(({ id }) => id));
    return using(
      step`Lay the shelf ${code} on its ledges (${under}) and fix it with ${counted(shelf.joint.count, "fastener")} (${shelf.joint.fastener}).`,
      supplies.jScrew,
    );
  }
  const bears = shelf.sliding
    ? needed(`pair of slides for ${shelf.name}`, "the shelf that slides", "1 pair, with their screws")
    : needed(
        `cleats for ${shelf.name}`,
        "screws bite these, never the edge of a thin panel",
        "3/4 of the depth of the shelf, one at each bearing",
      );
  const tried = shelf.sliding ? " Try it loaded by hand before you go on." : "";
  const screws = `${counted(shelf.joint.count, "fastener")} (${shelf.joint.fastener})`;
  return using(
    step`Screw ${bears} to the walls, level, from inside. Put in the shelf ${code}, borne at ${borne}, with ${screws} from below.${tried}`,
    ...(parts.fastenings.some(({ holds }) => holds === shelf.name) ? [supplies.jScrew] : []),
    supplies.jScrew,
  );
}

/** The steps of drawers, at the place of their slides; after all else where no order was found. */
function drawerSteps(
  section: string,
  workshop: Workshop,
): { readonly at: number; readonly step: ShopStep }[] {
  const { parts, pieces } = workshop;
  const drawers = parts.drawers.filter(({ drawer }) => drawer.section === section);
  return drawers.flatMap(({ drawer: { name, slides, joint }, panels }) => {
    const at = placeOf(`slides of ${name}`, section, workshop) ?? Number.MAX_VALUE;
    const steps = [
      using(
        step`Build the ${name} from ${listed(panels.map(({ id }) => codeOf(pieces.panels, id)))}. Set inner front and back between the sides, and the bottom under them, all with ${counted(joint.count, "fastener")} (${joint.fastener}).`,
        supplies.jScrew,
      ),
      step`Measure both diagonals of the ${name}. Screw its slides (${slides}) to the drawer and to ${besideWords(`slides of ${name}`, workshop)}, level. Fix its front last, with even gaps.`,
    ];
    return steps.map((one) => ({ at, step: one }));
  });
}

/** What a pair of slides is screwed to: walls by their names, boards by their codes. */
function besideWords(pair: string, { parts, pieces }: Workshop): string {
  const panels = parts.hardware.find(({ id }) => id === pair)?.panels ?? [];
  return listed(panels.map((id) => codeOf(pieces.strips, id)));
}

function closingStage(one: SectionPart, last: string, workshop: Workshop): Stage {
  const { parts } = workshop;
  const { closing } = barsOf(one, last, workshop);
  const near = cornersOf(one, parts, (panels) => panels.includes(last));
  const ids = hardwareIds(near);
  const rivets = [supplies.drill, supplies.riveter, supplies.deburr, supplies.tape, supplies.pliers];
  return {
    title: `${one.name}: ${last} closes it`,
    section: one.name,
    steps: [
      ...(closing.length > 0
        ? [
            using(
              step`Clamp on ${last} with the bars ${codes(closing)}. Drill through bar and panel, both legs.`,
              supplies.drill,
            ),
            using(step`Take ${last} off. Rivet the bars to it on the bench, washers and all.`, ...rivets),
            step`Put ${last} with its bars on the box. Rivet the other legs. ${reachWords(one.name, parts)}`,
          ]
        : [step`Put on ${last} as the last panel. ${reachWords(one.name, parts)}`]),
      ...when(near.length > 0, () =>
        using(step`Set ${cornerWords(near)} at ${last}, after their bars.`, ...rivets),
      ),
    ],
    adds: isOf(
      one,
      ({ kind, part }) =>
        part === last || ids.has(part) || (kind === "bar" && closing.some(({ name }) => name === part)),
    ),
    checks: when(parts.fastenings.length > 0, () => fastenerChecks(workshop, one.name)),
  };
}

function doorStage(one: SectionPart, workshop: Workshop): Stage {
  const { parts, pieces, rule } = workshop;
  const leaves = parts.panels.filter(({ section, role }) => section === one.name && role === "leaf");
  const metal = hardwareAt("doors", parts, one.name);
  const ids = hardwareIds(metal);
  const gapOf = ({ leaf }: PanelPart): string => {
    if (!leaf) return "";
    const beside = gapsBeside(leaf, rule);
    const own = rule.fine(leaf.clearance);
    return beside.length > 0
      ? `${own} to the panel and ${listed(beside)} to the next leaf`
      : `${own} all round`;
  };
  const closes = metal.some(({ item }) => item.duty === "close");
  return {
    title: `${one.name}: ${leaves.length > 1 ? "the doors" : "the door"}`,
    section: one.name,
    steps: [
      ...leaves.map(
        (leaf) =>
          step`Set the door ${codeOf(pieces.panels, leaf.id)} ${leaf.id} in its opening on ${supplies.packing}, hinged at the ${leaf.leaf?.hinge ?? "side"}. Leave a gap of ${gapOf(leaf)}. It is sawn from a sheet, not from what was cut out.`,
      ),
      ...when(metal.length > 0, () =>
        using(step`${fitWords(metal)} The hinges come first.`, ...settersOf(metal, parts)),
      ),
      ...when(
        closes,
        () =>
          step`Screw ${needed("strike plate and stop strip for each door", "what the latch catches, and what the leaf shuts against", `${leaves.length} of each`)} behind the opening, so that the leaf shuts flush.`,
      ),
    ],
    adds: isOf(one, ({ kind, part }) => kind === "leaf" || ids.has(part)),
    checks: when(leaves.length > 0, () => doorChecks(workshop, one.name)),
  };
}

/** Whether hardware of a section goes on while its box is open. */
export function wheelsEarly(part: HardwarePart, parts: Parts): boolean {
  return stageOf(part, parts) === "wheels" && openFaces(part.section, parts).length === 0;
}
