/** Foam under what breaks when it is dropped: kind, thickness and pad from the cushion curves of the job. */
import { type Content, type CushionPoint, remove, set } from "../../design/index.js";
import { fineLength } from "../figures.js";
import type { Option } from "../option.js";
import { contentOf } from "./contents.js";
import { type Mending, type Offer, option } from "./offer.js";

const gravity = 9.80665;

/** Pads tried, as shares of the one at which the foam cushions best. */
const padShares = [1, 0.75, 1.3] as const;

/** Foams of the tables under a content, each on pads about the one at which it cushions best. */
export const foamUnder: Offer = (mending) => {
  const content = contentOf(mending.job, mending.subject);
  if (!content) return [];
  const foams = foamsOf(mending.job.measurements.cushions);
  return foams.flatMap((foam) => padShares.map((share) => bedOf(mending, content, foam, share)));
};

/** A foam of one thickness, where it cushions best. */
interface Foam {
  readonly kind: string;
  readonly thickness: number;
  readonly best: CushionPoint;
}

/** The foams of the curves, the thickest first, each at the lowest point of its highest drop. */
function foamsOf(points: readonly CushionPoint[]): readonly Foam[] {
  const nameOf = ({ foam, thickness }: CushionPoint): string => `${foam} ${thickness}`;
  return [...new Set(points.map(nameOf))]
    .flatMap((name): Foam[] => {
      const all = points.filter((point) => nameOf(point) === name);
      const highest = Math.max(...all.map(({ drop }) => drop));
      const [best] = all
        .filter(({ drop }) => drop === highest)
        .sort((one, other) => one.deceleration - other.deceleration);
      return best ? [{ kind: best.foam, thickness: best.thickness, best }] : [];
    })
    .sort((one, other) => other.thickness - one.thickness);
}

function bedOf(mending: Mending, content: Content, { kind, thickness, best }: Foam, share: number): Option {
  const { name, size, mass, needs } = content;
  const { units } = mending.job.case;
  const area = (share * mass * gravity) / best.stress;
  const on = (width: number, depth: number): string => {
    const long = Math.min(width, Math.sqrt((area * width) / depth));
    const text = [long, Math.min(depth, area / long)].map((one) => fineLength(one, units));
    return `[${text.join(", ")}]`;
  };
  const pad = on(size.x, size.y);
  const bed = `{ kind: ${JSON.stringify(kind)}, thickness: ${fineLength(thickness, units)}, pad: ${pad}, sides: ${on(size.y, size.z)}, ends: ${on(size.x, size.z)} }`;
  return option(mending, {
    lever: `contents.${name}.needs.foam`,
    setting: bed,
    words: `Bed the ${name} in ${kind}, ${fineLength(thickness, units)} thick, on a pad of ${pad.slice(1, -1).replace(",", " by")}.`,
    changes: [
      set(`contents.${name}.needs.foam`, bed),
      ...(needs.mounts ? [remove(`contents.${name}.needs.mounts`)] : []),
    ],
    unpriced: "foam",
  });
}
