import { liftAxis, type ReviewInput } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { liftFindings } from "./lift-findings.js";

/** The lifting index of a section with one content moved. */
export interface LiftRow {
  /** How far the content stands from the wall at the first end: left, or front. */
  readonly from: Length;
  /** Of the heavier end. */
  readonly index: number;
}

/**
 * How moving one content from one end of its section to the other changes the lift.
 *
 * @param name of the content
 * @param steps places to try, at least two; those where the lift cannot be judged are left out
 * @throws RangeError when there is no such content, or its section has no handle at each end
 */
export function liftSweep(input: ReviewInput, name: string, steps: number): readonly LiftRow[] {
  const part = input.parts.contents.find(({ content }) => content.name === name);
  const section = input.parts.sections.find((one) => one.name === part?.content.section);
  if (!part || !section) throw new RangeError(`lift sweep: no content "${name}"`);
  const axis = liftAxis(input, section.name);
  const inside = input.case.sections.find((one) => one.name === section.name)?.inside;
  const room = (axis === "x" ? inside?.width : inside?.depth) ?? Length.si(0);
  const free = Math.max(0, room - part.content.size[axis]);
  return Array.from({ length: steps }, (_, i) => i).flatMap((i) => {
    const from = Length.si((free * i) / (steps - 1));
    const place = Length.si(section.insideLow[axis] + from + part.content.size[axis] / 2);
    const contents = input.parts.contents.map((one) =>
      one === part ? { ...one, centre: { ...one.centre, [axis]: place } } : one,
    );
    const finding = liftFindings({ ...input, parts: { ...input.parts, contents } }).find(
      ({ subject }) => subject === section.name,
    );
    return finding?.ratio === undefined ? [] : [{ from, index: finding.ratio }];
  });
}
