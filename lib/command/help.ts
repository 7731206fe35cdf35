/** What each command does, in plain words: printed for --help, and its usage where it was called wrongly. */
import { asTyped, isInstalled } from "../book/index.js";

/** A command for whoever never called it. */
interface Help {
  /** What stands after the command. */
  readonly takes: string;
  /** What it does, in a line. */
  readonly does: string;
  /** What else is worth knowing, a line each. */
  readonly more: readonly string[];
  /** Whether only a checkout of the project has a use for it. */
  readonly forDevelopers?: true;
}

const codes = "It ends with 0 when all is well, 1 without a book, and 2 when something of the book failed.";

const cellTime = "--cell-time SECONDS   how long a cell of a notebook may take, 120 where it is left out";

const helps: Readonly<Record<string, Help>> = {
  new: {
    takes:
      "my-case [--start box|two-section|tall|trunk|demo | --from LAST-CASE] [--metric|--inch] [--currency EUR]",
    does: "makes a small case for you to change",
    more: [
      "--start NAME          what it begins as, a box where it is left out; demo copies the whole demo",
      "--from LAST-CASE      the files of your last case, with what its as-built.csv says in its tables of measurements",
      "--metric, --inch      the units it is written in, inches where both are left out",
      "--currency EUR        the currency of its prices, three capitals",
      "",
      "It asks nothing. The head of the new case.yaml says which three lines to change first.",
    ],
  },
  check: {
    takes: "[JOB]",
    does: "tells every mistake in the files of a case at once",
    more: [
      "Each mistake comes with its file, its row, what stands there, and what should. Without one it tells what the",
      "case is made of. It ends with 0 without a mistake, else with 1.",
    ],
  },
  start: {
    takes: "[JOB] [NOTEBOOK...] [--cell-time SECONDS]",
    does: "builds the book of a case, opens it, and follows every file that you save",
    more: [cellTime, "", "Ctrl+C stops it.", codes],
  },
  book: {
    takes: "[JOB] [--cell-time SECONDS]",
    does: "builds the book of a case, which opens without a network",
    more: [cellTime, "", "The book stands in book/ beside the folder of the case.", codes],
  },
  live: {
    takes: "[JOB] [--out FILE]",
    does: "writes one page that opens from disk: change the case in it and watch it answer",
    more: ["--out FILE            where to write it; beside the book where it is left out"],
  },
  "pass-on": {
    takes: "[JOB] [--out FILE]",
    does: "writes a case with its answers as one page for somebody who has other sheets",
    more: [
      "--out FILE            where to write it; beside the book where it is left out",
      "",
      "Whoever opens it puts in the sizes and prices of other sheets, and sees how they are cut and what changes.",
    ],
  },
  improve: {
    takes:
      "[JOB] [--apply N] [--out FOLDER] [--seconds S] [--handling] [--verify] [--cases N [--seed S]] [--how-far [PLACE...]] [--wishes]",
    does: "tells which few changes make a case hold, and what they cost",
    more: [
      "--apply N             writes design N as a case of its own, beside the old one",
      "                      and has a process of its own review it from its files",
      "--out FOLDER          where to write it",
      "--verify              tells instead what fails of the case as it stands, and ends with 0 where nothing does",
      "--cases N             makes N made-up cases hold instead, from --seed S on, and reviews each design afresh",
      "--seconds S           how long it may look, 60 where it is left out; Ctrl+C ends it and keeps the best so far",
      "--how-far             tells instead how far each number of the case may go before something stops holding;",
      "                      with a PLACE such as lashing or microscope.mass only numbers there",
      "--wishes              tells instead what each wish of yours costs that the plans obey: a grain, a size, mitred bars,",
      "                      laminate with room to trim, the mean of all blades, spares, whole packs",
      "--handling            what is hard to handle must hold too, not only safety and strength",
      "",
      'What must not move stands in case.yaml as "keep:". It ends with 0 with a design or nothing to mend, with 1',
      "without a case, and with 2 where nothing that is known helps.",
    ],
  },
  drawings: {
    takes: "[JOB] [--out FOLDER] [--paper a4|letter]",
    does: "draws panels, cut sheets and templates at true scale: SVG, PDF and DXF",
    more: [
      "--out FOLDER          where to write them; beside the book where it is left out",
      "--paper a4|letter     what your printer takes; Letter for a case in inches where it is left out, else A4",
    ],
  },
  lab: {
    takes: "[JOB] [OPTION OF JUPYTER...]",
    does: "opens the notebooks in your own Jupyter, for questions of your own",
    more: ["It needs Jupyter, and changes none of its settings."],
  },
  reference: {
    takes: "FILE... | --cases N [--seed S] [--bent P]",
    does: "holds our values against published ones, or tries made-up cases",
    more: [
      "FILE...               tables of published values, also your own; it prints what is expected and our error",
      "--cases N             tries N made-up cases; --seed S begins with the case of that number",
      "--bent P              bends about P of each hundred by finite elements, 1 where it is left out",
      "",
      "It ends with 1 where a value is out or a case fails.",
    ],
  },
  fuzz: {
    takes: "[--minutes M] [--seed S] [--only KIND] [--most N]",
    does: "attacks everything that takes input, and prints what breaks with its smallest input",
    more: [
      "--minutes M           how long, 1 where it is left out",
      "--seed S              the first seed, the date as a number where it is left out",
      "--only KIND           one kind alone, of files, formulas, edits, messages, requests, cells",
      "--most N              so many of each kind at most",
      "",
      "It ends with 1 where something broke.",
    ],
    forDevelopers: true,
  },
  bench: {
    takes: "[live [EDITS]]",
    does: "times the parts of a review, or the live page, on this machine",
    more: [
      "live                  the live page alone; EDITS is how many are made before its memory is looked at",
      "",
      "Times are printed, never judged.",
    ],
    forDevelopers: true,
  },
  notebooks: {
    takes: "clean|check [FILE...]",
    does: "strips the outputs of notebooks, or tells which have some",
    more: ["Without a FILE it takes all of notebooks/."],
    forDevelopers: true,
  },
};

/** Everything there is to call, a line each. */
export function helpOfAll(): string {
  const lines = Object.entries(helps)
    .filter(([, { forDevelopers }]) => !(forDevelopers && isInstalled()))
    .map(([name, { does }]) => `  ${asTyped(name).padEnd(26)}${does}`);
  return [
    "Casewright answers for a transport case, from your own files: will it hold, what to buy, what it costs.",
    "",
    ...lines,
    "",
    `Begin with "${asTyped("new")} my-case". More of a command: "${asTyped("check")} --help".`,
  ].join("\n");
}

/** One command in full. */
export function helpOf(name: string): string {
  const help = Object.hasOwn(helps, name) ? helps[name] : undefined;
  if (!help) return helpOfAll();
  const ofJob = help.takes.includes("JOB") ? ["", ...jobInWords()] : [];
  const capital = `${help.does.charAt(0).toUpperCase()}${help.does.slice(1)}.`;
  return [usageOf(name), "", capital, "", ...help.more, ...ofJob].join("\n");
}

function jobInWords(): readonly string[] {
  return [
    "JOB is a folder with a case.yaml and its tables; the demo where none is named. A word without a slash is a",
    isInstalled() ? "folder where you stand." : "folder of data/; any other folder is named by its path.",
  ];
}

/** How a command is called. */
export function usageOf(name: string): string {
  return `usage: ${asTyped(name)} ${helps[name]?.takes ?? ""}`.trimEnd();
}
