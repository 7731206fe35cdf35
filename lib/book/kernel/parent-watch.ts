/** Worker thread: kills the process it runs in when the program that started that process is gone. */
const parent = process.ppid;

setInterval(() => {
  if (parentIsGone()) process.kill(process.pid, "SIGKILL");
}, 500);

function parentIsGone(): boolean {
  if (process.ppid !== parent) return true;
  try {
    // On Windows the parent's number stays after its end; asking whether it lives does no harm.
    process.kill(parent, 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "ESRCH";
  }
}
