import type { Report } from "@underchassis/dataset";
import { windowText } from "./figureParts.ts";
import { digitsToTell, formatValue } from "./formatValue.ts";
import { countsSentence } from "./sheet.ts";
import { severityWords } from "./words.ts";

/** What stands at the head of a sheet: [label, text] pairs, none of them empty. */
export function headFacts({ job, counts, dataset, tool, warnings }: Report): readonly (readonly [string, string])[] {
  const { line } = job;
  const digits = digitsToTell([line.designVolts, line.actualVolts, line.lowVolts, line.highVolts], "V");
  const volts = (value: number): string => formatValue(value, "V", digits);
  const facts: [string, string | undefined][] = [
    ["Job file", job.file],
    ["About", job.description],
    [
      "Chassis",
      [job.assembly === "unknown" ? "assembly not known" : `${job.assembly} built`, job.isolation, job.era && `about ${job.era}`]
        .filter(Boolean)
        .join(", "),
    ],
    [
      "Line",
      `designed for ${volts(line.designVolts)} ${formatValue(line.hertz, "Hz")}, now ${volts(line.actualVolts)} (${windowText(line.lowVolts, line.highVolts, "V", digits)})`,
    ],
    ["Recorded", `${count(job.partCount, "part")} in ${count(job.stageCount, "stage")}, ${count(job.readingCount, "reading")}`],
    ["Findings", countsSentence(counts, severityWords)],
    ["Graded with", `${tool.name} ${tool.version}, dataset ${dataset.version}${writtenFor(dataset)}`],
    ["Remarks", warnings.length > 0 ? `${count(warnings.length, "remark")} on the job files, listed before the sources` : ""],
    ...(job.notes ?? []).map((note): [string, string] => ["Note", note]),
  ];
  return facts.filter((fact): fact is [string, string] => Boolean(fact[1]));
}

/** What may be otherwise since the job was last graded. */
const STEPS: Readonly<Record<NonNullable<Report["dataset"]["step"]>, string>> = {
  major: "a major step: names, limits or meanings may be others",
  minor: "a minor step: something was added or loosened",
  patch: "a patch step: texts or single figures were corrected",
};

function writtenFor({ version, jobWrittenFor, step }: Report["dataset"]): string {
  if (jobWrittenFor === undefined || jobWrittenFor === version) return "";
  return `; the job was last graded with dataset ${jobWrittenFor}${step === undefined ? "" : `, ${STEPS[step]}`}`;
}

/** "1 part", "2 parts". */
export function count(size: number, noun: string): string {
  return `${size} ${noun}${size === 1 ? "" : "s"}`;
}
