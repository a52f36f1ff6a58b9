import type { MarkedKind } from "@underchassis/calc";
import type { StageTemplate } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";
import { factsOf, writtenValues } from "../../shared/writtenValues.ts";

interface Range {
  least: number;
  most: number;
  /** The range in words. */
  words: string;
}

/** What parts of the trade's equipment have, ten times either way. common-practice. */
const RANGES: Readonly<Partial<Record<MarkedKind, Range>>> = {
  resistor: { least: 5e-3, most: 1e9, words: "0.005 ohm to 1000 Mohm; a small m is a thousandth" },
  capacitor: { least: 1e-13, most: 0.01, words: "0.1 pF to 10000 uF" },
  inductor: { least: 1e-9, most: 1000, words: "0.001 uH to 1000 H" },
};

/** Larger ones are electrolytics, where nothing else is said; paper in oil comes as large. common-practice. */
const LEAST_ELECTROLYTIC = 4e-6;

/** A typical value is one that such a part can have. */
export const valuePlausible: RecordRule = {
  code: "UC-430",
  name: "value-plausible",
  scope: "record",
  severity: "error",
  title: "A typical value is of a size that such parts have; a capacitor's says its voltage, and an electrolytic its positive side",
  why: "A prefix that is left out makes ten microfarads ten farads, and the simulation takes it; a rating that is left out is never held.",
  bad: '"kind": "capacitor", "typical": "10 F 450 V"',
  good: '"kind": "capacitor", "typical": "10 uF 450 V"',
  kinds: ["stage"],
  check: (record) =>
    gather(writtenValues(record), (written): readonly Complaint[] => {
      const { text, path, as } = written;
      const { marked } = factsOf(written);
      const range = "marking" in as ? RANGES[as.marking] : undefined;
      if (marked === undefined || range === undefined) return nothing();
      if (marked.value < range.least || marked.value > range.most)
        return [{ at: { path }, message: "no part has such a value", received: text, expected: range.words }];
      if ("marking" in as && as.marking === "capacitor" && !marked.rated && path[0] === "parts")
        return [
          { at: { path }, message: "a capacitor without its voltage", received: text, expected: "the rated voltage too: 10 uF 450 V" },
        ];
      if (marked.value >= LEAST_ELECTROLYTIC && "marking" in as && as.marking === "capacitor" && isUnsaid(record.value, path, text))
        return [
          {
            at: { path },
            message: "a capacitor as large as an electrolytic, which has no positive side",
            received: text,
            expected: '"polarised": true, or what it is made of: 16 uF 700 V oil',
          },
        ];
      return nothing();
    }),
};

/** Whether nothing says of a part that it is polarised, or why it is not. */
function isUnsaid(value: unknown, [list, index]: Path, text: string): boolean {
  const part = list === "parts" ? (value as StageTemplate).parts[index as number] : undefined;
  return part !== undefined && part.polarised === undefined && !/film|oil|paper|polar/i.test(text);
}
