import { pageStyle } from "./pageStyle.ts";
import { printStyle } from "./printStyle.ts";

/** Nothing may be fetched, run, framed or sent; only the page's own style sheet counts. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * A whole page without script, from markup that a renderer has escaped already.
 *
 * @param title the title element
 * @param body what stands in the body
 * @param style what this kind of page adds to the common style
 */
export function htmlDocument(title: string, body: string, style = ""): string {
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
${pageStyle}${printStyle}${style}</style>
</head>
<body>
${body}
</body>
</html>
`;
}
