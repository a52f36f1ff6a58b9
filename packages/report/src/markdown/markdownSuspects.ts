import type { SuspectReport } from "@underchassis/grading";
import { groupWords, nextTable, suspectTable } from "../suspects/suspectTable.ts";
import { beliefWords, placeWords, priorWords, verdictWords } from "../suspects/suspectWords.ts";
import { formatValue } from "../view/formatValue.ts";
import type { Sheet } from "../view/sheet.ts";
import { commonReturn } from "../view/shortWords.ts";
import { escapeMarkdown } from "./escapeMarkdown.ts";
import { listBlock, tableBlock } from "./markdownBlocks.ts";

/** The search for a cause, where it was asked for. */
export function markdownSuspects(sheet: Sheet): string[] {
  if (sheet.report.suspects === undefined) return [];
  const report = sheet.report.suspects as unknown as SuspectReport;
  const reference = commonReturn(sheet.report.readings);
  const blocks = [escapeMarkdown(verdictWords(report))];
  for (const suspect of report.suspects) {
    const { rank, title, second, posterior, prior, group, hazard, confirm } = suspect;
    blocks.push(`### ${rank}. ${escapeMarkdown(second === undefined ? title : `${title}, and ${second.title}`)}`);
    blocks.push(
      listBlock(
        [
          `Belief ${beliefWords(posterior)} (${priorWords(prior)} before the readings).`,
          group.length > 0 ? `No reading tells it from: ${groupWords(group)}` : "",
          hazard === undefined ? "" : `**Danger:** if so, ${hazard.at} carries ${formatValue(hazard.volts, "V")}, which must not be there.`,
          `Make sure: ${confirm}`,
        ]
          .filter(Boolean)
          .map((line) =>
            line.startsWith("**Danger:**") ? `**Danger:**${escapeMarkdown(line.slice("**Danger:**".length))}` : escapeMarkdown(line),
          ),
        "",
      ),
      tableBlock(suspectTable(suspect, reference), ""),
    );
  }
  if (report.coldOnly !== undefined)
    blocks.push(
      escapeMarkdown(
        `No power: if "${report.coldOnly.title}" is true, ${report.coldOnly.at} carries ${formatValue(report.coldOnly.volts, "V")}. Measure cold until that is ruled out.`,
      ),
    );
  if (report.next !== undefined) {
    const { next } = report;
    blocks.push("### Measure next", escapeMarkdown(`${placeWords(next, reference)}: ${next.why}.`), tableBlock(nextTable(next), ""));
    blocks.push(
      listBlock(
        next.cautions.map((id) => escapeMarkdown(sheet.cautionTitle(id))),
        "",
      ),
    );
  }
  return blocks;
}
