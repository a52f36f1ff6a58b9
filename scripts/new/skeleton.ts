import { blankText } from "./blank.ts";
import { followed, type SchemaNode } from "./schemaNode.ts";

/** What a new record holds beyond what its schema requires. */
export interface Plan {
  /** Optional properties that are worth having, by their shape: `parts[].typical`. */
  include: readonly string[];
  /** Values that are known, by shape; the blank is left out. */
  known: Readonly<Record<string, unknown>>;
  /** Entries that stand behind the blank ones of a list, by the list's shape. */
  append?: Readonly<Record<string, readonly unknown[]>>;
}

function object(node: SchemaNode, root: SchemaNode, plan: Plan, shape: string): Record<string, unknown> {
  const { properties = {}, required = [] } = node;
  const at = (name: string) => (shape === "" ? name : `${shape}.${name}`);
  const wanted = Object.keys(properties).filter(
    (name) => required.includes(name) || plan.include.includes(at(name)) || Object.hasOwn(plan.known, at(name)),
  );
  return Object.fromEntries(wanted.map((name) => [name, value(name, properties[name]!, root, plan, at(name))]));
}

function list(name: string, node: SchemaNode, root: SchemaNode, plan: Plan, shape: string): unknown[] {
  const wanted = Math.max(node.minItems ?? 0, plan.include.includes(`${shape}[]`) ? 1 : 0);
  const blanks = Array.from({ length: wanted }, () => {
    const inner = followed(node.items ?? {}, root);
    // The list says what its entries are where they do not say it themselves.
    const told =
      node.items?.description === undefined && node.description !== undefined ? { ...inner, description: node.description } : inner;
    return value(name, told, root, plan, `${shape}[]`);
  });
  return [...blanks, ...(plan.append?.[shape] ?? [])];
}

function value(name: string, written: SchemaNode, root: SchemaNode, plan: Plan, shape: string): unknown {
  if (Object.hasOwn(plan.known, shape)) return plan.known[shape];
  const node = followed(written, root);
  if ("const" in node) return node.const;
  if (node.properties !== undefined) return object(node, root, plan, shape);
  if (node.type === "object") return {};
  if (node.type === "array") return list(name, node, root, plan, shape);
  return blankText(name, node);
}

/**
 * A record with every required property of its schema, in the schema's order, blanks where nothing is known.
 *
 * @param schema of the whole record
 */
export function skeleton(schema: SchemaNode, plan: Plan): Record<string, unknown> {
  return object(schema, schema, plan, "");
}
