/** A cable that turns behind its plug, and cables in a hole, to scale. */
import { Length, type ShowStyle } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import { boxShape } from "./case-plane.js";
import type { Figure, FigureShape, FigureStuff } from "./figure.js";

/** A plug in its socket and the cable behind it. */
export interface BentBehind {
  /** Whose socket it is. */
  readonly name: string;
  /** Straight length of the plug. */
  readonly plug: Length;
  /** Outside diameter of the cable. */
  readonly cable: Length;
  /** Inner radius of its bend. */
  readonly radius: Length;
  /** Plug, bend and cable. */
  readonly needed: Length;
  /** Free in front of the socket. */
  readonly room: Length;
}

/** A wall farther off than so many times what is needed is left out. */
const drawnRoom = 2;

/** A quarter turn between two radii, from the way of the plug to straight down. */
function bend(centre: Point2, inner: number, outer: number, foot: number): readonly Point2[] {
  const turns = Array.from({ length: 9 }, (_, i) => Math.PI / 2 - (i * Math.PI) / 16);
  const arc = (radius: number): readonly Point2[] =>
    turns.map((turn) => ({
      x: centre.x + radius * Math.cos(turn),
      y: centre.y + radius * Math.sin(turn),
    }));
  return [
    ...arc(outer),
    { x: centre.x + outer, y: foot },
    { x: centre.x + inner, y: foot },
    ...[...arc(inner)].reverse(),
  ];
}

/** The thing at the left, its plug, the bent cable, and the wall where that is near. */
export function cableFigure(
  { name, plug, cable, radius, needed, room }: BentBehind,
  style: ShowStyle,
): Figure {
  const high = Math.max(0.6 * needed, radius + 3 * cable);
  const isNear = room <= drawnRoom * needed;
  const wall = { left: room, bottom: -high, width: 0.12 * needed, height: 2 * high };
  return {
    title: `Plug and cable of the ${name}`,
    description: `To scale, its socket to the right. ${isNear ? "At the right is what the cable must not touch." : "The wall is farther off than this picture is wide."}`,
    shapes: [
      boxShape("thing", { left: -0.6 * needed, bottom: -high, width: 0.6 * needed, height: 2 * high }),
      boxShape("metal", { left: 0, bottom: -cable, width: plug, height: 2 * cable }),
      { what: "laminate", points: bend({ x: plug, y: -radius - cable / 2 }, radius, radius + cable, -high) },
      ...(isNear ? [boxShape("sheet", wall)] : []),
    ],
    sizes: [
      {
        from: { x: 0, y: -high },
        to: { x: needed, y: -high },
        off: -1.6,
        words: `needs ${Length.show(needed, style)}`,
      },
      ...(isNear
        ? [
            {
              from: { x: 0, y: high },
              to: { x: room, y: high },
              off: 1.6,
              words: `free ${Length.show(room, style)}`,
            },
          ]
        : []),
    ],
  };
}

/** What goes through a hole. */
export interface ThroughHole {
  /** The sides of the hole. */
  readonly hole: { readonly width: Length; readonly height: Length };
  /** Across each thing that goes through. */
  readonly across: readonly Length[];
  /** What they are. */
  readonly what: "cables" | "plugs";
}

const stuffs: Readonly<Record<ThroughHole["what"], FigureStuff>> = { cables: "laminate", plugs: "metal" };

/** A hole with what goes through it, side by side in rows. */
export function holeFigure(section: string, { hole, across, what }: ThroughHole, style: ShowStyle): Figure {
  const { width, height } = hole;
  const rim = 0.35 * Math.max(width, height);
  const size = Math.max(...across);
  const inRow = Math.max(1, Math.floor(width / size));
  const inside = across.map((diameter, i): FigureShape => {
    const at = { x: ((i % inRow) + 0.5) * size, y: (Math.floor(i / inRow) + 0.5) * size };
    return { what: stuffs[what], points: roundOf(at, diameter / 2) };
  });
  return {
    title: `The ${what} of ${section} in its pass-through`,
    description: `To scale, the ${what} side by side at the bottom of the hole.`,
    shapes: [
      boxShape("sheet", { left: -rim, bottom: -rim, width: width + 2 * rim, height: height + 2 * rim }),
      boxShape("opening", { left: 0, bottom: 0, width, height }),
      ...inside,
    ],
    sizes: [
      { from: { x: 0, y: -rim }, to: { x: width, y: -rim }, off: -1.6, words: Length.show(width, style) },
      {
        from: { x: width + rim, y: 0 },
        to: { x: width + rim, y: height },
        off: -1.6,
        words: Length.show(height, style),
      },
    ],
  };
}

function roundOf({ x, y }: Point2, radius: number): readonly Point2[] {
  return Array.from({ length: 20 }, (_, i) => {
    const turn = (i * Math.PI) / 10;
    return { x: x + radius * Math.cos(turn), y: y + radius * Math.sin(turn) };
  });
}
