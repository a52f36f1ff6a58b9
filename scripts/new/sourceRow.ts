import { parse } from "csv-parse/sync";
import { blankText } from "./blank.ts";

/** Kinds of sources. */
export const SOURCE_KINDS = ["published", "common-practice", "from-memory", "derived"] as const;

const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

interface Row {
  record: string[];
  raw: string;
}

/**
 * Puts a row into sources.csv where its id belongs; every other row stays as it is written.
 *
 * @param text the table as it stands, sorted by id
 * @returns the table with the row, and the row's 1-based line
 */
export function withSource(
  text: string,
  id: string,
  given: { kind?: string; title?: string; detail?: string },
): { text: string; line: number } {
  const rows = parse(text, { raw: true, relax_column_count: true }) as unknown as Row[];
  const [head, ...body] = rows.map(({ record, raw }) => ({ id: record[0] ?? "", raw: raw.endsWith("\n") ? raw : `${raw}\n` }));
  const cells = [
    id,
    given.kind ?? blankText("kind", { enum: [...SOURCE_KINDS] }),
    given.title ?? blankText("title", { description: "Title of the work, or what is meant" }),
    given.detail ?? blankText("detail", { description: "Chapter, page, edition, or how it is known" }),
  ];
  const row = { id, raw: `${cells.map(quoted).join(",")}\n` };
  const at = body.findIndex((other) => other.id > id);
  const all = [head, ...(at < 0 ? [...body, row] : [...body.slice(0, at), row, ...body.slice(at)])].filter((entry) => entry !== undefined);
  const before = all
    .slice(0, all.indexOf(row))
    .map(({ raw }) => raw)
    .join("");
  return { text: all.map(({ raw }) => raw).join(""), line: before.split("\n").length };
}
