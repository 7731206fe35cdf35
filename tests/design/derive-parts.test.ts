import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Case, deriveParts, type Parts, type Section } from "../../lib/design/index.js";
import { roundedBoxOf } from "../../lib/shape/index.js";
import { mirrored, quarterTurned } from "./moved-case.js";
import { saneCase, stock } from "./sane-case.js";

const any = saneCase({ seats: true });
const derive = (description: Case): Parts => deriveParts(description, stock, []);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
/** Lengths are metres: a millionth of a millimetre. */
const near = 1e-9;
const runs = { numRuns: 60 };

function totals({ panels, facings, bars, fastenings, hardware }: Parts): Record<string, number> {
  return {
    gross: sum(panels.map(({ grossArea }) => grossArea)),
    net: sum(panels.map(({ netArea }) => netArea)),
    cut: sum(panels.flatMap(({ openings }) => openings.map(({ perimeter }) => perimeter))),
    glued: sum(facings.map(({ gluedArea }) => gluedArea)),
    bars: sum(bars.map(({ length }) => length)),
    fasteners: sum(fastenings.map(({ count }) => count)),
    hardware: hardware.length,
  };
}

function expectSameTotals(one: Parts, other: Parts): void {
  const expected = totals(other);
  for (const [what, total] of Object.entries(totals(one)))
    expect(total, what).toBeCloseTo(expected[what] ?? 0, 9);
}

describe("areas and lengths add up", () => {
  test("what is left of a panel and what is cut out of it is the whole panel", () => {
    fc.assert(
      fc.property(any, (description) => {
        for (const { width, height, netArea, openings, grossArea, outline } of derive(description).panels) {
          expect(grossArea).toBeCloseTo(width * height, 12);
          const radius = roundedBoxOf(outline)?.radius ?? Number.NaN;
          const rounding = (4 - Math.PI) * radius ** 2;
          expect(netArea + sum(openings.map(({ area }) => area)) + rounding).toBeCloseTo(grossArea, 12);
        }
      }),
      runs,
    );
  });

  test("a section's outside is its inside and the panels around it", () => {
    fc.assert(
      fc.property(any, (description) => {
        const { sections } = derive(description);
        description.sections.forEach((section, i) => {
          const { size } = sections[i]?.outside ?? { size: { x: 0, y: 0, z: 0 } };
          const thick = (face: keyof Section["panels"]): number => thickness(section, face);
          expect(size.x).toBeCloseTo(thick("left") + section.inside.width + thick("right"), 12);
          expect(size.y).toBeCloseTo(thick("front") + section.inside.depth + thick("back"), 12);
          expect(size.z).toBeCloseTo(thick("bottom") + section.inside.height + thick("top"), 12);
        });
      }),
      runs,
    );
  });

  test("bars and their set-backs are as long as the outside edges they cover", () => {
    fc.assert(
      fc.property(any, (description) => {
        const { bars, sections } = derive(description);
        for (const { name, outside } of sections) {
          const edges = description.sections.find((section) => section.name === name)?.edges;
          const own = bars.filter((bar) => bar.section === name);
          const covered = own.map((bar) => edgeLength(bar.edge, outside.size));
          const setBacks = own.map((bar) => 2 * (edges?.[bar.edge]?.extrusion?.setBack ?? 0));
          expect(sum(own.map(({ length }) => length)) + sum(setBacks)).toBeCloseTo(sum(covered), 10);
        }
      }),
      runs,
    );
  });

  test("panels with their facings fill the wall of the box, but for corners that no panel runs into", () => {
    fc.assert(
      fc.property(saneCase({ seats: false }), (description) => {
        const { panels, sections } = derive(description);
        for (const { name, outside } of sections) {
          const section = description.sections.find((one) => one.name === name) as Section;
          const { width, depth, height } = section.inside;
          const wall = outside.size.x * outside.size.y * outside.size.z - width * depth * height;
          const filled = panels
            .filter((panel) => panel.section === name && panel.role === "face")
            .map((panel) => panel.grossArea * thickness(section, panel.face as keyof Section["panels"]));
          expect(sum(filled) + emptyCorners(section)).toBeCloseTo(wall, 10);
        }
      }),
      runs,
    );
  });

  test("no two sheets of a section are in one place", () => {
    fc.assert(
      fc.property(any, (description) => {
        const walls = derive(description).panels.filter(({ role }) => role === "face");
        walls.forEach((one, i) => {
          for (const other of walls.slice(0, i)) expect(overlapOf(one.box, other.box)).toBeLessThan(near);
        });
      }),
      runs,
    );
  });
});

test("a door's leaf fits its opening with the clearance all round", () => {
  fc.assert(
    fc.property(any, (description) => {
      const { panels } = derive(description);
      for (const leaf of panels.filter(({ role }) => role === "leaf")) {
        const wall = panels.find(({ id }) => leaf.id.startsWith(`${id}.`));
        const hole = wall?.openings.find(({ name }) => leaf.id.endsWith(`.${name}`));
        expect(leaf.width).toBeCloseTo((hole?.width ?? 0) - 0.006, 12);
        expect(leaf.height).toBeCloseTo((hole?.height ?? 0) - 0.006, 12);
        // a gap of constant width: its area is the mean of the two outlines times the clearance
        const bare = leaf.netArea + sum(leaf.openings.map(({ area }) => area));
        const radius = roundedBoxOf(leaf.outline)?.radius ?? Number.NaN;
        const outline = 2 * (leaf.width + leaf.height) - (8 - 2 * Math.PI) * radius;
        if (radius > 0)
          expect((hole?.area ?? 0) - bare).toBeCloseTo(0.003 * outline + Math.PI * 0.003 ** 2, 12);
      }
    }),
    runs,
  );
});

describe("fasteners", () => {
  test("are as many as their holes, and hardware has what its table says", () => {
    fc.assert(
      fc.property(any, (description) => {
        const { fastenings, hardware } = derive(description);
        for (const { count, at } of fastenings) expect(at).toHaveLength(count);
        for (const { id, stock: item } of hardware) {
          const own = fastenings.filter(({ holds }) => holds === id);
          expect(sum(own.map(({ count }) => count))).toBe(item.fasteners);
        }
      }),
      runs,
    );
  });

  test("of a bar are equally spaced, no further apart than its pitch, and as many on both legs", () => {
    fc.assert(
      fc.property(any, (description) => {
        const { fastenings, bars } = derive(description);
        for (const bar of bars) {
          const [one, other, ...more] = fastenings.filter(({ holds }) => holds === bar.id);
          const section = description.sections.find(({ name }) => name === bar.section);
          const { pitch = 0, endDistance = 0 } = section?.edges[bar.edge]?.extrusion ?? {};
          expect(more).toEqual([]);
          expect(one?.count).toBe(other?.count);
          expect(one?.pitch).toBeLessThanOrEqual(pitch + near);
          expect((one?.pitch ?? 0) * ((one?.count ?? 0) - 1)).toBeCloseTo(bar.length - 2 * endDistance, 10);
          const at = one?.at ?? [];
          for (let i = 1; i < at.length; i++) {
            const [a, b] = [at[i - 1], at[i]];
            const step = Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0));
            expect(step).toBeCloseTo(one?.pitch ?? 0, 10);
          }
        }
      }),
      runs,
    );
  });
});

describe("moving a case changes no total", () => {
  test("sections in another order", () => {
    fc.assert(
      fc.property(any, (description) => {
        const reordered = { ...description, sections: [...description.sections].reverse() };
        expectSameTotals(derive(reordered), derive(description));
      }),
      runs,
    );
  });

  test("a quarter turn, which swaps width and depth", () => {
    fc.assert(
      fc.property(any, (description) => {
        const turned = derive(quarterTurned(description));
        const straight = derive(description);
        expectSameTotals(turned, straight);
        expect(turned.sections[0]?.outside.size.x).toBeCloseTo(straight.sections[0]?.outside.size.y ?? 0, 12);
      }),
      runs,
    );
  });

  test("a higher place for a section lifts its parts and nothing else", () => {
    fc.assert(
      fc.property(any, (description) => {
        const [lowest] = description.sections;
        if (!lowest) return;
        const alone = derive({ ...description, sections: [lowest], hardware: [] });
        const raised = derive({
          ...description,
          sections: [{ ...lowest, name: "base" }, lowest],
          hardware: [],
        });
        const lift = alone.sections[0]?.outside.size.z ?? 0;
        for (const panel of alone.panels) {
          const same = raised.panels.find(({ id }) => id === panel.id);
          expect(same?.centroid.x).toBeCloseTo(panel.centroid.x, 10);
          expect(same?.centroid.y).toBeCloseTo(panel.centroid.y, 10);
          expect(same?.centroid.z).toBeCloseTo(panel.centroid.z + lift, 10);
        }
      }),
      runs,
    );
  });
});

describe("a mirrored case has mirrored parts", () => {
  test("panels, bars, hardware and centroids", () => {
    fc.assert(
      fc.property(any, (description) => {
        const straight = derive(description);
        const mirror = derive(mirrored(description));
        expectSameTotals(mirror, straight);
        const across = straight.sections[0]?.outside.size.x ?? 0;
        const swapped = (id: string): string =>
          id.replace(/left|right/g, (side) => (side === "left" ? "right" : "left"));
        for (const panel of straight.panels) {
          const image = mirror.panels.find(({ id }) => id === swapped(panel.id));
          expect(image?.width).toBeCloseTo(panel.width, 12);
          expect(image?.height).toBeCloseTo(panel.height, 12);
          expect(image?.netArea).toBeCloseTo(panel.netArea, 12);
          expect(image?.centroid.x).toBeCloseTo(across - panel.centroid.x, 10);
          expect(image?.centroid.y).toBeCloseTo(panel.centroid.y, 10);
          expect(image?.centroid.z).toBeCloseTo(panel.centroid.z, 10);
        }
        const placesOf = ({ hardware, bars }: Parts, flip: (x: number) => number): string[] =>
          [...hardware.map(({ centre }) => centre), ...bars.map(({ centroid }) => centroid)]
            .map(({ x, y, z }) => [flip(x), y, z].map((value) => value.toFixed(7)).join())
            .sort();
        expect(placesOf(mirror, (x) => x)).toEqual(placesOf(straight, (x) => across - x));
      }),
      runs,
    );
  });
});

function thickness({ panels }: Section, face: keyof Section["panels"]): number {
  const panel = panels[face];
  if (!panel) return 0;
  const { sheet, facing } = panel;
  return (sheet === "ply 10" ? 0.01 : 0.015) + (facing ? (facing.sides === "both" ? 0.002 : 0.001) : 0);
}

function edgeLength(
  edge: string,
  size: { readonly x: number; readonly y: number; readonly z: number },
): number {
  if (!/top|bottom/.test(edge)) return size.z;
  return /left|right/.test(edge) ? size.y : size.x;
}

/** Volume of the corners at which each panel stops at another (a pinwheel). */
function emptyCorners(section: Section): number {
  const levels = ["bottom", "top"] as const;
  const depths = ["front", "back"] as const;
  const widths = ["left", "right"] as const;
  return sum(
    levels.flatMap((level) =>
      depths.flatMap((depth) =>
        widths.map((width) => {
          const winners = [`${level}-${depth}`, `${level}-${width}`, `${depth}-${width}`].map(
            (edge) => section.edges[edge as keyof Section["edges"]]?.through,
          );
          const filled = new Set(winners).size < 3;
          return filled
            ? 0
            : thickness(section, level) * thickness(section, depth) * thickness(section, width);
        }),
      ),
    ),
  );
}

type Box = Parts["panels"][number]["box"];

/** Volume that two boxes share. */
function overlapOf(one: Box, other: Box): number {
  const shared = (["x", "y", "z"] as const).map((axis) => {
    const low = Math.max(one.low[axis], other.low[axis]);
    const high = Math.min(one.low[axis] + one.size[axis], other.low[axis] + other.size[axis]);
    return Math.max(high - low, 0);
  });
  return shared.reduce((volume, length) => volume * length, 1);
}
