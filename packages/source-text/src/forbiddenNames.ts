/** Names that reach into JavaScript's own objects; no chassis needs them. */
export const FORBIDDEN_NAMES: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);
