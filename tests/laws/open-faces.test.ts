/** Cases with a face left open: parts, edges, box and words; sums are done by hand. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { massItems, panelSag, sheetModuli } from "../../lib/model/index.js";
import { Length, Pressure } from "../../lib/quantity/index.js";
import { caseWith } from "../design/case-with.js";
import { designOf, problemsOf } from "../design/small-job.js";

const handle = {
  item: "handle",
  duty: "lift",
  places: [{ on: "box.right", from: "bottom-left", across: 200, up: 250 }],
};

/** The small job with some faces left open, and nothing on them. */
function openAt(...open: readonly string[]): Record<string, string> {
  const shut = { left: { openings: { door: null } } };
  const panels = { ...shut, ...Object.fromEntries(open.map((face) => [face, "none"])) };
  return caseWith({
    sections: { box: { panels } },
    hardware: { handle: open.includes("back") ? handle : {} },
  });
}

const framed = designOf(openAt("front"));

describe("a box without its front", () => {
  const { parts } = framed;

  test("is as deep as its inside and its back", () => {
    // Inside 600 x 400 x 500; ply 10 and laminate 1 on each face that is there.
    const { x, y, z } = parts.sections[0]?.outside.size ?? { x: 0, y: 0, z: 0 };
    expect([x, y, z].map((size) => size * 1000)).toEqual(
      [622, 411, 522].map((size) => expect.closeTo(size, 6)),
    );
    expect(parts.sections[0]?.open).toEqual(["front"]);
  });

  test("has five panels, which stop at the open face, and eight edges", () => {
    const sizes = parts.panels
      .filter(({ role }) => role === "face")
      .map(({ face, width, height }) => [
        face,
        ...[width, height].map((size) => Math.round(size * 1e6) / 1e3),
      ]);
    expect(sizes).toEqual([
      ["back", 622, 500],
      ["left", 400, 500],
      ["right", 400, 500],
      ["top", 622, 411],
      ["bottom", 622, 411],
    ]);
    expect(parts.bars).toHaveLength(8);
    expect(parts.bars.filter(({ edge }) => edge.includes("front"))).toEqual([]);
  });

  test("takes metal on the four corners where three panels meet", () => {
    expect(parts.hardware.filter(({ stock }) => stock.kind === "corner")).toHaveLength(4);
  });

  test("weighs what its panels and its shelf weigh", () => {
    // 2 x 0.622 x 0.411 + 0.622 x 0.5 + 2 x 0.4 x 0.5 + 0.6 x 0.3 m2 less two cut-outs of 120 x 80 mm; 10 mm of 700 kg/m3 are 7 kg/m2.
    const area = 0.511284 + 0.311 + 0.4 + 0.18 - 2 * 0.0096;
    const sheets = massItems(framed).filter(({ group }) => group === "panels");
    expect(sheets.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(7 * area, 9);
  });

  test("has sides that sag more at their free rim than those of the shut box", () => {
    const sag = (open: readonly string[]): number => {
      const { parts: found, measurements } = designOf(openAt(...open));
      const panel = found.panels.find(({ id }) => id === "box.right");
      if (!panel) throw new Error("no right");
      const moduli = sheetModuli(panel.sheet, measurements);
      return panelSag({ panel, moduli, pressure: Pressure.si(1000), edges: "hinged" }).sag;
    };
    expect(sag(["front"])).toBeGreaterThan(1.5 * sag([]));
    expect(sag(["front"]) / sag(["back"])).toBeCloseTo(1, 1);
  });
});

describe("answers about an open case", () => {
  test.each([["front"], ["top"], ["back"]])(
    "without its %s nothing is broken, and its box is worked out",
    (face) => {
      const { findings, box } = reviewCase(designOf(openAt(face)));
      expect(findings.filter(({ verdict }) => verdict === "broken").map(({ id }) => id)).toEqual([]);
      expect("runs" in box ? "runs" : box.refused).toBe("runs");
    },
  );
});

describe("what cannot be said of an open face", () => {
  const expected = (over: Parameters<typeof caseWith>[0]): readonly string[] =>
    problemsOf(caseWith(over)).map((problem) => problem.expected);

  test("hardware on it", () => {
    const right = { sections: { box: { panels: { right: "none" } } } };
    expect(expected({ ...right, shelves: null, contents: null })).toEqual([
      "a panel that is there: the right of box is left open",
    ]);
  });

  test("an edge of it", () => {
    const edges = { "top-front": { bar: "none" } };
    expect(expected({ sections: { box: { panels: { front: "none" }, edges } } })).toEqual([
      "no edge here: the front is left open",
    ]);
  });

  test("a shelf that it should bear, a thing that it should carry", () => {
    const open = { panels: { left: "none", bottom: "none" } };
    expect(expected({ sections: { box: open } })).toEqual([
      "a panel that is there: the left of box is left open",
      "a panel that is there: the bottom of box is left open",
    ]);
  });

  test("all six of them", () => {
    const panels = { front: "none", back: "none", left: "none", right: "none", top: "none", bottom: "none" };
    expect(expected({ sections: { box: { panels } } })).toContain("at least one face that is not none");
  });
});

test("a tray without a top is as high as its sides and its bottom", () => {
  const texts = openAt("top");
  const { outside } = designOf(texts).parts.sections[0] ?? {};
  expect(Length.in(outside?.size.z ?? Length.si(0), "mm")).toBeCloseTo(511, 6);
});
