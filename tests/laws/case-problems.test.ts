/** What a builder reads when case.yaml is wrong: file, row, path, what stands there, what should. */
import { describe, expect, test } from "vitest";
import { problemsOf, rowOf, smallJob, spoilt } from "../design/small-job.js";

const length = 'a length such as "368" (millimetres) or "12 mm"';
const mass = 'a mass such as "6 kg or 12 lb"';

/** Replaces a text that stands once in the case file, and gives the only problem. */
function problemAfter(find: string, replacement: string): unknown {
  const problems = problemsOf(spoilt("case.yaml", find, replacement));
  expect(problems).toHaveLength(1);
  return problems[0];
}

const row = (text: string): number => rowOf(smallJob, "case.yaml", text);

describe("one wrong value gives one problem at its row", () => {
  test.each([
    [
      "a length that is none",
      "width: 600",
      "width: wide",
      {
        row: row("width: 600"),
        column: "sections.box.inside.width",
        value: "wide",
        expected: `${length}, above 0`,
      },
    ],
    [
      "a length with a decimal comma",
      "pitch: 100",
      'pitch: "100,5"',
      {
        row: row("pitch: 100"),
        column: "build.edges.pitch",
        value: "100,5",
        expected: 'a decimal point where there is a comma; did you mean "100.5"?',
      },
    ],
    [
      "a crowd",
      "people: 2",
      "people: 1000000000",
      { row: row("people: 2"), column: "journey.people", value: "1000000000", expected: "at most 100" },
    ],
    [
      "rivets without end",
      "pitch: 100",
      "pitch: 1/2000",
      {
        row: row("pitch: 100"),
        column: "build.edges.pitch",
        value: "1/2000",
        expected: `${length}, at least 2 mm`,
      },
    ],
    [
      "a price without end",
      "ready made: 900",
      "ready made: .inf",
      {
        row: row("ready made: 900"),
        column: "business.ready made",
        value: ".inf",
        expected: "an amount in EUR such as 12.50, at least 0",
      },
    ],
    [
      "a length of the wrong kind",
      "set back: 60",
      "set back: 60 kg",
      {
        row: row("set back: 60"),
        column: "build.edges.set back",
        value: "60 kg",
        expected: `${length}, at least 0`,
      },
    ],
    [
      "a size of zero",
      "diameter: 100",
      "diameter: 0",
      {
        row: row("diameter: 100"),
        column: "sections.box.panels.front.openings.port.circle.diameter",
        value: "0",
        expected: `${length}, above 0`,
      },
    ],
    [
      "a number that is infinite",
      "depth: 400",
      "depth: .inf",
      {
        row: row("depth: 400"),
        column: "sections.box.inside.depth",
        value: ".inf",
        expected: `${length}, above 0`,
      },
    ],
    [
      "a mass without its unit",
      "mass: 4 kg",
      "mass: 4",
      { row: row("mass: 4 kg"), column: "contents.meter.mass", value: "4", expected: `${mass}, above 0` },
    ],
    [
      "an unknown word",
      "purpose: tests",
      "purpose: tests\ncolour: red",
      {
        row: row("purpose: tests") + 1,
        column: "colour",
        value: "colour",
        expected:
          "one of case, invented, purpose, units, lengths, currency, build, sections, hardware, shelves, drawers, stiffeners, contents, demands, journey, services, business, keep",
      },
    ],
    [
      "a misspelt word inside a block",
      "climate: dry",
      "climate: dry, clymate: dry",
      {
        row: row("climate: dry"),
        column: "demands.clymate",
        value: "clymate",
        expected:
          'one of side pressure, top pressure, allowed sag, jerk, safety factor, climate, push, stored under, top bears; did you mean "climate"?',
      },
    ],
    [
      "a misspelt word that had to be there",
      "climate: dry",
      "climat: dry",
      {
        row: row("climate: dry"),
        column: "demands.climat",
        value: "climat",
        expected:
          'one of side pressure, top pressure, allowed sag, jerk, safety factor, climate, push, stored under, top bears; did you mean "climate"?',
      },
    ],
    [
      "a missing word",
      "climate: dry, ",
      "",
      { row: row("climate: dry"), column: "demands.climate", expected: "one of dry, damp" },
    ],
    [
      "a choice that is none",
      "grip: good",
      "grip: strong",
      {
        row: row("grip: good"),
        column: "journey.grip",
        value: "strong",
        expected: "one of good, fair, poor",
      },
    ],
    [
      "a currency that is no code",
      "currency: EUR",
      "currency: euro",
      {
        row: row("currency: EUR"),
        column: "currency",
        value: "euro",
        expected: "a currency of three capitals such as USD",
      },
    ],
    [
      "a price in another currency",
      "ready made: 900",
      "ready made: 900 USD",
      {
        row: row("ready made: 900"),
        column: "business.ready made",
        value: "900 USD",
        expected: "an amount in EUR such as 12.50, at least 0",
      },
    ],
    [
      "pairs of faces that leave one out",
      "[top-bottom, front-back, left-right]",
      "[top-bottom, front-back, front-back]",
      {
        row: row("runs through"),
        column: "build.runs through",
        expected:
          "a list of the three pairs top-bottom, front-back, left-right, the one that runs past the others first",
      },
    ],
    [
      "two shapes for one opening",
      "circle: { diameter: 100 }",
      "circle: { diameter: 100 }, slot: { width: 90, height: 20 }",
      {
        row: row("port:"),
        column: "sections.box.panels.front.openings.port",
        expected: "exactly one of rectangle, circle, slot, notch, polygon, ellipse",
      },
    ],
    [
      "no shape at all",
      "circle: { diameter: 100 }, ",
      "",
      {
        row: row("port:"),
        column: "sections.box.panels.front.openings.port",
        expected: "exactly one of rectangle, circle, slot, notch, polygon, ellipse",
      },
    ],
    [
      "a place that is no face",
      "on: box.right",
      "on: box.side",
      {
        row: row("on: box.right"),
        column: "hardware.handle.places.0.on",
        value: "box.side",
        expected: 'a section and a face such as "lower.front" (faces: front, back, left, right, top, bottom)',
      },
    ],
    [
      "a handle on a section that is not there",
      "on: box.right",
      "on: attic.right",
      {
        row: row("on: box.right"),
        column: "hardware.handle.places.0.on",
        value: "attic.right",
        expected: "a section (box)",
      },
    ],
    [
      "corners of a section that is not there",
      "corners of: box",
      "corners of: attic",
      {
        row: row("corners of"),
        column: "hardware.corner.corners of",
        value: "attic",
        expected: "a section (box)",
      },
    ],
    [
      "hardware without a place",
      ", corners of: box",
      "",
      { row: row("corner: {"), column: "hardware.corner", expected: 'either places or "corners of"' },
    ],
    [
      "two pieces of hardware of one name",
      "  handle:\n    item: handle",
      "  corner:\n    item: handle",
      {
        row: row("  handle:\n"),
        column: "hardware.corner",
        value: "corner",
        expected: `each name only once in a block, row ${row("corner: {")} has it too`,
      },
    ],
    [
      "a content called like a shelf",
      "  battery: {",
      "  board: {",
      {
        row: row("  battery: {"),
        column: "contents.board",
        value: "board",
        expected: "a name that no shelf has",
      },
    ],
    [
      "a name with a dot",
      "  board: {",
      "  board.1: {",
      { row: row("board: {"), column: "shelves.board.1", value: "board.1", expected: "a name without dots" },
    ],
    [
      "a list that is too short",
      "at: [0, 0, 200]",
      "at: [0, 0]",
      {
        row: row("at: [0, 0, 200]"),
        column: "shelves.board.at",
        expected: "a list of 3 lengths: right, back and up from the section's inside lower left front corner",
      },
    ],
    [
      "a holding that lacks a word",
      "held: { by: shelf, shelf: board }",
      "held: { by: shelf }",
      { row: row("  meter:"), column: "contents.meter.held.shelf", expected: 'shelf with "by: shelf"' },
    ],
    [
      "a holding with a word too many",
      "held: { by: floor }",
      "held: { by: floor, straps: 2 }",
      {
        row: row("battery:"),
        column: "contents.battery.held.straps",
        value: "2",
        expected: 'no straps with "by: floor", only with "by: strap"',
      },
    ],
    [
      "a word of other holdings",
      "held: { by: floor }",
      "held: { by: strap, straps: 2, shelf: board }",
      {
        row: row("battery:"),
        column: "contents.battery.held.shelf",
        value: "board",
        expected: 'no shelf with "by: strap", only with "by: shelf" or "by: cradle"',
      },
    ],
    [
      "a second hold that is half described",
      "held: { by: floor }",
      "held: { by: hung, fastener: rivet 4, count: 2, second hold: { fastener: rivet 4 } }",
      {
        row: row("battery:"),
        column: "contents.battery.held.second hold",
        expected: "false, true, or a block with fastener, count, rated, slack, give",
      },
    ],
    [
      "a second hold by a fastener that no table has",
      "held: { by: floor }",
      "held: { by: hung, fastener: rivet 4, count: 2, second hold: { fastener: chain, count: 1, rated: 90 N, slack: 0, give: 2 } }",
      {
        row: row("battery:"),
        column: "contents.battery.held.second hold.fastener",
        value: "chain",
        expected: "a name in fasteners.csv (rivet 4, screw)",
      },
    ],
    [
      "a foot without an insert",
      "held: { by: floor }",
      "held: { by: screws, to: bottom, fastener: screw, count: 2, foot: 2 }",
      {
        row: row("battery:"),
        column: "contents.battery.held.foot",
        value: "2",
        expected: 'an insert beside foot, not "screw"',
      },
    ],
    [
      "a shelf that is not there",
      "held: { by: shelf, shelf: board }",
      "held: { by: shelf, shelf: plank }",
      {
        row: row("  meter:"),
        column: "contents.meter.held.shelf",
        value: "plank",
        expected: "a shelf of section box (board)",
      },
    ],
    [
      "a sheet that no table has, named once for all panels",
      "  sheet: ply 10\n",
      "  sheet: oak\n",
      {
        row: row("sheet: ply 10"),
        column: "build.sheet",
        value: "oak",
        expected: "a name in sheet-stock.csv (ply 10, ply 15)",
      },
    ],
    [
      "a rivet that no table has",
      "rivet: rivet 4",
      "rivet: rivet 9",
      {
        row: row("rivet: rivet 4"),
        column: "build.edges.rivet",
        value: "rivet 9",
        expected: "a name in fasteners.csv (rivet 4, screw)",
      },
    ],
  ])("%s", (_, find, replacement, problem) => {
    expect(problemAfter(find, replacement)).toEqual({ file: "case.yaml", ...problem });
  });
});

describe("the file as a whole", () => {
  test("every wrong value is reported at once", () => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace("width: 600", "width: wide")
      .replace("mass: 4 kg", "mass: heavy")
      .replace("grip: good", "grip: strong");
    const problems = problemsOf({ ...smallJob, "case.yaml": text, "facings.csv": undefined });
    expect(problems.map(({ file, column }) => [file, column])).toEqual([
      ["case.yaml", "sections.box.inside.width"],
      ["case.yaml", "contents.meter.mass"],
      ["case.yaml", "journey.grip"],
      ["facings.csv", undefined],
    ]);
  });

  test("a build that lacks what edges need is one problem, where it should stand", () => {
    expect(problemsOf(spoilt("case.yaml", ", set back: 60", ""))).toEqual([
      { file: "case.yaml", row: row("  edges: {"), column: "build.edges.set back", expected: "a set back" },
    ]);
  });

  test("lines that are missing are a problem each, however many parts rest on them", () => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace("  sheet: ply 10\n", "")
      .replace("  runs through: [top-bottom, front-back, left-right]\n", "")
      .replace(", adhesive: glue", "");
    const found = problemsOf({ ...smallJob, "case.yaml": text });
    expect(found.map(({ column }) => column)).toEqual([
      "build.sheet",
      "build.facing.adhesive",
      "build.runs through",
    ]);
  });

  test("names are told beside a value that leaves no section to lay out", () => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace("width: 600", "width: wide")
      .replace("sheet: ply 10\n", "sheet: oak\n")
      .replace("item: handle", "item: handel")
      .replace("on: box.right", "on: bx.right");
    const problems = problemsOf({ ...smallJob, "case.yaml": text });
    expect(problems.map(({ column, value }) => [column, value])).toEqual([
      ["sections.box.inside.width", "wide"],
      ["build.sheet", "oak"],
      ["hardware.handle.item", "handel"],
      ["hardware.handle.places.0.on", "bx.right"],
    ]);
  });

  test("names, values and places are told in one round, each but what rests on a mistake", () => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace("climate: dry", "climate: wet")
      .replace("mass: 4 kg", "mass: heavy")
      .replace("item: handle", "item: handel")
      .replace("at: [50, 50, 0]", "at: [500, 50, 0]");
    const texts = {
      ...smallJob,
      "case.yaml": text,
      "kerfs.csv": "blade,before (mm),after (mm),offcuts (mm),cuts,use\nsaw,1000,520,500,10,sheets",
    };
    expect(problemsOf(texts).map(({ column, expected }) => `${column}: ${expected}`)).toEqual([
      `contents.meter.mass: ${mass}, above 0`,
      "demands.climate: one of dry, damp",
      'hardware.handle.item: a name in hardware.csv (corner 55, handle, hinge); did you mean "handle"?',
      "contents.battery.at: its right at most 600 mm, the inside of section box",
      "after: less than before less offcuts, 500 mm",
    ]);
  });

  test("names are looked up in a table that has a mistake of its own, as long as its rows say theirs", () => {
    const wrongUnit = (smallJob["hardware.csv"] ?? "").replace("mass (g)", "mass (lbs)");
    const fasteners = (smallJob["fasteners.csv"] ?? "").replaceAll("(EUR)", "(USD)");
    const text = (smallJob["case.yaml"] ?? "")
      .replace("item: handle", "item: handel")
      .replace("fastener: screw", "fastener: scew");
    const texts = { ...smallJob, "case.yaml": text, "hardware.csv": wrongUnit, "fasteners.csv": fasteners };
    expect(problemsOf(texts).map(({ column, expected }) => `${column}: ${expected}`)).toEqual([
      'hardware.handle.item: a name in hardware.csv (corner 55, handle, hinge); did you mean "handle"?',
      'shelves.board.joint.fastener: a name in fasteners.csv (rivet 4, screw); did you mean "screw"?',
      'mass (lbs): a unit of mass in the header, such as "mass (kg)" (units: kg, g, t, lb, oz)',
      'price: a price in EUR, the currency of the case: change (USD) in the headings of fasteners.csv, or "currency" in case.yaml',
    ]);
    const noName = wrongUnit.replace("handle,handle", ",handle");
    expect(problemsOf({ ...texts, "hardware.csv": noName }).map(({ column }) => column)).not.toContain(
      "hardware.handle.item",
    );
  });

  test("a misspelt word out of a few says which was meant, and no word that merely begins like it", () => {
    expect(problemAfter("held: { by: floor }", "held: { by: flor }")).toMatchObject({
      expected: expect.stringMatching(/^one of shelf, floor, .*; did you mean "floor"\?$/),
    });
    expect(problemAfter("climate: dry", "climate: daily")).toMatchObject({ expected: "one of dry, damp" });
  });

  test("hardware over other hardware is one mistake, however many pieces", () => {
    const places = [170, 250, 330].map(
      (up) => `{ on: box.right, from: bottom-left, across: 200, up: ${up} }`,
    );
    const knobs = `  knob: { item: hinge, duty: other, places: [${places.join(", ")}] }\n`;
    const found = problemsOf(spoilt("case.yaml", "shelves:\n", `${knobs}shelves:\n`));
    expect(found.map(({ column, expected, also }) => [column, expected, also?.length])).toEqual([
      ["hardware.knob.places.0", 'a place clear of "handle 1"', 2],
    ]);
  });

  test("many mistakes that inches would hide are no slip of the unit, for nobody builds a case of 15 m", () => {
    const knobs = [100, 200, 300, 400, 500].flatMap((across) =>
      [100, 200].flatMap((up) =>
        [0, 20].map(
          (beside) =>
            `  knob ${across} ${up} ${beside}: { item: hinge, duty: other, places: [{ on: box.bottom, from: bottom-left, across: ${across + beside}, up: ${up} }] }\n`,
        ),
      ),
    );
    const found = problemsOf(spoilt("case.yaml", "shelves:\n", `${knobs.join("")}shelves:\n`));
    expect(found).toHaveLength(10);
    expect(found[0]?.expected).toBe('a place clear of "knob 100 100 0 1"');
  });

  test("a section that was renamed in one place is one problem with the places that still call it so", () => {
    const text = (smallJob["case.yaml"] ?? "").replace("\n  box:\n", "\n  boxes:\n");
    const found = problemsOf({ ...smallJob, "case.yaml": text });
    expect(found).toHaveLength(1);
    expect(found[0]?.expected).toBe('a section (boxes); did you mean "boxes"?');
    expect(found[0]?.also?.map(({ column }) => column)).toEqual([
      "hardware.handle.places.0.on",
      "hardware.handle.places.1.on",
      "shelves.board.in",
      "contents.meter.in",
      "contents.battery.in",
    ]);
  });

  test("a section far too shallow is a handful of problems, though everything falls off its panels", () => {
    const found = problemsOf(spoilt("case.yaml", "depth: 400", "depth: 40"));
    expect(found.map(({ column }) => column)).toContain("build.edges.set back");
    expect(found.length).toBeLessThanOrEqual(8);
  });

  test("broken YAML is a problem at its row, not a crash", () => {
    const [problem] = problemsOf(spoilt("case.yaml", "units: metric", "units: [metric"));
    expect(problem).toMatchObject({ file: "case.yaml", row: row("units: metric") + 1 });
    expect(problem?.expected).toBe("the end of the list or block that begins above, with ]");
  });

  test.each(["", "# nothing\n", "just words", "- a list"])("%j is no case", (text) => {
    const [problem] = problemsOf({ ...smallJob, "case.yaml": text });
    expect(problem).toMatchObject({ file: "case.yaml", row: 1 });
    expect(problem?.expected).toMatch(/^a block with case, invented, purpose/);
  });

  test("a missing case file is said to be missing", () => {
    expect(problemsOf({ ...smallJob, "case.yaml": undefined })).toEqual([
      { file: "case.yaml", expected: "this file" },
    ]);
  });

  test("an anchor may be reused", () => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace("inside: { width: 600", "inside: &size { width: 600")
      .replace("hardware:\n", "  lid: { inside: *size }\nhardware:\n");
    expect(problemsOf({ ...smallJob, "case.yaml": text })).toEqual([]);
  });
});
