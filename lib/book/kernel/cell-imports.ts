/**
 * What a cell imports, as the compiler can find it. A notebook written when "casewright" gave every name of the library
 * goes on working: an import of a name that "casewright" no longer offers is looked up in "casewright/all". A file beside
 * the notebook may be named with its ending, "./mine.ts".
 */
import type ts from "@tslab/typescript-for-tslab";

/** The parts of the compiler that are needed here. */
export type ImportCompiler = Pick<
  typeof ts,
  | "createSourceFile"
  | "isCallExpression"
  | "isExportDeclaration"
  | "isImportDeclaration"
  | "isImportTypeNode"
  | "isLiteralTypeNode"
  | "isNamedExports"
  | "isNamedImports"
  | "isNamespaceExport"
  | "isStringLiteral"
  | "forEachChild"
  | "ScriptTarget"
  | "SyntaxKind"
>;

/** Text put in or taken out of a cell, so that what follows moves. */
interface Shift {
  /** Where, in characters from the start of the cell as it was written. */
  readonly at: number;
  /** How many characters are taken away there. */
  readonly taken: number;
  /** What is put there. */
  readonly put: string;
}

/** A cell as the compiler gets it. */
export interface FoundImports {
  /** The cell. */
  readonly code: string;
  /** A position in the cell as it was written, in the cell as the compiler gets it. */
  there(position: number): number;
  /** The other way round. */
  back(position: number): number;
}

const main = "casewright";
const whole = "casewright/all";

/**
 * The names that a declaration file exports by name, one after another.
 *
 * @param text a file of nothing but `export { ... } from` and `export * as ... from`
 */
export function exportedNames(compiler: ImportCompiler, text: string): ReadonlySet<string> {
  const file = compiler.createSourceFile("face.d.ts", text, compiler.ScriptTarget.Latest, true);
  const names = file.statements.flatMap((statement) => {
    const clause = compiler.isExportDeclaration(statement) ? statement.exportClause : undefined;
    if (!clause) return [];
    return compiler.isNamespaceExport(clause)
      ? [clause.name.text]
      : clause.elements.map(({ name }) => name.text);
  });
  return new Set(names);
}

/**
 * A cell whose imports the compiler can find.
 *
 * @param offered what "casewright" offers
 * @param position where names are being completed: an import clause round it stays as it is
 */
export function withFoundImports(
  compiler: ImportCompiler,
  code: string,
  offered: ReadonlySet<string>,
  position = -1,
): FoundImports {
  const shifts = /casewright|\.ts["']/.test(code) ? shiftsOf(compiler, code, offered, position) : [];
  const moved = (from: number, toWritten: boolean): number => {
    let by = 0;
    for (const { at, taken, put } of shifts) {
      const passed = toWritten ? at + by + put.length : at + taken;
      if (from >= passed) by += put.length - taken;
    }
    return toWritten ? from - by : from + by;
  };
  return {
    code: shifts.reduceRight(
      (text, { at, taken, put }) => text.slice(0, at) + put + text.slice(at + taken),
      code,
    ),
    there: (at) => moved(at, false),
    back: (at) => moved(at, true),
  };
}

function shiftsOf(
  compiler: ImportCompiler,
  code: string,
  offered: ReadonlySet<string>,
  position: number,
): readonly Shift[] {
  const file = compiler.createSourceFile("cell.ts", code, compiler.ScriptTarget.Latest, true);
  const shifts: Shift[] = [];
  const visit = (node: ts.Node): void => {
    const from = specifierOf(compiler, node);
    if (from) {
      const end = from.getEnd() - 1;
      const isOpen = node.getStart() <= position && position <= from.getStart();
      if (from.text === main && !isOpen && !isOffered(compiler, node, offered)) {
        shifts.push({ at: end, taken: 0, put: whole.slice(main.length) });
      }
      if (/^\.{1,2}\/.*[^.]\.ts$/.test(from.text))
        shifts.push({ at: end - ".ts".length, taken: ".ts".length, put: "" });
    }
    compiler.forEachChild(node, visit);
  };
  visit(file);
  return shifts.sort((a, b) => a.at - b.at);
}

/** The module that an import, a re-export, import() or an import type names. */
function specifierOf(compiler: ImportCompiler, node: ts.Node): ts.StringLiteral | undefined {
  if (compiler.isImportDeclaration(node) || compiler.isExportDeclaration(node)) {
    const { moduleSpecifier: from } = node;
    return from && compiler.isStringLiteral(from) ? from : undefined;
  }
  if (compiler.isCallExpression(node) && node.expression.kind === compiler.SyntaxKind.ImportKeyword) {
    const [from] = node.arguments;
    return from && compiler.isStringLiteral(from) ? from : undefined;
  }
  if (compiler.isImportTypeNode(node) && compiler.isLiteralTypeNode(node.argument)) {
    const { literal } = node.argument;
    return compiler.isStringLiteral(literal) ? literal : undefined;
  }
  return undefined;
}

/** Whether all that is taken is offered by name; the whole module, taken at once, is not. */
function isOffered(compiler: ImportCompiler, node: ts.Node, offered: ReadonlySet<string>): boolean {
  if (compiler.isImportDeclaration(node)) {
    const { importClause: clause } = node;
    if (!clause) return true;
    const { namedBindings: names } = clause;
    if (!names || !compiler.isNamedImports(names)) return false;
    return names.elements.every(({ propertyName, name }) => offered.has((propertyName ?? name).text));
  }
  if (compiler.isExportDeclaration(node)) {
    const { exportClause: names } = node;
    if (!names || !compiler.isNamedExports(names)) return false;
    return names.elements.every(({ propertyName, name }) => offered.has((propertyName ?? name).text));
  }
  return false;
}
