/** Figures of one row that must agree with each other. */
import type { Problem } from "../../problem.js";
import { Length, Mass, Power, Pressure, Time } from "../../quantity/index.js";
import type { MeasuredRows, ReadTables, StockRows } from "../read/read-tables.js";
import { cellProblem, type TableName } from "./table-problem.js";

/** Every row whose figures contradict each other. */
export function checkRows({ stock, measurements }: ReadTables): Problem[] {
  return [
    ...stock.sheets.flatMap(checkSheet),
    ...stock.hardware.flatMap(checkHardware),
    ...stock.fasteners.flatMap(checkFastener),
    ...measurements.spreads.flatMap(checkSpread),
    ...measurements.kerfs.flatMap(checkKerf),
    ...measurements.profiles.flatMap(checkWall),
    ...checkCurves(measurements.cushions),
    ...checkLog(measurements.temperatures),
  ];
}

/** A rule that a row must keep. */
interface Rule {
  readonly keeps: boolean;
  readonly column: string;
  readonly value: string;
  readonly expected: string;
}

function broken(table: TableName, line: number, rules: readonly Rule[]): Problem[] {
  return rules
    .filter(({ keeps }) => !keeps)
    .map(({ column, value, expected }) => cellProblem({ table, line, column, value }, expected));
}

/** In millimetres to a hundredth, as calipers read. */
function mm(length: number): string {
  return Length.show(Length.si(Number(length.toFixed(5))), { unit: "mm" });
}

/** Veneers may differ from the sheet's thickness by what sanding and gluing take, a tenth at most. */
const veneerAllowance = 0.1;

function checkSheet({ line, thickness, veneers }: StockRows["sheets"][number]): Problem[] {
  const total = veneers.reduce((sum: number, veneer) => sum + veneer, 0);
  const shown = veneers.map(mm).join(" + ");
  return broken("sheets", line, [
    {
      keeps: veneers.length % 2 === 1,
      column: "veneers",
      value: shown,
      expected: "an odd number of veneers",
    },
    {
      keeps: Math.abs(total - thickness) <= veneerAllowance * thickness,
      column: "veneers",
      value: shown,
      expected: `veneers that add up to ${mm(thickness)} within a tenth`,
    },
  ]);
}

function checkHardware(row: StockRows["hardware"][number]): Problem[] {
  const { kind, fasteners, holeColumns, holeRows, holeWidth, holeHeight, width, height } = row;
  const isCorner = kind === "corner";
  const holes = holeColumns * holeRows * (isCorner ? 3 : 1);
  const counted = `hole columns x hole rows${isCorner ? " x 3 faces" : ""}`;
  return broken("hardware", row.line, [
    {
      keeps: holes === fasteners,
      column: "fasteners",
      value: String(fasteners),
      expected: `${holes}, which is ${counted}`,
    },
    {
      keeps: holeWidth < width && holeHeight < height,
      column: "hole width",
      value: `${mm(holeWidth)} x ${mm(holeHeight)}`,
      expected: `holes inside the part, ${mm(width)} x ${mm(height)}`,
    },
    {
      keeps: row.cutWidth > 0 === row.cutHeight > 0,
      column: "cut width",
      value: `${mm(row.cutWidth)} x ${mm(row.cutHeight)}`,
      expected: "a cut-out with both sizes, or both zero",
    },
  ]);
}

function checkFastener(row: StockRows["fasteners"][number]): Problem[] {
  const { line, kind, gripMin, gripMax, length, diameter, insertDiameter, insertLength, insertHole } = row;
  const sizes = [insertDiameter, insertLength, insertHole];
  const given = sizes.filter((size) => size !== undefined).length;
  const insert = kind === "insert";
  return broken("fasteners", line, [
    {
      keeps: given === (insert ? sizes.length : 0),
      column: "insert diameter",
      value: `${given} of ${sizes.length} sizes`,
      expected: insert
        ? "insert diameter, insert length and insert hole of an insert"
        : `insert sizes only of an insert, this is a ${kind}`,
    },
    {
      keeps: !insertDiameter || !insertHole || (diameter < insertHole && insertHole < insertDiameter),
      column: "insert hole",
      value: mm(insertHole ?? 0),
      expected: `more than the screw's ${mm(diameter)}, less than the insert's ${mm(insertDiameter ?? 0)}`,
    },
    {
      keeps: gripMin < gripMax,
      column: "grip min",
      value: mm(gripMin),
      expected: `less than the grip max of ${mm(gripMax)}`,
    },
    {
      keeps: gripMax < length,
      column: "grip max",
      value: mm(gripMax),
      expected: `less than the length of ${mm(length)}`,
    },
  ]);
}

function checkSpread({ line, before, after, gained }: MeasuredRows["spreads"][number]): Problem[] {
  const expected = `less than the ${Mass.show(before)} before`;
  return broken("spreads", line, [
    { keeps: after < before, column: "after", value: Mass.show(after), expected },
    {
      keeps: gained === undefined || gained <= before - after,
      column: "gained",
      value: gained === undefined ? "" : Mass.show(gained),
      expected: "at most what the container lost",
    },
  ]);
}

function checkKerf({ line, before, after, offcuts }: MeasuredRows["kerfs"][number]): Problem[] {
  const left = before - offcuts;
  const expected = `less than before less offcuts, ${mm(left)}`;
  return broken("kerfs", line, [{ keeps: after < left, column: "after", value: mm(after), expected }]);
}

function checkWall({ line, fromX, fromY, toX, toY, wall }: MeasuredRows["profiles"][number]): Problem[] {
  const length = Math.hypot(toX - fromX, toY - fromY);
  const expected = `a wall longer than its thickness, ${mm(wall)}`;
  return broken("profiles", line, [{ keeps: length > wall, column: "to x", value: mm(length), expected }]);
}

/** A curve is the rows of one foam, thickness and drop: at least two, at rising pressures. */
function checkCurves(rows: MeasuredRows["cushions"]): Problem[] {
  const nameOf = ({ foam, thickness, drop }: MeasuredRows["cushions"][number]): string =>
    `${foam}, ${mm(thickness)}, drop ${mm(drop)}`;
  return [...new Set(rows.map(nameOf))].flatMap((name) => {
    const curve = rows.filter((row) => nameOf(row) === name);
    const [first] = curve;
    if (!first) return [];
    const lone = broken("cushions", first.line, [
      {
        keeps: curve.length > 1,
        column: "foam",
        value: first.foam,
        expected: `at least 2 points of the curve ${name}, at different pressures`,
      },
    ]);
    const falling = curve.slice(1).flatMap((point, i) => {
      const before = curve[i]?.stress ?? first.stress;
      return broken("cushions", point.line, [
        {
          keeps: point.stress > before,
          column: "stress",
          value: Pressure.show(point.stress),
          expected: `more than ${Pressure.show(before)}, the point before on the curve ${name}`,
        },
      ]);
    });
    return [...lone, ...falling];
  });
}

/** A log of a section is one warm-up: the same power all the time, each reading later than the one before. */
function checkLog(rows: MeasuredRows["temperatures"]): Problem[] {
  return rows.flatMap(({ section, line, time, power }, i) => {
    const before = rows.slice(0, i).findLast((row) => row.section === section);
    if (!before) return [];
    return broken("temperatures", line, [
      {
        keeps: time > before.time,
        column: "time",
        value: Time.show(time, { unit: "min" }),
        expected: `later than the ${Time.show(before.time, { unit: "min" })} of the reading before`,
      },
      {
        keeps: power === before.power,
        column: "power",
        value: Power.show(power),
        expected: `the ${Power.show(before.power)} of the reading before: a log is one warm-up with one load`,
      },
    ]);
  });
}
