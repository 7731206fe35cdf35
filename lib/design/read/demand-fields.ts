/** What is asked of the case: loads, the journey, the business. */
import type { z } from "zod";
import { Count, choice, Force, Name, Pressure, Ratio, Time } from "../../quantity/index.js";
import type { Business, Demands, Journey } from "../case.js";
import { block, type FileUnits, field, lengthIn, moneyIn, named } from "./fields.js";

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
  jerk: written.jerk,
  safetyFactor: written["safety factor"],
  climate: written.climate,
  push: written.push,
}));

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
  }).transform((written) => ({
    people: written.people,
    liftFrom: written["lift from"],
    liftTo: written["lift to"],
    reach: written.reach,
    liftsPerMinute: written["lifts per minute"],
    liftingTime: written["lifting time"],
    grip: written.grip,
    vehicle: written.vehicle,
    floor: written.floor,
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
  }).transform((written) => ({
    readyMade: written["ready made"],
    ownHour: written["own hour"],
    buildingTime: written["building time"],
    tools: written.tools.map(([name, toolPrice]) => ({ name, price: toolPrice })),
    incomePerJob: written["income per job"],
    runningCostPerJob: written["running cost per job"],
    jobsPerMonth: written["jobs per month"],
    interest: written.interest,
  }));
}
