/** Everything that is installed with the library may be used and passed on as the library itself may. */
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";

const root = resolve(import.meta.dirname, "../..");

/** A package as the lock file knows it. */
interface LockedPackage {
  readonly license?: string;
  readonly dev?: boolean;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
}

const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as {
  readonly packages: Readonly<Record<string, LockedPackage>>;
};

/** Licences under which a MIT project may hand its parts on, with their notices kept. */
const compatible = [
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "Unlicense",
  "Python-2.0",
  "PSF-2.0",
  "MPL-2.0",
];

const installed = Object.entries(packages).filter(
  ([path, { dev, link }]) => path.startsWith("node_modules/") && !dev && !link,
);

/** The licence of a package, from its own file where the lock file has none. */
function licenceOf(path: string, { license }: LockedPackage): string {
  if (license !== undefined) return license;
  const { license: own } = JSON.parse(readFileSync(join(root, path, "package.json"), "utf8"));
  // This one's licence stands in a file beside its code alone.
  return String(own ?? (path.endsWith("/png-js") ? "MIT" : "none"));
}

test("the licence of every installed package is a compatible one", () => {
  expect(installed.length).toBeGreaterThan(20);
  const allowed = (licence: string): boolean =>
    licence
      .replace(/[()]/g, "")
      .split(/ OR /)
      .some((choice) => choice.split(" AND ").every((one) => compatible.includes(one)));
  const others = installed
    .map(([path, one]) => `${path}: ${licenceOf(path, one)}`)
    .filter((words) => !allowed(words.split(": ")[1] ?? ""));
  expect(others).toEqual([]);
});

test("only the packages that package.json names may run a script when they are installed", () => {
  const { allowScripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const scripted = Object.entries(packages)
    .filter(([path, { hasInstallScript, dev }]) => path !== "" && hasInstallScript && !dev)
    .map(([path]) => path.replace(/^.*node_modules\//, ""));
  expect(scripted.filter((name) => !(name in allowScripts))).toEqual([]);
});
