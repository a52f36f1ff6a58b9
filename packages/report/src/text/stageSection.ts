import type { Report, ReportPartLine } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { partParts } from "../view/partParts.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { type Severity, severityWords } from "../view/words.ts";
import { findingsText } from "./findingsText.ts";
import { outdented, type TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

type Stage = Report["stages"][number];

/** Checks that say of a reading what the table of readings shows. */
const toldByReadings = new Set(["reading-against-computed", "reading-against-published"]);

/** Whether the summary has to say it here: not good, and not already a row of the readings. */
function isWorthSaying({ finding }: NumberedFinding, { report }: Sheet): boolean {
  if (finding.severity === "good") return false;
  // Such lists hold nothing back; the parts stand in the line of quiet parts, the list in the full report.
  if (finding.severity === "unmeasured" && finding.part === undefined && finding.holds === undefined) return false;
  if (!toldByReadings.has(finding.check) || finding.point === undefined) return true;
  return !report.readings.some((reading) => reading.at === finding.point && reading.condition === finding.condition);
}

/** One entry: severity painted in front, then the text. */
function entry(severity: Severity, text: string, { width, paint }: TextContext): string[] {
  const word = severityWords[severity].replaceAll(" ", "\u00a0");
  const [first = "", ...others] = outdented(`${word} ${text}`, width);
  return [first.replace(word, paint.severity[severity]), ...others];
}

/** A part with its lives and what was found on it: "C1 filter capacitor: 20 mfd -> measured 16 uF. (4) see Dangers. replace (10) ...". */
function partEntry(part: ReportPartLine, stage: Stage, findings: readonly NumberedFinding[], context: TextContext): string[] {
  const { name, title, marked, measured, fitted } = partParts(part);
  const lives = [marked, measured && `measured ${measured}`, fitted].filter(Boolean).join(" -> ");
  const lead = `${name} ${title}${lives ? `: ${lives}` : ""}.`;
  return entry(
    part.severity,
    `${lead} ${findingsText(findings, part.severity, [name, stage.title], context.sheet.isFromMemory)}`.trim(),
    context,
  );
}

/** Parts without an entry of their own, in one line: "good: R1, R2; not measured: T1". */
function quietLine(parts: readonly ReportPartLine[], width: number): string[] {
  const severities = [...new Set(parts.map((part) => part.severity))];
  const names = (severity: Severity): string =>
    parts
      .filter((part) => part.severity === severity)
      .map((part) => part.name)
      .join(", ");
  const text = severities.map((severity) => `${severityWords[severity]}: ${names(severity)}`).join("; ");
  return text ? hang("  ", text, width) : [];
}

/** Findings that belong to no part, one entry a severity. */
function looseEntries(findings: readonly NumberedFinding[], subject: string, context: TextContext): string[] {
  const severities = [...new Set(findings.map(({ finding }) => finding.severity))];
  return severities.flatMap((severity) => {
    const own = findings.filter(({ finding }) => finding.severity === severity);
    return entry(severity, findingsText(own, severity, [subject], context.sheet.isFromMemory), context);
  });
}

function stageBlock(stage: Stage, context: TextContext): string[] {
  const { sheet, width, paint } = context;
  const findings = sheet.findingsAt(stage.findings).filter((numbered) => isWorthSaying(numbered, sheet));
  const ofPart = (part: ReportPartLine): NumberedFinding[] => findings.filter(({ finding }) => finding.part === part.id);
  const loud = stage.parts.filter((part) => ofPart(part).length > 0);
  // "The rest of the chassis" need not be opened for good findings only.
  if (stage.parts.length === 0 && findings.length === 0 && stage.template === undefined) return [];
  const ids = new Set(stage.parts.map((part) => part.id));
  return [
    ...hang("", stage.title, width).map(paint.title),
    ...loud.flatMap((part) => partEntry(part, stage, ofPart(part), context)),
    ...looseEntries(
      findings.filter(({ finding }) => finding.part === undefined || !ids.has(finding.part)),
      stage.title,
      context,
    ),
    ...quietLine(
      stage.parts.filter((part) => !loud.includes(part)),
      width,
    ),
    ...(stage.parts.length === 0 ? hang("  ", emptyWords.parts, width) : []),
  ];
}

/** Stage by stage: an entry for each part that something is to be said of, then the stage itself, then the quiet parts in a line. */
export function stageLines(context: TextContext): string[] {
  const { sheet, width, paint } = context;
  const { stages } = sheet.report;
  const loose = sheet.loose.filter((numbered) => isWorthSaying(numbered, sheet));
  return [
    ...(stages.length === 0 ? hang("  ", emptyWords.stages, width) : stages.flatMap((stage) => stageBlock(stage, context))),
    ...(loose.length > 0 ? [paint.title("The chassis as a whole"), ...looseEntries(loose, "", context)] : []),
  ];
}
