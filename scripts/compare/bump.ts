import semver from "semver";

/** How much a version must be raised, least first. */
export const BUMPS = ["none", "patch", "minor", "major"] as const;
export type Bump = (typeof BUMPS)[number];

export const larger = (a: Bump, b: Bump): Bump => (BUMPS.indexOf(a) >= BUMPS.indexOf(b) ? a : b);

/**
 * The least version that a change of that size asks for. Below 1.0.0 the numbers move one place to the right, as semantic
 * versioning's users do: a major change raises the second, any other the third.
 *
 * @param from a semantic version
 */
export function leastVersion(from: string, due: Bump): string {
  if (due === "none") return from;
  const early = semver.major(from) === 0;
  const raise = due === "major" ? (early ? "minor" : "major") : due === "minor" && !early ? "minor" : "patch";
  return semver.inc(from, raise) ?? from;
}

/** Whether `to` is raised enough over `from` for a change of that size. */
export function raisedEnough(from: string, to: string, due: Bump): boolean {
  return semver.gte(to, leastVersion(from, due));
}
