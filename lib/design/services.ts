/** Heat and power of a case, as case.yaml tells them. */
import type { AirFlow, Altitude, Irradiance } from "../inside/kinds.js";
import type {
  Charge,
  Current,
  Length,
  Pressure,
  Ratio,
  Temperature,
  Time,
  Voltage,
} from "../quantity/index.js";

/** What feeds the things inside, and what cools them. */
export interface Services {
  /** Of the air outside on the hottest day it works. */
  readonly hottest?: Temperature;
  /** Height above the sea where it works; the sea's own where it is left out. */
  readonly altitude?: Altitude;
  readonly sun?: Sun;
  readonly battery?: Battery;
  readonly mains?: Mains;
  /** Vents and fans, a section each at the most. */
  readonly cooling: readonly Cooling[];
}

/** The sun it stands in. */
export interface Sun {
  /** Colour of the facing outside. */
  readonly facing: "light" | "dark";
  /** Square onto a face that looks straight into it; 0 where it only ever stands in the shade. */
  readonly strength: Irradiance;
}

/** The battery that rides along. */
export interface Battery {
  /** At its rated time. */
  readonly capacity: Charge;
  /** Time its capacity is rated for. */
  readonly ratedTime: Time;
  readonly voltage: Voltage;
  /** Share that may be taken out. */
  readonly usable: Ratio;
  /** 1 for an ideal one; from two ratings on its sheet. */
  readonly peukert: Ratio;
  /** Of the inverter; 1 without one. */
  readonly efficiency: Ratio;
  /** How long it must last. */
  readonly hours: Time;
}

/** The socket it is plugged into, and the cable to it. */
export interface Mains {
  readonly voltage: Voltage;
  /** Of the circuit. */
  readonly breaker: Current;
  /** Of the cable, American gauge. */
  readonly gauge: number;
  /** One way. */
  readonly length: Length;
  /** Of all loads together; 1 for lamps and heaters. */
  readonly powerFactor: Ratio;
  readonly strip?: PlugStrip;
}

/** The plug strip that the loads are plugged into. */
export interface PlugStrip {
  readonly rated: Current;
  readonly sockets: number;
}

/** How air gets through a section. */
export interface Cooling {
  readonly section: string;
  /** Names of openings, "back.lower vent": where air comes in, low, and out, high. */
  readonly letIn: string;
  readonly letOut: string;
  /** Share of the hole that its grille leaves free. */
  readonly free: Ratio;
  readonly fan?: { readonly flow: AirFlow; readonly pressure: Pressure };
}
