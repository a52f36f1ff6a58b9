export * from "./dataset.ts";
export * from "./faultWeights.ts";
export * from "./find/index.ts";
export type * from "./generated/index.ts";
export * from "./partFaults.ts";
export * from "./readingUnits.ts";
export * from "./settingDimension.ts";
