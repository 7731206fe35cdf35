/**
 * `export * from "./x"` in a cell gives later cells every name of that module. tslab knows names only one by one, so the
 * star becomes an import of them, as the compiler lists them; a star that leads nowhere stays, and is complained of.
 */
import type ts from "@tslab/typescript-for-tslab";

/** The parts of the compiler that are needed here. */
export type StarCompiler = Pick<typeof ts, "createSourceFile" | "isExportDeclaration" | "ScriptTarget">;

/** A module of which a cell exports everything. */
type Star = ts.ExportDeclaration & { readonly moduleSpecifier: ts.Expression };

/** The file that tslab makes of a cell. */
const cellFile = /(^|\/)__tslab__\.ts$/;

/** What can stand between the braces of an import, but for words of the language. */
const plainName = /^[\p{ID_Start}$_][\p{ID_Continue}$]*$/u;

/**
 * A cell with names instead of stars. A name that the cell declares itself is its own, as in any file.
 *
 * @param compiled the program of which the cell is the newest file; asked only for a cell with a star
 */
export function withNamedStars(
  compiler: StarCompiler,
  code: string,
  compiled: () => ts.Program | undefined,
): string {
  if (!/\bexport\b[^;]*\*/.test(code)) return code;
  const written = compiler.createSourceFile("cell.ts", code, compiler.ScriptTarget.Latest, true);
  const stars = starsOf(compiler, written);
  const program = stars.length > 0 ? compiled() : undefined;
  const file = program?.getSourceFiles().find(({ fileName }) => cellFile.test(fileName));
  if (!program || !file) return code;
  const checker = program.getTypeChecker();
  const own = new Set(declaredIn(checker, file));
  const lists = starsOf(compiler, file).map((star) => {
    const names = exportedBy(checker, star)?.filter((name) => plainName.test(name) && !own.has(name));
    for (const name of names ?? []) own.add(name);
    return names;
  });
  return stars.reduceRight((text, star, index) => {
    const names = lists[index];
    if (!names) return text;
    const word = star.isTypeOnly ? "import type" : "import";
    const from = `${word} { ${names.join(", ")} } from `;
    return text.slice(0, star.getStart()) + from + text.slice(star.moduleSpecifier.getStart());
  }, code);
}

function starsOf(compiler: StarCompiler, file: ts.SourceFile): readonly Star[] {
  return file.statements.filter(
    (one): one is Star => compiler.isExportDeclaration(one) && !one.exportClause && !!one.moduleSpecifier,
  );
}

/** Names that a file declares or imports itself. */
function declaredIn(checker: ts.TypeChecker, file: ts.SourceFile): readonly string[] {
  const all = checker.getSymbolsInScope(file, -1 as ts.SymbolFlags);
  return all
    .filter(({ declarations = [] }) => declarations.some((one) => one.getSourceFile() === file))
    .map(({ name }) => name);
}

/** Names that the module behind a star exports; undefined where there is no such module. */
function exportedBy(checker: ts.TypeChecker, star: Star): readonly string[] | undefined {
  const module = checker.getSymbolAtLocation(star.moduleSpecifier);
  if (!module) return undefined;
  return checker
    .getExportsOfModule(module)
    .map(({ name }) => name)
    .filter((name) => name !== "default");
}
