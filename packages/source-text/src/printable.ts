import type { Path } from "./path.ts";
import type { Place, Placed, Span } from "./place.ts";
import type { Problem, Problems } from "./problems.ts";
import { asWritten } from "./words.ts";

/** Free text, in which line breaks and the marks of right-to-left writing have a use. */
const PROSE = new Set(["note", "notes", "why", "description"]);

// Characters that make two names look alike, hide, or reorder what a reader sees: controls, soft hyphen, zero-width and
// bidirectional marks (Unicode 15 Bidi_Control), line separators, lone surrogates, the replacement character, odd spaces.
const UNPRINTABLE = /[\p{Cc}\p{Cs}\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufff9-\ufffd]/u;
const UNPRINTABLE_IN_PROSE = /(?![\t\n\r])[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069\ufffd]/u;
const ODD_SPACE = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/;

/** Reports characters that cannot be seen in the names and values of a record, and spaces around names. */
export function reportUnprintable(root: Placed, problems: Problems): void {
  visit(root.value, root.place, []);

  function visit(value: unknown, place: Place, path: Path): void {
    if (typeof value === "string") {
      const prose = path.some((step) => typeof step === "string" && PROSE.has(step));
      check(value, place.value, prose);
    } else if (typeof value === "object" && value !== null) {
      for (const [name, member] of Object.entries(value)) {
        const step = Array.isArray(value) ? Number(name) : name;
        const inside = place.members.get(step);
        if (inside === undefined) continue;
        if (inside.key && typeof step === "string") check(step, inside.key, false);
        visit(member, inside, [...path, step]);
      }
    }
  }

  function check(text: string, span: Span, prose: boolean): void {
    const found = (prose ? UNPRINTABLE_IN_PROSE : UNPRINTABLE).exec(text);
    if (found) {
      problems.add(exactSpan(span, found[0]), {
        code: "character-unprintable",
        message: `a character that cannot be seen: ${describe(found[0])}`,
        received: asWritten(text.replace(new RegExp(UNPRINTABLE, "gu"), "\u25a1")),
        expected: "printable characters",
      });
      return;
    }
    if (prose) return;
    const fault = spaceFault(text);
    if (fault) problems.add(span, { code: "name-spaced", ...fault, received: `"${asWritten(text)}"`, nearest: tidy(text) });
  }
}

function spaceFault(text: string): Pick<Problem, "message"> | undefined {
  if (text.trim() === "") return undefined;
  if (text !== text.trim()) return { message: "a space at the beginning or end" };
  if (ODD_SPACE.test(text)) return { message: "a space that is not the plain one" };
  return / {2}/.test(text) ? { message: "two spaces in a row" } : undefined;
}

function tidy(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/** The very character where it stands unescaped in the file, else the whole text. */
function exactSpan(span: Span, character: string): Span {
  const at = span.source.text.slice(span.offset, span.offset + span.length).indexOf(character);
  return at >= 0 ? { source: span.source, offset: span.offset + at, length: character.length } : span;
}

function describe(character: string): string {
  const code = character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
  if (code === "FFFD") return "U+FFFD, which stands where a character was lost in saving";
  return `U+${code}`;
}
