/** Controls and direction changers that JSON allows as they are but a terminal or an editor would obey. */
const obeyed = /[\p{Cc}\p{Cf}\u2028\u2029]/gu;

const escaped = (character: string): string =>
  Array.from({ length: character.length }, (_, unit) => `\\u${character.charCodeAt(unit).toString(16).padStart(4, "0")}`).join("");

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : one > other ? 1 : 0))
      .map(([key, entry]) => [key, sorted(entry)]),
  );
}

/**
 * JSON with keys in code unit order, two spaces and a final newline: equal values give equal text. Reading it back gives
 * the same value, but for a number that JSON cannot hold (infinite, not a number), which becomes null.
 */
export function stableJson(value: unknown): string {
  const text = JSON.stringify(sorted(value), null, 2);
  return `${text.replace(obeyed, (character) => (character === "\n" ? character : escaped(character)))}\n`;
}
