import { describe, expect, it } from "vitest";
import { textTable } from "./textTable.ts";

describe("textTable", () => {
  it("aligns, and leaves out a column without text", () => {
    const table = {
      head: ["part", "note", "value"],
      rows: [
        ["C1", "", "47 uF"],
        ["R12", "", "470 ohm"],
      ],
    };
    expect(textTable(table, 40)).toStrictEqual(["part  value", "----  -------", "C1    47 uF", "R12   470 ohm"]);
  });

  it("wraps the widest column first and keeps every word", () => {
    const table = { head: ["part", "what"], rows: [["C1", "first filter capacitor of the supply"]] };
    expect(textTable(table, 24)).toStrictEqual([
      "part  what",
      "----  ------------------",
      "C1    first filter",
      "      capacitor of the",
      "      supply",
    ]);
  });

  it("keeps a long name whole in pieces within the width", () => {
    const name = "x".repeat(100);
    const lines = textTable({ head: ["part", "what"], rows: [[name, "capacitor"]] }, 40);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(40);
    expect(lines.join("").replace(/[^x]/g, "")).toBe(name);
  });
});
