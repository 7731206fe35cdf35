/** Runs cases of solids that share space, or do not. */
import type { Vector3 } from "../../../algebra/matrix3.js";
import { findOverlaps, type Overlap, type Solid } from "../../../assembly/index.js";
import { casesOf, type FileCase, nameOf, numberOf } from "../cutting-cases.js";
import type { ReferenceOutcome } from "../outcome.js";
import { expectedOf, listOf, outlineOf, vectorOf } from "./outline-in-file.js";

const ways: Readonly<Record<string, readonly [Vector3, Vector3]>> = {
  x: [
    [0, 1, 0],
    [0, 0, 1],
  ],
  y: [
    [0, 0, 1],
    [1, 0, 0],
  ],
  z: [
    [1, 0, 0],
    [0, 1, 0],
  ],
};

function solidOf(one: FileCase): Solid {
  const key = nameOf(one);
  const [x, y] = ways[String(one.along ?? "z")] ?? [];
  if (!x || !y)
    throw new TypeError(`${key}: expected "along" among x, y, z, got ${JSON.stringify(one.along)}`);
  const holes = one.holes === undefined ? [] : listOf(one, "holes");
  return {
    key,
    outline: outlineOf(one.outline, key),
    holes: holes.map((hole) => outlineOf(hole, `hole of ${key}`)),
    place: { origin: vectorOf(one.at, `"at" of ${key}`), x, y },
    depth: numberOf(one, "depth") * 1e-3,
  };
}

/** Names of a pair, in the order of the alphabet. */
function pairName(names: readonly string[]): string {
  return [...names].sort().join(" and ");
}

/** How far off a depth may be where the file says nothing: half of one in its third figure, mm. */
const usual = 5e-4;

/** Two rows a case: which pairs share space, and how deep the deepest do. */
export function overlapOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return casesOf(content).flatMap((one) => {
    const meant = one.meant === undefined ? [] : listOf(one, "meant");
    const fine = new Set(meant.map((pair) => pairName(pair as readonly string[])));
    const solids = listOf(one, "solids").map((solid) => solidOf(solid as FileCase));
    const found = findOverlaps(solids, (a, b) => fine.has(pairName([a.key, b.key])));
    return [pairsOutcome(one, found), ...depthOutcome(one, found)];
  });
}

function pairsOutcome(one: FileCase, found: readonly Overlap[]): ReferenceOutcome {
  const pairs = listOf(expectedOf(one), "pairs").map((pair) => pairName(pair as readonly string[]));
  const [expected, ours] = [pairs, found.map((pair) => pairName([pair.one.key, pair.other.key]))].map(
    (names) => names.sort().join("; ") || "none",
  );
  return {
    ...{ item: nameOf(one), result: "pairs", expected: String(expected), ours: String(ours) },
    ...{ error: "–", tolerance: "none", holds: expected === ours, known: String(one.known ?? "") },
  };
}

function depthOutcome(one: FileCase, found: readonly Overlap[]): readonly ReferenceOutcome[] {
  const wanted = expectedOf(one);
  if (wanted.depth === undefined) return [];
  const depth = numberOf(wanted, "depth");
  const tolerance = numberOf(wanted, "tolerance", usual);
  const ours = 1e3 * Math.max(0, ...found.map((pair) => pair.depth));
  return [
    {
      ...{ item: nameOf(one), result: "depth", expected: `${depth} mm`, ours: `${ours.toFixed(4)} mm` },
      ...{ error: `${(ours - depth).toFixed(4)} mm`, tolerance: `${tolerance} mm` },
      ...{ holds: Math.abs(ours - depth) <= tolerance, known: String(one.known ?? "") },
    },
  ];
}
