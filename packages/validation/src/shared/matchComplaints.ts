import type { Complaint } from "../model/rule.ts";

/** Most places of one kind that one file is told about. */
const MOST = 20;

/** A complaint for every match of a pattern in a text, by offset. @param pattern with the flag g */
export function matchComplaints(text: string, pattern: RegExp, complain: (match: string) => Omit<Complaint, "at">): Complaint[] {
  const complaints: Complaint[] = [];
  // A pattern that was tested before remembers where it stopped; a new one starts at the beginning.
  for (const match of text.matchAll(new RegExp(pattern))) {
    complaints.push({ at: { offset: match.index, length: match[0].length }, ...complain(match[0]) });
    if (complaints.length === MOST) break;
  }
  return complaints;
}

/** U+202E */
export function codePoint(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
}
