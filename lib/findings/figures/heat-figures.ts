/** A section cut open, with what gives heat in it and the way of the air from one vent to the other. */
import type { Cooling, PanelPart, PlacedOpening, UprightFace } from "../../design/index.js";
import { TemperatureRise } from "../../inside/index.js";
import { type ReviewInput, sectionHeat } from "../../model/index.js";
import { Power, Temperature } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Box2, Point2 } from "../../shape/index.js";
import { styleOf } from "../amount.js";
import { boxShape, type CasePlane, casePlane, insideOf, type PlaneAxis } from "./case-plane.js";
import type { Figure, FigureArrow, FigureLine, FigureShape } from "./figure.js";
import { seenFrom } from "./standing-figures.js";

/** A vent where the cut goes through it, or behind the cut. */
interface DrawnVent {
  /** What is cut out of the wall, or seen behind the cut. */
  readonly box: Box2;
  /** Its middle. */
  readonly at: Point2;
  /** Out of the case through it: 1 to the right, -1 to the left, 0 where the cut does not go through its wall. */
  readonly out: -1 | 0 | 1;
}

/** The ends of the plane: the walls that the cut goes through. */
const ends: Readonly<Record<PlaneAxis, readonly [UprightFace, UprightFace]>> = {
  x: ["left", "right"],
  y: ["front", "back"],
};

/** A section as it is warmed, cut from the side on which its vents are seen edge on. */
export function heatFigure(input: ReviewInput, section: string, sun?: string): Figure {
  const cooling = input.case.services.cooling.find((one) => one.section === section);
  const axis: PlaneAxis = cooling && /^(left|right)\./.test(cooling.letIn) ? "x" : "y";
  const plane = casePlane(input, axis, [section]);
  const inner = insideOf(input, section, plane);
  const vents = cooling ? ventsOn(input, cooling, plane, inner) : [];
  const loads = loadsIn(input, section, plane);
  const air = airWay(vents, inner);
  return {
    title: `How ${section} gives off its heat`,
    description: `Cut open, seen from the ${seenFrom(plane)}. ${airWords(cooling)}`,
    shapes: [
      boxShape("sheet", plane.box),
      boxShape("inside", inner),
      ...vents.map(({ box, out }) => boxShape(out === 0 ? "hidden" : "opening", box)),
      ...loads,
    ],
    lines: air,
    arrows: [...ventArrows(input, section, vents), ...(sun === undefined ? [] : [sunOn(plane.box, sun)])],
  };
}

function airWords(cooling: Cooling | undefined): string {
  if (!cooling) return "It is shut: its heat goes out through its walls alone.";
  return cooling.fan
    ? "A fan draws air in by the lower vent, past what is warm, and out by the upper."
    : "Cool air comes in by the lower vent, rises past what is warm, and leaves by the upper.";
}

function ventsOn(
  input: ReviewInput,
  { section, letIn, letOut }: Cooling,
  plane: CasePlane,
  inner: Box2,
): readonly DrawnVent[] {
  const vents = [letIn, letOut].map((name) => ventOn(input, section, name, plane, inner));
  return vents.sort((a, b) => a.at.y - b.at.y);
}

/** @throws Refusal for a name that is no opening */
function ventOn(
  { parts }: ReviewInput,
  section: string,
  name: string,
  plane: CasePlane,
  inner: Box2,
): DrawnVent {
  const [face = "", ...rest] = name.split(".");
  const panel = parts.panels.find(({ id }) => id === `${section}.${face}`);
  const opening = panel?.openings.find((one) => one.name === rest.join("."));
  if (!panel || !opening) throw new Refusal(`picture of heat: no opening ${name} in ${section}`);
  const bottom = plane.on(panel.box.low).y + opening.low.y;
  const { box } = plane;
  const end = ends[plane.axis].indexOf(face as UprightFace);
  if (end < 0) return behind(panel, opening, plane, inner);
  const [left, width] =
    end === 0
      ? [box.left, inner.left - box.left]
      : [inner.left + inner.width, box.left + box.width - inner.left - inner.width];
  const at = { x: left + width / 2, y: bottom + opening.height / 2 };
  return { box: { left, bottom, width, height: opening.height }, at, out: end === 0 ? -1 : 1 };
}

/** A vent in a wall that the cut does not go through, or in the top or the bottom. */
function behind({ box, face }: PanelPart, opening: PlacedOpening, plane: CasePlane, inner: Box2): DrawnVent {
  const level = face === "top" || face === "bottom";
  const low = plane.on(box.low).y;
  const bottom = level ? low : low + opening.low.y;
  const height = level ? box.size.z : opening.height;
  const left = inner.left + (inner.width - opening.width) / 2;
  const at = { x: inner.left + inner.width / 2, y: bottom + height / 2 };
  return { box: { left, bottom, width: opening.width, height }, at, out: 0 };
}

/** What draws power, with how much. */
function loadsIn({ parts }: ReviewInput, section: string, plane: CasePlane): readonly FigureShape[] {
  return parts.contents
    .filter(({ content }) => content.section === section && (content.power ?? 0) > 0)
    .map(({ content, box: { low, size } }) => {
      const { x, y } = plane.on(low);
      const words = `${content.name} ${Power.show(content.power ?? Power.si(0), { digits: 3 })}`;
      return boxShape("thing", { left: x, bottom: y, width: size[plane.axis], height: size.z }, words);
    });
}

/** The way of the air: in by the lower vent, up the middle, out by the upper. */
function airWay([low, high]: readonly DrawnVent[], { left, width }: Box2): readonly FigureLine[] {
  if (!low || !high) return [];
  const middle = left + width / 2;
  const ends = Array.from({ length: 9 }, (_, i) => {
    const share = i / 8;
    return { x: middle, y: low.at.y + share * (high.at.y - low.at.y) };
  });
  return [{ what: "air", points: [low.at, ...ends, high.at] }];
}

const [right, left] = [0, Math.PI];

function ventArrows(
  input: ReviewInput,
  section: string,
  [low, high]: readonly DrawnVent[],
): readonly FigureArrow[] {
  if (!low || !high) return [];
  const style = styleOf(input.case);
  const { hottest } = input.case.services;
  const { rise } = sectionHeat(input, section);
  const cool = hottest === undefined ? "air in" : `air in, ${Temperature.show(hottest, style)}`;
  const warm = `${TemperatureRise.show(rise, { ...style, digits: 2 })} warmer`;
  return [
    ...(low.out === 0
      ? []
      : [{ at: low.at, way: low.out < 0 ? right : left, acts: "pushing" as const, share: 0.7, words: cool }]),
    ...(high.out === 0
      ? [{ at: high.at, way: Math.PI / 2, acts: "pulling" as const, share: 0.7, words: warm }]
      : [
          {
            at: high.at,
            way: high.out < 0 ? left : right,
            acts: "pulling" as const,
            share: 0.7,
            words: warm,
          },
        ]),
  ];
}

/** The sun, from above at a slant. */
function sunOn({ left: from, bottom, width, height }: Box2, words: string): FigureArrow {
  return { at: { x: from + 0.3 * width, y: bottom + height }, way: -Math.PI / 3, acts: "pushing", words };
}
