import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, FileRule } from "../../model/rule.ts";

const COLUMNS = ["id", "kind", "title", "detail"];
const KINDS = ["published", "common-practice", "from-memory", "derived"];
const ID = /^[a-z0-9][a-z0-9-]*$/;

/** The list of sources is in order. */
export const sourceList: FileRule = {
  code: "UC-512",
  name: "source-list",
  scope: "file",
  of: "table",
  severity: "error",
  title: "Sources have id, kind, title and detail, a kind that there is, and are sorted by id",
  why: "A source is found by its id, and weighed by its kind.",
  bad: "rc30,book,Receiving tube manual,",
  good: "rc-30,published,Receiving tube manual,1975",
  fixable: true,
  check(table) {
    if (table.kind !== "sources") return [];
    const wrong = table.header.find(({ text }, index) => text !== COLUMNS[index]);
    const first = table.header[0];
    if (wrong !== undefined || table.header.length !== COLUMNS.length)
      return first === undefined
        ? []
        : [
            {
              at: (wrong ?? first).span,
              message: "not the columns of sources",
              received: table.header.map(({ text }) => text).join(","),
              expected: COLUMNS.join(","),
              byHand: true,
            },
          ];
    return table.rows.flatMap(({ cells }, index): Complaint[] => {
      const [id, kind, title] = cells;
      if (id === undefined || kind === undefined || title === undefined) return [];
      const before = table.rows[index - 1]?.cells[0]?.text ?? "";
      return [
        ...(ID.test(id.text)
          ? []
          : [
              {
                at: id.span,
                message: "an id that is not written as one",
                received: id.text,
                expected: "small letters, digits and hyphens",
                byHand: true,
              },
            ]),
        ...(KINDS.includes(kind.text)
          ? []
          : [
              {
                at: kind.span,
                message: "no such kind of source",
                received: kind.text,
                expected: oneOf(KINDS),
                nearest: nearestOf(kind.text, KINDS),
                byHand: true,
              },
            ]),
        ...(title.text !== ""
          ? []
          : [{ at: title.span, message: "a source without a title", expected: "what the work is called", byHand: true }]),
        ...(index > 0 && id.text < before
          ? [{ at: id.span, message: `the row should come before "${before}"`, received: id.text, expected: "rows sorted by id" }]
          : []),
      ];
    });
  },
};
