import type { Diagnostic } from "./diagnostic.ts";
import { lengthOnLine, type Span } from "./place.ts";
import { positionAt } from "./sourceText.ts";

/** How many diagnostics one run shows. More would not be read. */
export const DIAGNOSTIC_LIMIT = 200;

/** How many are kept to choose those from; a file of a million faults must not fill the memory. The rest are counted. */
const KEPT_LIMIT = 5000;

/** A fault with its place; what is costly to find out is found out only if the fault is shown. */
export interface Problem {
  code: string;
  severity?: "error" | "warning";
  message: string;
  received?: string;
  expected?: string;
  nearest?: string | (() => string | undefined);
  help?: string;
}

/** Collects what is wrong with a file or several, from every stage of the reading. */
export class Problems {
  readonly #entries: { problem: Problem; file: string; span: Span | undefined; line: number; column: number }[] = [];
  #errors = 0;
  #dropped = 0;
  #uncounted = false;

  /** Reports a fault at a stretch of a file. */
  add(span: Span, problem: Problem): void {
    this.#push(problem, span.source.name, span);
  }

  /** Reports a fault of a file as a whole. */
  addToFile(file: string, problem: Problem): void {
    this.#push(problem, file, undefined);
  }

  /** Says that there are more faults than were looked into. */
  breakOff(): void {
    this.#uncounted = true;
  }

  /** How many errors (not warnings) there are so far. */
  get errors(): number {
    return this.#errors;
  }

  /**
   * The diagnostics by file, line and column, each said once; at most `DIAGNOSTIC_LIMIT`, then one that counts the rest.
   */
  list(): Diagnostic[] {
    const sorted = this.#entries.toSorted(
      (a, b) => compareText(a.file, b.file) || a.line - b.line || a.column - b.column || compareText(a.problem.code, b.problem.code),
    );
    const distinct = sorted.filter((entry, index) => {
      const before = sorted[index - 1];
      return !(
        before &&
        before.file === entry.file &&
        before.line === entry.line &&
        before.column === entry.column &&
        before.problem.code === entry.problem.code &&
        before.problem.message === entry.problem.message
      );
    });
    const shown = distinct
      .slice(0, DIAGNOSTIC_LIMIT)
      .map(({ problem, file, span, line, column }) => diagnostic(problem, file, span, line, column));
    const hidden = distinct.length - shown.length + this.#dropped;
    const last = distinct[DIAGNOSTIC_LIMIT - 1];
    if (hidden > 0 && last) {
      shown.push({
        code: "problems-omitted",
        severity: this.#errors > 0 ? "error" : "warning",
        file: last.file,
        message: `${this.#uncounted ? "at least " : ""}${hidden} more problem${hidden === 1 ? "" : "s"} not shown`,
        help: "correct the ones above and run again; one fault often causes many",
      });
    }
    return shown;
  }

  #push(problem: Problem, file: string, span: Span | undefined): void {
    if (problem.severity !== "warning") this.#errors++;
    // Errors go on being kept a while longer, so that warnings cannot crowd them out.
    if (this.#entries.length >= (problem.severity === "warning" ? KEPT_LIMIT / 2 : KEPT_LIMIT)) {
      this.#dropped++;
      return;
    }
    const position = span ? positionAt(span.source, span.offset) : { line: 0, column: 0 };
    this.#entries.push({ problem, file, span, ...position });
  }
}

function diagnostic(problem: Problem, file: string, span: Span | undefined, line: number, column: number): Diagnostic {
  const nearest = typeof problem.nearest === "function" ? problem.nearest() : problem.nearest;
  return {
    code: problem.code,
    severity: problem.severity ?? "error",
    file,
    ...(span === undefined ? {} : { line, column, length: lengthOnLine(span) }),
    message: problem.message,
    ...(problem.received === undefined ? {} : { received: problem.received }),
    ...(problem.expected === undefined ? {} : { expected: problem.expected }),
    ...(nearest === undefined ? {} : { nearest }),
    ...(problem.help === undefined ? {} : { help: problem.help }),
  };
}

/** Order by code unit: the same on every machine, whatever its language. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
