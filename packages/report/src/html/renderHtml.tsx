/** @jsxRuntime automatic @jsxImportSource preact */
import type { Report } from "@underchassis/dataset";
import { renderToString } from "preact-render-to-string";
import { cleanReport } from "../clean/cleanReport.ts";
import { sheetOf } from "../view/sheet.ts";
import { htmlDocument } from "./htmlDocument.ts";
import { Page } from "./Page.tsx";

/**
 * The report as one self-contained HTML page without script: for a screen from 360 pixels up, light or dark, and for A4 or
 * Letter paper. All text is escaped by the renderer.
 */
export function renderHtml(report: Report): string {
  const sheet = sheetOf(cleanReport(report));
  return htmlDocument(renderToString(<title>{`${sheet.report.job.title}: chassis sheet`}</title>), renderToString(<Page sheet={sheet} />));
}
