import type { HardwarePart } from "../../design/index.js";
import type { Question } from "../guarded.js";

/** A question about one item of a section. */
export function hardwareQuestion(kind: string, { stock, section }: HardwarePart, words: string): Question {
  const subject = `${stock.name} of ${section}`;
  return { id: `joints.${kind}.${section}.${stock.name}`, topic: "joints", subject, question: words };
}
