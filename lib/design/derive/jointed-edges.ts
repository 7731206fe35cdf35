/** Edges without an extrusion, laid out: how far their panels meet, or where cleats and corner blocks stand. */
import { Length } from "../../quantity/index.js";
import type { EdgeJoint } from "../case.js";
import { type EdgeName, edgeNames, type Face, facesAt } from "../place.js";
import { type Stock, type StripStock, stockNamed } from "../stock.js";
import { edgeAxis, faceAxes } from "./axes.js";
import { panelAt, type SectionLayout } from "./layout.js";

/** A stretch along an edge, from the low end of the clear inside; it may begin before it. */
export interface Stretch {
  /** m */
  readonly from: number;
  /** m */
  readonly length: number;
}

/** An edge with its joint, laid out. */
export interface JointedEdge {
  /** "upper.front-left". */
  readonly id: string;
  /** The section whose edge it is. */
  readonly section: SectionLayout;
  /** The edge. */
  readonly edge: EdgeName;
  /** What the case says of it. */
  readonly joint: EdgeJoint;
  /** What a cleat or a block is cut from. */
  readonly strip?: StripStock;
  /** Its pieces along the edge, or how far two panels meet. */
  readonly stretches: readonly Stretch[];
  /** The panel that runs past, whose face the other meets; for panels that are joined to each other. */
  readonly through: Face;
}

/** Every edge of a section that the case joins without an extrusion. */
export function jointedEdges(section: SectionLayout, stock: Stock): JointedEdge[] {
  return edgeNames.flatMap((edge): JointedEdge[] => {
    const { joint, through } = section.section.edges[edge] ?? {};
    if (!joint || through === undefined || through === "neither") return [];
    const strip = joint.strip === undefined ? undefined : stockNamed(stock, "strips", joint.strip);
    const own = { id: `${section.section.name}.${edge}`, section, edge, joint, through };
    return [{ ...own, ...(strip ? { strip } : {}), stretches: stretchesOf(own) }];
  });
}

function stretchesOf({ section, edge, joint, through }: Omit<JointedEdge, "stretches">): readonly Stretch[] {
  const axis = edgeAxis(edge);
  const clear = section.inside[axis];
  const { setBack, blocks = 1, blockLength = Length.si(0) } = joint;
  if (joint.joint === "cleat") return [{ from: setBack, length: clear - 2 * setBack }];
  if (joint.joint === "corner block") {
    const room = clear - 2 * setBack - blockLength;
    return Array.from({ length: blocks }, (_, i) => ({
      from: setBack + (blocks === 1 ? room / 2 : (i * room) / (blocks - 1)),
      length: blockLength,
    }));
  }
  const meeting = panelAt(section, otherFace(edge, through));
  const { u } = faceAxes[meeting.face];
  const [low, high] =
    u.axis === axis
      ? u.reversed
        ? [meeting.reach.right, meeting.reach.left]
        : [meeting.reach.left, meeting.reach.right]
      : [meeting.reach.bottom, meeting.reach.top];
  return [{ from: -low, length: low + clear + high }];
}

/** The other face of an edge. */
export function otherFace(edge: EdgeName, face: Face): Face {
  const [one, other] = facesAt(edge);
  return one === face ? other : one;
}

/** Do the end distances leave a length between them on every piece? */
export function hasRoomForScrews({ joint, stretches }: JointedEdge): boolean {
  const { endDistance = Length.si(0) } = joint;
  return stretches.every(({ length }) => length > 2 * endDistance);
}
