import type { Suspect, SuspectReport } from "@underchassis/grading";
import { textTable } from "../text/textTable.ts";
import { hang, wrapText } from "../text/wrapText.ts";
import { formatValue } from "../view/formatValue.ts";
import { groupWords, nextTable, suspectTable } from "./suspectTable.ts";
import { beliefWords, placeWords, priorWords, valueWords, verdictWords } from "./suspectWords.ts";

interface Setting {
  /** The point that readings count from, which goes without saying. */
  reference: string;
  width: number;
  bold(text: string): string;
  cautionText(id: string): string;
}

/** Verdict, suspects with their readings, what to measure next, as lines of text. */
export function suspectLines(report: SuspectReport, setting: Setting): string[] {
  const { width, bold, reference, cautionText } = setting;
  const lines = wrapText(verdictWords(report), width);
  if (report.verdict !== "no-readings" && report.hypotheses > 0)
    lines.push(
      ...wrapText(
        `Belief that nothing is wrong but tolerances: ${beliefWords(report.healthy)}; that it is none of these: ${beliefWords(report.noneOfThese)}.`,
        width,
      ),
    );
  if (report.suspects.length > 0)
    lines.push(
      ...wrapText("Bars: | the suspect's prediction, [ ] two standard deviations, * the reading, < > a reading beyond four.", width),
    );
  for (const suspect of report.suspects) lines.push("", ...entry(suspect, setting));
  if (report.unexplained.length > 0) {
    const left = report.unexplained.map(
      (reading) => `${placeWords(reading, reference)} reads ${valueWords(reading.quantity, reading.read)}`,
    );
    lines.push("", ...hang("Not explained: ", left.join("; "), width));
  }
  if (report.coldOnly !== undefined) {
    const { title, at, volts } = report.coldOnly;
    lines.push(
      "",
      ...hang(
        "No power: ",
        `if "${title}" is true, ${at} carries ${formatValue(volts, "V")}. Measure cold until that is ruled out.`,
        width,
      ),
    );
  }
  if (report.next === undefined) return lines;
  const { next } = report;
  lines.push("", bold("Measure next"), ...hang("  ", `${placeWords(next, reference)}: ${next.why}.`, width));
  lines.push(...textTable(nextTable(next), width - 2).map((line) => `  ${line}`));
  for (const id of next.cautions) lines.push(...hang("  Caution: ", cautionText(id), width));
  return lines;
}

function entry(suspect: Suspect, { reference, width, bold }: Setting): string[] {
  const { rank, title, posterior, prior, group, confirm, hazard, second } = suspect;
  const lines = hang(`${rank}. `, title, width).map(bold);
  if (second !== undefined) lines.push(...hang("   and ", second.title, width));
  lines.push(...hang("   ", `Belief ${beliefWords(posterior)} (${priorWords(prior)} before the readings).`, width));
  if (group.length > 0) lines.push(...hang("   No reading tells it from: ", groupWords(group), width));
  lines.push(...textTable(suspectTable(suspect, reference), width - 3).map((line) => `   ${line}`));
  if (hazard !== undefined)
    lines.push(...hang("   Danger: ", `if so, ${hazard.at} carries ${formatValue(hazard.volts, "V")}, which must not be there.`, width));
  lines.push(...hang("   Make sure: ", confirm, width));
  return lines;
}
