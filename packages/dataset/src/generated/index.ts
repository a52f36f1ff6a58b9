// Generated from schemas/; run npm run generate. Changes made here are lost.

export type * from "./caution.ts";
export type * from "./example.ts";
export type * from "./failure-note.ts";
export type * from "./job.ts";
export type * from "./report.ts";
export type * from "./rule-of-thumb.ts";
export type * from "./stage.ts";
export type * from "./table.ts";
export type * from "./tube.ts";
export type * from "./validation.ts";
export type * from "./worked-example.ts";
