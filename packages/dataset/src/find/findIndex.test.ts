import { describe, expect, it } from "vitest";
import { findIndex } from "./findIndex.ts";
import type { FindDocument } from "./foundDocument.ts";

const document = (id: string, title: string, texts: string[], more: Partial<FindDocument> = {}): FindDocument => ({
  kind: "failure-note",
  id,
  title,
  texts,
  use: `use ${id}`,
  ...more,
});

const documents = [
  document("filter-dry", "Filter dried out", ["B+ low, loud hum at twice the line frequency.", "Electrolyte is lost."]),
  document("choke-open", "Choke open", ["No B+ behind it.", "The wire corrodes."]),
  document("coupling-leaky", "Leaky coupling capacitor", ["The grid goes positive. The output tube runs hot."]),
  document("eye-dim", "Tuning indicator dim", ["Only visible in the dark."]),
  document("6v6gt", "Beam power tube", ["6V6GT, 6V6."], { kind: "tube", names: ["6V6GT", "6V6"] }),
  document("hum-balance", "Hum balance of the heaters", ["A low control across the winding."], { kind: "stage" }),
];
const index = findIndex(documents);
const ids = (question: string, options = {}) => index.find(question, options).map(({ id }) => id);

describe("what is found", () => {
  it("ranks first what holds most of the question, and quotes the sentence that does", () => {
    const [first] = index.find("low B+ loud hum");
    expect(first).toMatchObject({
      id: "filter-dry",
      quote: "B+ low, loud hum at twice the line frequency.",
      use: "use filter-dry",
      exact: false,
    });
  });

  it.each([
    ["condenser leaking", "coupling-leaky"],
    ["leaky cap", "coupling-leaky"],
    ["valve hot", "coupling-leaky"],
    ["magic eye dim", "eye-dim"],
    ["HT missing, inductor", "choke-open"],
    ["high tension low, mains ripple", "filter-dry"],
    ["smoothing dried", "filter-dry"],
  ])("by the trade's other names: %s", (question, id) => {
    expect(ids(question)[0]).toBe(id);
  });

  it("has an id or another name before everything else, in any writing", () => {
    expect(index.find("6V6")[0]).toMatchObject({ id: "6v6gt", exact: true });
    expect(index.find("Hum Balance")[0]).toMatchObject({ id: "hum-balance", exact: true });
    expect(index.find("choke_open")[0]).toMatchObject({ id: "choke-open", exact: true, quote: "No B+ behind it." });
  });

  it("forgives a slip of the pen in a word that stands nowhere", () => {
    expect(ids("electrolite")).toEqual(["filter-dry"]);
  });

  it("keeps to the kinds and the number asked for", () => {
    expect(ids("hum", { kinds: ["stage"] })).toEqual(["hum-balance"]);
    expect(ids("hum", { top: 1 })).toHaveLength(1);
    expect(ids("6v6", { kinds: ["stage"] })).toEqual([]);
  });

  it("is nothing for words that stand nowhere, for stop words and for nothing", () => {
    expect(ids("qqqqq")).toEqual([]);
    expect(ids("the of and")).toEqual([]);
    expect(ids("")).toEqual([]);
  });

  it("is the same again for the same question", () => {
    expect(index.find("hum low")).toEqual(index.find("hum low"));
  });
});

it("lists every word for those who misspell one", () => {
  expect(index.words()).toContain("electrolyte");
  expect(index.words()).toContain("6v6gt");
});
