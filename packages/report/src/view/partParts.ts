import type { ReportPartLine } from "@underchassis/dataset";
import { digitsToTell, formatValue } from "./formatValue.ts";
import { changeWords, severityWords } from "./words.ts";

/** A row of a stage's parts table in words; "" where nothing is known. */
export interface PartParts {
  id: string;
  name: string;
  /** What it does and what it is: "input filter capacitor". */
  title: string;
  between: string;
  marked: string;
  measured: string;
  /** With the change: "replaced: 47 uF 500 V". */
  fitted: string;
  /** "0.8 W of 2 W; 310 V of 450 V". */
  load: string;
  verdict: string;
}

function against(value: number | undefined, rated: number | undefined, unit: string): string {
  if (value === undefined) return rated === undefined ? "" : `rated ${formatValue(rated, unit)}`;
  const digits = digitsToTell([value, rated], unit);
  const written = formatValue(value, unit, digits);
  return rated === undefined ? written : `${written} of ${formatValue(rated, unit, digits)}`;
}

/** Words for one part: its three lives, its load against its rating, its verdict. */
export function partParts(part: ReportPartLine): PartParts {
  const marked = part.marked ?? "";
  const change = changeWords[part.change];
  return {
    id: part.id,
    name: part.name,
    title: part.title.toLowerCase().includes(part.kind.toLowerCase()) ? part.title : `${part.title} (${part.kind})`,
    between: part.between,
    marked: part.typical ? `${marked || "unnamed"} (typical; the job does not say)` : marked,
    measured: part.measured ?? "",
    fitted: [change, part.fitted].filter(Boolean).join(": "),
    load: [against(part.watts, part.ratedWatts, "W"), against(part.maxVolts, part.ratedVolts, "V")].filter(Boolean).join("; "),
    verdict: severityWords[part.severity],
  };
}
