/** Words put beside what they name, so that no two lie over each other, and no line runs through them. */
import { type Box2, type Point2, turnOf } from "../shape/index.js";
import type { DrawingMark, TextMark } from "./drawing.js";

/** Mean width of a letter as a share of its height; a little more than a common sans serif takes. */
const letterWidth = 0.6;

/** From line to line of one label, in letters. */
const lineHeight = 1.15;

/** Words that look for a place. */
export interface WantedLabel {
  /** What is written, a line break between its lines. */
  readonly text: string;
  /** Where its middle would best be, mm. */
  readonly at: Point2;
  /** What it names, mm, where that is elsewhere. */
  readonly names?: Point2;
  /** Places of a line that it names, mm: it stands beside any of them, with a short line to it. */
  readonly along?: readonly Point2[];
}

/** What no label may lie on, mm. */
export interface Taken {
  /** Room of other words. */
  readonly boxes: readonly Box2[];
  /** Lines from one point to another. */
  readonly lines?: readonly (readonly [Point2, Point2])[];
  /** How wide all of it may be with its labels, mm, where there is room in that. */
  readonly width?: number;
}

/** The room that a text of a drawing takes, mm. */
export function textBox({ at, text, anchor = "start", turn }: TextMark, letter: number): Box2 {
  const long = text.length * letterWidth * letter;
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  return turn === 90
    ? { left: at.x - 0.85 * letter, bottom: at.y - back, width: 1.1 * letter, height: long }
    : { left: at.x - back, bottom: at.y - 0.25 * letter, width: long, height: 1.1 * letter };
}

/** Whether two boxes share room. */
export function boxesMeet(one: Box2, other: Box2): boolean {
  return (
    one.left < other.left + other.width &&
    other.left < one.left + one.width &&
    one.bottom < other.bottom + other.height &&
    other.bottom < one.bottom + one.height
  );
}

/** Whether any of a line lies in a box. */
export function lineMeetsBox([from, to]: readonly [Point2, Point2], box: Box2): boolean {
  const [left, right, bottom, top] = [box.left, box.left + box.width, box.bottom, box.bottom + box.height];
  const [wayX, wayY] = [to.x - from.x, to.y - from.y];
  if (wayX === 0 && (from.x < left || from.x > right)) return false;
  if (wayY === 0 && (from.y < bottom || from.y > top)) return false;
  let [first, last] = [0, 1];
  if (wayX !== 0) {
    const [a, b] = [(left - from.x) / wayX, (right - from.x) / wayX];
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }
  if (wayY !== 0) {
    const [a, b] = [(bottom - from.y) / wayY, (top - from.y) / wayY];
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }
  return first <= last;
}

/** Whether two lines cross. */
function linesCross([a, b]: readonly [Point2, Point2], [c, d]: readonly [Point2, Point2]): boolean {
  return turnOf(a, b, c) * turnOf(a, b, d) < 0 && turnOf(c, d, a) * turnOf(c, d, b) < 0;
}

/** How many rings of places are tried round the best one. */
const rings = 60;

/**
 * Marks of the labels, each at the free place nearest to the one it wants, with a thin line back where that is far.
 *
 * @param taken what no label may lie on
 */
export function placedLabels(
  wanted: readonly WantedLabel[],
  taken: Taken,
  letter: number,
): readonly DrawingMark[] {
  const boxes = [...taken.boxes];
  const lines = [...(taken.lines ?? [])];
  const leads: (readonly [Point2, Point2])[] = [];
  const ends = [
    ...boxes.flatMap(({ left, width }) => [left, left + width]),
    ...lines.flat().map(({ x }) => x),
  ];
  let [low, high] = [Math.min(...ends), Math.max(...ends)];
  return wanted.flatMap((label): DrawingMark[] => {
    const { text } = label;
    const rows = text.split("\n");
    const isFree = (place: Point2): boolean => {
      const box = labelBox(rows, place, letter);
      return (
        boxes.every((other) => !boxesMeet(box, other)) && lines.every((line) => !lineMeetsBox(line, box))
      );
    };
    const isLedTo = (place: Point2, names: Point2): boolean => {
      const box = labelBox(rows, place, letter);
      const back: readonly [Point2, Point2] = [names, edgeTowards(box, names)];
      return (
        !isFar(box, names, letter) ||
        (boxes.every((other) => !lineMeetsBox(back, other)) &&
          leads.every((other) => !linesCross(back, other)))
      );
    };
    const isNarrow = (place: Point2): boolean => {
      const { left, width } = labelBox(rows, place, letter);
      return Math.max(high, left + width) - Math.min(low, left) <= (taken.width ?? Number.POSITIVE_INFINITY);
    };
    const isGood = (place: Point2): boolean => isNarrow(place) && isFree(place);
    const { place, names } = placeFor(label, isGood, isLedTo, letter) ??
      placeFor(label, isFree, isLedTo, letter) ?? { place: label.at, names: label.names ?? label.at };
    const words = linesOf(rows, place, letter);
    const box = labelBox(rows, place, letter);
    boxes.push(box);
    [low, high] = [Math.min(low, box.left), Math.max(high, box.left + box.width)];
    if (!label.along && !isFar(box, names, letter)) return [...words];
    const back = [names, edgeTowards(box, names)] as const;
    lines.push(back);
    leads.push(back);
    const dot: readonly DrawingMark[] = label.along
      ? [{ mark: "circle", role: "datum", at: names, radius: 0.16 * letter }]
      : [];
    return [{ mark: "line", role: "thin", points: back }, ...dot, ...words];
  });
}

/** Where a label stands, and the place that it names. */
interface LabelPlace {
  /** Its middle. */
  readonly place: Point2;
  /** What it names. */
  readonly names: Point2;
}

/** Rings round each place of a line in which its label is looked for. */
const ringsAlong = 3;

/** So many places of a line are tried for the shortest way to its label. */
const mostAlong = 20;

function lengthOf({ place, names }: LabelPlace): number {
  return Math.hypot(place.x - names.x, place.y - names.y);
}

/** The nearest free place; one to which a line can lead, where there is one; undefined without a free one. */
function placeFor(
  { at, names = at, along = [] }: WantedLabel,
  isFree: (place: Point2) => boolean,
  isLedTo: (place: Point2, names: Point2) => boolean,
  letter: number,
): LabelPlace | undefined {
  for (const one of along) {
    const place = firstRound(one, letter, ringsAlong, isFree);
    if (place) return { place, names: one };
  }
  const step = Math.max(1, Math.round(along.length / mostAlong));
  const led = along.flatMap((one, i): LabelPlace[] => {
    const place = i % step === 0 && firstRound(one, letter, rings, (p) => isFree(p) && isLedTo(p, one));
    return place ? [{ place, names: one }] : [];
  });
  const [first, ...others] = led;
  if (first) return others.reduce((best, one) => (lengthOf(one) < lengthOf(best) ? one : best), first);
  const place =
    firstRound(at, letter, rings, (one) => isFree(one) && isLedTo(one, names)) ??
    firstRound(at, letter, rings, isFree);
  return place && { place, names };
}

/** Whether a label stands so far from what it names that a line must lead there. */
function isFar(box: Box2, names: Point2, letter: number): boolean {
  const near = edgeTowards(box, names);
  return Math.hypot(near.x - names.x, near.y - names.y) > letter;
}

/** Where the first of some lines of a label stands, its middle given. */
function topOf(lines: readonly string[], y: number, letter: number): number {
  return y + ((lines.length - 1) / 2) * lineHeight * letter - 0.35 * letter;
}

/** The lines of a label round its middle. */
function linesOf(lines: readonly string[], { x, y }: Point2, letter: number): readonly TextMark[] {
  const top = topOf(lines, y, letter);
  return lines.map((line, i) => ({
    mark: "text",
    at: { x, y: top - i * lineHeight * letter },
    text: line,
    anchor: "middle",
  }));
}

/** Clear room round a label, in letters. */
const clear = 0.2;

/** The room of the lines of a label round its middle, and clear room about it. It is asked at very many places. */
function labelBox(lines: readonly string[], { x, y }: Point2, letter: number): Box2 {
  const room = clear * letter;
  const top = topOf(lines, y, letter);
  let [left, right, bottom, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < lines.length; i++) {
    const long = (lines[i] ?? "").length * letterWidth * letter;
    const from = x - long / 2;
    const low = top - i * lineHeight * letter - 0.25 * letter;
    left = Math.min(left, from);
    right = Math.max(right, from + long);
    bottom = Math.min(bottom, low);
    high = Math.max(high, low + 1.1 * letter);
  }
  left -= room;
  bottom -= room;
  return { left, bottom, width: right + room - left, height: high + room - bottom };
}

/** The place of a box that is nearest to a point. */
function edgeTowards({ left, bottom, width, height }: Box2, { x, y }: Point2): Point2 {
  const within = (at: number, low: number, high: number): number => Math.min(high, Math.max(low, at));
  return { x: within(x, left, left + width), y: within(y, bottom, bottom + height) };
}

/** Eight directions, one after another round a place. */
const directions = Array.from({ length: 8 }, (_, i) => {
  const angle = (Math.PI / 4) * i;
  return { x: Math.cos(angle), y: Math.sin(angle) };
});

/** The first that will do of a place itself and eight places on each ring round it. */
function firstRound(
  { x, y }: Point2,
  letter: number,
  count: number,
  willDo: (place: Point2) => boolean,
): Point2 | undefined {
  if (willDo({ x, y })) return { x, y };
  for (let ring = 1; ring <= count; ring++) {
    const radius = 0.6 * letter * ring;
    for (const way of directions) {
      const place = { x: x + radius * way.x, y: y + radius * way.y };
      if (willDo(place)) return place;
    }
  }
  return undefined;
}
