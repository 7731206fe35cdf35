/** The drawings of a job, for its command and for its book. */
import type { Job } from "../job/index.js";
import { workpiecesOf } from "../recipe/index.js";
import { type DrawingFile, drawingFiles, type Paper } from "../true-scale/index.js";

/** Every file of the drawings of a job; the review is asked for the cut plans alone. */
export function drawingsOf(
  { case: described, parts, review: { purchases } }: Pick<Job, "case" | "parts" | "review">,
  paper?: Paper,
): Promise<readonly DrawingFile[]> {
  return drawingFiles(workpiecesOf({ case: described, parts, purchases }), paper);
}
