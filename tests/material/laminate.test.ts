import fc from "fast-check";
import { expect, test } from "vitest";
import {
  freeBending,
  type Layer,
  laminate,
  sheetLayer,
  sheetMaterials,
  veneerLayer,
} from "../../lib/material/index.js";
import { Angle, Length, mm, Pressure } from "../../lib/quantity/index.js";
import { anyLayer, anyStack, birch, close, right } from "./layers.js";

const thickness = (layers: readonly Layer[]): number =>
  layers.reduce((sum, layer) => sum + layer.thickness, 0);

const mirrored = (layers: readonly Layer[]): readonly Layer[] => [...layers, ...layers.toReversed()];

const turned = (layers: readonly Layer[]): readonly Layer[] =>
  layers.map((layer) => ({ ...layer, grain: Angle.si(right - layer.grain) }));

test("a mirrored stack does not stretch when it bends", () => {
  fc.assert(
    fc.property(anyStack, (layers) => {
      const { coupling, bending, thickness: t } = laminate(mirrored(layers));
      return coupling.flat().every((entry) => Math.abs(entry) <= (1e-9 * bending[0][0]) / t);
    }),
  );
});

test("along and across add up to the same for plies of one veneer, however thick each is", () => {
  const plies = fc.array(fc.tuple(fc.double({ min: 0.3, max: 4, noNaN: true }), fc.boolean()), {
    minLength: 1,
    maxLength: 11,
  });
  fc.assert(
    fc.property(plies, (given) => {
      const layers = given.map(([t, crossed]) => ({
        ...birch,
        thickness: Length.of(t, "mm"),
        grain: crossed ? right : Angle.si(0),
      }));
      const { bending } = laminate(layers);
      const share = 1 - 0.43 ** 2 * 0.05;
      const sum = ((15e9 + 0.75e9) / share / 12) * thickness(layers) ** 3;
      const twist = (1e9 / 12) * thickness(layers) ** 3;
      return close(bending[0][0] + bending[1][1], sum) && close(bending[2][2], twist);
    }),
  );
});

test("a quarter turn swaps along and across and keeps the rest", () => {
  fc.assert(
    fc.property(anyStack, (layers) => {
      const [one, other] = [freeBending(laminate(layers)), freeBending(laminate(turned(layers)))];
      return (
        close(one[0][0], other[1][1], 1e-7) &&
        close(one[1][1], other[0][0], 1e-7) &&
        close(one[2][2], other[2][2], 1e-7)
      );
    }),
  );
});

test("a stack is as stiff upside down", () => {
  fc.assert(
    fc.property(anyStack, (layers) => {
      const [up, down] = [freeBending(laminate(layers)), freeBending(laminate(layers.toReversed()))];
      return close(up[0][0], down[0][0], 1e-7) && close(up[1][1], down[1][1], 1e-7);
    }),
  );
});

test("cutting one layer into two changes nothing", () => {
  const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  fc.assert(
    fc.property(anyStack, anyLayer, share, (layers, layer, part) => {
      const thin = { ...layer, thickness: Length.si(layer.thickness * part) };
      const rest = { ...layer, thickness: Length.si(layer.thickness * (1 - part)) };
      const whole = freeBending(laminate([...layers, layer]));
      const cut = freeBending(laminate([...layers, thin, rest]));
      return close(whole[0][0], cut[0][0], 1e-7) && close(whole[2][2], cut[2][2], 1e-7);
    }),
  );
});

test("free edges never stiffen a panel, and one more layer never softens it", () => {
  fc.assert(
    fc.property(anyStack, anyLayer, (layers, layer) => {
      const stack = laminate(layers);
      const bare = freeBending(stack);
      const faced = freeBending(laminate([...layers, layer]));
      return bare[0][0] <= stack.bending[0][0] * (1 + 1e-12) && faced[0][0] > bare[0][0];
    }),
  );
});

test("grain at 45 degrees: stiffness along and across are equal and the panel twists as it bends", () => {
  const slanted = laminate([{ ...birch, grain: Angle.of(45, "deg") }]).bending;
  expect(slanted[0][0]).toBeCloseTo(slanted[1][1], 9);
  expect(slanted[0][2]).toBeGreaterThan(0.1 * slanted[0][0]);
});

test("the grain of a layer that is alike in every direction does not matter", () => {
  const sheet = sheetLayer(sheetMaterials.steel, mm(2));
  const straight = laminate([sheet]).bending;
  fc.assert(
    fc.property(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), (angle) => {
      const slanted = laminate([{ ...sheet, grain: Angle.si(angle) }]).bending.flat();
      return straight.flat().every((entry, i) => Math.abs(entry - (slanted[i] ?? 0)) < 1e-9 * straight[0][0]);
    }),
  );
});

test("a peeled yellow birch veneer has the handbook's ratios of its modulus", () => {
  const veneer = veneerLayer("yellow birch", mm(1.5), Angle.si(0));
  expect(Pressure.in(veneer.modulusAlong, "GPa")).toBeCloseTo(15.29, 9);
  expect(Pressure.in(veneer.modulusAcross, "GPa")).toBeCloseTo(0.7645, 9);
  expect(Pressure.in(veneer.shearModulus, "GPa")).toBeCloseTo(1.03972, 9);
  expect(veneer.density).toBeCloseTo(694.4, 9);
});

test("a metal's ratio of stiffness to weight is that of every metal, a laminate's a quarter of it", () => {
  const specific = Object.values(sheetMaterials).map(({ modulus, density }) => modulus / density / 1e6);
  const [aluminium = 0, steel = 0, laminate = 0] = specific;
  expect(aluminium / steel).toBeCloseTo(1, 1);
  expect(laminate / steel).toBeCloseTo(0.25, 1);
});
