/** Landing on an edge or a corner, where foam on three faces works at once. */
import type { Content } from "../../design/index.js";
import { type CushionedDrop, cushionedDrop, type ReviewInput } from "../../model/index.js";
import { cushionRate, springLanding, tiltedCushion } from "../../moving/index.js";
import { type Area, type Length, Ratio, ratio, SpringRate } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { dropCaution, dropSource } from "./drop-findings.js";

/** Whether each fragile content on foam survives its section falling on an edge or a corner. */
export function dropEdgeFindings(input: ReviewInput): readonly Finding[] {
  return input.case.contents
    .filter(({ needs }) => needs.fragility !== undefined && needs.foam !== undefined)
    .map((content) => edgeFinding(input, content));
}

function edgeFinding(input: ReviewInput, content: Content): Finding {
  const { name, section, needs } = content;
  const question: Question = {
    id: `travel.drop-edge.${name}`,
    topic: "travel",
    subject: name,
    question: `Does the ${name} survive a drop of ${section} on an edge or a corner?`,
  };
  const { sides, ends } = needs.foam ?? {};
  if (sides === undefined || ends === undefined) {
    const how =
      'measure the foam against its left and right, front and back, and write "sides" and "ends" into its foam';
    return unknown(question, { measure: "the foam beside it", how }, [dropCaution]);
  }
  return guarded(question, () => edgeReply(input, cushionedDrop(input, content), sides, ends), [dropCaution]);
}

interface TiltedLanding {
  /** Where it lands: "an edge to the left or right". */
  readonly on: string;
  readonly tilted: ReturnType<typeof tiltedCushion.worked>;
  readonly landing: ReturnType<typeof springLanding.worked>;
}

/** The same foam all round: its spring is that of the flat landing, in proportion to the area. */
function edgeReply(input: ReviewInput, dropped: CushionedDrop, sides: Area, ends: Area): Reply {
  const { content, fragility, foam, drop, landed } = dropped;
  const flat = cushionRate.worked({ mass: content.mass, deceleration: landed.value, drop: drop.value });
  const rateOf = (area: Area) => SpringRate.si((flat.value * area) / (foam.padWidth * foam.padDepth));
  const rates = { sides: rateOf(sides), ends: rateOf(ends), flats: flat.value };
  const landings = directionsOf(input, content.section).map(({ on, towards }): TiltedLanding => {
    const tilted = tiltedCushion.worked({ ...rates, towards });
    const fall = { mass: content.mass, stiffness: tilted.value, drop: drop.value };
    return { on, tilted, landing: springLanding.worked(fall) };
  });
  const [worst] = landings.sort((a, b) => b.landing.value.deceleration - a.landing.value.deceleration);
  if (!worst) throw new RangeError("edge drop: no edge was found");
  const { deceleration } = worst.landing.value;
  return compared({
    kind: Ratio,
    asked: [`deceleration on ${worst.on}, in gravities`, deceleration],
    there: ["deceleration it survives", fragility],
    facts: `Worst is ${worst.on}: about ${Ratio.show(deceleration, { digits: 2 })} g, where a flat landing gives ${Ratio.show(landed.value, { digits: 2 })} g; it stands ${Ratio.show(fragility)} g. Foam is taken as an even spring, in proportion to its area.`,
    remedy: "Thicker foam or smaller pads on the faces that are too stiff, or carry it by itself.",
    because: [drop, landed, flat, worst.tilted, worst.landing],
    cautions: [dropCaution],
    source: [dropSource(dropped), cite("strength-of-materials", "springs at right angles")],
  });
}

/** A section falls on an edge or a corner with its middle above it. */
function directionsOf({ parts }: ReviewInput, section: string) {
  const size = parts.sections.find(({ name }) => name === section)?.outside.size;
  if (!size) throw new RangeError(`edge drop: no section ${section}`);
  const none = ratio(0);
  const share = (length: Length) => ratio(length);
  const [x, y, z] = [share(size.x), share(size.y), share(size.z)];
  return [
    { on: "an edge to the left or right", towards: { sides: x, ends: none, flats: z } },
    { on: "an edge to the front or back", towards: { sides: none, ends: y, flats: z } },
    { on: "an upright edge", towards: { sides: x, ends: y, flats: none } },
    { on: "a corner", towards: { sides: x, ends: y, flats: z } },
  ] as const;
}
