/** The least sets of options that mend every finding, by going through all of them: exact for what was tried. */

/** What is weighed against each other; less is better in each. */
export interface Weights {
  /** Money, in the currency of the case. */
  readonly cost: number;
  /** Mass, kg. */
  readonly mass: number;
  /** Bench time, s. */
  readonly time: number;
  /** Rules that people must keep. */
  readonly rules: number;
  /** How many things change. */
  readonly changes: number;
}

/** An option by its name, with what it mends alone. */
export interface Candidate {
  /** Its name. */
  readonly id: string;
  /** What it moves: of one lever one option at the most is taken. */
  readonly lever: string;
  /** Ids of the findings that hold with it. */
  readonly mends: ReadonlySet<string>;
  /** What it takes. */
  readonly weights: Weights;
}

/** A choice of candidates with what they take together. */
export interface Cover {
  /** The candidates. */
  readonly chosen: readonly Candidate[];
  /** Their weights, added up. */
  readonly weights: Weights;
}

/** Nothing at all. */
export const noWeights: Weights = { cost: 0, mass: 0, time: 0, rules: 0, changes: 0 };

/** Weights added up. */
export function addedWeights(one: Weights, other: Weights): Weights {
  return {
    cost: one.cost + other.cost,
    mass: one.mass + other.mass,
    time: one.time + other.time,
    rules: one.rules + other.rules,
    changes: one.changes + other.changes,
  };
}

const roundOff = 1e-9;

/** Whether the one is at least as good in everything, and better in something. */
export function dominates(one: Weights, other: Weights): boolean {
  const keys = Object.keys(noWeights) as (keyof Weights)[];
  return (
    keys.every((key) => one[key] <= other[key] + roundOff) &&
    keys.some((key) => one[key] < other[key] - roundOff)
  );
}

function isAlike(one: Weights, other: Weights): boolean {
  return (Object.keys(noWeights) as (keyof Weights)[]).every(
    (key) => Math.abs(one[key] - other[key]) <= roundOff,
  );
}

/** Those that no other beats; of several that take the same, the first. */
export function undominated<One extends { readonly weights: Weights }>(all: readonly One[]): readonly One[] {
  return all.filter(
    ({ weights }, i) =>
      !all.some((other) => dominates(other.weights, weights)) &&
      !all.slice(0, i).some((other) => isAlike(other.weights, weights)),
  );
}

/** Findings with the candidates that touch them and nothing else: what can be settled by itself. */
export function separateGroups(
  findings: readonly string[],
  candidates: readonly Candidate[],
): readonly { readonly findings: readonly string[]; readonly candidates: readonly Candidate[] }[] {
  const group = new Map(findings.map((id) => [id, id]));
  const root = (id: string): string => {
    const above = group.get(id) ?? id;
    return above === id ? id : root(above);
  };
  const levers = new Map<string, string>();
  for (const { lever, mends } of candidates) {
    for (const id of mends) {
      const first = levers.get(lever) ?? id;
      levers.set(lever, first);
      group.set(root(id), root(first));
    }
  }
  const roots = [...new Set(findings.map(root))];
  return roots.map((one) => ({
    findings: findings.filter((id) => root(id) === one),
    candidates: candidates.filter(({ mends }) => [...mends].some((id) => root(id) === one)),
  }));
}

/**
 * Every choice of candidates that mends all findings and that no other choice beats: each group by itself, then put
 * together. A finding that no candidate mends is left out.
 *
 * @param most choices kept when groups are put together, those that cost least first
 */
export function leastCovers(
  findings: readonly string[],
  candidates: readonly Candidate[],
  most = 200,
): readonly Cover[] {
  const mendable = findings.filter((id) => candidates.some(({ mends }) => mends.has(id)));
  return separateGroups(mendable, candidates)
    .map((group) => coversOf(group.findings, group.candidates))
    .reduce<readonly Cover[]>(
      (all, group) =>
        undominated(all.flatMap((one) => group.map((other) => joined(one, other)))).slice(0, most),
      [{ chosen: [], weights: noWeights }],
    )
    .toSorted(byCost);
}

function joined(one: Cover, other: Cover): Cover {
  return { chosen: [...one.chosen, ...other.chosen], weights: addedWeights(one.weights, other.weights) };
}

/** The cheapest first; of those that cost the same the quickest, the lightest, the one with fewest rules and changes. */
export function byCost(
  { weights: one }: { readonly weights: Weights },
  { weights: other }: { readonly weights: Weights },
): number {
  const keys = ["cost", "time", "mass", "rules", "changes"] as const;
  const key = keys.find((name) => Math.abs(one[name] - other[name]) > roundOff);
  return key === undefined ? 0 : one[key] - other[key];
}

/** Where no choice mends all of a group, those of it that leave out one finding, or more. */
function coversOf(findings: readonly string[], candidates: readonly Candidate[]): readonly Cover[] {
  const whole = wholeCovers(findings, candidates);
  if (whole.length > 0 || findings.length === 0) return whole;
  const fewer = findings.map((left) => findings.filter((id) => id !== left));
  const found = fewer.flatMap((some) => wholeCovers(some, candidates));
  return found.length > 0 ? undominated(found) : coversOf(findings.slice(1), candidates);
}

/** Whether some choice of candidates, one of a lever at the most, mends all of some findings. */
export function canMendAll(findings: readonly string[], candidates: readonly Candidate[]): boolean {
  const [next, ...rest] = findings;
  if (next === undefined) return true;
  return candidates.some(
    ({ lever, mends }) =>
      mends.has(next) &&
      canMendAll(
        rest.filter((id) => !mends.has(id)),
        candidates.filter((one) => one.lever !== lever),
      ),
  );
}

/** Branches on the finding that the fewest candidates mend. */
function wholeCovers(findings: readonly string[], candidates: readonly Candidate[]): readonly Cover[] {
  let found: readonly Cover[] = [];
  const extend = (cover: Cover, open: readonly string[]): void => {
    if (found.some(({ weights }) => dominates(weights, cover.weights))) return;
    const [next] = [...open].sort((one, other) => count(one) - count(other));
    if (next === undefined) {
      found = undominated([...found, cover]);
      return;
    }
    for (const candidate of candidates) {
      if (!candidate.mends.has(next) || cover.chosen.some(({ lever }) => lever === candidate.lever)) continue;
      extend(
        { chosen: [...cover.chosen, candidate], weights: addedWeights(cover.weights, candidate.weights) },
        open.filter((id) => !candidate.mends.has(id)),
      );
    }
  };
  const count = (id: string): number => candidates.filter(({ mends }) => mends.has(id)).length;
  extend({ chosen: [], weights: noWeights }, findings);
  return found;
}

/** Keys by which choices are told apart. */
const measured = ["cost", "mass", "time", "rules"] as const;

/** Some of many choices, as far apart as can be: the cheapest, then each time the one least like those before it. */
export function spread<One extends { readonly weights: Weights }>(
  all: readonly One[],
  most: number,
): readonly One[] {
  const scale = measured.map((key) => {
    const values = all.map(({ weights }) => weights[key]);
    return { key, wide: Math.max(...values) - Math.min(...values) || 1 };
  });
  const apart = ({ weights: one }: One, { weights: other }: One): number =>
    Math.max(...scale.map(({ key, wide }) => Math.abs(one[key] - other[key]) / wide));
  const chosen: One[] = [...all].sort(byCost).slice(0, 1);
  while (chosen.length < Math.min(most, all.length)) {
    const far = (one: One): number => Math.min(...chosen.map((other) => apart(one, other)));
    const rest = all.filter((one) => !chosen.includes(one));
    const next = rest.reduce((best, one) => (far(one) > far(best) ? one : best));
    chosen.push(next);
  }
  return chosen;
}
