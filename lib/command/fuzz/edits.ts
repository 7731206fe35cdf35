/** Changes of a job's files: undone byte for byte, and read the same by a reader that keeps and by a fresh one. */
import {
  add,
  applyChange,
  type Change,
  caseFile,
  designReader,
  readDesign,
  remove,
  rename,
  set,
} from "../../design/index.js";
import { type CaseContent, textsOf } from "../reference/cases/case-content.js";
import { type Draws, drawsOf } from "../reference/cases/draws.js";
import { randomCase } from "../reference/cases/random-case.js";
import { errorWords, type Fuzzer, shortened } from "./fuzzer.js";
import { oddNumber, oddTexts } from "./odd-values.js";

type Texts = Readonly<Record<string, string>>;

/** One to six changes of a random case. */
export const edits: Fuzzer = {
  attack: (seed) => {
    const draws = drawsOf(seed, "mm");
    const given = randomCase(seed, { sections: 2 });
    const changes = Array.from({ length: draws.whole(1, 6) }, () => changeOf(given, draws));
    const texts = textsOf(given);
    const first = faultOfChanges(texts, changes);
    if (first === undefined) return undefined;
    const few = shortened(changes, (fewer) => faultOfChanges(texts, fewer) !== undefined);
    return {
      words: faultOfChanges(texts, few) ?? first,
      input: few.map((one) => JSON.stringify(one)).join("\n"),
    };
  },
};

function changeOf({ content }: CaseContent, draws: Draws): Change {
  const [path, value] = draws.pick(leavesOf(content, []));
  const at = path.join(".");
  switch (draws.whole(0, 5)) {
    case 0:
      return remove(path.slice(0, draws.whole(1, path.length)).join("."));
    case 1:
      return rename(at, draws.pick(["other name", "a.b", "x: y", "", "__proto__"]));
    case 2:
      return add(
        `${path.slice(0, -1).join(".")}.${draws.pick(["mass", "note", "0", "new"])}`,
        draws.pick(oddTexts),
      );
    case 3:
      return set(at, draws.pick(oddTexts));
    default:
      return set(at, oddNumber(String(value), draws));
  }
}

/** Every value of a case that is no block, with its path. */
export function leavesOf(
  value: unknown,
  path: readonly string[],
): readonly (readonly [readonly string[], unknown])[] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([name, one]) => leavesOf(one, [...path, name]));
}

const readKeeping = designReader();

/** What is wrong with how changes are made and taken back. */
export function faultOfChanges(texts: Texts, changes: readonly Change[]): string | undefined {
  try {
    const { texts: changed, undo } = applyChange(texts, ...changes);
    const back = applyChange(changed, undo).texts;
    if (back[caseFile] !== texts[caseFile]) return "undone, the text is not what it was";
    const [kept, fresh] = [problemsOf(readKeeping(changed)), problemsOf(readDesign(changed))];
    return kept === fresh ? undefined : `read again: ${kept}, fresh: ${fresh}`;
  } catch (error) {
    // A change that no edit can make is refused so.
    return error instanceof RangeError && isOurs(error) ? undefined : errorWords(error);
  }
}

/** Node.js has range errors of its own: of a stack, an array, a string. Ours begin with the place. */
function isOurs({ message }: RangeError): boolean {
  return /^(case\.yaml|[a-z-]+\.csv|set |a cell)/.test(message);
}

function problemsOf(read: ReturnType<typeof readDesign>): string {
  return "problems" in read ? JSON.stringify(read.problems) : "no problem";
}
