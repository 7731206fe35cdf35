/** A picture as SVG: black lines on white and three tones, so that it reads in print; signs have a shape, a colour and words. */

import type { Point2 } from "../../shape/index.js";
import { colours, verdictColours } from "../colours.js";
import { type Html, html, trusted } from "../html.js";
import { verdictSign } from "../verdict-shapes.js";
import { letter, letterWidth, wordsOff } from "./page-of-picture.js";
import type { PictureArrow, PictureFace, PictureMark, PictureView, Stuff } from "./picture-view.js";
import type { SizeLine } from "./size-lines.js";

const { ink, paper } = colours;

/** Red, green and blue of each stuff in full light. */
const full: Readonly<Record<Stuff, readonly [number, number, number]>> = {
  wood: [250, 240, 222],
  metal: [222, 227, 231],
  glass: [226, 240, 247],
  content: [226, 236, 222],
  fastener: [120, 128, 134],
};

/** What stands already is white to grey; what is added has the deepest tone; what fails is red. */
function fillOf({ look, stuff, light }: PictureFace): string {
  const base =
    look === "there"
      ? [248, 248, 247]
      : look === "added"
        ? [255, 214, 140]
        : look === "fails"
          ? [255, 222, 218]
          : full[stuff];
  const share = 0.72 + 0.28 * light;
  return `#${base
    .map((part) =>
      Math.round(part * share)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}

function strokeOf({ look }: PictureFace): Html {
  if (look === "there") return html` stroke="#7b868e" stroke-width="1.6"`;
  if (look === "added") return html` stroke="${ink}" stroke-width="3.6"`;
  if (look === "fails") return html` stroke="${verdictColours.fails.ink}" stroke-width="3.6"`;
  return html` stroke="${ink}" stroke-width="1.8"`;
}

/** The figure: its words and the picture. */
export function renderPicture(view: PictureView): Html {
  const head = view.title !== "" && html`<span class="cw-figure-title">${view.title}</span>`;
  return html`<figure class="cw-figure cw-picture-figure">${pictureSvg(view)}<figcaption>${head}<span>${view.description}</span></figcaption></figure>`;
}

/** The picture alone. */
export function pictureSvg(view: PictureView): Html {
  const { width, height, title, description, faces, hidden, marks, arrows, sizes } = view;
  return html`<svg xmlns="http://www.w3.org/2000/svg" class="cw-solids" viewBox="0 0 ${width} ${height}" role="img" aria-label="${[title, description].filter(Boolean).join(". ")}" font-family="system-ui, sans-serif" font-size="${letter}" fill="none" stroke-linejoin="round" stroke-linecap="round">${groups(faces).map(renderGroup)}${
    hidden.length > 0 &&
    html`<path d="${trusted(hidden.map((line) => pathOf(line, false)).join(""))}" stroke="${verdictColours.fails.ink}" stroke-width="2.6" stroke-dasharray="12 8"/>`
  }${sizes.map((size) => renderSize(size, width))}${arrows.map(renderArrow)}${marks.map(renderMark)}</svg>`;
}

/** Faces that follow each other and share their look. */
function groups(faces: readonly PictureFace[]): readonly (readonly PictureFace[])[] {
  const all: PictureFace[][] = [];
  for (const face of faces) {
    const last = all.at(-1);
    const [first] = last ?? [];
    if (last && first && first.look === face.look) last.push(face);
    else all.push([face]);
  }
  return all;
}

function renderGroup(faces: readonly PictureFace[]): Html {
  const [first] = faces;
  if (!first) return html``;
  return html`<g${strokeOf(first)}>${faces.map((face) => renderFace(face))}</g>`;
}

function renderFace(face: PictureFace): Html {
  const fill = fillOf(face);
  const holes = face.areas.length > 1 && html` fill-rule="evenodd"`;
  const areas = trusted(face.areas.map((area) => pathOf(area, true)).join(""));
  if (!face.lines) return html`<path fill="${fill}"${holes} d="${areas}"/>`;
  const lines = trusted(face.lines.map((line) => pathOf(line, false)).join(""));
  return html`<path fill="${fill}"${holes} stroke="${fill}" stroke-width=".8" d="${areas}"/><path d="${lines}"/>`;
}

/** Numbers by turns as a path of short steps. */
function pathOf(numbers: readonly number[], closed: boolean): string {
  let [x, y] = [Number(numbers[0]), Number(numbers[1])];
  const steps: number[] = [];
  for (let i = 2; i + 1 < numbers.length; i += 2) {
    const [toX, toY] = [Number(numbers[i]), Number(numbers[i + 1])];
    steps.push(toX - x, toY - y);
    [x, y] = [toX, toY];
  }
  // A sign parts two numbers as well as a space does.
  const path = `M${numbers[0]} ${numbers[1]}l${steps.join(" ").replaceAll(" -", "-")}`;
  return closed ? `${path}z` : path;
}

/** A line with ticks, its words at its middle, on the side away from the picture. */
function renderSize({ from, to, text }: SizeLine, pictureWidth: number): Html {
  const tick = 10;
  const line = `M${num(from.x)} ${num(from.y)}L${num(to.x)} ${num(to.y)}`;
  const ticks = [from, to].map(({ x, y }) => `M${num(x - tick)} ${num(y + tick)}l${2 * tick} ${-2 * tick}`);
  const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
  const { anchor, aside, below } = besideLine(from, to, x < pictureWidth / 2);
  return html`<path d="${trusted([line, ...ticks].join(""))}" stroke="${ink}" stroke-width="2"/>${words(text, x + aside, y + below, anchor)}`;
}

/** Where words stand off a size line: beside a steep one, below a level one, below and outwards of a slanted one. */
function besideLine(from: Point2, to: Point2, atLeft: boolean) {
  const [run, rise] = [Math.abs(to.x - from.x), Math.abs(to.y - from.y)];
  if (rise < 0.05 * run) return { anchor: "middle", aside: 0, below: wordsOff + letter * 0.35 } as const;
  const outwards = atLeft ? -1 : 1;
  return {
    anchor: atLeft ? "end" : "start",
    aside: (outwards * wordsOff) / 1.6,
    below: rise > 2 * run ? letter * 0.35 : wordsOff + letter * 0.3,
  } as const;
}

function renderArrow({ from, to, text }: PictureArrow): Html {
  const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const anchor = from.x <= to.x ? "end" : "start";
  return html`<path d="${trusted(`M${num(from.x)} ${num(from.y)}L${num(to.x)} ${num(to.y)}`)}" stroke="${paper}" stroke-width="14"/><path d="${trusted(`M${num(from.x)} ${num(from.y)}L${num(to.x)} ${num(to.y)}`)}" stroke="${ink}" stroke-width="6"/><path transform="translate(${num(to.x)} ${num(to.y)}) rotate(${num(turn)})" d="M8 0L-22 -14V14z" fill="${ink}" stroke="${paper}" stroke-width="3"/>${
    text !== undefined && words(text, from.x + (anchor === "end" ? -12 : 12), from.y + letter * 0.35, anchor)
  }`;
}

/** The verdict's own shape, with its number in a box beside it. */
function renderMark({ verdict, text, at }: PictureMark): Html {
  const size = 46;
  const wide = text === "" ? 0 : text.length * letter * letterWidth + 18;
  const left = at.x - (size + wide) / 2;
  const { ink: colour } = verdictColours[verdict];
  return html`<g class="cw-mark">${
    text !== "" &&
    html`<rect x="${num(left + size / 2)}" y="${num(at.y - size / 2)}" width="${num(size / 2 + wide)}" height="${size}" rx="4" fill="${paper}" stroke="${colour}" stroke-width="3"/>`
  }<g transform="translate(${num(left)} ${num(at.y - size / 2)}) scale(${num(size / 24)})">${verdictSign(verdict)}</g>${
    text !== "" &&
    html`<text x="${num(left + size + wide / 2 - 2)}" y="${num(at.y + letter * 0.36)}" text-anchor="middle" fill="${colour}" font-weight="700">${text}</text>`
  }</g>`;
}

function words(text: string, x: number, y: number, anchor: "start" | "middle" | "end"): Html {
  return html`<text x="${num(x)}" y="${num(y)}" text-anchor="${anchor}" fill="${ink}" stroke="${paper}" stroke-width="7" paint-order="stroke">${text}</text>`;
}

function num(value: number): string {
  return String(Math.round(value * 10) / 10);
}
