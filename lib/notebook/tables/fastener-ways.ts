/** One fastener every way it can give, a hand off the middle of a handle, and rivets counted before any edge. */
import type { Fastening } from "../../design/index.js";
import { fastenerTraits, rivetCount } from "../../fastening/index.js";
import { showFine, styleOf } from "../../findings/index.js";
import type { WorkedLine } from "../../formula.js";
import type { Job } from "../../job/index.js";
import { fastenerWays, offMiddle } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Force, Length, Ratio, SpringRate } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";

/** Every rivet and bolt of the case, the most used first. */
export function rivetNames({ parts }: Job): readonly string[] {
  const count = (name: string): number =>
    parts.fastenings.reduce((sum, { fastener, count: n }) => (fastener.name === name ? sum + n : sum), 0);
  const closing = parts.fastenings.filter(({ fastener }) => fastenerTraits[fastener.kind].endsBehind);
  return [...new Set(closing.map(({ fastener }) => fastener.name))].sort((a, b) => count(b) - count(a));
}

/** One fastener every way it can give, where it sits nearest to an edge. */
export function fastenerWaysTable(job: Job, name: string): TableView {
  const group = nearestToEdge(job, name);
  const { ways, slip, length } = fastenerWays(group, job);
  const style = styleOf(job.case);
  return tableOf(
    ways,
    [
      { heading: "One of it", cell: ({ way }) => way },
      { heading: "At", cell: ({ load }) => Force.show(load, style) },
      { heading: "By", cell: ({ known }) => known },
    ],
    `${name} in ${group.panel}, the weakest way first. It slips a millimetre under ${Force.show(Force.si(slip * 0.001), style)} (${SpringRate.show(slip, { ...style, digits: 2 })}), and by the rule of thumb is ${showFine(length, style)} long for its stack`,
  );
}

/** The working behind the table. */
export function fastenerWaysLines(job: Job, name: string): readonly WorkedLine[] {
  return fastenerWays(nearestToEdge(job, name), job).because;
}

function nearestToEdge({ parts }: Job, name: string): Fastening {
  const [nearest] = parts.fastenings
    .filter(({ fastener }) => fastener.name === name)
    .sort((a, b) => (a.edgeDistance ?? 1) - (b.edgeDistance ?? 1));
  if (!nearest) throw new Refusal(`fasteners: the case has no ${name}`);
  return nearest;
}

/** What a handle's fasteners still hold when the hand pulls off their middle, at shares of half its width. */
export function offMiddleTable(job: Job, shares: readonly Ratio[]): TableView {
  const handle = job.parts.hardware.find(({ item }) => item.duty === "lift");
  const group = job.parts.fastenings.find(({ holds }) => holds === handle?.id);
  const half = (handle?.stock.width ?? 0) / 2;
  const rows = group
    ? offMiddle(
        group,
        shares.map((share) => Length.si(share * half)),
      )
    : [];
  const style = styleOf(job.case);
  const percent = (share: Ratio): string => Ratio.show(share, { unit: "%", digits: 3 });
  return tableOf(
    rows,
    [
      { heading: "Hand off the middle", cell: ({ off }) => showFine(off, style) },
      { heading: "Holds, elastic", cell: ({ elastic }) => percent(elastic) },
      { heading: "Holds, turned about a point", cell: ({ ultimate }) => percent(ultimate) },
    ],
    `Fasteners of ${handle?.stock.name ?? "a handle"}: share of what they hold pulled through their middle. Count on the elastic share; the other wants metal that yields before it breaks`,
  );
}

/** Rivets of the hardware, counted by part: rivets each times parts, before any edge is riveted. */
export function hardwareRivets({ parts }: Job): WorkedLine {
  const rivets = (id: string): number =>
    parts.fastenings.reduce(
      (sum, { holds, fastener, count }) =>
        holds === id && fastenerTraits[fastener.kind].timedAs === "rivet" ? sum + count : sum,
      0,
    );
  const items = [...new Set(parts.hardware.map(({ stock }) => stock.name))];
  const riveted = items.flatMap((part) => {
    const placed = parts.hardware.filter(({ stock, id }) => stock.name === part && rivets(id) > 0);
    const [first] = placed;
    return first ? [{ part, each: rivets(first.id), parts: placed.length }] : [];
  });
  return rivetCount.worked({ riveted });
}
