import type { FindHit } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { renderFound } from "./renderFound.ts";

const hit = (more: Partial<FindHit> = {}): FindHit => ({
  kind: "failure-note",
  id: "filter-dried-out",
  title: "Filter capacitor dried out",
  quote: "B+ low, loud hum.",
  use: "what was measured",
  exact: false,
  score: 1,
  ...more,
});

describe("what was found", () => {
  it("says title, kind, id, the sentence and the use, numbered", () => {
    expect(renderFound([hit(), hit({ kind: "tube", id: "6v6gt", title: "Beam power tube" })])).toBe(
      [
        "1. Filter capacitor dried out (failure note: filter-dried-out)",
        "   says: B+ low, loud hum.",
        "   use: what was measured",
        "2. Beam power tube (tube: 6v6gt)",
        "   says: B+ low, loud hum.",
        "   use: what was measured",
        "",
      ].join("\n"),
    );
  });

  it("does not say a title twice", () => {
    expect(renderFound([hit({ quote: "Filter capacitor dried out" })])).not.toContain("says:");
  });

  it("keeps to the width and shows what would move the cursor", () => {
    const text = renderFound([hit({ quote: `${"word ".repeat(60)}\u001b[2J` })], { width: 40 });
    expect(Math.max(...text.split("\n").map(({ length }) => length))).toBeLessThanOrEqual(40);
    expect(text).toContain("[U+001B]");
  });
});
