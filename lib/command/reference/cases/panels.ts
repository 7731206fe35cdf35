/** Random panels: openings of every shape, doors, and the hardware on them, each in a cell of its own. */
import type { Block, Draws } from "./draws.js";

/** A face of a section, with what may be put on it. */
export interface PanelRoom {
  /** "base.front". */
  readonly name: string;
  /** Clear size across, mm. */
  readonly across: number;
  /** Clear size up, mm. */
  readonly up: number;
  /** Kept free at its lower and upper side, mm. */
  readonly margin: number;
  /** Whether an extrusion runs along its edges. */
  readonly barred: boolean;
}

/** What a panel got: openings in it and hardware on it. */
export interface DressedPanel {
  /** Openings by name. */
  readonly openings: Block;
  /** Places of hardware by what it is. */
  readonly places: Readonly<Record<string, readonly Block[]>>;
  /** Stiffeners by name. */
  readonly stiffeners: Block;
}

/** A free part of a panel, mm from the corner that all is measured from. */
interface Cell {
  /** Its side nearest to the corner, across. */
  readonly across: number;
  /** Its side nearest to the corner, up. */
  readonly up: number;
  /** Its size across. */
  readonly width: number;
  /** Its size up. */
  readonly height: number;
}

/** Free at the left and right of a panel, mm: bars and corners are there. */
const sideMargin = 80;

function cellsOf({ across, up, margin }: PanelRoom): readonly Cell[] {
  const [wide, high] = [across - 2 * sideMargin, up - 2 * margin];
  const [columns, rows] = [Math.min(3, Math.floor(wide / 170)), Math.min(3, Math.floor(high / 150))];
  const [width, height] = [wide / columns, high / rows];
  return Array.from({ length: Math.max(0, columns * rows) }, (_, i) => ({
    across: sideMargin + (i % columns) * width,
    up: margin + Math.floor(i / columns) * height,
    width,
    height,
  }));
}

/** A panel with random openings, doors and pieces of hardware. */
export function dressedPanel(draws: Draws, room: PanelRoom): DressedPanel {
  const from = draws.pick(["bottom-left", "bottom-right", "top-left", "top-right"]);
  const openings: Record<string, Block> = {};
  const places: Record<string, Block[]> = {};
  const stiffeners: Record<string, Block> = {};
  const put = (what: string, across: number, up: number): void => {
    const at = { on: room.name, from, across: draws.length(across), up: draws.length(up) };
    places[what] = [...(places[what] ?? []), at];
  };
  const cells = draws.shuffled(cellsOf(room)).slice(0, draws.whole(0, 3));
  for (const [i, cell] of cells.entries()) {
    const name = `cut ${i + 1}`;
    const what = draws.whole(0, 11);
    const middle = [cell.across + cell.width / 2, cell.up + cell.height / 2] as const;
    if (what < 5) openings[name] = { ...opening(draws, cell), from, ...paneOf(draws) };
    else if (what < 7) openings[name] = { ...door(draws, cell, from, put), from };
    else if (what < 9) stiffeners[`stay ${i + 1} of ${words(room.name)}`] = stay(draws, room, cell, from);
    else put(what < 11 ? "grip" : "eye", ...middle);
  }
  if (!room.barred && draws.often(2)) openings.mouth = { ...notch(draws, room), from };
  return { openings, places, stiffeners };
}

/** The name of a panel as a word that holds no side, for a name stays in a mirror. */
function words(panel: string): string {
  const [section = "", face = ""] = panel.split(".");
  return `${section} ${face === "left" ? "one" : face === "right" ? "two" : face}`;
}

/** A piece of wood on a panel. */
function stay(draws: Draws, room: PanelRoom, cell: Cell, from: string): Block {
  const { length, pick, often } = draws;
  const runs = pick(["across", "up"]);
  const along = (runs === "across" ? cell.width : cell.height) - 24;
  const row = { fastener: pick(["screw", "rivet 4 long"]), pitch: length(60), "end distance": length(20) };
  const wood = often(6)
    ? { kind: pick(["batten", "rib", "ledge", "cleat"]), strip: "batten 30", standing: often(5) }
    : { kind: "doubler", sheet: "ply 9", width: length(60) };
  return {
    on: room.name,
    ...wood,
    from,
    across: length(cell.across + 12),
    up: length(cell.up + 12),
    length: length(along),
    runs,
    side: pick(["inside", "outside"]),
    ...(often(5) ? { adhesive: "white glue", ...(often(4) ? row : {}) } : row),
  };
}

function notch({ length, whole }: Draws, { across }: PanelRoom): Block {
  return {
    notch: { width: length(60), height: length(whole(15, 40)) },
    across: length(across / 2 - 30),
    up: 0,
  };
}

function opening(draws: Draws, cell: Cell): Block {
  const { length, whole } = draws;
  const [across, up] = [cell.across + 15, cell.up + 15];
  const size = {
    width: length(whole(25, Math.floor(cell.width - 30))),
    height: length(whole(25, Math.floor(cell.height - 30))),
  };
  const [width, height] = [Number(size.width), Number(size.height)];
  const at = { across: length(across), up: length(up) };
  const shapes: readonly Block[] = [
    { rectangle: { ...size, "corner radius": draws.pick([0, Math.min(width, height) / 8]) }, ...at },
    { slot: size, ...at },
    { ellipse: size, ...at },
    { polygon: corners(draws, width, height), ...at },
    {
      circle: { diameter: length(whole(20, Math.floor(Math.min(cell.width, cell.height) - 30))) },
      across: length(cell.across + cell.width / 2),
      up: length(cell.up + cell.height / 2),
    },
  ];
  return draws.pick(shapes);
}

/** A pane over an opening, or none. */
function paneOf({ often, pick, whole, length }: Draws): Block {
  if (!often(3)) return {};
  const fastened = often(5) ? { fastener: "screw", count: 2 * whole(2, 6) } : {};
  const held = pick(["clips", "gasket", "clamps", "bead"]);
  const sheet = pick(["acrylic 3", "glass 4"]);
  return { pane: { sheet, overlap: length(8), side: pick(["inside", "outside"]), held, ...fastened } };
}

/** A triangle, a house or an L. */
function corners(draws: Draws, width: number, height: number): readonly (readonly [number, number])[] {
  return draws.pick([
    [
      [0, 0],
      [width, 0],
      [width / 4, height],
    ],
    [
      [0, 0],
      [width, 0],
      [width, height / 2],
      [width / 2, height],
      [0, height / 2],
    ],
    [
      [0, 0],
      [width, 0],
      [width, height / 2],
      [width / 2, height / 2],
      [width / 2, height],
      [0, height],
    ],
  ] as const);
}

/** What holds a leaf open, or nothing. */
function stayOf({ often, length, whole }: Draws): Block {
  if (!often(2)) return {};
  return {
    stay: {
      item: "lid stay",
      count: whole(1, 2),
      arm: length(40),
      "opens to": "100 deg",
      "pulls at": "45 deg",
    },
  };
}

/** A door with two hinges over its gap and a latch opposite. */
function door(
  draws: Draws,
  cell: Cell,
  from: string,
  put: (what: string, across: number, up: number) => void,
): Block {
  const { length, pick, often } = draws;
  const [left, low] = [cell.across + 22, cell.up + 15];
  const [width, height] = [cell.width - 44, cell.height - 30];
  const near = from.endsWith("left") ? "left" : "right";
  const hinge = pick(["left", "right"]);
  const [hung, shut] = hinge === near ? [left + 1.5, left + width - 30] : [left + width - 1.5, left + 30];
  const leaves = often(9);
  if (leaves && often(8)) for (const share of [0.22, 0.78]) put("butt hinge", hung, low + share * height);
  if (leaves && often(7)) put("turn latch", shut, low + height / 2);
  return {
    rectangle: { width: length(width), height: length(height), "corner radius": length(pick([0, 10])) },
    across: length(left),
    up: length(low),
    ...(leaves ? { leaf: { hinge, clearance: length(3), ...stayOf(draws) } } : {}),
  };
}
