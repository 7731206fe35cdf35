import type { CasePath } from "../read/case-text.js";

/** Something wrong in the case, at a path of its file. */
export interface Fault {
  /** Where it is wrong. */
  readonly path: CasePath;
  /** Where the value may stand instead, nearest first: the build of the section, then of the case. */
  readonly inheritedFrom?: readonly CasePath[];
  /** What should stand there. */
  readonly expected: string;
  /** What is wrong, where it is not what stands at the path. */
  readonly value?: string;
  /** What it has in common with other faults of the same cause. */
  readonly cause?: string;
}

/** Where a value of a panel or an edge is inherited from when it does not stand there itself. */
export function buildPaths(section: string, inBuild: CasePath): readonly CasePath[] {
  return [
    ["sections", section, "build", ...inBuild],
    ["build", ...inBuild],
  ];
}
