/**
 * Whether a process of this number runs, whoever's it is.
 *
 * @param pid its number; what is no number of a process runs never
 */
export function runs(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
