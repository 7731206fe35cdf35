/** What a shop takes off stock before it cuts pieces from it. */
import { Length } from "../quantity/index.js";

/** Common practice, no source: taken off each edge of a sheet to get clear of dents. */
export const sheetEdgeTrim: Length = Length.of(1 / 4, "in");

/** Common practice, no source: taken off each end of a bar to get a square, clean end. */
export const barEndTrim: Length = Length.of(1 / 4, "in");
