/** Random shelves and contents of sections, each thing in a column of its own and held in one of all ways. */
import type { Block, Draws } from "./draws.js";
import type { Room } from "./sections.js";
import { sheetNames, thicknessOf } from "./stock.js";

/** The blocks of what is inside. */
export interface Inside {
  /** The block "drawers". */
  readonly drawers: Block;
  /** The block "shelves". */
  readonly shelves: Block;
  /** The block "contents". */
  readonly contents: Block;
}

/** A shelf with the sizes that what stands on it needs, mm. */
interface Board {
  /** What it is called. */
  readonly name: string;
  /** Its upper side. */
  readonly top: number;
  /** Its lower side. */
  readonly low: number;
  /** Its front side. */
  readonly front: number;
  /** From front to back. */
  readonly depth: number;
  /** Its block. */
  readonly block: Block;
}

/** Where one thing goes, mm. */
interface Niche {
  /** Its left side. */
  readonly left: number;
  /** Its front side. */
  readonly front: number;
  /** Its lower side. */
  readonly low: number;
  /** Room from left to right. */
  readonly width: number;
  /** Room from front to back. */
  readonly depth: number;
  /** Room upwards. */
  readonly height: number;
  /** The shelf it is over. */
  readonly on?: string;
  /** Whether there is a top right over it. */
  readonly underTop: boolean;
}

/** What is in random rooms. */
export function insideOf(draws: Draws, rooms: readonly Room[]): Inside {
  const boards = rooms.map((room) => (draws.often(5) && !room.drawers ? boardOf(draws, room) : undefined));
  const contents = rooms.flatMap((room, i) =>
    room.drawers
      ? []
      : nichesOf(draws, room, boards[i]).flatMap((niche, k) =>
          draws.often(7) ? [[`thing ${k + 1} of ${room.name}`, contentOf(draws, room, niche)] as const] : [],
        ),
  );
  const shelves = boards.flatMap((board) => (board ? [[board.name, board.block] as const] : []));
  return {
    shelves: Object.fromEntries(shelves),
    drawers: Object.fromEntries(
      rooms.filter((room) => room.drawers).flatMap((room) => drawersOf(draws, room)),
    ),
    contents: Object.fromEntries(contents),
  };
}

function drawersOf(draws: Draws, { name, depth, height }: Room): readonly (readonly [string, Block])[] {
  const { length, pick, whole } = draws;
  return Array.from({ length: height > 480 ? 2 : 1 }, (_, i) => [
    `drawer ${i + 1} of ${name}`,
    {
      in: name,
      opening: `front.bay ${i + 1}`,
      slides: "slide pair",
      depth: length(whole(200, depth - 20)),
      sheet: pick(sheetNames),
      ...draws.some(5, { bottom: "ply 9", gap: length(3), load: `${whole(1, 12)} kg` }),
      joint: { fastener: "screw", count: 4 * whole(1, 4) },
    },
  ]);
}

function boardOf(draws: Draws, room: Room): Board {
  const { length, pick, whole, often } = draws;
  const sheet = pick(sheetNames);
  const low = Math.round((room.height * whole(35, 60)) / 100);
  const depth = Math.round((room.depth * whole(50, 100)) / 100);
  const front = room.depth - depth;
  const support = supportIn(draws, room);
  const sliding = support === "two ends" && often(3);
  const name = `board of ${room.name}`;
  const block = {
    in: room.name,
    sheet,
    size: [length(room.width), length(depth)],
    at: [0, length(front), length(low)],
    support,
    sliding,
    ...(sliding && often(5) ? { slides: "slide pair" } : {}),
    ...(sliding && often(5) ? { "slides rated": "300 N" } : {}),
    ...(support === "back only" && often(5) ? { bracket: length(60) } : {}),
    joint: { fastener: pick(["screw", "rivet 4"]), count: 12 * whole(1, 2) },
  };
  return { name, low, top: low + thicknessOf(sheet), front, depth, block };
}

/** What holds a shelf where the faces that it needs are there. */
function supportIn({ pick }: Draws, { open }: Room): string {
  if (open.includes("left") || open.includes("right")) return "back only";
  return open.includes("back") ? "two ends" : pick(["two ends", "ends and back", "back only"]);
}

function nichesOf(draws: Draws, room: Room, board: Board | undefined): readonly Niche[] {
  const columns = draws.whole(1, 3);
  const width = room.width / columns;
  const hasTop = !room.open.includes("top");
  return Array.from({ length: columns }, (_, i): readonly Niche[] => {
    const left = i * width + 8;
    const floor = { left, front: 8, low: 0, width: width - 16, depth: room.depth - 16 };
    if (!board) return [{ ...floor, height: room.height - 12, underTop: hasTop }];
    const over = {
      ...floor,
      front: board.front + 8,
      depth: board.depth - 16,
      low: board.top,
      on: board.name,
    };
    return [
      { ...floor, height: board.low - 12, underTop: false },
      { ...over, height: room.height - board.top - 12, underTop: hasTop },
    ];
  }).flat();
}

function contentOf(draws: Draws, room: Room, niche: Niche): Block {
  const { length, whole, pick } = draws;
  const part = (size: number): number => Math.round((size * whole(35, 95)) / 100);
  const size = { width: part(niche.width), depth: part(niche.depth), height: part(niche.height) };
  const way = pick(waysOf(room, niche));
  const backed = way === "screwed to the back";
  const front = backed ? room.depth - size.depth : niche.front;
  const low = way === "hung" ? room.height - size.height : niche.low;
  return {
    in: room.name,
    mass: `${whole(2, 90) / 4} kg`,
    at: [length(niche.left), length(front), length(low)],
    size: [length(size.width), length(size.depth), length(size.height)],
    held: heldOf(draws, way, niche),
    ...(draws.often(4)
      ? { power: `${whole(1, 120)} W`, ...draws.some(7, { "power on": `${whole(1, 10) * 10} %` }) }
      : {}),
    ...(draws.often(5) ? { needs: needsOf(draws, size) } : {}),
  };
}

/** The ways that make sense in a niche. */
function waysOf({ open }: Room, { on, underTop }: Niche): readonly string[] {
  return [
    ...(on === undefined ? ["floor", "screws", "insert"] : ["shelf"]),
    "strap",
    "cradle",
    ...(open.includes("back") ? [] : ["screwed to the back", "rivets"]),
    ...(underTop ? ["hung"] : []),
  ];
}

function heldOf(draws: Draws, way: string, { on }: Niche): Block {
  const { length, pick, whole, often } = draws;
  const count = whole(2, 6);
  switch (way) {
    case "shelf":
      return { by: "shelf", shelf: on };
    case "strap":
      return { by: "strap", straps: whole(1, 3), ...draws.some(6, { rated: "400 N" }) };
    case "cradle":
      return {
        by: "cradle",
        ...(on === undefined ? {} : { shelf: on }),
        rim: length(whole(20, 70)),
        lining: { kind: "soft foam", thickness: length(25) },
        lid: often(5),
        ...draws.some(5, { rated: "150 N" }),
      };
    case "screws":
      return { by: "screws", to: "bottom", fastener: "screw", count };
    case "insert":
      return { by: "screws", to: "bottom", fastener: "insert", count, foot: length(2) };
    case "screwed to the back":
      return { by: "screws", to: "back", fastener: pick(["screw", "bolt"]), count };
    case "rivets":
      return { by: "rivets", to: "back", fastener: "rivet 4", count };
    case "hung":
      return { by: "hung", fastener: "bolt", count, "second hold": secondHold(draws) };
    default:
      return { by: "floor" };
  }
}

function secondHold({ length, often }: Draws): boolean | Block {
  if (often(5)) return often(5);
  return { fastener: "bolt", count: 1, rated: "300 N", slack: length(10), give: length(6) };
}

function needsOf(draws: Draws, { width, depth }: { readonly width: number; readonly depth: number }): Block {
  const { length, whole, pick } = draws;
  const pad = [length(width / 2), length(depth / 2)];
  return draws.some(3, {
    "stands g": whole(15, 80),
    foam: { kind: "soft foam", thickness: length(50), pad, ...draws.some(5, { sides: pad, ends: pad }) },
    "opens by": length(whole(50, 300)),
    "cold start": whole(1, 15),
    hottest: `${whole(30, 60)} °C`,
    plug: {
      at: pick(["left", "right", "back", "front", "top"]),
      length: length(45),
      cable: length(8),
      "bend factor": 5,
      ...draws.some(5, { width: length(35) }),
    },
    mounts: { count: 4, rate: `${whole(1, 20)} N/mm` },
    "keep clear": length(whole(10, 80)),
    pane: paneOf(draws),
    "slides at": `${whole(1, 50)} N`,
  });
}

function paneOf(draws: Draws): Block {
  const { length } = draws;
  return {
    strip: length(4),
    squeeze: "30 %",
    clearance: length(1),
    ...draws.some(5, {
      set: "15 %",
      clamp: { force: "20 N", pad: [length(12), length(30)] },
      stands: "100 kPa",
    }),
  };
}
