/** Answers to all requests that run no cell. */
import { thrownError } from "./cell-error.js";
import type { CellRunner } from "./cell-runner.js";
import type { Message } from "./message.js";

type Content = Message["content"];

/** How to answer, by the type of the request. */
export type Answers = Readonly<Record<string, (content: Content) => Content>>;

/** What completion and inspection ask. */
interface PositionContent {
  /** The cell's text. */
  readonly code: string;
  /** In characters from its start. */
  readonly cursor_pos: number;
}

/** The answers of a kernel; one that cannot be given says why. */
export function requestAnswers(cells: CellRunner): Answers {
  const answers: Answers = {
    kernel_info_request: () => kernelInfo,
    comm_info_request: () => ({ status: "ok", comms: {} }),
    history_request: () => ({ status: "ok", history: [] }),
    is_complete_request: ({ code }) => {
      const { completed, indent } = cells.isComplete(String(code));
      return completed ? { status: "complete" } : { status: "incomplete", indent: indent ?? "" };
    },
    complete_request: (content) => {
      const { code, cursor_pos } = content as unknown as PositionContent;
      const { start, end, candidates } = cells.complete(code, cursor_pos);
      return { status: "ok", matches: candidates, cursor_start: start, cursor_end: end, metadata: {} };
    },
    inspect_request: (content) => {
      const { code, cursor_pos } = content as unknown as PositionContent;
      const text = cells.inspect(code, cursor_pos);
      const data = text === undefined ? {} : { "text/plain": text };
      return { status: "ok", found: text !== undefined, data, metadata: {} };
    },
    // Not in the protocol: our own client asks it between two notebooks.
    fresh_request: () => {
      cells.forget();
      return { status: "ok" };
    },
    interrupt_request: () => {
      cells.interrupt();
      return { status: "ok" };
    },
    shutdown_request: ({ restart }) => ({ status: "ok", restart: restart === true }),
  };
  return Object.fromEntries(
    Object.entries(answers).map(([type, answer]) => [type, (content) => attempt(() => answer(content))]),
  );
}

function attempt(answer: () => Content): Content {
  try {
    return answer();
  } catch (error) {
    return { status: "error", ...thrownError(error) };
  }
}

/** Answer to a client's first question. */
const kernelInfo: Readonly<Record<string, unknown>> = {
  status: "ok",
  protocol_version: "5.3",
  implementation: "casewright",
  implementation_version: "1",
  banner: "TypeScript (Casewright)",
  help_links: [],
  language_info: {
    name: "typescript",
    // The compiler that tslab 1.0.22 brings along.
    version: "5.0.4",
    mimetype: "text/typescript",
    file_extension: ".ts",
    // Both spellings are needed for the notebook editors to colour TypeScript.
    codemirror_mode: { mode: "typescript", name: "javascript", typescript: true },
  },
};
