export * from "./circuit/index.ts";
export * from "./markings/index.ts";
export * from "./quantities/index.ts";
export * from "./substitutes/index.ts";
