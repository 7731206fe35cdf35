/** A thread that answers questions about cases, one after another; what two cases share is worked out once. */
import { host } from "#host";
import { jobOfTexts } from "../job/index.js";
import { type AnswerOfThread, type AskedOfThread, answersHere } from "./asking.js";

host.pool.serve((asked) => reply(asked as AskedOfThread));

let last: { readonly texts: string; readonly read: ReturnType<typeof jobOfTexts> } | undefined;

function reply({ folder, texts, questions }: AskedOfThread): AnswerOfThread {
  const key = JSON.stringify(texts);
  if (last?.texts !== key) last = { texts: key, read: jobOfTexts(folder, texts) };
  const { read } = last;
  if ("problems" in read) return { fault: read.problems[0]?.expected ?? "a case that can be read" };
  return { findings: answersHere(read.job, new Set(questions)) };
}
