/** A drawing as SVG, to scale, readable on its own outside a page. */

import { type Point2, pathData } from "../shape/index.js";
import type { ArrowMark, DimensionMark, DrawingMark, DrawingView, ShapeRole, TextMark } from "./drawing.js";
import { dimensionLine, type Frame, frameOf } from "./drawing-frame.js";
import { type Html, html, trusted } from "./html.js";

interface Look {
  /** Colour inside. */
  readonly fill: string;
  /** Colour of its line. */
  readonly stroke: string;
  /** Dashes and gaps of its line; none when absent. */
  readonly dash?: string;
  /** Width of its line, px; 1.5 when absent. */
  readonly width?: number;
}

const looks: Readonly<Record<ShapeRole, Look>> = {
  panel: { fill: "#f1e6d2", stroke: "#1d2429" },
  opening: { fill: "#ffffff", stroke: "#1d2429" },
  hole: { fill: "#ffffff", stroke: "#1d2429" },
  hardware: { fill: "#d9e4ec", stroke: "#1f5f8b" },
  metal: { fill: "#c9cfd4", stroke: "#1d2429" },
  waste: { fill: "#eceeef", stroke: "#5b6770", dash: "6 4" },
  hidden: { fill: "none", stroke: "#5b6770", dash: "6 4" },
  attention: { fill: "#fbeae8", stroke: "#a3211b" },
  datum: { fill: "#1d2429", stroke: "#1d2429" },
  thin: { fill: "none", stroke: "#5b6770", width: 0.75 },
  laminate: { fill: "#6f7b84", stroke: "#1d2429" },
  foam: { fill: "#e4ecdf", stroke: "#3d5b33", dash: "2 2" },
  support: { fill: "none", stroke: "#1d2429", width: 4.5 },
  strap: { fill: "none", stroke: "#1f5f8b", width: 2.5 },
};

/** The figure: title, description, drawing. */
export function renderDrawing(view: DrawingView): Html {
  return html`<figure class="cw-figure"><figcaption><span class="cw-figure-title">${view.title}</span><span>${view.description}</span></figcaption>
<div class="cw-drawing" tabindex="0" role="group" aria-label="drawing: ${view.title}">${sized(view)}</div></figure>`;
}

/** Letters of 11 to 18 px: a drawing too wide for that scrolls in its box, a small one does not swell. */
function sized(view: DrawingView): Html {
  const { left, right, letter } = frameOf(view);
  const letters = (right - left) / letter;
  if (view.printedWidth !== undefined)
    return html`<div class="cw-drawing-printed" style="width: ${view.printedWidth}mm; min-width: ${view.printedWidth}mm">${styledSvg(view)}</div>`;
  return html`<div style="min-width: ${Math.round(Math.min(11 * letters, 1000))}px; max-width: ${Math.round(18 * letters)}px">${styledSvg(view)}</div>`;
}

const thin: Html = html` stroke="#1d2429" stroke-width="1" vector-effect="non-scaling-stroke"`;
const bold: Html = html` stroke="#1d2429" stroke-width="2.75" vector-effect="non-scaling-stroke"`;
const ofWords: Html = html` fill="#1d2429" stroke="#fff"`;
const ofAll: Html = html` font-family="system-ui, sans-serif" fill="none" stroke-linejoin="round" text-anchor="middle" paint-order="stroke"`;
/** What a file of its own needs and a page has. */
const nameSpace: Html = html` xmlns="http://www.w3.org/2000/svg"`;

/** Looks under short names, which a page defines once: each drawing says them again and again. */
const namedLooks: readonly (readonly [name: string, attributes: string])[] = [
  ...(Object.keys(looks) as ShapeRole[]).flatMap((role, i) =>
    [false, true].map((line) => [`cw-d${line ? "l" : "s"}${i}`, String(paint(role, line))] as const),
  ),
  ["cw-dt", String(thin)],
  ["cw-df", String(bold)],
  ["cw-dw", String(ofWords)],
  ["cw-dv", String(ofAll)],
];

/** The drawing in a page that has `drawingStyles`. */
function styledSvg(view: DrawingView): Html {
  const named = namedLooks.reduce(
    (svg, [name, attributes]) => svg.replaceAll(attributes, ` class="${name}"`),
    String(drawingSvg(view)).replace(String(nameSpace), ""),
  );
  return trusted(named);
}

/** The looks of drawings, for the style of a page. */
export const drawingStyles: string = namedLooks
  .map(([name, attributes]) => {
    const rules = attributes.replace(/ ([a-z-]+)="([^"]*)"/g, "$1: $2; ");
    return `.cw .${name} { ${rules.trim()} }`;
  })
  .join("\n");

/** The drawing alone. */
export function drawingSvg(view: DrawingView): Html {
  const { title, description, marks } = view;
  const frame = frameOf(view);
  const [width, height] = [frame.right - frame.left, frame.top - frame.bottom];
  return html`<svg${nameSpace} viewBox="${short(frame.left)} ${short(-frame.top)} ${short(width)} ${short(height)}" role="img" aria-label="${title}. ${description}"${ofAll} font-size="${short(frame.letter)}" stroke-width="${short(frame.letter / 5)}">${runsOf(marks).map((run) => renderRun(run, frame))}</svg>`;
}

/** Marks in order; lines, or circles without words, of one role that follow each other together. */
function runsOf(marks: readonly DrawingMark[]): readonly (readonly DrawingMark[])[] {
  const runs: DrawingMark[][] = [];
  for (const mark of marks) {
    const last = runs.at(-1);
    const [first] = last ?? [];
    const shared = sharedPaint(mark);
    if (last && first && shared !== undefined && sharedPaint(first) === shared) last.push(mark);
    else runs.push([mark]);
  }
  return runs;
}

/** Marks of the same words here can be one path. */
function sharedPaint(mark: DrawingMark): string | undefined {
  if (mark.mark === "line") return `line ${mark.role}`;
  return mark.mark === "circle" && mark.label === undefined ? `circle ${mark.role}` : undefined;
}

function renderRun(run: readonly DrawingMark[], frame: Frame): readonly Html[] {
  const [first] = run;
  if (run.length === 1 || (first?.mark !== "line" && first?.mark !== "circle"))
    return run.map((mark) => renderMark(mark, frame));
  return [html`<path d="${run.map(pathOfMark).join("")}"${paint(first.role, first.mark === "line")}/>`];
}

function pathOfMark(mark: DrawingMark): string {
  if (mark.mark === "line") return `M${mark.points.map(place).join("L")}`;
  if (mark.mark !== "circle") return "";
  // All the way round from its top but for the least step, which closing it goes.
  const [radius, top] = [short(mark.radius), { x: mark.at.x, y: mark.at.y + mark.radius }];
  return `M${place(top)}a${radius} ${radius} 0 1 1-.01 0z`;
}

function renderMark(mark: DrawingMark, frame: Frame): Html {
  switch (mark.mark) {
    case "rectangle":
      return html`<rect x="${short(mark.at.x)}" y="${short(-mark.at.y - mark.height)}" width="${short(mark.width)}" height="${short(mark.height)}"${mark.radius !== undefined && html` rx="${short(mark.radius)}"`}${paint(mark.role)}/>${label(
        mark.label,
        { x: mark.at.x + mark.width / 2, y: mark.at.y + mark.height / 2 },
        frame,
      )}`;
    case "circle":
      return html`<circle cx="${short(mark.at.x)}" cy="${short(-mark.at.y)}" r="${short(mark.radius)}"${paint(mark.role)}/>${label(mark.label, mark.at, frame)}`;
    case "polygon":
      return html`<polygon points="${path(mark.points)}"${paint(mark.role)}/>${label(mark.label, middle(mark.points), frame)}`;
    case "shape":
      return html`<path d="${pathData(mark.shape, short)}"${paint(mark.role)}/>`;
    case "line":
      return html`<polyline points="${path(mark.points)}"${paint(mark.role, true)}/>`;
    case "dimension":
      return renderDimension(mark, frame);
    case "text":
      return renderText(mark);
    case "arrow":
      return html`${arrow(mark, frame)}${mark.text !== undefined && alongside(mark.text, mark.from, mark.to, frame)}`;
  }
}

function paint(role: ShapeRole, line = false): Html {
  const { fill, stroke, dash, width = 1.5 } = looks[role];
  return html` fill="${line ? "none" : fill}" stroke="${stroke}" stroke-width="${width}" vector-effect="non-scaling-stroke"${
    dash && html` stroke-dasharray="${dash}"`
  }`;
}

function renderText({ text, at, anchor = "start", turn }: TextMark): Html {
  if (turn === undefined) return words(text, at, anchor);
  return html`<g transform="translate(${place(at)}) rotate(${-turn})">${words(text, { x: 0, y: 0 }, anchor)}</g>`;
}

/** Two thin lines out from the points, a line with a tick at each end, and the length along it. */
function renderDimension(mark: DimensionMark, frame: Frame): Html {
  const [start, stop] = dimensionLine(mark);
  const tick = frame.letter * 0.35;
  const ticks = [start, stop].map(
    ({ x, y }) => `M${short(x - tick)} ${short(-y + tick)}L${short(x + tick)} ${short(-y - tick)}`,
  );
  const legs = [
    [mark.from, start],
    [mark.to, stop],
    [start, stop],
  ].map(([a, b]) => `M${place(a as Point2)}L${place(b as Point2)}`);
  return html`<path d="${[...legs, ...ticks].join("")}"${thin}/>${mark.text !== "" && alongside(mark.text, start, stop, frame)}`;
}

/** Words along a line, above it or at its left, never upside down. */
function alongside(text: string, start: Point2, stop: Point2, frame: Frame): Html {
  const turn = (-Math.atan2(stop.y - start.y, stop.x - start.x) * 180) / Math.PI;
  const upright = turn >= 89.99 ? turn - 180 : turn < -90.01 ? turn + 180 : turn;
  const at = between(start, stop, 0.5);
  return html`<g transform="translate(${place(at)}) rotate(${short(upright)})">${words(text, { x: 0, y: 0.35 * frame.letter }, "middle")}</g>`;
}

function arrow({ from, to, isForce }: ArrowMark, frame: Frame): Html {
  const turn = (-Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const size = frame.letter * (isForce ? 0.9 : 0.6);
  const line = isForce ? bold : thin;
  // A bold line ends inside its head, so that the head stays sharp.
  const end = isForce
    ? between(to, from, (0.7 * size) / (Math.hypot(to.x - from.x, to.y - from.y) || 1))
    : to;
  return html`<path d="M${place(from)}L${place(end)}"${line}/><path transform="translate(${place(to)}) rotate(${short(turn)})" d="M0 0L${short(-size)} ${short(-size / 2)}V${short(size / 2)}z" fill="#1d2429"/>`;
}

function label(text: string | undefined, at: Point2, frame: Frame): Html | undefined {
  return text === undefined ? undefined : words(text, { x: at.x, y: at.y - 0.35 * frame.letter }, "middle");
}

/** Letters with a light edge, so that lines behind them do not disturb. */
function words(text: string, at: Point2, anchor: "start" | "middle" | "end"): Html {
  return html`<text x="${short(at.x)}" y="${short(-at.y)}"${anchor !== "middle" && html` text-anchor="${anchor}"`}${ofWords}>${text}</text>`;
}

function between(a: Point2, b: Point2, share: number): Point2 {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

function middle(points: readonly Point2[]): Point2 {
  const sum = points.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

function path(points: readonly Point2[]): string {
  return points.map(place).join(" ");
}

function place({ x, y }: Point2): string {
  return `${short(x)} ${short(-y)}`;
}

/** Hundredths are finer than any screen needs. */
function short(value: number): string {
  return String(Math.round(value * 100) / 100);
}
