/** Text out of the bytes of a file, in the encodings that editors and spreadsheets write. */

/** A text, or why it is none. */
export type Decoded = { readonly text: string } | { readonly fault: string };

/** Reads UTF-8, UTF-16 and, where every letter is beyond doubt, Windows-1252. Never gives a broken letter. */
export function decode(bytes: Uint8Array): Decoded {
  const wide = utf16Of(bytes);
  const text = textIn(wide ?? "utf-8", bytes);
  if (text !== undefined) return text.includes("\0") ? { fault: textExpected } : { text };
  const western = wide ? undefined : westernOf(textIn("windows-1252", bytes));
  if (western !== undefined && isPlainlyWestern(western)) return { text: western };
  return { fault: textExpected };
}

const textExpected =
  'a text saved as UTF-8 ("CSV UTF-8" in a spreadsheet); its letters cannot be told for certain';

function textIn(encoding: string, bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** What Windows-1252 has from 0x80 to 0x9f; some versions of Node.js leave those bytes as they are. */
const westernSigns = "€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ";

function westernOf(text: string | undefined): string | undefined {
  return text?.replace(/[\x80-\x9f]/g, (sign) => westernSigns.charAt(sign.charCodeAt(0) - 0x80));
}

/** By its mark, or because every second byte of plain letters is zero. */
function utf16Of(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  const start = bytes.subarray(0, 2000);
  const zeros = (from: number): number => start.filter((byte, i) => byte === 0 && i % 2 === from).length;
  const [even, odd] = [zeros(0), zeros(1)];
  if (odd > start.length / 4 && even === 0) return "utf-16le";
  return even > start.length / 4 && odd === 0 ? "utf-16be" : undefined;
}

/** Letters and signs that stand where they do in no other old encoding: a sign between two letters would be a letter there. */
function isPlainlyWestern(text: string): boolean {
  const letters = /^[\t\n\r\x20-\x7eÀ-ÖØ-öø-ÿß€°µ²³½¼¾±×÷–—‘’‚“”„…•\u00a0]*$/u;
  return letters.test(text) && !/\p{L}[€°²³½¼¾±×÷–—“”„…•]\p{L}/u.test(text) && !/[À-ÿ]{3}/u.test(text);
}
