/** As much of a JSON Schema as the scaffolding reads. */
export interface SchemaNode {
  $ref?: string;
  type?: string | string[];
  const?: unknown;
  enum?: unknown[];
  description?: string;
  pattern?: string;
  required?: string[];
  properties?: Record<string, SchemaNode>;
  additionalProperties?: boolean | SchemaNode;
  propertyNames?: SchemaNode;
  items?: SchemaNode;
  minItems?: number;
  maxItems?: number;
  minLength?: number;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  anyOf?: SchemaNode[];
  $defs?: Record<string, SchemaNode>;
}

/** A node with its reference followed; what stands beside the reference wins. @throws Error for a reference that leads nowhere */
export function followed(node: SchemaNode, root: SchemaNode): SchemaNode {
  if (node.$ref === undefined) return node;
  const name = node.$ref.replace("#/$defs/", "");
  const target = root.$defs?.[name];
  if (target === undefined) throw new Error(`the schema has no ${node.$ref}`);
  const { $ref: _, ...beside } = node;
  return { ...followed(target, root), ...beside };
}
