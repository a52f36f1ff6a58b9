import type { Verdict } from "./change.ts";
import type { Difference } from "./differences.ts";

const WORDS = new Set(["description", "title", "$id", "$comment", "examples", "$schema"]);
/** Keywords that refuse more the higher they are, and the lower. */
const FLOORS = new Set(["minLength", "minimum", "minItems", "minProperties", "exclusiveMinimum", "minContains"]);
const CEILINGS = new Set(["maxLength", "maximum", "maxItems", "maxProperties", "exclusiveMaximum"]);
/** Under these, the next step of a path is a name and no keyword. */
const NAMING = new Set(["properties", "$defs", "patternProperties"]);

const refuses = (why: string): Verdict => ({ bump: "major", why: `the schema refuses what it took: ${why}` });
const takes = (why: string): Verdict => ({ bump: "minor", why: `the schema takes more: ${why}` });

/** The keyword that a path ends in, `property` or `definition` when it ends in a name, and the entry of a list of texts. */
function endOf(path: string): { keyword: string; entry?: string } {
  const steps = path.split(".");
  const last = steps.at(-1) ?? "";
  const parent = steps.at(-2) ?? "";
  // `properties.properties.type`: the second `properties` is itself a name.
  const isName = NAMING.has(parent) && !(NAMING.has(steps.at(-3) ?? "") && !NAMING.has(steps.at(-4) ?? ""));
  if (isName) return { keyword: parent === "$defs" ? "definition" : "property" };
  const [, keyword = last, entry] = /^(.*?)\[(.*)\]$/s.exec(last) ?? [];
  return entry === undefined ? { keyword } : { keyword, entry };
}

function limit(before: unknown, after: unknown, tighterWhenHigher: boolean, keyword: string): Verdict {
  if (before === undefined) return refuses(`${keyword} is new`);
  if (after === undefined) return takes(`${keyword} is gone`);
  const tighter = tighterWhenHigher ? Number(after) > Number(before) : Number(after) < Number(before);
  return (tighter ? refuses : takes)(`${keyword} went from ${before} to ${after}`);
}

const listed = (value: unknown): unknown[] => (Array.isArray(value) ? value : value === undefined ? [] : [value]);
/** A number may stand wherever a whole one may. */
const holds = (types: readonly unknown[], type: unknown): boolean =>
  types.includes(type) || (type === "integer" && types.includes("number"));

/**
 * What one difference of a schema asks of the version. A keyword that is not known here, or a choice between shapes, counts as
 * refusing more: nobody can tell that it does not.
 */
export function judgeSchema({ path, before, after }: Difference): Verdict {
  const { keyword, entry } = endOf(path);
  const added = before === undefined;
  if (WORDS.has(keyword)) return { bump: "patch", why: "words of a schema" };
  if (keyword === "definition" || keyword === "$defs") return { bump: "patch", why: "a definition by itself takes and refuses nothing" };
  if (keyword === "property") return added ? takes("an optional property is new") : refuses("a property is gone");
  if (keyword === "required")
    return added ? refuses(`"${entry ?? "a property"}" must now be there`) : takes(`"${entry ?? "a property"}" may now be left out`);
  if (keyword === "enum" && entry !== undefined)
    return added ? takes(`the choice "${entry}" is new`) : refuses(`the choice "${entry}" is gone`);
  if (keyword === "enum")
    return listed(before).every((choice) => listed(after).includes(choice)) ? takes("a choice is new") : refuses("a choice is gone");
  if (keyword === "type") {
    const [was, is] = [listed(before), listed(after)];
    return after === undefined || (!added && was.every((type) => holds(is, type)))
      ? takes("another type may stand there")
      : refuses("a type may no longer stand there");
  }
  if (FLOORS.has(keyword)) return limit(before, after, true, keyword);
  if (CEILINGS.has(keyword)) return limit(before, after, false, keyword);
  if (keyword === "pattern")
    return after === undefined ? takes("the pattern is gone") : refuses(added ? "a pattern is new" : "the pattern is another");
  if (keyword === "additionalProperties" && after !== false && before === false) return takes("other properties may stand there");
  return refuses(`"${keyword}" is ${added ? "new" : after === undefined ? "gone" : "another"}`);
}
