import { existsSync, readdirSync, readFileSync } from "node:fs";
import { banner, format } from "./format.ts";
import type { GeneratedFile } from "./settle.ts";

const folder = "packages/grading/src/checks";
const listName = "allChecks";

/** Folder for what several checks use; holds no checks itself. */
const helperFolder = "shared";

const camelCase = (id: string): string => id.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

const areas = (): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== helperFolder)
    .map((entry) => entry.name)
    .sort();

/** `line/cord-three-wire` for every check file: area folder and name, without the ending. */
export const checkFiles = (): string[] =>
  areas().flatMap((area) =>
    readdirSync(`${folder}/${area}`)
      .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
      .map((name) => `${area}/${name.slice(0, -".ts".length)}`)
      .sort(),
  );

function exportOf(file: string): string {
  const name = camelCase(file.slice(file.indexOf("/") + 1));
  const source = readFileSync(`${folder}/${file}.ts`, "utf8");
  if (!new RegExp(`^export const ${name}: Check\\b`, "m").test(source)) {
    throw new Error(`${folder}/${file}.ts must hold \`export const ${name}: Check\`; helpers belong in ${folder}/${helperFolder}/`);
  }
  return name;
}

/** The list of all checks, made from the folder that they lie in; nothing while there is no such folder. */
export function checkListFile(): GeneratedFile[] {
  if (!existsSync(folder)) return [];
  const entries = checkFiles().map((file) => ({ file, name: exportOf(file) }));
  const path = `${folder}/${listName}.ts`;
  const source = [
    banner(`${folder}/`),
    "",
    'import type { Check } from "../model/check.ts";',
    ...entries.map(({ file, name }) => `import { ${name} } from "./${file}.ts";`),
    "",
    "/** Every check, by area and name. */",
    `export const ${listName}: readonly Check[] = [${entries.map(({ name }) => name).join(", ")}];`,
    "",
  ];
  return [{ path, text: format(source.join("\n"), path) }];
}
