import type { Survey } from "./survey.ts";

/** Every name by which a part can be called -> its kind, undefined where the kind is not known. */
export type PartNames = ReadonlyMap<string, string | undefined>;

/** Names of parts: their own, `stage.role`, and for sections (V3A, V3B) the envelope's name (V3). */
export function partNames({ parts }: Survey): PartNames {
  const names = new Map<string, string | undefined>();
  // Of parts that share a name by mistake the first counts; the mistake is reported elsewhere.
  const add = (name: string, kind: string | undefined) => {
    if (!names.has(name)) names.set(name, kind);
  };
  for (const part of parts) {
    if (part.id !== "") add(part.id, part.kind);
    if (part.stage !== undefined && part.role !== undefined) add(`${part.stage}.${part.role}`, part.kind);
    const envelope = part.kind === "tube" || part.kind === "rectifier" ? /^(.*\d)[A-Za-z]$/.exec(part.name ?? "")?.[1] : undefined;
    if (envelope !== undefined) add(envelope, part.kind);
  }
  return names;
}
