/** One view of every kind, on made-up figures. */

import type { Finding } from "../../lib/findings/finding.js";
import type { WorkedLine } from "../../lib/formula.js";
import {
  answer,
  cautions,
  type DrawingView,
  drawing,
  list,
  type PictureView,
  pictureOf,
  steps,
  tableOf,
} from "../../lib/page/index.js";
import { mm, newton, Ratio } from "../../lib/quantity/index.js";
import { circle, rectangle } from "../../lib/shape/index.js";
import { cite } from "../../lib/source.js";

/** A worked line as a formula returns it. */
export const sampleLine: WorkedLine = {
  id: "sample.shelf.sag",
  title: "Sag of a shelf under an even load",
  equation: "w = \\frac{5 q L^4}{384 E I}",
  inputs: [
    { name: "load", symbol: "q", meaning: "load along the shelf", show: () => "120 N/m" },
    { name: "span", symbol: "L", meaning: "clear span", show: () => "1200 mm" },
    { name: "modulus", symbol: "E", meaning: "modulus of elasticity", show: () => "9000 MPa" },
    { name: "inertia", symbol: "I", meaning: "second moment of area", show: () => "14\u202f580 mm4" },
  ],
  results: [{ name: "value", symbol: "w", meaning: "sag in the middle", show: () => "24.7 mm" }],
  source: [cite("strength-of-materials", "simply supported beam, uniform load")],
  validity: "A straight shelf on two supports, sag below a tenth of the span.",
  warnings: ["the sag is more than a hundredth of the span"],
};

const strength: WorkedLine = {
  ...sampleLine,
  id: "sample.rivet.shear",
  title: "Share of one rivet",
  equation: "F_{1} = \\frac{F}{n} + \\frac{F e r_{max}}{\\sum r_i^2}",
  inputs: [
    { name: "force", symbol: "F", meaning: "pull on the handle", show: () => "250 N" },
    { name: "count", symbol: "n", meaning: "number of rivets", show: () => "4" },
  ],
  results: [{ name: "value", symbol: "F_{1}", meaning: "force on the worst rivet", show: () => "104 N" }],
  warnings: [],
};

const finding: Finding = {
  id: "stiffness.upper.front",
  asks: "stiffness",
  topic: "stiffness",
  subject: "upper front",
  question: "Will the front with the big window stay straight?",
  tier: "feel",
  verdict: "holds",
  answer: "The front sags 1.9 mm under a leaning hand, less than the 3 mm that the eye forgives.",
  demand: { meaning: "sag under a hand", show: () => "1.9 mm" },
  capacity: { meaning: "most that looks straight", show: () => "3 mm" },
  ratio: 0.63,
  interval: {
    low: 0.47,
    high: 0.81,
    shares: [
      { input: "ply thickness", share: 0.7 },
      { input: "bend test", share: 0.3 },
    ],
  },
  because: [sampleLine],
  cautions: ["Glass or acrylic must not carry the panel."],
  assumes: ["A hand leans on its middle."],
  remedies: [],
  source: [cite("common-practice", "a panel looks straight up to 3 mm")],
};

/** A finding of each verdict. */
export const sampleFindings: readonly Finding[] = [
  finding,
  {
    ...finding,
    id: "joints.handles",
    topic: "joints",
    subject: "handles",
    question: "Will the handle rivets hold?",
    verdict: "close",
    answer: "Each handle rivet takes 104 N of the 112 N it can bear.",
    demand: { meaning: "force on the worst rivet", show: () => "104 N" },
    capacity: { meaning: "what one rivet bears", show: () => "112 N" },
    ratio: 0.93,
    interval: { low: 0.78, high: 1.12, shares: [{ input: "pull tests", share: 1 }] },
    because: [strength],
    cautions: [],
  },
  {
    ...finding,
    id: "travel.tip",
    topic: "travel",
    subject: "stacked case",
    question: "Will it stand on a ramp?",
    verdict: "fails",
    answer: "The stacked case tips at 6 degrees; a ramp has 9. Set the casters further out.",
    remedies: [
      {
        words: "Set the casters further out.",
        gives: [{ meaning: "half the base that would do", show: () => "320 mm" }],
      },
    ],
    ratio: 1.9,
    because: [],
    source: [],
    cautions: ["Two people, one on each side, on every ramp."],
  },
  {
    id: "fit-out.lamp",
    asks: "fit-out.lamp",
    topic: "fit-out",
    subject: "lamp",
    question: "Does the lamp stay cool enough?",
    tier: "safety",
    verdict: "unknown",
    answer: "The lamp's power is not in the case file.",
    because: [],
    cautions: [],
    assumes: [],
    remedies: [],
    source: [],
    missing: {
      measure: "power of the lamp",
      how: "Read it on the lamp's label, or put a plug meter in line.",
    },
  },
  {
    id: "fit-out.fan",
    asks: "fit-out.fan",
    topic: "fit-out",
    subject: "fan",
    question: "Does the fan move enough air?",
    tier: "safety",
    verdict: "broken",
    answer: "This could not be computed; please report it.",
    because: [],
    cautions: ["Nothing in front of the vents."],
    assumes: [],
    remedies: [],
    source: [],
    error: "TypeError: <fan> is not a function",
  },
];

/** A panel with a window, a port and its rivets. */
export const sampleDrawing: DrawingView = drawing(
  "Upper front, 760 × 520 mm",
  "The front panel with its window, the sample port and rivets 70 mm apart along the foot.",
  [
    { mark: "rectangle", role: "panel", at: { x: 0, y: 0 }, width: 760, height: 520 },
    { mark: "rectangle", role: "metal", at: { x: 0, y: 0 }, width: 760, height: 30 },
    {
      mark: "rectangle",
      role: "opening",
      at: { x: 60, y: 150 },
      width: 420,
      height: 300,
      radius: 20,
      label: "window",
    },
    { mark: "circle", role: "opening", at: { x: 620, y: 300 }, radius: 60, label: "port" },
    ...[20, 90, 160, 230, 300, 370, 440, 510, 580, 650, 740].map(
      (x) => ({ mark: "circle", role: "attention", at: { x, y: 15 }, radius: 5 }) as const,
    ),
    {
      mark: "polygon",
      role: "waste",
      points: [
        { x: 700, y: 520 },
        { x: 760, y: 520 },
        { x: 760, y: 460 },
      ],
    },
    {
      mark: "line",
      role: "hidden",
      points: [
        { x: 0, y: 480 },
        { x: 760, y: 480 },
      ],
    },
    { mark: "dimension", from: { x: 0, y: 520 }, to: { x: 760, y: 520 }, offset: 45, text: "760 mm" },
    { mark: "dimension", from: { x: 0, y: 0 }, to: { x: 0, y: 520 }, offset: 45, text: "520 mm" },
    { mark: "dimension", from: { x: 60, y: 150 }, to: { x: 480, y: 150 }, offset: -35, text: "420 mm" },
    { mark: "arrow", from: { x: 560, y: 90 }, to: { x: 720, y: 90 }, text: "grain" },
    { mark: "text", at: { x: 20, y: 490 }, text: "edge extrusion behind" },
  ],
);

/** Rivets as a table. */
export const sampleTable = tableOf(
  [
    { part: "handle", rivets: 4, pull: newton(250), pitch: mm(60), share: Ratio.si(0.93) },
    { part: "caster plate, front left", rivets: 8, pull: newton(410), pitch: mm(45), share: Ratio.si(0.55) },
  ],
  [
    { heading: "Part", cell: ({ part }) => part },
    { heading: "Rivets", cell: ({ rivets }) => rivets },
    { heading: "Pull", cell: ({ pull }) => `${pull} N` },
    { heading: "Share of the limit", cell: ({ share }) => `${Math.round(100 * share)} %` },
    { heading: "Where it was measured", cell: () => "on the bench, spring scale" },
  ],
  "Rivets of the handles and casters",
);

/** Everything that is shown without a chart. */
export const sampleThings = [
  answer("The case holds: 4 of 4 questions answered, none fails.", "holds"),
  "A sentence in between.",
  sampleTable,
  list(["drill 3.3 mm", "rivet 3.2 × 10 mm"], "Tools"),
  steps(["Cut the panels.", "Glue the laminate.", "Rivet the edges."], "In this order"),
  cautions("Wear goggles when drilling.", "Contact cement burns: open the doors, no flame."),
  sampleDrawing,
  ...sampleFindings,
] as const;

/** A picture of one box with everything that a picture can have. */
export const samplePicture: PictureView = pictureOf(
  [
    {
      ...{ key: "a", part: "a", name: "a", section: "s", kind: "sheet", joins: [] },
      outline: rectangle({ left: 0, bottom: 0, width: 1, height: 1 }),
      holes: [circle({ x: 0.5, y: 0.5 }, 0.2)],
      place: { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0] },
      depth: 1,
    },
  ],
  {
    title: "A box",
    description: "One box.",
    sizes: [{ along: "z", text: "1 m" }],
    arrows: [{ from: [0, 0, 2], to: [0, 0, 1], text: "push" }],
    marks: [{ part: "a", verdict: "fails", text: "1" }],
  },
);
