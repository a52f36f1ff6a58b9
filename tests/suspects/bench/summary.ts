/** Figures over many scores. */
import type { Score } from "./scoreCase.ts";

export interface Summary {
  cases: number;
  top1: number;
  top3: number;
  top10: number;
  groupTop1: number;
  groupTop3: number;
  groupTop10: number;
  groupMean: number;
  groupMedian: number;
  groupP90: number;
  measurements: number;
  cost: number;
  unanswered: number;
  nothingOff: number;
  /** Of leaders with 90 % belief or more: how many there were, and the share that was right. */
  sure: number;
  sureRight: number;
}

const mean = (values: readonly number[]): number => (values.length === 0 ? Number.NaN : values.reduce((a, b) => a + b, 0) / values.length);

/** Value below which `share` of the sorted values lie (nearest rank). */
function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export function summarise(scores: readonly Score[]): Summary {
  const share = (of: (score: Score) => boolean | number): number => mean(scores.map((score) => Number(of(score))));
  const sizes = scores.flatMap(({ groupSize }) => (groupSize > 0 ? [groupSize] : []));
  const sure = scores.filter(({ posterior, verdict }) => verdict === "suspects" && posterior >= 0.9);
  return {
    cases: scores.length,
    top1: share(({ top1 }) => top1),
    top3: share(({ top3 }) => top3),
    top10: share(({ top10 }) => top10),
    groupTop1: share(({ groupTop1 }) => groupTop1),
    groupTop3: share(({ groupTop3 }) => groupTop3),
    groupTop10: share(({ groupTop10 }) => groupTop10),
    groupMean: mean(sizes),
    groupMedian: percentile(sizes, 0.5),
    groupP90: percentile(sizes, 0.9),
    measurements: share(({ measurements }) => measurements),
    cost: share(({ cost }) => cost),
    unanswered: share(({ unanswered }) => unanswered),
    nothingOff: share(({ verdict }) => verdict === "nothing-off"),
    sure: sure.length,
    sureRight: mean(sure.map(({ groupTop1 }) => Number(groupTop1))),
  };
}

const percent = (value: number): string => (Number.isFinite(value) ? `${(100 * value).toFixed(0)} %` : "-").padStart(6);
const figure = (value: number): string => (Number.isFinite(value) ? value.toFixed(1) : "-").padStart(6);

export const SUMMARY_HEAD = `${"".padEnd(22)} cases  top-1  top-3 top-10 grp-1  grp-3 grp-10  group mean  p50  p90  measured  cost  not off`;

export function summaryLine(name: string, s: Summary): string {
  const shares = [s.top1, s.top3, s.top10, s.groupTop1, s.groupTop3, s.groupTop10].map(percent).join(" ");
  const sizes = [s.groupMean, s.groupMedian, s.groupP90].map(figure).join("");
  return `${name.padEnd(22)} ${String(s.cases).padStart(5)} ${shares} ${sizes}      ${figure(s.measurements)}${figure(s.cost)}   ${percent(s.nothingOff)}`;
}
