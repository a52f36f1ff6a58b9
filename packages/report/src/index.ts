export { renderCircuit } from "./circuit/renderCircuit.ts";
export { renderDiagnostics, type SourceFiles } from "./diagnostics/renderDiagnostics.ts";
export { renderDiagnosticsJson } from "./diagnostics/renderDiagnosticsJson.ts";
export { renderHtml } from "./html/renderHtml.tsx";
export { renderJson } from "./json/renderJson.ts";
export { stableJson } from "./json/stableJson.ts";
export { renderMarkdown } from "./markdown/renderMarkdown.ts";
export { renderText, type TextOptions } from "./text/renderText.ts";
