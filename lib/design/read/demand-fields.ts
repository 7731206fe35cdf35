/** What is asked of the case: loads, the journey, the business. */
import type { z } from "zod";
import { Handling, type RampSize, Tread } from "../../moving/index.js";
import {
  Angle,
  Area,
  Count,
  choice,
  degree,
  Force,
  Name,
  Pressure,
  Ratio,
  Speed,
  Time,
} from "../../quantity/index.js";
import type { Business, Demands, Journey, Lashing } from "../case.js";
import { block, type FileUnits, field, given, lengthIn, moneyIn, named } from "./fields.js";

const positive = { above: 0 };
const zeroOrMore = { min: 0 };

/** The block "demands". */
export const demandsField: z.ZodType<Demands> = block({
  "side pressure": field(Pressure, positive),
  "top pressure": field(Pressure, positive),
  "allowed sag": field(Ratio, { above: 0, max: 0.1 }),
  jerk: field(Ratio, { min: 1 }),
  "safety factor": field(Ratio, { min: 1 }),
  climate: field(choice("climate", ["dry", "damp"])),
  push: field(Force, positive),
}).transform((written) => ({
  sidePressure: written["side pressure"],
  topPressure: written["top pressure"],
  allowedSag: written["allowed sag"],
  dynamicFactor: written.jerk,
  safetyFactor: written["safety factor"],
  climate: written.climate,
  push: written.push,
}));

const slope = { min: 0, max: degree(45) };

const lashingField: z.ZodType<Lashing> = block({
  tension: field(Force, positive),
  straps: field(Count, positive),
  angle: field(Angle, { above: 0, max: degree(90) }),
  friction: field(Ratio, { above: 0, max: 1 }),
});

/** Either an angle, or what a tape says of the ramp. */
const rampWords = '"ramp" as an angle or "ramp size" with rise and length, not both';

function rampSizeField(units: FileUnits): z.ZodType<RampSize> {
  const length = field(lengthIn(units), positive);
  return block({ rise: length, length }).refine((ramp) => ramp.rise < ramp.length, {
    error: "a rise shorter than the ramp",
  });
}

/** The block "journey". */
export function journeyField(units: FileUnits): z.ZodType<Journey> {
  const length = field(lengthIn(units), zeroOrMore);
  return block({
    people: field(Count, positive),
    "lift from": length,
    "lift to": length,
    reach: length,
    "lifts per minute": field(Ratio, positive),
    "lifting time": field(Time, positive),
    grip: field(choice("grip", ["good", "fair", "poor"])),
    vehicle: field(Name),
    floor: field(choice("floor", ["even", "uneven"])),
    handling: field(Handling).optional(),
    stairs: field(Angle, slope).optional(),
    ramp: field(Angle, slope).optional(),
    "ramp size": rampSizeField(units).optional(),
    threshold: length.optional(),
    gap: length.optional(),
    wheel: field(lengthIn(units), positive).optional(),
    tread: field(Tread).optional(),
    "wheel print": field(Area, positive).optional(),
    brakes: field(Count, { max: 4 }).optional(),
    gust: field(Speed, zeroOrMore).optional(),
    slope: field(Angle, slope).optional(),
    lashing: lashingField.optional(),
  })
    .refine((written) => written.ramp === undefined || written["ramp size"] === undefined, {
      error: rampWords,
      path: ["ramp size"],
    })
    .transform((written) => ({
      people: written.people,
      liftFrom: written["lift from"],
      liftTo: written["lift to"],
      reach: written.reach,
      liftsPerMinute: written["lifts per minute"],
      liftingTime: written["lifting time"],
      grip: written.grip,
      vehicle: written.vehicle,
      floor: written.floor,
      ...given({
        handling: written.handling,
        stairs: written.stairs,
        ramp: written.ramp,
        rampSize: written["ramp size"],
        threshold: written.threshold,
        gap: written.gap,
        wheel: written.wheel,
        tread: written.tread,
        wheelPrint: written["wheel print"],
        brakes: written.brakes,
        gust: written.gust,
        slope: written.slope,
        lashing: written.lashing,
      }),
    }));
}

/** The block "business". */
export function businessField(units: FileUnits): z.ZodType<Business> {
  const price = field(moneyIn(units), zeroOrMore);
  return block({
    "ready made": price,
    "own hour": price,
    "building time": field(Time, positive),
    tools: named(price, '"rivet gun"'),
    "income per job": price,
    "running cost per job": price,
    "jobs per month": field(Ratio, positive),
    interest: field(Ratio, { min: 0, max: 1 }),
    "price doubt": field(Ratio, { min: 0, max: 0.9 }).optional(),
    "hours doubt": field(Ratio, { min: 0, max: 0.9 }).optional(),
    "income spread": field(Ratio, { min: 0, max: 10 }).optional(),
  }).transform((written) => ({
    readyMade: written["ready made"],
    ownHour: written["own hour"],
    buildingTime: written["building time"],
    tools: written.tools.map(([name, toolPrice]) => ({ name, price: toolPrice })),
    incomePerJob: written["income per job"],
    runningCostPerJob: written["running cost per job"],
    jobsPerMonth: written["jobs per month"],
    interest: written.interest,
    ...given({
      priceDoubt: written["price doubt"],
      hoursDoubt: written["hours doubt"],
      incomeSpread: written["income spread"],
    }),
  }));
}
