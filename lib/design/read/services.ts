/** The block "services": battery, socket, vents and fans. */
import { AirFlow, Altitude, Irradiance } from "../../inside/kinds.js";
import {
  Charge,
  Count,
  Current,
  choice,
  hour,
  Length,
  Name,
  Pressure,
  Ratio,
  ratio,
  Temperature,
  Time,
  Voltage,
} from "../../quantity/index.js";
import { type BlockOf, block, byName, type Form, needed, optional, preset } from "./form.js";

const positive = { above: 0 };
const share = { above: 0, max: 1 };

const batteryFields = {
  capacity: needed("capacity", Charge, "Capacity at its rated time.", positive),
  ratedTime: preset("rated for", Time, hour(20), "Time its capacity is rated for.", positive),
  voltage: needed("voltage", Voltage, "Its voltage.", positive),
  usable: needed("usable", Ratio, "Share that may be taken out.", share),
  peukert: preset(
    "peukert",
    Ratio,
    ratio(1),
    "Peukert's exponent, from two ratings on its sheet; 1 for an ideal one.",
    {
      min: 1,
      max: 2,
    },
  ),
  efficiency: preset("inverter", Ratio, ratio(1), "Efficiency of the inverter; 1 without one.", share),
  hours: needed("must last", Time, "How long it must last.", { above: 0, example: "6 h" }),
  coldest: optional("coldest", Temperature, "The battery itself on the coldest day it works."),
  age: optional(
    "age left",
    Ratio,
    "Share of its capacity that age has left; 0.8 when it is to be replaced.",
    share,
  ),
  fuse: optional("fuse", Current, "Rating of the fuse at its pole.", positive),
  wireGauge: optional("wire gauge", Count, "Gauge of the wire from it, American.", { max: 40 }),
  wireLength: optional("wire length", Length, "Length of that wire, one way.", positive),
};

/** The battery that rides along. */
export interface Battery extends BlockOf<typeof batteryFields> {}

const stripFields = {
  rated: needed("rated", Current, "Current it is made for.", positive),
  sockets: needed("sockets", Count, "How many sockets it has.", positive),
};

/** The plug strip that the loads are plugged into. */
export interface PlugStrip extends BlockOf<typeof stripFields> {}

const mainsFields = {
  voltage: needed("voltage", Voltage, "Voltage of the socket.", { above: 0, example: "230 V or 120 V" }),
  breaker: needed("breaker", Current, "Current at which the breaker of the circuit trips.", positive),
  gauge: needed("cable gauge", Count, "Gauge of the cable, American.", { max: 40 }),
  length: needed("cable length", Length, "Length of the cable, one way.", positive),
  residual: optional(
    "residual current",
    Current,
    "Current to earth at which its breaker trips: 6 mA on a ground-fault interrupter, 30 mA on a residual-current device.",
    positive,
  ),
  powerFactor: preset(
    "power factor",
    Ratio,
    ratio(1),
    "Power factor of all loads together; 1 for lamps and heaters.",
    share,
  ),
  strip: optional("plug strip", block(stripFields), "The plug strip that the loads are plugged into."),
};

/** The socket it is plugged into, and the cable to it. */
export interface Mains extends BlockOf<typeof mainsFields> {}

const sunFields = {
  facing: needed("facing", choice("facing", ["light", "dark"]), "Colour of the facing outside."),
  strength: needed(
    "strength",
    Irradiance,
    "Sun square onto a face that looks straight into it; 0 where it only ever stands in the shade.",
    { min: 0, max: 1400 },
  ),
};

/** The sun it stands in. */
export interface Sun extends BlockOf<typeof sunFields> {}

const fanFields = {
  flow: needed("flow", AirFlow, "Air it moves where nothing is in its way.", positive),
  pressure: needed("pressure", Pressure, "Pressure at which it moves no more air.", positive),
};

const coolingFields = {
  letIn: needed("let in", Name, 'Opening where air comes in, low: "back.lower vent".'),
  letOut: needed("let out", Name, 'Opening where air goes out, high: "back.upper vent".'),
  free: preset("free", Ratio, ratio(1), "Share of the hole that its grille leaves free.", share),
  fan: optional("fan", block(fanFields), "The fan, where there is one."),
};

/** How air gets through a section. */
export interface Cooling extends BlockOf<typeof coolingFields> {
  /** The section that is cooled. */
  readonly section: string;
}

const coolings: Form<readonly Cooling[]> = byName(block(coolingFields), '"upper"', (section, rest) => ({
  section,
  ...rest,
}));

const serviceFields = {
  hottest: optional("hottest", Temperature, "Air outside on the hottest day it works."),
  altitude: optional(
    "altitude",
    Altitude,
    "Height above the sea where it works; the sea's own where it is left out.",
    { min: -500, max: 11_000 },
  ),
  sun: optional("sun", block(sunFields), "The sun it stands in."),
  battery: optional("battery", block(batteryFields), "The battery that rides along."),
  mains: optional("mains", block(mainsFields), "The socket it is plugged into, and the cable to it."),
  cooling: preset("cooling", coolings, [], "Vents and fans, a section each at the most."),
};

/** What feeds the things inside, and what cools them. */
export interface Services extends BlockOf<typeof serviceFields> {}

/** The block "services"; all of it may be left out, and then the findings that need it are unknown. */
export const servicesForm: Form<Services> = block(serviceFields);
