import type { Report } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { levelWords, type Severity, severityWords } from "../view/words.ts";
import { outdented, type TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

type Hold = Report["clearance"]["holds"][number];

/** Holds of a later step that are named; the others are counted. */
const namedLater = 3;

function holdText({ reason, finding }: Hold, { sheet }: TextContext): string {
  const numbered = sheet.findingAt(finding);
  return numbered ? `${reason} (${severityWords[numbered.finding.severity]} ${numbered.number})` : reason;
}

/** "4 danger, 9 replace": how many of each severity, worst first as the holds come. */
function countText(holds: readonly Hold[], { sheet }: TextContext): string {
  const counts = new Map<Severity, number>();
  for (const { finding } of holds) {
    const severity = sheet.findingAt(finding)?.finding.severity;
    if (severity) counts.set(severity, (counts.get(severity) ?? 0) + 1);
  }
  return [...counts].map(([severity, number]) => `${number} ${severityWords[severity]}`).join(", ");
}

function laterLines(step: Hold["step"], holds: readonly Hold[], context: TextContext): string[] {
  const named = holds.slice(0, namedLater).map((hold) => holdText(hold, context));
  const counts = countText(holds, context);
  const more = holds.length > namedLater ? `; ${holds.length - namedLater} more` : "";
  return outdented(`Then ${levelWords[step]}: ${holds.length}${counts ? ` (${counts})` : ""}: ${named.join("; ")}${more}`, context.width);
}

/** The step that is reached, all that holds back the next one in the order to clear it, and how much awaits the steps after. */
export function clearanceLines(context: TextContext): string[] {
  const { sheet, width, paint } = context;
  const { level, meaning, next, holds, steps } = sheet.report.clearance;
  const [reached = "", ...others] = hang("  Reached: ", `${levelWords[level]}. ${meaning}`, width);
  const boxes = steps.map((step) => `${step.reached ? "[x]" : "[ ]"} ${levelWords[step.level]}`.replaceAll(" ", "\u00a0"));
  const now = holds.filter((hold) => hold.step === next);
  const later = [...new Set(holds.filter((hold) => hold.step !== next).map((hold) => hold.step))];
  return [
    reached.replace(levelWords[level], paint.title),
    ...others,
    ...hang("  ", boxes.join("\u00a0\u00a0 "), width),
    ...(next && now.length > 0
      ? [`  Held back from ${levelWords[next]} by, in the order to clear it:`]
      : hang("  ", emptyWords.holds, width)),
    ...now.flatMap((hold, index) => hang(`  ${String(index + 1).padStart(2)}. `, holdText(hold, context), width)),
    ...later.flatMap((step) =>
      laterLines(
        step,
        holds.filter((hold) => hold.step === step),
        context,
      ),
    ),
  ];
}
