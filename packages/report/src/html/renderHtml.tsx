/** @jsxRuntime automatic @jsxImportSource preact */
import type { Report } from "@underchassis/dataset";
import { renderToString } from "preact-render-to-string";
import { cleanReport } from "../clean/cleanReport.ts";
import { sheetOf } from "../view/sheet.ts";
import { Page } from "./Page.tsx";
import { pageStyle } from "./pageStyle.ts";
import { printStyle } from "./printStyle.ts";

/** Nothing may be fetched, run, framed or sent; only the page's own style sheet counts. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * The report as one self-contained HTML page without script: for a screen from 360 pixels up, light or dark, and for A4 or
 * Letter paper. All text is escaped by the renderer.
 */
export function renderHtml(report: Report): string {
  const sheet = sheetOf(cleanReport(report));
  const title = renderToString(<title>{`${sheet.report.job.title}: chassis sheet`}</title>);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
${title}
<style>
${pageStyle}${printStyle}</style>
</head>
<body>
${renderToString(<Page sheet={sheet} />)}
</body>
</html>
`;
}
