/** Sentences of a text. */

/** Points that end no sentence stand before a small letter, a figure or nothing. */
const between = /(?<=[.!?])\s+(?=[A-Z0-9"'])/;
/** What looks like an end and is none. */
const goesOn = /\b(p|eq|no|ed|fig|approx|incl)\.$/i;

/** The sentences of a text in order. */
export function sentencesOf(text: string): readonly string[] {
  const sentences: string[] = [];
  for (const piece of text.split(between)) {
    const last = sentences.at(-1);
    if (last !== undefined && goesOn.test(last)) sentences[sentences.length - 1] = `${last} ${piece}`;
    else sentences.push(piece);
  }
  return sentences.map((one) => one.trim()).filter((one) => one !== "");
}
