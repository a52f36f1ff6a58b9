/** @jsxRuntime automatic @jsxImportSource preact */
import type { Worksheet } from "@underchassis/grading";
import { renderToString } from "preact-render-to-string";
import { cleaned } from "../clean/cleanReport.ts";
import { htmlDocument } from "../html/htmlDocument.ts";
import { WorksheetPage } from "./WorksheetPage.tsx";
import { worksheetStyle } from "./worksheetStyle.ts";
import { worksheetView } from "./worksheetView.ts";

/** A bench sheet as one self-contained page for A4 paper, without script. All text is escaped by the renderer. */
export function renderWorksheetHtml(sheet: Worksheet): string {
  const view = worksheetView(cleaned(sheet) as Worksheet);
  return htmlDocument(
    renderToString(<title>{`${view.title}: bench sheet`}</title>),
    renderToString(<WorksheetPage view={view} />),
    worksheetStyle,
  );
}
