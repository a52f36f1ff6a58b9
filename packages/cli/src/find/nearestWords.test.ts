import { describe, expect, it } from "vitest";
import { nearestWords } from "./nearestWords.ts";

const words = ["bleeder", "blender", "capacitor", "hum", "tube"];

describe("nearest words", () => {
  it("are those at the fewest edits, for each word asked", () => {
    expect(nearestWords("bleader capaciter", words)).toEqual(["bleeder", "blender", "capacitor"]);
  });

  it("are none where more than a third of the letters differ", () => {
    expect(nearestWords("xyzzy", words)).toEqual([]);
    expect(nearestWords("", words)).toEqual([]);
  });

  it("leave out words too long to be a slip of the pen", () => {
    expect(nearestWords("t".repeat(5000), words)).toEqual([]);
  });
});
