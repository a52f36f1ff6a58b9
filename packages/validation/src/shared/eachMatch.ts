import type { Complaint } from "../model/rule.ts";
import type { RecordFile } from "../model/subjects.ts";
import { eachText } from "./targets.ts";

/**
 * A complaint for every match of a pattern in the texts of a record; the whole file is searched first, since most have none.
 *
 * @param pieces one of them is in every match, in this spelling: looked for before the pattern, which takes longer
 */
export function eachMatch(
  record: RecordFile,
  pattern: RegExp,
  complain: (match: string) => Omit<Complaint, "at">,
  pieces?: readonly string[],
): Complaint[] {
  if (pieces?.some((piece) => record.text.includes(piece)) === false || record.text.search(pattern) < 0) return [];
  const complaints: Complaint[] = [];
  eachText(record.value, (text, path) => {
    for (const match of text.matchAll(pattern))
      complaints.push({ at: { path: path(), within: { offset: match.index, length: match[0].length } }, ...complain(match[0]) });
  });
  return complaints;
}
