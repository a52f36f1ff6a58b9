import type { Complaint } from "../model/rule.ts";
import type { RecordFile } from "../model/subjects.ts";
import { eachText } from "./targets.ts";

/**
 * A complaint for every match of a pattern in the texts of a record; the file as it is written is looked through first, since most have none.
 *
 * @param mayHold - whether a file's text may hold a match that is written without escapes; never false where there is one
 */
export function eachMatch(
  record: RecordFile,
  pattern: RegExp,
  complain: (match: string) => Omit<Complaint, "at">,
  mayHold: (text: string) => boolean,
): Complaint[] {
  const complaints: Complaint[] = [];
  // Behind an escape (\u003c) may stand anything.
  if (!mayHold(record.text) && !record.text.includes("\\u")) return complaints;
  eachText(record.value, (text, path) => {
    for (const match of text.matchAll(pattern))
      complaints.push({ at: { path: path(), within: { offset: match.index, length: match[0].length } }, ...complain(match[0]) });
  });
  return complaints;
}
