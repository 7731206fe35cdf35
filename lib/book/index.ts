export * from "./kernel/client.js";
export * from "./kernel/kernel-contract.js";
export * from "./kernel/kernel-errors.js";
export * from "./notebook.js";
export * from "./notebook-file.js";
export * from "./notebook-normal-form.js";
export * from "./project-folders.js";
export * from "./run-notebook.js";
