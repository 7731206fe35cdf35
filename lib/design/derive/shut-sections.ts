/** Sections that no hand gets into once they are closed, and the rivets that are then set without washers. */
import { doorwaysIn } from "../../assembly/index.js";
import { Length } from "../../quantity/index.js";
import type { Fastening, Parts } from "../parts.js";

/** A hand without its thumb: EN 547-3, 97 mm (from memory, fairly sure). It passes an opening in which such a circle lies. */
export const handPasses: Length = Length.of(97, "mm");

/** Whether no hand gets into a section once all its panels are on: no open side, and no opening that a hand passes. */
export function isShut(section: string, { sections, panels }: Pick<Parts, "sections" | "panels">): boolean {
  const open = sections.find(({ name }) => name === section)?.open ?? [];
  return (
    open.length === 0 &&
    panels
      .filter((panel) => panel.section === section && panel.role === "face")
      .flatMap(({ openings }) => openings.filter(({ why }) => why === "case"))
      .every(({ outline }) => doorwaysIn(outline, handPasses).length === 0)
  );
}

/**
 * The parts of a case, with the rivets told that are set once their section is shut: those of the bars of its top on its
 * other panels, of corners at its top, and of latches that go on when it bears the next section. The top goes on last.
 */
export function withHandsShutOut(parts: Parts): Parts {
  const shut = new Set(parts.sections.map(({ name }) => name).filter((name) => isShut(name, parts)));
  if (shut.size === 0) return parts;
  const late = new Map([...lateBars(shut, parts), ...lateHardware(shut, parts)]);
  const fastenings = parts.fastenings.map((group): Fastening => {
    const isLate = group.fastener.kind === "rivet" && (late.get(group.holds)?.(group.panel) ?? false);
    return isLate ? { ...group, noHandBehind: true } : group;
  });
  return { ...parts, fastenings };
}

/** What is held late, and on which of its panels. */
type Late = readonly (readonly [string, (panel: string) => boolean])[];

function lateBars(shut: ReadonlySet<string>, { bars }: Parts): Late {
  return bars
    .filter(({ section, covers }) => shut.has(section) && covers.includes(`${section}.top`))
    .map(({ id, section }) => [id, (panel) => panel !== `${section}.top`]);
}

function lateHardware(shut: ReadonlySet<string>, { hardware, sections }: Parts): Late {
  const topmost = sections.at(-1)?.name;
  return hardware
    .filter(({ section, panels, item, stock }) => {
      if (!shut.has(section)) return false;
      const isCorner = panels.length > 2 && panels.includes(`${section}.top`);
      return isCorner || (item.duty === "join-sections" && stock.kind !== "keeper" && section !== topmost);
    })
    .map(({ id }) => [id, () => true]);
}
