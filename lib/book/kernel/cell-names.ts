/**
 * Names that live on from cell to cell. tslab keeps them on `exports` and writes `exports.rows` where a later cell says
 * `rows`, but not in every place where a name may stand. What it misses is written here, before it looks.
 */
import type ts from "@tslab/typescript-for-tslab";

/** The parts of the compiler that are needed here. */
export type CellCompiler = Pick<
  typeof ts,
  | "createSourceFile"
  | "createWatchProgram"
  | "factory"
  | "forEachChild"
  | "isBindingElement"
  | "isExportDeclaration"
  | "isIdentifier"
  | "isNamedExports"
  | "isPropertyAssignment"
  | "isShorthandPropertyAssignment"
  | "isVariableStatement"
  | "NodeFlags"
  | "ScriptTarget"
  | "SyntaxKind"
  | "visitEachChild"
  | "visitNode"
>;

/** The name of the file in which tslab declares what earlier cells declared. */
const earlierCells = /(^|\/)__prev__\.d\.ts$/;

/**
 * A maker of programs whose emit writes every name of an earlier cell as a member of `exports`.
 *
 * @param seen told of every program that is made
 */
export function watchWithNames(
  compiler: CellCompiler,
  seen: (program: ts.Program) => void,
): CellCompiler["createWatchProgram"] {
  const create = compiler.createWatchProgram as (host: WatchHost) => unknown;
  const withNames = (host: WatchHost): unknown => {
    const take = host.afterProgramCreate;
    host.afterProgramCreate = (program) => {
      seen(program.getProgram());
      take?.call(host, emittingNames(compiler, program));
    };
    return create(host);
  };
  return withNames as CellCompiler["createWatchProgram"];
}

type WatchHost = Pick<ts.WatchCompilerHostOfFilesAndCompilerOptions<ts.BuilderProgram>, "afterProgramCreate">;

function emittingNames(compiler: CellCompiler, program: ts.BuilderProgram): ts.BuilderProgram {
  const emit: ts.BuilderProgram["emit"] = (file, write, token, only, custom) => {
    const names = namesOf(compiler, program.getProgram().getTypeChecker());
    return program.emit(file, write, token, only, { ...custom, after: [names, ...(custom?.after ?? [])] });
  };
  return Object.assign(Object.create(program), { emit });
}

function namesOf(compiler: CellCompiler, checker: ts.TypeChecker): ts.TransformerFactory<ts.SourceFile> {
  const { factory } = compiler;
  const isEarlier = (symbol: ts.Symbol | undefined): boolean =>
    (symbol?.declarations ?? []).some((one) => earlierCells.test(one.getSourceFile().fileName));
  const plain = ({ text }: ts.Identifier): ts.Identifier => factory.createIdentifier(text);
  return (context) => {
    const visit = (node: ts.Node): ts.Node => {
      if (compiler.isShorthandPropertyAssignment(node)) return visitShorthand(node);
      const within = compiler.visitEachChild(node, visit, context);
      // The name of a property, which tslab takes for the variable of that name.
      if (
        compiler.isBindingElement(within) &&
        within.propertyName &&
        compiler.isIdentifier(within.propertyName)
      ) {
        const { dotDotDotToken, propertyName, name, initializer } = within;
        return factory.updateBindingElement(within, dotDotDotToken, plain(propertyName), name, initializer);
      }
      if (compiler.isPropertyAssignment(within) && compiler.isIdentifier(within.name)) {
        return factory.updatePropertyAssignment(within, plain(within.name), within.initializer);
      }
      return within;
    };
    const visitShorthand = (node: ts.ShorthandPropertyAssignment): ts.Node => {
      if (!isEarlier(checker.getShorthandAssignmentValueSymbol(node))) {
        return compiler.visitEachChild(node, visit, context);
      }
      const value = factory.createPropertyAccessExpression(
        factory.createIdentifier("exports"),
        plain(node.name),
      );
      const { objectAssignmentInitializer: otherwise } = node;
      const taken = otherwise
        ? factory.createAssignment(value, compiler.visitNode(otherwise, visit) as ts.Expression)
        : value;
      return factory.createPropertyAssignment(plain(node.name), taken);
    };
    return (file) => keptOnExports(compiler, compiler.visitEachChild(file, visit, context));
  };
}

/** What a cell may assign to lives on `exports` alone, so that its functions see what a later cell assigns. */
function keptOnExports(compiler: CellCompiler, file: ts.SourceFile): ts.SourceFile {
  const { factory, SyntaxKind, NodeFlags } = compiler;
  const kept = new Set<string>();
  const statements = file.statements.map((statement) => {
    if (!compiler.isVariableStatement(statement)) return statement;
    const { declarationList: list, modifiers = [] } = statement;
    if (list.flags & NodeFlags.Const || modifiers.length > 0) return statement;
    for (const { name } of list.declarations) addNames(compiler, name, kept);
    return factory.updateVariableStatement(
      statement,
      [factory.createModifier(SyntaxKind.ExportKeyword)],
      list,
    );
  });
  const exported = statements.map((statement) => {
    if (!compiler.isExportDeclaration(statement)) return statement;
    const { exportClause: clause } = statement;
    if (!clause || !compiler.isNamedExports(clause)) return statement;
    const others = clause.elements.filter(({ name }) => !kept.has(name.text));
    return factory.createExportDeclaration(undefined, false, factory.createNamedExports(others));
  });
  return factory.updateSourceFile(file, exported);
}

function addNames(compiler: CellCompiler, name: ts.BindingName, names: Set<string>): void {
  if (compiler.isIdentifier(name)) names.add(name.text);
  else {
    compiler.forEachChild(name, (element) => {
      if (compiler.isBindingElement(element)) addNames(compiler, element.name, names);
    });
  }
}

/**
 * A cell without the word `export`, which every declaration of a cell is anyway. What it exports again becomes what
 * later cells can name; each place stays where it was, so that the compiler's complaints point at it.
 */
export function withoutExports(compiler: CellCompiler, code: string): string {
  if (!/\bexport\b/.test(code)) return code;
  const file = compiler.createSourceFile("cell.ts", code, compiler.ScriptTarget.Latest, true);
  return file.statements.reduceRight((text, statement) => {
    const [from, to, instead] = insteadOf(compiler, statement) ?? [0, 0, ""];
    return text.slice(0, from) + instead + text.slice(to);
  }, code);
}

/** What to write instead of which span; nothing where the statement exports nothing by name. */
function insteadOf(compiler: CellCompiler, statement: ts.Statement): [number, number, string] | undefined {
  const start = statement.getStart();
  if (compiler.isExportDeclaration(statement)) {
    const { exportClause: clause, moduleSpecifier, isTypeOnly } = statement;
    if (!clause) return undefined;
    if (moduleSpecifier) return [start, start + "export".length, "import"];
    if (!compiler.isNamedExports(clause)) return undefined;
    const renamed = clause.elements.flatMap(({ propertyName, name, isTypeOnly: type }) =>
      propertyName && name.text !== "default"
        ? `${type || isTypeOnly ? "type" : "const"} ${name.text} = ${propertyName.text};`
        : [],
    );
    return [start, statement.end, renamed.join(" ")];
  }
  const modifiers = "modifiers" in statement ? (statement.modifiers as ts.NodeArray<ts.Modifier>) : [];
  const word = modifiers?.find(({ kind }) => kind === compiler.SyntaxKind.ExportKeyword);
  const isDefault = modifiers?.some(({ kind }) => kind === compiler.SyntaxKind.DefaultKeyword);
  return word && !isDefault ? [word.getStart(), word.end, " ".repeat("export".length)] : undefined;
}
