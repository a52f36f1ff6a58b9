import { expect, it } from "vitest";
import { csvRecords } from "./csvRecords.ts";
import { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import { sourceText } from "./sourceText.ts";

const LIMITS: ReadLimits = { noun: "table", bytes: 1e6, depth: 40, tokens: 1000, members: 100, marks: 1000, rows: 100 };

function read(text: string) {
  const problems = new Problems();
  const records = csvRecords(sourceText("t.csv", text), LIMITS, problems);
  return { records, faults: problems.list().map(({ code, line, column }) => [code, line, column]) };
}

it("gives every cell its place, quotes and blanks around it", () => {
  const { records } = read('a, b\r\n"x,y" ,z\r\n');
  expect(records?.map(({ cells }) => cells.map(({ text, span }) => [text, span.offset, span.length]))).toEqual([
    [
      ["a", 0, 1],
      ["b", 3, 1],
    ],
    [
      ["x,y", 6, 5],
      ["z", 13, 1],
    ],
  ]);
  expect(records?.map(({ start, end }) => [start, end])).toEqual([
    [0, 6],
    [6, 16],
  ]);
});

// Wherever the row stands: the place is counted from the text, so each is told by hand.
it.each([
  ["the header", '1/4" a,b\nx,y\n', [["csv-quote", 1, 4]]],
  ["the first row", 'a,b\nx,1/4" w\ny,z\n', [["csv-quote", 2, 6]]],
  ["the last row", 'a,b\nx,y\nx,y\nx,1/4" w\n', [["csv-quote", 4, 6]]],
  ["a row behind CRLF and letters of two bytes", 'a,\u00fc\r\nx,\u00fc\r\nx,1/4" w\r\n', [["csv-quote", 3, 6]]],
  ["a quote mark that stays open", 'a,b\nx,y\nx,"w\n', [["quote-missing", 3, 3]]],
])("finds a stray quote mark in %s", (_name, text, faults) => {
  expect(read(text)).toEqual({ records: undefined, faults });
});
