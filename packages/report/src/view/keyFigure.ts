import type { ReportFigure, ReportFinding } from "@underchassis/dataset";
import { figureParts } from "./figureParts.ts";

/** Labels longer than this are formulas; the finding's title says what they mean. */
const longestLabel = 40;

const hasLimit = (figure: ReportFigure): boolean => figure.limit !== undefined;
const marginOf = (figure: ReportFigure): number => figure.margin ?? 0;

/** Figures of a finding that break their limit, the worst first; without any of those, the one closest to its limit. */
export function tellingFigures({ figures }: ReportFinding): readonly ReportFigure[] {
  const limited = figures.filter(hasLimit).sort((one, other) => marginOf(one) - marginOf(other));
  const broken = limited.filter((figure) => marginOf(figure) < 0);
  return broken.length > 0 ? broken : limited.slice(0, 1);
}

/** "leakage 1.4 mA, at most 1.1 mA, over by 27 %": a figure with limit and margin in one breath. */
export function shortFigure(figure: ReportFigure): string {
  const { label, value, limit, margin } = figureParts(figure);
  const lead = label.length > longestLabel ? value : `${label} ${value}`;
  return [lead, limit, margin].filter(Boolean).join(", ");
}

/** The most telling figure of a finding in one breath; "" when none of its figures has a limit. */
export function keyFigure(finding: ReportFinding): string {
  const [figure] = tellingFigures(finding);
  return figure ? shortFigure(figure) : "";
}
