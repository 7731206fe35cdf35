/** Where a hand gets into a section once it is closed, and the rivets that are then set without washers. */
import type { Vector3 } from "../../algebra/matrix3.js";
import { doorwaysIn, nearestWay } from "../../assembly/index.js";
import { Length } from "../../quantity/index.js";
import type { ToolRoom } from "../measured.js";
import type { Fastening, HardwarePart, PanelPart, Parts, PlacedOpening, SectionPart } from "../parts.js";
import type { Face } from "../place.js";
import { limbThrough, roomFor } from "../tool-room.js";
import { frameOf, pointIn } from "./frames.js";

/** The widest way in. */
export interface Access {
  /** The opening that the hand goes through. */
  readonly opening: PlacedOpening;
  /** The id of the panel that the opening is in. */
  readonly panel: string;
}

/**
 * The opening of a section whose smaller side is largest; undefined where no hand gets through any. A hole for
 * hardware is no way in, the hardware fills it.
 */
export function accessOf(section: string, { panels }: Pick<Parts, "panels">): Access | undefined {
  const { diameter } = roomFor("hand", []);
  return facesOf(section, panels)
    .flatMap((panel) => panel.openings.map((opening) => ({ opening, panel: panel.id })))
    .filter(({ opening }) => opening.why === "case" && doorwaysIn(opening.outline, diameter).length > 0)
    .sort((a, b) => narrowSide(b.opening) - narrowSide(a.opening))[0];
}

function facesOf(section: string, panels: readonly PanelPart[]): readonly PanelPart[] {
  return panels.filter((panel) => panel.section === section && panel.role === "face");
}

function narrowSide({ width, height }: PlacedOpening): number {
  return Math.min(width, height);
}

/** The faces of a section that have no panel. */
export function openFaces(section: string, { sections }: Pick<Parts, "sections">): readonly Face[] {
  return sections.find(({ name }) => name === section)?.open ?? [];
}

/** The panel to close last: the top, or the back where the way in is in the top. */
export function lastPanel(section: string, access: Access | undefined): string {
  return access?.panel === `${section}.top` ? `${section}.back` : `${section}.top`;
}

/**
 * The parts of a case, with the rivets told that are set when no hand gets behind them any more: those of the bars of the
 * panel that closes a section on its other panels, of corners at that panel, and of latches that go on when the section
 * bears the next one, where they are out of reach.
 *
 * @param tools own rooms of hands and arms; usual ones where there are none
 */
export function withHandsShutOut(parts: Parts, tools: readonly ToolRoom[]): Parts {
  const sections = new Map(
    parts.sections.map((section) => [section.name, closedSection(section, parts, tools)]),
  );
  const panels = new Map(parts.panels.map((panel) => [panel.id, panel]));
  const fastenings = parts.fastenings.map((group): Fastening => {
    const panel = panels.get(group.panel);
    const closed = panel && sections.get(panel.section);
    if (!closed || group.fastener.kind !== "rivet" || !closed.isLate(group)) return group;
    const frame = frameOf(panel);
    const isReached = group.at.every((hole) => closed.isReached(pointIn(frame, hole, 0)));
    return isReached ? group : { ...group, noHandBehind: true };
  });
  return { ...parts, fastenings };
}

/** A section once all its panels are on. */
interface ClosedSection {
  /** Whether a group is set by then. */
  readonly isLate: (group: Fastening) => boolean;
  /** Whether a hand gets to a place. */
  readonly isReached: (place: Vector3) => boolean;
}

function closedSection({ name, open }: SectionPart, parts: Parts, tools: readonly ToolRoom[]): ClosedSection {
  if (open.length > 0) return { isLate: () => false, isReached: () => true };
  const last = lastPanel(name, accessOf(name, parts));
  const own = <Part extends { readonly section: string }>(list: readonly Part[]): readonly Part[] =>
    list.filter(({ section }) => section === name);
  const bars = new Set(own(parts.bars).flatMap(({ id, covers }) => (covers.includes(last) ? [id] : [])));
  const hardware = new Set(
    own(parts.hardware).flatMap((part) => (isLate(part, last, parts) ? [part.id] : [])),
  );
  const ways = handWaysInto(name, parts, tools);
  return {
    isLate: ({ holds, panel }) => hardware.has(holds) || (bars.has(holds) && panel !== last),
    isReached: (place) =>
      ways.some(({ doorways, reach }) => (nearestWay(place, doorways)?.length ?? Infinity) <= reach),
  };
}

/** Whether hardware of a section goes on when its last panel is on, or when it bears the next section. */
function isLate({ section, panels, item, stock }: HardwarePart, last: string, parts: Parts): boolean {
  const isCorner = panels.length > 2 && panels.includes(last);
  const isTopmost = section === parts.sections.at(-1)?.name;
  return isCorner || (item.duty === "join-sections" && stock.kind !== "keeper" && !isTopmost);
}

/** Places of a hand on the inside of a wall, and how far it reaches from there. */
interface HandsIn {
  /** Places, m. */
  readonly doorways: readonly Vector3[];
  /** How far, m. */
  readonly reach: number;
}

/** So much nearer than the hand reaches: the thickness of a bar or of a wall decides nothing. */
const toSpare = Length.of(10, "mm");

/** Ways of a hand into a section that stay when it is closed: its openings but those that a pane fills. */
function handWaysInto(
  section: string,
  { panels, panes }: Parts,
  tools: readonly ToolRoom[],
): readonly HandsIn[] {
  const beyond = roomFor("stick", tools).length - toSpare;
  const filled = new Set(panes.map(({ id }) => id));
  return facesOf(section, panels).flatMap((panel) =>
    panel.openings
      .filter(({ why, name }) => why === "case" && !filled.has(`${panel.id}.${name} pane`))
      .flatMap(({ outline }) => limbThrough(outline, tools) ?? [])
      .map(({ at, reach }) => ({
        doorways: at.map((point) => pointIn(frameOf(panel), point, 0)),
        reach: reach + beyond,
      })),
  );
}
