import { expect, it } from "vitest";
import { salvage } from "./salvage.ts";

it.each([
  ["a comma too many", '{ "id": "a", "parts": [{ "role": "r" },], }'],
  ["a comma that lacks", '{ "id": "a" "parts": [{ "role": "r" }] }'],
  ["a comment", '{ "id": "a", // first\n "parts": [{ "role": "r" }] }'],
  ["an end that lacks", '{ "id": "a", "parts": [{ "role": "r" }'],
])("makes out the names in spite of %s", (_name, text) => expect(salvage(text)).toMatchObject({ id: "a", parts: [{ role: "r" }] }));

it("makes nothing of brackets without end, and of nothing", () => {
  expect(salvage("[".repeat(1_000_000))).toBeUndefined();
  expect(salvage("")).toBeUndefined();
});

it("leaves the prototype of all objects alone", () => {
  salvage('{ "__proto__": { "reached": true }, "constructor": { "prototype": { "reached": true } }, ');
  expect(({} as { reached?: boolean }).reached).toBeUndefined();
});
