/** Openings of a panel: each possible in itself, on the panel, and clear of the others. */
import type { Opening } from "../case.js";
import type { PanelLayout, SectionLayout } from "../derive/layout.js";
import { placeOpening, shapeSize } from "../derive/openings.js";
import { type Form, formArea, sameness, touch } from "../derive/outline.js";
import { type Segment, segments, segmentsMeet } from "../derive/polygon.js";
import { faces } from "../place.js";
import type { CasePath } from "../read/case-text.js";
import type { Fault } from "./fault.js";
import type { Ruler } from "./ruler.js";

/** Every fault of the openings of a section. */
export function checkOpenings({ panels }: SectionLayout, ruler: Ruler): Fault[] {
  return faces.flatMap((face) => {
    const layout = panels[face];
    const { openings } = layout.panel;
    return [
      ...openings.flatMap((opening) => [
        ...checkShape(opening, layout, ruler),
        ...checkOnPanel(opening, layout, ruler),
        ...checkLeaf(opening, layout, ruler),
      ]),
      ...checkApart(openings, layout),
    ];
  });
}

/** Path of an opening in the case file. */
export function openingPath({ section, face }: PanelLayout, name: string): CasePath {
  return ["sections", section.section.name, "panels", face, "openings", name];
}

function checkShape({ name, shape }: Opening, layout: PanelLayout, ruler: Ruler): Fault[] {
  const path = openingPath(layout, name);
  if (shape.kind === "rectangle") {
    const most = Math.min(shape.width, shape.height) / 2;
    if (shape.cornerRadius <= most + sameness) return [];
    const expected = `at most ${ruler(most)}, half the opening's shorter side`;
    return [{ path: [...path, "rectangle", "corner radius"], expected }];
  }
  if (shape.kind !== "polygon") return [];
  const points = shape.points.map(({ across, up }) => ({ u: across, v: up }));
  if (points.length < 3) return [{ path: [...path, "polygon"], expected: "at least three points" }];
  const crossing = crossingSides(segments(points));
  if (crossing) {
    const expected = `sides that do not cross or touch: side ${crossing[0]} meets side ${crossing[1]}`;
    return [{ path: [...path, "polygon"], expected }];
  }
  const flat = formArea(placeOpening({ name, shape, ...anywhere }, layout)) < sameness ** 2;
  return flat ? [{ path: [...path, "polygon"], expected: "points that are not all on one line" }] : [];
}

const anywhere = { from: "bottom-left", across: 0, up: 0, to: "edge" } as unknown as Pick<
  Opening,
  "from" | "across" | "up" | "to"
>;

/** The first two sides that meet anywhere but in the point they share, counted from 1. */
function crossingSides(sides: readonly Segment[]): [number, number] | undefined {
  for (let i = 0; i < sides.length; i++) {
    for (let j = i + 2; j < sides.length; j++) {
      const neighbours = i === 0 && j === sides.length - 1;
      if (!neighbours && segmentsMeet(sides[i] as Segment, sides[j] as Segment)) return [i + 1, j + 1];
    }
  }
  return undefined;
}

/** How far a form reaches beyond the panel at each side; zero on the edge, negative inside. */
function beyond({ low, width, height }: Form, panel: PanelLayout): Readonly<Record<string, number>> {
  return {
    left: -low.u,
    right: low.u + width - panel.width,
    bottom: -low.v,
    top: low.v + height - panel.height,
  };
}

function checkOnPanel(opening: Opening, layout: PanelLayout, ruler: Ruler): Fault[] {
  const { name, shape } = opening;
  const path = openingPath(layout, name);
  const over = Object.entries(beyond(placeOpening(opening, layout), layout));
  const off = over.filter(([, distance]) => distance > sameness);
  const touching = over.filter(([, distance]) => Math.abs(distance) <= sameness);
  const panel = `${layout.id} (${ruler(layout.width)} x ${ruler(layout.height)})`;
  if (off.length > 0) {
    const how = off.map(([side, distance]) => `${ruler(distance)} past its ${side} edge`).join(", ");
    return [{ path, expected: `an opening on the panel ${panel}, this one reaches ${how}` }];
  }
  if (shape.kind === "notch" && touching.length === 0) {
    return [{ path, expected: `a notch at an edge of the panel ${panel}: across or up is 0` }];
  }
  if (shape.kind !== "notch" && touching.length > 0) {
    const where = touching.map(([side]) => side).join(" and ");
    return [{ path, expected: `an opening clear of the panel's ${where} edge, or a notch` }];
  }
  return [];
}

function checkLeaf({ name, shape, leaf }: Opening, layout: PanelLayout, ruler: Ruler): Fault[] {
  if (!leaf) return [];
  const path = [...openingPath(layout, name), "leaf"];
  if (shape.kind === "polygon" || shape.kind === "notch") {
    return [{ path, expected: `a rectangle, slot or circle to close, not a ${shape.kind}` }];
  }
  const { width, height } = shapeSize(shape);
  const most = Math.min(width, height) / 2;
  if (leaf.clearance < most) return [];
  return [
    { path: [...path, "clearance"], expected: `less than ${ruler(most)}, half the opening's shorter side` },
  ];
}

function checkApart(openings: readonly Opening[], layout: PanelLayout): Fault[] {
  return openings.flatMap((opening, i) =>
    openings.slice(0, i).flatMap((earlier) => {
      if (!touch(placeOpening(opening, layout), placeOpening(earlier, layout))) return [];
      const expected = `an opening that neither overlaps nor touches "${earlier.name}"`;
      return [{ path: openingPath(layout, opening.name), expected }];
    }),
  );
}
