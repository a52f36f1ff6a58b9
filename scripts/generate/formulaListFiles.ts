import { readdirSync, readFileSync } from "node:fs";
import { banner, format } from "./format.ts";
import type { GeneratedFile } from "./settle.ts";

const folder = "packages/calc/src/formulas";

/** `dc/ohmsLaw` for every formula file: area folder and name, without the ending, in order. */
const formulaFiles = (): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort()
    .flatMap((area) =>
      readdirSync(`${folder}/${area}`)
        .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
        .map((name) => `${area}/${name.slice(0, -".ts".length)}`)
        .sort(),
    );

/** The list of all formulas and their exports by name, made from the folders that they lie in. */
export function formulaListFiles(): GeneratedFile[] {
  const entries = formulaFiles().map((file) => ({ file, name: file.slice(file.indexOf("/") + 1) }));
  for (const { file, name } of entries) {
    if (!readFileSync(`${folder}/${file}.ts`, "utf8").includes(`export const ${name} = defineFormula({`))
      throw new Error(`${folder}/${file}.ts must hold \`export const ${name} = defineFormula({\``);
  }
  const list = [
    banner(`${folder}/`),
    "",
    ...entries.map(({ file, name }) => `import { ${name} } from "./${file}.ts";`),
    'import type { Formula } from "./formula.ts";',
    "",
    "/** Every formula, by area and name. */",
    `export const allFormulas: readonly Formula[] = [${entries.map(({ name }) => name).join(", ")}];`,
    "",
  ];
  const named = [banner(`${folder}/`), "", ...entries.map(({ file, name }) => `export { ${name} } from "./${file}.ts";`), ""];
  return [
    { path: `${folder}/allFormulas.ts`, lines: list },
    { path: `${folder}/named.ts`, lines: named },
  ].map(({ path, lines }) => ({ path, text: format(lines.join("\n"), path) }));
}
