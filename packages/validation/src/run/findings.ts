import type { Diagnostic } from "../model/diagnostic.ts";
import { blankFilled } from "../rules/bytes/blank-filled.ts";
import { compareRanked, type Ranked } from "./report.ts";

/** Most findings that are kept; a thousand files with the same fault say no more than a hundred. */
const KEPT = 5000;

/** What a run has found so far. */
export class Findings {
  readonly #only: (path: string) => boolean;
  readonly #ranked: Ranked[] = [];
  /** Files whose errors keep them from being simulated. */
  readonly broken = new Set<string>();
  /** Records that cannot be read or break their schema: nothing can be built on them. */
  readonly unusable = new Set<string>();
  omitted = 0;

  constructor(only: (path: string) => boolean) {
    this.#only = only;
  }

  add(ranked: Ranked): void {
    if (ranked.diagnostic.severity === "error" && ranked.diagnostic.fix === undefined) this.broken.add(ranked.diagnostic.file);
    if (!this.#only(ranked.diagnostic.file)) return;
    if (this.#ranked.length < KEPT) this.#ranked.push(ranked);
    else this.omitted++;
  }

  sorted(): Diagnostic[] {
    // A blank is all that is wrong where it stands, whatever else its words break.
    const placeOf = ({ file, line }: Diagnostic): string => `${file}:${line}`;
    const all = this.#ranked.toSorted(compareRanked).map(({ diagnostic }) => diagnostic);
    const blanks = new Set(all.filter(({ code }) => code === blankFilled.code).map(placeOf));
    return all.filter((one) => one.code === blankFilled.code || !blanks.has(placeOf(one)));
  }
}
