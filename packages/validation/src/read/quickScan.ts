/** What a look over the text of a JSON file tells, without parsing it. */
export interface TextScan {
  /** Property names: texts with a colon behind them. */
  names: number;
  /** Outside of texts stands a number of many figures. */
  longNumber: boolean;
}

const [QUOTE, BACKSLASH, COLON, DOT, ZERO, NINE] = [34, 92, 58, 46, 48, 57];
/** More figures than a program keeps. */
const MANY_FIGURES = 18;

/** Looks over a text that `JSON.parse` took. */
export function scanText(text: string): TextScan {
  let names = 0;
  let longNumber = false;
  let after = 0;
  for (let open = text.indexOf('"'); open >= 0; ) {
    if (open - after >= MANY_FIGURES && holdsManyFigures(text, after, open)) longNumber = true;
    let close = text.indexOf('"', open + 1);
    while (close >= 0 && isEscaped(text, close)) close = text.indexOf('"', close + 1);
    if (close < 0) return { names, longNumber };
    after = close + 1;
    let code = text.charCodeAt(after);
    while (code === 32 || (code >= 9 && code <= 13)) code = text.charCodeAt(++after);
    if (code === COLON) names++;
    open = code === QUOTE ? after : text.indexOf('"', after);
  }
  return { names, longNumber: longNumber || holdsManyFigures(text, after, text.length) };
}

function isEscaped(text: string, at: number): boolean {
  let slashes = 0;
  while (text.charCodeAt(at - 1 - slashes) === BACKSLASH) slashes++;
  return slashes % 2 === 1;
}

/** Whether many figures stand in a row, a point among them or not. */
function holdsManyFigures(text: string, start: number, end: number): boolean {
  let row = 0;
  for (let k = start; k < end; k++) {
    const code = text.charCodeAt(k);
    if ((code < ZERO || code > NINE) && code !== DOT) row = 0;
    else if (++row >= MANY_FIGURES) return true;
  }
  return false;
}
