/** A cradle lined with foam that holds a thing on the road: how high its walls, how hard its foam is pressed. */
import { type Formula, formula } from "../formula.js";
import { Length, Mass, Pressure, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";
import { RideWay, slidingShares, tiltingShares } from "./ride-share.js";

/** A thing in a cradle that the road pushes one way. */
export interface CradledThing {
  /** Of its centre of gravity above what it stands on. */
  readonly height: Length;
  /** Of the thing, the way it is pushed. */
  readonly base: Length;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Height of a cradle's wall over which a thing does not tip: h - b / (2 c); zero where it stands by itself.
 *
 * @source moments about the rim; EN 12195-1 for the push, as of a load that may tip
 * @throws Refusal unless height and base are positive
 * @example cradleRim({ height: mm(200), base: mm(200), way: "forward" }) // 75 mm
 */
export const cradleRim: Formula<CradledThing, Length> = formula({
  id: "ride.cradle.rim",
  title: "Height of a cradle's walls",
  equation: String.raw`r=\max\left(0,\ h-\frac{b}{2c}\right)`,
  inputs: {
    height: { symbol: "h", kind: Length, meaning: "its centre above what it stands on", above: 0 },
    base: { symbol: "b", kind: Length, meaning: "size of the thing that way", above: 0 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "r", kind: Length, meaning: "rim above what it stands on, at least" },
  source: [cite("statics", "moments about the rim"), cite("en-12195", "table 2")],
  validity:
    "Weight in the middle of the thing, walls that do not bend; what jumps needs a strap or a lid as well.",
  compute: ({ height, base, way }) => Math.max(0, height - base / (2 * tiltingShares[way])),
});

/** A thing pushed against the foam of a wall. */
export interface PressedLining {
  /** Of the thing. */
  readonly mass: Mass;
  /** Of the foam that bears the push: along the wall. */
  readonly width: Length;
  /** Of the same, up the wall. */
  readonly rim: Length;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Pressure of a thing on the foam of a cradle's wall: c m g / (w r).
 *
 * @source statics; EN 12195-1 for the push
 * @throws Refusal unless mass, width and rim are positive
 * @example cradlePressure(cradlePressure.read({ mass: "20 lb", width: "10 in", rim: "4 in", way: "sideways" })) // 1.724 kPa
 */
export const cradlePressure: Formula<PressedLining, Pressure> = formula({
  id: "ride.cradle.pressure",
  title: "Pressure on the foam of a cradle's wall",
  equation: String.raw`p=\frac{c\,m g}{w\,r}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
    width: { symbol: "w", kind: Length, meaning: "width of the foam", above: 0 },
    rim: { symbol: "r", kind: Length, meaning: "height of the foam", above: 0 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the foam" },
  source: [cite("statics", "force over area"), cite("en-12195", "table 2")],
  validity: "A steady push spread over the whole wall; a thing with feet or edges presses harder there.",
  compute: ({ mass, width, rim, way }) => (slidingShares[way] * mass * standardGravity) / (width * rim),
});
