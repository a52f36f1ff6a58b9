import { isPlain } from "./unsaidUnits.ts";

/** Stands for every figure that is a quantity: what rules ask of a formula's shape does not hang on how large it is. */
const ANY_FIGURE = "7.7777";
/** A longer figure is left as it is: its size is somebody else's matter. */
const MOST_FIGURES = 15;

const [ZERO, NINE, DOT, QUOTE, APOSTROPHE] = [48, 57, 46, 34, 39];

/**
 * A formula with one figure for all of its figures that are quantities, so that formulas which differ in these alone are read once.
 * Powers, and figures that may be factors, make a difference to units, and stay as they are.
 */
export function shapeOf(text: string): string {
  if (text.includes("pow(")) return text;
  let shape = "";
  let copied = 0;
  for (let k = 0; k < text.length; ) {
    const code = text.charCodeAt(k);
    if (code === QUOTE || code === APOSTROPHE) {
      const close = text.indexOf(text[k]!, k + 1);
      k = close < 0 ? text.length : close + 1;
      continue;
    }
    if (!isDigit(code)) {
      k++;
      continue;
    }
    const start = k;
    while (isDigit(text.charCodeAt(k)) || text.charCodeAt(k) === DOT) k++;
    if (isWord(text.charCodeAt(k))) {
      // A figure with an exponent.
      while (isWord(text.charCodeAt(k))) k++;
      continue;
    }
    if (k - start > MOST_FIGURES || isInside(text, start) || isPlain(Number(text.slice(start, k)))) continue;
    shape += text.slice(copied, start) + ANY_FIGURE;
    copied = k;
  }
  return copied === 0 ? text : shape + text.slice(copied);
}

const isDigit = (code: number): boolean => code >= ZERO && code <= NINE;
const isWord = (code: number): boolean => isDigit(code) || code === 95 || (code >= 65 && code <= 90) || (code >= 97 && code <= 122);

/** Whether the figure at a place belongs to a name, or is a power. */
function isInside(text: string, start: number): boolean {
  const before = text.charCodeAt(start - 1);
  if (isWord(before) || before === DOT) return true;
  let k = start - 1;
  while (k >= 0 && (text[k] === " " || text[k] === "-" || text[k] === "+" || text[k] === "(")) k--;
  return text[k] === "^" || (text[k] === "*" && text[k - 1] === "*");
}
