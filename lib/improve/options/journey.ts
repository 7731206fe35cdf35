/** The way: winch, ramp, people, blocks, care, and what stands on a top. */
import { fineLength, roundForce } from "../figures.js";
import { type Offer, setting } from "./offer.js";

/** Rated pulls of winches tried, N. */
const winches = [1100, 2200, 4400] as const;

/** A winch at the top of the ramp, or a longer ramp. */
export const easierRamp: Offer = (mending) => {
  const { job, over } = mending;
  const { units, journey } = job.case;
  const pulled = winches.map((newton) => {
    const rated = roundForce(newton, units);
    return setting(mending, "journey.winch", rated, `Pull it up and let it down by a winch rated ${rated}.`, {
      unpriced: "a winch",
    });
  });
  const size = journey.rampSize;
  if (!size) return pulled;
  const longer = [1.05, 1.5].map((more) => {
    const length = fineLength(size.length * over * more, units);
    return setting(mending, "journey.ramp size.length", length, `Use a ramp ${length} long.`, {
      unpriced: "a longer ramp",
    });
  });
  return [...pulled, ...longer];
};

/** More people. */
export const morePeople: Offer = (mending) => {
  const { people } = mending.job.case.journey;
  return [people + 1, people + 2, people + 4].map((count) =>
    setting(mending, "journey.people", `${count}`, `Lift and push with ${count} people.`, { rule: true }),
  );
};

/** Off its wheels in the vehicle. */
export const onBlocks: Offer = (mending) =>
  mending.job.case.journey.lashing
    ? [
        setting(
          mending,
          "journey.lashing.stands on",
          "blocks",
          "Stand it on blocks under its lower edges before straps are tightened.",
          { rule: true },
        ),
      ]
    : [];

/** Handled with care, so that it falls less far. */
export const handledCarefully: Offer = (mending) =>
  mending.job.case.journey.handling === "careful"
    ? []
    : [
        setting(mending, "journey.handling", "careful", "Let only your own people handle it, with care.", {
          rule: true,
        }),
      ];

/** What somebody may do on a top. */
export const lessOnTop: Offer = (mending) =>
  (["kneels", "sits"] as const)
    .filter((word) => word !== mending.job.case.demands.topBears)
    .map((word) =>
      setting(
        mending,
        "demands.top bears",
        word,
        word === "sits"
          ? "Write NO STEP on every top: somebody sits on it at most."
          : "Write on every top that nobody may stand on it, only kneel.",
        { rule: true },
      ),
    );

/** Brakes on every caster. */
export const allBrakes: Offer = (mending) =>
  mending.job.case.journey.brakes === 4
    ? []
    : [
        setting(mending, "journey.brakes", "4", "Take casters that all have a brake.", {
          unpriced: "brakes",
        }),
      ];
