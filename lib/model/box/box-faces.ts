import type { Face } from "../../design/index.js";
import type { FaceName } from "../../fem/index.js";

/** Which face of the box each face is, and whether its u runs against the box's axis. */
export const boxFaces: Readonly<Record<Face, readonly [FaceName, boolean]>> = {
  front: ["y0", false],
  back: ["y1", true],
  left: ["x0", true],
  right: ["x1", false],
  top: ["top", false],
  bottom: ["bottom", true],
};
