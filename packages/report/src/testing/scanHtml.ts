/** A start tag that a scan met. */
export interface ScannedElement {
  name: string;
  attributes: ReadonlyMap<string, string>;
  /** Character data directly and indirectly inside. */
  text: string;
}

const voids = new Set(["meta", "input", "br", "hr", "img", "link"]);
const token = /<!doctype html>|<\/([a-z][a-z0-9]*)>|<([a-z][a-z0-9]*)((?:\s+[a-z][\w:-]*(?:="[^"]*")?)*)\s*(\/?)>|([^<]+)|(<)/giy;
const attribute = /\s+([a-zA-Z][\w:-]*)(?:="([^"]*)")?/y;

/** Decodes the five character references that a renderer may write. */
function decoded(text: string): string {
  return text.replace(/&(lt|gt|quot|amp|#39);/g, (_, name: string) => ({ lt: "<", gt: ">", quot: '"', amp: "&", "#39": "'" })[name] ?? "");
}

function attributesOf(text: string): Map<string, string> {
  const found = new Map<string, string>();
  attribute.lastIndex = 0;
  let end = 0;
  for (let match = attribute.exec(text); match; match = attribute.exec(text)) {
    const [, name = "", value = ""] = match;
    if (found.has(name)) throw new Error(`attribute ${name} twice in <${text}>`);
    found.set(name, decoded(value));
    end = attribute.lastIndex;
  }
  if (text.slice(end).trim()) throw new Error(`attributes not well formed: ${text}`);
  return found;
}

/**
 * Elements of a page in document order. Throws on a tag that is not closed in turn, an attribute without quotes or twice,
 * a stray "<" and a bare "&": stricter than browsers, which would repair all of these. For tests only.
 */
export function scanHtml(html: string): ScannedElement[] {
  const elements: ScannedElement[] = [];
  const open: ScannedElement[] = [];
  let offset = 0;
  while (offset < html.length) {
    token.lastIndex = offset;
    const match = token.exec(html);
    if (!match || match[6]) throw new Error(`stray "<" near ${html.slice(offset, offset + 60)}`);
    offset = token.lastIndex;
    const [, closing, opening, attributes = "", selfClosing, text] = match;
    if (text !== undefined) {
      if (open.at(-1)?.name !== "style" && /&(?!(?:lt|gt|quot|amp|#39);)/.test(text)) throw new Error(`bare "&" in ${text}`);
      for (const element of open) element.text += decoded(text);
    } else if (closing) {
      const last = open.pop();
      if (last?.name !== closing) throw new Error(`</${closing}> closes <${last?.name}>`);
    } else if (opening) {
      const element = { name: opening, attributes: attributesOf(attributes), text: "" };
      elements.push(element);
      if (!voids.has(opening) && !selfClosing) open.push(element);
    }
  }
  if (open.length > 0) throw new Error(`not closed: ${open.map((element) => element.name).join(", ")}`);
  return elements;
}
