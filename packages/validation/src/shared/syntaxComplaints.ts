import type { Complaint } from "../model/rule.ts";
import type { RawFile } from "../model/subjects.ts";

/** What the reader found of a certain kind. Nothing for a record that was read: a file without faults is not read closely. */
export function syntaxComplaints(file: RawFile, takes: (code: string) => boolean): Complaint[] {
  if (file.value !== undefined || !file.utf8 || file.text === "" || file.kind === undefined) return [];
  return file.faults().flatMap(({ code, ...complaint }) => (takes(code) ? [complaint] : []));
}
