/** A case seen in a mirror, and a case turned by a quarter: the same thing said from another side. */
import type {
  Case,
  EdgeName,
  Face,
  Opening,
  PanelCorner,
  PlacedHardware,
  Section,
} from "../../lib/design/index.js";
import { edgeNames, faces } from "../../lib/design/index.js";
import { mirrored as mirroredShape, turned } from "../../lib/shape/index.js";

type Renaming = Readonly<Record<Face, Face>>;

function renamedEdge(edge: EdgeName, renaming: Renaming): EdgeName {
  const [one, other] = (edge.split("-") as [Face, Face]).map((face) => renaming[face]);
  return edgeNames.find((name) => name === `${one}-${other}` || name === `${other}-${one}`) as EdgeName;
}

function renamedSection(
  section: Section,
  renaming: Renaming,
  inside: Section["inside"],
  cut: (opening: Opening, face: Face) => Opening,
): Section {
  const panels = faces.flatMap((face) => {
    const panel = section.panels[face];
    if (!panel) return [];
    return [[renaming[face], { ...panel, openings: panel.openings.map((opening) => cut(opening, face)) }]];
  });
  const edges = edgeNames.flatMap((edge) => {
    const own = section.edges[edge];
    if (!own) return [];
    const renamed = own.through === "neither" ? own.through : renaming[own.through];
    return [[renamedEdge(edge, renaming), { ...own, through: renamed }]];
  });
  return {
    name: section.name,
    inside,
    panels: Object.fromEntries(panels) as Section["panels"],
    edges: Object.fromEntries(edges) as Section["edges"],
  };
}

const leftForRight: Renaming = {
  front: "front",
  back: "back",
  left: "right",
  right: "left",
  top: "top",
  bottom: "bottom",
};

function flipped(corner: PanelCorner): PanelCorner {
  const [level, side] = corner.split("-");
  return `${level}-${side === "left" ? "right" : "left"}` as PanelCorner;
}

function mirroredOpening(opening: Opening): Opening {
  const from = flipped(opening.from);
  const { kind, outline } = opening.shape;
  return { ...opening, from, shape: { kind, outline: mirroredShape(outline, 0) } };
}

/** Left for right. */
export function mirrored(description: Case): Case {
  return {
    ...description,
    sections: description.sections.map((section) =>
      renamedSection(section, leftForRight, section.inside, mirroredOpening),
    ),
    hardware: description.hardware.map((item): PlacedHardware => {
      if ("cornersOf" in item.places) return item;
      const places = item.places.map((place) => ({
        ...place,
        face: leftForRight[place.face],
        from: flipped(place.from),
      }));
      return { ...item, places };
    }),
  };
}

/** What was the front is now the right side: turned anticlockwise as seen from above. */
const quarter: Renaming = {
  front: "right",
  right: "back",
  back: "left",
  left: "front",
  top: "top",
  bottom: "bottom",
};

/** Turned by a quarter about the upright; openings of top and bottom go with the panel, from another corner. */
export function quarterTurned(description: Case): Case {
  return {
    ...description,
    sections: description.sections.map((section) => {
      const { width, depth, height } = section.inside;
      return renamedSection(section, quarter, { width: depth, depth: width, height }, turnedOpening);
    }),
    hardware: description.hardware.map((item): PlacedHardware => {
      if ("cornersOf" in item.places) return item;
      const places = item.places.map((place) => ({ ...place, face: quarter[place.face] }));
      return { ...item, places };
    }),
  };
}

/** Of a level panel, width and height change places; totals ask no more. */
function turnedOpening(opening: Opening, face: Face): Opening {
  const { shape } = opening;
  if (face !== "top" && face !== "bottom") return opening;
  return { ...opening, shape: { ...shape, outline: turned(shape.outline, 1, { x: 0, y: 0 }) } };
}
