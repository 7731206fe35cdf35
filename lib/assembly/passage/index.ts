export {
  type Attitude,
  attitudesOf,
  goesIntoRectangle,
  goesThrough,
  type Passage,
  passage,
  passageTolerance,
  widened,
} from "./passage.js";
