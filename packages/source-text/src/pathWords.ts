import type { Path } from "./path.ts";
import { isRecord, textOf } from "./shapes.ts";

/** What a format calls its parts in sentences. */
export interface PathVocabulary {
  /** The whole: the job, the stage template. */
  top: string;
  /** Lists and maps whose members have a word of their own: `stages` holds a "stage". */
  members: Readonly<Record<string, string>>;
}

/** A path in words, innermost first: `"marked" of part "reservoir" of stage "supply"`, the whole's name for the top. */
export function pathWords(path: Path, root: unknown, vocabulary: PathVocabulary): string {
  const words: string[] = [];
  let value: unknown = root;
  for (let index = 0; index < path.length; index++) {
    const step = path[index]!;
    const next = path[index + 1];
    const member = isRecord(value) || Array.isArray(value) ? (value as Record<string | number, unknown>)[step] : undefined;
    const word = typeof step === "string" && Object.hasOwn(vocabulary.members, step) ? vocabulary.members[step] : undefined;
    if (word !== undefined && next !== undefined && (isRecord(member) || Array.isArray(member))) {
      value = (member as Record<string | number, unknown>)[next];
      words.unshift(`${word} ${memberName(next, value)}`);
      index++;
      continue;
    }
    words.unshift(typeof step === "number" ? `entry ${step + 1}` : `"${step}"`);
    value = member;
  }
  return words.length === 0 ? vocabulary.top : words.join(" of ");
}

function memberName(step: string | number, member: unknown): string {
  if (typeof step === "string") return `"${step}"`;
  const name = isRecord(member) ? (textOf(member.id) ?? textOf(member.name) ?? textOf(member.role)) : undefined;
  return name === undefined || name.length > 60 ? String(step + 1) : `"${name}"`;
}
