import { type Node, parseTree } from "jsonc-parser";
import type { RecordKind } from "../model/fileKind.ts";
import { type SchemaNode, shapeOf } from "../shared/schemaOrder.ts";

/** A record with its properties in the schema's order. Pieces of the text are moved whole, so that line breaks and spacing stay. @param text strict JSON */
export function withOrderedProperties(kind: RecordKind, text: string): string {
  const shape = shapeOf(kind);
  const root = parseTree(text);
  if (shape === undefined || root === undefined) return text;
  return text.slice(0, root.offset) + written(text, root, shape) + text.slice(root.offset + root.length);
}

function written(text: string, node: Node, shape: SchemaNode | undefined): string {
  const { children = [] } = node;
  if (shape === undefined || children.length === 0) return text.slice(node.offset, node.offset + node.length);
  const { properties, rest, items } = shape();
  if (node.type === "array")
    return reassembled(
      text,
      node,
      children,
      children.map((child) => written(text, child, items)),
    );
  if (node.type !== "object") return text.slice(node.offset, node.offset + node.length);
  const pieces = children.map((property, index) => {
    const [name, value] = property.children ?? [];
    const key = String(name?.value);
    const start = value?.offset ?? property.offset;
    const known = properties.get(key);
    const inside = value === undefined ? "" : written(text, value, known?.node ?? rest);
    return { text: text.slice(property.offset, start) + inside, place: known?.place, index };
  });
  // Names that the schema does not list keep their places; the others take theirs among themselves.
  const sorted = pieces.filter(({ place }) => place !== undefined).sort((a, b) => (a.place ?? 0) - (b.place ?? 0) || a.index - b.index);
  const placed = pieces.map((piece) => (piece.place === undefined ? piece.text : (sorted.shift()?.text ?? piece.text)));
  return reassembled(text, node, children, placed);
}

/** The node's text with its children replaced, what stands between them kept. */
function reassembled(text: string, node: Node, children: readonly Node[], pieces: readonly string[]): string {
  let result = "";
  let at = node.offset;
  for (const [index, child] of children.entries()) {
    result += text.slice(at, child.offset) + (pieces[index] ?? "");
    at = child.offset + child.length;
  }
  return result + text.slice(at, node.offset + node.length);
}
