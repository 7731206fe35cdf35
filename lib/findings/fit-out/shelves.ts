/** Whether shelves keep clear of what is under them with a jolt, slides carry, and platforms stay on the wall. */
import type { Box, ShelfPart } from "../../design/index.js";
import { Frequency, gluePull, platformPull, sagFrequency } from "../../inside/index.js";
import {
  castersOf,
  drawerMass,
  firstSag,
  pulledOut,
  type ReviewInput,
  roomAt,
  shelfMass,
  slidesOf,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Length, Mass, Moment, Pressure, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, fineAmount, showFine, styleOf, withinMesh } from "../amount.js";
import { joltedFigure, type PulledOut, pulledOutFigure } from "../figures/inside-figures.js";
import { type Question, question, type Subjects } from "../question.js";
import { each, eachShelf, known, measured, says, strengthOf, where } from "../subjects.js";
import { vehicleBand } from "./shaking.js";

/** Of a shelf that is held at its back only. */
const platformCaution =
  "A platform that tears off the wall drops what stands on it: a strut under its front edge costs nothing.";

const strikeCaution =
  "What a shelf strikes breaks, and what lies loose on it jumps: hold everything down, and leave room under it.";

function onBackOnly({ shelf }: ShelfPart): boolean {
  return shelf.support === "back only";
}

/** Whether a shelf strikes what is under it: a jolt multiplies its sag as it multiplies the load. */
export const jolts: Question = question({
  id: "fit-out.jolt",
  about: where(says("journey"), eachShelf),
  ask: ({ shelf }, { case: { journey } }) =>
    `Does the ${shelf.name} strike what is under it when the ${journey.vehicle} jolts?`,
  tier: "strength",
  cautions: (part) => [onBackOnly(part) ? platformCaution : strikeCaution],
  answer: (input, _, part) => {
    const { dynamicFactor } = input.case.demands;
    const { sag, because, meshError } = firstSag(part, input);
    const mesh = meshError === undefined ? "" : ` (${withinMesh(meshError)} by the mesh)`;
    const hum = sagFrequency.worked({ sag });
    const jolted = Length.si(dynamicFactor * sag);
    const room = roomUnder(input, part);
    const style = styleOf(input.case);
    // On its own spring it also swings.
    const shakes =
      hum.value < vehicleBand
        ? "within what a vehicle shakes with: hold things down on it"
        : "above what a vehicle shakes with";
    return {
      demand: fineAmount("sag with a jolt", jolted),
      capacity: fineAmount("free under it", room),
      facts: `A jolt bends it ${showFine(jolted, style)}${mesh} with ${showFine(room, style)} free under it. It swings at about ${Frequency.show(hum.value, { digits: 2 })}, ${shakes}. The published figure for the road is its weight alone. The jerk of the case file, ${dynamicFactor} times that, covers bumps.`,
      remedies: [{ words: "A lip or a batten under its front edge stiffens it." }],
      rests: "the thickness and the modulus of its sheet",
      because: [...because, hum],
      limit: cite("common-practice", "jerk of the case file"),
      sources: [
        cite("en-12195", "table 2: 1.0 downwards on the road"),
        cite("vibration", "natural frequency from static deflection"),
      ],
    };
  },
  figure: (input, part, { capacity }) => {
    const style = styleOf(input.case);
    const load = `${Force.show(loadOf(input, part).load, style)} with a jolt`;
    return joltedFigure(input, part, {
      load,
      room: roomUnder(input, part),
      free: capacity?.show(style) ?? "",
    });
  },
});

/** Free way from a shelf, or from what stiffens it below, down to the next thing. */
function roomUnder(input: ReviewInput, part: ShelfPart): Length {
  const { section, name } = part.shelf;
  return roomAt(input, { section, name, box: withBattens(part) }, "bottom");
}

/** A shelf down to the lowest of what stiffens it from below. */
function withBattens({ panel: { box }, stiffeners }: ShelfPart): Box {
  const deep = Math.max(0, ...stiffeners.filter(({ side }) => side === "inside").map(({ height }) => height));
  const low = { ...box.low, z: Length.si(box.low.z - deep) };
  return { low, size: { ...box.size, z: Length.si(box.size.z + deep) } };
}

/** A shelf or a drawer that slides, loaded. */
interface Slider extends PulledOut {
  /** With all it carries. */
  readonly mass: Mass;
  /** What a shelf says of its slides. */
  readonly rated?: Force;
}

const eachSlider: Subjects<Slider> = each(
  (input) => [
    ...input.parts.shelves
      .filter(({ shelf }) => shelf.sliding)
      .map((part): Slider => {
        const { name, section, slidesRated } = part.shelf;
        return {
          ...{ name, section, side: "front", box: part.panel.box, out: pulledOut(input, part.shelf) },
          mass: shelfMass(part),
          ...(slidesRated === undefined ? {} : { rated: slidesRated }),
        };
      }),
    ...input.parts.drawers.map((part): Slider => {
      const { drawer, face: side, box } = part;
      const { name, section } = drawer;
      return { name, section, side, box, out: pulledOut(input, drawer), mass: drawerMass(input, part) };
    }),
  ],
  ({ name }) => name,
);

/** Whether the slides of a platform or a drawer carry it when it is pulled out; a hand that leans on it counts like a jolt. */
export const slides: Question = question({
  id: "fit-out.slide",
  about: eachSlider,
  ask: ({ name }) => `Do the slides carry the ${name} when it is pulled out?`,
  tier: "strength",
  cautions: (_, input) => [
    `What slides out pinches fingers, and leaning on it tips the case: lock it for the road, one platform out at a time${castersOf(input).length > 0 ? ", casters braked" : ""}.`,
  ],
  needs: {
    rated: measured(
      (input, { name, rated }: Slider) => rated ?? slidesOf(input, name)?.stock.rated,
      ({ name }) => `the load that the slides of the ${name} are made for`,
      'read the load of the pair off their sheet and write "rated" into their row of hardware.csv, or "slides rated" into a shelf without such a row',
    ),
  },
  answer: (input, { rated }, { name, mass }) => {
    const { dynamicFactor } = input.case.demands;
    const line = handleForce.worked({ mass, handles: 1, dynamicFactor });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, `${name} and load with a jolt`, line.value),
      capacity: amount(Force, "the pair of slides is made for", rated),
      facts: `The ${name} and its load come to ${Force.show(line.value, style)} with a jolt; the slides are made for ${Force.show(rated, style)}.`,
      remedies: [{ words: "Use stronger slides, or put lighter things on it." }],
      because: [line],
      limit: cite("common-practice", "load that the maker of the slides states, pulled out"),
    };
  },
  figure: (input, slider, { demand }) =>
    pulledOutFigure(
      input,
      slider,
      demand?.show(styleOf(input.case)) ?? Mass.show(slider.mass, styleOf(input.case)),
    ),
});

const eachPlatform: Subjects<ShelfPart> = each(
  ({ parts }) => parts.shelves.filter(onBackOnly),
  ({ shelf }) => shelf.name,
);

/** Everything on the platform and itself, with a jolt, at the middle of its depth. */
function loadOf(input: ReviewInput, part: ShelfPart): { readonly load: Force; readonly reach: Length } {
  return {
    load: Force.si(shelfMass(part) * standardGravity * input.case.demands.dynamicFactor),
    reach: Length.si(part.panel.height / 2),
  };
}

/** Whether screws hold a platform that stands out from the wall. */
export const platformScrews: Question = question({
  id: "fit-out.platform.screws",
  about: eachPlatform,
  ask: ({ shelf }) => `Do the screws at the back of the ${shelf.name} hold it with a jolt?`,
  tier: "strength",
  cautions: [platformCaution],
  needs: { strength: known((input, { shelf }: ShelfPart) => strengthOf(input, shelf.name, "pull")) },
  answer: (input, { strength }, part) => {
    const { shelf, panel } = part;
    const lever = shelf.bracket ?? Length.si(panel.sheet.thickness / 2);
    const line = platformPull.worked({ ...loadOf(input, part), lever, screws: shelf.joint.count });
    const allowed = Force.si(strength.strength / input.case.demands.safetyFactor);
    return {
      demand: amount(Force, "pull on each screw", line.value),
      capacity: amount(Force, "one screw allows", allowed),
      facts: `A jolt pulls each screw with ${Force.show(line.value, styleOf(input.case))}.`,
      remedies: [
        {
          words:
            'Set a cleat or brackets under it and write their height as "bracket": they give the screws a lever.',
        },
      ],
      because: [line],
      limit: cite("common-practice", "safety factor of the case file"),
      sources: [cite("statics", "moments about the bearing edge")],
    };
  },
});

/** Across the face veneer plywood gives at about 1 to 2 MPa; a quarter of the lower, common practice, no source. */
export const glueAllows: Pressure = Pressure.of(0.25, "MPa");

/** Whether glue alone holds a platform that stands out from the wall. */
export const platformGlue: Question = question({
  id: "fit-out.platform.glue",
  about: eachPlatform,
  ask: ({ shelf }) => `Does the glue at the back of the ${shelf.name} hold it with a jolt?`,
  tier: "strength",
  cautions: [platformCaution],
  answer: (input, _, part) => {
    const { shelf, panel } = part;
    const { load, reach } = loadOf(input, part);
    const line = gluePull.worked({
      moment: Moment.si(load * reach),
      length: panel.width,
      depth: shelf.bracket ?? panel.sheet.thickness,
    });
    const where = shelf.bracket ? "Glued over its bracket alone" : "Glued at its back edge alone";
    return {
      demand: amount(Pressure, "pull at the edge of the glue", line.value),
      capacity: amount(Pressure, "plywood's face allows", glueAllows),
      facts: `${where} it would pull the face veneer with ${Pressure.show(line.value, styleOf(input.case))}.`,
      remedies: [{ words: "Do not trust glue alone: add a cleat, brackets or a strut." }],
      because: [line],
      limit: cite("common-practice", "a quarter of plywood's strength across its face"),
      sources: [cite("strength-of-materials", "flexure formula")],
    };
  },
});
