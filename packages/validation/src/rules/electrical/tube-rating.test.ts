import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { grader } from "../../run/validateAll.ts";
import { validateFiles } from "../../run/validateFiles.ts";
import { memorySource } from "../../testing/memorySource.ts";
import { tubeRating } from "./tube-rating.ts";

const read = (path: string): string => readFileSync(fileURLToPath(new URL(`../../../../../${path}`, import.meta.url)), "utf8");

const STAGE = "datasets/stages/audio/output-single-ended.json";
const stage = read(STAGE);
const others = Object.fromEntries(
  ["datasets/tubes/6v6gt.json", "datasets/sources.csv", "datasets/manifest.json"].map((path) => [path, read(path)]),
);

const found = (text: string) =>
  validateFiles(memorySource({ ...others, [STAGE]: text }), { rules: [tubeRating], grader, electrical: true }).diagnostics;

it("finds a tube that gets far too hot, at its role", () => {
  // A tenth of the cathode resistor leaves a tenth of the bias.
  const hot = stage.replace(/("role": "cathodeResistor",[^}]*?"typical": ")[^"]+/, (_, before: string) => `${before}22 ohm 10 W`);
  expect(hot).not.toBe(stage);
  const [first] = found(hot);
  expect(first).toMatchObject({ code: "UC-707", file: STAGE });
  expect(hot.split("\n")[(first?.line ?? 0) - 1]?.slice((first?.column ?? 0) - 1, (first?.endColumn ?? 0) - 1)).toMatch(/^"\w+"$/);
});

it("passes the stage as it is", () => expect(found(stage)).toEqual([]));
