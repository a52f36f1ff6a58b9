import type { BytesRule } from "../../model/rule.ts";

/** Text is UTF-8. */
export const textEncoding: BytesRule = {
  code: "UC-105",
  name: "text-encoding",
  scope: "bytes",
  severity: "error",
  title: "Files are UTF-8 text",
  why: "Bytes of another encoding turn into other letters, silently and differently on each machine.",
  bad: "a file saved as UTF-16",
  good: "a file saved as UTF-8",
  check({ utf8, text, source }) {
    if (utf8) return [];
    // The decoder leaves the replacement character where it could not go on.
    const offset = source().text.indexOf("\ufffd");
    return [
      {
        ...(offset < 0 || text === "" ? {} : { at: { offset, length: 1 } }),
        message: "the file is not UTF-8 from here on",
        expected: "UTF-8 without a byte order mark",
        help: "save it again as plain text, UTF-8",
        rank: -1,
      },
    ];
  },
};
