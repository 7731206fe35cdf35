/** One rule for whether a rivet closes its stack, whoever asks. */
import { expect, test } from "vitest";
import type { Fastening } from "../../lib/design/index.js";
import { rivetGrips } from "../../lib/findings/joints/rivets.js";
import { closesStack, closingParts, gripCases, type ReviewInput } from "../../lib/model/index.js";
import { Length, mm } from "../../lib/quantity/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const { case: description, stock, measurements, parts } = designOf(smallJob);
const group = rivetGroup();

function rivetGroup(): Fastening {
  const found = parts.fastenings.find(({ fastener }) => fastener.kind === "rivet");
  if (!found) throw new Error("the small job has no rivets");
  return found;
}

/** The small job with one group of rivets, whose layers and longest stack are these. */
function withStack(layers: readonly number[], gripMax: number): ReviewInput {
  const fastening: Fastening = {
    ...group,
    backIsBareWood: false,
    stack: layers.map((thickness) => ({ what: "ply", thickness: Length.si(thickness) })),
    fastener: { ...group.fastener, gripMin: mm(0), gripMax: Length.si(gripMax) },
  };
  return { case: description, stock, measurements, parts: { ...parts, fastenings: [fastening] } };
}

/** What list, table and finding say of that group. */
function said(input: ReviewInput) {
  return {
    list: input.parts.fastenings.map(closesStack),
    table: gripCases(input).map(({ fits }) => fits),
    finding: rivetGrips(input).map(({ verdict }) => verdict),
  };
}

test("a stack as thick as the rivet closes is closed, however its layers round when they are added", () => {
  const input = withStack([0.003, 0.006], 0.009);
  const sum = input.parts.fastenings[0]?.stack.reduce((total, { thickness }) => total + thickness, 0);
  expect(sum).toBeGreaterThan(0.009);
  expect(said(input)).toEqual({ list: [true], table: [true], finding: ["holds"] });
});

test("a stack a hundredth of a millimetre too thick is not closed", () => {
  expect(said(withStack([0.003, 0.00601], 0.009))).toEqual({
    list: [false],
    table: [false],
    finding: ["fails"],
  });
});

test("what is bought and set in place of a rivet that does not close is the shortest of its width that does", () => {
  const input = withStack([0.003, 0.009], 0.009);
  const [group] = input.parts.fastenings;
  if (!group) throw new Error("no group");
  const other = (name: string, gripMax: number, length: number, diameter = group.fastener.diameter) => ({
    ...group.fastener,
    ...{ name, gripMax: Length.si(gripMax), length: Length.si(length), diameter },
  });
  const fasteners = [
    group.fastener,
    other("thin", 0.013, 0.015, Length.si(0.9 * group.fastener.diameter)),
    other("longest", 0.02, 0.022),
    other("longer", 0.013, 0.015),
  ];
  const { parts, substituted } = closingParts(input.parts, { fasteners });
  expect(parts.fastenings.map(({ fastener }) => fastener.name)).toEqual(["longer"]);
  expect(substituted.map(({ named }) => named)).toEqual([group.fastener]);
  const closes = withStack([0.003, 0.006], 0.009);
  expect(closingParts(closes.parts, { fasteners }).parts).toBe(closes.parts);
  expect(closingParts(input.parts, { fasteners: [group.fastener] }).substituted).toEqual([]);
});
