import { expect, test } from "vitest";
import type { SymbolView } from "../../lib/page/index.js";
import { shownNumber, texOfValue } from "../../lib/page/shown-value.js";
import { substitute } from "../../lib/page/substitute.js";
import { evaluate } from "../../lib/page/tex-arithmetic.js";
import { texClauses, texTokens } from "../../lib/page/tex-token.js";

type Values = Readonly<Record<string, string>>;

function symbols(values: Values): SymbolView[] {
  return Object.entries(values).map(([symbol, value]) => ({ symbol, meaning: "", value }));
}

/** The lines without the spaces, braces and bracket sizes that do not show. */
function lines(equation: string, inputs: Values, results: Values): string[] {
  return substitute(equation, symbols(inputs), symbols(results)).map((tex) =>
    tex.replace(/\\left|\\right|\\,|[{}\s]|\\mathrm/g, ""),
  );
}

test.each<[string, Values, Values, string]>([
  ["F = W", { W: "12 N" }, { F: "12 N" }, "F=12N=12N"],
  ["s = a + b", { a: "5 mm", b: "-2 mm" }, { s: "3 mm" }, "s=5mm+(-2mm)=3mm"],
  ["s = a + b", { a: "1 in", b: "3/8 in" }, { s: "1-3/8 in" }, "s=1in+\\tfrac38in=1\\tfrac38in"],
  ["F = E E_x t^2", { E: "2 Pa", E_x: "3", t: "2 m" }, { F: "24 N" }, "F=(2Pa)(3)(2m)^2=24N"],
  ["V = E_{x} t_c", { E_x: "2 m2", "t_{c}": "3 m" }, { V: "6 m3" }, "V=(2m^2)(3m)=6m^3"],
  ["k = 12 (1 - \\nu^2)", { "\\nu": "0.5" }, { k: "9" }, "k=12(1-(0.5)^2)=9"],
  ["t = \\sqrt{a}", { a: "9" }, { t: "3" }, "t=\\sqrt9=3"],
  ["x = \\tfrac13 a", { a: "9 mm" }, { x: "3 mm" }, "x=\\tfrac13(9mm)=3mm"],
  ["x = a \\tan\\theta", { a: "9 mm", "\\theta": "45°" }, { x: "9 mm" }, "x=(9mm)\\tan(45^\\circ)=9mm"],
  [
    "n = \\left\\lceil \\frac{a}{b} \\right\\rceil",
    { a: "9 mm", b: "2 mm" },
    { n: "5" },
    "n=\\lceil\\frac9mm2mm\\rceil=5",
  ],
  ["R = \\min(a, 2b)", { a: "9 mm", b: "2 mm" }, { R: "4 mm" }, "R=\\min(9mm,2(2mm))=4mm"],
  ["F = m g", { m: "10 kg" }, { F: "98.07 N" }, "F=(10kg)g=98.07N"],
  ["x = a + 0.1\\,\\mathrm{mm}", { a: "1 mm" }, { x: "1.1 mm" }, "x=1mm+0.1mm=1.1mm"],
  ["M = 1 - |V-75|", { V: "74.5" }, { M: "0.5" }, "M=1-|(74.5)-75|=0.5"],
  ["t = a \\cos^2\\theta", { a: "8 mm", "\\theta": "45°" }, { t: "4 mm" }, "t=(8mm)\\cos^2(45^\\circ)=4mm"],
  ["s = a (1 - e^{-t})", { a: "2", t: "0.6931" }, { s: "1" }, "s=(2)(1-e^-0.6931)=1"],
  ["d = 2 a \\text{ (driven)}", { a: "2 mm" }, { d: "4 mm" }, "d=2(2mm)\\text(driven)=4mm"],
  ["m = 16\\,600 a", { a: "2" }, { m: "33\u202f200" }, "m=16600(2)=33200"],
])("%s takes its numbers", (equation, inputs, results, line) => {
  expect(lines(equation, inputs, results)).toEqual([line]);
});

test("a number given beside the printed text is what the equation takes", () => {
  const inputs = [
    { symbol: "D", value: "0.25 in", number: 0.25 },
    { symbol: "G", value: "0.5", number: 0.5 },
  ];
  const result = [{ symbol: "W", value: "1.5 lbf", number: 1.5 }];
  expect(substitute("W = 12\\,G D", inputs, result)).toHaveLength(1);
  expect(
    substitute(
      "W = 12\\,G D",
      inputs.map(({ symbol, value }) => ({ symbol, value })),
      result,
    ),
  ).toEqual([]);
});

test("a short sum is written out, term by term; a long one, or one over nothing known, is left", () => {
  const item = (power: number): SymbolView[] => symbols({ P_i: `${power} W`, d_i: "0.5" });
  const mean = (count: number): string[] =>
    substitute(
      "M = \\frac{1}{2}\\sum P_i d_i + Q",
      [
        { symbol: "P_i, d_i", value: "a list", items: Array.from({ length: count }, () => item(4)) },
        { symbol: "Q", value: "1 W" },
      ],
      [{ symbol: "M", value: `${count + 1} W` }],
    );
  expect(mean(2).map((tex) => tex.replace(/\\left|\\right|\\,|[{}\s]|\\mathrm/g, ""))).toEqual([
    "M=\\frac12((4W)(0.5)+(4W)(0.5))+1W=3W",
  ]);
  expect(mean(7)).toEqual([]);
  const two = { symbol: "a_i", value: "a list", items: [symbols({ a_i: "2" }), symbols({ a_i: "3" })] };
  const [less = ""] = substitute("M = 9 - \\sum a_i", [two], symbols({ M: "4" }));
  expect(less.replace(/[{}\s]|\\left|\\right/g, "")).toBe("M=9-(2+3)=4");
  expect(substitute("M = \\sum k_j", symbols({ k: "2" }), symbols({ M: "2" }))).toEqual([]);
});

test("a record's numbers go in one by one", () => {
  const stiffness = { symbol: "a, b", value: "a record", fields: symbols({ a: "2", b: "3" }) };
  expect(substitute("M = a b", [stiffness], symbols({ M: "6" }))).toHaveLength(1);
});

test("each of several equations takes its numbers, also from the one before", () => {
  expect(
    lines(
      "A = b h,\\quad V = A l;\\; W = \\sum_i w_i",
      { b: "2 m", h: "3 m", l: "4 m" },
      { A: "6 m2", V: "24 m3", W: "1" },
    ),
  ).toEqual(["A=(2m)(3m)=6m^2", "V=(6m^2)(4m)=24m^3"]);
});

test.each<[string, string, Values, Values]>([
  ["no equals sign", "q L", { q: "1 N/m", L: "1 m" }, {}],
  ["a sum", "w = \\sum_{i} m_i x", { x: "1 m" }, { w: "1 m" }],
  ["an integral", "w = \\int_0^L q dx", { L: "1 m", q: "1 N/m" }, { w: "1 N" }],
  ["no input on the right", "w = 3", { q: "1 N/m" }, { w: "3" }],
  ["a letter with no value", "w = q f", { q: "1 N/m" }, { w: "1 N/m" }],
  ["a list among the values", "M = m g", { m: "1 kg; 2 kg" }, { M: "3 N" }],
  ["a word among the values", "w = k q", { k: "clamped", q: "1 N/m" }, { w: "1 N/m" }],
  ["no result of that name", "w = q", { q: "1 N/m" }, { v: "1 N/m" }],
  ["a subscript of its own", "x = F_{d}", { d: "2 mm", F: "2 mm" }, { x: "2 mm" }],
  ["a prime", "x = d'", { d: "2 mm" }, { x: "2 mm" }],
  ["an accent", "x = \\bar{d}", { d: "2 mm" }, { x: "2 mm" }],
  [
    "a rule in inches and pounds",
    "W = 2850 G^2 D p",
    { G: "0.62", D: "4.826 mm", p: "25.4 mm" },
    { W: "925.9 N" },
  ],
  ["numbers that do not come to the result", "s = a + b", { a: "1 mm", b: "2 mm" }, { s: "4 mm" }],
  ["a division by nothing", "s = a / b", { a: "1 mm", b: "0 mm" }, { s: "4" }],
])("no line for %s", (_, equation, inputs, results) => {
  expect(lines(equation, inputs, results)).toEqual([]);
});

test.each([
  ["2 + 3 \\cdot 4 - 1", 13],
  ["-2^2", -4],
  ["8 / 2 / 2", 2],
  ["2 (1 + 2)^{2}", 18],
  ["\\frac{1}{2} + \\tfrac14", 0.75],
  ["9\\sqrt3", 9 * Math.sqrt(3)],
  ["\\pi", Math.PI],
  ["\\max(1, 2 \\times 3, 4)", 6],
  ["\\ln(1)", 0],
  ["\\arcsin\\frac12", Math.PI / 6],
  ["e^{1}", Math.E],
])("%s reckons to %d", (tex, value) => {
  expect(evaluate(texTokens(tex))).toBeCloseTo(value, 12);
});

test.each(["2 +", "(2", "2 = 2", "x", "\\frac{1}{0}", "\\sqrt{-1}", "1 \\pm 2", ""])(
  "%s is not evaluated",
  (tex) => {
    expect(evaluate(texTokens(tex))).toBeUndefined();
  },
);

test.each([
  ["1200 mm", 1.2],
  ["14-1/2 in", 14.5 * 0.0254],
  ["14\u202f580 mm4", 1.458e-8],
  ["21 °C", 294.15],
  ["35 %", 0.35],
  ["45°", Math.PI / 4],
  ["1.2e-5", 1.2e-5],
  ["-12.50 USD", -12.5],
])("%s as a number in SI", (text, value) => {
  expect(shownNumber(text)).toBeCloseTo(value, 14);
});

test("what is not one value has no number", () => {
  expect(["free", "1 kg; 2 kg", "", "3 lifts/min", "4 by 6 m"].map(shownNumber)).toEqual(
    Array(5).fill(undefined),
  );
});

test.each([
  ["1200 mm", "1200\\,\\mathrm{mm}"],
  ["14-1/2 in", "14\\tfrac{1}{2}\\,\\mathrm{in}"],
  ["3/8 in", "\\tfrac{3}{8}\\,\\mathrm{in}"],
  ["14\u202f580 mm4", "14\\,580\\,\\mathrm{mm}^{4}"],
  ["1.2e-5", "1.2\\times10^{-5}"],
  ["21 °C", "21\\,{}^{\\circ}\\mathrm{C}"],
  ["45°", "45{}^{\\circ}"],
  ["35 %", "35\\,\\%"],
  ["12.50 USD", "12.50\\,\\mathrm{USD}"],
  ["3 N·m2", "3\\,\\mathrm{N}\\cdot \\mathrm{m}^{2}"],
])("%s as TeX", (text, tex) => {
  expect(texOfValue(text)).toBe(tex);
});

test("what is not one value has no TeX", () => {
  expect(["free", "1 kg; 2 kg", "", "4 by 6 m of it"].map(texOfValue)).toEqual(Array(4).fill(undefined));
});

test("scripts read the same with and without braces", () => {
  expect(texTokens("E_x^2")).toEqual(texTokens("E _ {x} ^ {2}"));
});

test("commas within brackets do not part equations", () => {
  expect(texClauses("a = f(b, c),\\quad d = [e; f]").length).toBe(2);
});
