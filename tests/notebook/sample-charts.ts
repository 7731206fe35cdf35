/** One chart of every kind, on made-up figures. */
import {
  heatMap,
  intervalChart,
  lineChart,
  polarChart,
  rankedBars,
  residualPlot,
  scatterChart,
  stackedBars,
} from "../../lib/notebook/chart.js";
import type { ChartView } from "../../lib/page/index.js";

const sag = [3, 4, 5, 6].flatMap((thickness) =>
  [300, 450, 600, 750, 900].map((span) => ({
    thickness,
    span,
    sag: (2e-9 * span ** 4) / thickness ** 3 / 4,
  })),
);

const adhesives = [
  { name: "Contact cement, brushed", part: "adhesive", cost: 9.2, low: 8.1, high: 10.4 },
  { name: "Two-part epoxy", part: "adhesive", cost: 14.75, low: 12, high: 17.9 },
  { name: "Spray contact adhesive in small cans", part: "adhesive", cost: 21.3, low: 19.5, high: 23.6 },
];

/** Every kind of chart by name. */
export const sampleCharts: Readonly<Record<string, ChartView>> = {
  "line with slider": lineChart({
    title: "How far a panel sags as its clear span grows",
    description: "Sag in the middle against clear span; the slider picks the ply thickness.",
    rows: sag,
    x: { field: "span", title: "Clear span", unit: "mm" },
    y: { field: "sag", title: "Sag", unit: "mm" },
    slider: { field: "thickness", title: "Ply thickness", unit: "mm" },
    limits: [{ value: 3, label: "3 mm is the most that looks straight" }],
  }),
  "line with series": lineChart({
    title: "Sag of two thicknesses",
    description: "Sag in the middle against clear span for 4 mm and 6 mm ply.",
    rows: sag
      .filter(({ thickness }) => thickness === 4 || thickness === 6)
      .map((row) => ({ ...row, ply: `${row.thickness} mm ply` })),
    x: { field: "span", title: "Clear span", unit: "mm" },
    y: { field: "sag", title: "Sag", unit: "mm" },
    series: { field: "ply", title: "Thickness" },
  }),
  area: lineChart({
    title: "Cases until the tools are paid",
    description: "Money left after each case built.",
    rows: [1, 2, 3, 4, 5].map((jobs) => ({ jobs, left: 180 * jobs - 400 })),
    x: { field: "jobs", title: "Cases built", whole: true },
    y: { field: "left", title: "Money left", unit: "USD" },
    area: true,
  }),
  polar: polarChart({
    title: "How far a case leans before it tips",
    description: "One slice for each direction; the ring is what is asked for.",
    rows: ["back", "", "right", "", "front", "", "left", ""].map((way, i) => ({
      way,
      lean: 14 + 3 * (i % 3) - i,
    })),
    direction: { field: "way", title: "Towards" },
    value: { field: "lean", title: "Lean", unit: "°" },
    limit: { value: 10, label: "asked for" },
  }),
  "ranked bars": rankedBars({
    title: "What a square metre of glued laminate costs",
    description: "Cost of each adhesive for a square metre, cheapest first.",
    rows: adhesives,
    label: { field: "name", title: "Adhesive" },
    value: { field: "cost", title: "Cost", unit: "USD/m²" },
    chosen: "Two-part epoxy",
    limit: { value: 16, label: "budget" },
  }),
  "stacked bars": stackedBars({
    title: "Where the mass sits",
    description: "Mass of both sections, by what it is made of.",
    rows: [
      { section: "Upper section", part: "ply", mass: 6.2 },
      { section: "Upper section", part: "metal", mass: 4.4 },
      { section: "Lower section", part: "ply", mass: 7.9 },
      { section: "Lower section", part: "metal", mass: 6.1 },
      { section: "Lower section", part: "contents", mass: 18.5 },
    ],
    label: { field: "section", title: "Section" },
    value: { field: "mass", title: "Mass", unit: "kg" },
    part: { field: "part", title: "Made of" },
  }),
  intervals: intervalChart({
    title: "Cost with the scatter of the spread trials",
    description: "Cost of each adhesive with its 95 % range.",
    rows: adhesives,
    label: { field: "name", title: "Adhesive" },
    middle: { field: "cost", title: "Cost", unit: "USD/m²" },
    low: "low",
    high: "high",
  }),
  scatter: scatterChart({
    title: "Price and mass of casters",
    description: "Each caster by its mass and price.",
    rows: [
      { name: "fixed 100", mass: 0.82, price: 11.5, kind: "fixed" },
      { name: "swivel 100", mass: 0.95, price: 14, kind: "swivel" },
      { name: "swivel 125 brake", mass: 1.4, price: 22.5, kind: "swivel" },
    ],
    x: { field: "mass", title: "Mass", unit: "kg" },
    y: { field: "price", title: "Price", unit: "USD" },
    label: { field: "name", title: "Caster" },
    group: { field: "kind", title: "Kind" },
    line: [
      { x: 0.8, y: 11 },
      { x: 1.4, y: 22 },
    ],
  }),
  "heat map": heatMap({
    title: "Sag by span and thickness",
    description: "Sag in millimetres; a cross marks more than 3 mm.",
    rows: sag,
    x: { field: "span", title: "Clear span", unit: "mm" },
    y: { field: "thickness", title: "Ply thickness", unit: "mm" },
    value: { field: "sag", title: "Sag", unit: "mm" },
    limit: 3,
  }),
  residuals: residualPlot({
    title: "What the straight line leaves over",
    description: "Measured deflection less the fitted line, for each load.",
    rows: [10, 20, 30, 40, 50].map((load, i) => ({ load, rest: [0.02, -0.03, 0.01, 0.03, -0.02][i] ?? 0 })),
    x: { field: "load", title: "Load", unit: "N" },
    residual: { field: "rest", title: "Left over", unit: "mm" },
    band: 0.05,
  }),
};
