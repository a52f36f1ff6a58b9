import { expect, it } from "vitest";
import { settingWords } from "./settingWords.ts";

it("says every setting with its unit, and which ones the job gave", () => {
  const said = settingWords([
    { name: "bandLowHertz", meaning: "lowest frequency of the band", value: 3.5e6, unit: "Hz", from: "template" },
    { name: "swr", meaning: "standing-wave ratio", value: 3, unit: "", from: "job" },
  ]);
  expect(said.replaceAll("\u00a0", " ")).toBe("Works at: lowest frequency of the band 3.5 MHz; standing-wave ratio 3 (from the job).");
});

it("says nothing of a stage without settings", () => {
  expect([settingWords(undefined), settingWords([])]).toEqual(["", ""]);
});
