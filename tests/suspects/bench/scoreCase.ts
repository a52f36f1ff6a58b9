/** What one played case is worth. */
import type { StoredCase } from "../cases/caseFile.ts";
import { isHit } from "./hit.ts";
import type { Played, Report } from "./playCase.ts";

/** Posteriors this close are a tie. */
const TIE = 1e-6;

export interface Score {
  kind: string;
  /** 1: the leader is the fault. A leader that shares its place with n others counts 1 / n, and is no hit. */
  top1: number;
  hit: boolean;
  top3: boolean;
  top10: boolean;
  /** The same with any member of a suspect's group. */
  groupTop1: boolean;
  groupTop3: boolean;
  groupTop10: boolean;
  /** The leader and what cannot be told from it. */
  groupSize: number;
  posterior: number;
  verdict: Report["verdict"];
  /** The search says that its leader is not all: none of these, two faults, or a reading left over. */
  residual: boolean;
  measurements: number;
  cost: number;
  unanswered: boolean;
}

/** @param stored one fault; of two, the first named is enough */
export function scoreCase(stored: Pick<StoredCase, "faults">, { report, measurements, cost, unanswered }: Played): Score {
  const { suspects, verdict } = report;
  const hits = suspects.map(({ fault }) => stored.faults.some((seeded) => isHit(seeded, fault)));
  const groupHits = suspects.map(({ fault, group }) =>
    stored.faults.some((seeded) => isHit(seeded, fault) || group.some((member) => isHit(seeded, member.fault))),
  );
  const leader = suspects[0];
  const tied =
    leader === undefined ? [] : suspects.flatMap(({ posterior }, i) => (posterior > leader.posterior - TIE ? [hits[i] === true] : []));
  const share = tied.length === 0 ? 0 : tied.filter(Boolean).length / tied.length;
  const named = verdict === "suspects";
  return {
    kind: stored.faults.length > 1 ? "two faults" : (stored.faults[0]?.kind ?? ""),
    top1: named ? share : 0,
    hit: named && tied.length === 1 && share === 1,
    top3: named && hits.slice(0, 3).includes(true),
    top10: named && hits.slice(0, 10).includes(true),
    groupTop1: named && groupHits[0] === true,
    groupTop3: named && groupHits.slice(0, 3).includes(true),
    groupTop10: named && groupHits.slice(0, 10).includes(true),
    groupSize:
      leader === undefined
        ? 0
        : new Set([leader.fault, ...leader.group.map(({ fault }) => fault)].map((fault) => JSON.stringify(fault))).size,
    posterior: leader?.posterior ?? 0,
    verdict,
    residual: verdict === "none-of-these" || leader?.second !== undefined || report.unexplained.length > 0,
    measurements,
    cost,
    unanswered,
  };
}
