export * from "./chassis.ts";
export * from "./check.ts";
export * from "./diagnostic.ts";
export * from "./finding.ts";
export * from "./part.ts";
export * from "./readingDimension.ts";
