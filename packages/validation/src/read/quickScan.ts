import { FORBIDDEN_NAMES } from "@underchassis/source-text";
import { RECORD_LIMITS } from "./recordLimits.ts";

/**
 * Whether a text that `JSON.parse` took may hold what it lets pass: names written twice, names that reach into JavaScript's own
 * objects, numbers beyond all bounds, nesting and lists without end. Cheap, so that the reader that knows every place runs only where it has
 * something to say.
 */
export function needsCloseReading(text: string, value: unknown): boolean {
  const found = { names: 0, odd: false };
  walk(value, 1, found);
  return found.odd || found.names !== namesIn(text);
}

/** Largest number that a datum may be; the reader of quantities draws the same line. */
const LARGEST_NUMBER = 1e15;

function walk(value: unknown, depth: number, found: { names: number; odd: boolean }): void {
  if (typeof value === "number") {
    if (!(Math.abs(value) <= LARGEST_NUMBER)) found.odd = true;
    return;
  }
  if (typeof value !== "object" || value === null) return;
  if (depth > RECORD_LIMITS.depth) {
    found.odd = true;
    return;
  }
  if (Array.isArray(value)) {
    if (value.length > RECORD_LIMITS.members) found.odd = true;
    for (const item of value) walk(item, depth + 1, found);
    return;
  }
  const names = Object.keys(value);
  if (names.length > RECORD_LIMITS.members) found.odd = true;
  found.names += names.length;
  for (const name of names) {
    if (FORBIDDEN_NAMES.has(name)) found.odd = true;
    walk((value as Record<string, unknown>)[name], depth + 1, found);
  }
}

const [QUOTE, BACKSLASH, COLON] = [34, 92, 58];

/** How many property names a JSON text holds: texts with a colon behind them. */
function namesIn(text: string): number {
  let names = 0;
  for (let open = text.indexOf('"'); open >= 0; ) {
    let close = text.indexOf('"', open + 1);
    while (close >= 0 && isEscaped(text, close)) close = text.indexOf('"', close + 1);
    if (close < 0) return names;
    let after = close + 1;
    let code = text.charCodeAt(after);
    while (code === 32 || (code >= 9 && code <= 13)) code = text.charCodeAt(++after);
    if (code === COLON) names++;
    open = code === QUOTE ? after : text.indexOf('"', after);
  }
  return names;
}

function isEscaped(text: string, at: number): boolean {
  let slashes = 0;
  while (text.charCodeAt(at - 1 - slashes) === BACKSLASH) slashes++;
  return slashes % 2 === 1;
}
