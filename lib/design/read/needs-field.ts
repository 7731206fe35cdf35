/** What a content needs on the way: foam, a free drawer, a plug, a squeezed strip. */
import type { z } from "zod";
import type { SetTest } from "../../inside/screen.js";
import {
  Area,
  Count,
  choice,
  Force,
  Length,
  Name,
  Pressure,
  Ratio,
  SpringRate,
  Temperature,
} from "../../quantity/index.js";
import type { FoamBed, Needs, PaneClamp, PaneStrip, PlugRoom } from "../case.js";
import { faces } from "../place.js";
import { block, type FileUnits, field, given, lengthIn, lengths } from "./fields.js";

const positive = { above: 0 };

/** The block "needs" of a content; every word may be left out. */
export function needsField(units: FileUnits): z.ZodType<Needs> {
  return block({
    "stands g": field(Ratio, { above: 1 }).optional(),
    foam: foamField(units).optional(),
    "opens by": field(lengthIn(units), positive).optional(),
    "opens to": field(choice("face", faces)).optional(),
    "cold start": field(Ratio, { min: 1 }).optional(),
    hottest: field(Temperature).optional(),
    plug: plugField(units).optional(),
    mounts: block({ count: field(Count, positive), rate: field(SpringRate, positive) }).optional(),
    "keep clear": field(lengthIn(units), positive).optional(),
    pane: paneField(units).optional(),
    "slides at": field(Force, { min: 0 }).optional(),
  }).transform((written) =>
    given<Needs>({
      fragility: written["stands g"],
      foam: written.foam,
      opensBy: written["opens by"],
      opensTo: written["opens to"],
      coldStart: written["cold start"],
      hottest: written.hottest,
      plug: written.plug,
      mounts: written.mounts,
      keepClear: written["keep clear"],
      pane: written.pane,
      slidesAt: written["slides at"],
    }),
  );
}

function foamField(units: FileUnits): z.ZodType<FoamBed> {
  return block({
    kind: field(Name),
    thickness: field(lengthIn(units), positive),
    pad: lengths(2, lengthIn(units), positive, "the sides of the foam that bears it"),
    sides: lengths(2, lengthIn(units), positive, "the foam against its left and its right").optional(),
    ends: lengths(2, lengthIn(units), positive, "the foam against its front and its back").optional(),
  }).transform(({ pad: [padWidth = Length.si(0), padDepth = Length.si(0)], sides, ends, ...rest }) =>
    given<FoamBed>({ ...rest, padWidth, padDepth, sides: areaOf(sides), ends: areaOf(ends) }),
  );
}

function areaOf(sides: readonly Length[] | undefined): Area | undefined {
  return sides && Area.si(sides.reduce<number>((product, side) => product * side, 1));
}

function plugField(units: FileUnits): z.ZodType<PlugRoom> {
  const length = field(lengthIn(units), positive);
  return block({
    at: field(choice("face", faces)),
    length,
    cable: length,
    "bend factor": field(Ratio, { min: 1 }),
    width: length.optional(),
  }).transform(({ at: face, "bend factor": bendFactor, ...rest }) =>
    given<PlugRoom>({ face, bendFactor, ...rest }),
  );
}

function paneField(units: FileUnits): z.ZodType<PaneStrip> {
  const length = lengthIn(units);
  return block({
    strip: field(length, positive),
    squeeze: field(Ratio, { above: 0, max: 0.9 }),
    set: field(Ratio, { min: 0, max: 1 }).optional(),
    "set test": lengths(
      3,
      length,
      positive,
      "thickness before, while squeezed, half an hour after",
    ).optional(),
    clearance: field(length, { min: 0 }),
    clamp: clampField(units).optional(),
    stands: field(Pressure, positive).optional(),
  }).transform(({ "set test": test, ...rest }) =>
    given<PaneStrip>({ ...rest, setTest: test && setTest(test) }),
  );
}

function setTest([
  before = Length.si(0),
  squeezed = Length.si(0),
  after = Length.si(0),
]: readonly Length[]): SetTest {
  return { before, squeezed, after };
}

function clampField(units: FileUnits): z.ZodType<PaneClamp> {
  return block({
    force: field(Force, positive),
    pad: lengths(2, lengthIn(units), positive, "the sides of the strip under it"),
  }).transform(({ force, pad: [padWidth = Length.si(0), padLength = Length.si(0)] }) => ({
    force,
    padWidth,
    padLength,
  }));
}
