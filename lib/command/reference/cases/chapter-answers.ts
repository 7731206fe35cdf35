/** The answer of each chapter of the book, for a first page without its kernel. */
import {
  buyingAnswer,
  capitalised,
  facingAnswer,
  insideAnswer,
  type Job,
  jointsAnswer,
  measuringAnswer,
  moneyAnswer,
  movingAnswer,
  Refusal,
  recipeAnswer,
  stiffnessAnswer,
} from "../../../index.js";

/** What each chapter answers, under its name: why not, where the case has no such thing. */
export function chapterAnswers(job: Job): readonly (readonly [string, () => string])[] {
  return answersOf(job).map(([name, answer]) => [
    name,
    () => {
      try {
        return answer();
      } catch (error) {
        if (error instanceof Refusal) return `${capitalised(error.message)}.`;
        throw error;
      }
    },
  ]);
}

function answersOf(job: Job): readonly (readonly [string, () => string])[] {
  return [
    ["measuring", () => measuringAnswer(job)],
    ["stiffness", () => stiffnessAnswer(job)],
    ["joints", () => jointsAnswer(job)],
    ["facing", () => facingAnswer(job)],
    ["buying", () => buyingAnswer(job)],
    ["moving", () => movingAnswer(job)],
    ["inside", () => insideAnswer(job)],
    ["money", () => moneyAnswer(job)],
    ["recipe", () => recipeAnswer(job)],
  ];
}
