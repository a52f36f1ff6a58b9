import type { RecordRule } from "../../model/rule.ts";
import { oldSpellings } from "../../shared/oldSpellings.ts";
import { factsOf, writtenValues } from "../../shared/writtenValues.ts";

/** Values are written with modern units. */
export const unitSpelling: RecordRule = {
  code: "UC-409",
  name: "unit-spelling",
  scope: "record",
  severity: "error",
  title: "Typical values are written with modern units: uF, pF, MHz, kHz, Mohm",
  why: "Old spellings are read from jobs; the reference writes one way.",
  bad: '"typical": "20 mfd 450 V"',
  good: '"typical": "20 uF 450 V"',
  kinds: ["stage"],
  fixable: true,
  check(record) {
    const values = writtenValues(record);
    if (!values.some((written) => factsOf(written).old)) return [];
    return values.flatMap(({ text, path }) =>
      oldSpellings(text).map(({ offset, length, modern }) => ({
        at: { path, within: { offset, length } },
        message: "an old spelling of a unit",
        received: text.slice(offset, offset + length),
        expected: modern,
      })),
    );
  },
};
