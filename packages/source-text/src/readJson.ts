import { type Node, type ParseError, parseTree } from "jsonc-parser";
import { FORBIDDEN_NAMES } from "./forbiddenNames.ts";
import { withinJsonLimits } from "./jsonLimits.ts";
import type { Place, Placed, Span } from "./place.ts";
import type { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import { positionAt, type SourceText } from "./sourceText.ts";
import { reportSyntaxFaults } from "./syntaxFaults.ts";

/**
 * Parses strict JSON and keeps the place of everything in it. Reports syntax faults, names written twice, names that cannot be
 * used and numbers beyond all bounds.
 *
 * @returns the value (of a name written twice, the first), or undefined when the syntax is too broken to go on
 */
export function readJson(source: SourceText, limits: ReadLimits, problems: Problems): Placed | undefined {
  if (source.hadByteOrderMark) {
    problems.add(
      { source, offset: 0, length: 1 },
      {
        code: "byte-order-mark",
        severity: "warning",
        message: "the file begins with a byte order mark",
        expected: "UTF-8 without one",
        help: "it was ignored; other readers of JSON may refuse the file",
      },
    );
  }
  if (!withinJsonLimits(source, limits, problems)) return undefined;
  const errors: ParseError[] = [];
  const root = parseTree(source.text, errors, { disallowComments: true, allowTrailingComma: false });
  reportSyntaxFaults(source, errors, limits.noun, problems);
  if (root === undefined) return undefined;
  const brokenFrom = errors[0]?.offset ?? Number.POSITIVE_INFINITY;
  let crowded = false;
  const placed = build(root, undefined);
  return errors.length === 0 && !crowded ? placed : undefined;

  function build(node: Node, key: Span | undefined): Placed {
    const value: Span = { source, offset: node.offset, length: node.length };
    const place: Place = { value, members: new Map(), ...(key === undefined ? {} : { key }) };
    const size = node.children?.length ?? 0;
    if (size > limits.members) {
      crowded = true;
      problems.add(key ?? value, {
        code: "list-length",
        message: `too many entries for a ${limits.noun}`,
        received: String(size),
        expected: `at most ${limits.members}`,
      });
      return { value: undefined, place };
    }
    if (node.type === "object") return { value: buildObject(node, place), place };
    if (node.type === "array") {
      const list = (node.children ?? []).map((child, index) => {
        const item = build(child, undefined);
        place.members.set(index, item.place);
        return item.value;
      });
      return { value: list, place };
    }
    if (typeof node.value === "number" && !Number.isFinite(node.value)) {
      problems.add(value, {
        code: "number-not-finite",
        message: "a number beyond all bounds",
        received: source.text.slice(node.offset, node.offset + Math.min(node.length, 40)),
        expected: "a number that a meter can show",
      });
      return { value: 0, place };
    }
    return { value: node.value, place };
  }

  function buildObject(node: Node, place: Place): Record<string, unknown> {
    const object: Record<string, unknown> = {};
    for (const property of node.children ?? []) {
      const [nameNode, valueNode] = property.children ?? [];
      if (nameNode === undefined) continue;
      const name = String(nameNode.value);
      const key: Span = { source, offset: nameNode.offset, length: nameNode.length };
      if (FORBIDDEN_NAMES.has(name)) {
        problems.add(key, { code: "name-forbidden", message: "a name that cannot be used", received: name, help: "choose another name" });
        continue;
      }
      if (valueNode === undefined) continue;
      const member = build(valueNode, key);
      const earlier = place.members.get(name)?.key;
      if (earlier !== undefined) {
        // Behind a syntax fault, brackets may have been taken for others, and names fall into the wrong place.
        if (key.offset < brokenFrom)
          problems.add(key, {
            code: "name-duplicate",
            message: `"${name}" is written twice in one place`,
            received: name,
            help: `it stands on line ${positionAt(source, earlier.offset).line} already; keep one`,
          });
        continue;
      }
      place.members.set(name, member.place);
      object[name] = member.value;
    }
    return object;
  }
}
