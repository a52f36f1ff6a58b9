type Json = unknown;
type Node = Record<string, Json>;

const isNode = (value: Json): value is Node => typeof value === "object" && value !== null && !Array.isArray(value);

/** A definition that is nothing but a string with a pattern reads better as `string` than under a name of its own. */
const isPlainString = (definition: Node): boolean => definition.type === "string" && definition.enum === undefined;

/** The word that the types of one schema start with: Job, Stage, Tube, FailureNote … */
const prefixOf = (title: string): string => title.replace(/(Template|Record)$/, "");

const capitalise = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/**
 * Readies a schema for the type generator: every definition gets a name that no other schema uses (`JobPart`,
 * `StagePart`), references become those names (so that a description beside a reference does not make a second
 * type), and array lengths are kept only where they make a tuple.
 *
 * @param schema one schema with a `title`, its definitions in `$defs`, references only to those
 * @returns a new schema; the argument is left as it was
 * @throws Error when the title is missing or a reference leads elsewhere
 */
export function prepareSchema(schema: Readonly<Node>): Node {
  if (typeof schema.title !== "string") throw new Error(`schema ${String(schema.$id)} has no title to name its type after`);
  const title = schema.title;
  const definitions = isNode(schema.$defs) ? schema.$defs : {};

  const refer = (reference: string, rest: Node): Node => {
    const key = reference.replace("#/$defs/", "");
    const definition = definitions[key];
    if (!reference.startsWith("#/$defs/") || !isNode(definition)) throw new Error(`${title}: no definition for ${reference}`);
    const tsType = isPlainString(definition) ? "string" : nameOf(key, definition);
    return rest.description === undefined ? { tsType } : { tsType, description: rest.description };
  };
  const nameOf = (key: string, definition: Node): string =>
    typeof definition.title === "string" ? definition.title : prefixOf(title) + capitalise(key);

  const visit = (value: Json): Json => {
    if (Array.isArray(value)) return value.map(visit);
    if (!isNode(value)) return value;
    const { $ref, propertyNames: _names, minItems, maxItems, ...rest } = value;
    if (typeof $ref === "string") return refer($ref, rest);
    const entries = Object.entries(rest).map(([key, child]) => [key, visit(child)]);
    const isTuple = typeof minItems === "number" && minItems === maxItems;
    return { ...Object.fromEntries(entries), ...(isTuple ? { minItems, maxItems } : {}) };
  };

  const { $defs: _definitions, ...root } = schema;
  const named = Object.entries(definitions)
    .filter((entry): entry is [string, Node] => isNode(entry[1]) && !isPlainString(entry[1]))
    .map(([key, definition]) => [key, { ...(visit(definition) as Node), title: nameOf(key, definition) }]);
  return { ...(visit(root) as Node), $defs: Object.fromEntries(named) };
}
