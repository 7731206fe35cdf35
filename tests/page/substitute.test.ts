import { expect, test } from "vitest";
import { substitute } from "../../lib/page/index.js";
import { texTokens } from "../../lib/page/tex-token.js";
import { texOfValue } from "../../lib/page/tex-value.js";

function symbols(
  values: Readonly<Record<string, string>>,
): { symbol: string; meaning: string; value: string }[] {
  return Object.entries(values).map(([symbol, value]) => ({ symbol, meaning: "", value }));
}

/** TeX without the spaces and braces that do not show. */
function plain(tex: string | undefined): string | undefined {
  return tex?.replace(/\\left|\\right|\\,|[{}\s]|\\mathrm/g, "");
}

test.each([
  [
    "w = \\frac{5 q L^4}{384 E I}",
    { q: "120 N/m", L: "1200 mm", E: "9 GPa", I: "20 cm4" },
    "\\frac5(120N/m)(1200mm)^4384(9GPa)(20cm^4)",
  ],
  ["F = W", { W: "12 N" }, "12N"],
  ["s = a + b", { a: "1 mm", b: "-2 mm" }, "1mm+(-2mm)"],
  ["D = E_x t^3", { E: "1 Pa", E_x: "2 Pa", t: "3 mm" }, "(2Pa)(3mm)^3"],
  ["D = E_{x} t_c", { E_x: "2 Pa", "t_{c}": "3 mm" }, "(2Pa)(3mm)"],
  ["k = 12 (1 - \\nu^2)", { "\\nu": "0.3" }, "12(1-(0.3)^2)"],
  ["h = \\sqrt{a}", { a: "9 mm" }, "\\sqrt9mm"],
  ["m = \\rho \\text{ of } L", { "\\rho": "7 kg/m3", L: "2 m" }, "(7kg/m^3)\\textof(2m)"],
  ["x = \\frac{1}{d'} d", { d: "2 mm" }, "\\frac1d'(2mm)"],
  ["x = \\bar{d} d", { d: "2 mm" }, "\\bard(2mm)"],
  ["x = F_{d} + d", { d: "2 mm" }, "F_d+2mm"],
])("%s takes its numbers", (equation, values, expected) => {
  expect(plain(substitute(equation, symbols(values)))).toBe(expected);
});

test.each([
  ["no equals sign", "q L", { q: "1 N/m" }],
  ["a sum", "w = \\sum_{i} m_i x", { x: "1 m" }],
  ["an integral", "w = \\int_0^L q dx", { L: "1 m", q: "1 N/m" }],
  ["no input on the right", "w = f", { q: "1 N/m" }],
  ["a list among the values", "M = m g", { m: "1 kg; 2 kg", g: "9.81 m/s2" }],
  ["a word among the values", "w = k q", { k: "clamped", q: "1 N/m" }],
])("numbers do not fit into %s", (_, equation, values) => {
  expect(substitute(equation, symbols(values))).toBeUndefined();
});

test.each([
  ["1200 mm", "1200\\,\\mathrm{mm}"],
  ["14-1/2 in", "14\\tfrac{1}{2}\\,\\mathrm{in}"],
  ["3/8 in", "\\tfrac{3}{8}\\,\\mathrm{in}"],
  ["14\u202f580 mm4", "14\\,580\\,\\mathrm{mm}^{4}"],
  ["1.2e-5", "1.2\\times10^{-5}"],
  ["21 °C", "21\\,{}^{\\circ}\\mathrm{C}"],
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
