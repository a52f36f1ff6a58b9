import type { ReadingQuantity } from "../model/index.ts";

/** What is asked of one part before power: a measurement, the way to make it, and where it decides. */
export interface WorkMeasure {
  /** `resistance`, `capacitance`, `leakage` ... as templates name them. */
  quantity: string;
  /** Which lead is lifted, which power is off, what to watch. */
  how: string;
  /** Least and most that it may show, SI; absent where the template sets no limit. */
  low?: number;
  high?: number;
  /** Base unit of low and high. */
  unit?: string;
}

/** One part to look at. */
export interface WorkPart {
  role?: string;
  /** What the job calls it; "" where nobody has named it yet. */
  name: string;
  title: string;
  kind: string;
  between: string;
  /** Part of this kind of stage, but not of every chassis. */
  optional: boolean;
  /** As the job has it. */
  marked?: string;
  /** Typical value or type of the template. */
  typical?: string;
  measures: readonly WorkMeasure[];
  ages?: string;
  replace?: string;
  substitute?: string;
  /** Ids of the sources of the figures. */
  sources: readonly string[];
}

/** One reading to take. */
export interface WorkPoint {
  condition: string;
  at: string;
  to: string;
  quantity: ReadingQuantity;
  /** What the template calls this figure. */
  title?: string;
  /** Window, SI; absent where nothing can be said. */
  low?: number;
  high?: number;
  /** Source id; `computed` for a window from the simulation. */
  source: string;
}

export interface WorkStage {
  id: string;
  title: string;
  template?: string;
  summary?: string;
  cautions: readonly { id: string; title: string; text: string }[];
  parts: readonly WorkPart[];
  points: readonly WorkPoint[];
}

/** A bench sheet to be filled in: what to look at, in which order, what should be found. */
export interface Worksheet {
  title: string;
  datasetVersion: string;
  /** Cautions that stand above everything. */
  cautions: readonly { id: string; title: string; text: string }[];
  /** Conditions in the order of work, cold first. */
  conditions: readonly { id: string; title: string; powered: boolean }[];
  stages: readonly WorkStage[];
}
