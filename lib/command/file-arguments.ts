/** What a command that writes one file of a job is asked for. */
export interface FileArguments {
  /** Name of the job; absent for the demo. */
  readonly name?: string;
  /** Where to write; absent for the usual place. */
  readonly out?: string;
}

/** Reads `[JOB] [--out FILE]`; undefined where that is not what was asked. */
export function fileArguments(args: readonly string[]): FileArguments | undefined {
  const at = args.indexOf("--out");
  const out = at < 0 ? undefined : args[at + 1];
  const [name, ...more] = at < 0 ? args : args.toSpliced(at, 2);
  if (more.length > 0 || name?.startsWith("-") || (at >= 0 && out === undefined)) return undefined;
  return { ...(name === undefined ? {} : { name }), ...(out === undefined ? {} : { out }) };
}
