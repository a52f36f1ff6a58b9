import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { allFormulas } from "../../packages/calc/src/formulas/index.ts";
import { exampleFiles, examples } from "./readExamples.ts";

test("every formula has a worked example", () => {
  const worked = new Set(examples.map(({ formula }) => formula));
  expect(allFormulas.map(({ id }) => id).filter((id) => !worked.has(id))).toEqual([]);
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

test("at least 120 examples, most of them printed somewhere", () => {
  expect(examples.length).toBeGreaterThanOrEqual(120);
  const printed = examples.filter(({ source }) => source.status === "checked" || source.status === "transcription");
  expect(printed.length).toBeGreaterThan(examples.length / 2);
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
