import type { Report } from "@underchassis/dataset";
import type { SuspectReport } from "@underchassis/grading";
import { suspectLines as linesOf } from "../suspects/suspectLines.ts";
import { commonReturn } from "../view/shortWords.ts";
import type { TextContext } from "./textContext.ts";

/** The search for a cause, where it was asked for. */
export function suspectLines({ sheet, width, paint }: TextContext, report: NonNullable<Report["suspects"]>): string[] {
  const setting = { reference: commonReturn(sheet.report.readings), width: width - 2, bold: paint.title, cautionText: sheet.cautionTitle };
  return linesOf(report as unknown as SuspectReport, setting).map((line) => (line === "" ? "" : `  ${line}`));
}
