/** What the kernel says about itself. */

/** Answer to a client's first question. */
export const kernelInfo: Readonly<Record<string, unknown>> = {
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
