import type { SuspectReport } from "@underchassis/grading";
import { cleaned } from "../clean/cleanReport.ts";
import { paintOf } from "../text/paint.ts";
import { suspectLines } from "./suspectLines.ts";

export interface SuspectTextOptions {
  title: string;
  /** The point that readings count from, which goes without saying. */
  reference: string;
  /** Texts of the cautions by id. */
  cautions: ReadonlyMap<string, string>;
  colour: boolean;
  /** Columns, 60 to 120; default 100. */
  width?: number;
}

/** The suspects of a job as text for a terminal. Control characters of the job never reach it. */
export function renderSuspects(dirty: SuspectReport, { title, reference, cautions, colour, width = 100 }: SuspectTextOptions): string {
  const report = cleaned(dirty) as SuspectReport;
  const paint = paintOf(colour);
  const lines = suspectLines(report, {
    reference: cleaned(reference) as string,
    width: Math.max(60, Math.min(width, 120)),
    bold: paint.title,
    cautionText: (id) => cautions.get(id) ?? id,
  });
  const head = paint.title(`Suspects: ${cleaned(title) as string}, ${report.life === "found" ? "as found" : "as restored"}`);
  return `${[head, "", ...lines].join("\n").replaceAll("\u00a0", " ")}\n`;
}
