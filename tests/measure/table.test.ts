import { describe, expect, test } from "vitest";
import {
  column,
  optionalColumn,
  readTable,
  type TableRow,
  type TableSchema,
  tableSchema,
} from "../../lib/measure/index.js";
import { showProblem } from "../../lib/problem.js";
import {
  AreaDensity,
  Count,
  choice,
  Force,
  Length,
  Mass,
  Money,
  Name,
  Ratio,
  Volume,
} from "../../lib/quantity/index.js";

interface Sheet extends TableRow {
  readonly name: string;
  readonly thickness: Length;
  readonly price: Money;
  readonly inStock: number;
  readonly use?: "shell" | "inside";
  readonly waste?: Ratio;
  readonly sheetMass?: Mass;
}

const sheets: TableSchema<Sheet> = tableSchema<Sheet>({
  name: column("name", Name, { unique: true }),
  thickness: column("thickness", Length, { above: 0, max: 0.05 }),
  price: column("price", Money, { min: 0 }),
  inStock: column("in stock", Count),
  use: optionalColumn("use", choice("use", ["shell", "inside"])),
  waste: optionalColumn("waste", Ratio, { min: 0, max: 1 }),
  sheetMass: optionalColumn("mass", Mass, { above: 0 }),
});

const read = (text: string) => readTable(text, "sheets.csv", sheets);
const complaints = (text: string): string[] => read(text).problems.map(showProblem);

describe("a sound table", () => {
  const text = [
    "\ufeff# invented figures",
    '"Name","thickness (in)",price (USD),in stock,use,waste,mass (lb)',
    "",
    '"ply, birch",3/8,61.50,4,shell,15 %,41',
    "# a remark between rows",
    '3/4" ply,0.75,80,0,,,',
    ",,,,,,",
  ].join("\r\n");

  test("gives rows in SI with the line they stand on", () => {
    expect(read(text).problems).toEqual([]);
    const [first, second] = read(text).rows;
    expect(first).toMatchObject({
      line: 4,
      name: "ply, birch",
      price: { amount: 61.5, currency: "USD" },
      inStock: 4,
      use: "shell",
      waste: 0.15,
    });
    expect(first?.thickness).toBeCloseTo(0.009525, 12);
    expect(first?.sheetMass).toBeCloseTo(41 * 0.45359237, 12);
    expect(second).toEqual({
      line: 6,
      name: '3/4" ply',
      thickness: expect.closeTo(0.01905, 12),
      price: { amount: 80, currency: "USD" },
      inStock: 0,
    });
  });

  test("reads the same lengths whatever unit of length stands in the header", () => {
    const table = (unit: string, value: string): string =>
      `name,thickness (${unit}),price (EUR),in stock\nply,${value},1,1`;
    const thickness = (unit: string, value: string) => read(table(unit, value)).rows[0]?.thickness;
    expect(thickness("mm", "9.525")).toBeCloseTo(0.009525, 12);
    expect(thickness("in", "3/8")).toBeCloseTo(0.009525, 12);
    expect(thickness("mil", "375")).toBeCloseTo(0.009525, 12);
  });

  test("an optional column may be absent and columns may stand in any order", () => {
    const { rows, problems } = read("in stock,price (USD),thickness (mm),name\n2,10,6,ply");
    expect(problems).toEqual([]);
    expect(rows).toEqual([
      { line: 2, name: "ply", thickness: 0.006, price: { amount: 10, currency: "USD" }, inStock: 2 },
    ]);
  });

  test("a ratio may carry % in its header", () => {
    const { rows } = read("name,thickness (mm),price (USD),in stock,waste (%)\nply,6,1,1,12.5");
    expect(rows[0]?.waste).toBeCloseTo(0.125, 12);
  });
});

describe("a faulty table", () => {
  test("reports every fault at once with file, row, column, value and what was expected", () => {
    const text = [
      "# invented",
      "name,thickness (mm),price (USD),in stock,use",
      "ply,6 mm,61.50,4,shell",
      "board,60,-1,4.5,roof",
      'Ply,"6,5",10,1,',
      ",9,ten,1,inside",
      "good,9,10,1,inside",
    ].join("\n");
    expect(read(text).rows.map(({ name }) => name)).toEqual(["good"]);
    const thickness = "a number in mm (12, 0.5 or 3/8), above 0 mm, at most 50 mm";
    const price = "a number in USD (12, 0.5 or 3/8), at least 0.00";
    expect(complaints(text)).toEqual([
      `sheets.csv, row 3, thickness (mm): found "6 mm", expected ${thickness}`,
      `sheets.csv, row 4, thickness (mm): found "60", expected ${thickness}`,
      `sheets.csv, row 4, price (USD): found "-1", expected ${price}`,
      'sheets.csv, row 4, in stock: found "4.5", expected a whole number from 0 up',
      'sheets.csv, row 4, use: found "roof", expected one of shell, inside',
      `sheets.csv, row 5, thickness (mm): found "6,5", expected ${thickness}`,
      'sheets.csv, row 5, name: found "Ply", expected each name only once, row 3 has it too',
      'sheets.csv, row 6, name: found "", expected a name',
      `sheets.csv, row 6, price (USD): found "ten", expected ${price}`,
    ]);
  });

  test("headings in capitals are read with their units", () => {
    const { rows, problems } = read("NAME,THICKNESS (MM),PRICE (usd),IN STOCK,MASS (KG)\nply,6,10,2,3");
    expect(problems).toEqual([]);
    expect(rows.map(({ thickness, sheetMass }) => [thickness, sheetMass])).toEqual([[0.006, 3]]);
    const pulls = tableSchema<TableRow & { readonly load: Force }>({ load: column("load", Force) });
    expect(readTable("load (KN)\n2", "pulls.csv", pulls).rows.map(({ load }) => load)).toEqual([2000]);
  });

  test("headings with spaced units, raised figures and the sign of the euro are read", () => {
    const cans = tableSchema<
      TableRow & { readonly content: Volume; readonly rate: AreaDensity; readonly price: Money }
    >({
      content: column("content", Volume),
      rate: column("rate", AreaDensity),
      price: column("price", Money),
    });
    const { rows, problems } = readTable(
      "content (fl oz),rate [g/m²],price (€)\n128,150,14",
      "cans.csv",
      cans,
    );
    expect(problems).toEqual([]);
    expect(rows).toEqual([
      { line: 2, content: Volume.read("1 gal"), rate: 0.15, price: { amount: 14, currency: "EUR" } },
    ]);
    expect(
      readTable("content (cups),rate (g/m2),price (EUR)\n1,1,1", "cans.csv", cans).problems[0]?.expected,
    ).toMatch(/^a unit of volume in the header, such as "content \(mL\)"/);
  });

  test("reports headers that are unknown, missing, doubled, without a unit or with a wrong one", () => {
    expect(
      complaints("name,thickness,price (dollars),price (USD),colour,mass (mm),in stock (pcs)\na,1,1,1,1,1,1"),
    ).toEqual([
      'sheets.csv, row 1, thickness: expected a unit of length in the header, such as "thickness (mm)" (units: m, mm, cm, µm, in, ", ft, \', mil)',
      'sheets.csv, row 1, price (dollars): expected a currency of three capitals in the header, such as "price (USD)" or "price (EUR)"',
      'sheets.csv, row 1, price (USD): expected the column "price" only once',
      "sheets.csv, row 1, colour: expected one of the columns name, thickness (mm), price (USD), in stock, use, waste, mass (kg)",
      'sheets.csv, row 1, mass (mm): expected a unit of mass in the header, such as "mass (kg)" (units: kg, g, t, lb, oz)',
      'sheets.csv, row 1, in stock (pcs): expected "in stock" without a unit',
    ]);
    expect(complaints("name,price (USD)\na,1")).toEqual([
      'sheets.csv, row 1, thickness: expected a column "thickness (mm)"',
      'sheets.csv, row 1, in stock: expected a column "in stock"',
    ]);
  });

  test("no row is given when a header is wrong, and cells under sound headers are still checked", () => {
    const { rows, problems } = read("name,thickness (mm),price,in stock\nply,-1,10,1");
    expect(rows).toEqual([]);
    expect(problems.map(({ column }) => column)).toEqual(["price", "thickness (mm)"]);
  });

  test.each([
    ["", "sheets.csv: expected a header line and rows"],
    ["# only a remark\n\n", "sheets.csv: expected a header line and rows"],
    ["name,thickness (mm),price (USD),in stock\n", "sheets.csv, row 1: expected rows below the header"],
  ])("an empty file is a problem: %j", (text, message) => {
    expect(complaints(text)).toEqual([message]);
  });

  test("an open quote spoils its own row only", () => {
    const text = 'name,thickness (mm),price (USD),in stock\n"ply,6,1,1\nboard,9,1,1\n';
    expect(complaints(text)).toEqual([
      'sheets.csv, row 2: found ""ply,6,1,1", expected cells between commas, each opening quote closed on the same line',
    ]);
    expect(read(text).rows.map(({ name }) => name)).toEqual(["board"]);
  });

  test("a decimal comma shows as one cell too many", () => {
    expect(complaints("name,thickness (mm),price (USD),in stock\nply,6,5,1,1")).toEqual([
      'sheets.csv, row 2: found "ply,6,5,1,1", expected 4 cells as in the header, got 5 (a decimal comma is not read)',
    ]);
  });
});

describe("a table as spreadsheets write it", () => {
  const rowsOf = (text: string) => {
    expect(complaints(text)).toEqual([]);
    return read(text).rows;
  };
  const ply = { name: "ply", price: { amount: 61.5, currency: "EUR" }, inStock: 4, waste: 0.125 };

  test.each([
    [
      "semicolons and decimal commas",
      "name;thickness (mm);price (EUR);in stock;waste\nply;6,5;61,50;4;0,125",
    ],
    ["tabs", "name\tthickness (mm)\tprice (EUR)\tin stock\twaste\nply\t6.5\t61.50\t4\t0.125"],
    ["brackets round units", "name,thickness [mm],price [EUR],in stock,waste\nply,6.5,61.50,4,0.125"],
    [
      "titles above the headings",
      "\ufeffsep=;\r\nSheets on the rack;;;;\r\n;;;;\r\nname;thickness (mm);price (EUR);in stock;waste\r\nply;6,5;61,5;4;0,125",
    ],
    [
      "empty columns at the right",
      "name;thickness (mm);price (EUR);in stock;waste;;;\nply;6,5;61,50;4;0,125;;;\n;;;;;;;",
    ],
    [
      "spaces that do not break",
      "name,thickness\u00a0(mm),price (EUR),in stock,waste\nply,6.5,61.50\u00a0,4,0.125",
    ],
    ["quoted decimal commas", 'name,thickness (mm),price (EUR),in stock,waste\nply,"6,5","61,50",4,"0,125"'],
    [
      "points between thousands",
      "name;thickness (mm);price (EUR);in stock;waste\nply;6,5;61,50;4;0,125\nboard;9;1.250,00;1;",
    ],
  ])("with %s", (_, text) => {
    const [first] = rowsOf(text);
    expect(first).toMatchObject(ply);
    expect(first?.thickness).toBeCloseTo(0.0065, 12);
  });

  test("rows keep the lines they stand on below a title", () => {
    expect(rowsOf("Sheets\n\nname,thickness (mm),price (EUR),in stock\nply,6,1,1")[0]?.line).toBe(4);
  });

  test("decimal commas and points in one table are one problem", () => {
    expect(
      complaints("name;thickness (mm);price (EUR);in stock\nply;6,5;61.50;4\nboard;9,5;80.25;1"),
    ).toEqual([
      'sheets.csv, row 2, price (EUR): found "61.50", expected decimal commas as in row 2 ("6,5") or decimal points, one of them in the whole table',
    ]);
  });

  test("a table without any of its headings is one problem", () => {
    expect(complaints("Blatt,Dicke,Preis\nply,6,1\nboard,9,2")).toEqual([
      'sheets.csv, row 1: found "Blatt, Dicke, Preis", expected a line of headings such as name, thickness (mm), price (USD), in stock, use, waste, mass (kg)',
    ]);
  });

  test("a misspelt heading is one problem, with the heading that was meant", () => {
    expect(complaints("name,thikness (mm),price (USD),in stock\nply,6,1,1")).toEqual([
      'sheets.csv, row 1, thikness (mm): expected one of the columns name, thickness (mm), price (USD), in stock, use, waste, mass (kg); did you mean "thickness"?',
    ]);
  });
});
