import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { allFormulas } from "../../packages/calc/src/formulas/index.ts";
import { exampleFiles, examples, inBase } from "./readExamples.ts";

function isSharp(example: (typeof examples)[number]): boolean {
  const value = Math.abs(inBase(example, example.recomputed ?? example.erratum?.value ?? example.result));
  return example.recomputed === undefined ? inBase(example, example.tolerance.absolute) < 0.02 * value : value > 0;
}

test("every formula has a worked example", () => {
  const worked = new Set(examples.map(({ formula }) => formula));
  expect(allFormulas.map(({ id }) => id).filter((id) => !worked.has(id))).toEqual([]);
});

// An example guards a result only if a result two percent off would fail it.
test("every result of every formula is held sharply by an example", () => {
  const sharp = new Set(examples.filter(isSharp).map(({ formula, output }) => `${formula}: ${output}`));
  const results = allFormulas.flatMap(({ id, outputs }) => Object.keys(outputs).map((output) => `${id}: ${output}`));
  expect(results.filter((result) => !sharp.has(result))).toEqual([]);
});

test("every file keeps its schema", () => {
  const schema = JSON.parse(readFileSync("schemas/worked-example.schema.json", "utf8")) as object;
  const validate = new Ajv2020({ allErrors: true }).compile(schema);
  const faults = exampleFiles.flatMap(({ name, file }) => (validate(file) ? [] : [{ name, errors: validate.errors }]));
  expect(faults).toEqual([]);
  expect(validate({ ...exampleFiles[0]?.file, surplus: 1 })).toBe(false);
});

test("ids are unique, files are named for their subject", () => {
  const ids = examples.map(({ id }) => id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  expect(exampleFiles.filter(({ name, file }) => name !== file.id).map(({ name }) => name)).toEqual([]);
});

test("at least 120 examples, and 300 that are printed somewhere", () => {
  expect(examples.length).toBeGreaterThanOrEqual(120);
  const printed = examples.filter(({ source }) => source.status === "checked" || source.status === "transcription");
  expect(printed.length).toBeGreaterThanOrEqual(300);
});

test("every formula names a source that is listed", () => {
  // The id is the first column and holds no comma.
  const known = new Set(
    readFileSync("datasets/sources.csv", "utf8")
      .split("\n")
      .map((row) => row.split(",")[0]),
  );
  expect(allFormulas.filter(({ source }) => !known.has(source)).map(({ id, source }) => `${id}: ${source}`)).toEqual([]);
});
