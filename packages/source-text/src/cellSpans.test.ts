import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, it } from "vitest";
import { byteCounter } from "./byteCounter.ts";
import { cellSpans } from "./cellSpans.ts";

const texts = (record: string) => cellSpans(record, 0, record.length).map(({ offset, length }) => record.slice(offset, offset + length));

it.each([
  ["a,b,c\n", ["a", "b", "c"]],
  ["a,,\r\n", ["a", "", ""]],
  [' a , "b, ""c"" d" ,e', ["a", '"b, ""c"" d"', "e"]],
  ['"x\r\ny",z\n', ['"x\r\ny"', "z"]],
  ["", [""]],
])("finds the cells of %j", (record, cells) => {
  expect(texts(record)).toEqual(cells);
});

it("finds the cells that the CSV library reads, whatever is in them", () => {
  const cell = fc.string({ unit: fc.constantFrom("a", "é", "😀", ",", '"', "\n", " ", "1"), maxLength: 6 }).map((text) => text.trim());
  fc.assert(
    fc.property(fc.array(cell, { minLength: 1, maxLength: 5 }), (cells) => {
      const line = `${cells.map((text) => `"${text.replaceAll('"', '""')}"`).join(" , ")}\n`;
      const [read] = parse(line, { trim: true }) as string[][];
      expect(texts(line).map((text) => text.slice(1, -1).replaceAll('""', '"'))).toEqual(read);
    }),
    { seed: 41 },
  );
});

it("turns counts of UTF-8 bytes into offsets", () => {
  // One, two, three and four bytes: RFC 3629.
  const offsetOf = byteCounter("aé€😀b");
  expect([1, 3, 6, 10, 11].map(offsetOf)).toEqual([1, 2, 3, 5, 6]);
});
