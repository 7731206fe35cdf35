/** A case as plain data, and the files that it is. */
import { stringify } from "yaml";
import type { Block } from "./draws.js";

/** A case as its files say it, the case file as plain data. */
export interface CaseContent {
  /** Every block of case.yaml. */
  readonly content: Block;
  /** The tables by file name. */
  readonly tables: Readonly<Record<string, string>>;
}

/** The texts of a case's files. */
export function textsOf({ content, tables }: CaseContent): Readonly<Record<string, string>> {
  return { "case.yaml": stringify(content, { aliasDuplicateObjects: false }), ...tables };
}
