import { isRecord, type Path, recordOf } from "@underchassis/source-text";
import caution from "../../../../schemas/caution.schema.json" with { type: "json" };
import example from "../../../../schemas/example.schema.json" with { type: "json" };
import failureNote from "../../../../schemas/failure-note.schema.json" with { type: "json" };
import ruleOfThumb from "../../../../schemas/rule-of-thumb.schema.json" with { type: "json" };
import stage from "../../../../schemas/stage.schema.json" with { type: "json" };
import table from "../../../../schemas/table.schema.json" with { type: "json" };
import tube from "../../../../schemas/tube.schema.json" with { type: "json" };
import workedExample from "../../../../schemas/worked-example.schema.json" with { type: "json" };
import type { RecordKind } from "../model/fileKind.ts";

type Schema = Readonly<Record<string, unknown>>;

const SCHEMAS: Readonly<Partial<Record<RecordKind, Schema>>> = {
  stage,
  tube,
  caution,
  "failure-note": failureNote,
  "rule-of-thumb": ruleOfThumb,
  "worked-example": workedExample,
  "table-descriptions": table,
  "example-record": example,
};

/** What a schema says of one object's properties: their order, and the schema of each member. */
interface Shape {
  properties: ReadonlyMap<string, { place: number; node: SchemaNode }>;
  rest: SchemaNode | undefined;
  items: SchemaNode | undefined;
}
export type SchemaNode = () => Shape;

const shapes = new Map<RecordKind, SchemaNode>();

/** The order in which a schema lists properties, wherever in a record one stands; undefined for kinds without a schema. */
export function shapeOf(kind: RecordKind): SchemaNode | undefined {
  const schema = SCHEMAS[kind];
  if (schema === undefined) return undefined;
  let shape = shapes.get(kind);
  if (shape === undefined) {
    shape = node(schema, schema);
    shapes.set(kind, shape);
  }
  return shape;
}

function node(schema: unknown, root: Schema): SchemaNode {
  let shape: Shape | undefined;
  return () => {
    if (shape === undefined) {
      const { $ref } = recordOf(schema);
      const target = typeof $ref === "string" ? recordOf(recordOf(root.$defs)[$ref.replace("#/$defs/", "")]) : recordOf(schema);
      const properties = recordOf(target.properties);
      shape = {
        properties: new Map(Object.entries(properties).map(([name, member], place) => [name, { place, node: node(member, root) }])),
        rest: isRecord(target.additionalProperties) ? node(target.additionalProperties, root) : undefined,
        items: isRecord(target.items) ? node(target.items, root) : undefined,
      };
    }
    return shape;
  };
}

/** The first property of every object that stands behind one that it should stand before. */
export function misplacedProperties(kind: RecordKind, value: unknown): { path: Path; before: string }[] {
  const shape = shapeOf(kind);
  const found: { path: Path; before: string }[] = [];
  if (shape !== undefined) walk(value, shape, undefined, found);
  return found;
}

/** A step of a path, from the inside out: most are never written down. */
interface Step {
  name: string | number;
  outer: Step | undefined;
}

function pathOf(step: Step | undefined): (string | number)[] {
  return step === undefined ? [] : [...pathOf(step.outer), step.name];
}

function walk(value: unknown, at: SchemaNode, outer: Step | undefined, found: { path: Path; before: string }[]): void {
  if (typeof value !== "object" || value === null) return;
  const { properties, rest, items } = at();
  if (Array.isArray(value)) {
    if (items !== undefined)
      for (let index = 0; index < value.length; index++) {
        if (typeof value[index] === "object") walk(value[index], items, { name: index, outer }, found);
      }
    return;
  }
  let last = -1;
  let lastName = "";
  let told = false;
  for (const name in value) {
    const property = properties.get(name);
    if (property !== undefined) {
      const { place } = property;
      if (place < last && !told) {
        found.push({ path: [...pathOf(outer), name], before: lastName });
        told = true;
      }
      if (place > last) {
        last = place;
        lastName = name;
      }
    }
    const member = property?.node ?? rest;
    const inside = (value as Record<string, unknown>)[name];
    if (member !== undefined && typeof inside === "object") walk(inside, member, { name, outer }, found);
  }
}
