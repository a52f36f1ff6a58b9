/** Nothing that a demo report shows from memory is shown without saying so. */
import type { Report, ReportFinding } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { renderHtml, renderMarkdown, renderText } from "@underchassis/report";
import { describe, expect, it } from "vitest";
import { figureParts } from "../../packages/report/src/view/figureParts.ts";
import { tellingFigures } from "../../packages/report/src/view/keyFigure.ts";
import { DEMO_JOBS, gradeDemo } from "./demoReports.ts";

const dataset = loadDataset();
const plain = (text: string): string => text.replaceAll("\u00a0", " ").replace(/\s+/g, " ");

/** Ids of the report's sources that are memory. */
const remembered = (report: Report): Set<string> =>
  new Set(report.sources.filter(({ kind }) => kind === "from-memory").map(({ id }) => id));

const figuresOf = (findings: readonly ReportFinding[], ids: ReadonlySet<string>) =>
  findings.flatMap((finding) => finding.figures.filter(({ source }) => ids.has(source)).map((figure) => ({ finding, figure })));

const reports = DEMO_JOBS.map((name) => ({ name, report: gradeDemo(name, dataset) }));

it("the demo reports rest on memory somewhere, or nothing here is tested", () => {
  expect(reports.flatMap(({ report }) => figuresOf(report.findings, remembered(report))).length).toBeGreaterThan(0);
});

describe.each(reports)("$name", ({ report }) => {
  const ids = remembered(report);
  const shown = figuresOf(report.findings, ids);

  it("lists the source of every figure with its kind", () => {
    const known = new Set(report.sources.map(({ id }) => id));
    expect(report.findings.flatMap(({ figures }) => figures.filter(({ source }) => !known.has(source)))).toEqual([]);
  });

  it("says it on each line of the Markdown that holds such a figure", () => {
    const lines = renderMarkdown(report).split("\n").map(plain);
    for (const { figure } of shown) {
      const { label, how } = figureParts(figure);
      const [word = ""] = how.match(/[\w ]{6,}/) ?? [];
      const own = lines.filter((line) => line.includes(`${plain(label)}: `) && line.includes(plain(word).trim()));
      expect(own.length, label).toBeGreaterThan(0);
      expect(own.filter((line) => !line.includes("from memory"))).toEqual([]);
    }
  });

  it("says it in each row of the HTML that holds such a figure", () => {
    const rows = (renderHtml(report).match(/<tr[\s\S]*?<\/tr>/g) ?? []).map((row) => plain(row.replace(/<[^>]+>/g, " ")));
    const counted = rows.filter((row) => row.includes("from memory")).length;
    const effects = report.changes
      .flatMap((change) => change.effects)
      .filter(({ limitSource }) => limitSource !== undefined && ids.has(limitSource));
    const entries = report.sources.filter(({ kind }) => kind === "from-memory");
    expect(counted).toBe(shown.length + effects.length + entries.length);
  });

  it("says it in the terminal's text beside each such figure that this prints", () => {
    const text = plain(renderText(report, { colour: false, width: 200 }));
    const printed = report.findings
      .filter(({ severity }) => severity === "danger")
      .flatMap((finding) => tellingFigures(finding))
      .filter(({ source }) => ids.has(source));
    for (const figure of printed) {
      const { limit, margin } = figureParts(figure);
      expect(text).toContain(plain([limit, margin, "from memory"].filter(Boolean).join(", ")));
    }
    // Every figure of memory that is the telling one of its finding carries the words, wherever its finding is printed.
    const telling = report.findings.filter((finding) => ids.has(tellingFigures(finding)[0]?.source ?? ""));
    const printedTelling = telling.filter((finding) => {
      const { limit, margin } = figureParts(tellingFigures(finding)[0]!);
      return text.includes(plain([limit, margin].filter(Boolean).join(", ")));
    });
    for (const finding of printedTelling) {
      const { limit, margin } = figureParts(tellingFigures(finding)[0]!);
      const words = plain([limit, margin].filter(Boolean).join(", "));
      expect(text).toContain(`${words}, from memory`);
    }
  });

  it("says it with every caution whose figures are from memory", () => {
    for (const { id, text } of report.cautions) {
      const kinds = dataset.cautions.get(id)!.sources.map((source) => dataset.sources.get(source)?.kind);
      if (kinds.includes("from-memory") && /\d/.test(dataset.cautions.get(id)!.text)) expect(text, id).toMatch(/from memory/);
      else expect(text, id).not.toMatch(/from memory/);
    }
  });
});
