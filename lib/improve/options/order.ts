/** A case that no order builds: a lath holds washers beyond the hand, and with less inside a hand gets further. */
import { type Change, type Content, remove, tableFiles } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import { caseOrder } from "../../plan/index.js";
import { massText } from "../figures.js";
import { changedJob } from "../trial.js";
import { type Offer, option } from "./offer.js";

/** Things that are taken out at the most: with more, another case is meant. */
const mostApart = 4;

/** A lath with tape on its end; common practice, no source. */
const lath = "tool,use,diameter (mm),length (mm)\nlath with tape on its end,stick,20,450\n";

/** A lath for the washers, and contents carried apart, the lightest of those in each other's way first, until an order is found. */
export const roomForHands: Offer = (mending) => {
  const { job } = mending;
  const file = tableFiles.tools;
  const stick: readonly Change[] =
    job.texts[file] === undefined ? [{ kind: "edits", edits: [{ file, at: 0, old: "", now: lath }] }] : [];
  const apart = inTheWay(stick.length > 0 ? job.with(...stick) : job, []);
  if (!apart || stick.length + apart.length === 0) return [];
  const named = apart.map(({ name, mass }) => `the ${name} (${massText(mass, job.case.units)})`);
  const words = [
    ...(stick.length > 0
      ? ["Hold the washers that no hand reaches on a lath of 450 mm with tape on its end."]
      : []),
    ...(apart.length > 0 ? [`Carry ${named.join(" and ")} apart from the case.`] : []),
  ];
  return [
    option(mending, {
      lever: "order of assembly",
      setting: apart.map(({ name }) => name).join("+"),
      words: words.join(" "),
      changes: [...stick, ...apart.map(({ name }) => remove(`contents.${name}`))],
      rule: true,
    }),
  ];
};

/** What is taken out for an order, after what was taken out already; undefined where it would be too much, or no help. */
function inTheWay(job: Job, apart: readonly Content[]): readonly Content[] | undefined {
  const { order, stepSeenFrom } = caseOrder(job);
  if (order.kind === "found") return apart;
  if (apart.length === mostApart) return undefined;
  const keys = new Set(order.conflict.flatMap(({ step, before }) => [step, ...before.flat()]));
  const named = job.case.contents.filter(({ name, section }) => keys.has(stepSeenFrom(section)(name) ?? ""));
  const [lightest] = [...named].sort((one, other) => one.mass - other.mass);
  const without = lightest && changedJob(job, [remove(`contents.${lightest.name}`)]);
  return without && inTheWay(without, [...apart, lightest]);
}
