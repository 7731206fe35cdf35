import type { Question } from "../guarded.js";

/** A question about the handles of a section. */
export function aboutHandles(id: string, section: string, question: string): Question {
  return { id: `travel.${id}.${section}`, topic: "travel", subject: `handles of ${section}`, question };
}
