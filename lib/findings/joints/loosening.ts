/** Whether somebody looks often enough at what works loose on the road. */
import { looseningCount, type ReviewInput, tripsBetweenLooks } from "../../model/index.js";
import { Count } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, counted } from "../amount.js";
import { type Question, question } from "../question.js";
import { caseWords, ofJourney, says, stackedCase, where } from "../subjects.js";

const loosenessCaution =
  "One loose fastener loads its neighbours: leave a case with anything loose standing until it is mended.";

/** What to do at each look, of what there is. */
function whatToDo(input: ReviewInput): string {
  const { rivets, threads, screws } = looseningCount(input);
  const checks = [
    rivets > 0 &&
      `Press beside ${counted(rivets, "rivet", "rivets")}, one by one, and replace any that moves or has a dark ring.`,
    threads > 0 &&
      `Put a wrench or driver on ${counted(threads, "bolt or machine screw", "bolts and machine screws")}; a stripe of paint shows which turned.`,
    screws > 0 &&
      `Turn ${counted(screws, "wood screw", "wood screws")} home by hand; one that spins needs a thicker or longer one.`,
  ];
  return checks.filter((words) => words !== false).join(" ");
}

function fastened(input: ReviewInput): boolean {
  return says("journey")(input) && Object.values(looseningCount(input)).some((count) => count > 0);
}

/** Whether rivets, screws and bolts are looked at before so many trips that they work loose. */
export const workingLoose: Question = question({
  id: "joints.loose",
  about: where(fastened, stackedCase),
  ask: (_, input) => `Does somebody look at the fasteners of the ${caseWords(input)} before they work loose?`,
  tier: "handling",
  cautions: [loosenessCaution],
  needs: {
    looks: ofJourney(
      ({ tripsPerLook }) => tripsPerLook,
      "the number of trips from one look at its fasteners to the next",
      '"trips per look: 10"',
    ),
  },
  answer: (input, { looks }) => {
    const most = tripsBetweenLooks(input);
    return {
      demand: amount(Count, "trips from one look to the next", looks),
      capacity: amount(Count, "trips, at most", most),
      facts: `You look after every ${counted(looks, "trip", "trips")}, and ${most} is the most. Look after the first trip too, which settles everything. Begin with what carries and closes the case. ${whatToDo(input)}`,
      remedies: [{ words: `Look after every ${counted(most, "trip", "trips")}.` }],
      because: [],
      limit: cite(
        "common-practice",
        `after the first trip, then after every ${counted(most, "trip", "trips")}`,
      ),
    };
  },
});
