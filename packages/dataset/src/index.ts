export * from "./dataset.ts";
export type * from "./generated/index.ts";
