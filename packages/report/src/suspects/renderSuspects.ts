import type { Suspect, SuspectReport } from "@underchassis/grading";
import { cleaned } from "../clean/cleanReport.ts";
import { formatValue } from "../view/formatValue.ts";
import { paintOf } from "../text/paint.ts";
import { textTable } from "../text/textTable.ts";
import { hang, wrapText } from "../text/wrapText.ts";
import { suspectBar } from "./suspectBar.ts";
import { beliefWords, placeWords, valueWords, verdictWords } from "./suspectWords.ts";

export interface SuspectTextOptions {
  title: string;
  /** The point that readings count from, which goes without saying. */
  reference: string;
  /** Texts of the cautions by id. */
  cautions: ReadonlyMap<string, string>;
  colour: boolean;
  width?: number;
}

/** Members of a group that are named; JSON has them all. */
const NAMED = 4;

/** The suspects of a job as text for a terminal: verdict, suspects with their readings, what to measure next. */
export function renderSuspects(dirty: SuspectReport, options: SuspectTextOptions): string {
  const report = cleaned(dirty) as SuspectReport;
  const { title, reference, cautions } = cleaned({ ...options, cautions: Object.fromEntries(options.cautions) }) as {
    title: string;
    reference: string;
    cautions: Record<string, string>;
  };
  const width = Math.max(60, Math.min(options.width ?? 100, 120));
  const paint = paintOf(options.colour);
  const lines = [paint.title(`Suspects: ${title}, ${report.life === "found" ? "as found" : "as restored"}`), "", ...wrapText(verdictWords(report), width)];
  if (report.verdict !== "no-readings" && report.hypotheses > 0)
    lines.push(
      ...wrapText(
        `Belief that nothing is wrong but tolerances: ${beliefWords(report.healthy)}; that it is none of these: ${beliefWords(report.noneOfThese)}.`,
        width,
      ),
    );
  for (const suspect of report.suspects) lines.push("", ...suspectLines(suspect, reference, width, paint.title));
  if (report.unexplained.length > 0)
    lines.push(
      "",
      ...hang("Not explained: ", report.unexplained.map((reading) => `${placeWords(reading, reference)} reads ${valueWords(reading.quantity, reading.read)}`).join("; "), width),
    );
  if (report.coldOnly !== undefined)
    lines.push(
      "",
      ...hang(
        "No power: ",
        `if "${report.coldOnly.title}" is true, ${report.coldOnly.at} carries ${formatValue(report.coldOnly.volts, "V")}. Measure cold until that is ruled out.`,
        width,
      ),
    );
  if (report.next !== undefined) {
    const { next } = report;
    lines.push("", paint.title("Measure next"), ...hang("  ", `${placeWords(next, reference)}: ${next.why}.`, width));
    const rows = next.predictions.map(({ title: who, value, spread }) => [valueWords(next.quantity, value), value === null ? "" : `± ${valueWords(next.quantity, spread, 2)}`, who]);
    lines.push(...textTable({ head: ["shows", "about", "if"], rows }, width - 2).map((line) => `  ${line}`));
    for (const id of next.cautions) lines.push(...hang("  Caution: ", cautions[id] ?? id, width));
  }
  return `${lines.join("\n")}\n`;
}

function suspectLines(suspect: Suspect, reference: string, width: number, bold: (text: string) => string): string[] {
  const { rank, title, posterior, prior, group, confirm, readings, hazard, second } = suspect;
  const lines = [bold(`${rank}. ${title}`)];
  if (second !== undefined) lines.push(...hang("   and ", second.title, width));
  lines.push(...hang("   ", `Belief ${beliefWords(posterior)} (${prior < 0.001 ? "under 0.1 %" : `${(100 * prior).toPrecision(2)} %`} before the readings).`, width));
  if (group.length > 0) {
    const more = group.length > NAMED ? `; ${group.length - NAMED} more` : "";
    lines.push(...hang("   No reading tells it from: ", `${group.slice(0, NAMED).map((other) => other.title).join("; ")}${more}`, width));
  }
  const rows = readings.map((reading) => [
    placeWords(reading, reference),
    valueWords(reading.quantity, reading.read),
    valueWords(reading.quantity, reading.predicted),
    valueWords(reading.quantity, reading.healthy),
    suspectBar(reading.deviation),
    reading.slip === true ? "taken for a slip" : "",
  ]);
  lines.push(...textTable({ head: ["reading", "read", "if so", "if sound", "read against", ""], rows }, width - 3).map((line) => `   ${line}`));
  if (hazard !== undefined)
    lines.push(...hang("   Danger: ", `if so, ${hazard.at} carries ${formatValue(hazard.volts, "V")}, which must not be there.`, width));
  lines.push(...hang("   Make sure: ", confirm, width));
  return lines;
}
