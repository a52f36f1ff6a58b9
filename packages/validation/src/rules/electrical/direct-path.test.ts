import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { grader } from "../../run/validateAll.ts";
import { validateFiles } from "../../run/validateFiles.ts";
import { memorySource } from "../../testing/memorySource.ts";
import { directPath } from "./direct-path.ts";

const read = (path: string): string => readFileSync(fileURLToPath(new URL(`../../../../../${path}`, import.meta.url)), "utf8");

const STAGE = "datasets/stages/audio/output-single-ended.json";
const stage = read(STAGE);
const others = Object.fromEntries(
  ["datasets/tubes/6v6gt.json", "datasets/sources.csv", "datasets/manifest.json"].map((path) => [path, read(path)]),
);

const found = (text: string) =>
  validateFiles(memorySource({ ...others, [STAGE]: text }), { rules: [directPath], grader, electrical: true }).diagnostics;

it("finds a grid that hangs on its coupling capacitor alone, at its name", () => {
  const hanging = stage.replace(
    /("role": "gridLeak",[^}]*?"kind": )"resistor"([^}]*?"typical": ")[^"]+/,
    (_, kind: string, typical: string) => `${kind}"capacitor"${typical}0.001 uF 400 V`,
  );
  expect(hanging).not.toBe(stage);
  const diagnostics = found(hanging);
  expect(diagnostics.map(({ code, received }) => [code, received])).toContainEqual(["UC-702", "coupled"]);
  const grid = diagnostics.find(({ received }) => received === "coupled");
  expect(hanging.split("\n")[(grid?.line ?? 0) - 1]?.slice((grid?.column ?? 0) - 1, (grid?.endColumn ?? 0) - 1)).toBe('"coupled"');
});

it("passes the stage as it is", () => expect(found(stage)).toEqual([]));
