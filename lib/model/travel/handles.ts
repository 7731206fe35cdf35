/** The handles a section is lifted by: where its two ends are, and how the weight lies between them. */
import type { HardwarePart } from "../../design/index.js";
import type { LoadBetweenTwo } from "../../moving/index.js";
import { degree, Length, type Mass } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import type { BalanceLine } from "./balance.js";

/** The handles a section is lifted by. */
export function liftHandles({ parts }: ReviewInput, section: string): readonly HardwarePart[] {
  return parts.hardware.filter((part) => part.section === section && part.item.duty === "lift");
}

/** The sections that have any. */
export function sectionsWithHandles(input: ReviewInput): readonly string[] {
  return input.parts.sections
    .map(({ name }) => name)
    .filter((section) => liftHandles(input, section).length > 0);
}

/** The two ends of a section that has handles at both. */
export interface HandleLine {
  /** The direction from one end to the other. */
  readonly axis: "x" | "y";
  /** Of the first end: left, or front. */
  readonly from: Length;
  /** From the first end to the second: right, or back. */
  readonly span: Length;
  /** Of the handles, on the mean. */
  readonly height: Length;
}

/**
 * From the handles at one end of a section to those at the other, left to right or front to back.
 *
 * @throws RangeError where there is no handle at each end
 */
export function handleLine(input: ReviewInput, section: string): HandleLine {
  const centres = liftHandles(input, section).map(({ centre }) => centre);
  const reach = (axis: "x" | "y"): number => {
    const places = centres.map((centre) => centre[axis]);
    return Math.max(...places) - Math.min(...places);
  };
  const axis = reach("x") >= reach("y") ? "x" : "y";
  const span = reach(axis);
  if (!(span > 0)) {
    throw new RangeError(`${section} needs a handle at each end to be lifted by more than one person`);
  }
  const height = centres.reduce((sum, { z }) => sum + z, 0) / centres.length;
  const from = Math.min(...centres.map((centre) => centre[axis]));
  return { axis, from: Length.si(from), span: Length.si(span), height: Length.si(height) };
}

/** Which way the two ends of a section lie: left to right, or front to back. */
export function liftAxis(input: ReviewInput, section: string): "x" | "y" {
  return handleLine(input, section).axis;
}

/** The handles at the first end of a section (left, or front) and at the second. */
export function handlesByEnd(
  input: ReviewInput,
  section: string,
): readonly [readonly HardwarePart[], readonly HardwarePart[]] {
  const { axis, from, span } = handleLine(input, section);
  const handles = liftHandles(input, section);
  const isFirst = ({ centre }: HardwarePart): boolean => centre[axis] < from + span / 2;
  return [handles.filter(isFirst), handles.filter((handle) => !isFirst(handle))];
}

/** How a section's weight lies between its two ends. */
export function endShares(
  input: ReviewInput,
  section: string,
  balance: BalanceLine,
  mass: Mass,
): LoadBetweenTwo {
  const line = handleLine(input, section);
  return {
    mass,
    span: line.span,
    toCentre: Length.si(balance.value[line.axis] - line.from),
    rise: Length.si(balance.value.z - line.height),
    incline: degree(0),
  };
}
