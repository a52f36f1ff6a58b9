import type { JobFitted, JobPart, JobPartState, JobWindingState, StagePart } from "@underchassis/dataset";
import type { Path } from "../job/loadedJob.ts";
import type { PartKind } from "../model/index.ts";

/** One part as the job and its template describe it, before any value is read. */
export interface PartInput {
  id: string;
  name: string;
  title: string;
  kind: PartKind;
  role?: string;
  duty?: string;
  stage?: string;
  templateId?: string;
  template?: StagePart;
  polarised: boolean;
  /** What the job says; empty when only the template calls for the part. */
  written: JobPartState | JobPart;
  /** Where it is written in the job. */
  path: Path;
  /** Pin -> point, as it should be. Two-lead parts: a and b. */
  pins: Readonly<Record<string, string>>;
  foundPins: Readonly<Record<string, string>> | undefined;
  fittedPins: Readonly<Record<string, string>> | undefined;
  /** Transformers: winding -> points and texts. */
  windings: readonly WindingInput[];
}

export interface WindingInput {
  id: string;
  points: readonly string[];
  marked: string | number;
  fromTemplate: boolean;
  typicalOhms: number | undefined;
  state: JobWindingState;
  path: Path;
}

/** Text of `fitted`, which may be written as a bare value. */
export function fittedOf(written: JobPartState | JobPart): JobFitted | undefined {
  const { fitted } = written;
  if (fitted === undefined) return undefined;
  return typeof fitted === "object" ? fitted : { marked: fitted };
}

export function pairPins(pair: readonly string[] | undefined): Record<string, string> | undefined {
  const [a, b] = pair ?? [];
  return a === undefined || b === undefined ? undefined : { a, b };
}
