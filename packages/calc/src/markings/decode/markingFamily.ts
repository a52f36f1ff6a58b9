import { capacitorFamilies } from "../decodeCapacitorColours.ts";

/** Every code a marking can be declared to be written in. "printed": figures, letters and units as they stand. */
export const markingFamilies = ["printed", "resistor-bands", "body-end-dot", ...capacitorFamilies] as const;

export type MarkingFamily = (typeof markingFamilies)[number];

interface FamilyFacts {
  kind: "resistor" | "capacitor" | "either";
  /** Roughly the years it is met in (from-memory). */
  from: number;
  until?: number;
  source: string;
}

/** What is known of each code. The same rows stand in the table of code families; a test compares them. */
export const familyFacts: Readonly<Record<MarkingFamily, FamilyFacts>> = {
  printed: { kind: "either", from: 0, source: "common-practice" },
  "resistor-bands": { kind: "resistor", from: 1935, source: "iec-60062-2016" },
  "body-end-dot": { kind: "resistor", from: 1930, until: 1950, source: "rma-resistor-code" },
  "mica-rma-3": { kind: "capacitor", from: 1930, until: 1960, source: "rma-mica-code" },
  "mica-rma-5": { kind: "capacitor", from: 1935, until: 1960, source: "rma-mica-code" },
  "mica-rma-6": { kind: "capacitor", from: 1935, until: 1955, source: "rma-mica-code" },
  "mica-aws-6": { kind: "capacitor", from: 1940, until: 1985, source: "mica-code-lessons" },
  "paper-bands": { kind: "capacitor", from: 1940, until: 1970, source: "paper-capacitor-notes" },
  "polyester-bands": { kind: "capacitor", from: 1958, until: 1990, source: "capacitor-colour-tables" },
  "ceramic-3": { kind: "capacitor", from: 1940, until: 1975, source: "from-memory" },
  "ceramic-5": { kind: "capacitor", from: 1940, until: 1975, source: "from-memory" },
  "ceramic-6": { kind: "capacitor", from: 1945, until: 1975, source: "from-memory" },
};

/** Whether a code is met in a year; always when the year is not known. */
export function isOfItsTime(family: MarkingFamily, era: number | undefined): boolean {
  const { from, until = Number.POSITIVE_INFINITY } = familyFacts[family];
  return era === undefined || (era >= from && era <= until);
}

/** "1940 to 1970", "from 1935". */
export function yearsOf(family: MarkingFamily): string {
  const { from, until } = familyFacts[family];
  return until === undefined ? `from ${from}` : `${from} to ${until}`;
}
