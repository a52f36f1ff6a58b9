import { builtinModules } from "node:module";
import { dirname, normalize } from "node:path/posix";
import ts from "typescript";

/** What each package may import of the others: only downwards. */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  cli: ["report", "validation", "grading", "dataset", "calc", "source-text"],
  report: ["grading", "dataset", "calc"],
  validation: ["grading", "dataset", "calc", "source-text"],
  grading: ["dataset", "calc", "source-text"],
  dataset: [],
  calc: [],
  "source-text": [],
};

/** Packages that run wherever JavaScript runs. */
const WITHOUT_NODE = ["calc", "source-text", "grading", "report"];

const SCOPE = "@underchassis/";
const builtins = new Set(builtinModules);

const isNodeModule = (specifier: string): boolean => specifier.startsWith("node:") || builtins.has(specifier);

/** What is wrong with one import, in words; `undefined` when nothing is. */
function complaintAbout(room: string, file: string, specifier: string): string | undefined {
  // What lies in a folder named testing serves tests only.
  const isTest = /\.test\.tsx?$|\/src\/testing\//.test(file);
  if (specifier.startsWith(".")) {
    const target = normalize(`${dirname(file)}/${specifier}`);
    return target.startsWith(`packages/${room}/`) || target.startsWith("schemas/") ? undefined : "leaves its package by a relative path";
  }
  if (specifier.startsWith(SCOPE)) {
    const [target = "", inner] = specifier.slice(SCOPE.length).split("/");
    if (target === room) return "imports its own package by name";
    if (!MAY_IMPORT[room]?.includes(target)) return `${room} may not know ${target}`;
    if (inner === "load" && WITHOUT_NODE.includes(room) && !isTest) return `${room} may not read files`;
    return undefined;
  }
  return isNodeModule(specifier) && WITHOUT_NODE.includes(room) && !isTest ? `${room} may not use node's own modules` : undefined;
}

/**
 * Holds the imports of one source file against the rules.
 *
 * @param file path from the repository's root, with forward slashes: `packages/calc/src/index.ts`
 * @param source its text
 * @returns one line for every import that breaks a rule
 */
export function brokenImports(file: string, source: string): string[] {
  const room = file.split("/")[1] ?? "";
  return ts
    .preProcessFile(source, true, true)
    .importedFiles.map(({ fileName }) => ({ fileName, complaint: complaintAbout(room, file, fileName) }))
    .filter(({ complaint }) => complaint !== undefined)
    .map(({ fileName, complaint }) => `${file}: "${fileName}": ${complaint}`);
}
