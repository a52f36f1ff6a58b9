import type { BytesRule } from "../../model/rule.ts";
import { RECORD_LIMITS } from "../../read/recordLimits.ts";

/** Files stay within what a person can review. */
export const fileSize: BytesRule = {
  code: "UC-104",
  name: "file-size",
  scope: "bytes",
  severity: "error",
  title: "No file is empty or larger than 2 MB",
  why: "An empty file is a slip; a huge one hides what it holds and stalls every reader.",
  bad: "a table of 40 MB",
  good: "a table of 40 kB",
  check({ bytes, link, kind, text }) {
    if (link || kind === undefined) return [];
    if (bytes > RECORD_LIMITS.bytes)
      return [
        {
          message: "the file is too large",
          received: `${(bytes / 1e6).toFixed(1)} MB`,
          expected: `at most ${RECORD_LIMITS.bytes / 1e6} MB`,
        },
      ];
    return bytes === 0 || text.trim() === "" ? [{ message: "the file is empty", expected: "a record or a table" }] : [];
  },
};
