/** Text in the other system of units: what a page shows in inches said in millimetres, and the other way, without a rebuild. */
import { unitSize } from "../shown-value.js";

/** The two systems that a page is read in. */
export type UnitSystem = "inch" | "metric";

/** What becomes of a unit. */
export interface UnitChange {
  /** The unit that stands in its place. */
  readonly to: string;
  /** Size of the old unit in the new one. */
  readonly times: number;
  /** Added after that, for temperatures. */
  readonly plus?: number;
}

/** The changes of a system by unit. */
export type UnitChanges = Readonly<Record<string, UnitChange>>;

/** Pairs by the unit that is left: what a number of it becomes. "g" is not among them: it stands for accelerations too. */
const metricUnits: Readonly<Record<string, string>> = {
  mm: "in",
  cm: "in",
  m: "ft",
  kg: "lb",
  N: "lbf",
  kgf: "lbf",
  kN: "lbf",
  GPa: "psi",
  MPa: "psi",
  kPa: "psi",
  "N/m": "lbf/in",
  "N/mm": "lbf/in",
  N·m: "lbf·in",
  "N·m/m": "lbf",
  "kg/m2": "lb/ft2",
  "kg/m3": "lb/ft3",
  "g/m2": "oz/ft2",
  mm2: "in2",
  cm2: "in2",
  mm4: "in4",
  m2: "ft2",
  "m3/h": "cfm",
  "m/s": "mph",
  "km/h": "mph",
  kg·m2: "lb·ft2",
  "g/m": "oz/ft",
};
const inchUnits: Readonly<Record<string, string>> = {
  in: "mm",
  ft: "m",
  lb: "kg",
  oz: "g",
  lbf: "N",
  psi: "kPa",
  psf: "kPa",
  "lbf/in": "N/mm",
  "lbf/ft": "N/m",
  lbf·in: "N·m",
  lbf·ft: "N·m",
  "lb/ft2": "kg/m2",
  "lb/ft3": "kg/m3",
  "oz/ft2": "g/m2",
  in2: "mm2",
  in4: "mm4",
  ft2: "m2",
  cfm: "m3/h",
  mph: "m/s",
  lb·ft2: "kg·m2",
  "oz/ft": "g/m",
};

function changes(pairs: Readonly<Record<string, string>>, warmth: UnitChanges): UnitChanges {
  const steps = Object.entries(pairs).flatMap(([from, to]) => {
    const [size, other] = [unitSize(from), unitSize(to)];
    if (size === undefined || other === undefined) return [];
    const change = (unit: string): UnitChange => ({ to: unit, times: size / other });
    const raised = (unit: string): string => unit.replace("2", "²").replace("3", "³").replace("4", "⁴");
    return raised(from) === from && raised(to) === to
      ? [[from, change(to)] as const]
      : ([
          [from, change(to)],
          [raised(from), change(raised(to))],
        ] as const);
  });
  return { ...Object.fromEntries(steps), ...warmth };
}

/** What becomes of the units that do not belong to a system. */
export const unitChanges: Readonly<Record<UnitSystem, UnitChanges>> = {
  inch: changes(metricUnits, {
    "°C": { to: "°F", times: 1.8, plus: 32 },
    K: { to: "F°", times: 1.8 },
    "W/K": { to: "W/F°", times: 1 / 1.8 },
  }),
  metric: changes(inchUnits, {
    "°F": { to: "°C", times: 1 / 1.8, plus: -32 / 1.8 },
    "F°": { to: "K", times: 1 / 1.8 },
    "W/F°": { to: "W/K", times: 1.8 },
  }),
};

/**
 * A text with every value in the units of a system, to as many figures as it has. Numbers that share a unit ("7 to 10 mm",
 * "30 × 24 in", "9.6 GPa ± 0.7") change together; so do prices and times per unit ("2.19 USD/ft²"). It rests on nothing but what it is given, so that a page can carry it as text.
 *
 * @param keep names as things are sold, in which nothing changes: "laminate sheet 1 mm"
 * @example inUnits("13-1/2 in by 24 in", unitChanges.metric, []) // 343 mm by 610 mm
 */
export function inUnits(text: string, changed: UnitChanges, keep: readonly string[]): string {
  const quoted = (word: string): string => word.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
  const longest = (a: string, b: string): number => b.length - a.length;
  const unit = Object.keys(changed).sort(longest).map(quoted).join("|");
  const number = "(?:\\d+-)?\\d+/\\d+|\\d[\\d\\u202f]*(?:\\.\\d+)?";
  const chain = `(?<![\\d\\w./-])(-?(?:(?:${number})(?: to | × | x | and | by |, |–))*(?:${number}))([ \\u00a0])((?:[A-Z]{3}/|min/)?)(${unit})(?![A-Za-z²³⁴·°/\\d])( ± (?:${number})(?![\\d.]*[ \\u00a0](?:${unit})))?`;
  const names = keep
    .map((name) => quoted(name).replace(/ /g, "[ \\u00a0]"))
    .sort(longest)
    .join("|");
  const value = (shown: string): number => {
    if (shown.startsWith("-")) return -value(shown.slice(1));
    const plain = shown.replace(/\u202f/g, "");
    const [, whole = "0", over, under] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(plain) ?? [];
    return over === undefined ? Number(plain) : Number(whole) + Number(over) / Number(under);
  };
  const figures = (shown: string): number => {
    if (shown.includes("/")) return 3;
    const digits = shown.replace(/[^\d.]/g, "").replace(/^[0.]+/, "");
    const counted = digits.includes(".") ? digits.replace(".", "") : digits.replace(/0+$/, "");
    return Math.min(4, Math.max(2, counted.length));
  };
  const told = (shown: string, { to, times, plus = 0 }: UnitChange, offset: boolean): string => {
    const result = value(shown) * times + (offset ? plus : 0);
    const close = Number(result.toPrecision(figures(shown)));
    const rounded = /^[A-Z]{3}\//.test(to) ? Number(close.toFixed(2)) : close;
    const plain = rounded >= 1e-4 || rounded <= 0 ? String(rounded) : rounded.toFixed(6);
    return /^-?\d{5,}$/.test(plain) ? plain.replace(/\B(?=(\d{3})+$)/g, "\u202f") : plain;
  };
  const pattern = new RegExp(names === "" ? chain : `(${names})|${chain}`, "g");
  return text.replace(pattern, (all: string, ...groups: unknown[]) => {
    const [kept, numbers, gap, per, from, spread] = (
      names === "" ? [undefined, ...groups] : groups
    ) as string[];
    const own = changed[from ?? ""];
    if (kept !== undefined || !own) return all;
    const change = per ? { to: `${per}${own.to}`, times: 1 / own.times } : own;
    const each = new RegExp(`-?(?:${number})`, "g");
    const said = (numbers ?? "").replace(each, (one) => told(one, change, true));
    const about = (spread ?? "").replace(each, (one) => told(one, change, false));
    return `${said}${gap}${change.to}${about}`;
  });
}

/** Elements whose text is no value of the case: code, equations, sources, names. */
const leftAlone = "script|style|pre|code|math|title";

/** A length of a system with the same in the other in brackets. */
const secondUnit: Readonly<Record<UnitSystem, RegExp>> = {
  inch: /(\d[ \u00a0]in) \([\d.]+(?: × [\d.]+)*[ \u00a0]mm\)/g,
  metric: /(\d[ \u00a0]mm) \([\d./-]+(?: × [\d./-]+)*[ \u00a0]in\)/g,
};

/**
 * A page's markup with the text between its tags in the units of a system.
 *
 * @param keep names as things are sold
 */
export function markupInUnits(markup: string, system: UnitSystem, keep: readonly string[]): string {
  const changed = unitChanges[system];
  const parts = new RegExp(`<(${leftAlone})\\b[\\s\\S]*?</\\1>|<[^>]+>|[^<]+`, "g");
  return markup.replace(parts, (part) =>
    part.startsWith("<") ? part : inUnits(part.replace(secondUnit[system], "$1"), changed, keep),
  );
}
