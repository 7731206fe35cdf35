/** Heat and power of a case, as case.yaml tells them. */
import type { AirFlow } from "../inside/kinds.js";
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
  readonly battery?: Battery;
  readonly mains?: Mains;
  /** Vents and fans, a section each at the most. */
  readonly cooling: readonly Cooling[];
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
