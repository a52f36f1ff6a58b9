import type { Dimension, MarkedKind, Marking, MarkingContext, ReadingProblem, Result, Tolerance } from "@underchassis/calc";
import { parseMarking, parseQuantity, parseSpan, parseTolerance } from "@underchassis/calc";
import type { Dataset } from "@underchassis/dataset";
import type { LoadedJob, Path } from "../job/loadedJob.ts";
import type { Diagnostic } from "../model/index.ts";

/** Reads the values of a job and collects what nobody can read, each with its place. */
export class ResolveContext {
  readonly job: LoadedJob;
  readonly dataset: Dataset;
  readonly diagnostics: Diagnostic[] = [];
  readonly era: number | undefined;

  constructor(job: LoadedJob, dataset: Dataset) {
    this.job = job;
    this.dataset = dataset;
    this.era = job.job.chassis.era;
  }

  /** SI value of a written quantity; undefined (and a diagnostic) when it cannot be read. `context`: what a number without unit may be. */
  quantity(
    text: string | number,
    dimension: Dimension,
    path: Path,
    context: Pick<MarkingContext, "electrolytic"> = {},
  ): number | undefined {
    return this.#take(parseQuantity(String(text), dimension, context), text, path)?.value;
  }

  span(text: string | number, dimension: Dimension, path: Path): { low: number; high: number } | undefined {
    return this.#take(parseSpan(String(text), dimension), text, path);
  }

  tolerance(text: string | number, path: Path): Tolerance | undefined {
    return this.#take(parseTolerance(String(text)), text, path);
  }

  marking(text: string | number, kind: MarkedKind, path: Path, context: MarkingContext = {}): Marking | undefined {
    const era = context.era ?? this.era;
    return this.#take(parseMarking(String(text), kind, era === undefined ? context : { ...context, era }), text, path);
  }

  /** Reports a problem of the value at `path`. */
  problem(
    path: Path,
    code: string,
    message: string,
    more: Partial<Pick<Diagnostic, "expected" | "nearest" | "help" | "received">> = {},
  ): void {
    const { file, line, column } = this.job.locate(path);
    this.diagnostics.push({ code, severity: "error", file, line, column, length: this.job.lengthOf(path), message, ...more });
  }

  #take<T>(result: Result<T>, text: string | number, path: Path): T | undefined {
    if (result.ok) return result.value;
    this.#unreadable(result.problem, text, path);
    return undefined;
  }

  #unreadable(problem: ReadingProblem, text: string | number, path: Path): void {
    this.problem(path, "value-unreadable", problem.message, {
      received: String(text),
      expected: problem.expected,
      ...(problem.nearest === undefined ? {} : { nearest: problem.nearest }),
    });
  }
}
