/** Cases that can be read but not built. The small box: front 622 x 500 mm, left and right 400 x 500 mm. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { designOf, problemsOf, rowOf, smallJob, spoilt } from "../design/small-job.js";

const row = (text: string): number => rowOf(smallJob, "case.yaml", text);
const problemsAfter = (find: string, replacement: string): readonly unknown[] =>
  problemsOf(spoilt("case.yaml", find, replacement));

const window =
  "rectangle: { width: 200, height: 150, corner radius: 20 }, from: bottom-left, across: 60, up: 200";
const windowPath = "sections.box.panels.front.openings.window";

describe("an opening", () => {
  test.each([
    [
      "off the panel",
      window.replace("across: 60", "across: 450"),
      {
        column: windowPath,
        expected:
          "an opening on the panel box.front (622 mm x 500 mm), this one reaches 28 mm past its right edge",
      },
    ],
    [
      "that touches the panel's edge",
      window.replace("across: 60", "across: 0"),
      { column: windowPath, expected: "an opening clear of the panel's left edge, or a notch" },
    ],
    [
      "called a notch but away from every edge",
      "notch: { width: 50, height: 20 }, from: bottom-left, across: 200, up: 200",
      {
        column: windowPath,
        expected: "a notch at an edge of the panel box.front (622 mm x 500 mm): across or up is 0",
      },
    ],
    [
      "with a corner radius of more than half its side",
      window.replace("corner radius: 20", "corner radius: 80"),
      {
        column: `${windowPath}.rectangle.corner radius`,
        value: "80",
        expected: "at most 75 mm, half the opening's shorter side",
      },
    ],
    [
      "whose sides cross",
      "polygon: [[0, 0], [100, 100], [100, 0], [0, 100]], from: bottom-left, across: 100, up: 200",
      {
        column: `${windowPath}.polygon`,
        expected: "sides that do not cross or touch: side 1 meets side 3",
      },
    ],
    [
      "of two points",
      "polygon: [[0, 0], [100, 100]], from: bottom-left, across: 100, up: 200",
      { column: `${windowPath}.polygon`, expected: "at least three points" },
    ],
    [
      "of points on one line",
      "polygon: [[0, 0], [50, 50], [100, 100]], from: bottom-left, across: 100, up: 200",
      { column: `${windowPath}.polygon`, expected: "points that are not all on one line" },
    ],
    [
      "with a leaf where none can swing",
      "polygon: [[0, 0], [100, 0], [0, 100]], from: bottom-left, across: 100, up: 200, leaf: { hinge: left, clearance: 2 }",
      { column: `${windowPath}.leaf`, expected: "a rectangle, slot or circle to close, not a polygon" },
    ],
  ])("%s", (_, replacement, problem) => {
    // some of these also come in the way of rivets or of the port
    expect(problemsAfter(window, replacement)).toContainEqual({
      file: "case.yaml",
      row: row("window:"),
      ...problem,
    });
  });

  test("that overlaps or touches another", () => {
    // the port reaches from 452 to 552 mm across and from 300 to 400 mm up; the window's right side is put at 452
    const found = problemsAfter(window, window.replace("across: 60, up: 200", "across: 252, up: 250"));
    expect(found).toEqual([
      {
        file: "case.yaml",
        row: row("port:"),
        column: "sections.box.panels.front.openings.port",
        expected: 'an opening that neither overlaps nor touches "window"',
      },
    ]);
    expect(problemsAfter(window, window.replace("across: 60, up: 200", "across: 251.9, up: 250"))).toEqual(
      [],
    );
  });

  test("inside another", () => {
    const within = window.replace("across: 60, up: 200", "across: 380, up: 260");
    expect(problemsAfter(window, within)).toMatchObject([
      { column: "sections.box.panels.front.openings.port" },
    ]);
  });

  test("with a leaf that leaves no leaf", () => {
    expect(problemsAfter("clearance: 3", "clearance: 75")).toEqual([
      {
        file: "case.yaml",
        row: row("clearance: 3"),
        column: "sections.box.panels.left.openings.door.leaf.clearance",
        value: "75",
        expected: "less than 75 mm, half the opening's shorter side",
      },
    ]);
  });

  test("under the rivets of an edge is blamed for them, not the edge", () => {
    // rivets 24 mm from the left edge; the window from 25 mm leaves 1 mm, the rivet's radius is 2
    expect(problemsAfter(window, window.replace("across: 60", "across: 25"))).toEqual([
      {
        file: "case.yaml",
        row: row("window:"),
        column: windowPath,
        value: "1 mm",
        expected:
          'the holes of box.front-left whole, their middles at least 2 mm from the opening "window" of box.front',
      },
    ]);
  });
});

describe("hardware", () => {
  const onRight = "on: box.right, from: bottom-left, across: 200, up: 250";
  const place = "hardware.handle.places.0";

  test.each([
    [
      "over an extrusion",
      "on: box.right, from: bottom-left, across: 100, up: 250",
      {
        value: "100 mm",
        expected:
          "its centre at least 117 mm from the panel's left edge, clear of the extrusion over box.front-right",
      },
    ],
    [
      "over an opening",
      "on: box.front, from: bottom-left, across: 200, up: 280",
      { expected: 'a place clear of the opening "window"' },
    ],
  ])("%s", (_, replacement, problem) => {
    const found = problemsAfter(onRight, replacement);
    expect(found).toEqual([{ file: "case.yaml", row: row(onRight), column: place, ...problem }]);
  });

  test("over other hardware is a problem of the later one", () => {
    const found = problemsAfter(onRight, "on: box.back, from: bottom-left, across: 250, up: 250");
    expect(found).toContainEqual({
      file: "case.yaml",
      row: row("on: box.back"),
      column: "hardware.handle.places.1",
      expected: 'a place clear of "handle 1"',
    });
  });

  test("off its panel where no extrusion is", () => {
    const bare = spoilt("case.yaml", onRight, "on: box.right, from: bottom-left, across: 70, up: 250");
    const text = (bare["case.yaml"] ?? "").replace(
      "    panels:\n",
      "    edges: { front-right: { bar: none } }\n    panels:\n",
    );
    expect(problemsOf({ ...bare, "case.yaml": text })).toContainEqual({
      file: "case.yaml",
      row: row(onRight) + 1,
      column: place,
      value: "70 mm",
      expected: "its centre at least 80 mm from the panel's left edge, on the panel box.right",
    });
  });

  test("with its cut-out half on a leaf", () => {
    expect(problemsAfter(onRight, "on: box.left, from: bottom-left, across: 260, up: 220")).toContainEqual({
      file: "case.yaml",
      row: row(onRight),
      column: place,
      expected: "its cut-out whole on box.left.door",
    });
  });

  // hinge holes 12 mm to either side of 125 mm: 113 on the panel, 7 mm off the opening at 120; 137 on the leaf
  const hinge = (across: number): string =>
    `  hinge: { item: hinge, duty: hinge, places: [{ on: box.left, from: bottom-left, across: ${across}, up: 160 }] }\nshelves:`;

  test("with a hole that breaks out at the edge of a leaf", () => {
    expect(problemsAfter("shelves:", hinge(125))).toEqual([]);
    expect(problemsAfter("shelves:", hinge(131))).toEqual([
      {
        file: "case.yaml",
        row: row("shelves:"),
        column: "hardware.hinge.places.0",
        value: "1 mm",
        expected:
          'the holes of hinge 1 whole, their middles at least 2 mm from the opening "door" of box.left',
      },
    ]);
  });

  test("with a hole nearer an edge than the trade has it is for a finding to say", () => {
    const design = designOf(spoilt("case.yaml", "shelves:", hinge(127)));
    const edges = reviewCase(design).joints.find(({ id }) => id === "joints.edges");
    expect(edges?.verdict).toBe("fails");
    expect(edges?.answer).toMatch(/hinge 1/);
  });
});

describe("extrusions", () => {
  test("that reach under a metal corner", () => {
    const found = problemsAfter("set back: 60", "set back: 50");
    expect(found).toEqual([
      {
        file: "case.yaml",
        row: row("set back"),
        column: "build.edges.set back",
        value: "50 mm",
        expected: 'at least 55 mm, the leg of the corner "corner"',
      },
    ]);
  });

  test("too short for their rivets", () => {
    const found = problemsAfter("end distance: 20", "end distance: 160");
    expect(found).toContainEqual({
      file: "case.yaml",
      row: row("end distance"),
      column: "build.edges.end distance",
      value: "160",
      expected:
        "set-backs and end distances (160 mm) that leave room for rivets on the 422 mm of box.top-left",
    });
  });

  test("whose rivets begin too near the end of a panel inside its walls need a larger end distance", () => {
    const bare = smallJob["case.yaml"]
      ?.replace(/ {2}corner: .*\n/, "")
      .replace("end distance: 20, set back: 60", "end distance: 5, set back: 0");
    // box.left stands inside walls of 11 mm, and a hole of 4 mm is whole 2 mm in
    expect(problemsOf({ ...smallJob, "case.yaml": bare ?? "" })).toContainEqual({
      file: "case.yaml",
      row: row("end distance"),
      column: "build.edges.end distance",
      value: "5 mm",
      expected:
        "an end distance of at least 13 mm, so that the outermost holes of box.top-left are whole in box.left",
    });
  });

  test("for both panels to stop in must be there", () => {
    expect(
      problemsAfter(
        "    panels:\n",
        "    edges: { top-left: { through: neither, bar: none } }\n    panels:\n",
      ),
    ).toEqual([
      {
        file: "case.yaml",
        row: row("    panels:\n"),
        column: "sections.box.edges.top-left.bar",
        value: "none",
        expected: "an extrusion for both panels to stop in, since neither runs through",
      },
    ]);
  });

  test("may have a face run through only at its own edges", () => {
    expect(
      problemsAfter("    panels:\n", "    edges: { top-left: { through: front } }\n    panels:\n"),
    ).toEqual([
      {
        file: "case.yaml",
        row: row("    panels:\n"),
        column: "sections.box.edges.top-left.through",
        value: "front",
        expected: "one of top, left, neither",
      },
    ]);
  });
});

describe("inside", () => {
  test.each([
    [
      "a shelf wider than the section",
      "size: [600, 300]",
      "size: [610, 300]",
      {
        row: row("size: [600, 300]"),
        column: "shelves.board.at",
        value: "610 mm",
        expected: "its right at most 600 mm, the inside of section box",
      },
    ],
    [
      "a content that sticks out at the back",
      "at: [50, 50, 0], size: [200, 150, 120]",
      "at: [50, 300, 0], size: [200, 150, 120]",
      {
        row: row("battery:"),
        column: "contents.battery.at",
        value: "450 mm",
        expected: "its back at most 400 mm, the inside of section box",
      },
    ],
    [
      "a content in a shelf's place",
      "at: [50, 50, 0], size: [200, 150, 120]",
      "at: [50, 50, 0], size: [200, 150, 205]",
      {
        row: row("battery:"),
        column: "contents.battery.at",
        expected: 'a place that "board" does not take up',
      },
    ],
    [
      "a content that floats above its shelf",
      "at: [50, 50, 210]",
      "at: [50, 50, 230]",
      {
        row: row("  meter:"),
        column: "contents.meter.at",
        value: "230 mm",
        expected: 'up 210 mm, the top of "board"',
      },
    ],
    [
      "a content beside its shelf",
      "at: [50, 50, 210], size: [200, 150, 120]",
      "at: [50, 240, 210], size: [200, 150, 120]",
      { row: row("  meter:"), column: "contents.meter.at", expected: 'a place over "board", which holds it' },
    ],
    [
      "a content of the floor that does not stand on it",
      "at: [50, 50, 0]",
      "at: [50, 50, 40]",
      {
        row: row("battery:"),
        column: "contents.battery.at",
        value: "40 mm",
        expected: "up 0, since the floor holds it",
      },
    ],
  ])("%s", (_, find, replacement, problem) => {
    expect(problemsAfter(find, replacement)).toEqual([{ file: "case.yaml", ...problem }]);
  });

  test("two contents in one place", () => {
    const twin =
      "battery: { in: box, mass: 9 kg, at: [50, 50, 0], size: [200, 150, 120], held: { by: floor } }";
    expect(
      problemsAfter(twin, `${twin}\n  ${twin.replace("battery", "twin").replace("[50, 50", "[240, 190")}`),
    ).toEqual([
      {
        file: "case.yaml",
        row: row("battery:") + 1,
        column: "contents.twin.at",
        expected: 'a place that "battery" does not take up',
      },
    ]);
  });
});

test("faults of several kinds are reported at once", () => {
  const text = (smallJob["case.yaml"] ?? "")
    .replace("across: 60, up: 200", "across: 450, up: 200")
    .replace("set back: 60", "set back: 50")
    .replace("size: [600, 300]", "size: [610, 300]");
  expect(problemsOf({ ...smallJob, "case.yaml": text }).map(({ column }) => column)).toEqual(
    expect.arrayContaining([windowPath, "build.edges.set back", "shelves.board.at"]),
  );
});
