// Holds the datasets against every rule: see src/node/runValidate.ts. Runs the bundle, made anew where the code is newer than it.
import { readdirSync, statSync } from "node:fs";

const root = `${import.meta.dirname}/../../..`;
const bundle = new URL("../dist/main.js", import.meta.url);

/** Time of a file's last change; of a file that is not there the beginning of time. */
const changed = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Whether a folder holds a file that was changed after a time. */
function holdsNewer(folder, time) {
  return readdirSync(folder, { recursive: true }).some((name) => /\.(ts|js|json)$/.test(name) && changed(`${folder}/${name}`) > time);
}

const made = changed(bundle);
const folders = [...readdirSync(`${root}/packages`).map((name) => `packages/${name}/src`), "schemas"];
if (changed(`${root}/package-lock.json`) > made || folders.some((folder) => holdsNewer(`${root}/${folder}`, made)))
  await import("../build.js");
await import(bundle.href);
