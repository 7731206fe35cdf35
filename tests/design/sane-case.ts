/** Random sane cases for laws: sizes, builds, openings and hardware of every kind, placed where they fit. */
import fc from "fast-check";
import {
  type Case,
  type Edge,
  edgeNames,
  type Face,
  faces,
  type Opening,
  type Panel,
  type PlacedHardware,
  type Section,
  type Stock,
} from "../../lib/design/index.js";
import { type Length, mm } from "../../lib/quantity/index.js";
import { circle, polygon, rectangle, slot } from "../../lib/shape/index.js";
import { designOf, smallJob } from "./small-job.js";

const small = designOf(smallJob);
/** The stock that every random case is made of. */
export const stock: Stock = small.stock;

const length = (low: number, high: number): fc.Arbitrary<Length> =>
  fc.integer({ min: low * 10, max: high * 10 }).map((tenths) => mm(tenths / 10));

const at = { left: 0, bottom: 0 };
const size = (height: fc.Arbitrary<Length>) => fc.record({ width: length(40, 90), height });
const shape: fc.Arbitrary<Opening["shape"]> = fc.oneof(
  fc.tuple(size(length(40, 90)), length(0, 20)).map(([sides, radius]) => ({
    kind: "rectangle",
    outline: rectangle({ ...at, ...sides }, radius),
  })),
  length(30, 90).map((diameter) => ({ kind: "circle", outline: circle({ x: 0, y: 0 }, diameter / 2) })),
  size(length(20, 90)).map((sides) => ({ kind: "slot", outline: slot({ ...at, ...sides }) })),
  fc.record({ x: length(20, 90), y: length(20, 90), skew: length(0, 20) }).map(({ x, y, skew }) => ({
    kind: "polygon",
    outline: polygon([
      { x: 0, y: 0 },
      { x, y: skew },
      { x: mm(5), y },
    ]),
  })),
);

/** An opening near one corner, small enough to leave the others free; some are doors. */
const openings: fc.Arbitrary<readonly Opening[]> = fc
  .uniqueArray(fc.constantFrom("bottom-left", "bottom-right", "top-left", "top-right"), { maxLength: 3 })
  .chain((corners) =>
    fc.tuple(
      ...corners.map((from, i) =>
        fc.record({ shape, across: length(55, 70), up: length(55, 70), isDoor: fc.boolean() }).map(
          ({ isDoor, ...rest }): Opening => ({
            name: `hole ${i + 1}`,
            from: from as Opening["from"],
            to: "edge",
            ...rest,
            ...(isDoor && rest.shape.kind !== "polygon" ? { leaf: { hinge: "left", clearance: mm(3) } } : {}),
          }),
        ),
      ),
    ),
  );

const panel: fc.Arbitrary<Panel> = fc
  .record({
    sheet: fc.constantFrom("ply 10", "ply 15"),
    grain: fc.constantFrom("across" as const, "up" as const),
    sides: fc.constantFrom("none" as const, "outside" as const, "both" as const),
    openings,
  })
  .map(({ sheet, grain, sides, openings: cut }) => ({
    sheet,
    grain,
    openings: cut,
    ...(sides === "none" ? {} : { facing: { facing: "lam 1", adhesive: "glue", sides, oversize: mm(10) } }),
  }));

const edge = (ways: readonly Edge["through"][]): fc.Arbitrary<Edge> =>
  fc.record({ through: fc.constantFrom(...ways), pitch: length(60, 150), bare: fc.boolean() }).map(
    ({ through, pitch, bare }): Edge =>
      bare && through !== "neither"
        ? { through }
        : {
            through,
            extrusion: {
              bar: "seat 50",
              rivet: "rivet 4",
              pitch,
              endDistance: mm(20),
              setBack: mm(60),
              ends: "square",
              stagger: false,
            },
          },
  );

/** What a random case may contain. */
export interface Variety {
  /** May both panels of an edge stop in the bar's seat? */
  readonly seats: boolean;
}

const section = (name: string, { seats }: Variety): fc.Arbitrary<Section> =>
  fc
    .record({
      width: length(320, 900),
      depth: length(320, 900),
      height: length(320, 900),
      panels: fc.tuple(...faces.map(() => panel)),
      edges: fc.tuple(
        ...edgeNames.map((one) =>
          edge([...(one.split("-") as [Face, Face]), ...(seats ? (["neither"] as const) : [])]),
        ),
      ),
    })
    .map(({ width, depth, height, panels, edges }) => ({
      name,
      inside: { width, depth, height },
      panels: Object.fromEntries(faces.map((face, i) => [face, panels[i]])) as Section["panels"],
      edges: Object.fromEntries(edgeNames.map((one, i) => [one, edges[i]])) as Section["edges"],
    }));

const hardware = (sections: readonly Section[]): fc.Arbitrary<readonly PlacedHardware[]> => {
  const place = fc.record({
    section: fc.constantFrom(...sections.map(({ name }) => name)),
    face: fc.constantFrom(...faces),
    from: fc.constantFrom("bottom-left" as const, "top-right" as const),
    across: length(120, 200),
    up: length(120, 200),
    turned: fc.boolean(),
  });
  return fc
    .record({ handles: fc.array(place, { minLength: 1, maxLength: 4 }), cornered: fc.boolean() })
    .map(({ handles, cornered }): readonly PlacedHardware[] => [
      { name: "handle", item: "handle", duty: "lift", places: handles },
      ...(cornered
        ? [
            {
              name: "corner",
              item: "corner 55",
              duty: "protect",
              places: { cornersOf: sections[0]?.name ?? "" },
            } as const,
          ]
        : []),
    ]);
};

/** A case of one to three sections. */
export function saneCase(variety: Variety): fc.Arbitrary<Case> {
  return fc
    .tuple(
      section("one", variety),
      section("two", variety),
      section("three", variety),
      fc.integer({ min: 1, max: 3 }),
    )
    .map(([one, two, three, count]) => [one, two, three].slice(0, count))
    .chain((sections) =>
      hardware(sections).map((placed) => ({
        ...small.case,
        sections,
        hardware: placed,
        shelves: [],
        contents: [],
      })),
    );
}
