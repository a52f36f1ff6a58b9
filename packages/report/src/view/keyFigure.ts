import type { ReportFigure, ReportFinding } from "@underchassis/dataset";
import { figureParts } from "./figureParts.ts";

/** Labels that name a quantity of a rule ("lineFuse.ratedAmps", "abs(volts(...))"); the finding's title says what they mean. */
const formula = /[a-z]\.[a-z]|\(/;

const hasLimit = (figure: ReportFigure): boolean => figure.limit !== undefined;
const marginOf = (figure: ReportFigure): number => figure.margin ?? 0;

/** Rounding of the computation does not break a limit. */
const brokenBelow = -1e-6;

/** Figures of a finding that break their limit, the worst first; without any of those, the one closest to its limit. */
export function tellingFigures({ figures }: ReportFinding): readonly ReportFigure[] {
  const limited = figures.filter(hasLimit).sort((one, other) => marginOf(one) - marginOf(other));
  const broken = limited.filter((figure) => marginOf(figure) < brokenBelow);
  return broken.length > 0 ? broken : limited.slice(0, 1);
}

const blanks = /\s/g;

/** Whether a source, by its id, is somebody's memory. */
export type IsFromMemory = (sourceId: string) => boolean;
const nothing: IsFromMemory = () => false;

/**
 * "leakage 1.4 mA, at most 1.1 mA, over by 27 %": a figure with limit and margin in one breath. Label and value are left out
 * where `said`, the text before it, gives the value already. Where the source is memory it says so.
 */
export function shortFigure(figure: ReportFigure, said = "", isFromMemory: IsFromMemory = nothing): string {
  const { label, value, limit, margin } = figureParts(figure);
  const isSaid = ` ${said} `.replace(blanks, " ").includes(` ${value.replace(blanks, " ")} `);
  const lead = formula.test(label) ? value : `${label} ${value}`;
  return [isSaid && limit ? "" : lead, limit, margin, isFromMemory(figure.source) ? "from memory" : ""].filter(Boolean).join(", ");
}

/** The most telling figure of a finding in one breath, next to its title; "" when none of its figures has a limit. */
export function keyFigure(finding: ReportFinding, isFromMemory: IsFromMemory = nothing): string {
  const [figure] = tellingFigures(finding);
  return figure ? shortFigure(figure, finding.title, isFromMemory) : "";
}
