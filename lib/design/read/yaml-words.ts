/** What is wrong with the text of a case file, in a builder's words instead of the parser's. */
import type { Document, YAMLError } from "yaml";

/** Something wrong with the text on a line. */
export interface TextFault {
  /** Where it is wrong: so many characters from the start. */
  readonly at: number;
  /** What should stand there. */
  readonly expected: string;
  /** What stands there. */
  readonly value?: string;
}

/** Blocks inside each other that no case needs, and at which reading would take without end. */
const deepest = 60;

const copies = "plain values instead of copies of copies (& and *)";

/** Faults to look for before the text is parsed: what a parser would choke on, and tabs, which it tells badly. */
export function faultsBefore(text: string): TextFault[] {
  const tabs = [...text.matchAll(/^[ ]*\t[ \t]*(?=[^\s#])/gm)].map(({ index }) => ({
    at: index,
    expected: "spaces before a word instead of tabs",
  }));
  if (tabs.length > 0) return tabs;
  const deep = tooDeep(text);
  return deep === undefined
    ? []
    : [{ at: deep, expected: `brackets and blocks less than ${deepest} deep inside each other` }];
}

/** Where brackets, hyphens of lists or spaces stand too deep. */
function tooDeep(text: string): number | undefined {
  const listInList = new RegExp(`^ *(?:- ){${deepest}}|^ {${4 * deepest}}`, "m").exec(text)?.index;
  let depth = 0;
  for (const { 0: mark, index } of text.matchAll(/[[\]{}]/g)) {
    depth = Math.max(0, depth + (mark === "[" || mark === "{" ? 1 : -1));
    if (depth > deepest) return index;
  }
  return listInList;
}

/** Faults that the parser found: the first, since what follows from it is no mistake of its own. */
export function faultsOfParsing({ errors, warnings }: Document, text: string): TextFault[] {
  const [first] = errors;
  if (first) return [tooFarRight(first, text) ?? { at: first.pos[0], ...wordsOf(first, text) }];
  return warnings.map(({ pos: [at] }) => ({
    at,
    value: /^\S+/.exec(text.slice(at))?.[0] ?? "",
    expected: 'a value without a tag; a text that begins with "!" stands in quotes',
  }));
}

/** A line that stands further right than the name with a value above it. */
function tooFarRight({ code, pos }: YAMLError, text: string): TextFault | undefined {
  if (code !== "BLOCK_AS_IMPLICIT_KEY") return undefined;
  const from = text.lastIndexOf("\n", pos[0] - 1) + 1;
  const [, above, name, indent] = /^( *)([^:#\n]+): +[^\n]+\n( *)\S[^:\n]*:/.exec(text.slice(from)) ?? [];
  if (above === undefined || indent === undefined || indent.length <= above.length) return undefined;
  const at = text.indexOf("\n", from) + 1;
  const value = (text.slice(at).split("\n")[0] ?? "").trim();
  return { at, value, expected: `as many spaces before it as before "${name}", the line above` };
}

function wordsOf({ code, pos, message }: YAMLError, text: string): Omit<TextFault, "at"> {
  const from = text.lastIndexOf("\n", pos[0] - 1) + 1;
  const [line = ""] = text.slice(from).split("\n");
  const value = line.trim();
  switch (code) {
    case "MULTILINE_IMPLICIT_KEY":
    case "BLOCK_AS_IMPLICIT_KEY":
      return { value, expected: nameAndValue(line) };
    case "BAD_INDENT":
      return /Flow/.test(message)
        ? { expected: `the end of the list or block that begins above, with ${message.slice(-1)}`, value }
        : { value, expected: "as many spaces before it as before the other words of its block" };
    case "MISSING_CHAR":
      return /quote/.test(message)
        ? { expected: "a closing quote for a text that begins with a quote above" }
        : { value, expected: nameAndValue(line) };
    case "BAD_SCALAR_START":
      return { value, expected: 'a text that begins with "@", "%" or "`" in quotes' };
    case "MULTIPLE_DOCS":
      return { value, expected: "one case in a file, without a line of three hyphens" };
    case "BAD_DQ_ESCAPE":
      return { value, expected: "a text in single quotes where it has a backslash" };
    case "UNEXPECTED_TOKEN":
      return { value, expected: "brackets and quotes in pairs, and nothing after the last of a line" };
    default:
      return { value, expected: "a name, a colon, a space and a value, in spaces of its block" };
  }
}

/** A line that is no name with a value: the colon or the space after it is missing, or it stands too far right. */
function nameAndValue(line: string): string {
  const glued = /^\s*(?:- )?([^:#]+):(?=\S)/.exec(line);
  if (glued) return `a space after the colon of "${glued[1]?.trim()}"`;
  if (/:\s.*:\s/.test(line)) return "a text that has a colon and a space in it in quotes";
  if (!line.includes(":")) return `a colon and a space after the name, such as "width: 12"`;
  return "a name, a colon, a space and a value on one line, and blocks below it further to the right";
}

/**
 * The plain content of a document.
 *
 * @returns the content, or what is wrong with its copies
 */
export function contentOf(document: Document, text: string): { readonly content: unknown } | TextFault {
  const [, name] = /\*(\S+)/.exec(text) ?? [];
  try {
    return { content: document.toJS({ maxAliasCount: 50 }) };
  } catch (error) {
    const unresolved = error instanceof ReferenceError && /alias.*: (\S+)$/.exec(error.message)?.[1];
    if (unresolved) {
      const at = text.indexOf(`*${unresolved}`);
      return {
        at,
        value: `*${unresolved}`,
        expected: `a value; "*" repeats what an earlier "&${unresolved}" marks, and there is none`,
      };
    }
    return { at: Math.max(0, text.indexOf(`*${name}`)), expected: copies };
  }
}
