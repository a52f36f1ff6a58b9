/** How far two versions of the reference are apart, by the rules that DEVELOPERS.md gives for raising it. */
export type VersionStep = "major" | "minor" | "patch";

const numbers = (version: string): number[] =>
  version
    .split(/[.+-]/)
    .slice(0, 3)
    .map((piece) => Number.parseInt(piece, 10) || 0);

/** Below 0, 0 or above: the order of two versions by their numbers. */
export function compareVersions(a: string, b: string): number {
  const [left, right] = [numbers(a), numbers(b)];
  const at = left.findIndex((value, index) => value !== right[index]);
  return at < 0 ? 0 : (left[at] ?? 0) - (right[at] ?? 0);
}

/**
 * The step between two versions, whichever is newer; undefined for the same. A first number of 0 promises nothing from one second
 * number to the next (Semantic Versioning 2.0.0, 4).
 */
export function versionStep(a: string, b: string): VersionStep | undefined {
  const [left, right] = [numbers(a), numbers(b)];
  if (left[0] !== right[0] || (left[0] === 0 && left[1] !== right[1])) return "major";
  if (left[1] !== right[1]) return "minor";
  return left[2] === right[2] ? undefined : "patch";
}
