/** A checker for the part of JSON Schema (draft 4) that the notebook schema uses. */

interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly oneOf?: readonly Schema[];
  readonly not?: Schema;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly patternProperties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: boolean | Schema;
  readonly items?: Schema;
  readonly uniqueItems?: boolean;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

/** The words this checker knows; a schema with another one must not pass unread. */
const known = new Set([
  ..."$ref type enum oneOf not required properties patternProperties additionalProperties items".split(" "),
  ..."uniqueItems minLength maxLength pattern minimum maximum description title $schema definitions format".split(
    " ",
  ),
]);

/** Places where a value breaks a schema, as paths; none when it fits. */
export function schemaProblems(root: Schema, value: unknown): string[] {
  return problems(root, root, value, "");
}

function problems(root: Schema, given: Schema, value: unknown, path: string): string[] {
  const schema = resolve(root, given);
  const stranger = Object.keys(schema).find((word) => !known.has(word));
  if (stranger) throw new Error(`schema word ${stranger} is not known`);
  const check = (part: Schema, inner: unknown, step: string): string[] =>
    problems(root, part, inner, `${path}/${step}`);
  const broken = (rule: string): string[] => [`${path}: ${rule}`];
  return [
    ...(schema.type && ![schema.type].flat().some((type) => isType(type, value))
      ? broken(`type ${schema.type}`)
      : []),
    ...(schema.enum && !schema.enum.includes(value) ? broken("enum") : []),
    ...(schema.not && problems(root, schema.not, value, path).length === 0 ? broken("not") : []),
    ...oneOf(root, schema, value, path),
    ...(typeof value === "string" ? stringProblems(schema, value).flatMap(broken) : []),
    ...(typeof value === "number" ? numberProblems(schema, value).flatMap(broken) : []),
    ...(Array.isArray(value)
      ? listProblems(schema, value, check).concat(unique(schema, value).flatMap(broken))
      : []),
    ...(isType("object", value) ? recordProblems(schema, value as Record<string, unknown>, path, check) : []),
  ];
}

type Check = (part: Schema, inner: unknown, step: string) => string[];

function resolve(root: Schema, schema: Schema): Schema {
  if (schema.$ref === undefined) return schema;
  const steps = schema.$ref.replace(/^#\//, "").split("/");
  return steps.reduce<unknown>((part, step) => (part as Record<string, unknown>)[step], root) as Schema;
}

function isType(type: string, value: unknown): boolean {
  if (type === "array") return Array.isArray(value);
  if (type === "null") return value === null;
  if (type === "integer") return Number.isInteger(value);
  return typeof value === type && value !== null && !Array.isArray(value);
}

function oneOf(root: Schema, { oneOf: options }: Schema, value: unknown, path: string): string[] {
  if (!options) return [];
  const results = options.map((option) => problems(root, option, value, path));
  const fitting = results.filter((found) => found.length === 0).length;
  return fitting === 1 ? [] : [`${path}: fits ${fitting} of ${options.length}`, ...results.flat()];
}

function stringProblems(
  { minLength = 0, maxLength = Infinity, pattern = "" }: Schema,
  value: string,
): string[] {
  const right = value.length >= minLength && value.length <= maxLength;
  return [...(right ? [] : ["length"]), ...(new RegExp(pattern).test(value) ? [] : [`pattern ${pattern}`])];
}

function numberProblems({ minimum = -Infinity, maximum = Infinity }: Schema, value: number): string[] {
  return value >= minimum && value <= maximum ? [] : [`${minimum} to ${maximum}`];
}

function listProblems({ items }: Schema, values: readonly unknown[], check: Check): string[] {
  return items ? values.flatMap((value, i) => check(items, value, String(i))) : [];
}

function unique({ uniqueItems }: Schema, values: readonly unknown[]): string[] {
  return uniqueItems && new Set(values.map((value) => JSON.stringify(value))).size < values.length
    ? ["unique"]
    : [];
}

function recordProblems(
  schema: Schema,
  value: Record<string, unknown>,
  path: string,
  check: Check,
): string[] {
  const { required = [], properties = {}, patternProperties = {}, additionalProperties = true } = schema;
  const missing = required.filter((name) => !(name in value)).map((name) => `${path}: ${name} is missing`);
  const wrong = Object.entries(value).flatMap(([name, inner]) => {
    const byPattern = Object.entries(patternProperties).filter(([pattern]) => new RegExp(pattern).test(name));
    const parts = [...(properties[name] ? [properties[name]] : []), ...byPattern.map(([, part]) => part)];
    if (parts.length > 0) return parts.flatMap((part) => check(part, inner, name));
    if (additionalProperties === false) return [`${path}: ${name} is not allowed`];
    return additionalProperties === true ? [] : check(additionalProperties, inner, name);
  });
  return [...missing, ...wrong];
}
