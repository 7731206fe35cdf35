/** What somebody checks who holds the printed papers alone: each check gives what is wrong, in words. */
import { sentencesOf } from "../../lib/page/sentences.js";
import {
  cellOf,
  figureIn,
  lengthIn,
  lengthsIn,
  type ReadLine,
  type ReadPapers,
  type ReadTable,
  sum,
  tablesWith,
} from "./papers-as-read.js";

/** A rounding of a printed length: half of 1/32 in, or half of a tenth of a millimetre. */
const rounding = (unit: string): number => (unit === "in" ? 1 / 64 : 0.05);

const unitOf = ({ lines }: ReadPapers): "in" | "mm" =>
  lines.some(({ text }) => text.startsWith("Lengths are in inches")) ? "in" : "mm";

const isIn = (title: string, { under }: { readonly under: readonly string[] }): boolean =>
  (under[0] ?? "").replace(/^\d+\. /, "") === title;

const stepsOf = ({ lines }: ReadPapers): readonly ReadLine[] => lines.filter(({ kind }) => kind === "step");

/** Every piece of sheet and laminate with its size. */
function piecesOf(
  papers: ReadPapers,
): ReadonlyMap<string, { readonly size: readonly number[]; readonly from: string }> {
  const sheets = tablesWith(papers, "Code", "Piece", "Width × height").flatMap((table) =>
    table.rows.map((row) => ({
      code: cellOf(table, row, "Code"),
      size: lengthsIn(cellOf(table, row, "Width × height")),
      from: cellOf(table, row, "From"),
    })),
  );
  const laminate = papers.lines.flatMap(({ text }) => {
    const [, code = "", size = "", from = ""] = /^(L\d+) [^:]*: ([^,]*),.*, from (.*)$/.exec(text) ?? [];
    return code === "" ? [] : [{ code, size: lengthsIn(size), from }];
  });
  return new Map([...sheets, ...laminate].map(({ code, ...rest }) => [code, rest]));
}

/** Sizes of what is bought, by its name. */
function boughtSizes(papers: ReadPapers): ReadonlyMap<string, readonly number[]> {
  return new Map(
    tablesWith(papers, "Supplier", "Item", "Size").flatMap((table) =>
      table.rows.map((row) => [
        cellOf(table, row, "Item"),
        lengthsIn(cellOf(table, row, "Size").replace(/\(.*/, "")),
      ]),
    ),
  );
}

const kerfTold = (papers: ReadPapers, words: RegExp): number => {
  const step = stepsOf(papers).find(({ text }) => words.test(text));
  return lengthIn(/wider than ([\d.]+)/.exec(step?.text ?? "")?.[1] ?? "");
};

/** The saw steps, sawn: every piece comes off once, of its size, from the sheet that is named. */
export function sawFaults(papers: ReadPapers): readonly string[] {
  const pieces = piecesOf(papers);
  const kerf = kerfTold(papers, /measure the slot/);
  const off = 3.01 * rounding(unitOf(papers));
  const sawn = tablesWith(papers, "Set the fence to", "Through").map((table) => sawSheet(table, kerf, off));
  const sheets = boughtSizes(papers);
  const seen = sawn.flatMap(({ pieces: got }) => got);
  const whole = [...pieces].filter(([code]) => !seen.some((one) => one.code === code));
  return [
    ...sawn.flatMap(({ faults }) => faults),
    ...seen.flatMap(({ code, size, label }) => {
      const listed = pieces.get(code);
      if (!listed) return [`${code} of ${label} stands on no list`];
      const [a = 0, b = 0] = listed.size;
      const [c = 0, d = 0] = size;
      const fits = (p: number, q: number): boolean => Math.abs(c - p) < off && Math.abs(d - q) < off;
      return [
        ...(fits(a, b) || fits(b, a)
          ? []
          : [`${code} is sawn ${size.join(" × ")}, listed ${listed.size.join(" × ")}`]),
        ...(listed.from === label ? [] : [`${code} is listed from ${listed.from}, sawn from ${label}`]),
      ];
    }),
    ...seen.flatMap(({ code }, i) =>
      seen.findIndex((one) => one.code === code) < i ? [`${code} is sawn twice`] : [],
    ),
    ...whole.flatMap(([code, { size, from }]) => {
      const stock = sheets.get(sheetNamed(papers, from));
      const fits =
        stock !== undefined && size.every((one) => stock.some((side) => Math.abs(side - one) < off));
      return fits ? [] : [`${code} comes off no cut`];
    }),
    ...sawn.flatMap(({ label, stock, first }) => {
      const size = sheets.get(stock);
      const fits = size === undefined || first.every((side, i) => side <= (size[i] ?? 0) + off);
      return fits ? [] : [`${label}: ${first.join(" × ")} is no part of ${size.join(" × ")}`];
    }),
  ];
}

/** "Sheet 1: birch ply 3/8, 16 pieces" is of birch ply 3/8. */
function sheetNamed(papers: ReadPapers, label: string): string {
  const all = [...papers.tables, ...papers.lines].flatMap(({ under }) => under);
  const heading = all.find((one) => one.startsWith(`${label}: `)) ?? "";
  return heading.replace(/^[^:]*: /, "").replace(/, \d+ pieces?$/, "");
}

function sawSheet(table: ReadTable, kerf: number, off: number) {
  const [, label = "", stock = ""] =
    /^([^:]*): (.*?)(?:, \d+ pieces?)?$/.exec(table.under.at(-1) ?? "") ?? [];
  const faults: string[] = [];
  const pieces: { code: string; size: readonly number[]; label: string }[] = [];
  const first = lengthsIn(cellOf(table, table.rows[0] ?? [], "Through"));
  const open: (readonly number[])[] = [first];
  let fence = { at: 0, rips: false };
  const near = (one: number, other: number): boolean => Math.abs(one - other) < off;
  for (const row of table.rows) {
    const cell = (heading: string): string => cellOf(table, row, heading);
    const [length = 0, width = 0] = lengthsIn(cell("Through"));
    const at = open.findIndex(([l = 0, w = 0]) => near(l, length) && near(w, width));
    if (at < 0) faults.push(`${label}, cut ${cell("Cut")}: no part of ${cell("Through")} lies there`);
    else open.splice(at, 1);
    if (cell("Set the fence to") !== "the same")
      fence = { at: lengthIn(cell("Set the fence to")), rips: cell("Set the fence to").endsWith("rip") };
    const kept = fence.rips ? [length, fence.at] : [fence.at, width];
    const left = (fence.rips ? width : length) - fence.at - kerf;
    const falls = fence.rips ? [length, left] : [left, width];
    for (const [words, size] of [
      [cell("Stays at the fence"), kept],
      [cell("Falls off"), falls],
    ] as const) {
      const code = /^([PLW]\d+) /.exec(words)?.[1];
      if (code !== undefined) pieces.push({ code, size, label });
      else if (words === "dust" ? left > off : !lengthsIn(words).every((one, i) => near(one, size[i] ?? 0)))
        faults.push(`${label}, cut ${cell("Cut")}: ${words} is ${size.join(" × ")}`);
      else if (words.startsWith("part")) open.push(lengthsIn(words));
    }
  }
  if (open.length > 0) faults.push(`${label}: ${open.map((one) => one.join(" × ")).join(", ")} is never cut`);
  return { label, stock, first, pieces, faults };
}

/** Every bar piece is listed, set off once, and each bar is as long as what comes off it. */
export function barFaults(papers: ReadPapers): readonly string[] {
  const from = new Map(
    papers.lines.flatMap(({ text }) => {
      const [, code = "", bar = ""] = /^(B\d+) .*, from (.*)$/.exec(text) ?? [];
      return code === "" ? [] : [[code, bar] as const];
    }),
  );
  const lengths = new Map(
    tablesWith(papers, "Length", "Codes").flatMap((table) =>
      table.rows.flatMap((row) =>
        cellOf(table, row, "Codes")
          .split(", ")
          .map((code) => [code, lengthIn(cellOf(table, row, "Length"))] as const),
      ),
    ),
  );
  const stops = tablesWith(papers, "Set the stop to", "Falls off")
    .flatMap((table) =>
      table.rows.flatMap((row) =>
        cellOf(table, row, "Falls off")
          .split("; ")
          .flatMap(
            (one) =>
              one
                .split(": ")[1]
                ?.split(", ")
                .map((code) => ({
                  code,
                  bar: one.split(": ")[0] ?? "",
                  at: lengthIn(cellOf(table, row, "Set the stop to")),
                })) ?? [],
          ),
      ),
    )
    .filter(({ code }) => code.startsWith("B"));
  const trim = lengthIn(
    /Cut (\S+ \S+) off/.exec(
      stepsOf(papers).find(({ text }) => /off the left end/.test(text))?.text ?? "",
    )?.[1] ?? "",
  );
  const kerf = kerfTold(papers, /its cut is wider/);
  const sizes = boughtSizes(papers);
  const given = papers.lines.flatMap(({ text, under }) => {
    const [, bar = "", codes = "", left = ""] = /^(Bar \d+): (.*); left over ([^,]*)/.exec(text) ?? [];
    return bar === ""
      ? []
      : [
          {
            bar,
            codes: codes.split(" (")[0]?.split(", ") ?? [],
            left: lengthIn(left),
            stock: (under.at(-1) ?? "").replace("Bars: ", ""),
            rack: codes.includes("rack"),
          },
        ];
  });
  return [
    ...[...from.keys()].filter((code) => !lengths.has(code)).map((code) => `${code} has no length`),
    ...[...from.keys()]
      .filter((code) => stops.filter((one) => one.code === code).length !== 1)
      .map((code) => `${code} does not come off once`),
    ...stops
      .filter(({ code, at, bar }) => from.get(code) !== bar || at !== lengths.get(code))
      .map(({ code }) => `${code} comes off another bar or at another length than listed`),
    ...given.flatMap(({ bar, codes, left, stock, rack }) => {
      const whole = sizes.get(stock)?.[0];
      if (rack || whole === undefined) return [];
      const used = trim + left + sum(codes.map((code) => (lengths.get(code) ?? Number.NaN) + kerf));
      // The last kerf may fall off the end, and each figure is rounded.
      return Math.abs(used - whole) <= 2 * kerf + (codes.length + 2) * 2 * rounding(unitOf(papers))
        ? []
        : [`${bar}: ${used} of ${whole}`];
    }),
  ];
}

/** A row of holes as it stands on the page of a panel. */
interface ReadHoles {
  /** Code and name of the panel. */
  readonly panel: string;
  /** Width and height at the head of its page; none where it has no page. */
  readonly size: readonly number[];
  /** What they hold. */
  readonly holds: string;
  /** What goes into them. */
  readonly fastener: string;
  /** Whether a washer goes under each. */
  readonly washer: boolean;
  /** The bits that drill them. */
  readonly bits: readonly string[];
  /** How many there are. */
  readonly count: number;
  /** None where it is drilled in place. */
  readonly at: readonly (readonly [number, number])[];
}

const bitsIn = (words: string): readonly string[] =>
  words
    .replace(/ behind/, "")
    .split(", ")
    .map((one) => one.replace(/^(bit )?(pilot )?/, ""));

function holesOf(papers: ReadPapers): readonly ReadHoles[] {
  const inTables = tablesWith(papers, "Group", "Holds", "Count").flatMap((table) => {
    const [, fastener = "", washer = "", bits = ""] =
      /^\d+ holes?: (.*?)( with washer)?, bit (.*), when: /.exec(table.caption) ?? [];
    const [, panel = "", size = ""] =
      /^(\S+ .*?)(?:, laminate outside)?, ([^,]*)$/.exec(table.under.at(-1) ?? "") ?? [];
    return table.rows.map((row) => ({
      panel,
      size: lengthsIn(size),
      holds: cellOf(table, row, "Holds"),
      fastener,
      washer: washer !== "",
      bits: bitsIn(bits),
      count: Number(cellOf(table, row, "Count")),
      at: pointsIn(cellOf(table, row, "Across from left × up from bottom")),
    }));
  });
  const inPlace = papers.lines.flatMap(({ text, under }) => {
    const [, count, holds = "", fastener = "", washer, bits = ""] =
      /^(\d+) holes? for (.*?): (.*?)( with washer)?, bit (.*), when: /.exec(text) ?? [];
    const row = { panel: under.at(-1) ?? "", size: [], holds, fastener, washer: washer !== undefined };
    return count === undefined ? [] : [{ ...row, bits: bitsIn(bits), count: Number(count), at: [] }];
  });
  const byHand = papers.lines.flatMap(({ text }) => {
    const [, panel = "", count, fastener = "", holds = "", bits = ""] =
      /^([PS]\d+ [^:]*): (\d+) × (.*?) for (.*?), bit (.*)$/.exec(text) ?? [];
    return count === undefined
      ? []
      : [
          {
            panel,
            size: [],
            holds,
            fastener: fastener.replace(/ with washer$/, ""),
            washer: / with washer$/.test(fastener),
            bits: bitsIn(bits),
            count: Number(count),
            at: [],
          },
        ];
  });
  return [...inTables, ...inPlace, ...byHand];
}

function pointsIn(words: string): readonly (readonly [number, number])[] {
  return words.split("; ").flatMap((one) => {
    const [across = "", up = ""] = one.split(" × ");
    return lengthsIn(across).flatMap((x) => lengthsIn(up).map((y) => [x, y] as const));
  });
}

/** Holes against the drilling tables, the openings, the list of fasteners and the bill. */
export function holeFaults(papers: ReadPapers): readonly string[] {
  const holes = holesOf(papers);
  const pieces = piecesOf(papers);
  const off = 2 * rounding(unitOf(papers));
  const openings = tablesWith(papers, "Opening", "Shape").flatMap((table) =>
    table.rows.map((row) => ({
      panel: table.under.at(-1) ?? "",
      name: cellOf(table, row, "Opening"),
      shape: cellOf(table, row, "Shape"),
      across: cellOf(table, row, "Across, from left"),
      up: cellOf(table, row, "Up, from bottom"),
    })),
  );
  return [
    ...tablesWith(papers, "Group", "Holds", "Count").flatMap(({ caption, head, rows, under }) => {
      const counts = sum(rows.map((row) => Number(row[head.indexOf("Count")])));
      return Number.parseInt(caption, 10) === counts ? [] : [`${under.at(-1)}: ${caption} has ${counts}`];
    }),
    ...holes.flatMap(({ panel, size, holds, count, at }) => [
      ...(at.length > 0 && at.length !== count
        ? [`${panel}, ${holds}: ${count} holes, ${at.length} marks`]
        : []),
      ...(at.every(([x, y]) => x > 0 && y > 0 && x < (size[0] ?? 0) && y < (size[1] ?? 0))
        ? []
        : [`${panel}, ${holds}: a hole beside the panel`]),
    ]),
    ...holes.flatMap(({ panel, size }) => {
      const listed = pieces.get(panel.split(" ")[0] ?? "");
      const same = size.every((one, i) => Math.abs(one - (listed?.size[i] ?? Number.NaN)) < off);
      return same ? [] : [`${panel}: ${size.join(" × ")} here, ${listed?.size.join(" × ")} on the cut list`];
    }),
    ...holes.flatMap((row) =>
      row.at.flatMap(([x, y]) =>
        openings
          .filter(({ panel }) => panel.startsWith(`${row.panel},`))
          .flatMap(({ name, shape, across, up }) => {
            const round = /^round, (.*) across/.exec(shape);
            const [left = 0, right = 0] = lengthsIn(across);
            const [low = 0, high = 0] = lengthsIn(up);
            const inside = round
              ? Math.hypot(x - left, y - low) < lengthIn(round[1] ?? "") / 2
              : x > left && x < right && y > low && y < high;
            return inside ? [`${row.panel}, ${row.holds}: a hole in ${name}`] : [];
          }),
      ),
    ),
    ...holes.flatMap((row, i) =>
      row.at.flatMap(([x, y], k) =>
        holes.flatMap((other, j) =>
          other.panel !== row.panel
            ? []
            : other.at.flatMap(([u, v], l) =>
                (j > i || (j === i && l > k)) && Math.hypot(x - u, y - v) < 8 * off
                  ? [`${row.panel}: holes of ${row.holds} and ${other.holds} meet`]
                  : [],
              ),
        ),
      ),
    ),
    ...openings.flatMap(({ panel, name, across, up }) => checkedFaults(papers, panel, name, across, up)),
    ...totalFaults(papers, holes),
  ];
}

/** What the tape checks must agree with the table of the openings. */
function checkedFaults(
  papers: ReadPapers,
  panel: string,
  name: string,
  across: string,
  up: string,
): readonly string[] {
  const size = lengthsIn(/, ([^,]*)$/.exec(panel)?.[1] ?? "");
  const told = papers.lines.find(
    ({ under, text }) => under.at(-1) === panel && text.includes(`${name} to the right edge`),
  );
  const words =
    told?.text.slice(told.text.indexOf(`${name} to the right edge`) + name.length).split(/[;.](?= |$)/)[0] ??
    "";
  const [right = Number.NaN, top = Number.NaN] = lengthsIn(words);
  if (across.startsWith("centre")) return Number.isNaN(right) ? [`${panel}: no check of ${name}`] : [];
  const off = 4 * rounding(unitOf(papers));
  const agrees =
    Math.abs((size[0] ?? 0) - (lengthsIn(across)[1] ?? 0) - right) < off &&
    Math.abs((size[1] ?? 0) - (lengthsIn(up)[1] ?? 0) - top) < off;
  return agrees ? [] : [`${panel}: ${name} is checked at ${right} and ${top}`];
}

function totalFaults(papers: ReadPapers, holes: readonly ReadHoles[]): readonly string[] {
  const bill = billOf(papers);
  const told = papers.lines.map(({ text }) => text).join("\n");
  return tablesWith(papers, "Fastener", "Needed", "Spare").flatMap((table) =>
    table.rows.flatMap((row) => {
      const cell = (heading: string): string => cellOf(table, row, heading);
      const name = cell("Fastener");
      const mine = holes.filter(({ fastener }) => fastener === name);
      const drilled = sum(mine.map(({ count }) => count));
      const washed = sum(mine.filter(({ washer }) => washer).map(({ count }) => count));
      const line = bill.find(({ item }) => item === name);
      const [packs = 0, of = 0, needed = 0, spare = 0] = [...(line?.count ?? "").matchAll(/\d+/g)].map(
        Number,
      );
      const washers = figureIn(bill.find(({ item }) => item === `washer for ${name}`)?.count ?? "0");
      const bits = mine.flatMap((one) => one.bits);
      return [
        ...(drilled === Number(cell("Needed"))
          ? []
          : [`${name}: ${drilled} holes, ${cell("Needed")} needed`]),
        ...(needed === Number(cell("Needed")) && spare === Number(cell("Spare"))
          ? []
          : [`${name}: the bill counts ${line?.count}`]),
        ...(packs * of >= needed + spare ? [] : [`${name}: too few packs`]),
        ...(washed === Number(cell("Washers")) && washers >= washed
          ? []
          : [`${name}: ${washed} holes with washer, ${cell("Washers")} listed, ${washers} bought`]),
        ...bits
          .filter((bit) => !told.includes(`drill bit ${bit}`))
          .map((bit) => `${name}: bit ${bit} is not on the shopping list`),
      ];
    }),
  );
}

function billOf(papers: ReadPapers) {
  return tablesWith(papers, "Supplier", "Item", "Count", "Each").flatMap((table) =>
    table.rows.map((row) => ({
      supplier: cellOf(table, row, "Supplier"),
      item: cellOf(table, row, "Item"),
      size: cellOf(table, row, "Size"),
      count: cellOf(table, row, "Count"),
      each: figureIn(cellOf(table, row, "Each")),
      cost: figureIn(cellOf(table, row, "Cost")),
    })),
  );
}

/** Pieces of hardware that are bought against those that the steps fit. */
export function hardwareFaults(papers: ReadPapers): readonly string[] {
  const fitted = stepsOf(papers).filter(
    (line) => isIn("Assembly", line) && !line.text.startsWith("Drill the holes of"),
  );
  const counted = (name: string): number =>
    sum(
      fitted.flatMap(({ text }) =>
        [...text.matchAll(/([\w" -]*?) \((\d+)\)/g)].flatMap(([, what = "", count]) =>
          what.trim().endsWith(name) ? [Number(count)] : [],
        ),
      ),
    );
  return billOf(papers).flatMap(({ item, size, count }) => {
    const named = /^in the steps: (.*)$/.exec(size)?.[1];
    if (named === undefined)
      return /^\d+$/.test(count) &&
        !/^(washer|lock nuts)/.test(item) &&
        counted(item) === 0 &&
        !fitted.some(({ text }) => text.includes(`(${item})`))
        ? [`${item} is bought and fitted nowhere`]
        : [];
    const times = sum(named.split(", ").map(counted));
    return times === Number(count) ? [] : [`${item}: ${count} bought, ${times} fitted as ${named}`];
  });
}

/** Things of a workshop, as a step may call them, and the words of a shopping list that provide them. */
const things: readonly (readonly [RegExp, RegExp])[] = [
  [/\bcalliper\b/i, /calliper/],
  [/\bblade\b/i, /blade/],
  [/\btable saw\b/i, /table saw/],
  [/\bmitre saw\b/i, /mitre saw/],
  [/\bcloths?\b/i, /cloths/],
  [/\balcohol\b/i, /alcohol/],
  [/\bkitchen scale\b/i, /kitchen scale/],
  [/\broller covers?\b/i, /roller covers/],
  [/\bspray gun\b/i, /spray gun/],
  [/\bdowels?\b/i, /dowels/],
  [/\bJ-roller\b/i, /J-roller/],
  [/\bcauls\b/i, /cauls/],
  [/\bflush-trim\b/i, /flush-trim/],
  [/\bsandpaper\b/i, /sandpaper/],
  [/\bsealer\b/i, /sealer/],
  [/\bBrush\b/, /brush/],
  [/\brouter\b/i, /router/],
  [/\bguide bush\b/i, /guide bush/],
  [/\bjigsaw\b/i, /jigsaw/],
  [/\bdrill\b/i, /^drill/],
  [/\bscrap\b/i, /scrap boards/],
  [/\bpencil\b/i, /pencil/],
  [/\bclamps?\b/i, /clamps/],
  [/\bsquares\b/i, /squares/],
  [/\btape\b/, /tape/],
  [/\bmasking tape\b/i, /masking tape/],
  [/\bpliers\b/i, /pliers/],
  [/\brivet tool\b/i, /rivet tool/],
  [/\binsert driver\b/i, /insert driver/],
  [/\bscrewdriver\b/i, /screwdriver/],
  [/\bnuts?\b/, /nuts/],
  [/\bblanket\b/i, /blanket/],
  [/\bStrap\b/, /strap/],
  [/\banchors?\b/i, /anchors/],
  [/\bcleats\b/, /cleats/],
  [/\bfoam\b/i, /foam/],
  [/\bcradle\b/i, /cradle/],
  [/\bcord\b/i, /cord/],
  [/\bgrilles?\b/i, /grilles/],
  [/\bpacking\b/i, /packing/],
  [/\bstrike plate\b/i, /strike plate/],
  [/\btrestles?\b/i, /trestles/],
  [/\bweights?\b/, /weights/],
  [/\bScrew\b|\bwith \d+ screws\b/, /screwdriver/],
  [/\bBolt on\b/, /wrenches/],
  [/\boil\b/i, /oil/],
  [/\bglazing tape\b/i, /glazing/],
  [/\bdeburring tool\b/i, /deburring/],
  [/\bfile\b/i, /^file/],
  [/\bscale\b/i, /scale/],
];

/** Whatever a step uses stands on the shopping list. */
export function shoppingFaults(papers: ReadPapers): readonly string[] {
  const list = papers.lines
    .filter((line) => isIn("Buy list", line) && line.kind === "point")
    .map(({ text }) => text);
  const laid = tablesWith(papers, "While", "Where the panels lie").flatMap((table) =>
    table.rows.map((row) => cellOf(table, row, "Where the panels lie")),
  );
  const used = [...stepsOf(papers).map(({ text }) => text), ...laid];
  return things.flatMap(([inStep, onList]) => {
    const where = used.find((text) => inStep.test(text));
    return where === undefined || list.some((item) => onList.test(item))
      ? []
      : [`${inStep.source} is used ("${where.slice(0, 60)}") and on no list`];
  });
}

const near = (one: number, other: number, off: number): boolean => Math.abs(one - other) <= off;

/** Money, masses and hours add up. */
export function sumFaults(papers: ReadPapers): readonly string[] {
  return [...moneyFaults(papers), ...massFaults(papers), ...hourFaults(papers)];
}

function moneyFaults(papers: ReadPapers): readonly string[] {
  const bill = billOf(papers);
  const goods = bill.filter(({ supplier }) => supplier !== "Total");
  const total = bill.find(({ supplier }) => supplier === "Total")?.cost ?? Number.NaN;
  const cover =
    papers.tables.flatMap(({ rows }) => rows).find(([what]) => what === "What the bill comes to")?.[1] ?? "";
  const groups = tablesWith(papers, "Supplier", "Lines", "Of it left over").flatMap((table) => table.rows);
  const orders = groups.filter(([name]) => name !== "Total");
  const [, , inAll = "", left = ""] = groups.find(([name]) => name === "Total") ?? [];
  const cents = 0.006;
  return [
    ...goods.flatMap(({ item, count, each, cost }) => {
      const times = count === "" ? 1 : figureIn(count.split(/ (?=[a-z(])/)[0] ?? "");
      return near(times * each, cost, cents * times) ? [] : [`${item}: ${count} at ${each} is not ${cost}`];
    }),
    ...(near(sum(goods.map(({ cost }) => cost)), total, cents * goods.length)
      ? []
      : ["the bill does not add up"]),
    ...(figureIn(cover) === total ? [] : [`the cover says ${cover}, the bill ${total}`]),
    ...orders.flatMap(([name = "", , cost = ""]) => {
      const own = goods.filter(({ supplier }) => supplier === name);
      return near(sum(own.map((one) => one.cost)), figureIn(cost), cents * own.length)
        ? []
        : [`${name}: ${cost}`];
    }),
    ...(figureIn(inAll) === total ? [] : ["the orders do not add up to the bill"]),
    ...(near(sum(orders.map(([, , , rest = ""]) => figureIn(rest))), figureIn(left), cents * orders.length)
      ? []
      : ["what is left over does not add up"]),
  ];
}

function massFaults(papers: ReadPapers): readonly string[] {
  const facts = papers.tables.flatMap(({ rows }) => rows);
  const [empty = Number.NaN, loaded = Number.NaN] = lengthsIn(
    facts.find(([what]) => what?.startsWith("Weight, empty"))?.[1] ?? "",
  );
  const sections = tablesWith(papers, "Section", "Empty", "Loaded", "Clear inside").flatMap((table) =>
    table.rows.map((row) => ({
      name: cellOf(table, row, "Section"),
      empty: figureIn(cellOf(table, row, "Empty")),
      loaded: figureIn(cellOf(table, row, "Loaded")),
    })),
  );
  // Three figures are printed of each.
  const off = (whole: number): number => 0.006 * whole;
  return [
    ...(near(sum(sections.map((one) => one.empty)), empty, off(empty))
      ? []
      : ["empty weights do not add up"]),
    ...(near(sum(sections.map((one) => one.loaded)), loaded, off(loaded))
      ? []
      : ["loaded weights do not add up"]),
    ...facts.flatMap(([what = "", planned = ""]) => {
      const [, name, which] = /^Weight of (.*), (empty|loaded)$/.exec(what) ?? [];
      const section = sections.find((one) => one.name === name);
      return section === undefined || section[which === "empty" ? "empty" : "loaded"] === figureIn(planned)
        ? []
        : [`${what}: ${planned}`];
    }),
  ];
}

/** "3.6 h", "41 min" or "27 s" in minutes. */
export const minutesIn = (text: string): number => {
  const [, figure, unit] = /([\d.]+)\s*(h|min|s)\b/.exec(text) ?? [];
  return Number(figure) * ({ h: 60, min: 1, s: 1 / 60 }[unit ?? ""] ?? Number.NaN);
};

function hourFaults(papers: ReadPapers): readonly string[] {
  const [table] = tablesWith(papers, "Work", "Pace", "Count", "Planned");
  if (!table) return [];
  const lines = table.rows.map((row) => ({
    work: cellOf(table, row, "Work"),
    pace: cellOf(table, row, "Pace"),
    count: Number(cellOf(table, row, "Count")),
    planned: minutesIn(cellOf(table, row, "Planned")),
  }));
  const whole = lines.find(({ work }) => work === "The whole case")?.planned ?? Number.NaN;
  const works = lines.filter(({ pace }) => pace !== "");
  const cover = papers.tables.flatMap(({ rows }) => rows).find(([what]) => what === "Work")?.[1] ?? "";
  const days = tablesWith(papers, "Day", "At the bench").flatMap(({ rows }) => rows);
  const share = 0.06;
  return [
    ...works.flatMap(({ work, pace, count, planned }) =>
      near(minutesIn(pace) * count, planned, share * planned + 1)
        ? []
        : [`${work}: ${count} at ${pace} is not ${planned} min`],
    ),
    ...(works.length === 0 || near(sum(works.map(({ planned }) => planned)), whole, share * whole)
      ? []
      : ["hours do not add up"]),
    ...(works.length === 0 || near(minutesIn(cover), whole, share * whole)
      ? []
      : [`the cover says ${cover}`]),
    ...days.flatMap(([day, work = "", bench = ""]) => {
      const told = sum([...work.matchAll(/[\d.]+ (h|min)\b/g)].map(([one]) => minutesIn(one)));
      const at = bench === "–" ? 0 : minutesIn(bench);
      return near(told, at, share * at + 2) && at <= 8 * 60 ? [] : [`day ${day}: ${work}, ${bench}`];
    }),
    ...(days.length === 0 ||
    near(sum(days.map(([, , bench = ""]) => (bench === "–" ? 0 : minutesIn(bench)))), whole, share * whole)
      ? []
      : ["the days do not add up to the hours"]),
    ...stepTimeFaults(papers, whole),
    ...pairFaults(papers, whole),
  ];
}

/** Steps: each is there, and their times add up to the hours of the whole. */
function stepTimeFaults(papers: ReadPapers, whole: number): readonly string[] {
  return tablesWith(papers, "Row", "Steps in their order", "Time of one").flatMap((table) => {
    const cells = table.rows.map((row) => ({
      row: cellOf(table, row, "Row"),
      time: cellOf(table, row, "Time of one"),
    }));
    const added = sum(cells.map(({ time }) => (time === "–" ? 0 : minutesIn(time))));
    return [
      ...(near(added, whole, 0.02 * whole) ? [] : [`the steps take ${added} of ${whole} min`]),
      ...cells.flatMap(({ row }, i) => (row === `${i + 1}` ? [] : [`row ${i + 1} is called ${row}`])),
    ];
  });
}

/** Two people: nobody works longer than a day, and what they do is the whole, in six tenths where they share it. */
function pairFaults(papers: ReadPapers, whole: number): readonly string[] {
  return tablesWith(papers, "Day", "Both together").flatMap((table) => {
    const hours = (row: readonly string[], heading: string): number =>
      sum(
        [
          ...cellOf(table, row, heading)
            .replace(/^from hour [^:]*: /, "")
            .matchAll(/[\d.]+ (h|min|s)\b/g),
        ].map(([one]) => minutesIn(one)),
      );
    const days = table.rows.map((row) => {
      const both = hours(row, "Both together");
      const [one, other] = [hours(row, "Side by side: the one"), hours(row, "The other")];
      return { longest: both + Math.max(one, other), work: both / 0.6 + one + other };
    });
    const added = sum(days.map(({ work }) => work));
    return [
      ...(near(added, whole, 0.03 * whole) ? [] : [`two people do ${added} of ${whole} min`]),
      ...days.flatMap(({ longest }, i) =>
        longest <= 1.02 * 8 * 60 ? [] : [`day ${i + 1} of two has ${longest} min`],
      ),
    ];
  });
}

/** Steps come in an order that a builder can follow. */
export function orderFaults(papers: ReadPapers): readonly string[] {
  const texts = stepsOf(papers).map(({ text }) => text);
  const at = (words: RegExp): number => texts.findIndex((text) => words.test(text));
  const before = (first: RegExp, then: RegExp): readonly string[] =>
    at(first) < 0 || at(then) < 0 || at(first) < at(then)
      ? []
      : [`${first.source} comes after ${then.source}`];
  return [
    ...before(/^Saw each sheet/, /^Weigh the can/),
    ...before(/^Weigh the can/, /^Leave it flat/),
    ...before(/^Leave it flat .* before trimming/, /^Trim flush/),
    ...before(/^Trim flush/, /^Openings first/),
    ...before(/^Openings first/, /^Drill square/),
    ...before(/^Drill square/, /^Dry fit/),
    ...before(/^Stack the sections on/, /^Shut every latch/),
    ...sectionOrderFaults(papers, texts),
    ...barUseFaults(papers, texts),
    ...cureFaults(papers),
    ...rowFaults(papers),
  ];
}

/** Each section: dry fitted, closed, then its door; what cannot pass goes in before it is closed. */
function sectionOrderFaults({ lines }: ReadPapers, texts: readonly string[]): readonly string[] {
  const stages = [
    ...new Set(lines.filter((line) => isIn("Assembly", line)).map(({ under }) => under[1] ?? "")),
  ];
  const names = [...new Set(stages.flatMap((one) => /Stage \d+[^.]*\. (.*): the box/.exec(one)?.[1] ?? []))];
  const place = (words: RegExp): number => stages.findIndex((one) => words.test(one));
  return names.flatMap((name) => {
    const [flat, box, inside, closes, door] = [
      `${name}: the flat`,
      `${name}: the box`,
      `${name}: what stands`,
      `${name}: \\S+ closes`,
      `${name}: the doors?`,
    ].map((one) => place(new RegExp(one)));
    const order = [flat, box, inside, closes, door].filter(
      (one): one is number => one !== undefined && one >= 0,
    );
    const last = /: the box without (.*)$/.exec(stages[box ?? -1] ?? "")?.[1];
    const lowered = texts.findIndex(
      (text) => text.startsWith(`Put ${last} with its bars `) || text.startsWith(`Put on ${last} `),
    );
    return [
      ...(order.every((one, i) => i === 0 || one > (order[i - 1] ?? 0))
        ? []
        : [`the stages of ${name} stand in another order`]),
      ...(last === undefined || lowered >= 0 ? [] : [`${last} is never put on`]),
    ];
  });
}

/** The rows of steps: bars are set when a section stands, it is closed once they hold below, and all is cleaned last. */
function rowFaults(papers: ReadPapers): readonly string[] {
  return tablesWith(papers, "Row", "Steps in their order").flatMap((table) => {
    const rows = table.rows.map((row) => cellOf(table, row, "Steps in their order"));
    const at = (words: string): number => rows.findIndex((row) => row.includes(words));
    const inOrder = [
      "saw the pieces",
      "glue the laminate",
      "trim the edges",
      "cut the openings",
      "drill the panels",
    ]
      .map(at)
      .filter((one) => one >= 0);
    const names = [...new Set(rows.flatMap((row) => /stand up the panels of (\S+)/.exec(row)?.[1] ?? []))];
    return [
      ...(inOrder.every((one, i) => i === 0 || one > (inOrder[i - 1] ?? 0))
        ? []
        : ["pieces in another order"]),
      ...names.flatMap((name) => {
        const last = / but (\S+?)(?:;|$)/.exec(rows[at(`stand up the panels of ${name}`)] ?? "")?.[1];
        const [stood, closed] = [at(`stand up the panels of ${name}`), at(`put on ${last}`)];
        return last === undefined || (stood > (inOrder.at(-1) ?? -1) && closed > stood)
          ? []
          : [`${name} is closed in row ${closed + 1}, stood up in row ${stood + 1}`];
      }),
    ];
  });
}

/** Each bar is riveted on once, after it is cut. */
function barUseFaults(papers: ReadPapers, texts: readonly string[]): readonly string[] {
  const codes = papers.lines.flatMap(({ text }) => /^(B\d+) .*, from /.exec(text)?.[1] ?? []);
  const set = texts.flatMap((text) =>
    /Put on the bars|with the bars/.test(text) ? (text.match(/\bB\d+\b/g) ?? []) : [],
  );
  return codes
    .filter((code) => set.filter((one) => one === code).length !== 1)
    .map((code) => `${code} is set ${set.filter((one) => one === code).length} times`);
}

/** Glue cures before the day's work that bears on it. */
function cureFaults(papers: ReadPapers): readonly string[] {
  const cure = Math.max(
    0,
    ...stepsOf(papers).map(({ text }) =>
      minutesIn(/^Leave it flat for (.*) before trimming/.exec(text)?.[1] ?? "0 min"),
    ),
  );
  const days = tablesWith(papers, "Day", "At the bench").flatMap(({ rows }) => rows);
  const works = days.map(([, work = ""]) => work.replace(/^from hour [^:]*: /, ""));
  const glued = works.findLastIndex((work) => /glue/.test(work) && !/cures/.test(work));
  const opened = works.findIndex((work) => /trim|opening|drill/.test(work) && !/glue/.test(work));
  if (glued < 0 || opened < 0) return [];
  const parts = (works[glued] ?? "").split("; ");
  const upToGlue = parts.slice(0, 1 + parts.findLastIndex((part) => part.includes("glue"))).join("; ");
  const left = sum([...upToGlue.matchAll(/[\d.]+ (h|min)\b/g)].map(([one]) => minutesIn(one)));
  const begins = 60 * Number(/^from hour ([\d.]+) on/.exec(days[opened]?.[1] ?? "")?.[1] ?? 0);
  const waited = (opened - glued) * 24 * 60 + begins - left;
  return waited >= cure - 10
    ? []
    : [`glue of day ${glued + 1} has ${waited / 60} h of ${cure / 60} before day ${opened + 1}`];
}

/** Words of a sentence: what has a letter or a figure in it. */
const wordsIn = (sentence: string): number =>
  sentence.split(/\s+/).filter((word) => /[A-Za-z0-9]/.test(word)).length;

/** No sentence has more than 25 words. */
export function longSentences({ lines, tables }: ReadPapers): readonly string[] {
  const cells = tables.flatMap(({ rows }) => rows.flat());
  return [...lines.map(({ text }) => text), ...cells.filter((cell) => /[a-z]{3}.*[.?!]$/.test(cell))]
    .flatMap((text) => sentencesOf(text))
    .filter((sentence) => wordsIn(sentence) > 25)
    .map((sentence) => `${wordsIn(sentence)} words: ${sentence}`);
}

/** One system of units, but on the shopping list; names of what is bought are names. */
export function unitFaults(papers: ReadPapers): readonly string[] {
  const other =
    unitOf(papers) === "in" ? /\d (mm|cm|m|kg|g|N|m²|mL|L)\b/ : /\d (in|ft|lb|lbf|oz|ft²|fl oz|gal)\b/;
  const names = [...billOf(papers).map(({ item }) => item)]
    .filter((name) => /\d/.test(name))
    .sort((a, b) => b.length - a.length);
  const told = [
    ...papers.lines,
    ...papers.tables.map((table) => ({
      ...table,
      text: [table.caption, ...table.head, ...table.rows.flat()].join(" | "),
    })),
  ];
  return told
    .filter((line) => !isIn("Buy list", line))
    .flatMap(({ text }) => {
      const bare = names.reduce((all, name) => all.replaceAll(name, "it"), text);
      const found = other.exec(bare);
      return found ? [`${bare.slice(Math.max(0, found.index - 30), found.index + 12)}`] : [];
    });
}

/** Every line to fill in has a number of its own, and they run on. */
export function numberFaults({ tables }: ReadPapers): readonly string[] {
  const marks = tables.flatMap((table) => {
    const at = table.head.lastIndexOf("No.");
    return table.rows.flatMap((row) => (/^M\d+$/.test(row[at] ?? "") ? [row[at] ?? ""] : []));
  });
  const blank = tables
    .flatMap(({ rows }) => rows)
    .filter((row) => row.some((cell) => /^_+$/.test(cell)) && !row.some((cell) => /^M\d+$/.test(cell)));
  return [
    ...marks.flatMap((mark, i) => (mark === `M${i + 1}` ? [] : [`${mark} is number ${i + 1}`])),
    ...blank.map((row) => `no number: ${row.join(" | ")}`),
  ];
}
