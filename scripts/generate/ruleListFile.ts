import { readdirSync, readFileSync } from "node:fs";
import { banner, format } from "./format.ts";
import type { GeneratedFile } from "./settle.ts";

const folder = "packages/validation/src/rules";
const listName = "allRules";

const camelCase = (id: string): string => id.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

/** `record/formula-name` for every rule file: scope folder and name, without the ending. */
export const ruleFiles = (): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort()
    .flatMap((scope) =>
      readdirSync(`${folder}/${scope}`)
        .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
        .map((name) => `${scope}/${name.slice(0, -".ts".length)}`)
        .sort(),
    );

function exportOf(file: string): string {
  const name = camelCase(file.slice(file.indexOf("/") + 1));
  const source = readFileSync(`${folder}/${file}.ts`, "utf8");
  if (!new RegExp(`^export const ${name}: \\w+Rule\\b`, "m").test(source))
    throw new Error(`${folder}/${file}.ts must hold \`export const ${name}: …Rule\`; helpers belong in packages/validation/src/shared/`);
  return name;
}

/** The list of all rules, made from the folders that they lie in. */
export function ruleListFile(): GeneratedFile[] {
  const entries = ruleFiles().map((file) => ({ file, name: exportOf(file) }));
  const path = `${folder}/${listName}.ts`;
  const source = [
    banner(`${folder}/`),
    "",
    'import type { Rule } from "../model/rule.ts";',
    ...entries.map(({ file, name }) => `import { ${name} } from "./${file}.ts";`),
    "",
    "/** Every rule, by scope and name. */",
    `export const ${listName}: readonly Rule[] = [${entries.map(({ name }) => name).join(", ")}];`,
    "",
  ];
  return [{ path, text: format(source.join("\n"), path) }];
}
