import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { BUMPS, type Bump, larger, leastVersion, raisedEnough } from "./bump.ts";
import type { Change } from "./change.ts";
import { compareRecords } from "./compareRecords.ts";
import { commitOf, extractFolders } from "./git.ts";
import { gradeBoth, type JobComparison, unchangedJobs } from "./gradeBoth.ts";
import { readRecords, versionOf } from "./readRecords.ts";

/** Everything that differs between the reference of a revision and the one that lies here. */
export interface Comparison {
  revision: string;
  commit: string;
  versionBefore: string;
  versionAfter: string;
  due: Bump;
  /** The single change that demands it. */
  because: string;
  /** Least version that would do. */
  leastVersion: string;
  raisedEnough: boolean;
  changes: Change[];
  jobs: JobComparison[];
  /** Why the recorded jobs could not be graded with both. */
  jobsNotGraded?: string;
}

const name = ({ kind, id, path }: Change): string => `${kind} ${id}${path === undefined ? "" : `, ${path}`}`;

interface GradedJobs {
  jobs: JobComparison[];
  jobsNotGraded?: string;
}

/** The largest demand, and the first thing that makes it; a record before a job, because it is the cause. */
function dueOf(changes: readonly Change[], jobs: readonly JobComparison[]): { due: Bump; because: string } {
  const due = [...changes, ...jobs].reduce<Bump>((most, { bump }) => larger(most, bump), "none");
  if (due === "none") return { due, because: "nothing changed" };
  const change = changes.find(({ bump }) => bump === due);
  const job = jobs.find(({ bump }) => bump === due);
  if (change !== undefined) return { due, because: `${name(change)} ${change.what}: ${change.why}` };
  const how = job?.outcome === "refused-now" ? `is refused (${job.message})` : due === "major" ? "grades worse" : "grades otherwise";
  return { due, because: `${job?.job} ${how}` };
}

function gradedJobs(before: string, after: string): GradedJobs {
  try {
    return { jobs: gradeBoth(before, after) };
  } catch (error) {
    if (!(error instanceof Error) || error.name !== "DatasetError") throw error;
    return { jobs: [], jobsNotGraded: error.message.replaceAll(before, "(before)").replaceAll(after, "(now)") };
  }
}

/**
 * Compares the reference at a git revision with the one in the working tree.
 *
 * @param root the repository's folder
 * @throws RevisionError for a revision that cannot be read; RecordError for a file that cannot
 */
export function compareWith(root: string, revision: string): Comparison {
  const commit = commitOf(root, revision);
  const folder = mkdtempSync(join(tmpdir(), "underchassis-compare-"));
  try {
    extractFolders(root, commit, ["datasets", "schemas"], folder);
    const [versionBefore, versionAfter] = [versionOf(folder), versionOf(root)];
    const changes = compareRecords(readRecords(folder, root), readRecords(root)).sort(
      (a, b) => BUMPS.indexOf(b.bump) - BUMPS.indexOf(a.bump),
    );
    // The same reference gives the same reports, to the byte: nothing to grade.
    const { jobs, jobsNotGraded }: GradedJobs = changes.length === 0 ? { jobs: unchangedJobs(folder) } : gradedJobs(folder, root);
    const { due, because } = dueOf(changes, jobs);
    return {
      revision,
      commit,
      versionBefore,
      versionAfter,
      due,
      because,
      leastVersion: leastVersion(versionBefore, due),
      raisedEnough: raisedEnough(versionBefore, versionAfter, due),
      changes,
      jobs,
      ...(jobsNotGraded === undefined ? {} : { jobsNotGraded }),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
