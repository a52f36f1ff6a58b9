import type { Path } from "./loadedJob.ts";
import { isRecord, textOf } from "./shapes.ts";

/** Lists and maps of the job whose members have a word of their own. */
const MEMBER_WORDS: Readonly<Record<string, string>> = {
  stages: "stage",
  parts: "part",
  readings: "reading",
  conditions: "condition",
  meters: "meter",
  windings: "winding",
  notes: "note",
  points: "point",
};

/** A path in words, innermost first: `"marked" of part "reservoir" of stage "supply"`, `the job` for the top. */
export function pathWords(path: Path, job: unknown): string {
  const words: string[] = [];
  let value: unknown = job;
  for (let index = 0; index < path.length; index++) {
    const step = path[index]!;
    const next = path[index + 1];
    const member = isRecord(value) || Array.isArray(value) ? (value as Record<string | number, unknown>)[step] : undefined;
    const word = typeof step === "string" && Object.hasOwn(MEMBER_WORDS, step) ? MEMBER_WORDS[step] : undefined;
    if (word !== undefined && next !== undefined && (isRecord(member) || Array.isArray(member))) {
      value = (member as Record<string | number, unknown>)[next];
      words.unshift(`${word} ${memberName(next, value)}`);
      index++;
      continue;
    }
    words.unshift(typeof step === "number" ? `entry ${step + 1}` : `"${step}"`);
    value = member;
  }
  return words.length === 0 ? "the job" : words.join(" of ");
}

function memberName(step: string | number, member: unknown): string {
  if (typeof step === "string") return `"${step}"`;
  const name = isRecord(member) ? (textOf(member.id) ?? textOf(member.name)) : undefined;
  return name === undefined || name.length > 60 ? String(step + 1) : `"${name}"`;
}
