/** Screws whose points come out: shorter ones in their places. */
import { type Change, type Fastener, set } from "../../design/index.js";
import { type PointOut, pointsOut } from "../../model/index.js";
import { lengthAtMost } from "../figures.js";
import { fastenedWith } from "./hardware.js";
import { type Mending, type Offer, option } from "./offer.js";
import { copiedRow } from "./table-row.js";

/** One change for all of them: they are set with the same driver on the same day. */
export const shorterScrews: Offer = (mending) => {
  const { job } = mending;
  const out = pointsOut(job);
  const taken = [...new Set(out.map(({ group }) => group.fastener.name))].flatMap((name) => {
    const own = out.filter(({ group }) => group.fastener.name === name);
    const least = own.reduce((short, one) => (one.most < short.most ? one : short));
    const { row, as } = shortened(mending, least);
    const held = [...new Set(own.map(({ group }) => group.holds))];
    const changes = held.flatMap((holds) => changeFor(mending, holds, as));
    return changes.length > 0 ? [{ name, as, changes: [...row, ...changes] }] : [];
  });
  if (taken.length === 0) return [];
  const words = taken.map(({ name, as }) => `Take ${as} where ${name} would come out.`);
  return [
    option(mending, {
      lever: "points of screws",
      setting: taken.map(({ as }) => as).join(", "),
      words: words.join(" "),
      changes: taken.flatMap(({ changes }) => changes),
      unpriced: "shorter screws, priced here as the ones in the table",
    }),
  ];
};

/** A shorter one of the table, or a row for one. */
function shortened({ job }: Mending, { group: { fastener }, most, shorter }: PointOut) {
  const none: readonly Change[] = [];
  if (shorter) return { as: shorter.name, row: none };
  const length = lengthAtMost(most, job.case.units);
  const as = `${lengthless(fastener)} of ${length}`;
  const grip = lengthAtMost(Math.min(fastener.gripMax, most / 2), job.case.units);
  return { as, row: copiedRow(job, "fasteners", fastener.name, as, { length, "grip max": grip }) };
}

/** A name without the length that an earlier proposal gave it. */
function lengthless({ name }: Fastener): string {
  return name.replace(/ of [\d.]+ (in|mm)$/, "");
}

/** What puts another fastener where a thing is held. */
function changeFor({ job }: Mending, holds: string, as: string): readonly Change[] {
  const content = job.case.contents.find(({ name }) => name === holds);
  if (content && "fastener" in content.held) return [set(`contents.${holds}.held.fastener`, as)];
  const part = job.parts.hardware.find(({ id }) => id === holds);
  const hardware = part && job.case.hardware.find(({ name }) => name === part.item.name);
  return hardware ? fastenedWith(job, hardware, as) : [];
}
