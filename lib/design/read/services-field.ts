/** The block "services": battery, socket, vents and fans. */
import type { z } from "zod";
import { AirFlow, Altitude, Irradiance } from "../../inside/kinds.js";
import {
  Charge,
  Count,
  Current,
  choice,
  hour,
  Name,
  Pressure,
  Ratio,
  ratio,
  Temperature,
  Time,
  Voltage,
} from "../../quantity/index.js";
import type { Battery, Cooling, Mains, Services, Sun } from "../services.js";
import { block, type FileUnits, field, given, lengthIn, named } from "./fields.js";

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
    "plug strip": block({ rated: field(Current, positive), sockets: field(Count, positive) }).optional(),
  }).transform(
    ({
      "cable gauge": gauge,
      "cable length": length,
      "power factor": powerFactor,
      "plug strip": strip,
      ...rest
    }) => given<Mains>({ ...rest, gauge, length, powerFactor, strip }),
  );
}

const sunField: z.ZodType<Sun> = block({
  facing: field(choice("facing", ["light", "dark"])),
  strength: field(Irradiance, { min: 0, max: 1400 }),
});

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
    altitude: field(Altitude, { min: -500, max: 11_000 }).optional(),
    sun: sunField.optional(),
    battery: batteryField.optional(),
    mains: mainsField(units).optional(),
    cooling: named(coolingField, '"upper"').default([]),
  }).transform(({ cooling, ...rest }) => ({
    ...given<Omit<Services, "cooling">>(rest),
    cooling: cooling.map(([section, rest]) => ({ section, ...rest })),
  }));
}
