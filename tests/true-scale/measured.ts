/** Drawings read back by programs that are not ours: a browser for SVG, poppler for PDF, a parser of DXF. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import DxfParser, { type ICircleEntity, type IPolylineEntity } from "dxf-parser";
import type { Browser } from "playwright-core";

/** A closed path or a line by the box around it, mm, from the lower left corner of the page, y up. */
export interface Measured {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  /** Name of its layer, where the file has names. */
  readonly layer?: string;
  /** Whether it is drawn in a broken line. */
  readonly dashed?: boolean;
}

function runs(program: string): boolean {
  try {
    execFileSync(program, ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** Whether tests that read PDF files are to be skipped; never under CI. */
export const noPoppler: boolean = !runs("pdftocairo") && process.env.CI !== "true";
if (noPoppler)
  console.warn("SKIPPED: pdftocairo (Debian's poppler-utils) is not installed, so no PDF is read back");

/** What the browser runs: the boxes of all paths and circles of every drawing on its page, as they stand on the screen. */
const measureInPage = `[...document.querySelectorAll("div > svg")].map((svg) => {
  const px = 25.4 / 96;
  const { left, bottom } = svg.getBoundingClientRect();
  const drawn = [...svg.querySelectorAll("path, circle")];
  return drawn
    .filter((one) => !one.closest("defs, symbol, clipPath"))
    .map((one) => {
      const box = one.getBBox();
      const to = one.getScreenCTM();
      const corners = [[box.x, box.y], [box.x + box.width, box.y + box.height]].map(
        ([x, y]) => new DOMPoint(x, y).matrixTransform(to),
      );
      const xs = corners.map(({ x }) => (x - left) * px);
      const ys = corners.map(({ y }) => (bottom - y) * px);
      return {
        left: Math.min(...xs),
        bottom: Math.min(...ys),
        width: Math.max(...xs) - Math.min(...xs),
        height: Math.max(...ys) - Math.min(...ys),
        layer: one.closest("g[id]")?.id ?? "",
        dashed: getComputedStyle(one).strokeDasharray !== "none",
      };
    });
})`;

/**
 * Every path and circle of SVG documents as the browser measures them, in millimetres of a screen of 96 px an inch.
 *
 * @returns the marks of each document
 */
export async function measuredSvgs(
  texts: readonly string[],
  browser: Browser,
): Promise<readonly (readonly Measured[])[]> {
  const page = await browser.newPage();
  try {
    const drawings = texts.map((text) => `<div>${text.replace(/<\?xml[^>]*>/, "")}</div>`);
    await page.setContent(`<body style="margin:0">${drawings.join("")}</body>`);
    return (await page.evaluate(measureInPage)) as readonly (readonly Measured[])[];
  } finally {
    await page.close();
  }
}

/** The same of pages of PDF files, each as a file and the number of its page, turned into SVG by poppler. */
export async function measuredPdfs(
  pages: readonly (readonly [bytes: Uint8Array, page: number])[],
  browser: Browser,
): Promise<readonly (readonly Measured[])[]> {
  const texts = pages.map(([bytes, page]) =>
    poppler("pdftocairo", bytes, ["-svg", "-f", String(page), "-l", String(page)]).toString("utf8"),
  );
  // Letters are shapes there, defined far above where they are used: only lines are measured.
  return measuredSvgs(
    texts.map((text) => text.replace(/<defs>[\s\S]*?<\/defs>/, "").replace(/<use [^>]*>/g, "")),
    browser,
  );
}

/** Dots a millimetre in what `longestLine` looks at. */
const dots = 20;

/** The longest unbroken black line in the lowest rows of the first page of a PDF file, mm, as poppler prints it. */
export function longestLine(bytes: Uint8Array, rows: number): number {
  const image = poppler(
    "pdftoppm",
    bytes,
    ["-gray", "-r", String(dots * 25.4), "-l", "1", "-singlefile"],
    ".pgm",
  );
  const [head = "", width = "", height = ""] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(image.toString("latin1", 0, 40)) ?? [];
  const pixels = image.subarray(head.length);
  let longest = 0;
  for (let y = Number(height) - rows * dots; y < Number(height); y++)
    for (let x = 0, run = 0; x < Number(width); x++) {
      run = (pixels[y * Number(width) + x] ?? 255) < 128 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
  return longest / dots;
}

/** The words of a PDF file. */
export function wordsOfPdf(bytes: Uint8Array): string {
  return poppler("pdftotext", bytes, ["-layout"]).toString("utf8");
}

function poppler(program: string, bytes: Uint8Array, options: readonly string[], ending = ""): Buffer {
  const folder = mkdtempSync(join(tmpdir(), "casewright-pdf-"));
  try {
    const [file, out] = [join(folder, "in.pdf"), join(folder, "out")];
    writeFileSync(file, bytes);
    execFileSync(program, [...options, file, out], { stdio: "ignore" });
    return readFileSync(`${out}${ending}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Its types take the module for what it exports by name. */
const Parser = DxfParser as unknown as typeof DxfParser.default;

/** Every closed path and circle of a DXF file, arcs of polylines included. */
export function measuredDxf(text: string): readonly Measured[] {
  const entities = new Parser().parseSync(text)?.entities ?? [];
  return entities.flatMap((entity): Measured[] => {
    if (entity.type === "CIRCLE") {
      const { center, radius, layer } = entity as ICircleEntity;
      return [
        { ...around([center.x - radius, center.x + radius], [center.y - radius, center.y + radius]), layer },
      ];
    }
    if (entity.type !== "POLYLINE") return [];
    const { vertices, layer, shape } = entity as IPolylineEntity;
    const points = vertices.flatMap((vertex, i) => {
      const next = vertices[(i + 1) % vertices.length] ?? vertex;
      const last = !shape && i === vertices.length - 1;
      return last ? [vertex] : alongBulge(vertex, next, vertex.bulge ?? 0);
    });
    return [
      {
        ...around(
          points.map(({ x }) => x),
          points.map(({ y }) => y),
        ),
        layer,
      },
    ];
  });
}

interface Flat {
  readonly x: number;
  readonly y: number;
}

/** Points along a side whose bulge is tan(sweep / 4), by the sagitta of the group code 42 of the format. */
function alongBulge(from: Flat, to: Flat, bulge: number): readonly Flat[] {
  if (bulge === 0) return [from];
  const sweep = 4 * Math.atan(bulge);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const radius = chord / (2 * Math.sin(Math.abs(sweep) / 2));
  const away = radius * Math.cos(sweep / 2) * Math.sign(bulge);
  const [dx, dy] = [(to.x - from.x) / chord, (to.y - from.y) / chord];
  const centre = { x: (from.x + to.x) / 2 - dy * away, y: (from.y + to.y) / 2 + dx * away };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return Array.from({ length: 64 }, (_, i) => ({
    x: centre.x + radius * Math.cos(start + (sweep * i) / 64),
    y: centre.y + radius * Math.sin(start + (sweep * i) / 64),
  }));
}

function around(xs: readonly number[], ys: readonly number[]): Measured {
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
}
