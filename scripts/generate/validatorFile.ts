import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import standaloneModule from "ajv/dist/standalone/index.js";
import { banner } from "./format.ts";
import type { GeneratedFile } from "./settle.ts";

// The module is CommonJS: what its default import is depends on who runs it.
const standalone = (standaloneModule as unknown as { default?: typeof standaloneModule }).default ?? standaloneModule;

/** Where the compiled validator of jobs lies. */
export const validatorFolder = "packages/grading/src/job/generated";
/** Where those of the records lie. */
export const recordValidatorFolder = "packages/validation/src/generated";

/** Schemas of the records that contributors write. */
const RECORD_SCHEMAS = ["stage", "tube", "caution", "failure-note", "rule-of-thumb", "worked-example", "table", "example"];

/** The job schema compiled to plain code. */
export function validatorFiles(): GeneratedFile[] {
  return filesOf("job", validatorFolder);
}

/** The schemas of records compiled to plain code. */
export function recordValidatorFiles(): GeneratedFile[] {
  return RECORD_SCHEMAS.flatMap((name) => filesOf(name, recordValidatorFolder));
}

const camelCase = (name: string): string => name.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());

/**
 * A schema compiled to plain code. Compiling it when a file is read would cost more than reading the file, and needs
 * `new Function`, which pages with a strict content policy refuse.
 */
function filesOf(name: string, folder: string): GeneratedFile[] {
  const source = `schemas/${name}.schema.json`;
  const schema = JSON.parse(readFileSync(source, "utf8")) as Record<string, unknown>;
  const ajv = new Ajv2020({
    allErrors: true,
    verbose: true,
    strict: true,
    allowUnionTypes: true,
    strictTypes: false,
    strictRequired: false,
    code: { source: true, esm: true },
  });
  const code = standalone(ajv, ajv.compile(schema));
  return [
    { path: `${folder}/validate${camelCase(name)}.js`, text: `${banner(source)}\n${asModule(code)}\n` },
    {
      path: `${folder}/validate${camelCase(name)}.d.ts`,
      text: `${banner(source)}\nimport type { ErrorObject } from "ajv";\n\nexport declare const validate: { (${name === "job" ? "job" : "record"}: unknown): boolean; errors?: ErrorObject[] | null };\n`,
    },
  ];
}

/** The compiler writes ES modules that still fetch its helpers by `require`. */
function asModule(code: string): string {
  const imports: string[] = [];
  const body = code.replace(/const (\w+) = require\("([^"]+)"\)\.default;?/g, (_, name: string, path: string) => {
    imports.push(`import ${name}Module from "${path}.js";`);
    // Tools disagree on what a CommonJS module's default import is.
    return `const ${name} = ${name}Module.default ?? ${name}Module;`;
  });
  if (body.includes("require(")) throw new Error("the compiled validator still asks for require()");
  return `${imports.join("\n")}\n${body.replace('"use strict";', "").replace(/export default \w+;/, "")}`;
}
