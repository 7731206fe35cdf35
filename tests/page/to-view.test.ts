/** Rules of thumb that fit units of their own show their numbers in those units, whatever the reader's are. */
import { expect, test } from "vitest";
import { inch, mm } from "../../lib/face.js";
import type { Finding } from "../../lib/findings/index.js";
import type { AnyFormula } from "../../lib/formula.js";
import {
  cableFill,
  dowelYieldMoment,
  headPullThrough,
  inclinedScrewPull,
  lagWithdrawalAllowable,
  liftLimit,
  meanLoad,
  plywoodEmbedment,
  screwWithdrawalAllowable,
  screwWithdrawalCharacteristic,
  slipStiffness,
  timberEmbedment,
  wallTransmittance,
  wireResistance,
} from "../../lib/index.js";
import { renderViews } from "../../lib/page/index.js";
import { toViews, workedView } from "../../lib/page/to-view.js";
import { money } from "../../lib/quantity/index.js";

const lift = { twist: "30 deg", rate: "0.2 lifts/min", duration: "up to 1 h", grip: "fair" };

test.each<[string, AnyFormula, Record<string, unknown>, number, RegExp]>([
  [
    "screw withdrawal, psi",
    screwWithdrawalAllowable,
    { specificGravity: 0.5, diameter: "0.25 in", penetration: "1 in", base: "solid wood" },
    1,
    /psi/,
  ],
  [
    "lag screw, inches and pounds",
    lagWithdrawalAllowable,
    { specificGravity: 0.5, diameter: "6.35 mm", penetration: "25.4 mm" },
    1,
    /0\.25.*in.*lbf/,
  ],
  [
    "screw of the European code, mm and newtons",
    screwWithdrawalCharacteristic,
    { density: "350 kg/m3", diameter: "4 mm", penetration: "30 mm", base: "solid wood" },
    1,
    /350.*kg.*30.*mm.*1204.*N/,
  ],
  [
    "pocket screw",
    inclinedScrewPull,
    { density: "350 kg/m3", diameter: "6 mm", penetration: "30 mm", angle: "45 deg", count: 2 },
    1,
    /45.*mm.*N|mm.*45.*N/,
  ],
  ["embedment in ply, MPa", plywoodEmbedment, { density: "600 kg/m3", diameter: "4 mm" }, 1, /mm.*MPa/],
  [
    "embedment in timber, drilled",
    timberEmbedment,
    { density: "350 kg/m3", diameter: "4 mm", hole: "drilled" },
    1,
    /drilled/,
  ],
  [
    "slip, driven nail",
    slipStiffness,
    { density: "400 kg/m3", diameter: "3 mm", shank: "driven nail" },
    1,
    /driven nail/,
  ],
  [
    "yield moment",
    dowelYieldMoment,
    { tensileStrength: "650 MPa", diameter: "3 mm" },
    1,
    /3392.*Nmm|3393.*Nmm/,
  ],
  [
    "pull-through",
    headPullThrough,
    { specificGravity: 0.5, headDiameter: "0.5 in", thickness: "0.375 in" },
    1,
    /psi/,
  ],
  [
    "lift, centimetres and degrees",
    liftLimit,
    { ...lift, reach: "400 mm", height: "600 mm", startHeight: "600 mm", travel: "600 mm" },
    5,
    /40.*cm/,
  ],
  [
    "wire, square millimetres and degrees Celsius",
    wireResistance,
    { area: "2.5 mm2", length: "10 m", temperature: "75 °C", stranding: 1 },
    1,
    /75/,
  ],
])("%s", (_, formula, inputs, count, shown) => {
  for (const system of ["inch", "metric"] as const) {
    const { substituted } = workedView(formula.worked(formula.read(inputs)), { system });
    expect(substituted).toHaveLength(count);
    expect(substituted.join(" ")).toMatch(shown);
  }
});

test.each<[AnyFormula, Record<string, unknown>, number]>([
  [
    meanLoad,
    {
      loads: [
        { name: "lamp", power: "18 W", duty: 0.8 },
        { name: "scope", power: "6 W", duty: 0.5 },
      ],
    },
    2,
  ],
  [cableFill, { cables: ["8 mm", "10 mm"], opening: "400 mm2" }, 1],
  [
    wallTransmittance,
    {
      layers: [
        { thickness: "9 mm", conductivity: "0.13 W/mK" },
        { thickness: "1 mm", conductivity: "0.25 W/mK" },
      ],
      insideFilm: "0.13 m2K/W",
      outsideFilm: "0.13 m2K/W",
    },
    1,
  ],
])("sums over a list show their numbers", (formula, inputs, count) => {
  expect(workedView(formula.worked(formula.read(inputs)), { system: "inch" }).substituted).toHaveLength(
    count,
  );
});

test("the table beside the equation stays in the reader's units", () => {
  const inputs = { ...lift, reach: "400 mm", height: "600 mm", startHeight: "600 mm", travel: "600 mm" };
  const view = workedView(liftLimit.worked(liftLimit.read(inputs)), { system: "inch" });
  expect(view.inputs[0]?.value).toBe("15.75 in");
});

test("of like findings the worst alone is drawn, and no picture is made of the others", () => {
  const made: string[] = [];
  const finding = (id: string, ratio: number): Finding => ({
    ...{
      id,
      asks: id.split(".").slice(0, 2).join("."),
      topic: "travel",
      subject: id,
      question: "Does it?",
      tier: "safety",
      verdict: "holds",
      ratio,
    },
    ...{ answer: "Yes.", because: [], cautions: [], assumes: [], remedies: [], source: [] },
    figure: () => {
      made.push(id);
      const points = [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 0, y: 1 },
      ];
      return { title: id, description: "", shapes: [{ what: "sheet", points }] };
    },
  });
  const all = [finding("travel.lift.a", 0.2), finding("travel.lift.b", 0.9), finding("travel.tip", 0.1)];
  const views = toViews(all);
  expect(made).toEqual(["travel.lift.b", "travel.tip"]);
  expect(views.map((view) => view.kind === "finding" && view.drawing?.title)).toEqual([
    undefined,
    "travel.lift.b",
    "travel.tip",
  ]);
  expect(String(renderViews(views))).toContain("<summary>Picture: travel.lift.b</summary>");
});

test("money is said with its currency, a place and a size in words, anything else is refused", () => {
  expect(toViews(money(1449.76, "USD"))).toEqual([{ kind: "sentence", text: "1\u202f449.76 USD" }]);
  const [size] = toViews({ width: inch(11.75), height: inch(13.75) });
  expect(size).toMatchObject({ kind: "sentence", text: "11-3/4 in wide, 13-3/4 in high" });
  const [place] = toViews({ x: mm(300), y: mm(50), z: mm(20) });
  expect(place).toMatchObject({ text: "300 mm to the right, 50 mm to the back, 20 mm up" });
  const odd: object = { width: mm(300), colour: "red" };
  expect(() => toViews(odd)).toThrow("an object with width, colour");
});
