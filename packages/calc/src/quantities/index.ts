export { formatQuantity } from "./formatQuantity.ts";
export { parseQuantity } from "./parseQuantity.ts";
export { parseSpan } from "./parseSpan.ts";
export { letterTolerance, parseTolerance } from "./parseTolerance.ts";
export { isPreferred, nearestPreferred, preferredSeries, type SeriesName } from "./preferred/series.ts";
export type {
  Dielectric,
  Dimension,
  MarkedKind,
  Marking,
  MarkingContext,
  Quantity,
  ReadingProblem,
  Result,
  Span,
  Tolerance,
} from "./types.ts";
