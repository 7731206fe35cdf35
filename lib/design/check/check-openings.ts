/** Openings of a panel: each possible in itself, on the panel, and clear of the others. */
import { areaOf, boundsOf, roundedBoxOf, selfCrossing } from "../../shape/index.js";
import type { Opening } from "../case.js";
import type { PanelLayout, SectionLayout } from "../derive/layout.js";
import { endSides, placeLeaves } from "../derive/leaves.js";
import { placeOpening } from "../derive/openings.js";
import { sameness, touch } from "../derive/outline.js";
import type { PlacedOpening } from "../parts.js";
import { faces } from "../place.js";
import type { CasePath } from "../read/case-text.js";
import type { Ruler } from "../ruler.js";
import type { Fault } from "./fault.js";

/** Every fault of the openings of a section. */
export function checkOpenings({ panels }: SectionLayout, ruler: Ruler): Fault[] {
  return faces.flatMap((face) => {
    const layout = panels[face];
    if (!layout) return [];
    const { openings } = layout.panel;
    return [
      ...openings.flatMap((opening) => [
        ...checkShape(opening, layout),
        ...checkOnPanel(opening, layout, ruler),
        ...checkLeaf(opening, layout, ruler),
        ...checkLeaves(opening, layout, ruler),
        ...checkPane(opening, layout, ruler),
      ]),
      ...checkApart(openings, layout),
    ];
  });
}

/** Path of an opening in the case file. */
export function openingPath({ section, face }: PanelLayout, name: string): CasePath {
  return ["sections", section.section.name, "panels", face, "openings", name];
}

function checkShape({ name, shape: { kind, outline } }: Opening, layout: PanelLayout): Fault[] {
  const path = [...openingPath(layout, name), kind];
  const crossing = selfCrossing(outline);
  if (crossing) {
    const expected = `sides that do not cross or touch: side ${crossing[0]} meets side ${crossing[1]}`;
    return [{ path, expected }];
  }
  return areaOf(outline) < sameness ** 2 ? [{ path, expected: "points that are not all on one line" }] : [];
}

/** How far an opening reaches beyond the panel at each side; zero on the edge, negative inside. */
function beyond({ low, width, height }: PlacedOpening, panel: PanelLayout): Readonly<Record<string, number>> {
  return {
    left: -low.x,
    right: low.x + width - panel.width,
    bottom: -low.y,
    top: low.y + height - panel.height,
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

/** A pane lies whole on its panel. */
function checkPane(opening: Opening, layout: PanelLayout, ruler: Ruler): Fault[] {
  if (!opening.pane) return [];
  const { overlap } = opening.pane;
  const past = Math.max(...Object.values(beyond(placeOpening(opening, layout), layout))) + overlap;
  if (past <= sameness) return [];
  const path = [...openingPath(layout, opening.name), "pane", "overlap"];
  return [{ path, expected: `a pane on the panel ${layout.id}, this one reaches ${ruler(past)} past it` }];
}

function checkLeaf({ name, shape, leaf }: Opening, layout: PanelLayout, ruler: Ruler): Fault[] {
  if (!leaf) return [];
  const path = [...openingPath(layout, name), "leaf"];
  if (!roundedBoxOf(shape.outline) || shape.kind === "notch") {
    return [{ path, expected: `a rectangle, slot or circle to close, not a ${shape.kind}` }];
  }
  const { width, height } = boundsOf(shape.outline);
  const most = Math.min(width, height) / 2;
  if (leaf.clearance < most) return [];
  return [
    { path: [...path, "clearance"], expected: `less than ${ruler(most)}, half the opening's shorter side` },
  ];
}

/** Leaves that share an opening: a rectangle that they and their gaps fit into, each hinged where the panel is. */
function checkLeaves(opening: Opening, layout: PanelLayout, ruler: Ruler): Fault[] {
  const { name, shape, leaves } = opening;
  if (!leaves) return [];
  const path = [...openingPath(layout, name), "leaves"];
  const { runs, gap, each } = leaves;
  const least = Math.min(...each.map(({ clearance }) => clearance));
  const box = roundedBoxOf(shape.outline);
  if (!box || shape.kind === "notch" || box.radius > least + sameness) {
    const expected = `a rectangle to share, its corner radius at most ${ruler(least)} as the least clearance`;
    return [{ path, expected }];
  }
  const ends: readonly string[] = endSides[runs];
  const hinges = each.flatMap(({ name: leaf, hinge }, i) => {
    const meets = (hinge === ends[0] && i > 0) || (hinge === ends[1] && i < each.length - 1);
    const expected = "a side at which it meets the panel, not another leaf";
    return meets ? [{ path: [...path, "each", leaf, "hinge"], value: hinge, expected }] : [];
  });
  const placed = placeLeaves(layout.id, opening, placeOpening(opening, layout));
  const whole = runs === "across" ? box.width : box.height;
  if (placed.length === each.length && gap * (each.length - 1) < whole) return hinges;
  return [...hinges, { path, expected: "gaps and clearances that leave something of each leaf" }];
}

function checkApart(openings: readonly Opening[], layout: PanelLayout): Fault[] {
  return openings.flatMap((opening, i) =>
    openings.slice(0, i).flatMap((earlier) => {
      if (!touch(placeOpening(opening, layout).outline, placeOpening(earlier, layout).outline)) return [];
      const expected = `an opening that neither overlaps nor touches "${earlier.name}"`;
      return [{ path: openingPath(layout, opening.name), expected }];
    }),
  );
}
