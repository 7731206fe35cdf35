import { createRequire } from "node:module";
import type { Bundle } from "./bundle.js";

/** Sends a display message; an update takes the place of the one with the same id. */
export type WriteDisplay = (
  message: { data: Bundle; metadata: object; transient: { readonly display_id?: string } },
  update: boolean,
) => void;

/** The kernel's way to send a display message; null outside a kernel. */
export function displayOfKernel(): WriteDisplay | null {
  const kernel: unknown = createRequire(import.meta.url)("tslab/dist/jupyter");
  return (kernel as { readonly lastWriteDisplayData: WriteDisplay | null }).lastWriteDisplayData;
}

/** Whether the book is being made, which keeps results and no way to them. */
export function inBook(): boolean {
  return process.env.CASEWRIGHT_BOOK === "1";
}
