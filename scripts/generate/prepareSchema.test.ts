import { expect, test } from "vitest";
import { prepareSchema } from "./prepareSchema.ts";

const schema = (properties: object, definitions: object = {}) => ({ title: "TubeRecord", type: "object", properties, $defs: definitions });

test("a reference becomes a name that starts with its record kind and keeps the description beside it", () => {
  const prepared = prepareSchema(schema({ base: { $ref: "#/$defs/base", description: "Pins." } }, { base: { type: "object" } }));
  expect(prepared.properties).toEqual({ base: { tsType: "TubeBase", description: "Pins." } });
  expect(prepared.$defs).toEqual({ base: { type: "object", title: "TubeBase" } });
});

test("a definition that is a plain text gets no name of its own", () => {
  const prepared = prepareSchema(schema({ id: { $ref: "#/$defs/id" } }, { id: { type: "string", pattern: "^a$" } }));
  expect(prepared.properties).toEqual({ id: { tsType: "string" } });
  expect(prepared.$defs).toEqual({});
});

test("array lengths stay only where both ends are one number", () => {
  const prepared = prepareSchema(schema({ pair: { type: "array", minItems: 2, maxItems: 2 }, list: { type: "array", minItems: 1 } }));
  expect(prepared.properties).toEqual({ pair: { type: "array", minItems: 2, maxItems: 2 }, list: { type: "array" } });
});

test("refuses a reference that leads nowhere and a schema without a title", () => {
  expect(() => prepareSchema(schema({ x: { $ref: "#/$defs/gone" } }))).toThrow("#/$defs/gone");
  expect(() => prepareSchema({ $id: "nameless" })).toThrow("nameless");
});
