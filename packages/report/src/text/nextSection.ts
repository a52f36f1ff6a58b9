import type { Report } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import type { Sheet } from "../view/sheet.ts";
import { whenWord } from "../view/words.ts";
import { labelled, type TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

type Step = Report["next"][number];

/** Steps that are printed; the rest follows when these are done and the job is graded again. */
const most = 8;

/** Number of the danger that a step clears; undefined for other work. */
function dangerOf(step: Step, sheet: Sheet): number | undefined {
  return sheet.dangers.find(({ finding }) => finding.title === step.why && step.action.endsWith(finding.action))?.number;
}

/** What to do at the bench, in order; dangers by number, since their section says what to do. */
export function nextLines({ sheet, width }: TextContext): string[] {
  const { next, clearance } = sheet.report;
  if (next.length === 0) return hang("  ", emptyWords.next, width);
  const cleared = new Map(next.map((step) => [step, dangerOf(step, sheet)]));
  const dangers = [...cleared.values()].filter((number) => number !== undefined);
  const others = next.filter((step) => cleared.get(step) === undefined);
  const room = dangers.length > 0 ? most - 1 : most;
  const first = dangers.length > 0 ? 2 : 1;
  return [
    ...(dangers.length > 0
      ? hang(
          "  1. ",
          `Clear ${dangers.length === 1 ? "danger" : "dangers"} ${dangers.join(", ")} as said above, plug out, capacitors discharged and measured.`,
          width,
        )
      : []),
    ...others
      .slice(0, room)
      .flatMap(({ action, why, expect, cautions, step }, index) => [
        ...hang(`  ${index + first}. `, step ? `${action} (${whenWord(step, clearance.level)})` : action, width),
        ...labelled("why", why, width),
        ...labelled("expect", expect, width),
        ...labelled("caution", cautions.map(sheet.cautionTitle).join("; "), width),
      ]),
    ...(others.length > room ? [`  ${others.length - room} more in the full report.`] : []),
  ];
}
