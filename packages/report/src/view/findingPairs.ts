import type { ReportFinding } from "@underchassis/dataset";
import type { Sheet } from "./sheet.ts";
import { levelWords } from "./words.ts";

/** Labels and texts of a finding in the order in which they are printed, figures left aside; none of them empty. */
export function findingPairs(finding: ReportFinding, sheet: Sheet): readonly (readonly [string, string])[] {
  const { location } = finding;
  const pairs: [string, string | undefined][] = [
    ["on", sheet.about(finding)],
    ["found", finding.found],
    ["should be", finding.shouldBe],
    ["why", finding.why],
    ["do", finding.action],
    ["order", (finding.order ?? []).map((item) => `${item.quantity} x ${item.what} for ${item.for}: ${item.why}`).join("; ")],
    ["caution", finding.cautions.map(sheet.cautionTitle).join("; ")],
    ["holds back", finding.holds && levelWords[finding.holds]],
    ["sources", finding.sources.map((id) => sheet.source(id).text).join(", ")],
    ["written at", location && `${location.file}:${location.line}:${location.column}`],
  ];
  return pairs.filter((pair): pair is [string, string] => Boolean(pair[1]));
}

/** The pairs as one paragraph, for a finding that asks for nothing: "found: 0.31 V; should be: at most 0.5 V". */
export function findingParagraph(finding: ReportFinding, sheet: Sheet): string {
  return findingPairs(finding, sheet)
    .map(([label, text]) => `${label}: ${text.replace(/\.$/, "")}`)
    .join("; ");
}
