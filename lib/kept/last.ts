/**
 * Keeps the last answer while everything it was asked with is the same, object for object and text for text.
 *
 * @param work from what it is asked with to the answer; pure
 */
export function keptLast<Asked extends readonly unknown[], Answer>(
  work: (...asked: Asked) => Answer,
): (...asked: Asked) => Answer {
  let last: { readonly asked: Asked; readonly answer: Answer } | undefined;
  return (...asked) => {
    if (!last?.asked.every((one, i) => Object.is(one, asked[i])) || last.asked.length !== asked.length) {
      last = { asked, answer: work(...asked) };
    }
    return last.answer;
  };
}
