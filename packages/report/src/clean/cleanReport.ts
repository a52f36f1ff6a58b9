import type { Report } from "@underchassis/dataset";
import { visible } from "./visible.ts";

/**
 * A copy of the report in which every text went through `visible`. Renderers for people start from this copy, so that no
 * section can forget it; escaping for HTML or Markdown comes on top.
 */
export function cleanReport(report: Report): Report {
  return cleaned(report) as Report;
}

/** The same for any value. */
export function cleaned(value: unknown): unknown {
  if (typeof value === "string") return visible(value);
  if (Array.isArray(value)) return value.map(cleaned);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, entry]) => [key, cleaned(entry)]));
}
