import { nearestOf } from "@underchassis/source-text";

const PATTERN = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const LONGEST = 64;

/** An id as it would be allowed: `Half Wave!` is half-wave. */
function mended(id: string): string {
  return id
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, LONGEST);
}

/**
 * Why an id cannot be given to a new record; undefined when it can.
 *
 * @param taken ids of the same kind, each with the file that has it
 */
export function idProblem(id: string, taken: ReadonlyMap<string, string>): string | undefined {
  if (!PATTERN.test(id) || id.length > LONGEST) {
    const better = mended(id);
    return `"${id}" is no id: small letters, digits and single hyphens between them, at most ${LONGEST}${better === "" ? "" : `; perhaps ${better}`}`;
  }
  const file = taken.get(id);
  if (file === undefined) return undefined;
  const near = nearestOf(
    id,
    [...taken.keys()].filter((other) => other !== id),
  );
  return `"${id}" is taken by ${file}${near === undefined ? "" : `; the nearest other is ${near}`}`;
}
