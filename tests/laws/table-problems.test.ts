/** What a builder reads when a table is wrong by itself, against another table or against the case. */
import { describe, expect, test } from "vitest";
import { showProblem } from "../../lib/problem.js";
import { problemsOf, rowOf, smallJob, spoilt } from "../design/small-job.js";

describe("a table of the stock", () => {
  test.each([
    [
      "sheet-stock.csv",
      "thickness (mm)",
      "thickness",
      'row 1, thickness: expected a unit of length in the header, such as "thickness (mm)"',
    ],
    [
      "sheet-stock.csv",
      "ply 15,",
      "ply 10,",
      'row 3, name: found "ply 10", expected each name only once, row 2 has it too',
    ],
    [
      "sheet-stock.csv",
      "3+3+3+3+3",
      "3+3+3+x+3",
      'row 3, veneers (mm): found "3+3+3+x+3", expected values joined by "+", each a number in mm',
    ],
    [
      "sheet-stock.csv",
      "2+2+2+2+2",
      "2+2+2+2",
      'row 2, veneers: found "2 mm + 2 mm + 2 mm + 2 mm", expected an odd number of veneers',
    ],
    [
      "sheet-stock.csv",
      "3+3+3+3+3",
      "2+2+2+2+2",
      'row 3, veneers: found "2 mm + 2 mm + 2 mm + 2 mm + 2 mm", expected veneers that add up to 15 mm within a tenth',
    ],
    [
      "sheet-stock.csv",
      "2+2+2+2+2,yellow birch",
      "2+2+2+2+2,birch",
      'row 2, species: found "birch", expected one of yellow birch,',
    ],
    [
      "bar-stock.csv",
      "price (EUR)",
      "price (USD)",
      'row 2, price: found "12.00 USD", expected a price in EUR, the currency of the case',
    ],
    [
      "hardware.csv",
      "rivet 4,10,5,2",
      "rivet 4,9,5,2",
      'row 3, fasteners: found "9", expected 10, which is hole columns x hole rows',
    ],
    [
      "hardware.csv",
      "rivet 4,6,2,1",
      "rivet 4,2,2,1",
      'row 2, fasteners: found "2", expected 6, which is hole columns x hole rows x 3 faces',
    ],
    [
      "hardware.csv",
      "2,140,104",
      "2,170,104",
      'row 3, hole width: found "170 mm x 104 mm", expected holes inside the part, 160 mm x 120 mm',
    ],
    [
      "hardware.csv",
      "2,120,80,0",
      "2,120,0,0",
      'row 3, cut width: found "120 mm x 0 mm", expected a cut-out with both sizes, or both zero',
    ],
    [
      "hardware.csv",
      "0,0,0,rivet 4,4",
      "0,0,0,nail,4",
      'row 4, fastener: found "nail", expected a name in fasteners.csv (rivet 4, screw)',
    ],
    [
      "fasteners.csv",
      "18,9,14",
      "18,14,14",
      'row 2, grip min: found "14 mm", expected less than the grip max of 14 mm',
    ],
    [
      "fasteners.csv",
      "18,9,14",
      "14,9,14",
      'row 2, grip max: found "14 mm", expected less than the length of 14 mm',
    ],
    [
      "fasteners.csv",
      "screw,screw",
      "screw,insert",
      'row 3, insert diameter: found "0 of 3 sizes", expected insert diameter, insert length and insert hole of an insert',
    ],
    [
      "fasteners.csv",
      "100,8,counter,2,12,1,0.02",
      "100,8,counter,2,,,",
      'row 2, washer diameter: found "", expected washer diameter, washer thickness and washer price of a rivet',
    ],
    [
      "fasteners.csv",
      "6,counter,2,12,1,0.02",
      "6,counter,2,12,,",
      'row 3, washer thickness: found "", expected washer diameter, washer thickness and washer price of a screw, or all three blank',
    ],
    ["facings.csv", "lam 1,sheet", "lam 1,tile", 'row 2, form: found "tile", expected one of sheet, roll'],
    ["hardware.csv", "handle,500", "handle,1000000", 'row 3, mass (g): found "1000000", expected at most '],
    [
      "hardware.csv",
      "rivet 4,10,5,2",
      "rivet 4,10,2000000,2",
      'row 3, hole columns: found "2000000", expected at most 200',
    ],
    [
      "bar-stock.csv",
      "seat 50,2500",
      "seat 50,25000000",
      'row 3, length (mm): found "25000000", expected at most 1\u202f000\u202f000 mm',
    ],
    ["facings.csv", "9,50,yard", `9,${"9".repeat(320)}/1,yard`, 'row 2, price (EUR): found "999'],
    [
      "sheet-stock.csv",
      "thickness (mm)",
      "thickness (in)",
      'row 2, thickness (in): found "10", expected at most ',
    ],
    ["adhesives.csv", "22,8", "122,8", 'row 2, solids (%): found "122", expected a number in %'],
  ])("%s with %j as %j", (file, find, replacement, message) => {
    const found = problemsOf(spoilt(file, find, replacement)).map(showProblem);
    expect(found.some((line) => line.startsWith(`${file}, ${message}`))).toBe(true);
  });

  test("of a screw without a washer has none", () => {
    expect(problemsOf(spoilt("fasteners.csv", "6,counter,2,12,1,0.02", "6,counter,2,,,"))).toEqual([]);
  });

  test("with inserts wants a foot for their screws, room in the sheet, and hardware or screws", () => {
    const header = "washer price (EUR)";
    const fasteners = (smallJob["fasteners.csv"] ?? "")
      .split("\n")
      .map((line) =>
        line.includes(header)
          ? `${line},insert diameter (mm),insert length (mm),insert hole (mm)`
          : `${line},,,`,
      );
    const withInsert = (sizes: string, held: string): string[] =>
      problemsOf({
        ...spoilt("case.yaml", "held: { by: floor }", held),
        "fasteners.csv": [
          ...fasteners,
          `insert 5,insert,5,9,12,1,4,3000,5000,50,9,counter,4,10,1,0.02,${sizes}`,
        ].join("\n"),
      }).map((problem) => showProblem(problem).replace(/row \d+, /, ""));
    const screwed = (foot: string): string =>
      `held: { by: screws, to: bottom, fastener: insert 5, count: 4${foot} }`;
    expect(withInsert("8,9,7", screwed(", foot: 2"))).toEqual([]);
    expect(withInsert("8,9,7", screwed(""))).toEqual([
      "case.yaml, contents.battery.held.foot: expected foot, how thick the part is that the screw goes through, with an insert",
    ]);
    expect(withInsert("8,12,7", screwed(", foot: 2"))).toEqual([
      'case.yaml, contents.battery.held.fastener: found "insert 5, 12 mm long", expected an insert no longer than the sheet of box.bottom, 10 mm',
    ]);
    expect(withInsert("8,9,4", screwed(", foot: 2"))).toEqual([
      "fasteners.csv, insert hole: found \"4 mm\", expected more than the screw's 5 mm, less than the insert's 8 mm",
    ]);
    expect(
      withInsert("8,9,7", "held: { by: hung, fastener: insert 5, count: 4, second hold: false }"),
    ).toEqual([
      'case.yaml, contents.battery.held.fastener: found "insert 5", expected no insert here: inserts hold hardware, and contents "by: screws"',
      'case.yaml, contents.battery.at: found "120 mm", expected its top at 500 mm, where it hangs: count chain or bracket into its size',
    ]);
  });

  test("that is missing is said to be missing", () => {
    expect(problemsOf({ ...smallJob, "adhesives.csv": undefined })).toEqual([
      { file: "adhesives.csv", expected: "this file beside case.yaml" },
    ]);
  });

  test("without rows is a problem, other than a table of measurements", () => {
    const header = (smallJob["bar-stock.csv"] ?? "").split("\n")[0];
    expect(problemsOf({ ...smallJob, "bar-stock.csv": header })).toEqual([
      { file: "bar-stock.csv", row: 1, expected: "rows below the header" },
    ]);
  });
});

test("a fastener of hardware.csv that no table has hides nothing but the hardware it holds", () => {
  const texts = {
    ...spoilt(
      "hardware.csv",
      "corner,90,2,counter,55,55,1,0,0,0,rivet 4",
      "corner,90,2,counter,55,55,1,0,0,0,rivet 4 x",
    ),
    "case.yaml": (smallJob["case.yaml"] ?? "").replace("at: [50, 50, 0]", "at: [500, 50, 0]"),
  };
  expect(problemsOf(texts).map(({ file, row, column }) => [file, row, column])).toEqual([
    ["case.yaml", rowOf(smallJob, "case.yaml", "battery:"), "contents.battery.at"],
    ["hardware.csv", 2, "fastener"],
  ]);
});

test("a currency of the case that its tables do not have is one problem", () => {
  const found = problemsOf(spoilt("case.yaml", "currency: EUR", "currency: CHF"));
  expect(found).toHaveLength(1);
  expect(found[0]?.expected).toBe(
    'a price in CHF, the currency of the case: change (EUR) in the headings of sheet-stock.csv, bar-stock.csv, hardware.csv, fasteners.csv, adhesives.csv, facings.csv, or "currency" in case.yaml',
  );
});

test.each([
  ["yard", "yrd", ["yrd"]],
  ["yard", "web order", []],
])("a supplier %s written %s is a slip: %j", (name, written, slips) => {
  const texts = {
    ...spoilt("facings.csv", `50,${name}`, `50,${written}`),
    "suppliers.csv": "name,shipping (EUR),tax (%)\nyard,20,19\ncounter,0,19\nshop,0,19",
  };
  expect(problemsOf(texts).map(({ value }) => value)).toEqual(slips);
});

describe("measurements", () => {
  const measured = {
    "bend-tests.csv": [
      "strip,sheet,direction,faced,span (mm),width (mm),thickness (mm),load (kgf),sag (mm)",
      "A,ply 10,along,bare,600,50,10,1,1.5",
      "B,oak,along,bare,600,50,10,1,1.5",
    ],
    "weights.csv": [
      "sample,material,length (mm),width (mm),thickness (mm),mass (g)",
      "W,glue,300,200,10,400",
    ],
    "spread-trials.csv": [
      "trial,adhesive,area (m2),faces,before (g),after (g)",
      "S,paste,0.25,1,900,860",
      "T,glue,0.25,1,900,900",
    ],
    "pull-tests.csv": ["test,fastener,sheet,washer,direction,load (N)", "P,nail,oak,yes,pull,900"],
    "kerfs.csv": ["blade,before (mm),after (mm),offcuts (mm),cuts,use", "saw,1000,500,500,10,sheets"],
    "timings.csv": ["work,unit,tool,pieces,time (min)", "sand,hour,block,1,10"],
    "bar-profiles.csv": [
      "bar,from x (mm),from y (mm),to x (mm),to y (mm),wall (mm)",
      "angle 60,0,1,50,1,2",
      "angle 50,0,1,1,1,2",
    ],
  };

  test("are checked against the tables they name", () => {
    const texts = Object.fromEntries(
      Object.entries(measured).map(([file, lines]) => [file, lines.join("\n")]),
    );
    expect(problemsOf({ ...smallJob, ...texts }).map(showProblem)).toEqual([
      'timings.csv, row 2, unit: found "hour", expected one of panel, cut, hole, rivet, bar, hardware, square metre, case',
      'bend-tests.csv, row 3, sheet: found "oak", expected a name in sheet-stock.csv (ply 10, ply 15) (also in pull-tests.csv row 2)',
      'weights.csv, row 2, material: found "glue", expected a name in sheet-stock.csv or facings.csv (ply 10, ply 15, lam 1)',
      'spread-trials.csv, row 2, adhesive: found "paste", expected a name in adhesives.csv (glue)',
      'pull-tests.csv, row 2, fastener: found "nail", expected a name in fasteners.csv or hardware.csv (rivet 4, screw, corner 55, handle, hinge)',
      'bar-profiles.csv, row 2, bar: found "angle 60", expected a name in bar-stock.csv (angle 50, seat 50)',
      'spread-trials.csv, row 3, after: found "900 g", expected less than the 900 g before',
      'kerfs.csv, row 2, after: found "500 mm", expected less than before less offcuts, 500 mm',
      'bar-profiles.csv, row 3, to x: found "1 mm", expected a wall longer than its thickness, 2 mm',
    ]);
  });
});

test("a table of more rows than any shop measures is one problem, told at the first that is too many", () => {
  const head = "name,blade,before (mm),after (mm),offcuts (mm),cuts,use\n";
  const texts = { ...smallJob, "kerfs.csv": head + "saw,1000,520,400,10,sheets\n".repeat(200_001) };
  expect(problemsOf(texts)).toEqual([
    { file: "kerfs.csv", row: 200_001, expected: "at most 200000 rows, this table has 200002" },
  ]);
});
