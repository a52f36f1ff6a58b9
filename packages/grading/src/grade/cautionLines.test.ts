import { buildDataset } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import type { Finding } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { smallDataset } from "../testing/smallDataset.ts";
import { templateOf } from "../testing/stageTemplate.ts";
import { cautionLines } from "./cautionLines.ts";
import { sourceLines } from "./sourceLines.ts";

const caution = (id: string, rank: number, more: object = {}) => ({
  file: `${id}.json`,
  record: { schemaVersion: 1, id, title: id, text: `Mind ${id}.`, rank, sources: [`source-of-${id}`], ...more } as never,
});
const source = (id: string, kind: string) => ({ file: "sources.csv", record: { id, kind, title: `Title of ${id}`, detail: "" } as never });

const template = templateOf({
  id: "stage",
  title: "The stage",
  cautions: ["of-stage"],
  sources: ["book"],
  parts: [{ role: "r", title: "r", kind: "resistor", between: ["supply", "return"], typical: "1 kohm" }],
});
const { tables } = smallDataset();
const dataset = buildDataset({
  version: "0.0.0",
  stages: [{ file: "stage.json", record: template }],
  tubes: [],
  cautions: [
    caution("always", 2, { always: true }),
    caution("of-stage", 3),
    caution("of-finding", 1),
    caution("never", 0),
    caution("transformerless-live-chassis", 0, { appliesTo: [{ isolation: "transformerless" }] }),
  ],
  failureNotes: [],
  sources: [
    source("book", "published"),
    source("practice", "common-practice"),
    source("ansi-c84-1", "published"),
    source("source-of-always", "from-memory"),
    source("unused", "published"),
  ],
  tables,
});
const model = (isolation: "transformer" | "transformerless" = "transformer") =>
  modelOf({ chassis: { isolation }, stages: [{ id: "s", template: "stage" }] }, dataset);
const finding = (rest: Partial<Finding> = {}): Finding => ({
  check: "x",
  severity: "replace",
  life: "restored",
  title: "a finding",
  found: "",
  shouldBe: "",
  figures: [],
  why: "",
  action: "",
  cautions: ["of-finding"],
  sources: ["practice"],
  ...rest,
});

describe("cautions", () => {
  it("are those that always apply and those of the stages, with the reason, by rank", () => {
    expect(cautionLines(model(), [])).toEqual([
      { id: "always", title: "always", text: "Mind always.", because: [] },
      { id: "of-stage", title: "of-stage", text: "Mind of-stage.", because: ["The stage"] },
    ]);
  });

  it("come with findings that call for action, named after part or point or title, each reason once", () => {
    const lines = cautionLines(model(), [finding({ part: "C1" }), finding({ part: "C1" }), finding({ point: "B+" }), finding()]);
    expect(lines[0]).toMatchObject({ id: "of-finding", because: ["C1", "B+", "a finding"] });
  });

  it("do not come with what was found right", () => {
    expect(cautionLines(model(), [finding({ severity: "good" })]).map(({ id }) => id)).toEqual(["always", "of-stage"]);
  });

  it("warn of a transformerless chassis before all else", () => {
    expect(cautionLines(model("transformerless"), [])[0]).toMatchObject({
      id: "transformerless-live-chassis",
      because: ["transformerless chassis"],
    });
  });

  it("with figures say when these are from memory, wholly or in part", () => {
    const figures = (sources: string[]) => ({ text: "At most 10 kV.", sources, always: true });
    const cautions = [
      caution("recalled", 1, figures(["source-of-always"])),
      caution("mixed", 2, figures(["book", "source-of-always"])),
      caution("read", 3, figures(["book"])),
    ];
    const sources = [source("book", "published"), source("source-of-always", "from-memory"), source("ansi-c84-1", "published")];
    const told = buildDataset({ version: "0.0.0", stages: [], tubes: [], cautions, failureNotes: [], sources, tables });
    const parts = [{ name: "R1", kind: "resistor" as const, between: ["a", "chassis"] as [string, string], marked: "1k" }];
    expect(cautionLines(modelOf({ parts }, told), []).map(({ text }) => text)).toEqual([
      "At most 10 kV. (Figures from memory.)",
      "At most 10 kV. (Figures in part from memory.)",
      "At most 10 kV.",
    ]);
  });

  it("that the dataset does not hold are left out", () => {
    expect(cautionLines(model(), [finding({ cautions: ["unheard-of"] })]).map(({ id }) => id)).toEqual(["always", "of-stage"]);
  });
});

describe("sources", () => {
  const figure = { label: "", value: 1, unit: "V", how: "", source: "computed" };

  it("are those that findings, figures, cautions, stages and the line name, with their kinds", () => {
    const lines = sourceLines(model(), [finding({ figures: [figure] })], ["always"]);
    expect(lines.map(({ id, kind }) => [id, kind])).toEqual([
      ["ansi-c84-1", "published"],
      ["book", "published"],
      ["computed", "computed"],
      ["practice", "common-practice"],
      ["source-of-always", "from-memory"],
    ]);
  });

  it("name the shared reference's title", () => {
    expect(sourceLines(model(), [], []).find(({ id }) => id === "book")?.title).toBe("Title of book");
  });
});
