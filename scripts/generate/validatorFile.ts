import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import standaloneModule from "ajv/dist/standalone/index.js";
import { banner } from "./format.ts";
import type { GeneratedFile } from "./settle.ts";

// The module is CommonJS: what its default import is depends on who runs it.
const standalone = (standaloneModule as unknown as { default?: typeof standaloneModule }).default ?? standaloneModule;

/** Where the compiled validator lies. */
export const validatorFolder = "packages/grading/src/job/generated";

/**
 * The job schema compiled to plain code. Compiling it when a job is read would cost more than reading the job, and needs
 * `new Function`, which pages with a strict content policy refuse.
 */
export function validatorFiles(): GeneratedFile[] {
  const source = "schemas/job.schema.json";
  const schema = JSON.parse(readFileSync(source, "utf8")) as Record<string, unknown>;
  const ajv = new Ajv2020({
    allErrors: true,
    verbose: true,
    strict: true,
    allowUnionTypes: true,
    strictTypes: false,
    code: { source: true, esm: true },
  });
  const code = standalone(ajv, ajv.compile(schema));
  return [
    { path: `${validatorFolder}/validateJob.js`, text: `${banner(source)}\n${asModule(code)}\n` },
    {
      path: `${validatorFolder}/validateJob.d.ts`,
      text: `${banner(source)}\nimport type { ErrorObject } from "ajv";\n\nexport declare const validate: { (job: unknown): boolean; errors?: ErrorObject[] | null };\n`,
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
