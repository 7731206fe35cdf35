/** Whether rain stays out of a case that stands outdoors, and whether its sockets may be used there. */
import type { Mains, SprayTest } from "../../design/index.js";
import { sprayTime } from "../../inside/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Area, Current, Mass, Time, Voltage } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, counted, styleOf } from "../amount.js";
import { type Question, question, type Subjects } from "../question.js";
import { caseWords, measured, ofJourney, says, stackedCase, where } from "../subjects.js";
import { socketCaution } from "./power.js";

/** Who says how strong the wind may blow stands outdoors. */
function outdoors(input: ReviewInput): boolean {
  return says("journey")(input) && input.case.journey.gust !== undefined;
}

/** All that rain may reach, each section by itself. */
function surfaceOf({ parts }: ReviewInput): Area {
  const areas = parts.sections.map(({ outside: { size } }) => {
    const { x, y, z } = size;
    return 2 * (x * z + y * z) + x * y;
  });
  return Area.si(areas.reduce((sum, one) => sum + one, 0));
}

/** Openings that neither a leaf, a pane, a drawer nor hardware closes. */
function openToRain({ case: { sections, drawers } }: ReviewInput): readonly string[] {
  return sections.flatMap(({ name, panels }) =>
    Object.entries(panels).flatMap(([face, { openings }]) =>
      openings
        .filter(({ leaf, leaves, pane }) => !leaf && !leaves && !pane)
        .filter(
          (one) =>
            !drawers.some((drawer) => drawer.section === name && drawer.opening === `${face}.${one.name}`),
        )
        .map((one) => `${name}.${face}.${one.name}`),
    ),
  );
}

const fewNames = 3;

function openWords(open: readonly string[]): string {
  if (open.length === 0) return "Every opening has a door, a pane or a drawer.";
  const named = open.length <= fewNames ? ` (${open.join(", ")})` : "";
  return `${counted(open.length, "opening has", "openings have")} neither door, pane nor drawer${named}: something in it must keep rain out.`;
}

/** Whether rain stays out, by the builder's own spray test. */
export const rain: Question = question({
  id: "fit-out.rain",
  about: where(outdoors, stackedCase),
  ask: (_, input) => `Does rain stay out of the shut ${caseWords(input)}?`,
  tier: "feel",
  cautions: [
    "Water and mains kill: rain on it or in it means unplugging it first, and drying it with everything open before it is used again.",
  ],
  needs: {
    test: ofJourney(
      ({ sprayTest }) => sprayTest,
      "a test under a shower head",
      '"spray test: { time: 6 min, water: 0 g }", nothing inside but dry paper',
    ),
  },
  answer: (input, { test }) => sprayed(input, test),
});

function sprayed(input: ReviewInput, { time, water }: SprayTest) {
  const line = sprayTime.worked({ surface: surfaceOf(input) });
  const style = styleOf(input.case);
  const limit = cite("iec-60529", "IPX3, spraying water, without harm inside");
  const open = openWords(openToRain(input));
  if (water > 0)
    return {
      plainNo: true as const,
      facts: `${Mass.show(water, style)} of water came in. ${open}`,
      remedies: [
        {
          words:
            "Find out by wet paper where it came in. Fit a foam strip round doors and a rim over openings, and varnish every edge. Then spray it again.",
        },
      ],
      because: [line],
      limit,
    };
  return {
    demand: amount(Time, "under the shower head, at least", line.value),
    capacity: amount(Time, "sprayed, and dry inside", time),
    facts: `It stayed dry for ${Time.show(time)} under a shower head; ${Time.show(line.value)} are asked for its surface. ${open}`,
    remedies: [{ words: "Spray it longer." }],
    because: [line],
    limit,
  };
}

/** Below it a ground-fault interrupter of 6 mA is asked for, above it a residual-current device of 30 mA. */
const lowMains = Voltage.of(150, "V");

/** Trips at these currents to earth. */
const trips = { low: Current.of(6, "mA"), high: Current.of(30, "mA") };

const suppliedOutdoors: Subjects<undefined> = where(
  (input) => outdoors(input) && says("services")(input) && input.case.services.mains !== undefined,
  stackedCase,
);

/** Whether its sockets may be used outdoors. */
export const outdoorSockets: Question = question({
  id: "fit-out.power.outdoors",
  about: suppliedOutdoors,
  ask: "Does the breaker trip before a fault outdoors kills?",
  tier: "safety",
  cautions: [socketCaution],
  needs: {
    trip: measured(
      ({ case: { services } }) => services.mains?.residual,
      "the current to earth at which the breaker of its supply trips",
      'read it off the breaker or off a plug-in one of your own, and write "residual current: 6 mA" into mains',
    ),
    mains: measured(
      ({ case: { services } }) => services.mains,
      "the circuit it is plugged into",
      'write the block "mains" into services',
    ),
  },
  answer: (_, { trip, mains: { voltage } }: { readonly trip: Current; readonly mains: Mains }) => {
    const isLow = voltage <= lowMains;
    const most = isLow ? trips.low : trips.high;
    return {
      demand: amount(Current, "current to earth at which it trips", trip),
      capacity: amount(Current, "at most", most),
      facts: `It trips at ${Current.show(trip)} to earth; outdoors at ${Voltage.show(voltage)} that is ${Current.show(most)} at most.`,
      remedies: [{ words: "Plug in through a portable device that trips at so little." }],
      rests: "what somebody read off the breaker",
      because: [],
      limit: isLow
        ? cite("ul-943", "class A, which the electrical code asks for outdoors")
        : cite("iec-60364", "411.3.3, sockets outdoors"),
    };
  },
});
