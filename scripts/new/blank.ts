import type { SchemaNode } from "./schemaNode.ts";

/** What every blank begins with. Whoever reads it knows that something is to be written there, and so does the validator. */
export const FILL = "FILL: ";

const MOST_CHOICES = 30;

function shapeWords({ type, enum: choices, minimum, maximum, maxLength }: SchemaNode): string {
  if (choices !== undefined) return `one of ${choices.slice(0, MOST_CHOICES).join(", ")}`;
  const range = minimum !== undefined && maximum !== undefined ? ` from ${minimum} to ${maximum}` : "";
  if (type === "number") return `a number${range}, no quotes`;
  if (type === "integer") return `a whole number${range}, no quotes`;
  if (type === "boolean") return "true or false, no quotes";
  return maxLength !== undefined && maxLength <= 40 ? `at most ${maxLength} characters` : "";
}

/**
 * The text of a blank: what belongs there, from the schema's own description. It is a text whatever is wanted, so that a number or
 * choice that nobody filled in fails the schema too.
 */
export function blankText(name: string, node: SchemaNode): string {
  const words = [node.description?.replace(/\.$/, "") ?? name, shapeWords(node)].filter((text) => text !== "");
  return `${FILL}${words.join("; ")}`;
}

export const isBlank = (value: unknown): value is string => typeof value === "string" && value.startsWith(FILL);
