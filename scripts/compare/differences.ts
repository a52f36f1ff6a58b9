/** One place at which two values differ. `undefined` on one side: it is not there. */
export interface Difference {
  /** Path in words of the record: `parts[reservoir].replace.driftLimit`. */
  path: string;
  /** The same with every list's entry as `[]`, for rules: `parts[].replace.driftLimit`. */
  shape: string;
  before: unknown;
  after: unknown;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null && !Array.isArray(value);

/** Properties by which the entries of a list are told apart, the first that all of them have and that repeats nowhere. */
const KEYS: readonly (readonly string[])[] = [["id"], ["role"], ["name"], ["file"], ["title"], ["title", "condition"]];

function keyed(list: readonly unknown[]): Map<string, unknown> | undefined {
  for (const names of KEYS) {
    const keys = list.map((entry) =>
      isObject(entry) && names.every((name) => typeof entry[name] === "string") ? names.map((name) => entry[name]).join(", ") : undefined,
    );
    if (keys.every((key) => key !== undefined) && new Set(keys).size === keys.length)
      return new Map(keys.map((key, index) => [key!, list[index]]));
  }
  return undefined;
}

/** A list of texts is a set with an order: entries are told apart by themselves. */
const isTextSet = (list: readonly unknown[]): boolean =>
  list.every((entry) => typeof entry === "string") && new Set(list).size === list.length;

/** Lists in which the place of a text says what it is, so that entries cannot be told apart by themselves. */
const PLACED = /(^|\.)(between|pins)$/;

function mapOf(list: readonly unknown[], shape: string): Map<string, unknown> | undefined {
  if (PLACED.test(shape)) return undefined;
  return isTextSet(list) ? new Map(list.map((entry) => [String(entry), entry])) : keyed(list);
}

const own = (value: Record<string, unknown>, key: string): unknown => (Object.hasOwn(value, key) ? value[key] : undefined);

/**
 * Where two JSON values differ. Entries of lists are told apart by their id, role or name where they have one, so that an entry
 * put in between is one difference and not one for each entry behind it; the order of such lists counts for nothing. Other lists of
 * as many objects are compared entry by entry, counted from 1.
 */
export function differencesOf(before: unknown, after: unknown, path = "", shape = ""): Difference[] {
  if (Object.is(before, after)) return [];
  if (isObject(before) && isObject(after)) {
    const at = (key: string, base: string) => (base === "" ? key : `${base}.${key}`);
    return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) =>
      differencesOf(own(before, key), own(after, key), at(key, path), at(key, shape)),
    );
  }
  if (Array.isArray(before) && Array.isArray(after)) {
    const [one, other] = [mapOf(before, shape), mapOf(after, shape)];
    if (before.length === after.length && [...before, ...after].every(isObject) && (one === undefined || other === undefined))
      return before.flatMap((entry, index) => differencesOf(entry, after[index], `${path}[${index + 1}]`, `${shape}[]`));
    if (one === undefined || other === undefined)
      return JSON.stringify(before) === JSON.stringify(after) ? [] : [{ path, shape, before, after }];
    return [...new Set([...one.keys(), ...other.keys()])].flatMap((key) =>
      differencesOf(one.get(key), other.get(key), `${path}[${key}]`, `${shape}[]`),
    );
  }
  return [{ path, shape, before, after }];
}
