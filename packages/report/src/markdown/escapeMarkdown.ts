/** Characters with a meaning inside a line of GitHub-flavoured Markdown; a backslash takes it away. */
const inline = /[\\`*_[\]<>|~$^]/g;
/** What would begin a heading, list, rule or underline at the start of a line. */
const opening = /^(\s*)([#+-](?=[\s#-]|$)|=|\d{1,9}(?=[.)](?:\s|$)))/;

/**
 * Text from a job as Markdown that shows exactly that text: no markup, no HTML, no character reference, no link made from a
 * bare address, no mention of a person or issue, no picture for a word between colons. The text must be one line (`visible`).
 */
export function escapeMarkdown(text: string): string {
  return (
    text
      .replace(inline, "\\$&")
      .replaceAll("&", "&amp;")
      .replaceAll("://", "\\://")
      .replace(/\bwww\./gi, (match) => `${match.slice(0, -1)}\\.`)
      // A backslash would not do: mentions and picture words are looked for in the finished page, where it is gone. An empty comment parts the text.
      .replace(/[@#](?=[\p{L}\p{N}])/gu, "$&<!-- -->")
      .replace(/:(?=[\w+-]*[a-z+-][\w+-]*:)/gi, ":<!-- -->")
      .replace(/\b(GH)-(?=\d)/gi, "$1-<!-- -->")
      .replace(opening, (_, blank: string, mark: string) => (/\d/.test(mark) ? `${blank}${mark}\\` : `${blank}\\${mark}`))
  );
}
