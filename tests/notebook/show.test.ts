import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Bundle } from "../../lib/notebook/bundle.js";
import { viewMime } from "../../lib/page/index.js";
import { sampleDrawing, sampleFindings, sampleLine } from "../page/sample-views.js";
import { sampleCharts } from "./sample-charts.js";

const kernel = createRequire(import.meta.url)("tslab/dist/jupyter") as {
  lastWriteDisplayData: ((message: { data: Bundle }) => void) | null;
};
const lineChart = sampleCharts["line with slider"] as NonNullable<(typeof sampleCharts)[string]>;
let shown: Bundle[] = [];

let copies = 0;

/** A fresh copy of the compiled module, as in a fresh kernel. */
async function freshShow(): Promise<typeof import("../../lib/notebook/show.js")> {
  copies += 1;
  const file = pathToFileURL(join(import.meta.dirname, "../../lib/dist/notebook/show.js"));
  return await import(/* @vite-ignore */ `${file.href}?copy=${copies}`);
}

beforeEach(() => {
  shown = [];
  kernel.lastWriteDisplayData = ({ data }) => shown.push(data);
  vi.stubEnv("CASEWRIGHT_BOOK", "");
});

afterEach(() => {
  kernel.lastWriteDisplayData = null;
  vi.unstubAllEnvs();
});

test("all that is shown together is one message with every type", async () => {
  const { show } = await freshShow();
  show(sampleLine, "A sentence.", lineChart, [sampleFindings]);
  expect(shown.map((bundle) => Object.keys(bundle).sort())).toEqual([
    [
      "application/vnd.casewright.view+json",
      "application/vnd.vegalite.v5+json",
      "image/svg+xml",
      "text/html",
      "text/plain",
    ],
  ]);
  expect(shown[0]?.[viewMime]).toMatchObject([
    { kind: "worked" },
    { kind: "sentence" },
    { kind: "chart" },
    ...sampleFindings.map(() => ({ kind: "finding" })),
  ]);
  expect(shown[0]?.["application/vnd.vegalite.v5+json"]).toMatchObject({
    title: { text: lineChart.title },
    description: lineChart.description,
  });
});

test("the chart library comes once a session, and a still picture with every chart", async () => {
  const { show } = await freshShow();
  show("No chart yet.");
  show(lineChart);
  show(lineChart);
  const pages = shown.map((bundle) => String(bundle["text/html"]));
  expect(pages.map((page) => page.length > 500_000)).toEqual([false, true, false]);
  expect(pages.map((page) => page.includes("data:image/svg+xml,"))).toEqual([false, true, true]);
});

test("the library's files hide from a page's module loader and do not end their script early", async () => {
  const { show } = await freshShow();
  show(lineChart);
  const page = String(shown[0]?.["text/html"]);
  expect(page).toContain("(function (define, require, module, exports)");
  const scripts = [
    ...page.matchAll(/<script(?: type="application\/json" class="cw-spec")?>([\s\S]*?)<\/script>/g),
  ];
  expect(scripts.length).toBe(3);
  expect(page.match(/<\/script/gi)?.length).toBe(3);
});

test("a drawing is the picture where there is no chart", async () => {
  const { show } = await freshShow();
  show(sampleDrawing);
  expect(shown[0]?.["image/svg+xml"]).toContain('<svg xmlns="http://www.w3.org/2000/svg"');
});

test("for the book only views and text, the still picture within the view", async () => {
  vi.stubEnv("CASEWRIGHT_BOOK", "1");
  const { show } = await freshShow();
  show(lineChart);
  expect(Object.keys(shown[0] ?? {})).toEqual([viewMime, "text/plain"]);
  expect(shown[0]?.[viewMime]).toMatchObject([{ kind: "chart", still: expect.stringMatching(/^<svg/) }]);
});

test("outside a kernel it prints text", async () => {
  kernel.lastWriteDisplayData = null;
  const print = vi.spyOn(console, "log").mockImplementation(() => undefined);
  const { show } = await freshShow();
  show("A sentence.", lineChart);
  expect(print.mock.calls).toEqual([[`A sentence.\n[chart] ${lineChart.title}. ${lineChart.description}`]]);
  print.mockRestore();
});

test("in the builder's own units", async () => {
  const { showIn } = await freshShow();
  const line = {
    ...sampleLine,
    results: [
      { name: "value", symbol: "w", meaning: "sag", show: (style?: object) => JSON.stringify(style) },
    ],
  };
  showIn({ system: "inch" })(line);
  expect(String(shown[0]?.["text/plain"])).toContain('"system":"inch"');
});
