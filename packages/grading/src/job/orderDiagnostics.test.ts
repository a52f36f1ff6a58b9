import { expect, it } from "vitest";
import type { Diagnostic } from "../model/index.ts";
import { orderDiagnostics } from "./orderDiagnostics.ts";

const at = (file: string, line?: number, column?: number, code = "c", message = "m"): Diagnostic => ({
  code,
  severity: "error",
  file,
  message,
  ...(line === undefined ? {} : { line }),
  ...(column === undefined ? {} : { column }),
});

it("orders by file, line, column and code, the whole file first and the count of the rest last", () => {
  const ordered = [
    at("a.csv", 9, 1),
    at("b.json"),
    at("b.json", 2, 1),
    at("b.json", 2, 11, "a"),
    at("b.json", 2, 11, "b"),
    at("b.json", 10, 2),
    at("a.csv", undefined, undefined, "problems-omitted"),
  ];
  expect(orderDiagnostics(ordered.toReversed())).toEqual(ordered);
});

it("says once what two stages found alike, and keeps what differs in a word", () => {
  const [one, two] = [at("b.json", 2, 1), at("b.json", 2, 1, "c", "other")];
  expect(orderDiagnostics([one, two], [one])).toEqual([one, two]);
});
