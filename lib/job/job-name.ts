/** What a job may be called, in words. */
export const jobNameExpected = "a job name of small letters, digits and hyphens, at most 40, such as my-case";

/** Can it be the name of a job? Such a name is a plain folder name on every system. */
export function isJobName(name: string): boolean {
  return /^[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?$/.test(name) && !/^(con|prn|aux|nul|com\d|lpt\d)$/.test(name);
}
