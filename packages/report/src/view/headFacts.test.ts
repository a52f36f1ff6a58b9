import type { Report } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { renderHtml } from "../html/renderHtml.tsx";
import { renderJson } from "../json/renderJson.ts";
import { renderMarkdown } from "../markdown/renderMarkdown.ts";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { renderText } from "../text/renderText.ts";

const withDataset = (dataset: Report["dataset"]): Report => ({ ...fixtureReport, dataset });
const flat = (text: string) => text.replace(/\s+/g, " ");

describe.each([
  ["text", (report: Report) => flat(renderText(report, { colour: false, width: 200 }))],
  ["Markdown", (report: Report) => flat(renderMarkdown(report))],
  ["HTML", (report: Report) => flat(renderHtml(report))],
])("the head as %s", (_format, render) => {
  it("says with which tool and dataset it was graded", () => {
    expect(render(withDataset({ version: "1.4.0" }))).toMatch(
      new RegExp(`${fixtureReport.tool.version.replaceAll(".", "\\.")}, dataset 1\\.4\\.0`),
    );
  });
  it.each([
    ["0.9.0", "major", "names, limits or meanings may be others"],
    ["1.3.0", "minor", "added or loosened"],
    ["1.4.1", "patch", "corrected"],
  ] as const)("says that the job was graded with %s before, a %s step", (jobWrittenFor, step, words) => {
    const head = render(withDataset({ version: "1.4.0", jobWrittenFor, step }));
    expect(head).toContain(`last graded with dataset ${jobWrittenFor}, a ${step} step`);
    expect(head).toContain(words);
  });
  it("says nothing more where the versions are the same", () => {
    expect(render(withDataset({ version: "1.4.0", jobWrittenFor: "1.4.0" }))).not.toContain("last graded");
  });
});

it("JSON carries version and step", () => {
  const dataset = { version: "1.4.0", jobWrittenFor: "1.3.0", step: "minor" } as const;
  expect((JSON.parse(renderJson(withDataset(dataset))) as Report).dataset).toEqual(dataset);
});
