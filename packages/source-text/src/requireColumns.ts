import type { CsvHeader } from "./csvHeader.ts";
import type { Problems } from "./problems.ts";
import { oneOf } from "./words.ts";

/** Whether a table has the columns without which its rows say nothing; reports the missing ones at the header. */
export function requireColumns(header: CsvHeader, needed: readonly string[], problems: Problems, why?: string): boolean {
  const missing = needed.filter((column) => !header.columns.includes(column));
  if (missing.length === 0) return true;
  // A misspelt column has been reported with its nearest; a second complaint would be about the same fault.
  if (!header.columns.includes(undefined)) {
    problems.add(header.span, {
      code: "csv-column-missing",
      message: `no column ${oneOf(missing.map((column) => `"${column}"`)).replace(" or ", " and ")}`,
      received: header.columns.join(", "),
      ...(why === undefined ? {} : { help: why }),
    });
  }
  return false;
}
