/** `a`, `a or b`, `a, b or c`; a long list is cut short. */
export function oneOf(words: readonly string[], most = 20): string {
  if (words.length > most) return `${words.slice(0, most).join(", ")} … (${words.length} in all)`;
  if (words.length < 2) return words[0] ?? "nothing";
  return `${words.slice(0, -1).join(", ")} or ${words[words.length - 1]}`;
}

/** A value as written, cut to a length that fits on a line. */
export function asWritten(value: unknown, most = 60): string {
  if (Array.isArray(value)) return value.length === 0 ? "[]" : `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object { … }";
  const text = typeof value === "string" ? value : String(JSON.stringify(value) ?? value);
  return text.length > most ? `${text.slice(0, most)}…` : text;
}
