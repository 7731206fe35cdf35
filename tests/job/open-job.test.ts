import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { set } from "../../lib/design/index.js";
import { dataFolder, demoJob, isJobName, jobFolder, openJob, readJob } from "../../lib/job/index.js";
import { ProblemsError } from "../../lib/problem.js";

let scratch = "";
beforeEach(() => {
  scratch = mkdtempSync(join(tmpdir(), "job-"));
});
afterEach(() => {
  rmSync(scratch, { recursive: true });
  vi.unstubAllEnvs();
});

function problemsThrownBy(open: () => unknown): ProblemsError["problems"] {
  try {
    open();
  } catch (error) {
    if (error instanceof ProblemsError) return error.problems;
    throw error;
  }
  throw new Error("nothing was thrown");
}

describe("a job with changes", () => {
  test("is the job that its files would be, and nothing is written", () => {
    cpSync(join(dataFolder(), demoJob), join(scratch, "mine"), { recursive: true });
    const file = join(scratch, "mine", "case.yaml");
    const before = readFileSync(file, "utf8");
    const job = openJob(join(scratch, "mine"));
    const changed = job.with(set("business.own hour", "30"), set("upper.front.display window.width", "16"));
    expect(readFileSync(file, "utf8")).toBe(before);
    expect(job.case.business.labourRate.amount).toBe(22);
    writeFileSync(
      file,
      before.replace("own hour: 22", "own hour: 30").replace("{ width: 18, ", "{ width: 16, "),
    );
    const { review: _, with: _again, ...byHand } = openJob(join(scratch, "mine"));
    expect(changed).toMatchObject(byHand);
    expect(changed.review.bill).toEqual(openJob(join(scratch, "mine")).review.bill);
  });

  test("throws every problem that the change makes", () => {
    expect(() => openJob(demoJob).with(set("upper.front.display window.width", "99"))).toThrow(ProblemsError);
  });
});

describe("opening a job", () => {
  test("opens the demo when none is named", () => {
    vi.stubEnv("CASEWRIGHT_JOB", "");
    const job = openJob();
    expect(job).toMatchObject({
      name: demoJob,
      folder: join(dataFolder(), demoJob),
      case: { invented: true },
    });
    expect(job.parts.sections.map(({ name }) => name)).toEqual(["lower", "upper"]);
  });

  test("opens what the environment names", () => {
    vi.stubEnv("CASEWRIGHT_JOB", join(dataFolder(), demoJob));
    expect(openJob().name).toBe(demoJob);
  });

  test("opens a folder anywhere by its path", () => {
    cpSync(join(dataFolder(), demoJob), join(scratch, "elsewhere"), { recursive: true });
    expect(openJob(join(scratch, "elsewhere")).folder).toBe(join(scratch, "elsewhere"));
  });

  test("throws every problem of its files", () => {
    const folder = join(scratch, "spoilt");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    writeFileSync(join(folder, "kerfs.csv"), "blade,cuts\nsaw,ten\n");
    rmSync(join(folder, "facings.csv"));
    const files = problemsThrownBy(() => openJob(folder)).map(({ file }) => file);
    expect(new Set(files)).toEqual(new Set(["kerfs.csv", "facings.csv"]));
    expect(files.length).toBeGreaterThan(4);
  });

  test("a misspelt table is a problem, not a table that is silently left out", () => {
    const folder = join(scratch, "misspelt");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    renameSync(join(folder, "kerfs.csv"), join(folder, "kerf.csv"));
    expect(problemsThrownBy(() => openJob(folder))).toEqual([
      { file: "kerf.csv", expected: expect.stringMatching(/^a file among case\.yaml, .*kerfs\.csv/) },
    ]);
  });

  test("a folder that is not there is a problem", () => {
    const folder = join(scratch, "nowhere");
    expect(problemsThrownBy(() => openJob(folder))).toEqual([
      { file: folder, expected: "a folder with case.yaml and its tables" },
    ]);
  });

  test("a job is the same as before until a file of it changes", () => {
    const folder = join(scratch, "twice");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    const before = openJob(folder);
    expect(openJob(folder) === before).toBe(true);
    appendFileSync(join(folder, "case.yaml"), "\n# changed\n");
    expect(openJob(folder) === before).toBe(false);
    writeFileSync(join(folder, "notes.csv"), "");
    expect(problemsThrownBy(() => openJob(folder)).map(({ file }) => file)).toEqual(["notes.csv"]);
  });

  test("what stands in place of a file is told, also for a table that may be absent", () => {
    const folder = join(scratch, "odd");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    for (const file of ["facings.csv", "kerfs.csv", "weights.csv"]) rmSync(join(folder, file));
    mkdirSync(join(folder, "facings.csv"));
    symlinkSync(join(folder, "kerfs.csv"), join(folder, "kerfs.csv"));
    symlinkSync(join(folder, "nowhere"), join(folder, "weights.csv"));
    const read = readJob(folder);
    expect("problems" in read && [...read.problems].sort((a, b) => a.file.localeCompare(b.file))).toEqual([
      { file: "facings.csv", expected: "a file, this is a folder" },
      { file: "kerfs.csv", expected: "a file, this is a link that leads nowhere" },
      { file: "weights.csv", expected: "a file, this is a link that leads nowhere" },
    ]);
  });

  test("a table that was saved as a spreadsheet is told; what other programs leave is not", () => {
    const folder = join(scratch, "saved");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    for (const file of ["kerfs.xlsx", "~$kerfs.xlsx", ".~lock.kerfs.ods", "notes.txt"]) {
      writeFileSync(join(folder, file), "");
    }
    expect(problemsThrownBy(() => openJob(folder))).toEqual([
      { file: "kerfs.xlsx", expected: "this table as kerfs.csv, saved as CSV" },
    ]);
  });

  test.each([
    ["utf16le", (text: string) => Buffer.from(`\ufeff${text}`, "utf16le")],
    ["utf16le without a mark", (text: string) => Buffer.from(text, "utf16le")],
    ["latin1", (text: string) => Buffer.from(text, "latin1")],
  ])("a name in %s keeps its letters", (_, encode) => {
    const folder = join(scratch, "letters");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    const file = join(folder, "case.yaml");
    const text = readFileSync(file, "utf8").replace(
      /^case: .*$/m,
      "case: Ger\u00e4tekoffer f\u00fcr Z\u00f6e",
    );
    writeFileSync(file, encode(text));
    expect(openJob(folder).case.name).toBe("Ger\u00e4tekoffer f\u00fcr Z\u00f6e");
  });

  test("a file of letters that cannot be told is a problem", () => {
    const folder = join(scratch, "letters");
    cpSync(join(dataFolder(), demoJob), folder, { recursive: true });
    const file = join(folder, "case.yaml");
    // "Geräte" as an old Macintosh wrote it
    const mac = Buffer.from([0x47, 0x65, 0x72, 0x8a, 0x74, 0x65, 0x0a]);
    writeFileSync(file, Buffer.concat([Buffer.from("# "), mac, readFileSync(file)]));
    expect(problemsThrownBy(() => openJob(folder))).toEqual([
      { file: "case.yaml", expected: expect.stringMatching(/^a text saved as UTF-8/) },
    ]);
  });
});

describe("names of jobs", () => {
  test.each(["a", "my-case", "soil-lab", "x1", "a".repeat(40)])("%s is one", (name) => {
    expect(isJobName(name)).toBe(true);
  });

  test.each([
    "",
    ".",
    "..",
    "../x",
    "a/b",
    "a\\b",
    "a.b",
    "-a",
    "a-",
    "A",
    "my case",
    "ä",
    "con",
    "com1",
    "a".repeat(41),
    "a\0",
    "a\n",
  ])("%j is none", (name) => {
    expect(isJobName(name)).toBe(false);
  });

  test("a name that could lead out of data/ is refused", () => {
    expect(problemsThrownBy(() => jobFolder(".."))).toEqual([
      {
        file: "data",
        column: "job",
        value: "..",
        expected: "a job name of small letters, digits and hyphens, at most 40, such as my-case",
      },
    ]);
  });
});
