import type { RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";
import { factsOf, type ReadAs, writtenValues } from "../../shared/writtenValues.ts";

const MARKING_WORDS: Readonly<Record<string, string>> = {
  resistor: "ohms and watts: 47 kohm 1 W",
  capacitor: "farads and volts: 20 uF 450 V",
  inductor: "henries, ohms and amperes: 10 H 250 ohm 60 mA",
  fuse: "amperes and volts: 1 A slow-blow 250 V",
  thermistor: "cold ohms and amperes: 10 ohm 3 A",
  load: "amperes or ohms: 60 mA",
  "transformer-winding": "volts and amperes: 6.3 V 3.5 A",
};

/** Every typical value can be read, and is of the dimension that its part has. */
export const valueReadable: RecordRule = {
  code: "UC-408",
  name: "value-readable",
  scope: "record",
  severity: "error",
  title: "Every typical value can be read as what its part is marked with",
  why: "A value that cannot be read leaves the stage without it, and nothing simulates.",
  bad: '"kind": "capacitor", "typical": "20 kohm"',
  good: '"kind": "capacitor", "typical": "20 uF 450 V"',
  kinds: ["stage"],
  check: (record) =>
    gather(writtenValues(record), (written) => {
      const { problem } = factsOf(written);
      if (problem === undefined) return nothing();
      const { text, path, as } = written;
      if (problem === "no-value")
        return [
          {
            at: { path, within: { offset: 0, length: text.length } },
            message: "a marking without a value",
            received: text,
            expected: wordsOf(as),
          },
        ];
      const { message, offset, length, expected, nearest } = problem;
      return [
        {
          at: { path, within: { offset, length: Math.min(Math.max(length, 1), Math.max(text.length - offset, 0)) } },
          message,
          received: text,
          expected: expected || wordsOf(as),
          nearest,
        },
      ];
    }),
};

function wordsOf(as: ReadAs): string {
  return "marking" in as ? (MARKING_WORDS[as.marking] ?? as.marking) : as.quantity;
}
