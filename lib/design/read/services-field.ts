/** The block "services": battery, socket, vents and fans. */
import type { z } from "zod";
import { AirFlow } from "../../inside/kinds.js";
import {
  Charge,
  Count,
  Current,
  hour,
  Name,
  Pressure,
  Ratio,
  ratio,
  Temperature,
  Time,
  Voltage,
} from "../../quantity/index.js";
import type { Battery, Cooling, Mains, Services } from "../services.js";
import { block, type FileUnits, field, lengthIn, named } from "./fields.js";

const positive = { above: 0 };
const share = { above: 0, max: 1 };

const batteryField: z.ZodType<Battery> = block({
  capacity: field(Charge, positive),
  "rated for": field(Time, positive).default(hour(20)),
  voltage: field(Voltage, positive),
  usable: field(Ratio, share),
  peukert: field(Ratio, { min: 1, max: 2 }).default(ratio(1)),
  inverter: field(Ratio, share).default(ratio(1)),
  "must last": field(Time, positive),
}).transform(({ "rated for": ratedTime, inverter: efficiency, "must last": hours, ...rest }) => ({
  ...rest,
  ratedTime,
  efficiency,
  hours,
}));

function mainsField(units: FileUnits): z.ZodType<Mains> {
  return block({
    voltage: field(Voltage, positive),
    breaker: field(Current, positive),
    "cable gauge": field(Count, { max: 40 }),
    "cable length": field(lengthIn(units), positive),
    "power factor": field(Ratio, share).default(ratio(1)),
  }).transform(({ "cable gauge": gauge, "cable length": length, "power factor": powerFactor, ...rest }) => ({
    ...rest,
    gauge,
    length,
    powerFactor,
  }));
}

const coolingField: z.ZodType<Omit<Cooling, "section">> = block({
  "let in": field(Name),
  "let out": field(Name),
  free: field(Ratio, share).default(ratio(1)),
  fan: block({ flow: field(AirFlow, positive), pressure: field(Pressure, positive) }).optional(),
}).transform(({ "let in": letIn, "let out": letOut, free, fan }) => ({
  letIn,
  letOut,
  free,
  ...(fan ? { fan } : {}),
}));

/** What feeds and cools the case; all of it may be left out, and then the findings that need it are unknown. */
export function servicesField(units: FileUnits): z.ZodType<Services> {
  return block({
    hottest: field(Temperature).optional(),
    battery: batteryField.optional(),
    mains: mainsField(units).optional(),
    cooling: named(coolingField, '"upper"').default([]),
  }).transform(({ hottest, battery, mains, cooling }) => ({
    ...(hottest === undefined ? {} : { hottest }),
    ...(battery === undefined ? {} : { battery }),
    ...(mains === undefined ? {} : { mains }),
    cooling: cooling.map(([section, rest]) => ({ section, ...rest })),
  }));
}
