import type { Diagnostic } from "../model/diagnostic.ts";
import { visible } from "./visible.ts";

/** What stands below a diagnostic's message, a line each: what was received, what would be right, how to mend it. */
export function noteLines({ received, expected, nearest, help, fix }: Partial<Diagnostic>): string[] {
  return (
    [
      ["received", received],
      ["expected", expected],
      ["nearest", nearest],
      ["help", help],
      ["fix", fix],
    ] as const
  ).flatMap(([label, text]) => (text === undefined ? [] : [`${label}: ${visible(text)}`]));
}
