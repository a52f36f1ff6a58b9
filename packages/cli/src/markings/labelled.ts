const labelWidth = 10;
const usualWidth = 100;
const leastWidth = 40;

/** Texts behind a label, wrapped and hanging under its end. No texts, no lines. */
export function labelled(label: string, texts: readonly string[], width: number = usualWidth): string[] {
  const room = Math.max(leastWidth, width) - labelWidth;
  const lines = texts.flatMap((text) => wrap(text, room));
  return lines.map((line, place) => `${(place === 0 ? label : "").padEnd(labelWidth)}${line}`.trimEnd());
}

function wrap(text: string, room: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > room) {
      lines.push(line);
      line = `  ${word}`;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}
