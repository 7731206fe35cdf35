/**
 * Shapes and turns that a random case may have on top: sections of unlike plan, wide shallow ones, two faces left open;
 * hardware turned by quarters, three and six wheels, lids and flaps on hinges of their own, three leaves in an opening.
 * Drawn by itself, so that the cases of other seeds stay what they are.
 */
import type { CaseContent } from "./case-content.js";
import type { Block, Draws } from "./draws.js";
import type { Room } from "./sections.js";

/** Rooms of other shapes, in the same order. */
export function reshapedRooms(draws: Draws, rooms: readonly Room[]): readonly Room[] {
  const { whole, often } = draws;
  const [first] = rooms;
  if (first && rooms.length === 1 && often(4)) {
    const shallow = { width: whole(700, 1100), depth: whole(450, 620), height: whole(200, 290) };
    return [{ ...first, ...shallow, drawers: false }];
  }
  return rooms.map((room, i) => {
    const least = (size: number): number => Math.max(300, size - whole(0, 160));
    const plan = i > 0 ? { width: least(room.width), depth: least(room.depth) } : {};
    const open = room.drawers || !often(3) ? room.open : draws.pick(openPairs);
    return { ...room, ...plan, open };
  });
}

/** Two faces that may be left open together. */
const openPairs: readonly Room["open"][] = [
  ["front", "back"],
  ["front", "top"],
  ["back", "top"],
  ["left", "right"],
  ["right", "top"],
  ["left"],
];

/** The same case with some of it turned, hung or stood otherwise. */
export function turnedCase(draws: Draws, { content, tables }: CaseContent): CaseContent {
  const sections = blockOf(content.sections);
  const hardware = wheeledOtherwise(draws, blockOf(content.hardware), sections);
  const leaved = mapOpenings(sections, (opening, place) => leavedOtherwise(draws, opening, place, hardware));
  const hinges = leaved.flatMap(({ hung }) => hung);
  const [one] = Object.values(hardware).map(blockOf);
  const known = blockOf(hardware[hinged]);
  const all: Block =
    one === undefined || hinges.length === 0
      ? hardware
      : {
          ...hardware,
          [hinged]: {
            item: "butt hinge",
            duty: "hinge",
            ...known,
            places: [...listOf(known.places), ...hinges],
          },
        };
  return {
    content: {
      ...content,
      sections: withOpenings(sections, leaved),
      hardware: mapBlock(all, (piece) => turnedPiece(draws, piece)),
    },
    tables,
  };
}

const hinged = "each butt hinge";

/** What may lie on its side: the rest hooks over an edge, or holds a corner. */
const turnable = /^(grip|eye|turn latch|butt hinge|wheel|rubber foot)/;

function turnedPiece({ often, pick }: Draws, piece: Block): Block {
  if (!turnable.test(String(piece.item)) || !often(5)) return piece;
  const places = listOf(piece.places).map((place) => ({
    ...place,
    turned: pick([90, 180, 270, true, false]),
  }));
  return { ...piece, places };
}

/** Wheels in a triangle, or six of them. */
function wheeledOtherwise(draws: Draws, hardware: Block, sections: Block): Block {
  return mapBlock(hardware, (piece) => {
    const [one, two, three, four] = listOf(piece.places);
    if (piece.duty !== "roll" || !one || !two || !three || !four || !draws.often(4)) return piece;
    const [name = ""] = String(one.on).split(".");
    const across = Number(blockOf(blockOf(sections[name]).inside).width) / 2;
    if (across < Number(one.across) + draws.length(90)) return piece;
    const [front, back] = [one, three].map((place) => ({ ...place, across }));
    const places = draws.pick([
      [one, two, back],
      [front, three, four],
      [one, two, three, four, front, back],
    ]);
    return { ...piece, places };
  });
}

/** An opening of a panel as it is now. */
interface Leaved {
  /** "base.front". */
  readonly panel: string;
  /** Its name. */
  readonly name: string;
  /** It. */
  readonly opening: Block;
  /** Places of hinges that its leaf got. */
  readonly hung: readonly Block[];
}

function mapOpenings(
  sections: Block,
  change: (opening: Block, panel: string) => Omit<Leaved, "panel" | "name">,
): readonly Leaved[] {
  return Object.entries(sections).flatMap(([section, block]) =>
    Object.entries(blockOf(blockOf(block).panels)).flatMap(([face, panel]) =>
      Object.entries(blockOf(blockOf(panel).openings)).map(([name, opening]) => ({
        panel: `${section}.${face}`,
        name,
        ...change(blockOf(opening), `${section}.${face}`),
      })),
    ),
  );
}

function withOpenings(sections: Block, leaved: readonly Leaved[]): Block {
  const openingsOf = (on: string): Block =>
    Object.fromEntries(leaved.flatMap(({ panel, name, opening }) => (panel === on ? [[name, opening]] : [])));
  return Object.fromEntries(
    Object.entries(sections).map(([section, block]) => {
      const { panels } = blockOf(block);
      if (!panels) return [section, block];
      const dressed = Object.entries(blockOf(panels)).map(([face, panel]) => {
        const openings = openingsOf(`${section}.${face}`);
        return [face, Object.keys(openings).length === 0 ? panel : { ...blockOf(panel), openings }];
      });
      return [section, { ...blockOf(block), panels: Object.fromEntries(dressed) }];
    }),
  );
}

/** A door without hardware becomes a lid or a flap on hinges; a pair of leaves becomes three. */
function leavedOtherwise(
  draws: Draws,
  opening: Block,
  panel: string,
  hardware: Block,
): Omit<Leaved, "panel" | "name"> {
  const { leaf, leaves, rectangle } = opening;
  if (blockOf(leaves).runs === "across" && draws.often(4))
    return { opening: { ...opening, leaves: three(blockOf(leaves)) }, hung: [] };
  if (!leaf || !rectangle || JSON.stringify(hardware).includes(`"${panel}"`) || !draws.often(6))
    return { opening, hung: [] };
  const side = draws.pick(["top", "bottom"]);
  const stay = {
    item: "lid stay",
    count: draws.whole(1, 2),
    arm: draws.length(40),
    "opens to": `${draws.pick([60, 90, 110, 170])} deg`,
    "pulls at": "45 deg",
  };
  const { clearance } = blockOf(leaf);
  const hung = { hinge: side, clearance, ...(draws.often(6) ? { stay } : {}) };
  return {
    opening: { ...opening, leaf: hung },
    hung: draws.often(8) ? hingesAlong(opening, panel, side) : [],
  };
}

/** Two hinges over the gap at the upper or lower side of a door. */
function hingesAlong({ rectangle, from, across, up }: Block, on: string, side: string): readonly Block[] {
  const { width, height } = blockOf(rectangle);
  const isNear = String(from).startsWith(side);
  const level = Number(up) + (isNear ? 0 : Number(height));
  return [0.25, 0.75].map((share) => ({
    on,
    from,
    across: Number(across) + share * Number(width),
    up: level,
  }));
}

/** A third leaf between two that lie side by side, hung at its top. */
function three({ each, ...rest }: Block): Block {
  const [one, two] = Object.entries(blockOf(each));
  if (!one || !two) return { each, ...rest };
  const { clearance } = blockOf(one[1]);
  const all = [one, ["inner", { hinge: "top", clearance }] as const, two];
  return { ...rest, each: Object.fromEntries(all) };
}

function blockOf(value: unknown): Block {
  return (value ?? {}) as Block;
}

function listOf(value: unknown): readonly Block[] {
  return Array.isArray(value) ? value : [];
}

function mapBlock(block: Block, change: (one: Block) => Block): Block {
  return Object.fromEntries(Object.entries(block).map(([name, one]) => [name, change(blockOf(one))]));
}
