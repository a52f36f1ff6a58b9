import { describe, expect, it } from "vitest";
import type { RawFile } from "../../model/subjects.ts";
import { blankFilled } from "./blank-filled.ts";

/** Only the text of a file matters to this rule. */
const file = (text: string) => ({ text, source: () => ({ text }) }) as unknown as RawFile;

const places = (text: string) =>
  blankFilled.check(file(text)).map(({ at, expected }) => {
    const { offset } = at as { offset: number };
    const before = text.slice(0, offset).split("\n");
    return [before.length, before.at(-1)!.length + 1, expected];
  });

describe("blank-filled", () => {
  it("names every blank of a record, at the first letter of its text", () => {
    expect(places('{\n  "title": "FILL: What it is",\n  "rank": "FILL: a number"\n}\n')).toEqual([
      [2, 13, "What it is"],
      [3, 12, "a number"],
    ]);
  });
  it("names those of a table, quoted or not", () => {
    expect(places('id,kind,title,detail\nx,FILL: kind,"FILL: one, or two",FILL: page\n')).toEqual([
      [2, 3, "kind"],
      [2, 15, "one, or two"],
      [2, 34, "page"],
    ]);
  });
  it("names more than a handful", () => {
    expect(places(`[${'"FILL: x", '.repeat(60)}"x"]`)).toHaveLength(60);
  });
  it.each(['{ "title": "Where to FILL: nowhere" }', '{ "title": "Refill: slowly" }', "id,title\nx,Back FILL: y\n", ""])(
    "passes %j",
    (text) => {
      expect(places(text)).toEqual([]);
    },
  );
});
