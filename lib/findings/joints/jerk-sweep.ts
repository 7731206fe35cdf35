import type { ReviewInput } from "../../model/index.js";
import { Ratio } from "../../quantity/index.js";
import { handleFindings } from "./handle-findings.js";

/** How much of a handle a section uses at one jerk. */
export interface JerkRow {
  readonly section: string;
  /** Times the load at rest. */
  readonly jerk: Ratio;
  /** Load over what handle and rivets allow. */
  readonly use: Ratio;
}

/** What a rougher lift does to the handles of each section; sections whose handles are not known are left out. */
export function jerkSweep(input: ReviewInput, jerks: readonly Ratio[]): readonly JerkRow[] {
  return jerks.flatMap((jerk) => {
    const demands = { ...input.case.demands, dynamicFactor: jerk };
    return handleFindings({ ...input, case: { ...input.case, demands } }).flatMap(({ subject, ratio }) =>
      ratio === undefined
        ? []
        : [{ section: subject.replace(/^handles of /, ""), jerk, use: Ratio.si(ratio) }],
    );
  });
}
